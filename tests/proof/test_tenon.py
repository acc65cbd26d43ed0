"""The tenon proved: told true, cut as the textbook cuts it, and bored as it bores it."""

from collections.abc import Mapping
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.model.findings import Severity
from tests.builders import length
from tests.joinery.tenon.housed import Housed, housed, passing, pegged
from tests.proof.bored import prisms
from tests.proof.fits import differs, overlaps
from tests.proof.framings import (
    AS_DRAWN,
    FRAMINGS,
    OTHER,
    STICK,
    TURNS,
    Sticks,
)
from tests.proof.marks import FACE_WORDS, OPPOSITE
from tests.proof.planted import uncaught_cuts, uncaught_words
from tests.proof.raising import end_names
from tests.proof.rounds import rounds_off
from tests.proof.sizes import UNSHRUNK
from tests.proof.tenons import ANY_FRAMING, ANY_TURN, DRAWN, FULL, OFF, OVERSIZE, PEGS, VARIANTS, of
from tests.proof.textbook.entry import Entry
from tests.proof.textbook.tenon import bores, textbook
from tests.proof.textbook.tenon import tenon as tenon_of
from tests.proof.told import untrue
from tests.proof.wood import logs
from tests.space import TOWARDS


def wrong_with(joint: TenonJoint, frame: Frame) -> list[str]:
    """All that is wrong with one tenon, but for whether it fits."""
    found = logs(frame)
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(textbook(joint, frame, found), found),
        *rounds_off(bores(joint, found), found),
    ]


@pytest.mark.parametrize("sticks", [AS_DRAWN, OFF, OVERSIZE], ids=["as drawn", "mill", "square"])
@pytest.mark.parametrize("variant", VARIANTS)
def test_a_tenon_is_told_and_cut_as_the_textbook_has_it(variant: str, sticks: Sticks) -> None:
    """Every kind there is, by either rule: the steps tell the planes, the planes take the wood."""
    name, turn = ANY_FRAMING[variant], ANY_TURN[variant]
    assert wrong_with(*of(name, VARIANTS[variant], sticks, turn=turn)) == []


@pytest.mark.parametrize("turn", TURNS)
@pytest.mark.parametrize("name", FRAMINGS)
def test_it_is_right_in_every_heading_and_hand(name: str, turn: int) -> None:
    """Posts, girts, ties and sills, each turned four ways, and the same mirrored."""
    assert wrong_with(*of(name, FULL, OVERSIZE, turn=turn)) == []


@pytest.mark.parametrize("name", FRAMINGS)
def test_a_housing_is_open_where_the_end_comes_flush(name: str) -> None:
    """An end that lies in the other's side, or stands past it, is let in from there."""
    for aside in ("0", "-1/2", "3"):
        joint, frame = of(name, {"housing": "3/4"}, OVERSIZE, aside=aside)
        assert wrong_with(joint, frame) == []


CUT: Mapping[str, Mapping[str, str]] = {
    "thin": {"thickness": "1-15/16"},
    "narrow": {"width": "6-1/4"},
    "short": {"length": "3-3/4"},
    "full": {"thickness": "2-1/32", "width": "6-9/16", "length": "4-1/8"},
}
"""What was measured of a tenon that was made."""


@pytest.mark.parametrize("cut", CUT)
@pytest.mark.parametrize("name", ["post foot in a sill", "girt in a post's far face"])
def test_the_mortise_follows_the_tenon_as_it_was_cut(name: str, cut: str) -> None:
    """From its near cheek, its reference edge and its shoulder; the pegs stay where they were."""
    words = {"relief_far": "1/2", "end_allowance": "1/4", "pegs": DRAWN, "housing": "1/2"}
    joint, frame = of(name, words, replace(OVERSIZE, as_cut=CUT[cut]))
    drawn = of(name, words, OVERSIZE)[1]
    mortises = [logs(each)[OTHER].feature("joint-mortise").cuts for each in (frame, drawn)]
    assert mortises[0] != mortises[1]
    assert wrong_with(joint, frame) == []


