"""Where the timbers that come in rows lie along the frame: pairs of rafters, and joists."""

from collections.abc import Iterator
from typing import NamedTuple

from benchmate.measure.length import Length
from benchmate.outset.answers import Answers, Bent


class InRow(NamedTuple):
    """One timber of a row: the line of its reference face, which way that looks, its west side.

    `line` is that line's name and `text` what it is written as.
    """

    line: str
    text: str
    side: str
    west: Length


def rafters(a: Answers) -> tuple[InRow, ...]:
    """The pairs of rafters from west to east: one at every bent, the rest evenly between them.

    They stand over the ties, flush with the bents' reference faces; beside the ties where those lap
    over the plates, clear of the whole stick.
    """
    found: list[InRow] = []
    for bent in a.bents[:-1]:
        name = f"pair {len(found) + 1}"
        found.append(InRow(name, _beside_tie(a, bent), "west", a.line_at(bent.number) + _tie(a)))
        found += _between(a, bent, "rafter spacing", "pair ", len(found) + 1)
    last, wide = a.bents[-1], a.within("rafter").second
    west = a.length("length") - _tie(a) - wide
    return (*found, InRow(f"pair {len(found) + 1}", _beside_tie(a, last), "east", west))


def joists(a: Answers, bent: Bent) -> tuple[InRow, ...]:
    """The joists of the bay east of a bent, evenly between its posts."""
    return tuple(_between(a, bent, "joist spacing", f"bay {bent.number} joist ", 1))


def _between(a: Answers, bent: Bent, question: str, name: str, number: int) -> Iterator[InRow]:
    """Those between two bents, each line so far past the one before it."""
    apart, count = a.spacing(question)
    before = bent.line
    for place in range(count):
        line = f"{name}{number + place}"
        west = a.line_at(bent.number) + apart * (place + 1)
        yield InRow(line, f"{before} + {question}", "west", west)
        before = line


def _beside_tie(a: Answers, bent: Bent) -> str:
    return bent.inward("tie width") if a.lapped else bent.line


def _tie(a: Answers) -> Length:
    return a.section("tie").second if a.lapped else Length(0)
