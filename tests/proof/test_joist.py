"""Joists dropped in from above proved: told true, cut as the textbook cuts them, and a fit."""

from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame
from benchmate.joinery.joist.record import DovetailJoist, JoistPocket
from tests.compass import OPPOSITE
from tests.floor import FLOORS, Floor, Off, over
from tests.joinery.joist.joints import dovetail_joist, joist_pocket
from tests.proof.fits import Wastes, borne, differs, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.joist import dovetail
from tests.proof.textbook.pocket import textbook as pocket
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

Joint = JoistPocket | DovetailJoist
Made = Callable[[Floor], Joint]


def _left(floor: Floor) -> str:
    """Where the joist's reference side looks."""
    timber = floor.joist_timber
    side = timber.second_face if floor.first else timber.first_face
    return side.word


KINDS: dict[str, Made] = {
    "pocket": lambda floor: joist_pocket(floor.end),
    "cut down": lambda floor: joist_pocket(floor.end, end_depth="4", bearing="3"),
    "sloping": lambda floor: joist_pocket(floor.end, end_depth="5", diminished="12"),
    "dovetail": lambda floor: dovetail_joist(floor.end),
    "half deep dovetail": lambda floor: dovetail_joist(floor.end, end_depth="3-1/2"),
    "wedged on its reference side": lambda floor: dovetail_joist(
        floor.end, wedge="3/8", wedge_side=_left(floor)
    ),
    "wedged on its straight far side": lambda floor: dovetail_joist(
        floor.end,
        wedge="1/4",
        wedge_side=OPPOSITE[_left(floor)],
        straight=OPPOSITE[_left(floor)],
        end_depth="5",
    ),
    "straight on its reference side": lambda floor: dovetail_joist(
        floor.end, straight=_left(floor)
    ),
}

FLARED = [kind for kind in KINDS if "dovetail" in kind or "side" in kind]


def _right(frame: Frame, found: dict[str, Log]) -> Wastes:
    (joint,) = (work for work in frame.project.works if isinstance(work, Joint))
    if isinstance(joint, JoistPocket):
        return pocket(joint, frame, found)
    return dovetail(joint, frame, found)


def wrong_with(frame: Frame) -> list[str]:
    """All that is wrong with a joist's end and the recess it drops into."""
    found = logs(frame)
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(_right(frame, found), found),
        *overlaps(found.values()),
    ]


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("name", FLOORS)
def test_it_is_told_and_cut_as_the_textbook_has_it(name: str, kind: str) -> None:
    """Any heading, either hand: the steps tell the planes, the planes take the wood."""
    floor = FLOORS[name]
    assert wrong_with(floor.frame(KINDS[kind](floor))) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(FLOORS)),
    kind=st.sampled_from(sorted(KINDS)),
    off=st.tuples(*[st.integers(0, 32)] * 4),
)
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(rule: str, name: str, kind: str, off: Off) -> None:
    """Whatever the sticks are over, by either rule, the joint is cut right and overlaps nothing."""
    floor = over(FLOORS[name], off, rule)
    assert wrong_with(floor.frame(KINDS[kind](floor))) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("name", ["as drawn", "through a far face", "lower than its beam"])
def test_no_line_of_it_can_be_misplaced(name: str, kind: str, rule: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off.

    A housing's wall beside a straight flank is that flank's own line over again.
    """
    floor = over(FLOORS[name], (24, 24, 24, 24), rule)
    frame = floor.frame(KINDS[kind](floor))
    found = logs(frame)
    doubled = "/housing-" if "straight" in kind else "nothing"
    missed = unnoticed(_right(frame, found), found)
    assert [words for words in missed if doubled not in words] == []


@pytest.mark.parametrize(
    ("kind", "area"),
    [
        ("pocket", 2 * 4),
        ("cut down", 3 * 4),
        ("sloping", 2 * 4),
        ("dovetail", 3 * 3.25),
        ("half deep dovetail", 3 * 3.25),
        ("straight on its reference side", 3 * 3.625),
    ],
)
def test_it_bears_on_the_floor_it_drops_to(kind: str, area: float) -> None:
    """As long as it goes in, by its width, or the mean of a tail's neck and its tip."""
    floor = FLOORS["lower than its beam"]
    found = logs(floor.frame(KINDS[kind](floor)))
    assert borne(found["joist"], found["beam"], (0, 0, -1)) == pytest.approx(area)


@pytest.mark.parametrize("kind", FLARED)
def test_a_dovetail_holds(kind: str) -> None:
    """Drawn out it comes up against its flanks, but for the room a wedge is to fill."""
    floor = FLOORS["as drawn"]
    joint = KINDS[kind](floor)
    found = logs(floor.frame(joint))
    held = borne(found["joist"], found["beam"], (0, 1, 0))
    flanks = 2 - ("straight" in kind) - ("wedged on its reference" in kind)
    deep = {"half deep dovetail": 3.5, "wedged on its straight far side": 5}.get(kind, 7)
    assert held == pytest.approx(flanks * 0.75 * deep, rel=1e-3)


@pytest.mark.parametrize(
    ("kind", "area"),
    [
        ("pocket", 0),
        ("cut down", 3 * 4),
        ("sloping", 0),
        ("dovetail", 2 * 0.75 * 7),
        ("half deep dovetail", 4 * 7 - 3.5 * 2.5),
        ("straight on its reference side", 0.75 * 7),
    ],
)
def test_what_comes_up_to_the_beam(kind: str, area: float) -> None:
    """A tail's shoulders and the face of a square notch do; a sloping underside does not."""
    floor = FLOORS["lower than its beam"]
    found = logs(floor.frame(KINDS[kind](floor)))
    stopped = borne(found["joist"], found["beam"], (0, -1, 0))
    assert stopped == pytest.approx(area, abs=1e-3)
