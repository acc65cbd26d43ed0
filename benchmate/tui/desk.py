"""What the screen shows of a bench: the timber and step in hand, as rows, words and drawings.

No widget is touched here. The bench screen asks a `Desk` for content and puts it on its panes, so
that everything a framer reads can be tested without a terminal.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.layout.standing import Standing, State
from benchmate.model.directions import Face
from benchmate.model.stick import ENDS
from benchmate.tui.drawing.choice import best_end, best_face, faces_to_show
from benchmate.tui.drawing.end import draw_end
from benchmate.tui.drawing.face import draw_face
from benchmate.tui.listing import StepRows, step_rows, timber_row
from benchmate.tui.outcome import DONE, Outcome
from benchmate.tui.sizes_form import SizesForm
from benchmate.tui.telling import all_done, elsewhere, greeting, header
from benchmate.tui.words import Saying, sayings
from benchmate.workbench.bench import NotKeptError
from benchmate.workbench.find import Index

if TYPE_CHECKING:
    from collections.abc import Callable

    from benchmate.layout.step import Step
    from benchmate.measure.printing import Shown
    from benchmate.tui.drawing.canvas import Drawing
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.lines import Part
    from benchmate.tui.rows import Row
    from benchmate.workbench.actions import Sizes
    from benchmate.workbench.bench import Bench, Done
    from benchmate.workbench.walk import Walk


class Desk:
    """The view of an open bench: which timber, which step, which face."""

    def __init__(self, bench: Bench, glyphs: Glyphs) -> None:
        self.bench = bench
        self.glyphs = glyphs
        self.swapped = False
        self.turned = 0
        self._trail: list[tuple[str, str]] = []
        first = bench.first_place()
        self.timber, self.place = first or ("", 0)

    @property
    def empty(self) -> bool:
        """Whether the project has no timbers."""
        return not self.timber

    @property
    def walk(self) -> Walk:
        """The timber in hand as it stands."""
        return self.bench.walk(self.timber)

    @property
    def step(self) -> Step:
        """The step in hand."""
        return self.walk.steps[self.place]

    @property
    def standing(self) -> Standing:
        """The state of the step in hand."""
        return self.walk.standings[self.place]

    def take_timber(self, timber: str) -> None:
        """Take up a timber at its next open step."""
        if timber != self.timber:
            self.timber, self.turned = timber, 0
            self.place = self.walk.next_open() or 0

    def take_step(self, place: int) -> None:
        """Take up a step of the timber in hand."""
        if place != self.place:
            self.place, self.turned = place, 0

    def go_to(self, timber: str, step: str) -> None:
        """Take up a step anywhere; without a step, the timber's next open one."""
        self._trail.append((self.timber, self.step.id))
        self.take_timber(timber)
        if step:
            self.take_step(self.walk.place(step))

    def back(self) -> Outcome:
        """Go back to where one was before going somewhere."""
        if not self._trail:
            return Outcome("There is nowhere to go back to.")
        timber, step = self._trail.pop()
        if timber in {each.id for each in self.bench.timbers}:
            self.take_timber(timber)
            self.take_step(self.walk.place(step))
        return DONE

    def _settle(self, step: str) -> None:
        """Hold on to a step by its id: steps before it may have come or gone."""
        if self.timber not in {timber.id for timber in self.bench.timbers}:
            first = self.bench.first_place()
            self.timber, self.place = first or ("", 0)
            return
        ids = [found.id for found in self.walk.steps]
        self.place = ids.index(step) if step in ids else min(self.place, len(ids) - 1)

    def next_open(self) -> Outcome:
        """Go to the next open step."""
        place = self.walk.next_open(self.place)
        if place is None:
            return Outcome(all_done(self.bench, self.walk))
        self.take_step(place)
        return DONE

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
        """Tick the step and go on; a step that is ticked and still true is passed over."""
        step = self.step
        if self.bench.broken:
            return Outcome(f"Not ticked: put right first {self.bench.broken}", failed=True)
        if self.walk.withheld(step):
            return Outcome(
                "Stop: this step cannot be ticked until its figures are put right.", True
            )
        if self.standing.state is not State.TICKED:
            outcome = self._kept(lambda: self.bench.tick(self.timber, step))
            if outcome.failed:
                return outcome
        return self.next_open()

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
        self.go_to(last.timber, last.step)
        return Outcome(f"Undone: {last.words}.")

    def set_sizes(self, sizes: Sizes) -> Outcome:
        """Keep real sizes typed at the step, and say which other timbers they spoil marks on."""
        before = elsewhere(self.bench, self.timber)
        outcome = self._kept(lambda: self.bench.set_sizes(self.timber, self.step.id, sizes))
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
        step = self.step.id
        try:
            action()
            self._settle(step)
        except NotKeptError as error:
            return Outcome(f"Not kept: {error}", failed=True)
        return DONE

    def index(self) -> Index:
        """Everything that can be looked up, as it stands."""
        return Index(self.bench)

    def sizes_form(self) -> SizesForm:
        """The form for the real sizes at the step in hand."""
        return SizesForm(self.bench, self.timber, self.step)

    def timber_rows(self) -> tuple[Row, ...]:
        """One row a timber."""
        return tuple(timber_row(self.bench.walk(timber.id)) for timber in self.bench.timbers)

    def timber_place(self) -> int:
        """The row of the timber in hand."""
        ids = [timber.id for timber in self.bench.timbers]
        return ids.index(self.timber) if self.timber in ids else 0

    def step_rows(self, *, tails: bool) -> StepRows:
        """The steps in order under their headings; with `tails`, each with its figure."""
        return step_rows(self.walk, self._figure_text if tails else _no_figure, self.glyphs)

    def _figure_text(self, step: Step) -> str:
        readings = self.walk.readings(step, swapped=self.swapped)
        fit = readings and not self.walk.withheld(step)
        return self.walk.tape.text(readings[0].value) if fit else ""

    def header(self) -> tuple[tuple[Part, ...], tuple[Part, ...]]:
        """The header's left and right parts."""
        return header(self.bench, None if self.empty else self.walk)

    def greeting(self) -> str:
        """What to tell when the project is laid on the desk."""
        return greeting(self.bench)

    @property
    def wordy(self) -> bool:
        """Whether the step needs the drawing's room for its words: several figures, or no face."""
        return bool(self.step.asks) or not self.step.faces

    def figure(self) -> Shown | None:
        """The figure to set, or None where the step has none or it cannot be trusted."""
        readings = self.walk.readings(self.step, swapped=self.swapped)
        if not readings or self.walk.withheld(self.step):
            return None
        return self.walk.tape.show(readings[0].value)

    def headline(self) -> str:
        """What stands in the figure's place where there is none."""
        return "STOP" if self.walk.withheld(self.step) else self.step.short

    def words(self, *, whole: bool = False) -> tuple[Saying, ...]:
        """The step in words, the most needed first; `whole` with its big figure among them."""
        held = self.walk.withheld(self.step)
        return sayings(self.walk, self.place, swapped=self.swapped, withheld=held, whole=whole)

    def faces(self) -> tuple[Face, ...]:
        """The sides to look at for the step: the best first, the nearer end grain last."""
        layout, step = self.walk.layout, self.step
        best = best_face(layout, step) or Face.FIRST
        return tuple(dict.fromkeys((best, *faces_to_show(step), best_end(layout, step))))

    def face(self) -> Face:
        """The side being looked at."""
        faces = self.faces()
        return faces[self.turned % len(faces)]

    def drawing(self, width: int, height: int) -> Drawing | None:
        """The side being looked at, with the current line and its figure; none on a stop."""
        face = self.face()
        if face.is_end or self.walk.withheld(self.step):
            return self.end_drawing(width, height)
        layout, step, glyphs = self.walk.layout, self.step, self.glyphs
        readings = self.walk.readings(step, swapped=self.swapped)
        # A task's figure, such as a depth of cut, is no distance on the face that is drawn.
        on_face = step.line is not None or step.feature == ENDS
        shown = readings[0] if readings and on_face else None
        text = self.walk.tape.text(shown.value) if shown else ""
        return draw_face(
            layout,
            step,
            face,
            width=width,
            height=height,
            glyphs=glyphs,
            reading=shown,
            figure=text,
        )

    def end_drawing(self, width: int, height: int) -> Drawing | None:
        """The end nearer the step, seen from outside; none on a stop."""
        if self.walk.withheld(self.step):
            return None
        layout, step = self.walk.layout, self.step
        end = best_end(layout, step)
        return draw_end(layout, step, end, width=width, height=height, glyphs=self.glyphs)


def _no_figure(_step: Step) -> str:
    return ""
