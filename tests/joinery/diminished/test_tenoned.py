"""The tenon's side: the cuts, and lines from the reference faces."""

import pytest

from benchmate.frame.reduction import STOP_LINE
from benchmate.joinery.diminished.between import between
from benchmate.joinery.diminished.tenoned import (
    BOTH_LENGTHS,
    edge_sides,
    shoulder_setting,
    tenon_cuts,
    tenon_lines,
)
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Line
from benchmate.model.solids import Axis
from tests.builders import length, named, real, set_in_words
from tests.joinery.diminished.ledges import SQUARE, SQUARE_BEAM, Word, end_of, joint_in, ledge

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)


def _lines(**words: Word) -> dict[str, Line]:
    built = ledge(**words)
    return named(tenon_lines(end_of(built), between(joint_in(built), built), TAPE))


def _struck(**words: Word) -> list[set[str | None]]:
    return [{plane.line for plane in cut.planes} for cut in tenon_cuts(end_of(ledge(**words)))]


def test_what_is_beside_the_tenon_comes_off_beyond_the_slope() -> None:
    """A girt's tenon is as tall as itself; relieved, it loses both edges too."""
    assert _struck() == [{"shoulder", "near-cheek"}, {"shoulder", "far-cheek"}]
    assert _struck(relief_reference="1", relief_far="1")[2:] == [
        {"shoulder", "reference-edge"},
        {"shoulder", "far-edge"},
    ]
    assert _struck(set_back="0") == [{"shoulder", "far-cheek"}]


def test_by_square_rule_the_far_faces_come_down_first() -> None:
    """From the other timber's face on."""
    assert _struck(own=SQUARE) == [
        {STOP_LINE, "reduced-second"},
        {STOP_LINE, "far-edge"},
        {"shoulder", "near-cheek"},
        {"shoulder", "far-cheek"},
    ]


def test_a_top_that_is_reduced_ends_the_slope() -> None:
    """Run on above the inner timber it would go back from the other's face."""
    assert {"shoulder", "near-cheek", "far-edge"} in _struck(own=SQUARE, first="down")
    beam = _struck(own=SQUARE_BEAM, lying=True, first="down")
    assert {"shoulder", "near-cheek", "reduced-first"} in beam


def test_the_shoulder_is_set_off_at_top_and_underside() -> None:
    """120" on the top and 1" further on the underside: 1 in 8 on the square."""
    line = _lines()["shoulder"]
    assert (line.axis, line.at) == (Axis.ALONG, length("120"))
    assert line.slant is not None
    assert (line.slant.start.along, line.slant.start.deep) == (length("120"), length("0"))
    assert (line.slant.finish.along, line.slant.finish.deep) == (length("121"), length("8"))
    assert line.slant.where == ("top face", "underside")
    assert set_in_words(line.slant.setting) == (
        'strike along the tongue: blade 12", tongue 1-1/2"; saw 7.1° off square'
    )


def test_it_starts_at_the_top_whatever_it_is_measured_from() -> None:
    """So that the reference shoulder is the datum of the stick."""
    line = _lines(first="down", reference=True)["shoulder"]
    assert line.slant is not None
    assert (line.at, line.slant.start.deep) == (length("0"), length("8"))
    assert (line.slant.finish.along, line.slant.finish.deep) == (length("-1"), length("0"))
    assert line.slant.where == ("top face", "underside")


@pytest.mark.parametrize(
    ("words", "where"),
    [
        ({"own": SQUARE}, ("top face", "far edge line")),
        ({"own": SQUARE, "first": "down"}, ("far edge line", "underside")),
        ({"own": SQUARE, "relief_far": "1"}, ("top face", "reduction line, underside")),
        (
            {"own": SQUARE_BEAM, "lying": True, "thickness": "5-1/2"},
            ("top face", "far cheek line"),
        ),
    ],
)
def test_on_a_rough_stick_it_ends_at_the_inner_timber(
    words: dict[str, Word], where: tuple[str, str]
) -> None:
    """Found on the line that the far face is brought down to."""
    line = _lines(**words)["shoulder"]
    assert line.slant is not None
    assert line.slant.where == where
    assert {line.slant.start.deep, line.slant.finish.deep} == {length("0"), length("7-1/2")}


def test_both_lengths_are_said() -> None:
    """And the tenon's, from the underside."""
    line = _lines()["shoulder"]
    assert [(each.value, each.words) for each in line.beside] == [
        (length("3"), "tenon beyond it, from the underside"),
        (length("120"), "shoulder to shoulder along the top"),
        (length("121"), "shoulder to shoulder along the underside"),
    ]
    assert line.caution == BOTH_LENGTHS


def test_a_far_shoulder_waits_for_a_far_face() -> None:
    """By mill rule it comes where that face really is."""
    caution = _lines(into_first="west")["shoulder"].caution
    assert caution.startswith("Measure Post's East face at the joint first")
    measured = {"post": real({"girt-end-mortise": {"first": "8"}})}
    assert _lines(into_first="west", real=measured)["shoulder"].caution == BOTH_LENGTHS
    assert _lines(into_first="west", reference=True)["shoulder"].caution == BOTH_LENGTHS


def test_the_narrow_edges_come_from_the_reference_face() -> None:
    """Struck where they are relieved or go by square rule."""
    lines = _lines(relief_reference="1", relief_far="1/2")
    assert (lines["reference-edge"].at, lines["far-edge"].at) == (length("1"), length("7-1/2"))
    assert lines["far-edge"].title == "Relief line, underside"
    assert lines["far-edge"].caution == "Never measure this from the underside."
    assert [each.value for each in lines["far-edge"].beside] == [length("1/2"), length("6-1/2")]
    square = _lines(own=SQUARE)["far-edge"]
    assert [each.value for each in square.beside] == [length("1/2"), length("7-1/2")]
    assert (square.title, square.at) == ("Far edge line, underside", length("7-1/2"))
    assert "Run it on" in square.why
    assert not {"reference-edge", "far-edge"} & set(_lines())


def test_the_edges_that_are_sawn() -> None:
    """None of a plain girt's; a far one that a reduction takes has no shoulder."""
    assert edge_sides(end_of(ledge())) == {}
    assert edge_sides(end_of(ledge(relief_reference="1", relief_far="1/2"))) == {
        Face.FIRST: length("1"),
        Face.FAR_FIRST: length("1/2"),
    }
    assert edge_sides(end_of(ledge(own=SQUARE))) == {}
    assert edge_sides(end_of(ledge(own=SQUARE, relief_far="1"))) == {
        Face.FAR_FIRST: length("1-1/2")
    }


def test_the_setting_goes_by_the_end_that_goes_in() -> None:
    """1" in 7-1/2" by square rule: 7.6 degrees."""
    assert shoulder_setting(end_of(ledge(own=SQUARE)), TAPE).off_square == 76


def test_a_reduction_from_the_face_says_no_distance_back() -> None:
    """It starts where the shoulder does; on a stick that is over, so far back."""
    assert _lines(own=SQUARE)[STOP_LINE].beside == ()
    far = _lines(own=SQUARE, into_first="west")[STOP_LINE]
    assert [each.value for each in far.beside] == [length("1/2")]
