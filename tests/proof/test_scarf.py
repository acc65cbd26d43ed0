"""The scarf proved: told true, cut as the textbook cuts it, and a fit from tip to tip."""

from collections.abc import Mapping

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.measure.length import Length
from tests.builders import real
from tests.compass import OPPOSITE
from tests.joinery.scarf.plates import KINDS, joint_of, plate, sides, turned_plate
from tests.proof.fits import Wastes, differs, overlaps, unnoticed
from tests.proof.kernel import Solid
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.scarf import textbook
from tests.proof.told import untrue
from tests.proof.wood import Log, logs
from tests.space import TOWARDS

PUSH = 1000
"""How far one stick is pushed into the other to see where they bear, in nanometres."""

KEYED = {"stop-splayed": {"key": "1-1/2"}, "under-squinted": {"key": "2"}}
WIDE = 8 * 25_400_000
"""Both sides of the check plate, in nanometres."""


def _right(frame: Frame, found: Mapping[str, Log]) -> Wastes:
    return textbook(joint_of(frame), frame, found)


def wrong_with(frame: Frame) -> list[str]:
    """All that is wrong with a scarf."""
    found = logs(frame)
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(_right(frame, found), found),
        *overlaps(found.values()),
    ]


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("keeps", ["up", "down", "south", "north"])
def test_a_scarf_is_told_and_cut_as_the_textbook_has_it(kind: str, keeps: str) -> None:
    """Either stick leading, halved in depth or in width: the steps tell the planes, and it fits."""
    assert wrong_with(plate(kind, joint={"keeps": keeps} | KEYED.get(kind, {}))) == []


@st.composite
def standings(draw: st.DrawFn) -> dict[str, object]:
    """A line that runs any way, its sticks measured from any faces and either end."""
    end = draw(st.sampled_from(sorted(TOWARDS)))
    across = [word for word in sorted(TOWARDS) if TOWARDS[word][0] != TOWARDS[end][0]]
    first = draw(st.sampled_from(across))
    second = draw(
        st.sampled_from([word for word in across if TOWARDS[word][0] != TOWARDS[first][0]])
    )
    both = [end, OPPOSITE[end]]
    return {
        "end": end,
        "faces": (first, second),
        "keeps": draw(st.sampled_from(across)),
        "ends": (draw(st.sampled_from(both)), draw(st.sampled_from(both))),
        "swapped": draw(st.booleans()),
    }


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    kind=st.sampled_from(sorted(KINDS)),
    standing=standings(),
    over=st.tuples(*[st.integers(-16, 16)] * 4),
    key=st.booleans(),
)
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_standing_and_any_real_sections_fit(
    rule: str, kind: str, standing: dict[str, object], over: tuple[int, ...], key: bool
) -> None:
    """Whatever the sticks measure, by either rule, any way round and of either hand."""
    measured = {"one": _size(over[:2]), "other": _size(over[2:])}
    own = {"rule": rule} | ({"inner": "7-1/2 x 7-1/2"} if rule == "square" else {})
    more = KEYED.get(kind, {}) if key else {}
    made = turned_plate(kind, real=measured, own=own, **standing, **more)  # type: ignore[arg-type]
    assert wrong_with(made) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    kind=st.sampled_from(sorted(KINDS)),
    keeps=st.sampled_from(["up", "down", "south", "north"]),
    off=st.tuples(*[st.integers(-8, 8)] * 3),
)
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_the_second_stick_is_cut_to_the_first_as_it_came_out(
    rule: str, kind: str, keeps: str, off: tuple[int, ...]
) -> None:
    """Whatever the first lap and its tongue measure, up to a quarter inch either way."""
    own = {"rule": rule} | ({"inner": "7-1/2 x 7-1/2"} if rule == "square" else {})
    drawn = plate(kind, joint={"keeps": keeps}, one=own, other=own)
    (first,) = (side for side in sides(drawn) if not side.mated)
    as_cut = {
        size.name: (size.laid_out + Length.inches(0, 1, 32) * count).exact_text()
        for size, count in zip(first.sizes, off, strict=False)
    }
    made = {first.timber: real(as_cut={first.id: as_cut})}
    frame = plate(kind, joint={"keeps": keeps}, one=own, other=own, real=made)
    found = logs(frame)
    assert [words for log in found.values() for words in untrue(log)] == []
    assert list(differs(_right(frame, found), found)) == []


def _size(over: tuple[int, ...]) -> Real:
    first, second = (
        (Length.inches(8) + Length.inches(0, 1, 32) * count).exact_text() for count in over
    )
    return real({"all": {"first": first, "second": second}})


@pytest.mark.parametrize("rule", ["mill", "square"])
@pytest.mark.parametrize("kind", KINDS)
def test_no_line_of_a_scarf_can_be_misplaced(kind: str, rule: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off."""
    own = {"rule": rule} | ({"inner": "7-1/2 x 7-1/2"} if rule == "square" else {})
    made = plate(kind, joint=KEYED.get(kind, {}), one=own, other=own)
    found = logs(made)
    assert list(unnoticed(_right(made, found), found)) == []


def _pushed(kind: str, way: tuple[int, int, int], **joint: object) -> float:
    """The area that two sticks bear on when one is pushed into the other, in square nanometres."""
    found = logs(plate(kind, joint=joint))
    one, other = found["one"].wood, found["other"].wood
    return _shared(one, other, way) / PUSH


def _shared(one: Solid, other: Solid, way: tuple[int, int, int]) -> float:
    return other.moved((way[0] * PUSH, way[1] * PUSH, way[2] * PUSH)).within(one).volume


def _about(area: float) -> object:
    return pytest.approx(area, rel=1e-3)


@pytest.mark.parametrize("kind", KINDS)
def test_the_sticks_bear_end_to_end_on_their_whole_section(kind: str) -> None:
    """Pushed together they meet on both abutments and the slope between: 8 x 8 in all.

    Only the tongues of a bridled scarf bear on nothing: their slots are longer.
    """
    tongues = 1.5 / 8 if kind == "bridled" else 0
    assert _pushed(kind, (-1, 0, 0)) == _about(WIDE * WIDE * (1 - tongues))


@pytest.mark.parametrize("kind", KINDS)
def test_the_laps_lie_on_one_another(kind: str) -> None:
    """Pushed up, the lower lap bears on the upper: 3' by 8", less the tongues' sides."""
    lap = 36 * 25_400_000 * WIDE
    tongues = 2 * 3 * 6.5 * 25_400_000**2 if kind == "bridled" else 0
    assert _pushed(kind, (0, 0, 1)) == _about(lap - tongues)


@pytest.mark.parametrize("kind", KINDS)
def test_only_a_squint_keeps_the_laps_from_lifting(kind: str) -> None:
    """Pulled down, the lower lap is held by both undercuts, each 1/2" long; others come apart."""
    held = 2 * 0.5 * 25_400_000 * WIDE if kind == "under-squinted" else 0
    assert _pushed(kind, (0, 0, -1)) == pytest.approx(held, rel=1e-3, abs=1e9)
