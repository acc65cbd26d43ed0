"""The open project: ticks, sizes, undo and what others change."""

import shutil
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest

from benchmate.layout.standing import State, what_changed
from benchmate.measure.reading import read_length
from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.model.solids import Axis
from benchmate.store.keeper import Keeper
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench, now
from benchmate.workbench.keeping import BadTextError, NotKeptError
from benchmate.workbench.names import NewText
from tests.workbench.test_jobs import PEGGED


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


def test_sizes_at_a_peg_are_its_joint_s(tmp_path: Path) -> None:
    """A hole has no section of its own, so what is measured there counts for the joint."""
    (tmp_path / "project.toml").write_text(PEGGED, "utf-8")
    bench = Bench(Keeper.open(tmp_path))
    for stick, joint in (("post", "foot-tenon"), ("sill", "foot-mortise")):
        sizes = bench.sizes(stick, bench.walk(stick).layout.step(f"{joint}-pegs/peg-line"))
        assert (sizes.place, sizes.as_cut) == (joint, None)


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


def test_a_name_is_on_disk_when_the_call_returns(bench: Bench, demo: Path) -> None:
    """Every line of the project file stays, but for that one value, and its comment stays too."""
    before = (demo / "project.toml").read_text()
    bench.set_name("lengths", "deck", "1-1/2")
    after = (demo / "project.toml").read_text()
    assert after == before.replace('deck = "1-1/4"', 'deck = "1-1/2"')
    assert Keeper.read(demo).project == bench.project
    assert bench.frame.levels.of("floor top") == read_length("5")


def test_a_preview_of_a_name_is_what_then_happens(bench: Bench) -> None:
    """Every figure promised is the figure after accepting, and every other stays."""
    before = {timber.id: bench.walk(timber.id) for timber in bench.timbers}
    promised = {
        (each.timber, each.step, each.words): each.after
        for each in bench.try_name("sections", "post", "6-3/4 x 7").moved
    }
    assert promised
    bench.set_name("sections", "post", "6-3/4 x 7")
    for timber, walk in before.items():
        was, now_ = (
            {
                (timber, step.id, f"from the {reading.hook}"): reading.value
                for step in each.steps
                if step.lasting
                for reading in step.readings
            }
            for each in (walk, bench.walk(timber))
        )
        moved = {key: now_.get(key) for key in {**was, **now_} if was.get(key) != now_.get(key)}
        assert moved == {key: promised[key] for key in moved}
        assert moved.items() <= promised.items()


def test_what_a_name_moves_turns_ticks_to_look_again(bench: Bench) -> None:
    """Ticked steps wait to be looked at again until they are ticked anew."""
    assert state(bench, "post-sw", "inside-chamfer/foot-stop") is State.TICKED
    promised = bench.try_name("lengths", "deck", "1-1/2").ticked
    bench.set_name("lengths", "deck", "1-1/2")
    walk = bench.walk("post-sw")
    assert walk.look_again == promised == 3
    bench.tick("post-sw", walk.layout.step("inside-chamfer/foot-stop"))
    assert state(bench, "post-sw", "inside-chamfer/foot-stop") is State.TICKED


def test_a_name_is_undone_like_everything_else(bench: Bench, demo: Path) -> None:
    """The file is back byte for byte, its ticks hold again, and the framer is led back."""
    before = (demo / "project.toml").read_bytes()
    step = bench.walk("post-nw").layout.step("end/square")
    bench.tick("post-nw", step)
    bench.set_name("lengths", "deck", "1-1/2", timber="post-sw", step="inside-chamfer/foot-stop")
    bench.set_name("lengths", "deck", "1-1/2", timber="post-sw", step="stick/label")
    done = bench.undo()
    assert done is not None
    assert (done.words, done.timber, done.step) == (
        "deck written as 1-1/2",
        "post-sw",
        "inside-chamfer/foot-stop",
    )
    assert (demo / "project.toml").read_bytes() == before
    assert bench.walk("post-sw").look_again == 0
    first = bench.undo()
    assert first is not None
    assert first.step == "end/square"
    assert bench.undo() is None


@pytest.mark.parametrize(
    ("new", "problem", "remedy"),
    [
        (
            NewText("lengths", "deck", "floor top"),
            "goes round in a circle: deck → floor top → deck",
            "give one a figure",
        ),
        (
            NewText("levels", "floor top", "joist bearng + 1"),
            'called "joist bearng"',
            'did you mean "joist bearing"?',
        ),
        (
            NewText("sections", "post", "7"),
            "a section has two sides",
            "write both, as 6 x 8",
        ),
    ],
)
def test_a_bad_text_is_one_clear_error(
    bench: Bench, demo: Path, new: NewText, problem: str, remedy: str
) -> None:
    """Where, what is wrong and what to do, whether tried or set; nothing is changed."""
    before = (demo / "project.toml").read_bytes()
    for change in (bench.try_name, bench.set_name):
        with pytest.raises(BadTextError) as caught:
            change(*new)
        error = caught.value
        assert str(error) == f"{new.name}: {error.problem}; {remedy}"
        assert problem in error.problem
        assert new.text in error.excerpt
    assert (demo / "project.toml").read_bytes() == before
    assert bench.undo() is None


