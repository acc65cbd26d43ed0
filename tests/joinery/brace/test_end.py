"""The lines on a brace's end."""

import pytest

from benchmate.frame.raking_tenon import reduced_line
from benchmate.joinery.brace.end import end_cuts, end_lines, reduced
from benchmate.joinery.brace.legs import legs
from benchmate.joinery.brace.record import BraceJoint
from benchmate.measure.length import ZERO
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Line
from benchmate.model.solids import Axis
from tests.builders import length, line, real, set_in_words
from tests.joinery.brace.bays import bay
from tests.joinery.brace.test_shape import made


def lines(end: str = "foot", **words: object) -> tuple[Line, ...]:
    """The lines of one end of the brace of a bay."""
    frame = bay(**words)  # type: ignore[arg-type]
    joint = next(
        work for work in frame.project.works if isinstance(work, BraceJoint) and end in work.id
    )
    shape = made(frame, end)
    return end_lines(shape, legs(joint, shape.stick, frame), frame.project.tape)


def test_the_order_they_are_struck_in() -> None:
    """The face first, then nose and seat, cheeks, and the tenon's end."""
    names = [each.id for each in lines()]
    assert names == ["shoulder", "nose", "seat", "near-cheek", "far-cheek", "tenon-end"]


def test_unhoused_the_face_is_the_shoulder() -> None:
    """There is no seat line, and the shoulder bounds the cut."""
    names = [each.id for each in lines(joint={"housing": "0"})]
    assert names == ["shoulder", "nose", "near-cheek", "far-cheek", "tenon-end"]


def test_both_ends_take_one_setting_and_each_its_own_arm() -> None:
    """36 down and 48 along: foot plumb on the tongue, head level on the blade, noses the other."""
    found = {
        (end, name): line(lines(end, legs=("36", "48")), name).slant
        for end in ("foot", "head")
        for name in ("shoulder", "nose")
    }
    settings = {key: set_in_words(slant.setting) for key, slant in found.items() if slant}
    plumb = 'strike along the tongue: blade 12", tongue 9"; saw 36.9° off square'
    level = 'strike along the blade: blade 12", tongue 9"; saw 53.1° off square'
    assert settings == {
        ("foot", "shoulder"): plumb,
        ("foot", "nose"): level,
        ("head", "shoulder"): level,
        ("head", "nose"): plumb,
    }


def test_the_face_line_starts_on_the_long_edge() -> None:
    """At the reference shoulder, and at 45 degrees the section further on across."""
    shoulder = line(lines(), "shoulder")
    assert (shoulder.at, shoulder.faces) == (ZERO, LONG_FACES)
    assert shoulder.slant is not None
    assert shoulder.slant.axis is Axis.FIRST
    assert shoulder.slant.finish.along == length("6")
    assert "Do not saw here." in shoulder.caution
    assert "swapped" in shoulder.caution


def test_seat_and_tip_are_set_off_square() -> None:
    """1/2" from the shoulder line, then 4" from the seat line: never along the edge."""
    seat, tip = line(lines(), "seat"), line(lines(), "tenon-end")
    assert [(each.value, each.hook) for each in (*seat.readings, *tip.readings)] == [
        (length("1/2"), "shoulder line"),
        (length("4"), "seat line"),
    ]
    assert all("square to it" in each.readings[0].way for each in (seat, tip))


def test_barefaced_is_told_and_has_no_near_cheek() -> None:
    """One shoulder only, so left and right are not alike."""
    found = lines(joint={"set_back": "0"})
    assert "near-cheek" not in [each.id for each in found]
    assert line(found, "far-cheek").why.startswith("Barefaced")


@pytest.mark.parametrize(("housing", "line_on"), [("0", "shoulder line"), ("1/2", "shoulder line")])
def test_a_nose_that_is_set_in_is_measured_where_the_long_edge_meets_the_face(
    housing: str, line_on: str
) -> None:
    """1" in along the line there; a housed end has another shoulder line, 1/2" further on."""
    found = lines(joint={"nose": "1", "housing": housing})
    (reading,) = line(found, "nose").readings
    assert (reading.value, reading.hook) == (length("1"), "long edge")
    assert reading.way == f"along the {line_on}, towards the short edge"
    assert line(found, "shoulder").faces == ()


def test_the_face_line_is_sawn_to_beside_a_nose_that_is_set_in() -> None:
    """Only so far: the rest of a housed end goes on. An end without a housing is sawn right in."""
    words = "Saw here only from the long edge to the nose line"
    assert words in line(lines(joint={"nose": "1"}), "shoulder").caution
    bare = line(lines(joint={"nose": "1", "housing": "0"}), "shoulder").caution
    assert "aw here" not in bare


OVER = {"post": {"rule": "square", "inner": "8 x 8"}}
"""A post that is counted on as 8 x 8."""


def test_in_an_oversize_post_the_end_beside_the_nose_stops_at_the_real_face() -> None:
    """The face line is then inside the post: struck all round, and sawn nowhere."""
    sticks = {"post": real({"all": {"first": "8-3/8"}})}
    found = lines(joint={"nose": "1"}, own=OVER, real=sticks)
    assert line(found, "shoulder").faces == LONG_FACES
    assert line(found, "shoulder").caution.startswith("Do not saw here.")
    stop = line(found, "reduction-stop")
    assert stop.title == "End line beside the nose"
    assert stop.caution.startswith("Saw here only from the underside to the nose line")


def test_by_square_rule_one_line_ends_the_reduction_and_the_point_beside_the_nose() -> None:
    """Something comes off a reference face there, so it may not say that nothing does."""
    own = {**OVER, "brace": {"rule": "square", "inner": "6 x 4"}}
    sticks = {
        "post": real({"all": {"first": "8-3/8"}}),
        "brace": real({"all": {"first": "6-1/4", "second": "4"}}),
    }
    for nose, words in (("1", "Right across it is sawn only"), ("0", "Only on the far faces")):
        found = lines(joint={"nose": nose}, own=own, real=sticks)
        assert words in line(found, "reduction-stop").caution


def test_by_square_rule_the_far_faces_come_down() -> None:
    """6-1/4" and 4-1/4" of brace: the short edge and the far side lose a quarter each."""
    frame = bay(
        own={"brace": {"rule": "square", "inner": "6 x 4"}},
        real={"brace": real({"all": {"first": "6-1/4", "second": "4-1/4"}})},
    )
    assert reduced(made(frame)) == {Axis.FIRST: length("6"), Axis.SECOND: length("4")}
    struck = {plane.line for cut in end_cuts(made(frame)) for plane in cut.planes}
    assert {reduced_line(Axis.FIRST), reduced_line(Axis.SECOND), "reduction-stop"} <= struck


def test_by_mill_rule_nothing_is_reduced() -> None:
    """The stick is taken as it is."""
    assert reduced(made(bay(real={"brace": real({"all": {"first": "6-1/4"}})}))) == {}


def test_the_far_end_says_what_is_not_measured_yet() -> None:
    """The near one is struck from its own end, whatever the brace meets."""
    assert "Measure" not in line(lines(), "shoulder").caution
    assert line(lines("head"), "shoulder").caution.startswith("Measure Post's East face")
