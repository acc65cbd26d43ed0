"""The receiving side: the cuts, and lines for housing and mortise."""

from typing import Any

import pytest

from benchmate.joinery.diminished.mortise import ENGINEER, mortise_cuts, mortise_lines, open_faces
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Line
from benchmate.model.solids import Axis
from tests.builders import length, named, real
from tests.joinery.diminished.ledges import SQUARE, SQUARE_BEAM, Word, ledge, mortise_of

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)


def _lines(**words: Word) -> dict[str, Line]:
    return named(mortise_lines(mortise_of(ledge(**words)), TAPE))


def test_a_wedge_of_wood_and_a_box_come_out() -> None:
    """The housing from its top down to its ledge, then the mortise."""
    housing, mortise = mortise_cuts(mortise_of(ledge()))
    assert {plane.line for plane in housing.planes} == {
        "housing-top",
        "housing-ledge",
        "housing-far",
    }
    assert {plane.line for plane in mortise.planes} == {
        "start",
        "finish",
        "near-side",
        "far-side",
        "depth",
    }


def test_the_ends_say_how_long_the_mortise_is() -> None:
    """As wide as the tenon: all of the girt, less what is relieved."""
    for words, long in (({}, "8"), ({"relief_far": "1"}, "7")):
        found = _lines(**words)
        for name in ("start", "finish"):
            assert [each.value for each in found[name].beside] == [length(long)]


@pytest.mark.parametrize(
    ("words", "axis", "at"),
    [
        ({}, Axis.ALONG, "96"),
        ({"lying": True, "drop": "1"}, Axis.SECOND, "1"),
        ({"lying": True}, Axis.SECOND, "0"),
    ],
)
def test_the_floor_is_told_by_its_two_depths(words: dict[str, Any], axis: Axis, at: str) -> None:
    """Nothing at its top line, 1" at its ledge; struck on the face even where it is the arris."""
    line = _lines(**words)["housing-top"]
    assert (line.axis, line.at) == (axis, length(at))
    assert [(each.value, each.words) for each in line.beside] == [
        (length("0"), "deep from the East face, at this line"),
        (length("1"), "deep from the East face, at the housing's ledge line"),
    ]
    assert line.faces == (Face.FIRST,)
    assert "never here" in line.caution


def test_on_a_rough_stick_its_top_goes_in_too() -> None:
    """By what the stick is over its inner timber: 1/2" at the top, 1-1/2" at the ledge."""
    lines = _lines(own=SQUARE, into_first="west")
    assert [each.value for each in lines["housing-top"].beside] == [
        length("1/2"),
        length("1-1/2"),
    ]
    assert [each.value for each in lines["housing-ledge"].beside] == [length("1-1/2")]
    assert list(lines).count("housing-top") == 1
    assert "Not measured here yet" in lines["housing-top"].why


def test_the_ledge_is_where_it_bears() -> None:
    """At the girt's underside; what the load needs is for the engineer."""
    line = _lines()["housing-ledge"]
    assert (line.axis, line.at, line.caution) == (Axis.ALONG, length("88"), ENGINEER)
    assert [(each.value, each.words) for each in line.beside] == [
        (length("1"), "deep here, from the East face")
    ]
    assert line.why.endswith("has not been measured there yet, so this goes by the size as drawn.")


def test_where_it_is_open_its_two_depths_are_joined() -> None:
    """On the side of a post that the girt is flush with."""
    told = _lines()["housing-top"].why
    assert "On the South face, where it is open, join its two depths." in told
    assert "open" not in _lines(inset="1")["housing-top"].why


@pytest.mark.parametrize(
    ("words", "faces"),
    [
        ({}, (Face.FIRST, Face.SECOND)),
        ({"inset": "1"}, (Face.FIRST,)),
        (
            {"own": {"girt": {"section": "8 x 8"}}},
            (Face.FIRST, Face.SECOND, Face.FAR_SECOND),
        ),
        ({"lying": True}, (Face.FIRST,)),
        ({"lying": True, "own": SQUARE_BEAM, "into_first": "west"}, (Face.FAR_FIRST, Face.SECOND)),
        (
            {"lying": True, "own": SQUARE_BEAM, "into_first": "west", "drop": "1"},
            (Face.FAR_FIRST,),
        ),
    ],
)
def test_the_faces_a_housing_is_open_at(words: dict[str, Any], faces: tuple[Face, ...]) -> None:
    """Its entry, every side the end is flush with, and a top that its recess comes out of."""
    assert open_faces(mortise_of(ledge(**words))) == faces


def test_the_mortise_is_told_as_every_one() -> None:
    """Ends, sides and depth; the depth from the face, as the floor slopes."""
    lines = _lines()
    assert {name: line.at for name, line in lines.items() if not name.startswith("housing")} == {
        "start": length("88"),
        "finish": length("96"),
        "near-side": length("2"),
        "far-side": length("4"),
        "depth": length("4-1/8"),
    }
    depth = lines["depth"]
    assert [(each.value, each.hook) for each in depth.readings] == [(length("4-1/8"), "East face")]
    assert [each.value for each in depth.beside] == [length("1/8"), length("3-7/8")]
    assert "straight edge" in depth.caution


def test_sizes_as_cut_are_told() -> None:
    """What each line follows, with both figures."""
    sizes = {"thickness": "1-7/8", "width": "7-3/4", "length": "2-7/8"}
    lines = _lines(real={"girt": real(as_cut={"west-end-tenon": sizes})})
    assert 'as cut: 7-3/4" wide, laid out as 8"' in lines["start"].why
    assert 'as cut: 1-7/8" thick, laid out as 2"' in lines["far-side"].why
    assert 'as cut: 2-7/8" long, laid out as 3"' in lines["depth"].why
    assert "has not been measured as cut" in _lines()["depth"].why


def test_walls_come_from_the_reference_face() -> None:
    """The far one never from the other face."""
    lines = _lines(inset="1")
    assert (lines["housing-near"].at, lines["housing-far"].at) == (length("1"), length("7"))
    assert lines["housing-far"].caution == "Never measure this from the North face."
    assert lines["housing-near"].caution == ""
    assert "has not been measured there yet" in lines["housing-far"].why
    measured = {"girt": real({"west-end-tenon": {"second": "6"}})}
    assert "as it was measured" in _lines(inset="1", real=measured)["housing-far"].why
