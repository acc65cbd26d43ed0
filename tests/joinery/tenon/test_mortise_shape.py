"""Where a mortise and its housing lie, whichever way the timbers stand."""

from dataclasses import replace

import pytest
from hypothesis import given, settings

from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Meeting
from benchmate.joinery.tenon.mortise_shape import (
    MortiseShape,
    bottom_clearance,
    mortise_of,
    mortise_shape,
)
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import meeting, shape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.floors import Floor
from tests.builders import frame, length, lengths, real, sill, tenon, timber
from tests.joinery.tenon.head_ties import Lie, head_tie, made
from tests.joinery.tenon.housed import Housed, clearance, housed

MORTISE = "post-foot-mortise"
SQUARE = {"rule": "square", "inner": "7-1/2 x 7-1/2"}
INNER_POST = {"rule": "square", "inner": "5-3/4 x 5-3/4"}


@settings(max_examples=100)
@given(housed())
def test_every_mortise_is_its_tenon_and_the_clearance(case: Housed) -> None:
    """Law 3, housed or not, by either rule, typed and in place: the mortise is its tenon."""
    assert case.mortise_in_building() == case.tenon_in_building(beyond=clearance(case.joint))


@settings(max_examples=100)
@given(housed())
def test_the_shape_is_what_the_second_opinion_reckons(case: Housed) -> None:
    """Where the shoulder bears, how deep that lies below the face, and what the end takes."""
    found, scene = _shape(case.frame, case.joint), case.scene
    assert (found.seat.nm, found.recess.nm) == (scene.seat, case.recess)
    assert found.entry.is_reference is scene.from_reference
    spans = (found.end_along, found.end_across)
    sizes = (scene.post.framed(3 - scene.cheeks), scene.post.framed(scene.cheeks))
    assert tuple(high.nm - low.nm for low, high in spans) == sizes


def _shape(built: Frame, joint: TenonJoint) -> MortiseShape:
    met = meeting(joint, built)
    assert met is not None
    assert joint.into is not None
    made, spare = shape(joint, built), Length(clearance(joint))
    return mortise_shape(joint.mortise, made, met, built.stick(joint.into), spare)


def test_the_mortise_of_a_joint_has_its_own_clearance_or_the_shop_s() -> None:
    """1/8" is the usual (common practice, no source); one that stands alone has no mortise."""
    for own, room in ((None, "1/8"), ("1/4", "1/4"), ("0", "0")):
        joint = tenon(into="sill", at="4'", bottom_clearance=own)
        built = frame(timber("post"), sill(), joint)
        found = mortise_of(joint, shape(joint, built), built)
        assert found is not None
        assert bottom_clearance(joint, built) == found.clearance == length(room)
        assert found == mortise_shape(
            joint.mortise, found.tenon, _met(joint, built), built.stick("sill"), length(room)
        )
    alone = tenon()
    built = frame(timber("post"), alone)
    assert mortise_of(alone, shape(alone, built), built) is None


def _met(joint: TenonJoint, built: Frame) -> Meeting:
    met = meeting(joint, built)
    assert met is not None
    return met


def _in_sill(
    joint: TenonJoint, *, measured: dict[str, str] | None = None, square: bool = False
) -> MortiseShape:
    """The mortise in a sill of which a section was measured at the joint."""
    post = timber("post", **(INNER_POST if square else {}))
    receiver = sill(**(SQUARE if square else {}))
    sizes = {"sill": real({MORTISE: measured or {}})}
    return _shape(frame(post, receiver, joint, real=sizes), joint)


@pytest.mark.parametrize(
    ("end", "housing", "found"),
    [
        ("foot", "0", ("0", "0", "5-1/4", "2-3/4")),
        ("foot", "1/2", ("1/2", "1/2", "5-3/4", "2-1/4")),
        ("head", "0", ("8", "0", "2-3/4", "2-3/4")),
        ("head", "1/2", ("7-1/2", "1/2", "2-1/4", "2-1/4")),
    ],
)
def test_the_depth_counts_from_the_housing_s_floor(
    end: str, housing: str, found: tuple[str, ...]
) -> None:
    """Common practice, no source: 5" of tenon and 1/4" to spare, from where the shoulder bears."""
    made = _in_sill(tenon(end=end, into="sill", at="4'", housing=housing, bottom_clearance="1/4"))
    assert made.depth == length("5-1/4")
    assert (made.seat, made.recess, made.bottom, made.left_below) == lengths(*found)
    assert made.housed is (housing != "0")


@pytest.mark.parametrize(
    ("end", "actual", "seat", "recess", "bottom"),
    [
        ("foot", "8-1/4", "1/2", "1/2", "5-1/2"),
        ("foot", "7-7/8", "1/2", "1/2", "5-1/2"),
        ("head", "8-1/4", "7", "1-1/4", "2"),
        ("head", "7-7/8", "7", "7/8", "2"),
    ],
)
def test_by_square_rule_every_stick_has_its_seat_at_one_place(
    end: str, actual: str, seat: str, recess: str, bottom: str
) -> None:
    """Law 2: laid out from the reference face; on the far face only how deep it lies differs."""
    joint = tenon(end=end, into="sill", at="4'", housing="1/2", bottom_clearance="0")
    found = _in_sill(joint, measured={"first": actual}, square=True)
    assert (found.seat, found.recess, found.bottom) == lengths(seat, recess, bottom)


