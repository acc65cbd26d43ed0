"""Walks that stay while nothing they follow from changes."""

from collections.abc import Iterable
from pathlib import Path

import pytest

from benchmate.frame.frame import Frame
from benchmate.layout.standing import State
from benchmate.layout.walk import lay_out
from benchmate.measure.section import Section
from benchmate.measure.sums import Sum, Term
from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.model.project import Project
from benchmate.store.keeper import Keeper
from benchmate.store.reading import parse_project, read_project
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.names import NAME_TABLES
from benchmate.workbench.walk import Walk
from benchmate.workbench.walks import Walks
from tests.builders import corners, length, real
from tests.workbench.conftest import DEMO

POSTS = {"post-sw", "post-se", "post-nw", "post-ne"}
SOUTH = {"post-sw", "post-se", "sill-south", "plate-south"}


def walked(bench: Bench) -> dict[str, Walk]:
    """Every timber as it stands."""
    return {timber.id: bench.walk(timber.id) for timber in bench.timbers}


def made_anew(bench: Bench, before: dict[str, Walk]) -> set[str]:
    """The timbers whose walk is another object than before; the others are the very same."""
    return {timber for timber, walk in walked(bench).items() if walk is not before[timber]}


def test_a_level_remakes_the_timbers_that_follow_from_it(bench: Bench) -> None:
    """The deck carries the floor, and the chamfers of the posts stop above the floor."""
    before = walked(bench)
    bench.set_name("lengths", "deck", "1-1/2")
    assert made_anew(bench, before) == POSTS
    again = walked(bench)
    bench.undo()
    assert made_anew(bench, again) == POSTS
    assert walked(bench) == before


def test_a_section_remakes_its_timbers_and_those_they_meet(bench: Bench) -> None:
    """A deeper plate changes the plates and nothing on the sills."""
    before = walked(bench)
    bench.set_name("sections", "plate", "7-1/2 x 8")
    anew = made_anew(bench, before)
    assert {"plate-south", "plate-north"} <= anew
    assert anew <= {"plate-south", "plate-north"} | POSTS


def test_a_name_nothing_follows_from_remakes_nothing(bench: Bench) -> None:
    """The width of a joist carries no mark here."""
    before = walked(bench)
    bench.set_name("sections", "joist", "5-1/2 x 3")
    assert made_anew(bench, before) == set()


def sizes(place: str, measured: dict[str, str], as_cut: dict[str, str]) -> Sizes:
    """Real sizes at one place of a post."""
    return Sizes(
        place=place,
        measured=Measured.model_validate(measured),
        as_cut=AsCut.model_validate(as_cut),
    )


@pytest.mark.parametrize(
    "typed",
    [
        sizes("foot-tenon", {"first": "7-1/8"}, {}),
        sizes("foot-tenon", {}, {"thickness": "1-11/16"}),
    ],
)
def test_a_real_size_remakes_its_timber_and_those_it_meets(bench: Bench, typed: Sizes) -> None:
    """A measured depth or an as-cut tenon: post, sill and plate, and nothing across the shed."""
    before = walked(bench)
    bench.set_sizes("post-sw", "foot-tenon/section", typed)
    assert made_anew(bench, before) == {"post-sw", "sill-south", "plate-south"}
    after = walked(bench)
    bench.set_sizes("post-sw", "foot-tenon/section", typed)
    assert made_anew(bench, after) == set()


def test_a_tick_remakes_its_own_walk_and_no_marks(bench: Bench) -> None:
    """What is laid out stays laid out."""
    before = walked(bench)
    bench.tick("post-nw", before["post-nw"].layout.step("end/square"))
    assert made_anew(bench, before) == {"post-nw"}
    assert bench.walk("post-nw").layout is before["post-nw"].layout
    walk = bench.walk("post-nw")
    assert walk.standings[walk.place("end/square")].state is State.TICKED


def rewrite(path: Path, old: str, new: str) -> None:
    """Change a file as an editor would."""
    text = path.read_text()
    assert old in text
    path.write_text(text.replace(old, new))


def test_an_edit_outside_remakes_what_it_reaches(bench: Bench, demo: Path) -> None:
    """In the project file, and in a timber's own; a note on one timber is no change of others."""
    before = walked(bench)
    rewrite(demo / "project.toml", 'deck = "1-1/4"', 'deck = "1-1/2"')
    bench.look()
    assert made_anew(bench, before) == POSTS
    before = walked(bench)
    rewrite(demo / "project.toml", "Sawn full at the butt.", "Sawn full.")
    bench.look()
    assert made_anew(bench, before) == {"post-se"}
    before = walked(bench)
    rewrite(demo / "progress" / "post-se.toml", '"7-3/16 in"', '"7-1/8 in"')
    bench.look()
    assert made_anew(bench, before) == {"post-se", "sill-south", "plate-south"}
    before = walked(bench)
    rewrite(demo / "progress" / "post-se.toml", '"1-3/4 in"', '"1-5/8 in"')
    bench.look()
    assert made_anew(bench, before) == {"post-se"}
    assert bench.walk("post-se").layout is before["post-se"].layout


