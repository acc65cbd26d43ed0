"""The open project: ticks, sizes, undo and what others change."""

import shutil
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest

from benchmate.layout.standing import State, what_changed
from benchmate.measure.reading import read_length
from benchmate.model.progress import AsCut, Measured
from benchmate.store.keeper import Keeper
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench, NotKeptError, now


def state(bench: Bench, timber: str, step: str) -> State:
    """The state of one step."""
    walk = bench.walk(timber)
    return walk.standings[walk.place(step)].state


def as_cut(**sizes: str) -> Sizes:
    """A foot tenon's sizes as cut."""
    return Sizes(place="foot-tenon", measured=Measured(), as_cut=AsCut.model_validate(sizes))


def test_a_tick_is_on_disk_when_the_call_returns(bench: Bench, demo: Path) -> None:
    """A second reader of the folder finds the tick at once, with what it read."""
    step = bench.walk("post-nw").layout.step("foot-tenon/shoulder")
    bench.tick("post-nw", step)
    tick = Keeper.read(demo).progress("post-nw").tick(step.id)
    assert tick is not None
    assert tick.marked == {"squared foot": read_length("3-1/2")}
    assert state(bench, "post-nw", step.id) is State.TICKED


def test_the_demo_opens_on_the_post_in_hand(bench: Bench) -> None:
    """The timber ticked last comes first, at its next open step."""
    place = bench.first_place()
    assert place is not None
    timber, step = place
    assert timber == "post-se"
    assert bench.walk(timber).steps[step].id == "foot-tenon/far-cheek"


def test_the_demo_shows_a_mortise_to_look_at_again(bench: Bench) -> None:
    """The SW tenon came out narrow after its mortise was marked."""
    walk = bench.walk("sill-south")
    standing = walk.standings[walk.place("sw-foot-mortise/finish")]
    assert standing.state is State.LOOK_AGAIN
    assert standing.changed == 'marked at 7", now 6-15/16" from the squared west end'
    assert walk.look_again == 1


def test_an_as_cut_tenon_moves_its_mortise_at_once(bench: Bench) -> None:
    """Law 5: an as-cut size typed for a tenon resizes its mortise at once."""
    bench.set_sizes("post-nw", "foot-tenon/as-cut", as_cut(width="5-1/4"))
    finish = bench.walk("sill-north").layout.step("nw-foot-mortise/finish")
    assert finish.readings[0].value == read_length("6-3/4")


def test_undo_takes_back_the_last_action_first(bench: Bench) -> None:
    """Ticks and sizes come off in turn, and then there is nothing to undo."""
    step = bench.walk("post-nw").layout.step("end/square")
    bench.tick("post-nw", step)
    bench.set_sizes("post-nw", "foot-tenon/as-cut", as_cut(width="5-1/4"))
    first, second = bench.undo(), bench.undo()
    assert first is not None
    assert second is not None
    assert (first.step, second.step) == ("foot-tenon/as-cut", "end/square")
    assert bench.walk("post-nw").progress.as_cut == {}
    assert state(bench, "post-nw", "end/square") is State.OPEN
    assert bench.undo() is None


def test_undo_of_a_new_tick_brings_the_old_one_back(bench: Bench) -> None:
    """A mark ticked anew after a change can be put back as it was."""
    walk = bench.walk("sill-south")
    step = walk.layout.step("sw-foot-mortise/finish")
    before = walk.progress.tick(step.id)
    bench.tick("sill-south", step)
    assert state(bench, "sill-south", step.id) is State.TICKED
    bench.undo()
    assert bench.walk("sill-south").progress.tick(step.id) == before


def test_untick_takes_a_tick_off_and_can_be_undone(bench: Bench) -> None:
    """An old tick comes off without touching later ones; a step without one is left alone."""
    step = bench.walk("post-sw").layout.step("foot-tenon/shoulder")
    ticks = len(bench.walk("post-sw").progress.ticks)
    bench.untick("post-sw", step)
    bench.untick("post-sw", step)
    assert len(bench.walk("post-sw").progress.ticks) == ticks - 1
    bench.undo()
    assert len(bench.walk("post-sw").progress.ticks) == ticks
    assert bench.undo() is None


