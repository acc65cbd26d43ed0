"""Every finding of a brace: just triggered, and just not (law 7: never clamp)."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.brace.family import features
from benchmate.joinery.brace.findings import END_CHECKS, HOLE_CHECKS
from benchmate.joinery.brace.record import BraceJoint
from benchmate.model.findings import Severity
from tests.builders import codes, real
from tests.joinery.brace.bays import bay


def found(frame: Frame) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """What is told of the foot, on the brace and on the post."""
    joint = next(work for work in frame.project.works if isinstance(work, BraceJoint))
    brace, post = features(joint, frame)
    return codes(brace.findings), codes(post.findings)


def test_a_sound_brace_has_no_finding() -> None:
    """On either side, housed or not, barefaced apart."""
    assert found(bay()) == ((), ())
    assert found(bay(joint={"housing": "0"})) == ((), ())


@pytest.mark.parametrize(("stick", "told"), [("3", ()), ("2-63/64", ("brace-cheek-outside",))])
def test_the_far_cheek_in_the_air(stick: str, told: tuple[str, ...]) -> None:
    """A far cheek at 3" needs a brace of 3"; 1/64" less stops both sides."""
    frame = bay(real={"brace": real({"all": {"second": stick}})})
    assert found(frame) == (told, told)


@pytest.mark.parametrize(("long", "told"), [("7-63/64", ()), ("8", ("brace-tenon-runs-out",))])
def test_a_tenon_that_runs_out_of_the_short_edge(long: str, told: tuple[str, ...]) -> None:
    """6" at 45 degrees is 8.485" along the face: past 1/2" of housing, 7.985" is the most."""
    frame = bay(joint={"length": long})
    brace, _ = found(frame)
    assert tuple(code for code in brace if code == "brace-tenon-runs-out") == told


@pytest.mark.parametrize(("long", "told"), [("7-23/64", ()), ("7-3/8", ("brace-mortise-through",))])
def test_a_mortise_through_the_far_face(long: str, told: tuple[str, ...]) -> None:
    """1/2" and 1/8" leave 7-3/8" of an 8" post for the tenon, and no wall then."""
    brace, post = found(bay(joint={"length": long}))
    assert post == told
    assert brace == told


@pytest.mark.parametrize(
    ("leg", "told"), [("7' 11-63/64", ()), ("8' 1/64", ("brace-past-shoulder",))]
)
def test_a_mortise_past_a_shoulder(leg: str, told: tuple[str, ...]) -> None:
    """A leg longer than the post is high runs off its foot."""
    _, post = found(bay(legs=(leg, "36")))
    assert post == told


@pytest.mark.parametrize(("side", "told"), [("0", ()), ("-1-33/64", ("brace-mortise-outside",))])
def test_a_mortise_outside_the_side(side: str, told: tuple[str, ...]) -> None:
    """A brace that stands further out than its set-back misses the post with its tenon."""
    corner = {"east": "8", "north": side, "up": "8'"}
    legs = {"down": "36", "east": "36"}
    frame = bay(own={"brace": {"incline": {"corner": corner, "legs": legs}}})
    _, post = found(frame)
    assert post == told


def test_a_barefaced_brace_flush_with_its_post_is_looked_at() -> None:
    """Its mortise has no wall on the face it comes flush to; that does not stop the work."""
    frame = bay(joint={"set_back": "0"})
    joint = next(work for work in frame.project.works if isinstance(work, BraceJoint))
    _, post = features(joint, frame)
    assert codes(post.findings) == ("brace-mortise-open",)
    assert post.findings[0].severity is Severity.LOOK


def test_a_stick_under_its_inner_timber_stops_both_sides() -> None:
    """By square rule there has to be wood to come down to."""
    frame = bay(
        own={"brace": {"rule": "square", "inner": "6 x 4"}},
        real={"brace": real({"all": {"first": "5-63/64"}})},
    )
    assert found(frame) == (("stick-under-inner",), ("stick-under-inner",))


def test_every_check_is_tried() -> None:
    """No finding without a test: the codes here are all there are."""
    assert len(END_CHECKS) + len(HOLE_CHECKS) == 6
