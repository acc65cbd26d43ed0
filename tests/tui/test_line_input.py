"""A field that takes every key in its order."""

from textual import events
from textual.app import App, ComposeResult

from benchmate.tui.line_input import LineInput


class Page(App[None]):
    """A field whose owner takes only down."""

    def compose(self) -> ComposeResult:
        """The field alone."""
        self.offered: list[str] = []
        self.line = LineInput(self.take, id="line")
        yield self.line

    def take(self, key: str) -> bool:
        """Note what is offered."""
        self.offered.append(key)
        return key == "down"


async def test_keys_that_edit_and_leave_keep_their_order() -> None:
    """Pressed at once; what the owner takes is not written."""
    app = Page()
    async with app.run_test() as pilot:
        for key in ["1", "2", "backspace", "3", "left", "4", "home", "5", "end", "6", "down", "7"]:
            app.simulate_key(key)
        await pilot.pause()
        assert app.line.value == "514367"
        assert app.offered[-2:] == ["down", "7"]
        app.line.take("new", typing=True)
        await pilot.press("8")
        assert app.line.value == "8"


async def test_nothing_is_written_where_nothing_is_typed() -> None:
    """Letters, edits and a paste on a choice."""
    app = Page()
    async with app.run_test() as pilot:
        app.line.take("", typing=False)
        await pilot.press("x", "backspace")
        app.line.post_message(events.Paste("pasted"))
        await pilot.pause()
        assert app.line.value == ""
        app.line.take("", typing=True)
        app.line.post_message(events.Paste("pasted"))
        await pilot.pause()
        assert app.line.value == "pasted"
