"""A timber of the frame in a few lines."""

from benchmate.frame.frame import Frame
from benchmate.layout.likeness import alike
from benchmate.workbench.about import Likes, about
from benchmate.workbench.bench import Bench
from tests.builders import frame, sill, tenon, timber


def _placed() -> Frame:
    """A post 2' from the west end of a sill that starts 1' west of the frame's zero."""
    ground = sill(
        at={"up": "0", "north": "0"}, reference_end_at="-12", far_end_at="15'", length=None
    )
    post = timber("post", at={"east": "1'", "north": "0"}, length="8'")
    return frame(post, ground, timber("spare"), tenon(into="sill", length="4", set_back="1"))


def _about(timber_id: str) -> tuple[str, ...]:
    made = _placed()
    return about(made, alike(made), timber_id)


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
    assert "give it at or incline in project.toml" in lines[1]
    assert lines[4] == "Meets no other timber."


def test_like_members_are_told_with_their_hands(bench: Bench) -> None:
    """A framer counts lefts and rights before he saws."""
    likes = Likes()
    groups = likes.of(bench.project)
    said = about(bench.frame, groups, "post-nw")[3]
    assert said == "Marked alike: 2 post: 1 right hand (NW post); 1 left hand (NE post)."
    assert likes.of(bench.project) is groups, "worked out once for one project"
    assert likes.of(bench.project.model_copy()) is not groups
