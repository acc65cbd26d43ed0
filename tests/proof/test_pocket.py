"""The joist's pocket proved: told true, cut as the textbook cuts it, and a fit."""

from collections.abc import Mapping
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame
from benchmate.joinery.joist.record import JoistPocket
from benchmate.measure.length import NM_PER_INCH
from benchmate.model.findings import Severity
from tests.builders import length, real
from tests.builders import pocket as joist_pocket
from tests.joinery.joist.floors import Laid, laid
from tests.joinery.roofs import dropped, roof
from tests.proof.fits import PUSH, borne, differs, overlaps
from tests.proof.framings import AS_DRAWN, OTHER, STICK, TURNS, Framing, Sticks, framed, scene
from tests.proof.planted import uncaught_cuts, uncaught_words
from tests.proof.raising import end_names
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.pocket import Pocket, textbook
from tests.proof.textbook.pocket import pocket as pocket_of
from tests.proof.told import untrue
from tests.proof.wood import TOUCH, Log, logs
from tests.space import Stance

JOISTS = {
    "in a beam's far side": Framing(
        Stance("up", "south", "west"), Stance("up", "west", "south"), "west"
    ),
    "in a beam's outside": Framing(
        Stance("up", "north", "west"), Stance("west", "up", "south"), "east"
    ),
    "measured from its side": Framing(
        Stance("south", "up", "east"), Stance("up", "east", "north"), "east"
    ),
    "in a beam measured from below": Framing(
        Stance("up", "south", "east"), Stance("down", "west", "north"), "west"
    ),
}
"""Joists in beams, at reference ends and at far ends; turned and mirrored, all there are."""

VARIANTS: Mapping[str, Mapping[str, str]] = {
    "full": {},
    "cut down": {"end_depth": "4", "bearing": "3"},
    "sloping": {"end_depth": "4", "diminished": "12"},
    "without room behind": {"end_clearance": "0"},
    "with its own room behind": {"end_clearance": "3/8"},
}

OFF = Sticks(over=(-3, 4, 5, -6))
OVERSIZE = Sticks(rule="square", over=(5, 9, 12, 7))


def of(
    name: str, variant: str, sticks: Sticks = AS_DRAWN, *, turn: int = 0, below: str = "1"
) -> tuple[JoistPocket, Frame]:
    """One pocket; the joist's top lies so far below the beam's, or above it if measured so."""
    framing = JOISTS[name].turned(turn)
    ends = {"timber": STICK, "end": framing.end, "into": OTHER, "at": None}
    joint = joist_pocket(id="joint", **(ends | dict(VARIANTS[variant])))
    found = scene(framing, sticks, deep=joint.bearing.nm, aside=length(below).nm)
    return joint, framed(found, joint, sticks, end=end_names(joint)[0])


def wrong_with(joint: JoistPocket, frame: Frame) -> list[str]:
    """All that is wrong with one joist's end and its pocket, but for whether they fit."""
    found = logs(frame)
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(textbook(joint, frame, found), found),
    ]


@pytest.mark.parametrize("sticks", [AS_DRAWN, OFF, OVERSIZE], ids=["as drawn", "mill", "square"])
@pytest.mark.parametrize("variant", VARIANTS)
@pytest.mark.parametrize("name", JOISTS)
def test_a_pocket_is_told_and_cut_as_the_textbook_has_it(
    name: str, variant: str, sticks: Sticks
) -> None:
    """Full or cut down, by either rule: the steps tell the planes, the planes take the wood."""
    assert wrong_with(*of(name, variant, sticks)) == []


@pytest.mark.parametrize("turn", TURNS)
@pytest.mark.parametrize("name", JOISTS)
def test_it_is_right_in_every_heading_and_hand(name: str, turn: int) -> None:
    """Turned four ways and mirrored, with its top below the beam's, level with it and above."""
    for below in ("2", "0", "-1/2"):
        assert wrong_with(*of(name, "cut down", OVERSIZE, turn=turn, below=below)) == []


@pytest.mark.parametrize(
    "as_cut",
    [{"thickness": "5-7/8"}, {"width": "6-3/4"}, {"thickness": "5-13/16", "width": "7-1/16"}],
    ids=["shallow", "narrow", "both"],
)
@pytest.mark.parametrize("name", JOISTS)
def test_the_pocket_follows_the_end_as_it_was_cut(name: str, as_cut: Mapping[str, str]) -> None:
    """From the joist's top and from its side reference face."""
    joint, frame = of(name, "full", replace(OVERSIZE, as_cut=as_cut))
    drawn = of(name, "full", OVERSIZE)[1]
    pockets = [logs(each)[OTHER].feature("joint-pocket").cuts for each in (frame, drawn)]
    assert pockets[0] != pockets[1]
    assert wrong_with(joint, frame) == []


