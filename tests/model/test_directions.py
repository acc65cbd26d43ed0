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
