"""What the record of a wedged half-dovetail accepts, and what it answers."""

import pytest
from pydantic import ValidationError

from benchmate.joinery.half_dovetail.record import HalfDovetail
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.work import Bearing, Extension
from tests.builders import faults, length, timber
from tests.joinery.half_dovetail.bents import half_dovetail

POST = timber("post", at={"east": "0", "north": "0"}, reference_end_at="0")
TIE = timber(
    "tie",
    first_face="up",
    second_face="south",
    reference_end="east",
    at={"north": "0", "up": "8'"},
)


def test_what_may_be_left_out() -> None:
    """Wedged over the top, no housing, flush at the far face, out to the tie's own edge."""
    joint = half_dovetail()
    assert (joint.wedged, joint.housing, joint.past, joint.held_short) == ("top", ZERO, ZERO, ZERO)
    assert joint.depth is None


@pytest.mark.parametrize("key", ["flare", "wedge_thin", "thickness", "set_back"])
def test_what_may_not_be_left_out(key: str) -> None:
    """The flare least of all: the 1" of the trade notes is from memory, and no default."""
    words = half_dovetail().model_dump(mode="json") | {"end": "west"}
    del words[key]
    with pytest.raises(ValidationError, match="Field required"):
        HalfDovetail.model_validate(words)


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"into": "tie"}, "through its own timber"),
        ({"flare": "0"}, "more than nothing"),
        ({"wedge_thin": "0"}, "more than nothing"),
        ({"depth": "0"}, "more than nothing"),
        ({"past": "-1"}, "not below zero"),
        ({"past": "1", "held_short": "1/4"}, "keep one of them"),
        ({"wedged": "bottom"}, "top"),
        ({"at": "4'"}, "Extra inputs"),
    ],
)
def test_what_is_refused(words: dict[str, object], says: str) -> None:
    """A record that could not be cut is refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        half_dovetail(**words)


@pytest.mark.parametrize(
    ("words", "beyond"),
    [({}, "0"), ({"past": "2"}, "2"), ({"held_short": "1/4"}, "-1/4"), ({"housing": "1/2"}, "0")],
)
def test_it_takes_all_the_wood_it_passes(words: dict[str, str], beyond: str) -> None:
    """And what it stands past it, or less what it is held short: the frame measures the post."""
    joint = half_dovetail(**words)
    housing = length(words.get("housing", "0"))
    bearing = Bearing("tie", Direction.WEST, "post", housing, "tie-post-mortise")
    assert joint.bearings() == (bearing,)
    assert joint.extensions() == (
        Extension("tie", Direction.WEST, length(beyond), through=bearing),
    )
    assert joint.timbers() == {"timber": "tie", "into": "post"}


def test_a_level_tie_through_a_standing_post_is_sound() -> None:
    """Both of them with a place."""
    assert faults(half_dovetail(), TIE, POST) == []


def test_a_lying_timber_receives_none() -> None:
    """Through a beam there would be no room above for the wedge's mortise to stand in grain."""
    beam = timber(
        "post",
        first_face="up",
        second_face="west",
        reference_end="south",
        at={"east": "0", "up": "8'"},
    )
    ((key, problem),) = faults(half_dovetail(), TIE, beam)
    assert key == "into"
    assert "lies level" in problem


def test_an_end_it_does_not_have() -> None:
    """As for every joint."""
    ((key, _),) = faults(half_dovetail(end="north"), TIE, POST)
    assert key == "end"
