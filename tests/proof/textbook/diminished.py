"""A diminished housing by its definition: a triangle under the top, a tenon, and a box for it.

How it works
1. Counted in from the face and down from the top, the end goes nothing in at the top and `housing`
   at the underside: a triangle, as wide as the end.
2. The tenon is a box from there on; all else of the end beyond the face comes off.
3. The receiving timber loses the same triangle, on out to its face as it really is, and a box that
   is a little deeper than the tenon is long.
"""

from collections.abc import Mapping

from benchmate.frame.frame import Frame
from benchmate.joinery.diminished.record import DiminishedTenon
from benchmate.measure.length import Length
from tests.proof.fits import Wastes
from tests.proof.profile import (
    FAR,
    Profile,
    Side,
    Span,
    depths,
    entry,
    level,
    number_on,
    opened,
    outside,
)
from tests.proof.wood import Log


def profile(joint: DiminishedTenon, logs: Mapping[str, Log]) -> Profile:
    """In from the face, down from the top, and across from the end's own side."""
    made, into = logs[joint.timber], logs[joint.into]
    framed, _ = depths(made, number_on(made, 2))
    zero = made.stand.zero[2]
    top = zero if made.stand.ways[number_on(made, 2)][2] < 0 else zero + framed
    inwards, _, _ = entry(into, joint.end)
    down = Side(axis=2, zero=top, sense=-1)
    return Profile(inwards=inwards, down=down, across=level(made, joint.end))


def textbook(joint: DiminishedTenon, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood it takes off the end and off the timber that receives it."""
    made, into = logs[joint.timber], logs[joint.into]
    met = profile(joint, logs)
    _, over, _ = entry(into, joint.end)
    (deep, _), wide = depths(made, number_on(made, 2)), _wide(made)
    housed = joint.housing.nm
    cut = frame.stick(joint.timber).as_cut.get(f"{joint.end.word}-end-tenon")
    down, across = _tenon(joint, made, into, (None, None))
    kept = [
        met.prism([(0, 0), (0, deep), (housed, deep)], (-FAR, FAR)),
        met.box((0, housed + joint.length.nm), down, across),
    ]
    everything = met.box((0, FAR), (-FAR, FAR), (-FAR, FAR))
    inside = met.box((-over, FAR), (-FAR, FAR), (-FAR, FAR))
    taken = [everything.without(kept)]
    if made.layout.stick.inner:
        taken += [outside(made, axis, inside) for axis in (2, met.across.axis)]
    sizes = (cut.thickness, cut.width) if cut else (None, None)
    down, across = _tenon(joint, made, into, sizes)
    long = (cut.length if cut and cut.length else joint.length).nm
    clear = (joint.bottom_clearance or Length.inches(0, 1, 8)).nm
    upright = into.timber.upright
    housing = met.prism(
        [(-over, 0), (-over, deep), (housed, deep), (0, 0)],
        opened(met.across, wide, into) if upright else (0, wide),
    )
    hole = housing.joined([met.box((-over, housed + long + clear), down, across)])
    return {
        f"{made.timber.id}/{joint.end.word}-end-tenon": taken[0].joined(taken[1:]),
        f"{into.timber.id}/{joint.mortise}": hole,
    }


def _wide(made: Log) -> float:
    return depths(made, 3 - number_on(made, 2))[0]


def _tenon(
    joint: DiminishedTenon, made: Log, into: Log, cut: tuple[Length | None, Length | None]
) -> tuple[Span, Span]:
    """The tenon from top to underside and across: it lies with the grain that receives it."""
    thick = (cut[0] or joint.thickness).nm
    plumb = number_on(made, 2)
    upright = into.timber.upright
    edges = plumb if upright else 3 - plumb
    near: Span = (joint.set_back.nm, joint.set_back.nm + thick)
    far = _far_edge(joint, made, edges)
    wide = cut[1].nm if cut[1] else far - joint.relief_reference.nm
    edge: Span = (joint.relief_reference.nm, joint.relief_reference.nm + wide)
    own = {plumb: edge if upright else near, 3 - plumb: near if upright else edge}
    down = own[plumb]
    if made.stand.ways[plumb][2] > 0:
        deep = depths(made, plumb)[0]
        down = (deep - down[1], deep - down[0])
    return down, own[3 - plumb]


def _far_edge(joint: DiminishedTenon, made: Log, number: int) -> float:
    """A far edge that is relieved or goes by square rule holds; another runs out to the face."""
    stick = made.layout.stick
    if not joint.relief_far and stick.inner is None:
        return depths(made, number)[1]
    held = stick.inner or stick.nominal
    return (held.first, held.second)[number - 1].nm - joint.relief_far.nm
