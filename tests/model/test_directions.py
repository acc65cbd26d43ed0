"""Building directions and the hand of a timber."""

import pytest

from benchmate.model.directions import LONG_FACES, Direction, Face, Pose, end_words, face_words
from tests.space import STANCES, TOWARDS, Stance

SW_POST = Pose(Direction.SOUTH, Direction.WEST, Direction.DOWN)
SE_POST = Pose(Direction.SOUTH, Direction.EAST, Direction.DOWN)


def _pose(stance: Stance) -> Pose:
    first, second, end = (Direction[word.upper()] for word in stance)
    return Pose(first, second, end)


@pytest.mark.parametrize("direction", Direction)
def test_a_direction_is_its_word_and_its_step(direction: Direction) -> None:
    """One step along its own axis, told in a lower-case word."""
    axis, sense = TOWARDS[direction.word]
    assert direction.value == tuple(sense if place == axis else 0 for place in range(3))


@pytest.mark.parametrize("direction", Direction)
def test_the_opposite_of_the_opposite(direction: Direction) -> None:
    """There and back, along the same axis."""
    other = direction.opposite
    assert other is not direction
    assert other.opposite is direction
    assert not direction.square_to(other)
    assert not direction.square_to(direction)
    assert sum(direction.square_to(each) for each in Direction) == 4


def test_the_third_direction_of_a_right_handed_set() -> None:
    """East, north, up; and turning the pair over turns the third."""
    assert Direction.EAST.cross(Direction.NORTH) is Direction.UP
    for first in Direction:
        for second in filter(first.square_to, Direction):
            third = first.cross(second)
            assert third.square_to(first)
            assert third.square_to(second)
            assert second.cross(first) is third.opposite


@pytest.mark.parametrize("face", Face)
def test_every_face_has_one_across(face: Face) -> None:
    """Of two faces across from one another, one is a reference and both are ends or neither."""
    assert face.opposite.opposite is face
    assert face.opposite.is_reference is not face.is_reference
    assert face.opposite.is_end is face.is_end
    assert (face in LONG_FACES) is not face.is_end


def test_long_faces_come_up_in_rolling_order() -> None:
    """Rolling a timber by a quarter brings up an adjacent face, never the one across."""
    turned = (*LONG_FACES[1:], LONG_FACES[0])
    for face, following in zip(LONG_FACES, turned, strict=True):
        assert following not in (face, face.opposite)


@pytest.mark.parametrize("stance", STANCES, ids="-".join)
def test_six_sides_look_in_six_directions(stance: Stance) -> None:
    """Whichever of the 48 ways a timber stands, each side is found again by where it looks."""
    pose = _pose(stance)
    looks = {face: pose.direction(face) for face in Face}
    assert set(looks.values()) == set(Direction)
    for face, direction in looks.items():
        assert pose.face(direction) is face
        assert pose.direction(face.opposite) is direction.opposite


@pytest.mark.parametrize(
    "words",
    [
        ("south", "south", "down"),
        ("south", "north", "down"),
        ("up", "south", "down"),
        ("south", "up", "down"),
        ("south", "west", "east"),
    ],
)
def test_directions_that_are_not_square_are_refused(words: tuple[str, str, str]) -> None:
    """Two reference faces and an end look three ways square to one another."""
    with pytest.raises(ValueError, match="square to one another"):
        _pose(Stance(*words))


def test_what_a_framer_calls_faces_and_ends() -> None:
    """Compass faces, top and underside; head, foot and compass ends."""
    assert [face_words(one) for one in Direction] == [
        "East face",
        "West face",
        "North face",
        "South face",
        "top face",
        "underside",
    ]
    assert [end_words(one) for one in Direction] == [
        "east end",
        "west end",
        "north end",
        "south end",
        "head",
        "foot",
    ]
    assert SW_POST.words(Face.REFERENCE_END) == "foot"
    assert SW_POST.words(Face.FAR_SECOND) == "East face"


