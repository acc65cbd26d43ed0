"""Changes to progress, each without touching anything else."""

from datetime import UTC, datetime

from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.workbench.actions import Sizes, sizes_at, tick_for, with_sizes, with_tick
from benchmate.workbench.bench import Bench

AT = datetime(2026, 3, 2, tzinfo=UTC)


def test_a_tick_remembers_figure_faces_and_waste(bench: Bench) -> None:
    """Law 6: each tick stores the value shown when it was made."""
    step = bench.walk("post-nw").layout.step("foot-tenon/far-cheek")
    tick = tick_for(step, AT)
    assert tick.marked == {"North face": step.readings[0].value}
    assert tick.on == "West face, East face, foot"
    assert tick.waste == "South face"


def test_a_second_tick_replaces_the_first(bench: Bench) -> None:
    """A step has one tick."""
    step = bench.walk("post-nw").layout.step("end/square")
    progress = Progress(timber="post-nw")
    for _ in range(2):
        progress = with_tick(step.id, tick_for(step, AT))(progress)
    assert len(progress.ticks) == 1
    assert with_tick(step.id, None)(progress).ticks == ()


def test_sizes_left_empty_are_as_drawn_again() -> None:
    """An emptied form leaves no trace in the file."""
    typed = Sizes(
        place="foot-tenon",
        measured=Measured.model_validate({"first": "7"}),
        as_cut=AsCut.model_validate({"width": "5"}),
    )
    progress = with_sizes(typed)(Progress(timber="post-nw"))
    assert sizes_at(progress, "foot-tenon", tenon=True) == typed
    emptied = Sizes(place="foot-tenon", measured=Measured(), as_cut=AsCut())
    assert with_sizes(emptied)(progress) == Progress(timber="post-nw")


def test_a_place_without_a_tenon_has_no_as_cut_sizes() -> None:
    """A mortise's form asks for the section only, and leaves tenons elsewhere alone."""
    kept = Progress(timber="post-nw", as_cut={"foot-tenon": AsCut.model_validate({"width": "5"})})
    sizes = sizes_at(kept, "se-foot-mortise", tenon=False)
    assert sizes.as_cut is None
    assert with_sizes(sizes)(kept) == kept
