"""What a change moves."""

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.model.progress import AsCut, Progress
from benchmate.workbench.actions import tick_for, with_tick
from benchmate.workbench.bench import Bench
from benchmate.workbench.ripple import (
    Moved,
    Ripple,
    _differences,
    affected,
    cut_parts,
    ripple,
)
from benchmate.workbench.walk import Walk, walk_of
from tests.builders import corners, frame, length, real, sill, tenon, timber

AT = datetime(2026, 3, 2, tzinfo=UTC)

WIDER = corners(real={"post-se": real(measured={"foot-tenon": {"first": "6-1/16"}})})
NARROW = corners(real={"post-se": real(as_cut={"foot-tenon": {"width": "4-5/8"}})})


def progress_of(frame: Frame, timber: str, *steps: str) -> Progress:
    """The progress of a timber with steps ticked as they read in a frame."""
    progress = Progress(timber=timber)
    layout = lay_out(frame, timber)
    for step in steps:
        progress = with_tick(step, tick_for(layout.step(step), AT))(progress)
    return progress


def walks(frame: Frame, *kept: Progress, trouble: str = "") -> Callable[[str], Walk]:
    """The timbers of a frame as they stand."""
    progress = {each.timber: each for each in kept}

    def walk(timber: str) -> Walk:
        layout, tape = lay_out(frame, timber), frame.project.tape
        done = progress.get(timber, Progress(timber=timber))
        return walk_of(frame.timber(timber), layout, done, tape, trouble)

    return walk


def told(found: Ripple, timber: str, step: str) -> tuple[Moved, ...]:
    """What is told of one step."""
    return tuple(each for each in found.moved if (each.timber, each.step) == (timber, step))


def test_equal_frames_move_nothing() -> None:
    """Nothing is told where nothing changes, and no timber is even looked at."""
    frame = corners()
    found = ripple(frame, corners(), pytest.fail)
    assert found == Ripple(moved=(), findings=())
    assert (found.timbers, found.steps, found.ticked, found.cut) == (0, 0, 0, 0)


def test_only_timbers_that_a_change_reaches_are_laid_out() -> None:
    """One post's size reaches the post and the timbers it meets, in the order of the file."""
    assert affected(corners(), NARROW) == ("post-se", "sill", "plate")
    assert affected(corners(), corners()) == ()


def test_only_steps_that_last_are_told() -> None:
    """A fresh measurement is not itself a moved mark."""
    frame = corners()
    kept = progress_of(frame, "post-se", "foot-tenon/far-cheek")
    found = ripple(frame, WIDER, walks(frame, kept))
    assert {moved.step for moved in found.moved} == {
        "foot-tenon/far-cheek",
        "foot-tenon/saw-far-first",
    }
    (cheek,) = told(found, "post-se", "foot-tenon/far-cheek")
    assert (cheek.name, cheek.words) == ("Post se", "to come off the North face")
    assert not cheek.ticked, "the mark itself has not moved"


def test_a_mortise_follows_and_says_whose_it_is() -> None:
    """Each figure is told from what to what, with the timber by name; ticks are told by step."""
    frame = corners()
    finish = "se-foot-mortise/start"
    found = ripple(frame, NARROW, walks(frame, progress_of(frame, "sill", finish)))
    moved = [each for each in told(found, "sill", finish) if each.ticked]
    assert moved
    assert {each.name for each in moved} == {"Sill"}
    assert found.timbers == 1
    assert found.ticked == 1
    assert found.steps == len({each.step for each in found.moved})
    assert found.cut == 0


@pytest.mark.parametrize(
    ("ticked", "cut"),
    [
        (("se-foot-mortise/start",), False),
        (("se-foot-mortise/knife",), False),
        (("sw-foot-mortise/bore",), False),
        (("se-foot-mortise/bore",), True),
    ],
)
def test_a_part_is_cut_once_a_step_from_the_cut_on_is_ticked(
    ticked: tuple[str, ...], cut: bool
) -> None:
    """Marking and knifing leave the wood whole, and another mortise is another part."""
    frame = corners()
    found = ripple(frame, NARROW, walks(frame, progress_of(frame, "sill", *ticked)))
    moved = told(found, "sill", "se-foot-mortise/start")
    assert any(each.cut for each in moved) is cut
    assert bool(found.cut) is cut


