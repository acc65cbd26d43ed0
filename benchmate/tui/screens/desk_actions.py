"""The keys that do something at the desk and leave the screen as it is."""

from __future__ import annotations

from abc import abstractmethod
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable

    from benchmate.tui.desk import Desk
    from benchmate.tui.outcome import Outcome


class DeskActions:
    """What a screen that shows a desk's step lets a framer do with it."""

    @abstractmethod
    def _do(self, action: Callable[[Desk], Outcome], *, empty: bool = False) -> None:
        """Do something at the desk, show how things stand, and say what there is to say.

        Without timbers nothing is done, unless it can be at an `empty` desk.
        """

    def action_tick(self) -> None:
        """Tick the step and go on to the next open one."""
        self._do(lambda desk: desk.tick())

    def action_out_of_order(self) -> None:
        """Tick the step although it waits for other work."""
        self._do(lambda desk: desk.tick_out_of_order())

    def action_untick(self) -> None:
        """Take the step's tick off."""
        self._do(lambda desk: desk.untick())

    def action_undo(self) -> None:
        """Take the last action back."""
        self._do(lambda desk: desk.undo(), empty=True)

    def action_redo(self) -> None:
        """Do again what was taken back."""
        self._do(lambda desk: desk.redo(), empty=True)

    def action_next(self) -> None:
        """Go to the next open step."""
        self._do(lambda desk: desk.next_open())

    def action_best_job(self) -> None:
        """Go to the next best job in the whole frame."""
        self._do(lambda desk: desk.best_job())

    def action_back(self) -> None:
        """Go back to where one was before going somewhere."""
        self._do(lambda desk: desk.back())

    def action_swap(self) -> None:
        """Swap which reading comes first."""
        self._do(lambda desk: desk.swap())
