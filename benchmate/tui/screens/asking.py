"""A screen over the bench that gives one answer and is gone."""

from __future__ import annotations

from textual.await_complete import AwaitComplete
from textual.screen import ModalScreen, ScreenResultType


class AskingScreen(ModalScreen[ScreenResultType]):
    """A modal screen that is dismissed once, however often its keys come.

    Keys typed ahead reach it again before it is gone. A second answer would count twice and take
    the bench away from under it.
    """

    _answered = False

    def dismiss(self, result: ScreenResultType | None = None) -> AwaitComplete:
        """Close with an answer; the first one counts."""
        if self._answered:
            return AwaitComplete()
        self._answered = True
        return super().dismiss(result)