def test_trying_sizes_changes_nothing(bench: Bench, demo: Path) -> None:
    """A preview tells what would move, with what is ticked among it, and writes nothing."""
    files = {path: path.read_bytes() for path in demo.rglob("*.toml")}
    ripple = bench.try_sizes("post-sw", as_cut(width="5-1/4"))
    (finish,) = (
        each
        for each in ripple.moved
        if each.step == "sw-foot-mortise/finish" and each.words == "from the squared west end"
    )
    assert (finish.before, finish.after) == (read_length("6-15/16"), read_length("6-3/4"))
    assert finish.ticked
    assert ripple.ticked == 1
    assert {path: path.read_bytes() for path in demo.rglob("*.toml")} == files
    assert bench.walk("post-sw").progress.as_cut["foot-tenon"].width == read_length("5-7/16")


def test_a_preview_is_what_then_happens(bench: Bench) -> None:
    """Every figure a preview promises is the figure after accepting."""
    sizes = Sizes(
        place="foot-tenon",
        measured=Measured.model_validate({"first": "7-1/4", "second": "6-7/8"}),
        as_cut=AsCut(),
    )
    ripple = bench.try_sizes("post-ne", sizes)
    bench.set_sizes("post-ne", "foot-tenon/section", sizes)
    assert ripple.moved
    for moved in ripple.moved:
        step = bench.walk(moved.timber).layout.step(moved.step)
        figures = {f"from the {each.hook}": each.value for each in step.readings}
        figures |= {each.words: each.value for each in step.beside}
        assert figures[moved.words] == moved.after


def test_a_preview_brings_its_findings(bench: Bench) -> None:
    """A size that cannot be is told before it is accepted."""
    thin = Sizes(
        place="foot-tenon", measured=Measured.model_validate({"first": "3-1/4"}), as_cut=AsCut()
    )
    codes = {finding.code for finding in bench.try_sizes("post-ne", thin).findings}
    assert codes == {"tenon-cheek-outside"}


def test_a_stop_withholds_the_whole_joint(bench: Bench) -> None:
    """Law 7: a cheek in the air is a finding on every step of the joint, never a clamped number."""
    thin = Sizes(
        place="foot-tenon", measured=Measured.model_validate({"first": "3-1/4"}), as_cut=AsCut()
    )
    bench.set_sizes("post-ne", "foot-tenon/section", thin)
    walk = bench.walk("post-ne")
    assert walk.stop(walk.layout.step("foot-tenon/far-cheek")) is not None
    assert walk.stop(walk.layout.step("head-tenon/far-cheek")) is None


def test_sizes_at_a_step_without_a_joint_are_the_whole_sticks(bench: Bench) -> None:
    """Measuring at an end or the back-check measures the stick all along."""
    walk = bench.walk("post-nw")
    assert bench.sizes("post-nw", walk.layout.step("stick/back-check")).place == "all"
    assert bench.sizes("post-nw", walk.layout.step("end/overall")).place == "all"
    assert bench.sizes("post-nw", walk.layout.step("foot-tenon/knife")).place == "foot-tenon"
    chamfered = bench.sizes("post-nw", walk.layout.step("inside-chamfer/line"))
    assert (chamfered.place, chamfered.as_cut) == ("inside-chamfer", None)


def test_a_tick_made_elsewhere_is_taken_in(
    bench: Bench, demo: Path, clock: Callable[[], datetime]
) -> None:
    """What another program wrote shows after the next look, and is not lost at the next tick."""
    other = Bench(Keeper.open(demo, over=True), clock)
    step = bench.walk("post-nw").layout.step("end/square")
    other.tick("post-nw", step)
    other.close()
    changes = bench.look()
    assert changes.timbers == ("post-nw",)
    assert changes.lost
    bench.take_over()
    bench.tick("post-nw", bench.walk("post-nw").layout.step("end/overall"))
    assert {tick.step for tick in bench.walk("post-nw").progress.ticks} == {
        "end/square",
        "end/overall",
    }