@given(case=st.one_of(housed(), passing(), pegged()).filter(lambda case: case.scene.placed))
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_tenon_in_any_timber(case: Housed) -> None:
    """Any stances, sizes, sections, by either rule; what the program stops need only be told."""
    found = logs(case.frame)
    assert [words for log in found.values() for words in untrue(log)] == []
    told = [
        each for log in found.values() for part in log.layout.features for each in part.findings
    ]
    if not any(each.severity is Severity.STOP for each in told):
        assert list(differs(textbook(case.joint, case.frame, found), found)) == []
    if not told:
        assert list(rounds_off(bores(case.joint, found), found)) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(FRAMINGS)),
    variant=st.sampled_from(sorted(VARIANTS)),
    turn=st.sampled_from(TURNS),
    over=st.tuples(*[st.integers(0, 32)] * 4),
)
@settings(max_examples=12, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(
    rule: str, name: str, variant: str, turn: int, over: tuple[int, int, int, int]
) -> None:
    """Whatever the sticks are over, by either rule, the joint is cut right and overlaps nothing."""
    joint, frame = of(name, VARIANTS[variant], Sticks(rule=rule, over=over), turn=turn)
    assert wrong_with(joint, frame) == []
    assert list(overlaps(logs(frame).values())) == []


def _holes(frame: Frame, timber: str, feature: str) -> list[tuple[float, float, float]]:
    """A point on the axis of each hole of a joint in a timber."""
    log = logs(frame)[timber]
    return [
        log.stand.point(*(prism.middle.get(axis, 0) for axis in range(3)))
        for prism in prisms(log.feature(feature))
    ]


@pytest.mark.parametrize("draw", ["0", "1/32", "1/8"])
@pytest.mark.parametrize("name", FRAMINGS)
def test_the_tenon_s_holes_lie_nearer_its_shoulder_by_the_draw(name: str, draw: str) -> None:
    """In the building, way out of the other timber, exactly; and not at all the other two ways."""
    joint, frame = of(name, {"pegs": {**PEGS, "draw": draw}}, OVERSIZE)
    own, others = end_names(joint)
    met = tenon_of(joint, logs(frame)).met
    pairs = zip(
        _holes(frame, STICK, f"{own}-pegs"), _holes(frame, OTHER, f"{others}-pegs"), strict=True
    )
    for here, there in pairs:
        apart = [b - a for a, b in zip(here, there, strict=True)]
        ways = [met.stand.ways[number] for number in (0, met.grain)]
        drawn, aside = (sum(a * b for a, b in zip(apart, way, strict=True)) for way in ways)
        assert (drawn, aside) == (length(draw).nm, 0)


@pytest.mark.parametrize("bored_from", ["reference", "far"])
@pytest.mark.parametrize("name", FRAMINGS)
def test_both_timbers_are_bored_from_the_same_side(name: str, bored_from: str) -> None:
    """The other timber's side that is named, wherever the stick's own reference face looks."""
    joint, frame = of(name, {"pegs": {**PEGS, "bored_from": bored_from}}, OVERSIZE)
    found = logs(frame)
    met = tenon_of(joint, found).met
    inwards = met.near < met.far if bored_from == "reference" else met.near > met.far
    side = (FACE_WORDS[OPPOSITE[_looks(met, inwards)]],)
    for timber, feature in zip((STICK, OTHER), end_names(joint), strict=True):
        assert found[timber].layout.step(f"{feature}-pegs/peg-line").sides == side


def _looks(met: Entry, inwards: bool) -> str:
    """Where one looks that goes in from the stick's reference face, or out of it."""
    way = [round(part) * (1 if inwards else -1) for part in met.stand.ways[met.aside]]
    return next(word for word, (axis, sense) in TOWARDS.items() if way[axis] == sense)


@pytest.mark.parametrize("variant", VARIANTS)
def test_no_line_of_a_tenon_can_be_misplaced(variant: str) -> None:
    """Every struck line counts: a millimetre off, mirrored or from the far side, it is caught."""
    name, turn = ANY_FRAMING[variant], ANY_TURN[variant]
    joint, frame = of(name, VARIANTS[variant], OVERSIZE, turn=turn)
    found = logs(frame)
    assert list(uncaught_cuts(textbook(joint, frame, found), found, differs)) == []
    assert list(uncaught_cuts(bores(joint, found), found, rounds_off)) == []


@pytest.mark.parametrize("variant", VARIANTS)
def test_no_figure_of_a_tenon_can_be_misread(variant: str) -> None:
    """A figure a millimetre off, hooked on the wrong thing, or hatched on the wrong side shows."""
    name, turn = ANY_FRAMING[variant], ANY_TURN[variant]
    _, frame = of(name, VARIANTS[variant], OVERSIZE, turn=turn)
    assert list(uncaught_words(logs(frame))) == []