def test_a_2_inch_recess_in_the_far_side_of_an_8_inch_timber() -> None:
    """All like timbers share one length: its floor is 6" from the reference (trade.md 7.5 row 36).

    FF-joist tells it of a joist's pocket. By square rule it holds on any oversize stick.
    """
    post = timber("post", rule="square", inner="6 x 6", section="6-1/2 x 6-1/2")
    receiver = sill(rule="square", inner="8 x 8", section="8-1/2 x 8-1/2")
    joint = tenon(end="head", into="sill", at="4'", housing="2", length="1")
    for actual in ("8", "8-1/8", "8-1/2", "9"):
        sizes = {"sill": real({MORTISE: {"first": actual}})}
        found = _shape(frame(post, receiver, joint, real=sizes), joint)
        assert found.seat == length("6")
        assert found.recess == length(actual) - length("6")


def test_the_end_is_what_the_frame_counts_on_and_the_mortise_what_was_cut() -> None:
    """The housing takes the whole end, whatever the tenon's relief or its sizes as cut."""
    joint = tenon(into="sill", at="4'", housing="1/2", all_round="1", inset="1")
    sizes = {"post": real({"foot-tenon": {"second": "6-1/8"}}, {"foot-tenon": {"width": "3-7/8"}})}
    found = _shape(frame(timber("post"), sill(), joint, real=sizes), joint)
    assert found.end_along == lengths("4'", "4' 6-1/8")
    assert found.end_across == lengths("1", "7")
    assert found.along == lengths("4' 1", "4' 4-7/8")
    assert found.across == lengths("3", "5")


def test_what_is_left_below_goes_under_nothing_rather_than_to_it() -> None:
    """Law 7: a housing and a tenon too deep for the stick are shown as they are."""
    for end in ("foot", "head"):
        joint = tenon(end=end, into="sill", at="4'", housing="4", bottom_clearance="0")
        assert _in_sill(joint).left_below == length("-1")


def test_relish_is_left_at_the_nearer_end() -> None:
    """Beyond the mortise itself, not beyond its housing; at equal distances, the reference end."""
    for at, relish, end in (
        ("1'", "1' 1", Face.REFERENCE_END),
        ("14' 11", "8", Face.FAR_END),
        ("7' 9", "7' 10", Face.REFERENCE_END),
    ):
        found = _in_sill(tenon(into="sill", at=at, housing="1/2", all_round="1"))
        assert found.relish == (length(relish), end)
        assert found.relish[0] > ZERO


def _floor(made: MortiseShape, face: Face, at: str) -> Floor:
    return Floor(
        timber=made.stick.id, under=made.feature, over="lap", face=face, at=length(at), name="lap"
    )


@pytest.mark.parametrize(
    ("lie", "face", "at", "gone"),
    [
        (Lie(), Face.FAR_FIRST, "8", "1"),
        (Lie(), Face.FAR_FIRST, "8-63/64", "1/64"),
        (Lie(tie=("down", "west")), Face.FIRST, "1/2", "1/2"),
    ],
)
def test_a_floor_takes_what_lies_between_it_and_the_face(
    lie: Lie, face: Face, at: str, gone: str
) -> None:
    """In a tie 9" deep that a tenon enters past its plate, from below."""
    shaped = made(head_tie(lie=lie))
    assert (shaped.entry, shaped.real_into) == (face, length("9"))
    floor = _floor(shaped, face, at)
    under = replace(shaped, floors=(floor,))
    assert under.floor(face) == floor
    assert under.followed == (floor,)
    assert under.cut_back(face) == length(gone)
    assert under.cut_back(face.opposite) == ZERO
    assert under.bottom == shaped.bottom
    assert under.down == shaped.depth - length(gone)


def _plate_mortise() -> MortiseShape:
    """The mortise in the plate, which the tenon goes right through from below."""
    built = head_tie()
    (joint,) = (work for work in built.project.works if isinstance(work, TenonJoint))
    found = mortise_of(joint, shape(joint, built), built)
    assert found is not None
    return found


def test_a_floor_where_the_tenon_comes_out_leaves_less_wood_to_bore() -> None:
    """An inch off the top of a plate 7" deep; nothing more is taken from below."""
    shaped = _plate_mortise()
    floor = _floor(shaped, Face.FIRST, "1")
    under = replace(shaped, floors=(floor,))
    assert under.followed == (floor,)
    assert (under.cut_back(Face.FIRST), under.cut_back(Face.FAR_FIRST)) == (length("1"), ZERO)


def test_a_floor_where_a_shoulder_bears_is_not_followed() -> None:
    """The shoulder would bear on nothing: that is told, and no figure made of it."""
    shaped = _plate_mortise()
    under = replace(shaped, floors=(_floor(shaped, shaped.entry, "6"),))
    assert under.floor(shaped.entry) is None
    assert under.followed == ()
    assert under.cut_back(shaped.entry) == ZERO


def test_a_floor_of_another_mortise_or_timber_is_none_of_its_own() -> None:
    """Though it lies under the same face."""
    shaped = made(head_tie())
    floor = _floor(shaped, shaped.entry, "8")
    others = (replace(floor, under="other-mortise"), replace(floor, timber="plate"))
    assert replace(shaped, floors=others).followed == ()
