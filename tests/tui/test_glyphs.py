"""Special characters: one cell each, and ASCII where the terminal asks for it."""

import unicodedata
from dataclasses import asdict, astuple

import pytest
from rich.cells import cell_len

from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs, choose

IN_TEXT = (
    "tick",
    "open_box",
    "look_again",
    "waiting",
    "cursor",
    "hatch",
    "left",
    "right",
    "up",
    "down",
)


@pytest.mark.parametrize("glyphs", [UNICODE, ASCII])
def test_every_glyph_takes_one_cell(glyphs: Glyphs) -> None:
    """A glyph never pushes what follows it out of line."""
    assert {cell_len(glyph) for glyph in astuple(glyphs)} == {1}
    assert {len(glyph) for glyph in astuple(glyphs)} == {1}


@pytest.mark.parametrize("name", IN_TEXT)
def test_marks_in_text_are_narrow_everywhere(name: str) -> None:
    """A mark in a line of text is not one that East Asian terminals draw two cells wide."""
    assert unicodedata.east_asian_width(asdict(UNICODE)[name]) in {"N", "Na"}


def test_ascii_set_is_ascii() -> None:
    """The plain set holds nothing that an ASCII terminal cannot show."""
    assert "".join(astuple(ASCII)).isascii()


@pytest.mark.parametrize("glyphs", [UNICODE, ASCII])
def test_states_of_a_step_differ(glyphs: Glyphs) -> None:
    """Open, ticked, look again, waiting and waste are told apart by shape alone."""
    states = (glyphs.tick, glyphs.open_box, glyphs.look_again, glyphs.waiting)
    shapes = (*states, glyphs.cursor, glyphs.hatch)
    assert len(set(shapes)) == len(shapes)


@pytest.mark.parametrize("encoding", ["utf-8", "UTF8", "utf-16"])
def test_an_encoding_that_holds_the_set_gets_it(encoding: str) -> None:
    """A Unicode terminal shows the Unicode set."""
    assert choose(encoding, {}) is UNICODE


@pytest.mark.parametrize("encoding", ["ascii", "latin-1", "cp437", "no-such-encoding", None])
def test_any_other_encoding_gets_ascii(encoding: str | None) -> None:
    """An encoding that lacks a glyph, is unknown or is missing gets the plain set."""
    assert choose(encoding, {}) is ASCII


@pytest.mark.parametrize(("value", "glyphs"), [("1", ASCII), ("no", ASCII), ("", UNICODE)])
def test_the_environment_asks_for_ascii(value: str, glyphs: Glyphs) -> None:
    """BENCHMATE_ASCII set to anything wins over the encoding; empty is not set."""
    assert choose("utf-8", {"BENCHMATE_ASCII": value}) is glyphs
