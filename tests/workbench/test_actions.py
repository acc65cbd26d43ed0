"""Changes to progress, each without touching anything else."""

from datetime import UTC, datetime

from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.workbench.actions import (
    Sizes,
    both,
    measured_by,
    sizes_at,
    tick_for,
    with_shown,
    with_sizes,
    with_tick,
)
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


NOTHING = Sizes(place="foot-tenon", measured=Measured(), as_cut=AsCut())


def test_each_measuring_step_measures_what_it_asks_for(bench: Bench) -> None:
    """The section by its two faces, the tenon by its sizes in order; no other step measures."""
    layout = bench.walk("post-nw").layout
    tenon = layout.feature("foot-tenon")
    assert tenon is not None
    section = measured_by(layout.step("foot-tenon/section"), tenon.sizes, NOTHING)
    assert section.measured == Measured.model_validate({"first": "7", "second": "7"})
    assert section.as_cut == AsCut()
    cut = measured_by(layout.step("foot-tenon/as-cut"), tenon.sizes, NOTHING)
    assert cut.measured == Measured()
    assert cut.as_cut is not None
    for size in tenon.sizes:
        assert cut.as_cut.get(size.name) == size.laid_out
    assert measured_by(layout.step("foot-tenon/shoulder"), tenon.sizes, NOTHING) == NOTHING


def test_what_a_step_shows_never_writes_over_what_is_typed(bench: Bench) -> None:
    """The sizes looked at are those kept when the change is made."""
    step = bench.walk("post-nw").layout.step("foot-tenon/section")
    typed = Measured.model_validate({"first": "7-1/8"})
    change = with_shown(step, (), NOTHING)
    after = change(Progress(timber="post-nw", measured={"foot-tenon": typed}))
    assert after.measured["foot-tenon"] == Measured.model_validate(
        {"first": "7-1/8", "second": "7"}
    )


def test_sizes_typed_again_stay_where_they_stand() -> None:
    """A file is not put in another order by a size that is corrected."""
    kept = {place: Measured.model_validate({"first": "7"}) for place in ("foot", "head")}
    again = Sizes(place="foot", measured=Measured.model_validate({"first": "6"}))
    after = with_sizes(again)(Progress(timber="post-nw", measured=kept))
    assert list(after.measured) == ["foot", "head"]
    assert after.measured["foot"] == again.measured


def test_two_changes_are_made_as_one(bench: Bench) -> None:
    """A tick and its sizes: the second is made on top of the first."""
    step = bench.walk("post-nw").layout.step("foot-tenon/section")
    change = both(with_tick(step.id, tick_for(step, AT)), with_shown(step, (), NOTHING))
    after = change(Progress(timber="post-nw"))
    assert after.tick(step.id) is not None
    assert after.measured["foot-tenon"] != Measured()
