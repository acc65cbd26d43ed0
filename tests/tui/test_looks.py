"""Colours that can be read, and words that stand for them."""

import pytest
from textual.app import App
from textual.color import Color
from textual.theme import Theme

from benchmate.model.preference import COLOURS
from benchmate.tui.looks import OWN_THEMES, THEMES, style_of
from benchmate.tui.start import fixed_by

ENOUGH = 7.0
"""WCAG 2.1, success criterion 1.4.6 (enhanced contrast), for text of any size."""


def luminance(colour: str) -> float:
    """The relative luminance as WCAG 2.1 defines it."""
    parts = [part / 255 for part in Color.parse(colour).rgb]
    lit = [p / 12.92 if p <= 0.03928 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * lit[0] + 0.7152 * lit[1] + 0.0722 * lit[2]


def contrast(one: str, other: str) -> float:
    """The contrast ratio as WCAG 2.1 defines it."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_contrast_is_reckoned_as_published() -> None:
    """Black on white is 21 to 1 (WCAG 2.1, note to the definition of contrast ratio)."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21)


@pytest.mark.parametrize("theme", OWN_THEMES, ids=lambda theme: str(theme.name))
def test_everything_written_stands_out(theme: Theme) -> None:
    """Every colour of text on every ground that the stylesheet puts it on."""
    grounds = [str(each) for each in (theme.background, theme.surface, theme.panel)]
    inks = [str(theme.foreground), *theme.variables.values()]
    for ground in grounds:
        for ink in inks:
            assert contrast(ink, ground) >= ENOUGH, (ink, ground)


def test_every_word_has_its_theme() -> None:
    """The file's words and the screen's are one."""
    assert tuple(THEMES) == COLOURS


def test_the_environment_goes_first() -> None:
    """An empty name is as good as none."""
    assert fixed_by({}) == ""
    assert fixed_by({"NO_COLOR": ""}) == ""
    assert fixed_by({"NO_COLOR": "1", "TEXTUAL_THEME": "nord"}) == "NO_COLOR"
    assert fixed_by({"TEXTUAL_THEME": "nord"}) == "TEXTUAL_THEME"


def test_an_app_without_a_style_has_block_digits() -> None:
    """A pane works in any app."""
    assert style_of(App()) == "block"
