"""Every special character the program draws, once in Unicode and once in plain ASCII.

Marks that stand in a line of text are narrow in every terminal. Lines and blocks are not: some
East Asian set-ups draw them two cells wide, which is what BENCHMATE_ASCII is for.
"""

from __future__ import annotations

from dataclasses import astuple, dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping


@dataclass(frozen=True, slots=True, kw_only=True)
class Glyphs:
    """One character, one cell, for each thing the screen draws."""

    tick: str
    open_box: str
    look_again: str
    """A tick whose figure has changed since it was made."""
    waiting: str
    """A step that waits for other work."""
    cursor: str
    cut_off: str
    """Stands where text did not fit."""
    hatch: str
    """Waste."""
    light_hatch: str
    """Waste of the same joint that another line takes away."""
    dot: str
    """Waste of other joints."""
    blemish: str
    """A knot, a check or wane on a face."""
    arris: str
    """The reference arris, seen on the end grain."""
    across: str
    upright: str
    heavy_across: str
    heavy_upright: str
    crossing: str
    slant: str
    """A line that slants, told apart from hatching by any eye."""
    hidden_across: str
    hidden_upright: str
    left: str
    right: str
    up: str
    down: str
    break_across: str
    """Ends a timber drawn short; the break runs across the timber's length."""
    break_upright: str
    corner_top_left: str
    corner_top_right: str
    corner_bottom_left: str
    corner_bottom_right: str
    block: str
    block_top: str
    block_bottom: str
    tee_left: str
    """An upright that one stroke meets from the left; the other three likewise."""
    tee_right: str
    tee_up: str
    tee_down: str
    rise: str
    """A steep stroke, going up to the right."""
    fall: str
    low: str
    """A stroke along the foot of a cell."""
    high: str
    end_on: str
    """A timber seen end on that is too small for an outline."""


UNICODE = Glyphs(
    tick="\u2713",
    open_box="\u2610",
    look_again="!",
    waiting="\u25cc",
    cursor="\u2590",
    cut_off="\u2026",
    hatch="\u2591",
    light_hatch="\u2571",
    dot="\u00b7",
    blemish="\u25c9",
    arris="\u25c6",
    across="\u2500",
    upright="\u2502",
    heavy_across="\u2501",
    heavy_upright="\u2503",
    crossing="\u253c",
    slant="\u2022",
    hidden_across="\u254c",
    hidden_upright="\u254e",
    left="\u25c2",
    right="\u25b8",
    up="\u25b4",
    down="\u25be",
    break_across="\u223f",
    break_upright="\u2240",
    corner_top_left="\u250c",
    corner_top_right="\u2510",
    corner_bottom_left="\u2514",
    corner_bottom_right="\u2518",
    block="\u2588",
    block_top="\u2580",
    block_bottom="\u2584",
    tee_left="\u2524",
    tee_right="\u251c",
    tee_up="\u2534",
    tee_down="\u252c",
    rise="\u2571",
    fall="\u2572",
    low="\u2581",
    high="\u2594",
    end_on="\u25a1",
)

ASCII = Glyphs(
    tick="x",
    open_box=".",
    look_again="!",
    waiting="w",
    cursor=">",
    cut_off="~",
    hatch="%",
    light_hatch="/",
    dot=",",
    blemish="&",
    arris="@",
    across="-",
    upright="|",
    heavy_across="=",
    heavy_upright="H",
    crossing="+",
    slant="*",
    hidden_across=".",
    hidden_upright=":",
    left="<",
    right=">",
    up="^",
    down="v",
    break_across="~",
    break_upright="$",
    corner_top_left="+",
    corner_top_right="+",
    corner_bottom_left="+",
    corner_bottom_right="+",
    block="#",
    block_top="#",
    block_bottom="#",
    tee_left="+",
    tee_right="+",
    tee_up="+",
    tee_down="+",
    rise="/",
    fall="\\",
    low="_",
    high="'",
    end_on="o",
)


def choose(encoding: str | None, environ: Mapping[str, str]) -> Glyphs:
    """The Unicode set where the terminal's encoding holds it and BENCHMATE_ASCII is not set.

    An encoding that is unknown or missing counts as one that does not; an empty BENCHMATE_ASCII
    counts as not set.
    """
    if environ.get("BENCHMATE_ASCII") or encoding is None:
        return ASCII
    try:
        "".join(astuple(UNICODE)).encode(encoding)
    except (UnicodeEncodeError, LookupError):
        return ASCII
    return UNICODE
