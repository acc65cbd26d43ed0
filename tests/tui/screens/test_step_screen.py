"""What the screens of one step share: the keys of the bench, and its manners."""

from pathlib import Path

from textual.binding import Binding

from benchmate.tui.bindings import action_name
from benchmate.tui.keys import KEYS
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.roll import RollScreen
from benchmate.tui.screens.stand_back import StandBackScreen
from benchmate.tui.screens.step_screen import SHARED, StepScreen, step_bindings
from tests.tui.screens.test_walk import opened


def test_the_keys_shared_with_the_bench_are_those_of_the_table() -> None:
    """Each can be remapped apart, and both screens act on all of them."""
    made = {binding.id: binding for binding in step_bindings("roll") if binding.id}
    table = {key.id: key for key in KEYS}
    assert set(made) == {f"roll.{name}" for name in SHARED}
    for name in SHARED:
        binding = made[f"roll.{name}"]
        assert binding.key == ",".join(table[name].keys)
        assert binding.action == action_name(name)
        assert callable(getattr(StepScreen, f"action_{binding.action}"))


def test_no_key_means_two_things_on_one_screen() -> None:
    """Nor is a key of the bench that is shared used for something else."""
    for screen in (RollScreen, StandBackScreen):
        made = [binding for binding in screen.BINDINGS if isinstance(binding, Binding)]
        keys = [key for binding in made for key in binding.key.split(",")]
        assert len(made) == len(screen.BINDINGS)
        assert len(keys) == len(set(keys))


async def test_typed_ahead_keys_close_once(demo: Path) -> None:
    """Two presses on the way home leave the bench where it is."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        step = desk.step.id
        await pilot.press("v", "escape", "r", "r")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.step.id == step


async def test_it_leaves_when_the_last_timber_is_taken_out(demo: Path) -> None:
    """There is nothing to stand back from; the bench says so."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("v")
        screen = pilot.app.screen
        assert isinstance(screen, StandBackScreen)
        (demo / "project.toml").write_text('format = 1\nname = "Empty"\n', "utf-8")
        screen.look()
        await pilot.pause()
        assert desk.empty
        assert isinstance(pilot.app.screen, BenchScreen)