def test_the_corner_posts_of_a_rectangle_are_two_mirrored_pairs() -> None:
    """Right-handed: standing on its foot, first face towards you, the second is on your right.

    With north and south faces first and the outside of each gable second, the south-east and the
    north-west post are right-handed, the other two left-handed: posts across a corner are alike
    and those side by side are mirror images. Worked by hand.
    """
    hands = {
        f"{first}-{second}": _pose(Stance(first, second, "down")).right_handed
        for first in ("south", "north")
        for second in ("east", "west")
    }
    assert hands == {
        "south-east": True,
        "south-west": False,
        "north-east": False,
        "north-west": True,
    }


@pytest.mark.parametrize("stance", STANCES, ids="-".join)
def test_turning_one_of_the_three_round_changes_the_hand(stance: Stance) -> None:
    """Law: a mirror turns one direction round; swapping the two faces changes the hand too."""
    pose = _pose(stance)
    mirrored = (
        Pose(pose.first.opposite, pose.second, pose.reference_end),
        Pose(pose.first, pose.second.opposite, pose.reference_end),
        Pose(pose.first, pose.second, pose.reference_end.opposite),
        Pose(pose.second, pose.first, pose.reference_end),
    )
    assert all(other.right_handed is not pose.right_handed for other in mirrored)


def test_half_of_all_stances_are_of_either_hand() -> None:
    """Law: 24 of 48, so that every timber has its mirror image."""
    assert sum(_pose(stance).right_handed for stance in STANCES) == 24


@pytest.mark.parametrize("head", [Direction.EAST, Direction.WEST])
def test_the_ends_of_a_raking_timber_are_its_foot_and_its_head(head: Direction) -> None:
    """Whichever end it is measured from; a timber that lies has compass ends."""
    for end in (head, head.opposite):
        pose = Pose(Direction.UP, Direction.SOUTH, end, head=head)
        words = {"foot", "head"}
        assert {pose.words(Face.REFERENCE_END), pose.words(Face.FAR_END)} == words
        assert pose.words(pose.face(head)) == "head"
        assert Pose(Direction.UP, Direction.SOUTH, end).words(pose.face(head)) == end_words(head)


def test_the_faces_of_a_raking_timber_are_those_it_would_have_lying() -> None:
    """Top face and underside, and the sides by the compass."""
    pose = Pose(Direction.UP, Direction.SOUTH, Direction.WEST, head=Direction.EAST)
    words = [pose.words(face) for face in LONG_FACES]
    assert words == ["top face", "South face", "underside", "North face"]
    assert pose.arris_words(Face.FIRST, Face.SECOND) == "top-South"


@pytest.mark.parametrize("head", [Direction.EAST, Direction.WEST])
def test_up_and_down_name_the_ends_of_a_raking_timber(head: Direction) -> None:
    """Not its top face and underside: a file calls its ends head and foot."""
    for end in (head, head.opposite):
        pose = Pose(Direction.UP, Direction.SOUTH, end, head=head)
        assert pose.words(pose.end(Direction.UP)) == "head"
        assert pose.words(pose.end(Direction.DOWN)) == "foot"


@pytest.mark.parametrize("stance", STANCES, ids="-".join)
def test_an_end_of_a_timber_that_stands_or_lies_looks_the_way_it_is_named(stance: Stance) -> None:
    """Whichever of the 48 ways that is."""
    pose = _pose(stance)
    assert pose.end(pose.reference_end) is Face.REFERENCE_END
    assert pose.end(pose.reference_end.opposite) is Face.FAR_END


def test_a_timber_rolled_into_a_roof_keeps_the_ends_it_lies_with() -> None:
    """Its raised side is no end of it, so west stays west."""
    pose = Pose(Direction.UP, Direction.SOUTH, Direction.WEST, head=Direction.NORTH)
    assert not pose.rakes
    assert Pose(Direction.UP, Direction.WEST, Direction.SOUTH, head=Direction.NORTH).rakes
    assert pose.words(pose.end(Direction.WEST)) == "west end"
    assert pose.end(Direction.EAST) is Face.FAR_END


def test_an_edge_is_called_after_its_face() -> None:
    """The edge that lies on it, as seen on the face beside it."""
    pose = Pose(Direction.UP, Direction.SOUTH, Direction.WEST)
    words = [pose.edge_words(face) for face in LONG_FACES]
    assert words == ["top edge", "South edge", "bottom edge", "North edge"]
