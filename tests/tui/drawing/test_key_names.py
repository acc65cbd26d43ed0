"""The words of a key: the name beside its timber, over nothing that is drawn."""

from __future__ import annotations

from dataclasses import replace

import pytest
from rich.cells import cell_len

from benchmate.tui.drawing.canvas import Canvas, Drawing, Role
from benchmate.tui.drawing.key import View, draw_key
from benchmate.tui.drawing.key_names import write_heading, write_name
from benchmate.tui.glyphs import UNICODE
from tests.tui.drawing.key_frames import corner_posts, shed
from tests.tui.drawing.oracle import grid_of
from tests.tui.nasty import NASTY


def named(name: str, width: int = 44) -> Drawing:
    """The plan of four posts, the south-eastern one called so."""
    bars = tuple(replace(bar, name=name) if bar.id == "se-post" else bar for bar in corner_posts())
    return draw_key(bars, "se-post", View.PLAN, width=width, height=10, glyphs=UNICODE)


def test_the_name_stands_beside_its_timber() -> None:
    """To the right of a post, with an arrow to it."""
    assert "█◂ SE post" in named("SE post").text


def test_the_name_goes_where_there_is_room() -> None:
    """To the left where the right is taken, and under a timber that lies along the sheet."""
    bars = shed()
    for timber, text in (("nw-post", "NW post ▸"), ("south-plate", "▴ South plate")):
        drawing = draw_key(bars, timber, View.PLAN, width=60, height=14, glyphs=UNICODE)
        assert text in drawing.text


def test_only_the_arrow_is_left_where_the_name_does_not_fit() -> None:
    """A small pane still points at the timber."""
    text = named("SE post with a long name", width=20).text
    assert "◂" in text
    assert "long" not in text


def test_a_name_covers_nothing() -> None:
    """Whatever is drawn without a name is drawn with it; a blank cell stays beyond its end."""
    for bar in shed():
        for view in View:
            with_name, without = (
                grid_of(draw_key(bars, bar.id, view, width=60, height=16, glyphs=UNICODE))
                for bars in (shed(), tuple(replace(each, name="") for each in shed()))
            )
            for row, bare in zip(with_name, without, strict=True):
                for place, (role, before) in enumerate(zip(row, bare, strict=True)):
                    if role in (Role.NAME, Role.POINTER):
                        assert before in (Role.BLANK, Role.POINTER)
                    elif before is not Role.POINTER:
                        assert role is before
                    if role is Role.NAME and place + 1 < len(row):
                        assert row[place + 1] in (Role.NAME, Role.BLANK)


@pytest.mark.parametrize("name", NASTY)
def test_no_name_upsets_the_drawing(name: str) -> None:
    """Control codes, markup, wide characters and accents: every row keeps its width."""
    drawing = named(name)
    for row in drawing.rows:
        text = "".join(text for text, _ in row)
        assert cell_len(text) == 44
        assert text.isprintable()


def test_a_wide_name_is_shown_whole() -> None:
    """A character two cells wide takes two."""
    assert "█◂ 東南の柱" in named("東南の柱").text


def test_an_accent_stays_with_its_letter() -> None:
    """A combining mark takes no cell of its own."""
    assert "e\u0301table" in named("e\u0301table").text


def test_a_name_with_no_room_anywhere_is_left_out() -> None:
    """A sheet that is full stays as it is."""
    canvas = Canvas(5, 3)
    canvas.put([(row, column) for row in range(3) for column in range(5)], "x", Role.CURRENT)
    before = canvas.drawing()
    write_name(canvas, [(1, 2)], "Post", UNICODE)
    assert canvas.drawing() == before


@pytest.mark.parametrize("view", View)
@pytest.mark.parametrize("width", [3, 8, 17, 20, 60])
def test_a_heading_that_does_not_fit_is_left_out(view: View, width: int) -> None:
    """Never cut off: the whole of one of its forms, or nothing."""
    canvas = Canvas(width, 1)
    write_heading(canvas, view, UNICODE)
    left, right = view.sides
    text = canvas.drawing().text.strip()
    if view.is_plan:
        assert text.split() in (["plan", "▴", "N"], ["▴", "N"])
    else:
        assert text in (
            f"{left} ◂ {view.title} ▸ {right}",
            f"{left} {view.title} {right}",
            "",
        )
        assert text or width < 20
