"""The head of a sheet."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from benchmate.sheets.head import faces_line, head_lines, lengths, sizes_line, title
from benchmate.sheets.sheet import TimberSheet

SheetOf = Callable[[str], TimberSheet]


def test_a_timber_says_what_it_is(sheet_of: SheetOf) -> None:
    """Name, kind, species, section, both lengths by their names, faces, end, hand and crown."""
    sheet = sheet_of("post-se")
    assert title(sheet) == 'SE post (post-se): post, white pine, 7" x 7"'
    assert lengths(sheet) == "Shoulder to shoulder 7' 4\", overall 8' 0\"."
    assert faces_line(sheet) == (
        "Reference: South face first, East face second, measured from the foot. Right hand. "
        "Crown outwards, butt of the tree down."
    )
    assert "Note: Sawn full at the butt." in tuple(head_lines(sheet))


def test_the_real_sizes_used_are_stated(sheet_of: SheetOf) -> None:
    """The timber's own, and those of what it is joined to."""
    assert 'foot tenon measured first 7-3/16", second 6-15/16"' in sizes_line(sheet_of("post-se"))
    assert "SW post's foot tenon as cut" in sizes_line(sheet_of("sill-south"))
    assert "Nothing measured yet" in sizes_line(sheet_of("plate-north"))


def test_notes_and_blemishes_have_a_line_each(sheet_of: SheetOf) -> None:
    """Behind the timber's own note, each led in the same way."""
    sheet = replace(sheet_of("post-se"), noted=("Foot tenon: fuzzy", "Knot on the South face"))
    assert tuple(head_lines(sheet))[-2:] == (
        "Noted: Foot tenon: fuzzy",
        "Noted: Knot on the South face",
    )


def test_no_length_is_told_of_a_stopped_timber(sheet_of: SheetOf, spoilt: Path) -> None:
    """The stop stands first, with its remedy."""
    assert spoilt.is_dir()
    said = tuple(head_lines(sheet_of("post-se")))
    assert said[0].startswith("STOP: The far cheek comes")
    assert "To mend it: " in said[0]
    assert not any("overall" in each for each in said)
