"""Sections have two sides, both above zero, in one unit."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.measure.reading import LengthError, Unit
from benchmate.measure.section import Section, read_section, section_text
from benchmate.measure.tolerance import LARGEST_SECTION

SIX_BY_EIGHT = Section(Length.inches(6), Length.inches(8))
SMALL = Section(Length.mm(190), Length.mm(140))


@pytest.mark.parametrize(
    ("text", "section"),
    [
        *((text, SIX_BY_EIGHT) for text in ("6 x 8", "6x8", "6X8", "6 × 8", '6" x 8"', "6 x 8 in")),
        ("6 in x 8", SIX_BY_EIGHT),
        ("7-1/2 × 7-1/2", Section(Length.inches(7, 1, 2), Length.inches(7, 1, 2))),
        ("1' x 8", Section(Length.inches(12), Length.inches(8))),
        ("8 x 1'", Section(Length.inches(8), Length.inches(12))),
        ("4' x 48", Section(LARGEST_SECTION, LARGEST_SECTION)),
        *((text, SMALL) for text in ("190 x 140 mm", "190 mm x 140", "19 x 14 cm", "190mm×140mm")),
        ('190 mm x 5-1/2"', Section(Length.mm(190), Length.inches(5, 1, 2))),
    ],
)
def test_what_a_framer_types(text: str, section: Section) -> None:
    """Two lengths with an x between; a unit on one side holds for both."""
    assert read_section(text) == section


def test_a_bare_section_takes_the_unit_of_its_field() -> None:
    """In a metric field 190 x 140 is millimetres, and an inch mark still wins."""
    assert read_section("190 x 140", bare=Unit.MM) == SMALL
    assert read_section('6 x 8"', bare=Unit.MM) == SIX_BY_EIGHT


@pytest.mark.parametrize(
    ("text", "column", "problem"),
    [
        ("", 0, "a section has two sides"),
        ("6", 1, "a section has two sides"),
        ("6x8x9", 3, "a section has only two sides"),
        ("x 8", 0, "there is no length"),
        ("6 x", 3, "there is no length"),
        ("0 x 8", 0, "a side of a section is above zero"),
        ("6 x  0", 5, "a side of a section is above zero"),
        ("6 x -8", 4, "a length here is not below zero"),
        ("6 x q", 4, "`q` is not a unit"),
        ("6 x 3/0", 6, "nothing divides by 0"),
        ("1/3 x 8", 2, "1/3 is not a tape fraction"),
        ("60 x 8", 0, "more than 4' 0\""),
        ("8 x 48-1/64", 4, "more than 4' 0\""),
        ("4-3/4 x 120 mm", 2, "a metric length takes no fraction"),
        ("6 x 8" + " " * 119, 123, "longer than 123 characters"),
        ("6" * 61 + " x 8", 60, "longer than 60 characters"),
    ],
)
def test_what_is_refused(text: str, column: int, problem: str) -> None:
    """A refusal names its column in the whole text."""
    with pytest.raises(LengthError) as caught:
        read_section(text)
    assert (caught.value.text, caught.value.column) == (text, column)
    assert caught.value.problem == problem


@pytest.mark.parametrize("sides", [(ZERO, Length(1)), (Length(1), ZERO), (Length(-1), Length(1))])
def test_both_sides_are_above_zero(sides: tuple[Length, Length]) -> None:
    """A section without wood cannot be built."""
    with pytest.raises(ValueError, match="above zero"):
        Section(*sides)


@pytest.mark.parametrize(
    ("section", "tape", "text"),
    [
        (SIX_BY_EIGHT, Tape(), '6" x 8"'),
        (Section(Length.inches(6, 1, 32), Length.feet(1)), Tape(), '6-1/16"- x 1\' 0"'),
        (SMALL, Tape(style=Style.MM, graduation=Graduation.MM), "190 mm x 140 mm"),
    ],
)
def test_as_the_tape_shows_it(section: Section, tape: Tape, text: str) -> None:
    """Each side is a figure of its own, with its own mark."""
    assert section_text(section, tape) == text


def test_planed_stock() -> None:
    """8 x 8 planed 1/4" each face is 7-1/2 x 7-1/2 (trade.md 7.5 row 37, TFHQ-rules)."""
    rough, off = read_section("8 x 8"), 2 * Length.inches(0, 1, 4)
    planed = Section(rough.first - off, rough.second - off)
    assert section_text(planed, Tape()) == '7-1/2" x 7-1/2"'


sides = st.integers(1, LARGEST_SECTION.nm).map(Length)


@given(sides, sides)
def test_exact_text_reads_back(first: Length, second: Length) -> None:
    """Law: read(exact_text(s)) == s for every section, to the nanometre, whatever the field."""
    section = Section(first, second)
    for bare in Unit:
        assert read_section(section.exact_text(), bare=bare, exact=True) == section