def test_a_name_that_breaks_something_else_says_where(bench: Bench, demo: Path) -> None:
    """The project file as it stands outside may be what is wrong."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('leg = "3/4"', 'leg = "x"'))
    with pytest.raises(BadTextError) as caught:
        bench.try_name("lengths", "deck", "2")
    assert caught.value.where.startswith("project.toml:")
    assert caught.value.where.endswith("chamfer[1].leg")


def test_a_value_that_cannot_be_reworded_is_told(bench: Bench, demo: Path) -> None:
    """It is changed by hand; neither a preview nor a change touches it."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('deck = "1-1/4"', 'deck = """1-1/4"""'))
    bench.look()
    for change in (bench.try_name, bench.set_name):
        with pytest.raises(NotKeptError, match="in your editor"):
            change("lengths", "deck", "2")


def test_a_reader_may_try_a_name_but_not_set_it(bench: Bench, demo: Path) -> None:
    """The preview costs nobody anything; the file belongs to the one that writes it."""
    second = Bench(Keeper.open(demo))
    assert second.try_name("lengths", "deck", "2").moved
    with pytest.raises(NotKeptError, match="take the project over"):
        second.set_name("lengths", "deck", "2")
    bench.set_name("lengths", "deck", "2")
    assert second.look().project
    assert second.frame.levels.of("deck") == read_length("2")


def test_setting_a_name_takes_in_what_an_editor_wrote(bench: Bench, demo: Path) -> None:
    """The preview shows both, and so does the bench afterwards."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('reveal = "7"', 'reveal = "8"'))
    assert {each.name for each in bench.try_name("lengths", "deck", "1-1/2").names} == {
        "deck",
        "floor top",
        "reveal",
    }
    bench.set_name("lengths", "deck", "1-1/2")
    assert bench.frame.levels.of("reveal") == read_length("8")
    stop = bench.walk("post-nw").layout.step("inside-chamfer/foot-stop")
    assert stop.readings[0].value == read_length("13")
    assert not bench.look()


def test_a_mended_project_file_is_no_longer_called_broken(bench: Bench, demo: Path) -> None:
    """Setting a name reads the file, so what was told of it before no longer holds."""
    path = demo / "project.toml"
    whole = path.read_text()
    path.write_text(whole + "broken")
    bench.look()
    assert bench.broken
    path.write_text(whole)
    bench.set_name("lengths", "deck", "2")
    assert bench.broken == ""


def test_sizes_reach_every_timber_they_move(bench: Bench) -> None:
    """A preview looks over the whole frame, and counts what it finds."""
    sizes = Sizes(
        place="foot-tenon", measured=Measured.model_validate({"second": "7-1/4"}), as_cut=AsCut()
    )
    ripple = bench.try_sizes("post-ne", sizes)
    assert {each.name for each in ripple.moved} == {"NE post", "North sill"}
    assert ripple.timbers == 2
    assert ripple.names == ()


def test_undoing_a_tick_on_a_timber_that_has_gone_is_no_crash(bench: Bench, demo: Path) -> None:
    """Its progress file is still there, and the tick comes off it."""
    bench.tick("plate-north", bench.walk("plate-north").layout.step("end/square"))
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('"plate-north"', '"plate-n"'))
    bench.look()
    bench.undo()
    assert Keeper.read(demo).progress("plate-north").ticks == ()


def test_a_measuring_step_ticked_is_a_measurement(bench: Bench, demo: Path) -> None:
    """The section that it shows is kept with the tick, so a later change of section leaves it."""
    step = bench.walk("post-ne").layout.step("foot-tenon/section")
    kept = bench.tick("post-ne", step)
    assert kept is not None
    measured = Measured.model_validate({"first": "7", "second": "7"})
    assert kept.measured == measured
    assert Keeper.read(demo).progress("post-ne").measured == {"foot-tenon": measured}
    bench.set_name("sections", "post", "6 x 6")
    stick = bench.walk("post-ne").layout.stick
    assert stick.depth(Axis.FIRST, "foot-tenon") == read_length("7")
    assert stick.depth(Axis.FIRST, "head-tenon") == read_length("6")


