"""Where both halves lie: figures worked by hand for an 8" x 8" plate with a 3' scarf at 14'."""

import pytest

from benchmate.frame.flats import along_at, deep_at
from benchmate.joinery.scarf.shape import feature_id
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis, Plane
from tests.builders import length, lengths, real
from tests.compass import OPPOSITE
from tests.joinery.scarf.plates import KINDS, both, plate, turned_plate

ONE, OTHER = "east-end-scarf", "west-end-scarf"


def at(plane: Plane) -> Length:
    """Where a plane square to an axis lies on it."""
    (part,) = (each for each in plane.normal if each)
    return Length(plane.offset * part)


@pytest.mark.parametrize(("keeps", "leads"), [("up", "one"), ("down", "other"), ("south", "one")])
def test_the_stick_that_keeps_a_reference_face_leads(keeps: str, leads: str) -> None:
    """Its lap is measured from the face that both share."""
    halves = both(plate(joint={"keeps": keeps}))
    assert [half.stick.id for half in halves if half.leads] == [leads]
    one, other = halves
    assert one.stick.pose.direction(one.keeps).word == keeps
    assert one.stick.pose.direction(one.keeps.opposite) is other.stick.pose.direction(other.keeps)


def test_a_half_lap_is_half_the_depth_each() -> None:
    """Trade notes 2.6, Rivington: 4" of 8"; the laps lie 12' 6" to 15' 6" along the line."""
    one, other = both(plate())
    assert (one.at, one.tip_at) == lengths("12' 6", "15' 6")
    assert (other.at, other.tip_at) == (ZERO, length("-3'"))
    assert (at(one.shoulder), at(other.shoulder)) == lengths("12' 6", "0")
    for half in (one, other):
        assert at(half.lap) == half.root == half.tip == length("4")
        assert (half.left(half.tip), half.off(half.root)) == lengths("4", "4")
        assert (half.reach, half.total) == lengths("3'", "28'")
        assert half.stepped


@pytest.mark.parametrize("kind", ["stop-splayed", "under-squinted"])
def test_a_splay_runs_from_butt_to_butt(kind: str) -> None:
    """With 2" butts 6" is left at the shoulder and 2" at the tip, on both sticks."""
    one, other = both(plate(kind))
    assert (one.root, one.tip) == lengths("6", "2")
    assert (other.root, other.tip) == lengths("2", "6")
    assert not one.stepped
    for half in (one, other):
        assert (half.off(half.root), half.left(half.tip)) == lengths("2", "2")
        assert deep_at(half.lap, half.halved, half.at) == half.root
        assert deep_at(half.lap, half.halved, half.tip_at) == half.tip
        middle = length("14'") if half is one else length("-18")
        assert deep_at(half.lap, half.halved, middle) == length("4")


def test_an_under_squint_leans_in_under_the_face() -> None:
    """Half an inch along in the 2" of butt: the tip of the one lies under the other's abutment."""
    one, other = both(plate("under-squinted"))
    for half, outer in ((one, "8"), (other, "0")):
        assert half.abutment is not None
        assert along_at(half.abutment, half.halved, half.root) == half.at
        ahead = length("1/2") * (1 if half is one else -1)
        assert along_at(half.abutment, half.halved, length(outer)) == half.at + ahead
    for half, outer in ((one, "0"), (other, "8")):
        assert half.point is not None
        assert along_at(half.point, half.halved, half.tip) == half.tip_at
        back = length("1/2") * (-1 if half is one else 1)
        assert along_at(half.point, half.halved, length(outer)) == half.tip_at + back


@pytest.mark.parametrize("kind", ["half lap", "stop-splayed", "bridled"])
def test_square_abutments_do_not_lean(kind: str) -> None:
    """The shoulder is the abutment, and the squared end the tip."""
    for half in both(plate(kind)):
        assert (half.abutment, half.point, half.squint) == (None, None, ZERO)


def test_a_bridle_lies_the_same_on_both_sticks() -> None:
    """A 1-1/2" tongue set back 3", 3" long from the other shoulder; its slot 1/8" longer."""
    one, other = both(plate("bridled"))
    assert (one.at, one.tip_at) == lengths("12' 9", "15' 6")
    assert (other.at, other.tip_at) == (ZERO, length("-2' 9"))
    for half, tongue, slot in ((one, "15' 3", "12' 5-7/8"), (other, "-30", "3-1/8")):
        bridle = half.bridle
        assert bridle is not None
        assert (bridle.near, bridle.far, bridle.slot_far) == lengths("3", "4-1/2", "4-1/2")
        assert (bridle.length, bridle.slot_length) == lengths("3", "3-1/8")
        assert (at(bridle.shoulder), at(bridle.slot_end)) == lengths(tongue, slot)
    assert all(half.bridle is None for half in both(plate()))


def test_a_slot_is_longer_by_the_shop_s_clearance_or_the_joint_s_own() -> None:
    """The shop's 1/8" counts where the joint says nothing."""
    given = both(plate("bridled", joint={"bottom_clearance": "0"}))
    shop = both(plate("bridled", shop={"bottom_clearance": "1/4"}))
    for halves, clearance in ((given, "0"), (shop, "1/4")):
        for half in halves:
            assert half.bridle is not None
            assert half.bridle.clearance == length(clearance)


