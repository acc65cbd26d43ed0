"""The mortise in the timber that a tenon goes on into."""

import pytest
from hypothesis import given, settings

from benchmate.joinery.tenon.beyond import mortise_beyond
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.mortise_shape import Past
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import Passage, shape
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits
from benchmate.model.solids import Axis
from tests.builders import length, lengths, real
from tests.joinery.tenon.furthers import Further, further
from tests.joinery.tenon.head_ties import MORTISE, Lie, head_tenon, head_tie, made
from tests.joinery.tenon.plans import PLANS, Plan
from tests.joinery.tenon.scenes import LONG
from tests.space import TOWARDS, bounds


@pytest.mark.parametrize("plan", PLANS)
def test_it_is_the_tenon_past_the_plate(plan: Plan) -> None:
    """2" to 4" in from the plate's outside, 10" from the tie's end; 3" past the plate, 1" notched.

    The tie crosses the plate, so the tenon's thickness lies along it and its width across.
    """
    found = made(head_tie(plan))
    assert (found.feature, found.entry, found.into, found.sides) == (
        MORTISE,
        Face.FAR_FIRST,
        Axis.FIRST,
        Axis.SECOND,
    )
    assert found.along == lengths("12", "14")
    assert found.across == lengths("2", "6")
    assert (found.along_follows, found.across_follows) == ("thickness", "width")
    assert (found.length, found.depth) == lengths("4", "4-1/8")
    assert (found.seat, found.bottom) == lengths("9", "4-7/8")
    assert found.past == Past("Plate", "Plate's top face", length("1"))
    assert (found.housed, found.through) == (False, False)


@pytest.mark.parametrize(
    ("down", "deep", "inside"),
    [("0", "3", "0"), ("1", "4", "1"), ("2-1/2", "5-1/2", "2-1/2"), ("-1", "2", "-1")],
)
def test_its_depth_counts_from_where_the_tie_really_is(down: str, deep: str, inside: str) -> None:
    """Notched over the plate, on it or clear of it: from the tie's own underside to the end."""
    found = made(head_tie(lie=Lie(down=down)))
    assert found.length == length(deep)
    assert found.past
    assert found.past.inside == length(inside)


def test_a_tie_that_is_over_has_its_underside_lower() -> None:
    """Placed by its top, so its mortise is that much deeper, and ends at the same height."""
    drawn, over = (
        made(head_tie(real={"tie": real({MORTISE: {"first": size}})})) for size in ("9", "9-3/8")
    )
    assert over.length - drawn.length == length("3/8")
    assert over.bottom == drawn.bottom
    under = made(
        head_tie(lie=Lie(tie=("down", "west")), real={"tie": real({"all": {"first": "9-3/8"}})})
    )
    assert (under.entry, under.seat, under.bottom) == (Face.FIRST, ZERO, length("4-1/8"))


def test_a_plate_that_is_over_lengthens_the_tenon() -> None:
    """It stands as far past the plate all the same, if that is what is said of it."""
    over = {"plate": real({MORTISE: {"first": "7-3/8"}})}
    said = made(head_tie(real=over))
    assert (said.length, said.tenon.length) == lengths("4", "10-3/8")
    given_length = made(head_tie(joint={"past": "0", "length": "10"}, real=over))
    assert (given_length.length, given_length.tenon.length) == lengths("3-5/8", "10")


def test_it_follows_the_tenon_as_cut() -> None:
    """Thickness along the tie, width across, length in."""
    cut = {"thickness": "1-7/8", "width": "3-3/4", "length": "9-3/4"}
    found = made(head_tie(real={"post": real(as_cut={"head-tenon": cut})}))
    assert found.along == lengths("12", "13-7/8")
    assert found.across == lengths("2", "5-3/4")
    assert found.length == length("3-3/4")


def test_right_through_it_has_no_bottom() -> None:
    """Through 9" of tie; held short counts from its top face."""
    found = made(head_tie(joint={"beyond_through": True, "past": "7-3/4", "held_short": "1/4"}))
    assert found.through
    assert found.passage == Passage(length("9"), "Tie's top face", length("1/4"))
    assert (found.clearance, found.length) == (ZERO, length("8-3/4"))


def test_a_tie_along_the_plate_takes_it_with_the_grain() -> None:
    """Then width lies along and thickness across, as in the plate."""
    found = made(head_tie(lie=Lie(down="0", runs_along=True, tie=("up", "south"))))
    assert (found.along_follows, found.across_follows) == ("width", "thickness")
    assert found.across == lengths("2", "4")


def test_a_tenon_that_ends_in_the_first_has_none() -> None:
    """Through it and proud of it, with nothing beyond."""
    joint = head_tenon({"beyond": None})
    frame = head_tie(joint={"beyond": None})
    assert mortise_beyond(joint, shape(joint, frame), frame) is None


def test_it_waits_for_the_tenon_and_goes_by_the_joint_s_name() -> None:
    """Its feature is the tie's own, measured under the joint's mortise there."""
    frame = head_tie()
    (joint,) = frame.project.works
    assert isinstance(joint, TenonJoint)
    found = features(joint, frame)
    assert [(each.timber, each.id, each.title) for each in found] == [
        ("post", "head-tenon", "Head tenon"),
        ("plate", MORTISE, "Mortise for Post"),
        ("tie", MORTISE, "Mortise for Post, past Plate"),
    ]
    assert found[2].awaits == (Awaits("post", "head-tenon/as-cut"),)
    assert (found[2].place, found[2].mated) == ((MORTISE,), True)


def test_a_scribed_one_is_listed_on_all_three() -> None:
    """Steps and no figures."""
    frame = head_tie(joint={"scribed": True})
    (joint,) = frame.project.works
    assert isinstance(joint, TenonJoint)
    tie = features(joint, frame)[2]
    assert (tie.timber, tie.title) == ("tie", "Mortise for Post, past Plate, scribed")
    assert (tie.scribed, tie.cuts, tie.lines) == (True, (), ())


@settings(max_examples=60)
@given(further())
def test_in_the_building_it_is_the_tenon_itself(case: Further) -> None:
    """Law 3: however the three stand, the third loses the tenon's own box and its room."""
    (cut,) = features(case.joint, case.frame)[2].cuts
    room = case.joint.bottom_clearance
    assert room is not None
    open_to = ((-LONG, LONG),) * 3
    found, right = case.there.box(bounds(cut, open_to)), case.tenon(room.nm)
    axis, sense = TOWARDS[case.scene.end]
    assert found[axis][sense > 0] == right[axis][sense > 0]
    assert [found[n] for n in range(3) if n != axis] == [right[n] for n in range(3) if n != axis]
