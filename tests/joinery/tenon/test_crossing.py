"""Whether one tenon crosses another, in the timber that receives both."""

import pytest

from benchmate.joinery.tenon.crossing import runs_into
from tests.builders import frame as framed
from tests.builders import length, sill, tenon
from tests.builders import timber as post_of
from tests.joinery.tenon.sill_corners import NONE, Words, crossing, joint_of, mortise, sill_corner


@pytest.mark.parametrize(
    ("stub", "missed_by"),
    [
        ({}, "-3"),
        ({"length": "2-1/2"}, "-1/2"),
        ({"length": "2"}, "0"),
        ({"length": "1-3/4"}, "1/4"),
        ({"relief_far": "4-3/4", "relief_reference": "1"}, "-1/4"),
        ({"relief_far": "5-1/2", "relief_reference": "1"}, "1/2"),
    ],
)
def test_two_tenons_cross_where_one_comes_into_the_other(stub: Words, missed_by: str) -> None:
    """The sill's lies 2" to 4" down and from 2" in, the post's from 2-1/2" to 6-1/2" in, 5" down.

    It goes 3" into the sill's from above, less than from any other side.
    """
    found = crossing(sill_corner(stub=stub))
    assert found.missed_by == length(missed_by)
    assert found.reaches is (found.missed_by < length("0"))


def test_it_counts_the_tenons_as_they_were_cut() -> None:
    """Without room at the bottom: a stub that ends at the sill's cheek does not come into it."""
    assert not crossing(sill_corner(stub={"length": "2", "bottom_clearance": "1"})).reaches


def test_what_is_left_between_two_mortises_is_their_own() -> None:
    """1-1/2" down and 1/8" of room leave 3/8" to the sill's mortise; where they meet, nothing."""
    found = crossing(sill_corner(stub={"length": "1-1/2"}))
    assert found.apart == length("3/8").nm ** 2
    assert crossing(sill_corner()).apart == 0


def test_what_the_two_say_of_one_another() -> None:
    """Which of them goes through, whether a hand marks either, whether they have places."""
    plain = crossing(sill_corner())
    assert (plain.mutual, plain.scribed, plain.placed) == (False, False, True)
    assert (plain.joint.id, plain.other.id) == ("post-foot", "end-sill")
    assert crossing(sill_corner(sill={"meets": ("post-foot",)})).mutual
    assert crossing(sill_corner(sill={"scribed": True})).scribed
    assert crossing(sill_corner(stub={"scribed": True})).scribed


@pytest.mark.parametrize(
    ("sill_words", "stub", "clash"),
    [
        (NONE, {"housing": "2"}, False),
        (NONE, {"housing": "2-1/64"}, True),
        ({"housing": "4"}, NONE, False),
        ({"housing": "4-1/64"}, NONE, True),
        ({"housing": "1"}, {"housing": "1/2"}, False),
        ({"housing": "1-1/64"}, {"housing": "1/2"}, True),
    ],
)
def test_a_housed_end_may_be_in_the_way(sill_words: Words, stub: Words, clash: bool) -> None:
    """The sill's tenon lies 2" down, the stub 4" from where that enters, the post's face 1"."""
    assert crossing(sill_corner(sill=sill_words, stub=stub)).ends_clash is clash


def test_a_mortise_knows_what_it_runs_into() -> None:
    """Whichever of the two is bored first breaks out into the other; no third one counts."""
    frame = sill_corner()
    post, end = joint_of(frame, "post-foot"), joint_of(frame, "end-sill")
    assert runs_into(post, mortise(frame, "post-foot"), frame) == ("End",)
    assert runs_into(end, mortise(frame, "end-sill"), frame) == ("Post",)
    for words in ({"meets": ()}, {"length": "1-3/4"}):
        apart = sill_corner(stub=words)
        assert runs_into(end, mortise(apart, "end-sill"), apart) == ()


def test_typed_positions_tell_it_too() -> None:
    """The mortises cross in the sill, whether or not anything has a place."""
    joist = sill(id="end", name="End", reference_end="south", second_face="west", length="10'")
    joints = (
        tenon(id="end-sill", timber="end", end="south", into="sill", at="0", length="6"),
        tenon(into="sill", at="1", length="5", meets=("end-sill",)),
    )
    found = crossing(framed(sill(), joist, post_of("post"), *joints))
    assert (found.reaches, found.placed) == (True, False)