def test_a_part_measured_as_cut_is_cut() -> None:
    """Whoever typed how a tenon came out has cut it; an empty entry is none."""
    frame = corners()
    layout = lay_out(frame, "post-se")
    typed = AsCut.model_validate({"width": "4-5/8"})
    kept = Progress(timber="post-se", as_cut={"foot-tenon": typed, "head-tenon": AsCut()})
    assert cut_parts(layout, kept) == {"foot-tenon"}
    assert cut_parts(layout, Progress(timber="post-se")) == frozenset()


def test_what_is_only_told_beside_a_figure_spoils_nothing() -> None:
    """The relish of a mortise that is cut is of no account to what is on the wood."""
    frame = corners()
    kept = progress_of(frame, "post-se", "foot-tenon/far-cheek", "foot-tenon/saw-far-first")
    found = ripple(frame, WIDER, walks(frame, kept))
    (cheek,) = told(found, "post-se", "foot-tenon/far-cheek")
    assert not cheek.spoilt


def test_a_change_that_makes_a_tick_true_again_says_so() -> None:
    """A slip put right spoils nothing: the mark on the wood is where it belongs."""
    frame = corners()
    kept = progress_of(NARROW, "sill", "se-foot-mortise/start")
    found = ripple(frame, NARROW, walks(frame, kept))
    moved = [each for each in told(found, "sill", "se-foot-mortise/start") if each.ticked]
    assert moved
    assert all(each.right and not each.spoilt for each in moved)
    assert found.ticked == 0


def test_what_a_change_brings_to_look_at_is_told_and_nothing_else() -> None:
    """A tenon cut wider leaves little wood; what was to be looked at before is no news."""
    post, foot = {"into": "sill"}, {"into": "sill", "at": "4' 6-5/8"}
    built = frame(
        sill(),
        timber("west"),
        timber("east"),
        tenon(id="west-foot", timber="west", at="4'", **post),
        tenon(id="east-foot", timber="east", **foot),
    )
    wide = Frame(built.project, {"west": real(as_cut={"foot-tenon": {"width": "6-1/4"}})})
    wider = Frame(built.project, {"west": real(as_cut={"foot-tenon": {"width": "6-1/2"}})})
    deeper = Frame(
        built.project,
        {
            "west": real(as_cut={"foot-tenon": {"width": "6-1/4"}}),
            "east": real(as_cut={"foot-tenon": {"length": "5-1/8"}}),
        },
    )
    for before, after, codes in (
        (built, wide, ["little-wood-between"]),
        (wide, wider, ["little-wood-between"]),
        (wide, deeper, []),
        (wide, built, []),
    ):
        found = ripple(before, after, walks(before))
        assert found.moved
        assert [each.code for each in found.findings] == codes


def test_a_stop_is_told_with_every_change_until_it_is_mended() -> None:
    """It was there before, but the figures the change moves there are not fit to cut to."""
    thin = corners(real={"post-se": real(measured={"foot-tenon": {"first": "3"}})})
    other = {"foot-tenon": {"first": "3"}, "head-tenon": {"second": "6-1/8"}}
    found = ripple(thin, corners(real={"post-se": real(measured=other)}), walks(thin))
    assert "tenon-cheek-outside" in [each.code for each in found.findings]


def test_steps_that_come_and_go_are_told() -> None:
    """A stick sawn so small that nothing is left to saw off loses that step, and gets it back."""
    frame = corners()
    small = corners(real={"post-se": real(measured={"foot-tenon": {"first": "4"}})})
    kept = progress_of(frame, "post-se", "foot-tenon/saw-far-first")
    ids = [{step.id for step in lay_out(each, "post-se").steps} for each in (frame, small)]
    gone = ids[0] - ids[1]
    assert "foot-tenon/saw-far-first" in gone
    assert not ids[1] - ids[0]
    found = ripple(frame, small, walks(frame, kept))
    saw = told(found, "post-se", "foot-tenon/saw-far-first")
    assert saw
    assert all(each.before is not None and each.after is None for each in saw)
    assert any(each.ticked and each.cut and each.spoilt for each in saw)
    back = ripple(small, frame, walks(small))
    anew = told(back, "post-se", "foot-tenon/saw-far-first")
    assert all(each.before is None and each.after is not None for each in anew)
    assert {each.step for each in back.moved} >= gone


