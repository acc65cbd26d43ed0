"""Moving about at the bench: timber by timber, step by step, and back again.

Everything answers with an `Outcome`, and no widget is touched; what is then shown is the view's.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.desk_view import DeskView
from benchmate.tui.outcome import DONE, Outcome
from benchmate.tui.telling import all_done, only_waiting
from benchmate.workbench.jobs import next_job, nothing_left

if TYPE_CHECKING:
    from benchmate.tui.glyphs import Glyphs
    from benchmate.workbench.bench import Bench


class DeskMoves(DeskView):
    """An open bench, the timber and step in hand, and where one was before."""

    def __init__(self, bench: Bench, glyphs: Glyphs) -> None:
        super().__init__(bench, glyphs)
        self._trail: list[tuple[str, str]] = []

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
        here = None if self.empty else (self.timber, self.step.id)
        self.take_timber(timber)
        if step:
            self.take_step(self.walk.place(step))
        if here is not None and here != (self.timber, self.step.id):
            self._trail.append(here)

    def take_up(self, timber: str) -> Outcome:
        """Take up a timber at its next ready step, even if it is the one in hand."""
        walk = self.bench.walk(timber)
        self.go_to(timber, walk.steps[self._ready_on(walk)].id)
        return DONE

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

    def _stand_at(self, timber: str, step: str) -> bool:
        """Go to a step, or at least to its timber; whether it is still there."""
        if not self._known(timber):
            return False
        found = step in {each.id for each in self.bench.walk(timber).steps}
        self.go_to(timber, step if found else "")
        return found
