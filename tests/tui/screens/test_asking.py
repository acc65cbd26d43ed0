"""A screen over the bench answers once."""

from textual.app import App, ComposeResult
from textual.widgets import Label

from benchmate.tui.screens.asking import AskingScreen


class Question(AskingScreen[str]):
    """A screen that is answered by any of two keys."""

    def compose(self) -> ComposeResult:
        """Ask."""
        yield Label("Which?")


class Shop(App[None]):
    """Asks, and keeps every answer it is given."""

    def __init__(self) -> None:
        super().__init__()
        self.question = Question()
        self.given: list[str | None] = []

    def on_mount(self) -> None:
        """Ask at once."""
        self.push_screen(self.question, self.given.append)


async def test_keys_typed_ahead_answer_once() -> None:
    """A second answer is no answer, and the screen below stays."""
    app = Shop()
    async with app.run_test() as pilot:
        await pilot.pause()
        app.question.dismiss("the first")
        app.question.dismiss("the second")
        await pilot.pause()
        assert app.given == ["the first"]
        assert len(app.screen_stack) == 1
