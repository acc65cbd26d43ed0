"""A timber being rolled on the horses: which face is in hand, how near one looks, and the words.

No widget is touched here. The view follows the step in hand: it turns to a face that shows the
step's line whenever another step is taken up.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.layout.common import crown_side
from benchmate.model.directions import Face
from benchmate.model.stick import ENDS
from benchmate.tui.big_words import big_words
from benchmate.tui.distant import GUARDS, MAKES, STOP
from benchmate.tui.drawing.canvas import Drawing, Role
from benchmate.tui.drawing.choice import best_face
from benchmate.tui.drawing.roll import Roll, face_below, in_order
from benchmate.tui.drawing.rolled import draw_ends, draw_rolled
from benchmate.tui.running import datum_words, running_figures
from benchmate.tui.words import Saying

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from benchmate.tui.desk_view import DeskView
    from benchmate.tui.drawing.tags import Tag


class Rolling:
    """The timber in hand as it lies: `face` up, its whole length or one joint, or its two ends."""

    def __init__(self, desk: DeskView) -> None:
        self.desk = desk
        self.face = Face.FIRST
        self.whole = True
        self.ends = False
        self._followed = ("", "")
        self.follow()

    def follow(self) -> None:
        """Turn to a face that shows the step in hand, once, whenever another is taken up."""
        desk = self.desk
        if desk.empty or self._followed == (desk.timber, desk.step.id):
            return
        if self._followed[0] != desk.timber:
            self.face = Face.FIRST
        self._followed = (desk.timber, desk.step.id)
        best = best_face(desk.walk.layout, desk.step)
        self.ends = best is not None and best.is_end
        if best is not None and not best.is_end:
            self.face = best

    def roll(self, faces: int) -> None:
        """Roll the timber away by so many faces, or towards oneself where below nothing."""
        pose = self.desk.walk.layout.stick.pose
        for _ in range(faces % 4):
            self.face = face_below(pose, self.face)
        self.ends = False

    def look_at_ends(self) -> None:
        """Look at the two ends, or at the faces again."""
        self.ends = not self.ends

    @property
    def neighbours(self) -> tuple[str, str]:
        """The faces that come up when the timber is rolled back and on, in words."""
        pose = self.desk.walk.layout.stick.pose
        above, _, below, _ = in_order(pose, self.face)
        return pose.words(above), pose.words(below)

    def words(self) -> tuple[Saying, ...]:
        """The step in hand with its figure, what guards it, and where its mark is looked for."""
        return tuple(self._words())

    def _words(self) -> Iterator[Saying]:
        desk = self.desk
        said = desk.words()
        yield said[0]
        yield from (saying for saying in said if saying.label in GUARDS and saying.label != "care")
        if not desk.walk.withheld(desk.step):
            yield from self._elsewhere()
        makes = [saying for saying in said if saying.label in MAKES]
        makes.sort(key=lambda saying: saying.label == "on")
        figure = desk.figure()
        for saying in makes:
            if saying.label == "from" and figure is not None:
                text = f"{figure.text()} from {saying.text}"
                yield Saying(label="mark", text=text, strong=True)
            else:
                yield saying
        yield from (saying for saying in said if saying.label == "care")
        yield from self._how_it_lies()

    def _elsewhere(self) -> Iterator[Saying]:
        """That the line in hand is not on the face in hand, and where it is."""
        desk = self.desk
        if desk.step.faces and not self.ends and self.face not in desk.step.faces:
            here = desk.walk.layout.stick.pose.words(self.face)
            where = f"Not on the {here}: it is on the {desk.step.on}."
            yield Saying(label="see", text=where, warning=True)

    def _how_it_lies(self) -> Iterator[Saying]:
        """Where the running figures run from, and which arris everything is measured from."""
        pose = self.desk.walk.layout.stick.pose
        datum = datum_words(self.desk)
        arris = pose.arris_words(Face.FIRST, Face.SECOND)
        figures = f"all figures along run from the {datum}; " if datum else ""
        yield Saying(label="runs", text=f"{figures}heavy edges lie on the reference faces")
        yield Saying(label="arris", text=f"the reference arris is {arris}")

    def drawing(self, width: int, height: int) -> Drawing | None:
        """The faces or the ends; on a stop the word and no drawing, as nothing is to be marked."""
        desk = self.desk
        if desk.empty:
            return None
        if desk.walk.withheld(desk.step):
            block = big_words(STOP, width=width, height=height, glyphs=desk.glyphs)
            return Drawing(tuple(((row.center(width), Role.LOUD),) for row in block))
        draw = draw_ends if self.ends else draw_rolled
        return draw(self._roll(), width=width, height=height, glyphs=desk.glyphs)

    def tags(self) -> Mapping[Face, tuple[Tag, ...]]:
        """The running figures of each face."""
        return running_figures(self.desk)

    def _roll(self) -> Roll:
        desk = self.desk
        walk, step = desk.walk, desk.step
        readings = walk.readings(step, swapped=desk.swapped)
        on_face = step.line is not None or step.feature == ENDS
        reading = readings[0] if readings and on_face else None
        best = best_face(walk.layout, step)
        return Roll(
            layout=walk.layout,
            step=step,
            face=self.face,
            best=self.face if best is None or best.is_end else best,
            whole=self.whole,
            reading=reading,
            figure=walk.tape.text(reading.value) if reading else "",
            tags=self.tags(),
            crown=crown_side(walk.layout.stick),
            blemishes=walk.progress.blemishes,
        )
