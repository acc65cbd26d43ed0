"""What every joint of two timbers answers alike."""

from typing import ClassVar, Literal

import pytest
from pydantic import ValidationError

from benchmate.model.two_timbers import EndAtTimber, TwoTimbers

JOINT = {"id": "j", "family": "plain", "timber": "tie", "end": "west", "into": "post"}


class Plain(EndAtTimber):
    """A joint with nothing of its own."""

    family: Literal["plain"]


class Halved(TwoTimbers):
    """A joint that says in its own words that a timber cannot meet itself."""

    itself: ClassVar[str] = "cannot halve itself"

    one: str
    other: str

    def timbers(self) -> dict[str, str]:
        """Both."""
        return {"one": self.one, "other": self.other}


def test_an_end_names_its_timber_and_the_one_that_receives_it() -> None:
    """By the keys of the file, the timber whose end it is first."""
    assert list(Plain.model_validate(JOINT).timbers().items()) == [
        ("timber", "tie"),
        ("into", "post"),
    ]


def test_the_keys_are_asked_for_in_the_order_they_are_written_in() -> None:
    """So the first thing told of a bad joint is the first one in the file."""
    assert tuple(Plain.model_fields) == ("id", "meets", "family", "timber", "end", "into")


def test_an_end_cannot_enter_its_own_timber() -> None:
    """Nor can any other joint be one of a timber with itself, each in its own words."""
    with pytest.raises(ValidationError, match="cannot enter its own timber; name another in into"):
        Plain.model_validate(JOINT | {"into": "tie"})
    with pytest.raises(ValidationError, match="cannot halve itself"):
        Halved.model_validate({"id": "j", "one": "tie", "other": "tie"})
    assert Halved.model_validate({"id": "j", "one": "tie", "other": "post"}).other == "post"
