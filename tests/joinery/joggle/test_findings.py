"""Every finding of a joggle: just triggered, and just not (law 7: never clamp)."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.joggle.family import features
from benchmate.joinery.joggle.findings import END_CHECKS, HOLE_CHECKS
from benchmate.model.findings import Severity
from tests.builders import codes, real
from tests.joinery.joggle.test_shape import joint_of
from tests.joinery.joggle.trusses import truss


def found(frame: Frame, name: str = "heel") -> tuple[tuple[str, ...], tuple[str, ...]]:
    """What is told of a joint, on the end and on the timber it is let into."""
    end, other = features(joint_of(frame, name), frame)
    return codes(end.findings), codes(other.findings)


def heel(**words: object) -> Frame:
    """A truss with something said of its heel."""
    return truss(joints={"heel": words})


@pytest.mark.parametrize("name", ["heel", "crown", "strut-foot", "strut-head"])
def test_a_sound_joggle_has_no_finding(name: str) -> None:
    """On either side, into a level, an upright and a raking timber."""
    assert found(truss(), name) == ((), ())


@pytest.mark.parametrize(("wide", "told"), [("4", ()), ("3-63/64", ("joggle-cheek-outside",))])
def test_the_far_cheek_in_the_air(wide: str, told: tuple[str, ...]) -> None:
    """A far cheek at 4" needs a rafter of 4"; 1/64" less stops both sides."""
    frame = truss(real={"rafter": real({"all": {"second": wide}})})
    assert found(frame) == (told, told)


@pytest.mark.parametrize(
    ("looks", "most", "over"),
    [
        ("square to the rake", "6-25/64", "6-13/32"),
        ("bisecting", "7-63/64", "8"),
        ("square to the face", "9-63/64", "10"),
    ],
)
def test_an_abutment_that_runs_out_of_the_rafter(looks: str, most: str, over: str) -> None:
    """Square to the rake 8" x 0.8 deep at most, halving the angle 8", square to the face 8" / 0.8.

    The tie is deep enough for all of them; of what else is then wrong nothing is asked here.
    """
    own = {"tie": {"section": "20 x 8"}}
    for notch, stops in ((most, False), (over, True)):
        words = {"abutment": looks, "notch": notch, "length": "1/64"}
        told, other = found(truss(own=own, joints={"heel": words}))
        assert ("joggle-no-sole" in told) is stops
        assert ("joggle-no-sole" in other) is stops


def test_an_end_that_stands_square_cannot_abut_square_to_its_rake() -> None:
    """Its front would lie along the face: no notch is ever deep enough."""
    frame = truss(
        slope=("12'", "12'"),
        strut_slope=("48", "48"),
        joints={"strut-head": {"abutment": "square to the rake", "notch": "1/64"}},
    )
    assert found(frame, "strut-head")[0] == ("joggle-no-sole",)


@pytest.mark.parametrize(("long", "told"), [("6-1/4", ()), ("6-1/2", ("joggle-tenon-runs-out",))])
def test_a_tenon_that_runs_out_of_its_edge(long: str, told: tuple[str, ...]) -> None:
    """In line with the abutment 8" of rafter are 8" deep: past 1-1/2" of notch 6-1/2" is too much.

    The front lies 8" x 1/3 in, the underside 13-1/3" - 8" x 4/3: both at 2-2/3".
    """
    frame = truss(own={"tie": {"section": "20 x 8"}}, joints={"heel": {"length": long}})
    assert found(frame) == (told, told)


@pytest.mark.parametrize(("deep", "told"), [("3-41/64", ()), ("3-5/8", ("joggle-through",))])
def test_a_mortise_through_the_far_face(deep: str, told: tuple[str, ...]) -> None:
    """3-5/8" of mortise in a tie of 3-5/8" leave no wall."""
    frame = truss(real={"tie": real({"all": {"first": deep}})})
    assert found(frame) == (told, told)


@pytest.mark.parametrize(("start", "told"), [("0 - 1/64", ()), ("0", ("joggle-no-relish",))])
def test_a_notch_with_no_wood_left_beyond_it(start: str, told: tuple[str, ...]) -> None:
    """A tie that starts where the rafter's toe comes has nothing to take its thrust."""
    frame = truss(own={"tie": {"reference_end_at": start}})
    assert found(frame) == (told, told)


@pytest.mark.parametrize(("long", "told"), [("15-5/8", ()), ("15-9/16", ("joggle-past-shoulder",))])
def test_a_notch_past_the_other_shoulder(long: str, told: tuple[str, ...]) -> None:
    """The mortise ends 2" + 13-1/3" + 1/4" along: a tie that is shorter than 15.583"."""
    own = {"tie": {"reference_end_at": "0 - 2", "length": long}}
    assert found(truss(own=own)) == (told, told)


@pytest.mark.parametrize(
    ("north", "told"),
    [("0 - 2", ("joggle-mortise-open",)), ("0 - 2-1/64", ("joggle-mortise-outside",))],
)
def test_a_mortise_outside_the_side(north: str, told: tuple[str, ...]) -> None:
    """A rafter 2" outside the tie has its mortise flush, and further out in the air."""
    incline = {
        "foot": {"east": "0", "north": north, "up": "0"},
        "towards": "east",
        "run": "12'",
        "rise": "9'",
    }
    _, other = found(truss(own={"rafter": {"incline": incline}}))
    assert other == told


def test_a_barefaced_tenon_flush_with_the_tie_is_looked_at() -> None:
    """Its mortise has no wall on the face it comes flush to; that does not stop the work."""
    frame = heel(set_back="0")
    _, other = features(joint_of(frame, "heel"), frame)
    assert codes(other.findings) == ("joggle-mortise-open",)
    assert other.findings[0].severity is Severity.LOOK


def test_a_stick_under_its_inner_timber_stops_both_sides() -> None:
    """By square rule there has to be wood to come down to."""
    frame = truss(
        own={"rafter": {"rule": "square", "inner": "8 x 6"}},
        real={"rafter": real({"all": {"first": "7-63/64"}})},
    )
    assert found(frame) == (("stick-under-inner",), ("stick-under-inner",))


def test_every_check_is_tried() -> None:
    """No finding without a test: the codes here are all there are."""
    assert len(END_CHECKS) + len(HOLE_CHECKS) == 8
