"""What every joist's joint answers alike."""

from typing import Literal

import pytest
from pydantic import ValidationError

from benchmate.frame.level_end import NO_DROP, LevelEnd
from benchmate.model.project import Timber
from tests.builders import joist, sill, timber

JOIST, SILL, POST = joist(), sill(), timber("post")


class Plain(LevelEnd):
    """A joist's joint with nothing of its own."""

    family: Literal["plain"]


def plain(**words: object) -> Plain:
    """The joist's south end in the sill, 4' along it."""
    joint = {"id": "j", "family": "plain", "timber": "joist", "end": "south", "into": "sill"}
    return Plain.model_validate(joint | {"at": "4'"} | words)


def faults(joint: Plain, *timbers: Timber) -> list[str]:
    """The keys of the joint's faults beside these timbers."""
    return [fault.key for fault in joint.faults({each.id: each for each in timbers})]


def test_it_names_two_timbers_and_where_they_cross() -> None:
    """By key; the drop counts even where it is nothing."""
    joint = plain(at="line a + 2'", drop="deck")
    assert joint.timbers() == {"timber": "joist", "into": "sill"}
    assert {key: total.names() for key, total in joint.sums().items()} == {
        "drop": ("deck",),
        "at": ("line a",),
    }
    assert tuple(plain(at=None).sums()) == ("drop",)
    assert plain().drop == NO_DROP


def test_a_joist_does_not_bear_on_itself() -> None:
    """The message says what to do."""
    with pytest.raises(ValidationError, match="its own timber; name another"):
        plain(into="joist")


def test_both_lie_level_and_the_joist_is_measured_from_its_top() -> None:
    """Whichever of its reference faces that is."""
    assert faults(plain(), JOIST, SILL) == []
    assert faults(plain(), joist(first_face="west", second_face="up"), SILL) == []
    assert faults(plain(), joist(first_face="down"), SILL) == ["timber"]
    assert faults(plain(into="post"), JOIST, POST) == ["into"]
    assert faults(plain(timber="post", end="foot"), POST, SILL) == ["timber"]


def test_an_end_that_cannot_enter_is_told_first() -> None:
    """Before anything about which way it is measured."""
    turned = joist(first_face="down")
    assert faults(plain(end="west"), turned, SILL) == ["end"]
    assert faults(plain(at=None), turned, SILL) == ["at"]
    placed = (joist(at={"east": "4'", "up": "0"}), sill(at={"north": "0", "up": "0"}))
    assert faults(plain(drop="1"), *placed) == ["at", "drop"]
