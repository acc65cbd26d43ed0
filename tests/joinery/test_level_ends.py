"""What keeps an end that has to lie level from being one, in every family that cuts such an end."""

from collections.abc import Callable

import pytest

from benchmate.model.work import Work
from tests.builders import faults, timber
from tests.joinery.diminished.ledges import diminished
from tests.joinery.half_dovetail.bents import half_dovetail

Joint = Callable[..., Work]

LEVEL = pytest.mark.parametrize("joint", [diminished, half_dovetail])

POST = timber("post", at={"east": "0", "north": "0"}, reference_end_at="0")
LYING = {
    "first_face": "up",
    "second_face": "south",
    "reference_end": "east",
    "at": {"north": "0", "up": "8'"},
}
TIE = timber("tie", **LYING)


@LEVEL
def test_a_level_end_in_a_post_is_sound(joint: Joint) -> None:
    """Both of them with a place."""
    assert faults(joint(timber="tie"), TIE, POST) == []


@LEVEL
@pytest.mark.parametrize(("unplaced", "key"), [("tie", "timber"), ("post", "into")])
def test_both_need_places(joint: Joint, unplaced: str, key: str) -> None:
    """The fault is on the key that names the one without."""
    timbers = [
        each.model_copy(update={"at": None}) if each.id == unplaced else each
        for each in (TIE, POST)
    ]
    ((found, problem),) = faults(joint(timber="tie"), *timbers)
    assert found == key
    assert "has no place in the frame" in problem


@LEVEL
def test_a_standing_end_makes_none(joint: Joint) -> None:
    """It has no underside to bear with; a post's head in a tie is for another family."""
    standing = joint(timber="post", into="tie", end="head")
    ((key, problem),) = faults(standing, TIE, POST)
    assert key == "timber"
    assert "stands upright" in problem


@LEVEL
def test_one_that_is_rolled_into_a_roof_makes_none(joint: Joint) -> None:
    """A purlin's top is not level; against a standing timber it would not even be square."""
    rolled = timber("tie", **LYING, roll={"towards": "north", "run": "12", "rise": "8"})
    rafter = timber(
        "post",
        first_face="up",
        second_face="west",
        reference_end="foot",
        length=None,
        incline={
            "foot": {"east": "0", "north": "0", "up": "8'"},
            "towards": "north",
            "run": "6'",
            "rise": "4'",
        },
    )
    ((key, problem),) = faults(joint(timber="tie"), rolled, rafter)
    assert (key, "lies in a slope" in problem) == ("timber", True)
    ((key, _),) = faults(joint(timber="tie"), rolled, POST)
    assert key == "into"