@given(case=laid().filter(lambda case: case.scene.placed))
@settings(max_examples=12, deadline=None, phases=UNSHRUNK)
def test_any_joist_in_any_beam(case: Laid) -> None:
    """Any stances, sizes, sections, by either rule; what the program stops need only be told."""
    found = logs(case.frame)
    assert [words for log in found.values() for words in untrue(log)] == []
    told = [
        each for log in found.values() for part in log.layout.features for each in part.findings
    ]
    if not any(each.severity is Severity.STOP for each in told):
        assert list(differs(textbook(case.joint, case.frame, found), found)) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(JOISTS)),
    variant=st.sampled_from(sorted(VARIANTS)),
    over=st.tuples(*[st.integers(0, 32)] * 4),
)
@settings(max_examples=10, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(
    rule: str, name: str, variant: str, over: tuple[int, int, int, int]
) -> None:
    """Whatever the sticks are over, by either rule, the joint is cut right and overlaps nothing."""
    joint, frame = of(name, variant, Sticks(rule=rule, over=over))
    assert wrong_with(joint, frame) == []
    assert list(overlaps(logs(frame).values())) == []


@pytest.mark.parametrize("variant", ["full", "cut down", "sloping"])
@pytest.mark.parametrize("name", JOISTS)
def test_no_line_of_a_pocket_can_be_misplaced_or_misread(name: str, variant: str) -> None:
    """Every struck line counts: a millimetre off, mirrored or from the far side, it is caught."""
    joint, frame = of(name, variant, OVERSIZE)
    found = logs(frame)
    assert list(uncaught_cuts(textbook(joint, frame, found), found, differs)) == []
    assert list(uncaught_words(found)) == []


BEARS = [
    ("full", AS_DRAWN, 2 * 7),
    ("cut down", AS_DRAWN, 3 * 7),
    ("full", Sticks(over=(16, 16, 8, 8)), 2 * 7.5),
    ("cut down", Sticks(rule="square", over=(16, 16, 0, 0)), 3 * 7),
]
"""What a joist 7 wide bears with, in square inches: as long as it goes in, by its width."""


@pytest.mark.parametrize(("variant", "sticks", "area"), BEARS)
@pytest.mark.parametrize("name", JOISTS)
def test_the_joist_bears_on_all_of_its_pocket_s_floor(
    name: str, variant: str, sticks: Sticks, area: float
) -> None:
    """Pushed down by a micron it shares just that area, so deep, with its beam."""
    found = logs(of(name, variant, sticks)[1])
    assert borne(found[STICK], found[OTHER], (0, 0, -1)) == pytest.approx(area)


@pytest.mark.parametrize("variant", VARIANTS)
@pytest.mark.parametrize("name", JOISTS)
def test_the_end_is_snug_and_has_its_room_behind(name: str, variant: str) -> None:
    """Both its sides touch at once; in by its room it is free, and then its end touches."""
    joint, frame = of(name, variant, OVERSIZE)
    found = logs(frame)
    made = pocket_of(joint, frame, found)
    deep, wide = (made.across[number][1] for number in (made.plumb, 3 - made.plumb))
    # Its top lies an inch below the beam's, or two of one that is measured from below.
    recess = joint.bearing.nm + made.met.over
    for sense in (1, -1):
        shared = _meets(made, found[OTHER], 3 - made.plumb, sense * PUSH)
        assert shared == pytest.approx(deep * recess * PUSH)
    room = made.long - joint.bearing.nm
    assert _meets(made, found[OTHER], 0, room) < TOUCH
    assert _meets(made, found[OTHER], 0, room + PUSH) == pytest.approx(deep * wide * PUSH)


def _meets(made: Pocket, other: Log, number: int, by: float) -> float:
    """What an end moved one of the three ways of its joint would share with the beam."""
    east, north, up = (round(by * part) for part in made.met.stand.ways[number])
    return made.body().moved((east, north, up)).within(other.wood).volume


@pytest.mark.parametrize("rise", ["0'", "5'", "12'"])
@pytest.mark.parametrize("words", [{}, {"end_depth": "4"}], ids=["full", "cut down"])
def test_a_purlin_s_pockets_are_right_in_the_slope(rise: str, words: Mapping[str, str]) -> None:
    """Rolled with its roof it drops into the rafters' tops square to the slope, and bears there."""
    joints = dropped(**words)
    sizes = {"rafter-west": {"second": "6-1/4"}, "purlin": {"first": "6-1/8", "second": "5-3/16"}}
    frame = roof(
        *joints, rise=rise, real={each: real({"all": size}) for each, size in sizes.items()}
    )
    found = logs(frame)
    assert [words for log in found.values() for words in untrue(log)] == []
    for joint in joints:
        assert isinstance(joint, JoistPocket)
        assert list(differs(textbook(joint, frame, found), found)) == []
        made = pocket_of(joint, frame, found)
        moved = made.met.stand.ways[made.plumb]
        east, north, up = (round(PUSH * 1000 * part) for part in moved)
        shared = made.body().moved((east, north, up)).within(found[joint.into].wood).volume
        area = made.across[3 - made.plumb][1] * joint.bearing.nm
        assert shared / 1000 / PUSH == pytest.approx(area, rel=1e-3)
        assert area == pytest.approx(5.1875 * 1.5 * NM_PER_INCH**2)
