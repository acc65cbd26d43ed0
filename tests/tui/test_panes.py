"""The panes: legible on light and dark, and right for any language."""

from pathlib import Path

import pytest
from rich.style import Style
from textual.app import App, ComposeResult
from textual.color import Color

import benchmate
from benchmate.tui.drawing.canvas import Role
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.panes.drawing_pane import DrawingPane
from benchmate.tui.panes.figure_pane import FigurePane
from benchmate.tui.panes.words_pane import WordsPane
from benchmate.tui.words import Saying

LEGIBLE = 4.5
"""The contrast that WCAG 2.2 (W3C), success criterion 1.4.3, asks of ordinary text."""


class Panes(App[None]):
    """The three panes under the program's own stylesheet."""

    CSS_PATH = Path(benchmate.__file__).parent / "tui" / "benchmate.tcss"

    def __init__(self) -> None:
        super().__init__()
        self.words = WordsPane(glyphs=UNICODE)
        self.figure = FigurePane(glyphs=UNICODE)
        self.drawing = DrawingPane()

    def compose(self) -> ComposeResult:
        """One under the other."""
        yield self.words
        yield self.figure
        yield self.drawing


def contrast(style: Style) -> float:
    """The contrast of a style's text with its background."""
    assert style.color is not None
    assert style.bgcolor is not None
    text, back = (Color.from_rich_color(color) for color in (style.color, style.bgcolor))
    lights = sorted(_luminance(color) + 0.05 for color in (text, back))
    return lights[1] / lights[0]


def _luminance(color: Color) -> float:
    """Relative luminance as WCAG 2.2 defines it."""
    parts = (part / 255 for part in color.rgb)
    red, green, blue = (
        part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


@pytest.mark.parametrize("theme", ["textual-dark", "textual-light"])
async def test_every_pane_is_legible_on_light_and_dark(theme: str) -> None:
    """Words, figure and drawing can be read in a bright shop."""
    app = Panes()
    async with app.run_test(size=(80, 24)):
        app.theme = theme
        for widget in (app.words, app.figure, app.drawing):
            for name in widget.COMPONENT_CLASSES:
                if name != f"drawing-pane--{Role.BLANK.value}":
                    style = widget.get_component_rich_style(name)
                    assert contrast(style) >= LEGIBLE, f"{theme}: {name}"


async def test_wide_text_is_shown_whole() -> None:
    """A name in any language fits by the cells it takes, not by its letters."""
    app = Panes()
    async with app.run_test(size=(40, 24)) as pilot:
        app.words.show((Saying(label="note", text="東柱のほぞ", strong=True),))
        await pilot.pause()
        assert "東柱のほぞ" in app.words.render_line(0).text


async def test_folded_words_say_so_beside_the_last_words_or_in_their_place() -> None:
    """And a pane that enter does not open says only that there is more."""
    app = Panes()
    async with app.run_test(size=(30, 24)) as pilot:
        width, height = app.words.content_size
        for opens, briefly, full in ((True, "… enter", "… enter: the rest"), (False, "…", "…")):
            app.words._opens = opens
            for last, said in (("short", f"short{briefly:>{width - 12}}"), ("long " * 4, full)):
                lines = [f"line {number}" for number in range(height - 1)]
                sayings = [Saying(label="why", text=text) for text in (*lines, last, "rest")]
                app.words.show(tuple(sayings))
                await pilot.pause()
                row = app.words.render_line(height - 1).text
                assert row.removeprefix("why    ").rstrip() == said
