"""What can be wrong where one tenon is to go through another: each fires, and just does not."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.hole_findings import (
    both_ways,
    crossing_findings,
    ends_clash,
    misses,
    no_places,
    takes_all,
)
from benchmate.measure.length import ZERO
from benchmate.model.findings import Finding, Severity
from tests.builders import codes, length, sill, tenon
from tests.builders import frame as framed
from tests.builders import timber as post_of
from tests.joinery.tenon.sill_corners import (
    HOLE,
    NONE,
    Words,
    crossing,
    hole_of,
    joint_of,
    sill_corner,
)

HALF = length("1/2")


def told(frame: Frame) -> tuple[Finding, ...]:
    """What is told of the crossing of a corner."""
    return crossing_findings(crossing(frame), HALF, frame.project.tape)


@pytest.mark.parametrize(
    ("stub", "misses_by"),
    [
        ({"length": "2-1/64"}, None),
        ({"length": "2"}, '0"'),
        ({"length": "1-7/8"}, '1/8"'),
        ({"length": "1-55/64"}, None),
        ({"length": "1-25/64"}, None),
        ({"length": "1-3/8"}, '5/8"'),
        ({"length": "1"}, '1"'),
        ({"relief_far": "6", "relief_reference": "1/2"}, '1"'),
    ],
)
def test_a_stub_may_miss_the_tenon_it_is_meant_to_cross(stub: Words, misses_by: str | None) -> None:
    """The sill's is 2" down; with 1/8" of room a stub of 1-7/8" just meets its mortise.

    Where the mortises leave something between them, less than the shop keeps, that is what
    `meets` is said for, so nothing is told.
    """
    frame = sill_corner(stub=stub)
    found = misses(crossing(frame), HALF, frame.project.tape)
    assert (found is None) is (misses_by is None)
    if found is not None:
        assert (found.code, found.severity) == ("crossing-misses", Severity.LOOK)
        assert (found.timber, found.feature) == ("post", "foot-tenon")
        assert found.message == (
            f"Post is meant to go through End's south end tenon, and misses it by {misses_by}"
        )
        assert "take end-sill out of meets in joint post-foot" in found.remedy


def test_the_shop_says_what_little_wood_is() -> None:
    """A shop that keeps nothing is told at once."""
    frame = sill_corner(stub={"length": "1-1/2"})
    assert misses(crossing(frame), HALF, frame.project.tape) is None
    assert misses(crossing(frame), ZERO, frame.project.tape)


def test_only_one_of_two_can_go_through() -> None:
    """If each is said to, neither is; where they do not cross it says no more than that."""
    found = both_ways(crossing(sill_corner(sill={"meets": ("post-foot",)})))
    assert found
    assert (found.code, found.severity) == ("crossing-both-ways", Severity.STOP)
    assert "Post and End are each said to go through the other's tenon" in found.message
    assert both_ways(crossing(sill_corner())) is None
    apart = sill_corner(sill={"meets": ("post-foot",)}, stub={"length": "2"})
    assert both_ways(crossing(apart)) is None


def _typed(long: str) -> Frame:
    """The same corner with positions typed, the stub so long."""
    end = sill(id="end", name="End", reference_end="south", second_face="west", length="10'")
    joints = (
        tenon(id="end-sill", timber="end", end="south", into="sill", at="0", length="6"),
        tenon(id="post-foot", into="sill", at="1", length=long, meets=("end-sill",)),
    )
    return framed(sill(), end, post_of("post"), *joints)


def test_without_places_the_hole_has_no_figures() -> None:
    """They cross, and where on the other stays open: that is told, and no hole is laid out."""
    frame = _typed("5")
    found = no_places(crossing(frame))
    assert found
    assert (found.code, found.severity) == ("crossing-without-places", Severity.LOOK)
    assert (found.timber, found.feature) == ("post", "foot-tenon")
    made = features(joint_of(frame, "post-foot"), frame)
    assert [each.timber for each in made] == ["post", "sill"]
    assert codes(made[0].findings) == ("crossing-without-places",)
    assert no_places(crossing(_typed("2"))) is None
    assert no_places(crossing(sill_corner())) is None


@pytest.mark.parametrize(
    ("sill_words", "stub", "clash"),
    [
        (NONE, {"housing": "2"}, False),
        (NONE, {"housing": "2-1/4"}, True),
        ({"housing": "4-1/4"}, NONE, True),
    ],
)
def test_a_housed_end_stops_it(sill_words: Words, stub: Words, clash: bool) -> None:
    """A tenon can go through a tenon, but not through an end."""
    found = ends_clash(crossing(sill_corner(sill=sill_words, stub=stub)))
    assert (found is not None) is clash
    if found is not None:
        assert (found.code, found.severity) == ("crossing-ends-clash", Severity.STOP)
        assert "The ends of Post and End are in one another's way inside Long" in found.message


@pytest.mark.parametrize(
    ("sill_words", "stub", "all_of_it"),
    [
        ({"relief_far": "1-1/2"}, {"relief_reference": "2"}, True),
        ({"relief_far": "1-31/64"}, {"relief_reference": "2"}, False),
        ({"relief_far": "1-1/2"}, {"relief_reference": "2-1/64"}, False),
    ],
)
def test_a_hole_may_take_the_whole_tenon(sill_words: Words, stub: Words, all_of_it: bool) -> None:
    """The stub ends 6-1/2" in from the end of the long sill, the tenon is from 2" to there."""
    frame = sill_corner(sill=sill_words, stub=stub)
    found = takes_all(hole_of(frame), frame.project.tape)
    assert (found is not None) is all_of_it
    if found is not None:
        assert (found.code, found.severity) == ("crossing-takes-all", Severity.STOP)
        assert (found.timber, found.feature) == ("end", HOLE)
        assert found.message == (
            'The hole for Post is 4-1/2" across and takes the whole of a tenon 4-1/2" wide'
        )


def test_nothing_is_told_of_a_scribed_one() -> None:
    """Its sizes say only how much wood it needs."""
    assert codes(told(sill_corner(stub={"length": "1"}))) == ("crossing-misses",)
    assert told(sill_corner(stub={"length": "1"}, sill={"scribed": True})) == ()
    assert told(sill_corner()) == ()