def test_a_step_without_figures_that_comes_or_goes_is_told_in_words() -> None:
    """There is nothing to measure, yet the framer has one thing more, or less, to do."""
    crown = lay_out(corners(), "sill").step("stick/crown")
    assert not crown.readings
    ((before, after),) = _differences(None, crown)
    assert (before, after and after.words) == (None, "is new")
    ((before, after),) = _differences(crown, None)
    assert (before, after and after.words) == (None, "falls away")
    assert tuple(_differences(crown, crown)) == ()


def test_a_figure_on_a_stopped_joint_is_told_as_such(bench: Bench) -> None:
    """A post too thin for its tenon stops both ends, and nothing else on the post."""
    found = bench.try_name("sections", "post", "3 x 7")
    stopped = {each.step.partition("/")[0] for each in found.moved if each.stopped}
    assert stopped == {"foot-tenon", "head-tenon"}
    assert not any(each.stopped for each in bench.try_name("lengths", "deck", "2").moved)


def test_a_preview_of_a_name_tells_the_names_that_follow(bench: Bench) -> None:
    """The deck moves the floor, the floor the chamfers on all four posts."""
    found = bench.try_name("lengths", "deck", "1-1/2")
    assert [(each.name, each.before, each.after) for each in found.names] == [
        ("floor top", length("4-3/4"), length("5")),
        ("deck", length("1-1/4"), length("1-1/2")),
    ]
    assert found.timbers == 4
    assert {each.timber for each in found.moved} == {"post-sw", "post-se", "post-nw", "post-ne"}
    assert found.unknown == ()


def test_a_timber_whose_file_cannot_be_read_is_told() -> None:
    """What is ticked there is not known, so its marks count as neither ticked nor sound."""
    frame = corners()
    found = ripple(frame, NARROW, walks(frame, trouble="progress/sill.toml:1: bad\n  mend it"))
    assert found.unknown[1] == "Sill: progress/sill.toml:1: bad\n  mend it"
    assert found.ticked == 0


def test_a_mark_turned_to_another_face_is_told() -> None:
    """The figure may hold while the faces and the waste side change: a tick remembers both."""
    frame = corners()
    mirrored = Frame(
        frame.project.model_copy(
            update={
                "timbers": tuple(
                    each.model_copy(update={"first_face": each.first_face.opposite})
                    if each.id == "post-sw"
                    else each
                    for each in frame.project.timbers
                )
            }
        ),
        {},
    )
    found = ripple(frame, mirrored, walks(frame))
    words = {each.words for each in told(found, "post-sw", "foot-tenon/near-cheek")}
    assert "waste was towards South face, now North face" in words
    saw = {each.words for each in told(found, "post-sw", "foot-tenon/saw-far-first")}
    assert any(each.startswith("was on ") for each in saw)


def test_a_ticked_cut_is_told_with_the_line_it_was_made_to() -> None:
    """The saw cut has no figure that moves, but its line does, and the wood is gone there."""
    longer = frame(timber("post", length="8'"), tenon(id="post-head", end="head"))
    short = frame(timber("post"), tenon(id="post-head", end="head"))
    kept = progress_of(short, "post", "head-tenon/saw-first")
    found = ripple(short, longer, walks(short, kept))
    (moved,) = told(found, "post", "head-tenon/saw-first")
    assert (moved.ticked, moved.cut) == (True, True)
    assert (moved.before, moved.after) == (length("7' 11"), length("8'"))
    assert "the shoulder line it was cut to" in moved.words
    assert told(ripple(short, longer, walks(short)), "post", "head-tenon/saw-first") == ()