def test_a_second_bench_reads_only(bench: Bench, demo: Path) -> None:
    """Two programs on one project: the second keeps nothing and says why."""
    second = Bench(Keeper.open(demo))
    step = second.walk("post-nw").layout.step("end/square")
    assert second.read_only
    with pytest.raises(NotKeptError):
        second.tick("post-nw", step)
    assert second.undo() is None
    second.take_over()
    second.tick("post-nw", step)
    with pytest.raises(NotKeptError):
        bench.tick("post-nw", step)
    second.close()


def test_taking_over_a_lost_folder_is_one_clear_error(bench: Bench, demo: Path) -> None:
    """A project folder that has gone cannot be taken over."""
    shutil.rmtree(demo)
    with pytest.raises(NotKeptError):
        bench.take_over()


def test_a_changed_project_is_read_again(bench: Bench, demo: Path) -> None:
    """A new sill depth in an editor shows in the mortise's steps."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('sill = "8 x 8"', 'sill = "9 x 8"'))
    assert bench.look().project
    depth = bench.walk("sill-north").layout.step("nw-foot-mortise/depth")
    assert [each.value for each in depth.beside if "left to" in each.words] == [
        read_length("5-3/8")
    ]
    assert not bench.look()


def test_a_broken_progress_file_withholds_figures_it_could_change(bench: Bench, demo: Path) -> None:
    """The timber itself and the sill it stands on say so; a post elsewhere does not."""
    (demo / "progress" / "post-sw.toml").write_text("format = ")
    opened = Bench(Keeper.read(demo))
    assert "progress/post-sw.toml" in opened.walk("post-sw").trouble
    assert "progress/post-sw.toml" in opened.walk("sill-south").trouble
    assert not opened.walk("post-ne").trouble
    with pytest.raises(NotKeptError):
        bench.tick("post-sw", bench.walk("post-sw").layout.step("stick/label"))


def test_a_project_without_timbers_has_nowhere_to_start(tmp_path: Path) -> None:
    """An empty project opens."""
    (tmp_path / "project.toml").write_text('format = 1\nname = "Empty"\n')
    assert Bench(Keeper.read(tmp_path)).first_place() is None


def test_the_real_clock_gives_whole_seconds_in_utc() -> None:
    """Tick times are plain to read in the file."""
    assert now().microsecond == 0
    assert now().utcoffset() is not None


def test_every_step_can_be_ticked_however_long_the_names(demo: Path) -> None:
    """The longest names and ids a project may have still make ticks that can be kept and read."""
    path = demo / "project.toml"
    long_id = "post-sw-" + "x" * 52
    text = path.read_text().replace('"post-sw"', f'"{long_id}"').replace("SW post", "W" * 60)
    path.write_text(text)
    bench = Bench(Keeper.open(demo))
    for timber in (long_id, "sill-south"):
        for step in bench.walk(timber).steps:
            bench.tick(timber, step)
    bench.close()
    walk = Bench(Keeper.read(demo)).walk("sill-south")
    assert walk.done == len(walk.steps)


def test_a_tick_remembers_no_prose(bench: Bench) -> None:
    """What is kept are figures, faces and sides, so that a better worded step stays ticked."""
    step = bench.walk("post-nw").layout.step("foot-tenon/saw-cheeks")
    bench.tick("post-nw", step)
    reworded = replace(step, waste="Another sentence.", why="Another reason.", on="elsewhere")
    tick = bench.walk("post-nw").progress.tick(step.id)
    assert tick is not None
    assert what_changed(reworded, tick, bench.project.tape) == ""
