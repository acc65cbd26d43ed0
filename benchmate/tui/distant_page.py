"""A step set on a page to be read from two paces, in exactly the room there is.

How it works
1. From the top: the alarms, the title, the figure as large as will go in, where a slanting line
   comes out, the words that make the mark, and at the foot what comes next, small.
2. The words are in big letters where that leaves the figure half of the page, plain otherwise.
   What guards against a wrong cut is never left out for the sake of a larger figure.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from rich.cells import cell_len

from benchmate.tui.big_words import big_words, words_of_size
from benchmate.tui.distant import MAKES, STOP
from benchmate.tui.drawing.canvas import Drawing, Role, Run
from benchmate.tui.figure_fonts import BLOCK
from benchmate.tui.huge_figure import huge_figure
from benchmate.tui.text import clip, fit, wrap
from benchmate.tui.word_lines import set_lines

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.tui.distant import Distant
    from benchmate.tui.figure_fonts import Block
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.words import Saying

Line = tuple[Run, ...]

_LETTERS = 3
"""Rows of the smallest big letters."""


def distant_page(
    shown: Distant, width: int, height: int, glyphs: Glyphs, style: str = BLOCK
) -> Drawing:
    """The page in exactly `width` by `height` cells; what finds no room is left out from below."""
    if width < 1 or height < 1:
        return Drawing(())
    foot = _foot(shown, width, glyphs)
    top = (*_alarms(shown, width, height, glyphs), *_title(shown, width, glyphs))
    room = height - len(top) - len(foot)
    words = _words(shown, width, room, glyphs)
    # However many words there are, a figure has its rows; the words are cut off, and say so.
    words = _cut(words, max(room - _least(shown), 0), width, glyphs)
    main = _main(shown, width, room - len(words), glyphs, style)
    spare = room - len(words) - len(main)
    above, below = ((),) * (spare // 2), ((),) * (spare - spare // 2)
    lines = (*top, *above, *main, *below, *words, *foot)
    return Drawing(tuple(_whole(line, width, glyphs) for line in lines[:height]))


def _least(shown: Distant) -> int:
    """Rows kept for what stands in the middle, however much there is to say."""
    return 8 if shown.figure is not None else 3


def _whole(line: Line, width: int, glyphs: Glyphs) -> Line:
    """A line in exactly the width: filled up, or clipped where a room is too narrow for it."""
    runs: list[Run] = []
    for text, role in line:
        text = clip(text, width, glyphs.cut_off)  # noqa: PLW2901 - the part of it that is shown
        runs.append((text, role))
        width -= cell_len(text)
    return (*runs, (" " * width, Role.BLANK)) if width else tuple(runs)


def _block(block: Block, role: Role, width: int) -> tuple[Line, ...]:
    """Rows in the middle of the width, of one role; a loud one fills it."""
    if role is Role.LOUD:
        return tuple(((row.center(width), role),) for row in block)
    left = " " * ((width - len(block[0])) // 2) if block else ""
    return tuple(((left, Role.BLANK), (row, role)) for row in block)


def _alarms(shown: Distant, width: int, height: int, glyphs: Glyphs) -> tuple[Line, ...]:
    """In big letters where there is room for them, else in a line across the page."""
    if not shown.alarms:
        return ()
    words = ", ".join(shown.alarms)
    block = big_words(words, width=width - 2, height=max(height // 7, _LETTERS), glyphs=glyphs)
    return _block(block or (clip(words, width, glyphs.cut_off),), Role.LOUD, width)


def _title(shown: Distant, width: int, glyphs: Glyphs) -> tuple[Line, ...]:
    """What the figure is of, in one line; nothing where it stands in the figure's place."""
    if shown.headline == shown.title:
        return ()
    text = clip(shown.title, width - 1, glyphs.cut_off)
    return ((((" "), Role.BLANK), (text, Role.STRONG)),)


def _main(shown: Distant, width: int, height: int, glyphs: Glyphs, style: str) -> tuple[Line, ...]:
    """The figure and where a slanting line comes out, or what stands in the figure's place."""
    if shown.figure is None:
        return _headline(shown, width, height, glyphs)
    other = _other_end(shown, width, height, glyphs)
    room = max(height - len(other), 1)
    block = huge_figure(shown.figure, width=width - 2, height=room, glyphs=glyphs, style=style)
    return (*_block(block, Role.FIGURE, width), *other)


def _headline(shown: Distant, width: int, height: int, glyphs: Glyphs) -> tuple[Line, ...]:
    role = Role.LOUD if shown.headline == STOP else Role.FIGURE
    block = big_words(shown.headline, width=width - 2, height=height, glyphs=glyphs)
    return _block(block or wrap(shown.headline, width)[: max(height, 1)], role, width)


def _other_end(shown: Distant, width: int, height: int, glyphs: Glyphs) -> tuple[Line, ...]:
    """In big letters under the figure if that keeps two thirds of the room; always in the words."""
    if not shown.other_end:
        return ()
    block = big_words(
        shown.other_end, width=width - 2, height=height // 3 - 1, glyphs=glyphs, most=3
    )
    return ((), *_block(block, Role.FIGURE, width)) if block else ()


def _words(shown: Distant, width: int, height: int, glyphs: Glyphs) -> tuple[Line, ...]:
    """The words in big letters if that leaves half of the room, or else plain."""
    plain = _plain(shown.words, width)
    if shown.headline == STOP or not shown.words:
        return plain
    for times in (2, 1):
        found = _lettered(shown, times, width, glyphs)
        if found and 2 * len(found) <= height:
            return found
    return plain


def _lettered(shown: Distant, times: int, width: int, glyphs: Glyphs) -> tuple[Line, ...]:
    """The words that make the mark in big letters, the others in plain sentences."""
    lines: list[Line] = []
    for saying in shown.words:
        if saying.label not in MAKES:
            continue
        text = saying.text if saying.label == "set" else f"{saying.label} {saying.text}"
        block = words_of_size(text, times, width=width - 2, glyphs=glyphs)
        if not block:
            return ()
        role = Role.STRONG if saying.strong else Role.WORDS
        lines += [((" ", Role.BLANK), (row, role)) for row in block]
        lines.append(())
    rest = tuple(saying for saying in shown.words if saying.label not in MAKES)
    return (*lines, *_plain(rest, width)) if lines else ()


def _plain(words: tuple[Saying, ...], width: int) -> tuple[Line, ...]:
    return tuple(_sentences(words, width))


def _sentences(words: tuple[Saying, ...], width: int) -> Iterator[Line]:
    """As on the bench: a label, then the sentence beside it, wrapped."""
    for line in set_lines(words, width - 1):
        role = Role.LOUD if line.warning else Role.STRONG if line.strong else Role.WORDS
        yield (" ", Role.BLANK), (line.label, Role.LABEL), (line.text, role)


def _cut(lines: tuple[Line, ...], height: int, width: int, glyphs: Glyphs) -> tuple[Line, ...]:
    """As many lines as there is room for; the last of them says where the rest is."""
    if len(lines) <= height:
        return lines
    more = fit(f" {glyphs.cut_off} enter: the rest", width, glyphs.cut_off)
    return (*lines[: max(height - 1, 0)], ((more, Role.LABEL),))[:height]


def _foot(shown: Distant, width: int, glyphs: Glyphs) -> tuple[Line, ...]:
    """What comes next, in one small line that no one takes for the figure."""
    if not shown.after:
        return ()
    text = clip(shown.after, width - 8, glyphs.cut_off)
    return (((" next  ", Role.LABEL), (text, Role.WORDS)),)
