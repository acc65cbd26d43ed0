"""What a change would do, in words: the same for a real size and for a name of the project."""

from __future__ import annotations

import re
from collections import defaultdict
from itertools import groupby
from typing import TYPE_CHECKING

from benchmate.measure.length import Length
from benchmate.measure.section import section_text
from benchmate.model.findings import Severity
from benchmate.model.words import lower_first

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from benchmate.frame.frame import Frame
    from benchmate.measure.printing import Tape
    from benchmate.workbench.names import NameMoved, Worth
    from benchmate.workbench.ripple import Moved, Ripple

STRONG = ("STOP", "LOOK", "CHECK", "ALREADY CUT", "NOT KNOWN", "READ ONLY")
"""How a line begins that must not be overlooked."""

MOST_SHOWN = 40
"""Steps listed before the rest are only counted."""

MOST_NAMED = 4
"""Timbers named with one stop before the rest are only counted."""


def worth_text(worth: Worth, tape: Tape) -> str:
    """What a name comes to, as the tape shows it."""
    return tape.text(worth) if isinstance(worth, Length) else section_text(worth, tape)


def ripple_lines(ripple: Ripple, frame: Frame) -> tuple[str, ...]:
    """A ripple in words: findings, then how much moves, then each step, the dearest to mend first.

    `frame` is the one the change was tried on.
    """
    return (
        *_findings(ripple, frame, Severity.STOP),
        *_findings(ripple, frame, Severity.LOOK),
        *(f"New: {each.name}, {_count(each.steps, 'step')}." for each in ripple.new),
        *(f"Gone: {name}." for name in ripple.gone),
        *(f"NOT KNOWN what is done on {line}" for each in ripple.unknown for line in _first(each)),
        _summary(ripple),
        *_steps(ripple, frame.tape),
    )


def names_line(names: Sequence[NameMoved], tape: Tape) -> str:
    """Names that come to something else, and from what to what."""
    return "; ".join(
        f"{each.name} {_becomes(worth_text(each.before, tape), worth_text(each.after, tape), each)}"
        for each in names
    )


_FINER_THAN_READ = re.compile(r"\.\d{3}")
"""An exact figure in thousandths of a millimetre or less, which nobody measures."""


def _becomes(before: str, after: str, moved: NameMoved | Moved) -> str:
    """From what to what, exactly where the tape shows both alike and a finer one could."""
    shown = before
    if before == after and moved.before is not None and moved.after is not None:
        before, after = moved.before.exact_text(), moved.after.exact_text()
        if any(_FINER_THAN_READ.search(each) for each in (before, after)):
            return f"{shown} moves by less than the tape shows"
    return f"{before} becomes {after}"


def _first(text: str) -> list[str]:
    return text.splitlines()[:1]


def _findings(ripple: Ripple, frame: Frame, severity: Severity) -> Iterator[str]:
    """Each finding of a severity once, with the timbers it is told on."""
    told: defaultdict[str, list[str]] = defaultdict(list)
    new = {each.id: each.name for each in ripple.new}
    for found in ripple.findings:
        if found.severity is severity:
            words = f"{found.message}. To mend it: {found.remedy}."
            told[words].append(new.get(found.timber) or frame.timber(found.timber).name)
    return (f"{severity.name} on {_listed(names)}: {words}" for words, names in told.items())


def _listed(names: list[str]) -> str:
    """Names in a row, each once, the last of many only counted."""
    once = list(dict.fromkeys(names))
    if len(once) > MOST_NAMED:
        once[MOST_NAMED - 1 :] = [f"{len(once) - MOST_NAMED + 1} more"]
    return " and ".join(filter(None, (", ".join(once[:-1]), once[-1])))


def _summary(ripple: Ripple) -> str:
    if not ripple.moved:
        return f"No mark moves{' on the others' if ripple.new or ripple.gone else ''}."
    figures = len(ripple.moved)
    moves = (
        f"Moves {_count(figures, 'figure')} in {_count(ripple.steps, 'step')} "
        f"on {_count(ripple.timbers, 'timber')}"
    )
    done = [f"{_count(ripple.ticked, 'step')} ticked"] if ripple.ticked else []
    done += [f"{_count(ripple.cut, 'step')} already cut"] if ripple.cut else []
    again = " Ticked steps will say: look again." if ripple.ticked else ""
    return f"{moves}{': ' if done else ''}{', '.join(done)}.{again}"


def _count(number: int, word: str) -> str:
    return f"{number} {word}{'' if number == 1 else 's'}"


def _steps(ripple: Ripple, tape: Tape) -> Iterator[str]:
    grouped = groupby(ripple.moved, key=lambda each: (each.timber, each.step))
    steps = sorted((tuple(figures) for _, figures in grouped), key=_rank)
    for figures in steps[:MOST_SHOWN]:
        yield _step_text(figures, tape)
    if len(steps) > MOST_SHOWN:
        yield f"and {len(steps) - MOST_SHOWN} steps more"


def _rank(figures: tuple[Moved, ...]) -> int:
    """The dearest to mend first: what is cut, then what is ticked, then the rest."""
    spoilt = [each for each in figures if each.spoilt]
    if any(each.cut for each in spoilt):
        return 0
    return 1 if spoilt else 2


def _step_text(figures: tuple[Moved, ...], tape: Tape) -> str:
    first = figures[0]
    cut = "ALREADY CUT: " if _rank(figures) == 0 else ""
    told = "; ".join(_figure_text(each, tape) for each in figures)
    if first.stopped:
        told = "withheld until the stop is mended"
    return f"{cut}{first.name}, {lower_first(first.title)}{_tick_text(figures)}: {told}"


def _tick_text(figures: tuple[Moved, ...]) -> str:
    if not any(each.ticked for each in figures):
        return ""
    return " (ticked, and right again)" if figures[0].right else " (ticked)"


def _figure_text(moved: Moved, tape: Tape) -> str:
    before, after = (
        None if each is None else tape.text(each) for each in (moved.before, moved.after)
    )
    if before is not None and after is not None:
        return f"{_becomes(before, after, moved)} {moved.words}"
    if after is not None:
        return f"new, {after} {moved.words}"
    return f"falls away, was {before} {moved.words}" if before is not None else moved.words
