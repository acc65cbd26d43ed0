"""What the record of a diminished tenon accepts, and what it answers."""

import pytest
from pydantic import ValidationError

from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from benchmate.model.work import Bearing, Extension
from tests.builders import faults, length, timber
from tests.joinery.diminished.ledges import diminished

POST = timber("post", at={"east": "0", "north": "0"}, reference_end_at="0")
GIRT = timber(
    "girt",
    first_face="up",
    second_face="south",
    reference_end="east",
    at={"north": "0", "up": "8'"},
)
BEAM = timber(
    "post",
    first_face="up",
    second_face="west",
    reference_end="south",
    at={"east": "0", "up": "8'"},
)


def test_what_may_be_left_out() -> None:
    """Reliefs, and the clearance that the shop gives."""
    joint = diminished()
    assert (joint.relief_reference, joint.relief_far) == (ZERO, ZERO)
    assert joint.bottom_clearance is None


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"into": "girt"}, "its own timber"),
        ({"housing": "0"}, "more than nothing"),
        ({"length": "0"}, "more than nothing"),
        ({"thickness": "0"}, "more than nothing"),
        ({"set_back": "-1"}, "not below zero"),
        ({"relief_far": "-1"}, "not below zero"),
        ({"through": True}, "Extra inputs"),
    ],
)
def test_what_is_refused(words: dict[str, object], says: str) -> None:
    """A record that could not be cut is refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        diminished(**words)


def test_the_top_of_its_shoulder_comes_to_the_face() -> None:
    """So the clear span is the length along the top; housing and tenon are wood beyond it."""
    joint = diminished()
    assert joint.bearings() == (Bearing("girt", Direction.WEST, "post", ZERO, "girt-end-mortise"),)
    assert joint.extensions() == (Extension("girt", Direction.WEST, length("4")),)
    assert joint.timbers() == {"timber": "girt", "into": "post"}


@pytest.mark.parametrize("into", [POST, BEAM], ids=["a post", "a beam"])
def test_a_level_end_in_either_is_sound(into: Timber) -> None:
    """A girt in a post, a joist in a beam."""
    assert faults(diminished(), GIRT, into) == []


def test_timbers_that_run_the_same_way_do_not_meet() -> None:
    """As for every joint of an end in a side."""
    along = BEAM.model_copy(
        update={"reference_end": Direction.EAST, "second_face": Direction.SOUTH}
    )
    ((key, _),) = faults(diminished(), GIRT, along)
    assert key == "into"
