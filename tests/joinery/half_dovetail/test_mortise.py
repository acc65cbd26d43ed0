"""The post's side: the cuts, and lines on both faces that the tie goes through."""

from typing import Any

import pytest

from benchmate.joinery.half_dovetail.mortise import (
    mortise_cuts,
    mortise_lines,
    open_faces,
    wedge_beside,
)
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Line
from benchmate.model.solids import Axis
from tests.builders import length, named, real, set_in_words
from tests.joinery.half_dovetail.bents import SQUARE, Word, bent, mortise_of

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)


def _lines(**words: Word) -> dict[str, Line]:
    return named(mortise_lines(mortise_of(bent(**words)), TAPE))


def test_four_planes_make_the_mortise() -> None:
    """Open at both faces; a housing is a box before it."""
    (mortise,) = mortise_cuts(mortise_of(bent()))
    assert {plane.line for plane in mortise.planes} == {
        "tail-end",
        "wedge-end",
        "near-side",
        "far-side",
    }
    housing, _ = mortise_cuts(mortise_of(bent(housing="1/2")))
    assert {plane.line for plane in housing.planes} == {
        "housing-floor",
        "housing-start",
        "housing-finish",
        "housing-far",
    }


@pytest.mark.parametrize("post_first", ["west", "east"])
@pytest.mark.parametrize(
    ("name", "west", "east"), [("tail-end", "90", "91"), ("wedge-end", "100-1/8", "99-1/8")]
)
def test_its_ends_are_struck_face_by_face(name: str, west: str, east: str, post_first: str) -> None:
    """One figure to one step, as a line squared across would spoil the post on the other face."""
    lines = _lines(post_first=post_first)
    near, far = lines[name], lines[f"{name}-far"]
    assert (near.faces, far.faces) == ((Face.FIRST,), (Face.FAR_FIRST,))
    found = {line.title.rpartition(", ")[2]: (line.axis, line.at) for line in (near, far)}
    assert found == {
        "West face": (Axis.ALONG, length(west)),
        "East face": (Axis.ALONG, length(east)),
    }
    assert near.slant is not None
    assert (near.slant.start.deep, near.slant.finish.deep) == (length("0"), length("8"))
    assert near.slant.finish.along == far.at
    assert far.slant is None


def test_its_waste_is_told_on_the_other_face_too() -> None:
    """Where no cut tells it, as the line bounds none: between the two ends."""
    lines = _lines()
    assert lines["tail-end-far"].waste == "Towards the head."
    assert lines["wedge-end-far"].waste == "Towards the foot."
    below = _lines(wedged="underside")
    assert below["tail-end-far"].waste == "Towards the foot."
    assert below["wedge-end-far"].waste == "Towards the head."


def test_the_entry_and_the_wedge_s_side_are_told() -> None:
    """In from one face, driven from the other, whichever the post is measured from."""
    for post_first in ("west", "east"):
        lines = _lines(post_first=post_first)
        for name in ("tail-end", "tail-end-far", "wedge-end", "wedge-end-far"):
            assert lines[name].caution.endswith(
                "Tie comes in from the East face; the wedge is driven from the West face."
            )
    south = _lines(heading="south", side="east")["tail-end"]
    assert "comes in from the North face" in south.caution


def test_the_wedge_stands_beside_its_line() -> None:
    """After how tall the mortise is on that face: 10-1/8" on the West, 8-1/8" on the East."""
    lines, shape = _lines(), mortise_of(bent())
    for name, height in (("wedge-end", "10-1/8"), ("wedge-end-far", "8-1/8")):
        (tall, *wedge) = lines[name].beside
        assert tall.value == length(height)
        assert tuple(wedge) == wedge_beside(shape)
    assert [each.value for each in wedge_beside(shape)] == [
        length(each) for each in ("1-1/8", "2-1/8", "8")
    ]
    assert [each.value for each in lines["tail-end"].beside] == [length("10-1/8")]


def test_both_slopes_have_their_bevel() -> None:
    """1 in 8, by the tail as it was cut: 15/16" in 8" is 6.7 degrees."""
    lines = _lines()
    settings = [lines[name].slant for name in ("tail-end", "wedge-end")]
    assert [each and set_in_words(each.setting) for each in settings] == [
        "bevel 7.1° off square to the face"
    ] * 2
    cut = {"tie": real(as_cut={"west-end-tenon": {"length": "7-15/16"}})}
    lines = _lines(real=cut)
    slopes = [lines[name].slant for name in ("tail-end", "wedge-end")]
    assert [each and set_in_words(each.setting) for each in slopes] == [
        "bevel 6.7° off square to the face",
        "bevel 7.1° off square to the face",
    ]
    assert 'as cut: 7-15/16" deep at its end, laid out as 8"' in lines["tail-end"].why


def test_the_floor_of_a_housing() -> None:
    """Where the shoulder bears: on a far face its depth, its place, and whether it was measured."""
    floor = _lines(housing="1/2")["housing-floor"]
    assert (floor.axis, floor.at) == (Axis.FIRST, length("7-1/2"))
    assert [(each.value, each.hook) for each in floor.readings] == [(length("1/2"), "East face")]
    assert [each.value for each in floor.beside] == [length("7-1/2")]
    assert "Not measured here yet" in floor.why
    near = _lines(housing="1/2", post_first="east")["housing-floor"]
    assert near.beside == ()
    assert "already counts it" in near.why
    assert "housing-floor" not in _lines()


def test_a_floor_that_shows_is_struck_where_it_shows() -> None:
    """On the South face, where the tie is flush; on the entry where it is closed all round."""
    assert _lines(housing="1/2")["housing-floor"].faces == ()
    inset = {"tie": {"at": {"north": "1", "up": "9 ft - 10"}}}
    closed = _lines(housing="1/2", own=inset)
    assert closed["housing-floor"].faces == (Face.FAR_FIRST,)
    assert {"housing-near", "housing-far"} <= set(closed)
    assert closed["housing-far"].caution == "Never measure this from the North face."
    assert closed["housing-near"].caution == ""


@pytest.mark.parametrize(
    ("words", "faces"),
    [
        ({}, (Face.FAR_FIRST, Face.SECOND)),
        ({"own": {"tie": {"at": {"north": "1", "up": "9 ft - 10"}}}}, (Face.FAR_FIRST,)),
        ({"own": {"tie": {"section": "8 x 8"}}}, (Face.FAR_FIRST, Face.SECOND, Face.FAR_SECOND)),
    ],
)
def test_the_faces_a_housing_is_open_at(words: dict[str, Any], faces: tuple[Face, ...]) -> None:
    """Its entry, and every side the tie is flush with."""
    assert open_faces(mortise_of(bent(housing="1/2", **words))) == faces


def test_by_square_rule_the_excess_makes_the_recess() -> None:
    """A rough far face stands 1/2" proud of the inner timber: so deep the end goes in."""
    lines = _lines(own=SQUARE)
    assert [each.value for each in lines["housing-floor"].readings] == [length("1/2")]
    assert "Eased" in lines["housing-finish"].why
    assert "Eased" not in lines["housing-start"].why
    assert "By square rule it comes to its inner timber" in lines["housing-far"].why
    below = _lines(own=SQUARE, wedged="underside")
    assert "Eased" in below["housing-start"].why
    assert "Eased" not in below["housing-finish"].why
