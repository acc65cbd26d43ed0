"""Where a brace's pegs lie on both sticks."""

from benchmate.frame.frame import Frame
from benchmate.frame.pegs import Pegs
from benchmate.joinery.brace.pegged import Pegged, pegged
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from tests.builders import length, lengths, real
from tests.joinery.brace.bays import PEG, bay
from tests.joinery.brace.test_shape import hole, made


def shape(frame: Frame | None = None, **words: object) -> Pegged:
    """The pegs at the foot of the brace of a bay."""
    found = frame or bay()
    return pegged(Pegs.model_validate({**PEG, **words}), made(found), hole(found))


def test_the_post_is_bored_from_where_the_brace_bears_and_its_nose_end() -> None:
    """1-1/2" in from a housing 1/2" deep in an 8" post; 2" above the nose end at 5'."""
    (centre,) = shape().bored.holes.centres
    assert centre == lengths("5' 2", "6")
    assert shape().bored.holes.face is Face.SECOND


def test_more_pegs_go_on_towards_the_heel() -> None:
    """1-1/2" apart along the post, on one line."""
    centres = shape(count=2, spacing="1-1/2").bored.holes.centres
    assert centres[1] == lengths("5' 3-1/2", "6")


def test_the_brace_is_bored_nearer_its_shoulder_and_further_from_its_nose() -> None:
    """1-3/8" from the shoulder and 2-1/8" from the nose: at 45 degrees 1-7/8" past the face.

    So it lies (2-1/8 + 1-7/8) / root 2 in from the long edge, and (2-1/8 - 1-7/8) / root 2 along.
    """
    found = shape()
    (centre,) = found.own.centres
    root = 2**0.5
    assert abs(centre.deep.nm - length("4").nm / root) < 2
    assert abs(centre.along.nm - length("1/4").nm / root) < 2
    assert found.from_nose(0) == length("2-1/8")


def test_the_two_ways_of_the_draw_come_to_more_on_the_slant() -> None:
    """1/8" each way is 1.414 times as far in all."""
    assert abs(shape().drawn_in_all.nm - length("1/8").nm * 2**0.5) < 1
    assert shape(draw="0").drawn_in_all == Length(0)


def test_the_relish_is_what_is_left_of_the_tenon() -> None:
    """4" less 1-3/8"."""
    assert shape().relish == length("2-5/8")


def test_bored_from_the_far_face_both_are_bored_from_the_same_side() -> None:
    """The north faces of post and brace; blind holes stop so far in from there."""
    found = shape(bored_from="far", blind_depth="7")
    assert (found.bored.holes.face, found.own.face) == (Face.FAR_SECOND, Face.FAR_SECOND)
    assert found.bored.holes.stop == length("1")
    assert found.bored.through_tenon == length("6-1/2")


def test_a_post_that_is_over_takes_the_holes_along_with_the_seat() -> None:
    """By mill rule the brace bears on the face as it was measured."""
    found = shape(bay(real={"post": real({"all": {"first": "8-1/4"}})}))
    assert found.bored.holes.centres[0].deep == length("6-1/4")
    assert found.own.centres == shape().own.centres