def test_a_timber_that_comes_or_goes_outside_is_taken_in(bench: Bench, demo: Path) -> None:
    """Its neighbours are laid out anew, the other end of the shed is not."""
    before = walked(bench)
    rewrite(demo / "project.toml", '"plate-north"', '"plate-n"')
    bench.look()
    assert "plate-n" in walked(bench)
    kept = {timber for timber in before if timber != "plate-north"}
    anew = {timber for timber in kept if bench.walk(timber) is not before[timber]}
    assert anew == {"post-nw", "post-ne"}
    with pytest.raises(KeyError):
        bench.walk("plate-north")


def test_a_file_mended_outside_frees_all_that_it_kept_in_doubt(demo: Path) -> None:
    """The timber itself and those it meets show their figures again; others stay as they are."""
    path = demo / "progress" / "post-sw.toml"
    whole = path.read_text()
    path.write_text("format = ")
    bench = Bench(Keeper.open(demo))
    before = walked(bench)
    doubtful = {timber for timber, walk in before.items() if walk.trouble}
    assert doubtful == {"post-sw", "sill-south", "plate-south"}
    path.write_text(whole)
    bench.look()
    assert made_anew(bench, before) == doubtful
    assert not any(walk.trouble for walk in walked(bench).values())
    bench.close()


def test_each_file_is_read_once_however_much_is_changed(
    bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Comparing what marks follow from reads nothing that has been read."""
    walked(bench)

    def refuse(folder: Path, timber: str) -> None:
        pytest.fail(f"{timber} was read again from {folder}")

    monkeypatch.setattr("benchmate.store.keeper.find_progress", refuse)
    typed = sizes("foot-tenon", {"first": "7-1/8"}, {})
    bench.try_sizes("post-sw", typed)
    bench.set_sizes("post-sw", "foot-tenon/section", typed)
    bench.try_name("lengths", "deck", "2")
    bench.set_name("lengths", "deck", "2")
    walked(bench)


def test_a_tick_reads_only_its_own_timber_and_those_it_meets(
    demo: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The first tick of a day does not go through the whole frame's progress."""
    bench = Bench(Keeper.open(demo))
    square = bench.walk("post-nw").layout.step("end/square")
    asked: list[str] = []
    progress = Keeper.progress

    def counted(keeper: Keeper, timber: str) -> Progress:
        asked.append(timber)
        return progress(keeper, timber)

    monkeypatch.setattr(Keeper, "progress", counted)
    bench.tick("post-nw", square)
    assert set(asked) == {"post-nw", "sill-north", "plate-north"}
    bench.close()


SIXTEENTH = length("1/16")


def longer(worth: Sum | Section) -> Sum | Section:
    """A sum or a section a little bigger."""
    if isinstance(worth, Sum):
        return Sum((*worth.terms, Term(1, None, SIXTEENTH)))
    return Section(worth.first + SIXTEENTH, worth.second + SIXTEENTH)


def every_change(project: Project) -> Iterable[tuple[str, Project]]:
    """The project with each of its names a little bigger, one at a time."""
    for table in NAME_TABLES:
        names = getattr(project, table.table)
        for name, worth in names.items():
            bigger = {**names, name: longer(worth)}
            yield name, project.model_copy(update={table.table: bigger})


def on_a_level_of_their_own(folder: Path) -> Project:
    """The project with its posts' shoulders on a level that nothing else follows from."""
    text = (folder / "project.toml").read_text()
    assert 'shoulder_level = "sill top"' in text
    text = text.replace('shoulder_level = "sill top"', 'shoulder_level = "post foot"')
    return parse_project(text.replace("[levels]", '[levels]\n"post foot" = "0"').encode())


PROJECTS = tuple(
    Path(__file__).parents[2] / "projects" / name
    for name in ("hillside-wood-store", "orchard-tool-shed")
)
"""The cart house has twice as many timbers and names, and says no more of this."""


@pytest.mark.parametrize(
    "project",
    [on_a_level_of_their_own(DEMO), *map(read_project, PROJECTS)],
    ids=["four-posts", *(folder.name for folder in PROJECTS)],
)
def test_while_inputs_are_equal_so_are_marks(project: Project) -> None:
    """Law of the frame that all this rests on: no mark follows from anything but its inputs."""
    before = Frame(project, {})
    marks = {timber.id: lay_out(before, timber.id) for timber in project.timbers}
    told_apart = 0
    for name, changed in every_change(project):
        after = Frame(changed, {})
        for timber, layout in marks.items():
            if before.inputs(timber) != after.inputs(timber):
                told_apart += 1
            else:
                assert lay_out(after, timber) == layout, f"{timber} also follows from {name}"
    assert told_apart


def test_walks_go_by_the_frame_they_were_given_last() -> None:
    """Without a bench: one post's real size remakes that post alone, as the other is not met."""
    kept = {timber: Progress(timber=timber) for timber in ("post-sw", "post-se", "sill", "plate")}
    walks = Walks(corners(), kept.__getitem__, lambda _: "")
    before = {timber: walks.of(timber) for timber in kept}
    walks.take(corners(real={"post-se": real(measured={"all": {"first": "6-1/8"}})}))
    assert walks.of("post-sw") is before["post-sw"]
    assert walks.of("post-se") is not before["post-se"]
    kept["post-sw"] = kept["post-sw"].model_copy(
        update={"as_cut": {"foot-tenon": AsCut.model_validate({"width": "5"})}}
    )
    walks.stand(["post-sw", "no-such-timber"])
    assert walks.of("post-sw").progress is kept["post-sw"]
    assert walks.of("post-sw").layout is before["post-sw"].layout
