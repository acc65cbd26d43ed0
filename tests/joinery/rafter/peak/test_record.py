"""The stored parameters of a peak."""

import pytest
from pydantic import ValidationError

from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.work import Extension
from tests.builders import length
from tests.joinery.rafter.roofs import Roof, peak


def test_the_parts_of_a_pair() -> None:
    """Alike where butted or lapped; a tongue and a fork where bridled."""
    assert peak(cut="butt").parts == ("head-cut", "head-cut")
    assert peak().parts == ("head-lap", "head-lap")
    assert peak(cut="bridle", thickness="1-1/4").parts == ("head-tongue", "head-fork")
    assert peak().timbers() == {"timber": "rafter", "into": "mate"}


def test_lapped_each_runs_on_to_the_top_of_the_other() -> None:
    """Butted both end plumb, and need nothing beyond the peak."""
    up = Direction.UP
    assert peak().extensions() == (
        Extension("rafter", up, ZERO, shape="parallel", place="head-lap", along="mate"),
        Extension("mate", up, ZERO, shape="parallel", place="head-lap", along="rafter"),
    )
    assert [(each.shape, each.along) for each in peak(cut="butt").extensions()] == [
        ("plumb", "")
    ] * 2


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ({"cut": "bridle"}, "how thick its tongue is"),
        ({"cut": "half lap", "thickness": "2"}, "has no tongue"),
        ({"cut": "butt", "set_back": "1"}, "has no tongue"),
        ({"cut": "mitre"}, "Input should be"),
        ({"into": "rafter"}, "cannot meet itself"),
    ],
)
def test_a_tongue_is_said_where_there_is_one(words: dict[str, str], said: str) -> None:
    """Its thickness has no default: about a third is only a memory (trade notes 2.7, MEM)."""
    with pytest.raises(ValidationError, match=said):
        peak(**words)


def test_what_cannot_be_is_told() -> None:
    """A pair has to rise towards one another, and both have to be rafters."""
    east, west = Roof().raking(), Roof(heading="west").raking("mate")
    assert peak().faults({"rafter": east, "mate": west}) == ()
    (same,) = peak().faults({"rafter": east, "mate": Roof().raking("mate")})
    assert (same.key, "towards one another" in same.problem) == ("into", True)
    (crossed,) = peak().faults({"rafter": east, "mate": Roof(heading="north").raking("mate")})
    assert crossed.key == "into"
    plates = {"rafter": Roof().on_plate(), "mate": Roof().on_plate()}
    assert [fault.key for fault in peak().faults(plates)] == ["timber", "into"]
    assert peak(cut="bridle", thickness="1-1/4", set_back="1").set_back == length("1")
