"""How a framer wants the screen to look: its colours and the style of its big digits.

Every colour pair here has at least 7 to 1 (WCAG 2.1, success criterion 1.4.6), told by a test.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from textual.theme import Theme

from benchmate.tui.figure_fonts import BLOCK

if TYPE_CHECKING:
    from textual.app import App

DARK, LIGHT, HIGH, NONE = "dark", "light", "high-contrast", "none"
"""The words for colours in the settings."""

LIGHT_THEME = Theme(
    name="benchmate-light",
    primary="#003b73",
    secondary="#003b73",
    accent="#003b73",
    warning="#6b2d00",
    error="#7a0012",
    success="#0b4a1f",
    foreground="#101010",
    background="#ffffff",
    surface="#ececec",
    panel="#dedede",
    dark=False,
    variables={"text-muted": "#3d3d3d", "text-accent": "#003b73", "text-warning": "#6b2d00"},
)

HIGH_THEME = Theme(
    name="benchmate-high-contrast",
    primary="#ffff00",
    secondary="#ffff00",
    accent="#ffff00",
    warning="#ffb000",
    error="#ff8a8a",
    success="#7dff7d",
    foreground="#ffffff",
    background="#000000",
    surface="#262626",
    panel="#303030",
    dark=True,
    variables={"text-muted": "#ffffff", "text-accent": "#ffff00", "text-warning": "#ffb000"},
)

OWN_THEMES = (LIGHT_THEME, HIGH_THEME)
"""The themes that Textual does not have."""

THEMES = {
    DARK: "textual-dark",
    LIGHT: LIGHT_THEME.name,
    HIGH: HIGH_THEME.name,
    NONE: "ansi-dark",
}
"""The theme for each word; with `none` no colour of it reaches the terminal."""


def style_of(app: App[Any]) -> str:
    """The style of the big digits that an app is set to; another app's are block digits."""
    return str(getattr(app, "digits", BLOCK))
