"""The list of timbers as rows under counted headings, and what is said of the one in hand."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from rich.cells import cell_len

from benchmate.model.progress import SIGN_WORDS
from benchmate.tui.member_rows import Cells, Widths, headed, member_row, widths
from benchmate.tui.rows import Row
from benchmate.tui.text import safe
from benchmate.tui.words import Saying
from benchmate.workbench.jobs import all_waits, waits_in_brief
from benchmate.workbench.members import By, Members
from benchmate.workbench.timber_state import SIGNED_AS

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.workbench.bench import Bench
    from benchmate.workbench.members import Group, Member


@dataclass(slots=True)
class Shown:
    """How the list is shown; kept from one opening to the next."""

    by: By = By.KIND
    by_job: bool = False


class MemberList:
    """All timbers in groups, those that hold the words typed, with one in hand."""

    def __init__(self, bench: Bench, shown: Shown, place: tuple[str, str], cut_off: str) -> None:
        self.members = Members(bench)
        self.shown = shown
        self.timber = place[0]
        self.words = ""
        self._from = place
        self._cut_off = cut_off
        self._order: tuple[str, ...] = ()
        self._at: tuple[str, ...] = ()
        self.count = 0
        self._room: Widths = {}
        self._cells: dict[str, tuple[Member, Cells]] = {}
        self._rows: dict[str, tuple[Member, Row]] = {}

    @property
    def title(self) -> str:
        """What is listed, and how."""
        total = len(self.members.all)
        count = f"{self.count} of {total}" if self.words else f"{total}"
        sort = "by next best job" if self.shown.by_job else "in file order"
        return f"{count} timbers by {self.shown.by.value}, {sort}"

    def group_on(self) -> None:
        """Group by the next thing."""
        self.shown.by = self.shown.by.next

    def sort_on(self) -> None:
        """Sort by next best job, or in file order again."""
        self.shown.by_job = not self.shown.by_job

    def rows(self, width: int) -> tuple[Row, ...]:
        """The rows in so many cells; `place` and `at` then tell which timber is where."""
        groups = self._groups()
        found = [each for group in groups for each in group.members]
        self.count = len(found)
        shown = self.shown.by is not By.KIND
        cells = {each.timber.id: self._cells_of(each) for each in found}
        room = widths(cells.values(), width, kind=shown)
        if room != self._room:
            self._room, self._rows = room, {}
        rows: list[Row] = []
        at: list[str] = []
        for group in groups:
            if group.heading:
                fits = cell_len(safe(group.heading)) < width - 1
                rows.append(Row(text=group.heading if fits else group.brief, heading=True))
                at.append("")
            for each in group.members:
                rows.append(self._row_of(each, cells[each.timber.id]))
                at.append(each.timber.id)
        self._at = tuple(at)
        return tuple(rows)

    @property
    def heads(self) -> Row:
        """The row over them all that says what the columns are."""
        return headed(self._room, self._cut_off)

    def _cells_of(self, member: Member) -> Cells:
        """What a timber's row holds; made anew only where something about it is new."""
        known = self._cells.get(member.timber.id)
        if known is None or known[0] is not member:
            known = self._cells[member.timber.id] = (member, Cells.of(member))
        return known[1]

    def _row_of(self, member: Member, cells: Cells) -> Row:
        known = self._rows.get(member.timber.id)
        if known is None or known[0] is not member:
            row = member_row(member, cells, self._room, self._cut_off)
            known = self._rows[member.timber.id] = (member, row)
        return known[1]

    def _groups(self) -> tuple[Group, ...]:
        members = self._ordered()
        held = self.members.holding(self.words, members) if self.words else members
        by_job = self.shown.by_job
        return self.members.grouped(held, self.shown.by, as_given=by_job)

    def _ordered(self) -> tuple[Member, ...]:
        """The timbers in the order asked for; the order of jobs is worked out once."""
        if not self.shown.by_job:
            return self.members.all
        if not self._order:
            self._order = tuple(each.timber.id for each in self.members.by_job(*self._from))
        return tuple(map(self.members.member, self._order))

    @property
    def place(self) -> int:
        """The row of the timber in hand; the first where it is not shown."""
        return self._at.index(self.timber) if self.timber in self._at else 0

    def at(self, row: int | None) -> str:
        """The timber that a row stands for; empty for a heading or no row."""
        return self._at[row] if row is not None and row < len(self._at) else ""

    def renew(self, place: tuple[str, str]) -> None:
        """Look at all timbers again, from another timber and step in hand: some may be gone."""
        self.members.renew()
        self._from = place
        self.timber = place[0]
        self._order = ()

    def sayings(self) -> tuple[Saying, ...]:
        """The timber in hand in full: what it is, how far it is, and what comes next."""
        if self.timber not in self._at:
            told = "No timber holds all of these words; try fewer of them." if self.words else ""
            return (Saying(label="", text=told),)
        return tuple(self._sayings(self.members.member(self.timber)))

    def _sayings(self, member: Member) -> Iterator[Saying]:
        timber, walk, places = member.timber, member.walk, self.members.places
        lines = (places.bents.get(timber.id), places.walls.get(timber.id))
        on = " and ".join(line for line in lines if line)
        what = (f"{timber.name}: {timber.what}", member.section, member.hand, on and f"on {on}")
        yield Saying(label="", text=", ".join(filter(None, what)), strong=True)
        yield Saying(label="state", text="; ".join((member.state.words, *self._signed(member))))
        if walk.trouble:
            yield Saying(label="stop", text=walk.trouble, warning=True)
        elif walk.stops:
            stop = walk.stops[0]
            yield Saying(label="stop", text=f"{stop.message}; {stop.remedy}.", warning=True)
        elif member.waits is not None:
            yield self._next(member)

    @staticmethod
    def _signed(member: Member) -> Iterator[str]:
        for word in SIGN_WORDS:
            signed = member.walk.progress.sign(word)
            if signed is not None:
                yield f"{SIGNED_AS[word]} {signed.at.astimezone():%Y-%m-%d %H:%M}"

    @staticmethod
    def _next(member: Member) -> Saying:
        """The next ready step, or what everything open waits for."""
        walk, waits = member.walk, member.waits or {}
        ready = walk.next_open(passing=waits)
        if ready is not None:
            return Saying(label="next", text=walk.steps[ready].title)
        if waits:
            return Saying(label="waits", text=f"for {waits_in_brief(all_waits(waits))}")
        return Saying(label="next", text="Every step is ticked.")
