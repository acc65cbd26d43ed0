"""The form screen alone."""

import shutil
from pathlib import Path

from textual.widgets import Input

from benchmate.store.keeper import Keeper
from benchmate.tui.app import BenchmateApp
from benchmate.tui.edit_form import EditForm
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.outcome import Outcome
from benchmate.tui.screens.edit import PAUSE, Answer, EditScreen
from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.record import change_work
from benchmate.workbench.project_edits import Edit
from tests.tui.pictures import screen_text

SHED = Path(__file__).parents[3] / "projects" / "orchard-tool-shed"


async def test_a_form_keeps_what_its_effect_was_shown_for(tmp_path: Path) -> None:
    """One that fails stays with what was typed; the next try leaves with what there is to tell."""
    folder = Path(shutil.copytree(SHED, tmp_path / "shed"))
    app = BenchmateApp(str(folder), UNICODE)
    kept: list[Edit] = []
    answers: list[Answer | None] = []

    def keep(edit: Edit) -> Outcome:
        kept.append(edit)
        return Outcome("not this time", failed=True) if len(kept) == 1 else Outcome("kept")

    async with app.run_test(size=(120, 40)) as pilot:
        await pilot.pause()
        bench = Bench(Keeper.read(folder))
        bench._keeper.read_only = ""
        form = EditForm(bench, change_work(bench, "se-foot"))
        form.row = form.row_of(("thickness",)) or 0
        app.push_screen(EditScreen(form, keep, UNICODE), answers.append)
        await pilot.pause()
        await pilot.press("ctrl+u", "2", "enter")
        assert not kept, "what was typed is shown before it can be kept"
        await pilot.press("enter")
        await pilot.pause()
        assert "not this time" in screen_text(app)
        assert app.screen.query_one(Input).value == "2"
        await pilot.press("enter")
        await pilot.pause()
        await pilot.press("enter")
        await pilot.pause()
        assert answers == [Answer(outcome=Outcome("kept"))]


async def test_words_can_be_clicked_and_effects_paged(tmp_path: Path) -> None:
    """The mouse is never needed, and works."""
    folder = Path(shutil.copytree(SHED, tmp_path / "shed"))
    app = BenchmateApp(str(folder), UNICODE)
    async with app.run_test(size=(120, 40)) as pilot:
        await pilot.pause()
        bench = Bench(Keeper.read(folder))
        bench._keeper.read_only = ""
        form = EditForm(bench, change_work(bench, "se-foot"))
        form.row = form.row_of(("into",)) or 0
        screen = EditScreen(form, lambda _edit: Outcome(), UNICODE)
        app.push_screen(screen)
        await pilot.pause()
        second = form.picks()[1]
        await pilot.click("#edit-picks", offset=(3, 1))
        await pilot.pause(2 * PAUSE)
        assert screen._input.value == second
        await pilot.press("pagedown", "pageup", "down")
        assert form.blank is not None
        assert form.blank.key == "at"
        await pilot.press("escape", "escape")
        await pilot.pause()
        assert app.screen is not screen