def test_a_measured_joint_is_no_longer_called_unmeasured(bench: Bench) -> None:
    """A shoulder that follows an unmeasured face says so until the measuring step is ticked."""

    def warned() -> set[str]:
        walk = bench.walk("post-ne")
        return {step.id for step in walk.steps if "Not measured here yet" in step.caution}

    assert {each for each in warned() if each.startswith("foot-tenon/")}
    bench.tick("post-ne", bench.walk("post-ne").layout.step("foot-tenon/section"))
    assert not {each for each in warned() if each.startswith("foot-tenon/")}


def test_ticking_a_measuring_step_moves_no_mark(bench: Bench) -> None:
    """What is kept is what was shown, so every other figure and tick stays as it was."""
    step = bench.walk("post-ne").layout.step("foot-tenon/as-cut")
    before = {each.id: [w.readings for w in bench.walk(each.id).steps] for each in bench.timbers}
    again = {each.id: bench.walk(each.id).look_again for each in bench.timbers}
    kept = bench.tick("post-ne", step)
    assert kept is not None
    tenon = bench.walk("post-ne").layout.feature("foot-tenon")
    assert tenon is not None
    for size in tenon.sizes:
        assert kept.as_cut is not None
        assert kept.as_cut.get(size.name) == size.laid_out
    for timber, readings in before.items():
        assert [each.readings for each in bench.walk(timber).steps] == readings
        assert bench.walk(timber).look_again == again[timber]


DEMOS = Path(__file__).parents[2] / "projects"


@pytest.mark.parametrize("name", ["orchard-tool-shed", "hillside-wood-store"])
def test_ticking_all_measuring_steps_of_a_demo_moves_nothing(tmp_path: Path, name: str) -> None:
    """On a whole frame by either rule: every figure, and every figure beside it, stays."""
    bench = Bench(Keeper.open(Path(shutil.copytree(DEMOS / name, tmp_path / name))))

    def figures() -> dict[str, object]:
        walks = [bench.walk(timber.id) for timber in bench.timbers]
        return {
            f"{walk.timber.id} {step.id}": (step.readings, step.beside)
            for walk in walks
            for step in walk.steps
        }

    before = figures()
    for timber in bench.timbers:
        for step in bench.walk(timber.id).steps:
            if step.asks:
                bench.tick(timber.id, step)
    assert figures() == before


def test_a_measurement_comes_off_with_its_tick(bench: Bench, demo: Path) -> None:
    """One undo takes both back, and the file is as it was."""
    path = demo / "progress" / "post-nw.toml"
    bench.tick("post-nw", bench.walk("post-nw").layout.step("head-tenon/section"))
    assert "[measured.head-tenon]" in path.read_text()
    bench.undo()
    assert bench.walk("post-nw").progress == Progress(timber="post-nw")
    assert bench.undo() is None


def test_sizes_typed_before_the_tick_stay(bench: Bench) -> None:
    """Only what was left empty is kept as it shows; with nothing empty the tick brings no size."""
    typed = Sizes(
        place="foot-tenon", measured=Measured.model_validate({"first": "7-1/8"}), as_cut=AsCut()
    )
    bench.set_sizes("post-ne", "foot-tenon/section", typed)
    bench.tick("post-ne", bench.walk("post-ne").layout.step("foot-tenon/section"))
    kept = bench.walk("post-ne").progress.measured["foot-tenon"]
    assert kept == Measured.model_validate({"first": "7-1/8", "second": "7"})
    assert bench.tick("post-ne", bench.walk("post-ne").layout.step("foot-tenon/section")) is None


def test_a_size_typed_outside_just_before_the_tick_stays(bench: Bench, demo: Path) -> None:
    """What an editor wrote since the last look is read first and not written over."""
    step = bench.walk("post-ne").layout.step("foot-tenon/section")
    path = demo / "progress" / "post-ne.toml"
    path.write_text('format = 1\ntimber = "post-ne"\n\n[measured.foot-tenon]\nfirst = "7-1/8 in"\n')
    bench.tick("post-ne", step)
    kept = bench.walk("post-ne").progress.measured["foot-tenon"]
    assert kept == Measured.model_validate({"first": "7-1/8", "second": "7"})
    bench.undo()
    left = bench.walk("post-ne").progress.measured["foot-tenon"]
    assert left == Measured.model_validate({"first": "7-1/8"})


def test_the_broken_file_of_a_timber_that_has_gone_is_not_told(bench: Bench, demo: Path) -> None:
    """It spoils nothing that is shown; while its timber is there it does."""
    broken = demo / "progress" / "plate-north.toml"
    bench.walk("plate-north")
    broken.write_text("format = ")
    bench.look()
    assert "plate-north" in bench.broken
    path = demo / "project.toml"
    whole = path.read_text()
    path.write_text(whole.replace('"plate-north"', '"plate-n"'))
    bench.look()
    assert bench.broken == ""
    path.write_text(whole)
    bench.look()
    assert "plate-north" in bench.broken
