"""A mark in few words."""

from collections.abc import Callable

import pytest

from benchmate.model.directions import LONG_FACES, Face
from benchmate.sheets.sheet import TimberSheet
from benchmate.sheets.words import (
    FIGURE,
    beside_words,
    from_words,
    plain_waste,
    short_face,
    short_faces,
    waste_words,
)

SheetOf = Callable[[str], TimberSheet]


def test_faces_go_by_their_letters(sheet_of: SheetOf) -> None:
    """The four of a post, an end by its name, and all of them in a word."""
    pose = sheet_of("post-se").layout.stick.pose
    assert [short_face(pose, face) for face in LONG_FACES] == ["S", "E", "N", "W"]
    assert short_face(pose, Face.REFERENCE_END) == "foot end"
    assert short_faces(pose, (*LONG_FACES, Face.FAR_END)) == "all, head end"
    assert short_face(sheet_of("sill-south").layout.stick.pose, Face.FIRST) == "top"


@pytest.mark.parametrize(
    ("step", "hook", "waste"),
    [
        ("foot-tenon/shoulder", "from squared foot", "foot"),
        ("foot-tenon/near-cheek", "from N", "N"),
        ("end/square", "from rough foot, towards the head, at least, into sound wood", ""),
    ],
)
def test_only_what_can_be_taken_wrong_is_said(
    step: str, hook: str, waste: str, sheet_of: SheetOf
) -> None:
    """The usual ways and plain sides are short, all else stands in full."""
    sheet = sheet_of("post-ne")
    found = sheet.layout.step(step)
    assert from_words(sheet.layout.stick, found.readings[0]) == hook
    assert waste_words(sheet.layout.stick, found) == waste
    assert plain_waste(found) is bool(waste)


def test_a_figure_beside_a_mark_is_told_with_its_words(sheet_of: SheetOf) -> None:
    """As the tape shows it."""
    sheet = sheet_of("post-ne")
    beside = sheet.layout.step("foot-tenon/far-cheek").beside[0]
    assert beside_words(sheet.tape, beside) == '1-3/4" tenon thickness'


@pytest.mark.parametrize(
    "figure", ["7' 11-1/2\"", '1/2"', '3"', "42' 7-3/16\"+", "190 mm", "0.5 mm-", '-1/2"']
)
def test_figures_are_known_whole(figure: str) -> None:
    """Feet, fractions, marks and millimetres: so that none is ever broken over two lines."""
    found = FIGURE.search(f"about {figure} from there")
    assert found is not None
    assert found.group() == figure
