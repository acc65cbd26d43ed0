"""A timber of the list as one row of columns, the least needed left out where room is short."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from rich.cells import cell_len

from benchmate.tui.rows import Row
from benchmate.tui.text import clip_inside, fit, safe
from benchmate.workbench.member_counts import HANDS
from benchmate.workbench.timber_state import Made

if TYPE_CHECKING:
    from collections.abc import Iterable

    from benchmate.workbench.members import Member

SIGN = "L2CFA"
"""Every letter of a sign, which heads its column."""

GAP = 2
"""Cells between columns."""

NAME_ROOM, WORDS_ROOM = 14, 11
"""The fewest cells for a name, and for the words of a state, before another column gives way."""

AROUND = 12
"""Cells of a row beside its columns: the cursor, the sign, and what parts the tail from them."""


class Cells(NamedTuple):
    """What the columns of a row hold."""

    name: str
    kind: str
    section: str
    hand: str
    length: str
    state: str
    tail: str

    @classmethod
    def of(cls, member: Member) -> Cells:
        """A timber's cells; its length is left out where it is not fit to cut to."""
        walk = member.walk
        fit_to_cut = not (walk.trouble or walk.stopped)
        return cls(
            name=member.timber.name,
            kind=member.timber.kind,
            section=member.section,
            hand=HANDS.get(member.hand, ""),
            length=walk.tape.text(walk.layout.stick.body) if fit_to_cut else "",
            state="" if walk.trouble else member.state.words,
            tail="  ".join((*member.flags, f"{walk.done}/{len(walk.steps)}")),
        )


HEADS = Cells("timber", "kind", "section", "hand", "shoulders", "state", "done")

GIVE_WAY = ("kind", "section", "hand")
"""The columns that are left out for want of room, the first first."""

LEAST = {"name": NAME_ROOM, "state": WORDS_ROOM}
"""The columns that may be cut short, and to how little."""

Widths = dict[str, int]
"""The cells of each column that is shown."""


def widths(cells: Iterable[Cells], width: int, *, kind: bool) -> Widths:
    """The columns that rows of so many cells have room for, each as wide as it needs.

    Names and states are cut short before another column is left out, and no further than is needed.
    Without `kind` the kind is left out, as the heading says it.
    """
    rows = (HEADS, *cells)
    wanted = {
        name: max(map(_cells, {getattr(each, name) for each in rows}))
        for name in Cells._fields
        if kind or name != "kind"
    }
    tail = wanted.pop("tail")
    room = width - AROUND - tail
    for name in ("", *GIVE_WAY):
        wanted.pop(name, None)
        least = {key: min(cells, LEAST.get(key, cells)) for key, cells in wanted.items()}
        if _all(least) <= room or name == GIVE_WAY[-1]:
            return _shared(wanted, least, room)
    return wanted


def _cells(text: str) -> int:
    return cell_len(safe(text))


def _all(columns: Widths) -> int:
    return sum(columns.values()) + GAP * (len(columns) - 1)


def _shared(wanted: Widths, least: Widths, room: int) -> Widths:
    """The columns as wide as they want to be, the state cut short first, then the name."""
    found = dict(wanted)
    for name in ("state", "name"):
        over = max(_all(found) - room, 0)
        found[name] = max(found[name] - over, least[name])
    return found


def headed(room: Widths, cut_off: str) -> Row:
    """The row that says what the columns are."""
    return Row(text=_text(HEADS, room, cut_off), lead=SIGN, tail=HEADS.tail, heading=True)


def member_row(member: Member, cells: Cells, room: Widths, cut_off: str) -> Row:
    """A timber's row, led by its sign."""
    assembled = member.state.made is Made.ASSEMBLED
    return Row(
        text=_text(cells, room, cut_off),
        lead=member.state.sign,
        tail=cells.tail,
        dim=assembled and not member.flags,
        bold="STOP" in member.flags or member.walk.look_again > 0,
    )


def _text(cells: Cells, room: Widths, cut_off: str) -> str:
    return (" " * GAP).join(
        fit(clip_inside(getattr(cells, name), wide, cut_off), wide, cut_off)
        for name, wide in room.items()
    )
