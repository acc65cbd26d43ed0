"""Random real sizes: sticks as they may come from the mill, and ends as they may be cut."""

from collections.abc import Mapping
from functools import cache

from hypothesis import Phase
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.layout.walk import lay_out
from benchmate.measure.length import NM_PER_SIXTYFOURTH, Length
from benchmate.model.progress import AsCut, Measured
from benchmate.model.project import Timber
from tests.proof.carve import BEARING, TENON, spots
from tests.proof.demos import demo
from tests.proof.raising import Joint, end_names, joints_of, raised
from tests.proof.stock import stock

MOST_OFF = 32
"""How far a stick may be off its drawn size by mill rule, in sixty-fourths: half an inch."""

MOST_OVER = 80
"""How far a stick may be over its inner timber by square rule, in quarters of a millimetre."""

MOST_UNDER, MOST_LEFT_ON = 16, 8
"""How far an end may be cut under its size as laid out, and over it, in sixty-fourths: a quarter of
an inch and an eighth. Much more left on would break through to the next mortise."""

UNSHRUNK = (Phase.explicit, Phase.reuse, Phase.generate)
"""How these sizes are tried: a fault names its joint, and a simpler frame takes minutes to find."""

SIXTYFOURTH, QUARTER_MM = Length(NM_PER_SIXTYFOURTH), Length.hundredths_mm(25)

Spot = tuple[str, tuple[str, ...]]
"""A timber, and the joints on it that lie side by side and so have one section."""


@cache
def joint_spots(name: str, rule: str) -> tuple[Spot, ...]:
    """Where the sticks of a demo are measured."""
    pieces = raised(demo(name, rule), {}).pieces
    return tuple(
        (timber, features) for timber, piece in pieces.items() for _, features in spots(piece.rule)
    )


def settled(name: str, rule: str, real: Mapping[str, Real]) -> dict[str, Real]:
    """Real sizes with one section to a spot: the first that was measured there stands for all.

    Two joints side by side may have been measured a few millimetres apart, but there is one stick.
    """
    found = {timber: dict(sizes.measured) for timber, sizes in real.items()}
    for timber, features in joint_spots(name, rule):
        sizes = found.get(timber, {})
        there = [sizes[feature] for feature in features if feature in sizes]
        if there:
            sizes.update(dict.fromkeys(features, there[0]))
    return {timber: Real(found[timber], sizes.as_cut) for timber, sizes in real.items()}


@st.composite
def real_sizes(draw: st.DrawFn, name: str, rule: str) -> dict[str, Real]:
    """A demo's sticks measured at some of their joints, and some of their ends as cut."""
    places = st.sampled_from(joint_spots(name, rule))
    timbers = {timber.id: timber for timber in demo(name, rule).timbers}
    measured: dict[str, dict[str, Measured]] = {}
    for timber, features in draw(st.lists(places, min_size=6, max_size=24, unique=True)):
        size = draw(_measured(name, rule, timbers[timber]))
        found = measured.setdefault(timber, {})
        found.update(dict.fromkeys(draw(_place_names(features)), size))
    for timber, _ in draw(st.lists(places, max_size=4, unique=True)):
        measured.setdefault(timber, {})["all"] = draw(_measured(name, rule, timbers[timber]))
    return draw(_with_cut_ends(name, rule, measured))


def _place_names(features: tuple[str, ...]) -> st.SearchStrategy[tuple[str, ...]]:
    """What a spot may be called: after its joints, or after the end of the stick it lies at."""
    ends = tuple(each.removesuffix(TENON).removesuffix(BEARING) for each in features)
    return st.sampled_from((features, ends))


@st.composite
def _measured(draw: st.DrawFn, name: str, rule: str, timber: Timber) -> Measured:
    """A section of which both sides, one or none has been measured.

    By mill rule it is anything near the drawn one, by square rule never less than the inner one.
    """
    found = stock(demo(name, rule), timber, Real())
    sides = (_off, _over)[found.inner is not None]
    drawn = found.inner or found.drawn
    first, second = (draw(st.none() | sides(Length(side))) for side in drawn)
    return Measured(first=first, second=second)


def _off(drawn: Length) -> st.SearchStrategy[Length]:
    return st.integers(-MOST_OFF, MOST_OFF).map(lambda count: drawn + count * SIXTYFOURTH)


def _over(inner: Length) -> st.SearchStrategy[Length]:
    return st.integers(0, MOST_OVER).map(lambda count: inner + count * QUARTER_MM)


@st.composite
def _with_cut_ends(
    draw: st.DrawFn, name: str, rule: str, measured: Mapping[str, Mapping[str, Measured]]
) -> dict[str, Real]:
    """The sticks, with the sizes of some ends that were measured as cut."""
    project = demo(name, rule)
    frame = Frame(project, {timber: Real(sizes) for timber, sizes in measured.items()})
    known = {timber for timber, _ in joint_spots(name, rule)}
    joints = [joint for joint in joints_of(project) if joint.timber in known]
    cut: dict[str, dict[str, AsCut]] = {}
    for joint in draw(st.lists(st.sampled_from(joints), max_size=10, unique_by=lambda one: one.id)):
        feature, _ = end_names(joint)
        laid_out = lay_out(frame, joint.timber).feature(feature)
        sizes = {size.name: size.laid_out for size in laid_out.sizes} if laid_out else {}
        over = _over_sizes(joint, rule)
        made = {key: draw(st.none() | _cut(size, over=key in over)) for key, size in sizes.items()}
        cut.setdefault(joint.timber, {})[feature] = AsCut(**made)
    return {
        timber: Real(measured.get(timber, {}), cut.get(timber, {})) for timber in (*measured, *cut)
    }


def _over_sizes(joint: Joint, rule: str) -> set[str]:
    """The sizes of an end that may come out over, as there is sure to be wood left on.

    That is past a far cheek and in an end allowance; past a far relief only by square rule, for by
    mill rule a small stick may have nothing there.
    """
    if not isinstance(joint, TenonJoint):
        return set()
    sure = {
        "thickness": True,
        "width": rule == "square" and bool(joint.far_cut_back()),
        "length": bool(joint.end_allowance),
    }
    return {size for size, left in sure.items() if left}


def _cut(laid_out: Length, *, over: bool) -> st.SearchStrategy[Length]:
    out = st.integers(-MOST_UNDER, MOST_LEFT_ON if over else 0)
    return out.map(lambda count: laid_out + count * SIXTYFOURTH)