def test_half_the_key_lies_in_either_stick() -> None:
    """1-1/2" wide about 14', and 3/4" to either side of the middle of 8"."""
    one, other = both(plate("stop-splayed", joint={"key": "1-1/2"}))
    for half, floor, along in (
        (one, "3-1/4", ("13' 11-1/4", "14' 3/4")),
        (other, "4-3/4", ("-18-3/4", "-17-1/4")),
    ):
        assert half.key is not None
        assert (half.key.floor, half.key.deep) == lengths(floor, "3/4")
        assert (at(half.key.start), at(half.key.finish)) == lengths(*along)
        assert half.key.start.normal == (-1, 0, 0)


def test_what_a_stick_is_over_shows_on_its_far_face() -> None:
    """By mill rule the lap holds its place from the top, whatever lies below it."""
    measured = {
        "one": real({ONE: {"first": "8-1/4"}}),
        "other": real({"all": {"first": "7-7/8", "second": "8-1/8"}}),
    }
    one, other = both(plate(real=measured))
    assert (one.root, one.left(one.root), one.off(one.root)) == lengths("4", "4", "4-1/4")
    assert (other.root, other.left(other.root), other.off(other.root)) == lengths("4", "3-7/8", "4")
    assert (one.reduced(), other.reduced()) == ({}, {})
    assert (other.real_deep, other.real_wide) == lengths("7-7/8", "8-1/8")


def test_by_square_rule_both_laps_come_to_the_inner_timber() -> None:
    """An inner 7-1/2": half is 3-3/4"; the far side comes off both, the underside off the lower."""
    own = {"rule": "square", "inner": "7-1/2 x 7-1/2"}
    one, other = both(plate(one=own, other=own, real={"other": real({"all": {"first": "7-5/8"}})}))
    assert (one.root, other.root) == lengths("3-3/4", "3-3/4")
    assert one.reduced() == {Axis.SECOND: length("7-1/2")}
    assert other.reduced() == {Axis.SECOND: length("7-1/2"), Axis.FIRST: length("7-1/2")}
    assert (one.off(one.root), other.left(other.root)) == lengths("4-1/4", "3-3/4")
    exact = {"other": real({"all": {"first": "7-1/2", "second": "7-1/2"}})}
    assert both(plate(one=own, other=own, real=exact))[1].reduced() == {}


@pytest.mark.parametrize(
    ("kind", "as_cut", "root", "tip"),
    [
        ("half lap", {"thickness": "4-1/16"}, "4-1/16", "4-1/16"),
        ("bridled", {"width": "3-15/16"}, "3-15/16", "3-15/16"),
        ("bridled", {"thickness": "1-5/8"}, "4", "4"),
        ("stop-splayed", {"thickness": "2-1/8"}, "6", "2-1/8"),
        ("under-squinted", {"width": "5-7/8", "thickness": "2"}, "5-7/8", "2"),
    ],
)
def test_the_second_lap_follows_the_first_as_cut(
    kind: str, as_cut: dict[str, str], root: str, tip: str
) -> None:
    """The leading stick keeps its own lines; the other's shoulder is the leading tip."""
    one, other = both(plate(kind, real={"one": real(as_cut={ONE: as_cut})}))
    drawn = both(plate(kind))[0]
    assert (one.root, one.tip) == (drawn.root, drawn.tip)
    assert (other.tip, other.root) == lengths(root, tip)
    assert other.as_cut == one.as_cut


def test_the_slot_follows_the_tongue_as_cut() -> None:
    """1-5/8" thick and 2-7/8" long: the other slot is as wide, and 3" long with its clearance."""
    made = {"one": real(as_cut={ONE: {"thickness": "1-5/8", "length": "2-7/8"}})}
    one, other = both(plate("bridled", real=made))
    for half, far, long in ((one, "4-1/2", "3-1/8"), (other, "4-5/8", "3")):
        assert half.bridle is not None
        assert (half.bridle.slot_far, half.bridle.slot_length) == lengths(far, long)
        assert (half.bridle.far, half.bridle.length) == lengths("4-1/2", "3")


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("end", ["east", "west", "north", "south", "up", "down"])
def test_a_scarf_turned_round_is_the_same_scarf(kind: str, end: str) -> None:
    """Any way the line runs, the two laps are as long and as deep."""
    upright = end in ("up", "down")
    faces = ("south", "west") if upright else ("up", "south" if end in ("east", "west") else "west")
    ends = (OPPOSITE[end], OPPOSITE[end])
    made = turned_plate(kind, end=end, keeps=faces[0], faces=faces, ends=ends)
    for half, check in zip(both(made), both(plate(kind)), strict=True):
        assert (half.root, half.tip) == (check.root, check.tip)
        assert abs(half.tip_at - half.at) == abs(check.tip_at - check.at)
        assert half.stick.overall == length("10'") + length("18")


def test_ids_and_places_follow_the_end() -> None:
    """The half on an east end is `east-end-scarf`, on a foot `foot-scarf`."""
    assert feature_id(Direction.EAST) == ONE
    assert feature_id(Direction.DOWN) == "foot-scarf"
    one, other = both(plate())
    assert (one.feature, one.mate_feature, other.feature) == (ONE, OTHER, OTHER)
    assert one.places == (ONE, "east-end")
    assert (one.end, other.end) == (Face.FAR_END, Face.REFERENCE_END)
    assert one.sides is Axis.SECOND


def test_halves_know_each_other() -> None:
    """Each names the stick it is joined to."""
    one, other = both(plate())
    assert (one.mate.id, other.mate.id) == ("other", "one")
