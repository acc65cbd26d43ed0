"""Where the mortise lies in the beam, in the beam's own readings."""

import pytest

from benchmate.joinery.joist_tenon.family import features
from benchmate.joinery.joist_tenon.hole_shape import HoleShape
from benchmate.model.directions import Face
from benchmate.model.solids import Axis, Plane
from tests.builders import frame, length, lengths, real
from tests.floor import Floor, over
from tests.joinery.joist_tenon.floors import jointed
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon


def hole(floor: Floor | None = None, **words: object) -> HoleShape:
    """A soffit tenon's mortise."""
    return jointed(soffit_tenon(**words), floor).shapes[1]  # type: ignore[arg-type]


def test_it_lies_where_the_joist_does() -> None:
    """The joist's top 1" below the beam's, so its tenon is 6" to 8" down, and 4" along."""
    found = hole()
    assert (found.top, found.upper, found.lower, found.lowest) == lengths("1", "6", "8", "8")
    assert (found.entry, found.into, found.plumb) == (Face.SECOND, Axis.SECOND, Axis.FIRST)
    assert found.along[1] - found.along[0] == length("4")
    assert (found.left_above, found.left_below, found.below_top) == lengths("6", "2", "1")


def test_measured_from_below_the_readings_turn_over() -> None:
    """The same joist in a beam whose reference face is its underside."""
    found = hole(Floor(from_top=False, lower="1"))
    assert (found.top, found.upper, found.lower) == lengths("9", "4", "2")
    assert not found.downwards
    assert (found.left_above, found.left_below, found.below_top) == lengths("6", "2", "1")


def test_the_wood_left_is_counted_on_the_real_stick() -> None:
    """1/4" more beam leaves 1/4" more below, or above where it is measured from below."""
    deep = {"beam": real({"all": {"first": "10-1/4"}})}
    assert hole(Floor(lower="1", real=deep)).left_below == length("2-1/4")
    turned = hole(Floor(lower="1", from_top=False, real=deep))
    assert (turned.left_below, turned.left_above) == lengths("2", "6-1/4")


@pytest.mark.parametrize(("near", "deep", "left"), [(True, "4-1/8", "3-7/8"), (False, "3-7/8", "")])
def test_it_is_deeper_than_the_tenon_is_long(near: bool, deep: str, left: str) -> None:
    """By the shop's bottom clearance of 1/8", or the joint's own; the rest of 8" is left."""
    found = hole(Floor(lower="1", near=near))
    assert (found.clearance, found.depth) == lengths("1/8", "4-1/8")
    assert found.housing.inside(found.depth) == length(deep)
    assert found.left_behind == length(left or "3-7/8")
    assert hole(bottom_clearance="1/2").depth == length("4-1/2")


@pytest.mark.parametrize(
    ("as_cut", "lower", "wide", "depth"),
    [
        ({"thickness": "1-7/8"}, "7-7/8", "4", "4-1/8"),
        ({"width": "3-7/8"}, "8", "3-7/8", "4-1/8"),
        ({"length": "3-3/4"}, "8", "4", "3-7/8"),
    ],
)
def test_it_follows_the_tenon_as_cut(
    as_cut: dict[str, str], lower: str, wide: str, depth: str
) -> None:
    """Law 5: its upper cheek is held from the top, its bearing face follows."""
    made = {"joist": real({}, {"south-end-tenon": as_cut})}
    found = hole(Floor(lower="1", real=made))
    assert (found.upper, found.lower, found.lowest) == lengths("6", lower, lower)
    assert (found.along[1] - found.along[0], found.depth) == lengths(wide, depth)


def test_a_tusk_stays_where_it_is_when_the_tenon_over_it_came_out_thin() -> None:
    """It is held from the joist's top as well."""
    floor = Floor(beam="9 x 8", joist="9 x 4", lower="0")
    made = {"joist": real({}, {"south-end-tenon": {"thickness": "1-3/8"}})}
    found = jointed(tusk_tenon(), floor.with_(real=made)).shapes[1]
    assert (found.upper, found.lower, found.lowest) == lengths("3", "4-3/8", "5-1/2")


def test_the_haunch_s_floor_leans_across_the_beam() -> None:
    """Nothing 1" down, 1-1/2" in at 6" down: 3 in for every 10 down, its waste at the face."""
    floor = hole().haunch_floor
    top = length("1").nm
    assert floor == Plane((0, -3, 10), -3 * top, "haunch-floor")
    assert floor.holds(0, length("4").nm, length("7/8").nm)
    assert not floor.holds(0, length("4").nm, length("1").nm)


def test_by_square_rule_it_starts_at_the_inner_timber() -> None:
    """A far face 1/2" over: all depths count from a housing's floor, 8" from the reference."""
    found = hole(over(Floor(near=False, lower="1"), (0, 16, 0, 0), "square"))
    assert (found.housing.recess, found.housing.seat) == lengths("1/2", "8")
    assert found.left_behind == length("3-7/8")


def test_typed_or_placed_it_is_the_same_joint() -> None:
    """A joint between timbers without places says where they cross, with the same result."""
    placed = jointed(soffit_tenon(), Floor(lower="1"))
    alone = {"at": None, "reference_end_at": None, "far_end_at": None}
    floor = Floor(lower="1", own={"beam": alone, "joist": alone | {"length": "8'"}})
    at = placed.shapes[1].along[0]
    typed = soffit_tenon(at=at.exact_text(), drop="1")
    built = frame(floor.beam_timber, floor.joist_timber, typed, units="inches")
    ours, theirs = (each.cuts for each in features(typed, built)), placed.sides
    assert list(ours) == [each.cuts for each in theirs]
