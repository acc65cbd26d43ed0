"""What the screen shows of a bench: the timber and step in hand, as rows, words and drawings.

No widget is touched here. The bench screen asks a `Desk` for content and puts it on its panes, so
that everything a framer reads can be tested without a terminal.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.model.directions import Face
from benchmate.model.stick import ENDS
from benchmate.tui.desk_place import bars_of
from benchmate.tui.drawing.choice import best_end, best_face, faces_to_show
from benchmate.tui.drawing.end import draw_end
from benchmate.tui.drawing.face import draw_face
from benchmate.tui.listing import StepRows, step_rows, timber_row
from benchmate.tui.telling import beginning, greeting, header
from benchmate.tui.word_lines import room_for
from benchmate.tui.words import Saying, sayings
from benchmate.workbench.about import about
from benchmate.workbench.jobs import comes_first, waits_in_brief, waits_in_words, waits_on

if TYPE_CHECKING:
    from benchmate.frame.frame import Frame
    from benchmate.layout.standing import Standing
    from benchmate.layout.step import Step
    from benchmate.measure.printing import Shown
    from benchmate.tui.drawing.canvas import Drawing
    from benchmate.tui.drawing.key import Bar
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.lines import Part
    from benchmate.tui.rows import Row
    from benchmate.tui.word_lines import Room
    from benchmate.workbench.bench import Bench
    from benchmate.workbench.jobs import Wait, Waits
    from benchmate.workbench.walk import Walk


class DeskView:
    """The view of an open bench: which timber, which step, which face, and what it shows."""

    def __init__(self, bench: Bench, glyphs: Glyphs) -> None:
        self.bench = bench
        self.glyphs = glyphs
        self.swapped = False
        self.turned = 0
        self.timber, self.place = "", 0
        self._bars: tuple[Frame | None, tuple[Bar, ...]] = (None, ())
        self._start()

    def _start(self) -> None:
        """Lay the timber ticked last on the desk; nothing where the project has none."""
        first = self.bench.first_place()
        self.timber = first[0] if first else ""
        self.place = self._next_ready() if first else 0

    def _next_ready(self) -> int:
        """The timber's next open step, one that waits only as a last resort."""
        return self._ready_on(self.walk)

    def _ready_on(self, walk: Walk) -> int:
        """The next open step of a timber that does not wait; one that does as a last resort."""
        ready = walk.next_open(passing=waits_on(walk, self.bench.walk))
        return (walk.next_open() or 0) if ready is None else ready

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

    @property
    def waits(self) -> Waits:
        """What the waiting steps of the timber in hand wait for."""
        return waits_on(self.walk, self.bench.walk)

    @property
    def waiting(self) -> tuple[Wait, ...]:
        """What the step in hand waits for; nothing where it may be done."""
        return self.waits.get(self.step.id, ()) or comes_first(self.walk, self.step)

    def timber_rows(self) -> tuple[Row, ...]:
        """One row a timber."""
        walks = [self.bench.walk(timber.id) for timber in self.bench.timbers]
        return tuple(timber_row(walk, waits_on(walk, self.bench.walk)) for walk in walks)

    def timber_place(self) -> int:
        """The row of the timber in hand."""
        ids = [timber.id for timber in self.bench.timbers]
        return ids.index(self.timber) if self.timber in ids else 0

    def step_rows(self, *, tails: bool) -> StepRows:
        """The steps in order under their headings; with `tails`, each with its figure."""
        tail = self._figure_text if tails else _no_figure
        return step_rows(self.walk, tail, self.glyphs, self.waits)

    def _figure_text(self, step: Step) -> str:
        readings = self.walk.readings(step, swapped=self.swapped)
        fit = readings and not self.walk.withheld(step)
        return self.walk.tape.text(readings[0].value) if fit else ""

    @property
    def bars(self) -> tuple[Bar, ...]:
        """The timbers that have a place in the frame; laid out anew only when a size changes."""
        frame = self.bench.frame
        if self._bars[0] is not frame:
            self._bars = (frame, bars_of(frame))
        return self._bars[1]

    def about(self, timber: str) -> tuple[str, ...]:
        """What a timber is and where it stands, line by line, what stops it before all else."""
        walk = self.bench.walk(timber)
        return about(self.bench.frame, walk)

    def header(self) -> tuple[tuple[Part, ...], tuple[Part, ...]]:
        """The header's left and right parts."""
        return header(self.bench, None if self.empty else self.walk)

    def greeting(self) -> str:
        """What to tell when the project is laid on the desk."""
        return greeting(self.bench)

    def beginning(self) -> tuple[Saying, ...]:
        """What to do next where there are no timbers yet."""
        return beginning(self.bench)

    def room(self, words: tuple[Saying, ...]) -> Room:
        """The room that the words of the step in hand need, of which the drawing has the rest."""
        return room_for(self.step, words, stopped=bool(self.walk.withheld(self.step)))

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
        """The step in words, the most needed first.

        `whole` with its big figure among them, and with all that it waits for.
        """
        return sayings(
            self.walk,
            self.place,
            swapped=self.swapped,
            withheld=self.walk.withheld(self.step),
            waits_for=(waits_in_words if whole else waits_in_brief)(self.waiting),
            whole=whole,
        )

    def plain_words(self) -> str:
        """The timber and the step in hand as lines of text."""
        lines = (
            f"{each.label}: {each.text}" if each.label else each.text
            for each in self.words(whole=True)
        )
        return "\n".join((f"{self.bench.project.name}, {self.walk.timber.name}", *lines))

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
            blemishes=self.walk.progress.blemishes,
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
