"""A project with its real sticks."""

import pytest

from benchmate.frame.frame import Real, real_of
from benchmate.frame.levels import LevelError
from benchmate.measure.length import ZERO
from benchmate.measure.section import read_section
from benchmate.measure.sums import read_sum
from benchmate.model.progress import AsCut, Measured, Progress
from tests.builders import chamfer, corners, frame, length, real, sill, tenon, timber


def test_the_check_post_is_8_feet_8_overall() -> None:
    """Common practice, no source: 5" + 7' 11" + 4" = 8' 8"."""
    for post in ("post-sw", "post-se"):
        stick = corners().stick(post)
        assert (stick.near, stick.body, stick.far) == (length("5"), length("7' 11"), length("4"))
        assert stick.overall == length("8' 8")


@pytest.mark.parametrize(
    ("length_is", "typed"), [("overall", "8' 8"), ("shoulder to shoulder", "7' 11")]
)
def test_either_length_makes_the_same_stick(length_is: str, typed: str) -> None:
    """Shoulder to shoulder and overall are two lengths of one post."""
    post = timber("post", length=typed, length_is=length_is)
    stick = frame(post, tenon(), tenon(id="post-head", end="head", length="4")).stick("post")
    assert (stick.body, stick.overall) == (length("7' 11"), length("8' 8"))


@pytest.mark.parametrize(("end", "near", "far"), [("foot", "5", "4"), ("head", "4", "5")])
def test_the_reference_end_s_tenon_is_the_near_one(end: str, near: str, far: str) -> None:
    """Turning the reference end over swaps which tenon lies before zero."""
    joints = (tenon(), tenon(id="post-head", end="head", length="4"))
    stick = frame(timber("post", reference_end=end), *joints).stick("post")
    assert (stick.near, stick.far) == (length(near), length(far))


@pytest.mark.parametrize("order", [1, -1])
def test_the_longest_tenon_at_an_end_sets_the_stick(order: int) -> None:
    """Wood has to be there for the longest, whichever stands first in the file."""
    joints = (tenon(length="3"), tenon(id="post-spur", length="5"))[::order]
    assert frame(timber("post"), *joints).stick("post").near == length("5")


def test_a_length_may_be_a_sum_of_names() -> None:
    """A post between two levels is as long as they are apart."""
    levels = {"sill top": "1' 4", "plate underside": "sill top + 7' 11"}
    post = timber("post", length="plate underside - sill top")
    assert frame(post, levels=levels).stick("post").body == length("7' 11")
    with pytest.raises(LevelError):
        frame(post).stick("post")


def test_a_mortised_timber_gets_no_longer() -> None:
    """Only the tenoned timber needs wood beyond its shoulder."""
    stick = corners().stick("sill")
    assert (stick.near, stick.far, stick.overall) == (ZERO, ZERO, length("16'"))


def test_a_named_section_is_looked_up() -> None:
    """Several timbers may share one section by its name."""
    built = frame(timber("post", section="post"), sections={"post": "7 x 6-1/2"})
    assert built.stick("post").nominal == read_section("7 x 6-1/2")
    with pytest.raises(KeyError):
        frame(timber("post", section="joist")).stick("post")


def test_real_sizes_reach_their_own_stick() -> None:
    """What was measured on one post says nothing about the other."""
    built = corners({"post-se": real({"all": {"first": "6-1/8"}}, {"foot-tenon": {"width": "4"}})})
    assert built.stick("post-se").section().first == length("6-1/8")
    assert built.stick("post-se").as_cut["foot-tenon"].width == length("4")
    assert built.stick("post-sw").section().first == length("6")
    assert not built.stick("post-sw").as_cut


def test_a_progress_holds_the_real_sizes() -> None:
    """The frame is built from what is kept for each timber."""
    kept = Progress(
        timber="post",
        measured={"all": Measured(first=length("6-1/8"))},
        as_cut={"foot-tenon": AsCut(width=length("4"))},
    )
    assert real_of(kept) == Real(kept.measured, kept.as_cut)


def test_works_are_listed_once_on_each_timber_they_touch() -> None:
    """In file order, and none on a timber without any."""
    built = corners()
    assert [work.id for work in built.works_on("post-sw")] == [
        "sw-foot",
        "sw-head",
        "inside-chamfer",
    ]
    assert [work.id for work in built.works_on("sill")] == ["sw-foot", "se-foot"]
    assert frame(sill()).works_on("sill") == ()


def test_the_neighbours_of_a_timber() -> None:
    """What a changed stick may change: itself and the timbers it meets."""
    assert corners().neighbours("sill") == ("sill", "post-sw", "post-se")
    assert corners().neighbours("post-sw") == ("post-sw", "sill", "plate")
    assert frame(timber("post"), chamfer()).neighbours("post") == ("post",)


def test_unknown_timbers_and_names() -> None:
    """Asking for what is not there is a misuse, and says which."""
    for ask in (corners().timber, corners().stick):
        with pytest.raises(KeyError, match="rafter"):
            ask("rafter")
    with pytest.raises(LevelError, match="ridge"):
        corners().value(read_sum("ridge + 1"))


def test_a_stick_is_worked_out_once() -> None:
    """Asking again gives the same stick."""
    built = corners()
    assert built.stick("sill") is built.stick("sill")
    assert built.timber("sill").id == "sill"


def test_inputs_hold_while_marks_do() -> None:
    """They change with a real size of the timber or of one it meets, and with nothing else."""
    typed = {"post-sw": real(as_cut={"foot-tenon": {"width": "4"}})}
    before, after = corners(), corners(typed)
    changed = {t.id for t in before.project.timbers if before.inputs(t.id) != after.inputs(t.id)}
    assert changed == {"post-sw", "sill", "plate"}
