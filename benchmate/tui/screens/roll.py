"""The timber in hand as it is rolled on the horses: four faces, two ends, every figure."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual.binding import Binding, BindingType
from textual.containers import Vertical

from benchmate.tui.lines import Hint
from benchmate.tui.panes.drawing_pane import DrawingPane
from benchmate.tui.panes.words_pane import WordsPane
from benchmate.tui.rolling import Rolling
from benchmate.tui.screens.step_screen import StepScreen, step_bindings

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.tui.desk import Desk
    from benchmate.tui.glyphs import Glyphs


class RollScreen(StepScreen):
    """Rolls, zooms, ticks and moves; `r` or escape goes back to the bench."""

    BINDINGS: ClassVar[list[BindingType]] = [
        *step_bindings("roll"),
        Binding("f", "roll(1)", "Roll on", show=False),
        Binding("d,F", "roll(-1)", "Roll back", show=False),
        Binding("e", "ends", "The two ends", show=False),
        Binding("z", "zoom", "Whole or joint", show=False),
        Binding("plus,equals_sign", "near", "The joint", show=False),
        Binding("minus", "whole", "The whole timber", show=False),
        Binding("r", "leave", "Back to the bench", show=False),
    ]

    def __init__(self, desk: Desk, glyphs: Glyphs) -> None:
        super().__init__(desk, glyphs)
        self.rolling = Rolling(desk)
        self._words = WordsPane(glyphs=glyphs, id="roll-words")
        self._faces = DrawingPane(id="roll-faces")

    def compose(self) -> ComposeResult:
        """The timber, the step in words, the faces, the keys."""
        with Vertical(id="roll"):
            yield self._header
            yield self._words
            yield self._faces
            yield self._notice
            yield self._footer

    def _show(self) -> None:
        super()._show()
        self.rolling.follow()
        desk, rolling = self.desk, self.rolling
        back, on = rolling.neighbours
        self._footer.show(
            (
                Hint(key="space", label="tick", action="tick"),
                Hint(key="n", label="next", action="next"),
                Hint(key="f", label=on, action="roll(1)"),
                Hint(key="d", label=back, action="roll(-1)"),
                Hint(key="e", label="faces" if rolling.ends else "ends", action="ends"),
                Hint(key="z", label="joint" if rolling.whole else "whole", action="zoom"),
                Hint(key="s", label="from", action="swap"),
                Hint(key="u", label="undo", action="undo"),
            ),
            (Hint(key="r", label="bench", action="leave"),),
        )
        self.set_class(bool(desk.walk.withheld(desk.step)), "-stopped")
        self._words.show(rolling.words())
        self._faces.show(rolling.drawing)

    def action_roll(self, faces: int) -> None:
        """Roll the timber on to its next face, or back."""
        self.rolling.roll(faces)
        self._turned()

    def action_ends(self) -> None:
        """Look at the two ends, or at the faces again."""
        self.rolling.look_at_ends()
        self._turned()

    def action_zoom(self) -> None:
        """Look at the whole timber, or at the joint in hand."""
        self.rolling.whole = not self.rolling.whole
        self._turned()

    def action_near(self) -> None:
        """Look at the joint in hand."""
        self.rolling.whole = False
        self._turned()

    def action_whole(self) -> None:
        """Look at the whole timber."""
        self.rolling.whole = True
        self._turned()

    def _turned(self) -> None:
        self._hush()
        self._show()
