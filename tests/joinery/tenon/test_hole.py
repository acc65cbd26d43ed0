"""The hole in a tenon that another goes through."""

import pytest

from benchmate.frame.frame import Real
from benchmate.joinery.tenon.hole import (
    DEPTH,
    END_SIDE,
    FAR_SIDE,
    REFERENCE_SIDE,
    SHOULDER_SIDE,
    Hole,
)
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from tests.builders import length, lengths, real
from tests.joinery.tenon.plans import PLANS, Plan
from tests.joinery.tenon.sill_corners import (
    AS_DRAWN,
    HOLE,
    NONE,
    Faces,
    Words,
    hole_of,
    sill_corner,
)

ALL_ROUND = (SHOULDER_SIDE, END_SIDE, REFERENCE_SIDE, FAR_SIDE)


def made(plan: Plan = AS_DRAWN, faces: Faces | None = None, **words: object) -> Hole:
    """The hole of a corner."""
    return hole_of(sill_corner(plan, faces, **words))  # type: ignore[arg-type]


@pytest.mark.parametrize("plan", PLANS)
def test_it_is_the_mortise_in_the_other_tenon_s_own_readings(plan: Plan) -> None:
    """The stub stands 2" to 4" in from the outside, so 4" to 6" from a shoulder at 8"; and so on.

    Across it lies 2-1/2" to 6-1/2" in from the end, where the tenon is from 2" to 8" wide.
    """
    found = made(plan)
    assert (found.feature, found.entry) == (HOLE, Face.FIRST)
    assert found.beyond == lengths("4", "6")
    assert found.across == lengths("2-1/2", "6-1/2")
    assert found.to_end == length("1-3/4")
    assert found.to_edges == lengths("1/2", "1-1/2")
    assert found.taken == lengths("2", "4")
    assert (found.through, found.notch) == (True, False)
    assert tuple(found.planes) == ALL_ROUND


def test_it_is_measured_from_whatever_faces_the_timber_has() -> None:
    """From the inside faces and the north end: 4" to 6" beyond the shoulder all the same."""
    found = made(faces=Faces(end=("down", "east"), reference_end="north"), sill={"set_back": "4"})
    assert found.beyond == lengths("4", "6")
    assert found.entry is Face.FAR_FIRST
    assert found.across == lengths("1-1/2", "5-1/2")
    assert found.to_edges == lengths("-1/2", "2-1/2")


@pytest.mark.parametrize(
    ("sill", "stub", "depth", "left"),
    [
        (NONE, {"length": "3"}, "1-1/8", "7/8"),
        (NONE, {"length": "3-7/8"}, "2", "0"),
        (NONE, {"length": "3-55/64"}, "1-63/64", "1/64"),
        (NONE, {"length": "3", "bottom_clearance": "1/2"}, "1-1/2", "1/2"),
        (NONE, {"through": True, "length": None}, "6", "-4"),
        ({"set_back": "0"}, {"length": "1"}, "1-1/8", "7/8"),
    ],
)
def test_it_is_as_deep_as_the_mortise(sill: Words, stub: Words, depth: str, left: str) -> None:
    """Room at the bottom included, so that the stub bottoms out nowhere."""
    found = made(sill=sill, stub=stub)
    assert (found.depth, found.to_cheek) == (length(depth), length(left))
    assert found.through is (found.to_cheek <= length("0"))
    assert (DEPTH in found.planes) is not found.through
    assert found.mouths == ((Face.FIRST, Face.FAR_FIRST) if found.through else (Face.FIRST,))


@pytest.mark.parametrize(
    ("sill", "stub", "missing"),
    [
        (NONE, {"relief_reference": "2-1/64"}, ()),
        (NONE, {"relief_reference": "2"}, (REFERENCE_SIDE,)),
        ({"relief_far": "1-1/2"}, NONE, (FAR_SIDE,)),
        ({"held_short": "2"}, NONE, (END_SIDE,)),
        ({"held_short": "1-63/64"}, NONE, ()),
        ({"held_short": "3"}, {"relief_reference": "0"}, (END_SIDE, REFERENCE_SIDE)),
    ],
)
def test_no_line_is_struck_where_it_runs_out(
    sill: Words, stub: Words, missing: tuple[str, ...]
) -> None:
    """The stub is 2" to 4" in from the outside and 4" wide, the tenon from 2" to 8" wide."""
    found = made(sill=sill, stub=stub)
    assert set(ALL_ROUND) - set(found.planes) == set(missing)
    assert found.notch is bool(missing)


def _cut(**sizes: str) -> Real:
    return real(as_cut={"foot-tenon": sizes})


def test_it_follows_the_tenon_that_goes_through_as_cut() -> None:
    """Width and thickness count from its reference edge and near cheek, so the far sides move."""
    found = made(real={"post": _cut(thickness="1-7/8", width="3-3/4", length="3-1/2")})
    assert found.beyond == lengths("4-1/8", "6")
    assert found.across == lengths("2-1/2", "6-1/4")
    assert found.depth == length("1-5/8")


def test_the_tenon_it_is_in_moves_no_line_of_it() -> None:
    """What that one came out as shows in the wood that is left alone."""
    sizes = {"thickness": "2-1/4", "width": "5-1/2", "length": "7"}
    drawn, found = made(), made(real={"end": real(as_cut={"south-end-tenon": sizes})})
    assert (found.along, found.across, found.bottom) == (drawn.along, drawn.across, drawn.bottom)
    assert found.to_edges == lengths("1/2", "1")
    assert found.to_end == length("1")
    assert found.depth == length("3-1/8")


def test_from_the_far_cheek_it_is_as_deep_as_that_came_out() -> None:
    """Measured from the underside the tenon's far cheek is the upper one: 1/4" over adds to it."""
    words = {"faces": Faces(end=("down", "west")), "sill": {"set_back": "4"}}
    over = {"end": real(as_cut={"south-end-tenon": {"thickness": "2-1/4"}})}
    drawn, found = made(**words), made(**words, real=over)  # type: ignore[arg-type]
    assert (drawn.entry, drawn.depth) == (Face.FAR_FIRST, length("3-1/8"))
    assert found.depth == length("3-3/8")


def test_the_cut_takes_the_wood_between_its_planes() -> None:
    """In the middle of it, not beside it; and above the cheek it is open."""
    found = made()
    middle = (found.tenon.shoulder.nm - length("5").nm, length("3").nm, length("4-1/2").nm)
    assert found.cut.takes(*middle)
    for off, axis in ((length("1-1/8"), 0), (length("2-1/8"), 2)):
        for sense in (1, -1):
            point = list(middle)
            point[axis] += sense * off.nm
            assert not found.cut.takes(*point)
    assert found.cut.takes(middle[0], Length(0).nm, middle[2])
