"""The wood a tenon passes, and whether anybody has measured it."""

import pytest

from benchmate.frame.frame import Frame, Real
from benchmate.frame.through import exit_face, unmeasured_passed, wood_passed
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.model.directions import Face
from benchmate.model.stick import Unmeasured
from benchmate.model.work import Bearing
from tests.builders import frame, length, real, sill, tenon, timber
from tests.joinery.tenon.girts import FROM_THE_WEST, MORTISE, girt_tenon, girt_through

SQUARE = {"rule": "square", "inner": "7 x 7"}
EAST_FIRST = {"second_face": "east"}
"""The post with its reference face where the girt enters, so that it comes out on the far face."""


def _bearing() -> Bearing:
    (bearing,) = girt_tenon().bearings()
    return bearing


def _measured(second: str) -> dict[str, Real]:
    """The post as it was measured at the joint."""
    return {"post": real({MORTISE: {"second": second}})}


@pytest.mark.parametrize(
    ("post", "second", "passed"),
    [
        ({}, "8", "7-1/2"),
        ({}, "8-1/4", "7-3/4"),
        (EAST_FIRST, "8-1/4", "7-3/4"),
        (EAST_FIRST, "7-7/8", "7-3/8"),
        (SQUARE, "8-1/4", "6-1/2"),
        (SQUARE | EAST_FIRST, "8-1/4", "7-3/4"),
    ],
    ids=["drawn", "far entry", "near entry", "thin", "square rule, far", "square rule, near"],
)
def test_what_is_passed_runs_from_the_seat_to_the_real_face(
    post: dict[str, str], second: str, passed: str
) -> None:
    """The section at that joint (trade.md 2.1, Rogers-tenon), less what is housed.

    By square rule an end that enters the far face bears at the inner timber, 7" from the face it
    comes out on; one that enters the reference face comes out on the rough one.
    """
    wood = girt_through(post=post, real=_measured(second)).wood("post")
    assert wood_passed(wood, _bearing()) == length(passed)


def test_the_face_it_comes_out_on_lies_across_from_its_entry() -> None:
    """Going west through a post, it comes out of the West face."""
    assert exit_face(girt_through().wood("post"), _bearing()) is Face.SECOND
    assert exit_face(girt_through(post=EAST_FIRST).wood("post"), _bearing()) is Face.FAR_SECOND


@pytest.mark.parametrize(
    ("post", "words"),
    [
        ({}, "Post's East face"),
        (EAST_FIRST, "Post's West face"),
        (SQUARE | EAST_FIRST, "Post's West face"),
        (SQUARE, None),
    ],
)
def test_the_length_waits_for_the_far_face(post: dict[str, str], words: str | None) -> None:
    """Which by square rule does not count where the end goes in through it."""
    found = unmeasured_passed(girt_through(post=post).wood("post"), _bearing())
    assert found == (words and Unmeasured(words, "post", MORTISE))
    measured = girt_through(post=post, real=_measured("8"))
    assert unmeasured_passed(measured.wood("post"), _bearing()) is None


def _ends(built: Frame) -> tuple[object, ...]:
    stick = built.stick("girt")
    return stick.near, stick.body, stick.far, stick.overall


def test_the_stick_is_as_long_as_what_its_tenon_passes() -> None:
    """A post 1/4" thick carries the shoulder out by as much: the tenon's end stays where it was."""
    drawn, thick = girt_through(), girt_through(real=_measured("8-1/4"))
    assert _ends(drawn) == tuple(map(length, ("0", "9' 4-1/2", "7-1/4", "9' 11-3/4")))
    assert _ends(thick) == tuple(map(length, ("0", "9' 4-1/4", "7-1/2", "9' 11-3/4")))
    thick = girt_through(post=EAST_FIRST, real=_measured("8-1/4"))
    assert _ends(thick) == tuple(map(length, ("0", "10' 0-1/2", "7-1/2", "10' 8")))


def test_an_allowance_is_left_on_beyond_it() -> None:
    """And a length that is given counts instead of the wood."""
    assert girt_through({"end_allowance": "1/2"}).stick("girt").far == length("7-3/4")
    assert girt_through({"length": "9", "held_short": "0"}).stick("girt").far == length("9")


def test_a_timber_s_marks_follow_the_one_it_passes() -> None:
    """`Frame.inputs` differs for both where the post is measured, so neither is drawn as it was."""
    drawn, thick = (
        girt_through(post=EAST_FIRST),
        girt_through(post=EAST_FIRST, real=_measured("8-1/4")),
    )
    for each in ("girt", "post"):
        assert drawn.inputs(each) != thick.inputs(each)
        assert drawn.inputs(each) == girt_through(post=EAST_FIRST).inputs(each)


@pytest.mark.parametrize("girt", [{}, FROM_THE_WEST], ids=["far end", "reference end"])
@pytest.mark.parametrize("post", [{}, EAST_FIRST], ids=["far entry", "near entry"])
def test_the_length_says_what_it_waits_for(post: dict[str, str], girt: dict[str, str]) -> None:
    """So does the shoulder of the tenon itself, and once the post is measured nothing waits."""
    built = girt_through(post=post, girt=girt)
    face = "West" if post else "East"
    layout = lay_out(built, "girt")
    for step in ("end/overall", "end/saw", "west-end-tenon/shoulder", "west-end-tenon/far-cheek"):
        assert [(each.timber, each.step) for each in awaited(layout, layout.step(step))] == [
            ("post", f"{MORTISE}/section")
        ]
    for step in ("end/overall", "end/saw", "west-end-tenon/shoulder"):
        assert f"Measure Post's {face} face at the joint first" in layout.step(step).caution
    layout = lay_out(girt_through(post=post, girt=girt, real=_measured("8")), "girt")
    for step in ("end/overall", "west-end-tenon/shoulder"):
        assert awaited(layout, layout.step(step)) == ()
        assert "Measure Post" not in layout.step(step).caution


def test_only_what_follows_the_length_waits() -> None:
    """Squaring the end does not, nor the reference tenon of a girt that goes through at the other.

    A blind tenon in a reference face follows nobody's size.
    """
    other = timber("other", at={"east": "10'", "north": "0"}, reference_end_at="0", length="8'")
    blind = tenon(id="girt-east", timber="girt", end="east", into="other", length="4")
    through = girt_through(post=EAST_FIRST, girt={"reference_end_at": None})
    built = frame(*through.project.timbers, other, *through.project.works, blind)
    layout = lay_out(built, "girt")
    for step in ("end/square", "east-end-tenon/shoulder", "east-end-tenon/as-cut"):
        assert awaited(layout, layout.step(step)) == ()
        assert "Measure Post" not in layout.step(step).caution
    assert awaited(layout, layout.step("west-end-tenon/shoulder"))
    stops = girt_through({"through": False, "length": "4", "held_short": "0"}, post=EAST_FIRST)
    layout = lay_out(stops, "girt")
    assert awaited(layout, layout.step("end/overall")) == ()


def test_a_timber_without_a_place_waits_too() -> None:
    """Its shoulders are typed, but the tenon is as long as the sill really is deep."""
    joint = tenon(into="sill", at="4'", through=True, length=None)
    built = frame(timber("post"), sill(), joint)
    assert built.stick("post").near == length("8")
    assert built.stick("post").unsure == {}
    (unsure,) = built.stick("post").unsure_beyond.values()
    assert unsure == Unmeasured("Sill's underside", "sill", "post-foot-mortise")
