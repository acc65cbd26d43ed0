"""How an end meets a side: whichever way the timbers stand, never typed."""

import pytest
from hypothesis import given, settings

from benchmate.frame.meeting import Meeting, MeetingError, crossing, meet
from benchmate.frame.place import Place, square_ways
from benchmate.joinery.tenon.shape import meeting
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis
from tests.builders import corners, frame, length, lengths, sill, timber
from tests.corner import Corner, corner
from tests.frame.standing import Between, between, crossed
from tests.space import TOWARDS, inward


def _meet(receiver: dict[str, str], **post: str) -> Meeting:
    built = frame(timber("post", **post), sill(**receiver))
    stick = built.stick("post")
    down = stick.pose.face(Direction.DOWN)
    return meet(stick, down, built.stick("sill"), at=length("4'"), inset=ZERO)


@pytest.mark.parametrize("end", ["west", "east"])
@pytest.mark.parametrize("second", ["west", "east"])
def test_going_in_from_the_outside_face_follows_the_grain_or_not(end: str, second: str) -> None:
    """In from a post's west face is east: with a sill measured from its west end."""
    met = _meet({"reference_end": end}, second_face=second)
    assert met.with_grain is (second == end)
    assert (met.cheeks, met.entry) == (Axis.FIRST, Face.FIRST)
    spans = {True: ("4' 1", "4' 3"), False: ("3' 9", "3' 11")}
    low, high = spans[met.with_grain]
    assert met.along_span(length("1"), length("3")) == (length(low), length(high))


@pytest.mark.parametrize(("face", "same"), [("south", True), ("north", False)])
def test_measuring_across_from_faces_that_look_apart(face: str, same: bool) -> None:
    """A sill measured from its north face sees a post's south cheeks from the other side."""
    met = _meet({"second_face": face})
    assert met.same_side is same
    near, far = met.across_span(length("2"), length("4"))
    assert (near, far) == ((length("2"), length("4")) if same else (-length("4"), -length("2")))


@pytest.mark.parametrize(
    ("first", "second", "entry", "into", "across"),
    [
        ("up", "south", Face.FIRST, Axis.FIRST, Axis.SECOND),
        ("down", "south", Face.FAR_FIRST, Axis.FIRST, Axis.SECOND),
        ("south", "up", Face.SECOND, Axis.SECOND, Axis.FIRST),
        ("south", "down", Face.FAR_SECOND, Axis.SECOND, Axis.FIRST),
    ],
)
def test_a_foot_enters_the_face_that_looks_up(
    first: str, second: str, entry: Face, into: Axis, across: Axis
) -> None:
    """Whichever reading that is in the receiving timber."""
    met = _meet({"first_face": first, "second_face": second})
    assert (met.entry, met.into, met.across) == (entry, into, across)


@pytest.mark.parametrize(
    ("first", "second", "cheeks"),
    [("south", "west", Axis.FIRST), ("west", "south", Axis.SECOND)],
)
def test_cheeks_lie_square_to_the_receiving_grain(first: str, second: str, cheeks: Axis) -> None:
    """A tenon runs with the sill, so its cheeks are set back from the face across it."""
    assert _meet({}, first_face=first, second_face=second).cheeks is cheeks


@given(corner())
def test_the_meeting_agrees_with_directions_alone(case: Corner) -> None:
    """Entry, cheeks and both senses, each worked out a second way."""
    met = meeting(case.joint, case.frame)
    assert met is not None
    post, receiver = inward(case.post), inward(case.receiver)
    assert met.cheeks.value.index(1) == case.cheeks
    assert met.into.value.index(1) == case.into
    assert met.across.value.index(1) == 3 - case.into
    assert met.entry.is_reference is (receiver[case.into] == TOWARDS[case.end])
    assert met.with_grain is (post[3 - case.cheeks] == receiver[0])
    assert met.same_side is (post[case.cheeks] == receiver[3 - case.into])


@given(corner())
def test_spans_are_in_order_and_as_long_as_the_tenon(case: Corner) -> None:
    """However the sticks stand, a span starts at its smaller reading."""
    met = meeting(case.joint, case.frame)
    assert met is not None
    for span in (met.along_span, met.across_span):
        low, high = span(Length(3), Length(10))
        assert high - low == Length(7)


def test_timbers_that_run_the_same_way_do_not_meet() -> None:
    """An end cannot enter end grain."""
    built = corners()
    post = built.stick("post-sw")
    with pytest.raises(MeetingError, match="same way"):
        meet(post, Face.FAR_END, built.stick("post-se"), at=ZERO, inset=ZERO)


MEETS = (("meets", "meets"), ("meets", "typed"), ("length", "meets"))


@settings(max_examples=150)
@given(between(ways=MEETS))
def test_a_crossing_agrees_with_coordinates_alone(case: Between) -> None:
    """Where the stick's arris lies along its receiver and in from its side, by second opinion."""
    built = case.frame()
    for joint in case.met:
        receiver = joint.into
        assert receiver is not None
        stick, met = built.stick("stick"), built.stick(receiver.id)
        here, there = built.place("stick"), built.place(receiver.id)
        assert here is not None
        assert there is not None
        end = stick.pose.face(Direction[joint.end.upper()])
        found = crossing(stick, end, here, met, there)
        assert tuple(each.nm for each in found) == crossed(case.stick, receiver)


@pytest.mark.parametrize(
    ("post", "receiver", "expected"),
    [
        (("5'", "0"), ("south", "west"), ("5'", "0")),
        (("5'", "6"), ("south", "west"), ("5'", "6")),
        (("5'", "6"), ("north", "west"), ("5'", "-6")),
        (("5'", "6"), ("south", "east"), ("11'", "6")),
        (("-2'", "-6"), ("south", "west"), ("-2'", "-6")),
    ],
)
def test_a_crossing_worked_by_hand(
    post: tuple[str, str], receiver: tuple[str, str], expected: tuple[str, str]
) -> None:
    """A post on a sill that runs 16' east from the zero point, measured from either end."""
    east, north = post
    second, end = receiver
    ends = {"west": ("0", "16'"), "east": ("16'", "0")}[end]
    built = frame(
        timber("post", at={"east": east, "north": north}, reference_end_at="0", length="8'"),
        sill(
            second_face=second,
            reference_end=end,
            at={"north": "0", "up": "0"},
            reference_end_at=ends[0],
            far_end_at=ends[1],
            length=None,
        ),
    )
    here, there = built.place("post"), built.place("sill")
    assert here is not None
    assert there is not None
    found = crossing(built.stick("post"), Face.REFERENCE_END, here, built.stick("sill"), there)
    assert found == lengths(*expected)


def test_places_of_timbers_that_run_the_same_way_do_not_cross() -> None:
    """However far apart they stand."""
    post = corners().stick("post-sw")
    place = Place(origin=(0, 0, 0), ways=square_ways(post.pose))
    with pytest.raises(MeetingError, match="same way"):
        crossing(post, Face.FAR_END, place, corners().stick("post-se"), place)
