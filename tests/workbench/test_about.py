"""A timber of the frame in a few lines."""

from benchmate.frame.frame import Frame
from benchmate.layout.likeness import alike
from benchmate.layout.walk import lay_out
from benchmate.measure.length import Length
from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.workbench.about import about
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.walk import Walk, walk_of
from tests.builders import frame, sill, tenon, timber


def _placed() -> Frame:
    """A post 2' from the west end of a sill that starts 1' west of the frame's zero."""
    ground = sill(
        at={"up": "0", "north": "0"}, reference_end_at="-12", far_end_at="15'", length=None
    )
    post = timber("post", at={"east": "1'", "north": "0"}, length="8'")
    return frame(post, ground, timber("spare"), tenon(into="sill", length="4", set_back="1"))


def _walk(made: Frame, timber_id: str, trouble: str = "") -> Walk:
    """A timber of a frame on which nothing is done yet."""
    return walk_of(
        made.timber(timber_id),
        lay_out(made, timber_id),
        Progress(timber=timber_id),
        made.project.tape,
        trouble,
    )


def _about(timber_id: str) -> tuple[str, ...]:
    made = _placed()
    return about(made, _walk(made, timber_id))


def test_a_timber_in_its_place() -> None:
    """What it is, where its arris runs, how long, what is like it, and what it meets."""
    assert _about("post") == (
        'Post: post, 6" x 6"',
        (
            "South face first, West face second, measured from the foot; "
            'arris 1\' 0" east, 0" north, from 0" up to 8\' 0" up.'
        ),
        "Shoulder to shoulder 8' 0\", overall 8' 4\".",
        "No other is marked like it (no hand).",
        "Meets Sill.",
        "foot bears in Sill",
    )
    sill_lines = _about("sill")
    assert sill_lines[1].endswith('arris 0" north, 0" up, from 1\' 0" west to 15\' 0" east.')
    assert sill_lines[4] == "Meets Post."


def test_a_timber_without_a_place_says_what_to_do() -> None:
    """In the words of the project file."""
    lines = _about("spare")
    assert "give it at or incline to say" in lines[1]
    assert lines[4] == "Meets no other timber."


def test_like_members_are_told_with_their_hands(bench: Bench) -> None:
    """A framer counts lefts and rights before he saws."""
    groups, before = alike(bench.frame), bench.frame
    said = about(bench.frame, bench.walk("post-nw"))[3]
    assert said == "Marked alike: 2 post: 1 right hand (NW post); 1 left hand (NE post)."
    thick = Measured(first=Length.inches(7, 1, 4))
    bench.set_sizes("post-nw", "", Sizes(place="foot-tenon", measured=thick, as_cut=AsCut()))
    assert bench.frame is not before
    assert alike(bench.frame) is groups, "worked out once for one project"
    bench.set_name("lengths", "overhang", "1' 3")
    assert alike(bench.frame) is not groups


def test_a_stop_comes_first_and_no_figure_is_told(bench: Bench) -> None:
    """A post measured too thin for its tenon: why and what to do, and nothing to cut to."""
    thin = Measured(first=Length.inches(3, 1, 4))
    place = bench.sizes("post-ne", bench.walk("post-ne").layout.step("foot-tenon/section"))
    bench.set_sizes(
        "post-ne",
        "foot-tenon/section",
        Sizes(place=place.place, measured=thin, as_cut=place.as_cut),
    )
    title, stop, *rest = about(bench.frame, bench.walk("post-ne"))
    assert title == 'NE post: post, white pine, 7" x 7"'
    assert stop.startswith("STOP: ")
    assert "To mend it: " in stop
    assert len(rest) == 3
    assert rest[-1] == "Meets North sill, North plate."
    assert not any('"' in line for line in rest)


def test_trouble_comes_first_and_no_figure_is_told() -> None:
    """A timber whose file cannot be read may be any length."""
    made = _placed()
    title, trouble, *rest = about(made, _walk(made, "post", "progress is broken"))
    assert title.startswith("Post: ")
    assert trouble == "STOP: progress is broken"
    assert not any('"' in line for line in rest)
