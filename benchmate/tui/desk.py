"""What a framer does at the bench: moves about, ticks, types sizes, takes things back.

Everything answers with an `Outcome`, and no widget is touched; what is then shown is the view's.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.layout.standing import State
from benchmate.tui.desk_view import DeskView
from benchmate.tui.names_form import NamesForm
from benchmate.tui.outcome import DONE, Outcome
from benchmate.tui.sizes_form import SizesForm
from benchmate.tui.telling import (
    all_done,
    elsewhere,
    measured,
    not_ticked,
    only_waiting,
    out_of_order,
)
from benchmate.workbench.bench import NotKeptError, NotUndoneError
from benchmate.workbench.find import Index
from benchmate.workbench.jobs import next_job, nothing_left

if TYPE_CHECKING:
    from collections.abc import Callable

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.pad import Kept, Pad
    from benchmate.workbench.actions import Sizes
    from benchmate.workbench.bench import Bench, Done
    from benchmate.workbench.find_entries import Hit
    from benchmate.workbench.names import NewText

REMEMBERED = 12
"""Answers that were gone to and are offered again while nothing is typed."""


class Desk(DeskView):
    """An open bench with one timber and one step in hand."""

    def __init__(self, bench: Bench, glyphs: Glyphs) -> None:
        super().__init__(bench, glyphs)
        self._trail: list[tuple[str, str]] = []
        self._pad_tape: list[Kept] = []
        self.looked_up: tuple[Hit, ...] = ()

    def take_timber(self, timber: str) -> None:
        """Take up a timber at its next open step that does not wait."""
        if timber != self.timber:
            self.timber, self.turned = timber, 0
            self.place = self._next_ready()

    def take_step(self, place: int) -> None:
        """Take up a step of the timber in hand."""
        if place != self.place:
            self.place, self.turned = place, 0

    def go_on(self, steps: int) -> Outcome:
        """Go so many steps on, or back where below nothing, and not past an end."""
        self.take_step(min(max(self.place + steps, 0), len(self.walk.steps) - 1))
        return DONE

    def go_to(self, timber: str, step: str) -> None:
        """Take up a step anywhere; without a step, the timber's next open one."""
        here = (self.timber, self.step.id)
        self.take_timber(timber)
        if step:
            self.take_step(self.walk.place(step))
        if here != (self.timber, self.step.id):
            self._trail.append(here)

    def back(self) -> Outcome:
        """Go back to where one was before going somewhere."""
        if not self._trail:
            return Outcome("There is nowhere to go back to.")
        timber, step = self._trail.pop()
        if self._known(timber):
            self.take_timber(timber)
            self.take_step(self.walk.place(step))
        return DONE

    def _known(self, timber: str) -> bool:
        """Whether the project still has a timber: an editor may have taken it out."""
        return timber in {each.id for each in self.bench.timbers}

    def _settle(self, step: str) -> None:
        """Hold on to a step by its id: steps before it may have come or gone."""
        if not self._known(self.timber):
            self._start()
            return
        ids = [found.id for found in self.walk.steps]
        self.place = ids.index(step) if step in ids else min(self.place, len(ids) - 1)

    def next_open(self) -> Outcome:
        """Go to the next open step; past those that wait, while there are others."""
        waits = self.waits
        place = self.walk.next_open(self.place, passing=waits)
        if place is not None:
            self.take_step(place)
            return DONE
        if waits:
            return Outcome(only_waiting(self.walk, waits))
        return Outcome(all_done(self.bench, self.walk))

    def best_job(self) -> Outcome:
        """Go to the next best job in the whole frame, and say why it comes first."""
        walks = tuple(self.bench.walk(timber.id) for timber in self.bench.timbers)
        job = next_job(walks, self.timber, self.step.id)
        if job is None:
            return Outcome(nothing_left(walks))
        here = (job.timber, job.step) == (self.timber, self.step.id)
        self.go_to(job.timber, job.step)
        lead = "This is the next best job" if here else "Next best job"
        return Outcome(f"{lead}: {job.words}. {job.why}")

    def turn(self) -> Outcome:
        """Show the next face of the step."""
        self.turned += 1
        return DONE

    def swap(self) -> Outcome:
        """Swap which reading comes first."""
        self.swapped = not self.swapped
        return Outcome(
            "Marks along the timber now show the squared end first."
            if self.swapped
            else "Marks along the timber show the reference shoulder first, once it is struck."
        )

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
        undone: list[Done | None] = []
        outcome = self._kept(lambda: undone.append(self.bench.undo()))
        if outcome.failed:
            return outcome
        last = undone[0]
        if last is None:
            return Outcome("Nothing to undo since the program was started.")
        if self._known(last.timber):
            self.go_to(last.timber, last.step)
        return Outcome(f"Undone: {last.words}.")

    def set_sizes(self, sizes: Sizes) -> Outcome:
        """Keep real sizes typed at the step, and say which other timbers they spoil marks on."""
        return self._telling(lambda: self.bench.set_sizes(self.timber, self.step.id, sizes))

    def set_name(self, new: NewText) -> Outcome:
        """Keep what a name of the project was written as, and say which timbers it spoils."""
        return self._telling(
            lambda: self.bench.set_name(*new, timber=self.timber, step=self.step.id)
        )

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
        step, outcome = self.step.id, DONE
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
        return Pad(project.tape, project.bare, named_sizes(self.bench.frame), self._pad_tape)

    def names_form(self) -> NamesForm:
        """The form for the project's lines, levels, lengths and sections."""
        return NamesForm(self.bench)


def _told(*words: str) -> Outcome:
    """Several things to tell as one."""
    return Outcome(" ".join(filter(None, words)))
