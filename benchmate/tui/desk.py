"""What a framer does at the bench: ticks, types sizes, takes things back and does them again.

Everything answers with an `Outcome`, and no widget is touched; what is then shown is the view's.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.layout.standing import State
from benchmate.model.directions import Face
from benchmate.model.progress import Blemish
from benchmate.tui.desk_moves import DeskMoves
from benchmate.tui.history_list import HistoryList
from benchmate.tui.names_form import NamesForm
from benchmate.tui.notes_list import NotesList, additions
from benchmate.tui.outcome import DONE, Outcome
from benchmate.tui.sizes_form import SizesForm
from benchmate.tui.telling import (
    elsewhere,
    measured,
    not_ticked,
    out_of_order,
)
from benchmate.workbench.find import Index
from benchmate.workbench.keeping import NotKeptError, NotUndoneError
from benchmate.workbench.timber_state import SIGNED_AS, state_of, told_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from benchmate.model.progress import SignWord, WrittenNote
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.jot_form import Jot
    from benchmate.tui.member_list import MemberList, Shown
    from benchmate.tui.notes_list import Addition
    from benchmate.tui.pad import Kept, Pad
    from benchmate.tui.sheets_form import SheetsForm
    from benchmate.workbench.actions import Sizes
    from benchmate.workbench.bench import Bench, Done
    from benchmate.workbench.find_entries import Hit
    from benchmate.workbench.history import Event
    from benchmate.workbench.names import NewText
    from benchmate.workbench.project_edits import Edit

REMEMBERED = 12
"""Answers that were gone to and are offered again while nothing is typed."""

NO_MORE = "The step where that was done is not in the project any more."


class Desk(DeskMoves):
    """An open bench with one timber and one step in hand."""

    def __init__(self, bench: Bench, glyphs: Glyphs) -> None:
        super().__init__(bench, glyphs)
        self._pad_tape: list[Kept] = []
        self.looked_up: tuple[Hit, ...] = ()
        self._listed: Shown | None = None

    def tick(self) -> Outcome:
        """Tick the step and go on; one that waits is left alone, and says what it waits for."""
        stopped = self._stopped()
        if stopped:
            return stopped
        if self.waiting:
            return Outcome(not_ticked(self.waiting), failed=True)
        ticked = self._ticked()
        return ticked if ticked.failed else _told(ticked.words, self.next_open().words)

    def tick_out_of_order(self) -> Outcome:
        """Tick the step although it waits, and go on to the next open one, waiting or not."""
        waiting = self.waiting
        if not waiting:
            return self.tick()
        ticked = self._stopped() or self._ticked()
        if ticked.failed:
            return ticked
        place = self.walk.next_open(self.place)
        if place is not None:
            self.take_step(place)
        return _told(ticked.words, out_of_order(waiting))

    def _stopped(self) -> Outcome | None:
        """Why the step in hand cannot be ticked in any order; None where it can."""
        if self.bench.broken:
            return Outcome(f"Not ticked: put right first {self.bench.broken}", failed=True)
        if self.walk.withheld(self.step):
            return Outcome(
                "Stop: this step cannot be ticked until its figures are put right.", failed=True
            )
        return None

    def _ticked(self) -> Outcome:
        """Tick the step unless it is ticked and still true, and tell the sizes that it keeps."""
        if self.standing.state is State.TICKED:
            return DONE
        step = self.step
        kept: list[Sizes | None] = []
        outcome = self._kept(lambda: kept.append(self.bench.tick(self.timber, step)))
        if outcome.failed or kept[0] is None:
            return outcome
        return Outcome(measured(step, kept[0], self.walk.tape))

    def untick(self) -> Outcome:
        """Take the step's tick off."""
        if self.standing.tick is None:
            return Outcome("This step has no tick to take off.")
        return self._kept(lambda: self.bench.untick(self.timber, self.step))

    def undo(self) -> Outcome:
        """Take the last action back, and go to where it was done."""
        return self._turned(self.bench.undo, "Undone", "Nothing to undo.")

    def redo(self) -> Outcome:
        """Do again what was last taken back, and go to where it is done."""
        return self._turned(self.bench.redo, "Done again", "Nothing to do again.")

    def _turned(self, turn: Callable[[], Done | None], lead: str, nothing: str) -> Outcome:
        turned: list[Done | None] = []
        outcome = self._kept(lambda: turned.append(turn()))
        if outcome.failed:
            return outcome
        last = turned[0]
        if last is None:
            trouble = self.bench.journal_trouble()
            return Outcome(trouble or nothing, failed=bool(trouble))
        self._stand_at(last.timber, last.step)
        was_so = " It was so already, and nothing was changed." if last.already else ""
        return Outcome(f"{lead}: {last.words}.{was_so}")

    def history(self) -> HistoryList:
        """What was done on the timber in hand."""
        events = self.bench.history(self.timber)
        return HistoryList(self.walk.timber.name, events, self.bench.journal_trouble())

    def revisit(self, event: Event) -> Outcome:
        """Go to where something was done."""
        there = not event.timber or self._stand_at(event.timber, event.step)
        return DONE if there else Outcome(NO_MORE)

    def sign(self, timber: str, what: SignWord) -> Outcome:
        """Sign something of a whole timber, or take it off, and tell what should come first."""
        signed: list[bool] = []
        outcome = self._kept(lambda: signed.append(self.bench.sign(timber, what)))
        if outcome.failed:
            return outcome
        walk = self.bench.walk(timber)
        told = told_of(state_of(walk), what) if signed[0] else ""
        lead = "" if signed[0] else "no longer "
        return _told(f"{walk.timber.name}: {lead}{SIGNED_AS[what]}.", told)

    def member_list(self) -> MemberList:
        """All timbers and how far each is, grouped and sorted as they were last."""
        from benchmate.tui.member_list import MemberList, Shown  # noqa: PLC0415 - paid when opened

        self._listed = self._listed or Shown()
        return MemberList(
            self.bench, self._listed, (self.timber, self.step.id), self.glyphs.cut_off
        )

    def with_trouble(self, outcome: Outcome) -> Outcome:
        """An outcome with what is wrong with the journal, told once."""
        trouble = self.bench.journal_trouble()
        if not trouble:
            return outcome
        return Outcome(_told(outcome.words, trouble).words, failed=True)

    def set_sizes(self, sizes: Sizes) -> Outcome:
        """Keep real sizes typed at the step, and say which other timbers they spoil marks on."""
        return self._telling(lambda: self.bench.set_sizes(self.timber, self.step.id, sizes))

    def notes(self) -> NotesList:
        """What was noted of the timber in hand."""
        return NotesList(self.walk)

    def additions(self) -> tuple[Addition, ...]:
        """What can be noted with the step and the face in hand."""
        face = next((face for face in (self.face(), *self.faces()) if not face.is_end), Face.FIRST)
        return additions(self.walk, self.place, face, self.bench.project.bare)

    def jot(self, jot: Jot) -> Outcome:
        """Keep a note or a blemish."""
        timber, step = self.timber, self.step.id
        if isinstance(jot, Blemish):
            outcome = self._kept(lambda: self.bench.add_blemish(timber, step, jot))
        else:
            outcome = self._kept(lambda: self.bench.add_note(timber, step, *jot))
        return outcome if outcome.failed else Outcome("Kept; u takes it back.")

    def take_out(self, noted: WrittenNote | Blemish) -> Outcome:
        """Take a note or a blemish out."""
        timber, step = self.timber, self.step.id
        outcome = self._kept(lambda: self.bench.take_out(timber, step, noted))
        return outcome if outcome.failed else Outcome("Taken out; u puts it back.")

    def set_name(self, new: NewText) -> Outcome:
        """Keep what a name of the project was written as, and say which timbers it spoils."""
        return self._telling(
            lambda: self.bench.set_name(*new, timber=self.timber, step=self.step.id)
        )

    def edit(self, edit: Edit) -> Outcome:
        """Keep an edit of the project as one action, and take up the timber that it is about."""
        step = "" if self.empty else self.step.id
        outcome = self._telling(
            lambda: self.bench.edit_project(
                edit.words, edit.text, timber=self.timber, step=step, moves=edit.moves
            )
        )
        if outcome.failed:
            return outcome
        if edit.timber and edit.timber != self.timber and self._known(edit.timber):
            self.take_timber(edit.timber)
            self._settle(step)
        return _told(f"Kept: {edit.words}; u takes it back.", outcome.words)

    def _telling(self, change: Callable[[], object]) -> Outcome:
        """Keep a change of figures, and tell of other timbers only what it has newly spoilt."""
        before = elsewhere(self.bench, self.timber)
        outcome = self._kept(change)
        after = elsewhere(self.bench, self.timber)
        return outcome if outcome.failed or after == before else Outcome(after)

    def take_over(self) -> Outcome:
        """Become the one that keeps this project."""
        if not self.bench.read_only:
            return Outcome("This project is already open for work here.")
        outcome = self._kept(self.bench.take_over)
        return outcome if outcome.failed else Outcome("Taken over: ticks are kept from here now.")

    def look(self) -> Outcome | None:
        """Take in changes made outside; None if there were none."""
        step = "" if self.empty else self.step.id
        changes = self.bench.look()
        if not changes:
            return None
        self._settle(step)
        if changes.problems:
            return Outcome(f"{self.bench.broken}. Shown as last read.", failed=True)
        if changes.lost:
            return Outcome(f"Read only from here: {self.bench.read_only}.", failed=True)
        told = (self.greeting(), elsewhere(self.bench, self.timber))
        return Outcome(" ".join(("Changed outside, and read again.", *filter(None, told))))

    def _kept(self, action: Callable[[], object]) -> Outcome:
        """Do something that is kept, and hold on to the step in hand whether it was or not."""
        step, outcome = "" if self.empty else self.step.id, DONE
        try:
            action()
        except NotUndoneError as error:
            outcome = Outcome(f"{error}.", failed=True)
        except NotKeptError as error:
            outcome = Outcome(f"Not kept: {error}", failed=True)
        self._settle(step)
        return outcome

    def index(self) -> Index:
        """What can be looked up: the timber in hand at once, the others as it grows."""
        before = dict.fromkeys(hit.timber for hit in self.looked_up if hit.timber)
        return Index(self.bench, whole=False, first=dict.fromkeys((self.timber, *before)))

    def look_up(self, hit: Hit) -> None:
        """Remember an answer that was gone to, the latest first."""
        same = (hit.title, hit.timber, hit.step)
        others = (each for each in self.looked_up if (each.title, each.timber, each.step) != same)
        self.looked_up = (hit, *others)[:REMEMBERED]

    def sizes_form(self) -> SizesForm:
        """The form for the real sizes at the step in hand."""
        return SizesForm(self.bench, self.timber, self.step)

    def pad(self) -> Pad:
        """The calculator, with the results of this sitting on its tape."""
        from benchmate.tui.pad import Pad  # noqa: PLC0415 - paid when opened
        from benchmate.workbench.reckoning import named_sizes  # noqa: PLC0415

        project = self.bench.project
        return Pad(self.bench.tape, project.bare, named_sizes(self.bench.frame), self._pad_tape)

    def names_form(self) -> NamesForm:
        """The form for the project's lines, levels, lengths and sections."""
        return NamesForm(self.bench)

    def sheets_form(self) -> SheetsForm:
        """The form for writing sheets of the timber in hand or of the whole frame."""
        from benchmate.tui.sheets_form import SheetsForm  # noqa: PLC0415 - paid when opened

        return SheetsForm(self.bench, self.timber)


def _told(*words: str) -> Outcome:
    """Several things to tell as one."""
    return Outcome(" ".join(filter(None, words)))
