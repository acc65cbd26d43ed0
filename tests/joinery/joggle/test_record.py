"""What a joggle's record takes, refuses and answers."""

import pytest
from pydantic import ValidationError

from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.work import Bearing, Extension
from tests.builders import length, timber
from tests.joinery.joggle.trusses import joggle_joint, truss


def test_it_joins_the_timber_that_thrusts_and_one_other() -> None:
    """Both are told by key, and the notch by the joint."""
    assert joggle_joint().timbers() == {"timber": "rafter", "into": "tie"}
    assert joggle_joint().mortise == "heel-notch"


def test_where_nothing_is_said_the_abutment_halves_the_angle() -> None:
    """Trade notes 2.7 (Strut, Rivington-strut): that or square to the face, never to the strut."""
    assert joggle_joint().abutment == "bisecting"


@pytest.mark.parametrize(
    "wrong",
    [
        {"into": "rafter"},
        {"notch": "0"},
        {"length": "0"},
        {"thickness": "0"},
        {"abutment": "plumb"},
        {"relish": "12"},
    ],
)
def test_what_cannot_be_is_told_where_it_is_read(wrong: dict[str, str]) -> None:
    """Its own timber, no notch, no tenon, an unknown way, and no law for relish."""
    with pytest.raises(ValidationError):
        joggle_joint(**wrong)


def test_its_end_goes_in_by_notch_and_tenon_and_stops_at_its_abutment() -> None:
    """1-1/2" and 2" square to the face; its reference edge bears at the face itself."""
    joint = joggle_joint(abutment="square to the face")
    assert joint.extensions() == (
        Extension(
            "rafter",
            Direction.DOWN,
            length("3-1/2"),
            shape="parallel",
            front="square to the face",
        ),
    )
    assert joint.bearings() == (Bearing("rafter", Direction.DOWN, "tie", ZERO, "heel-notch"),)


@pytest.mark.parametrize(
    ("words", "key"),
    [
        ({}, None),
        ({"end": "head", "into": "post"}, None),
        ({"timber": "strut", "end": "head", "into": "rafter"}, None),
        ({"timber": "tie", "end": "west", "into": "post"}, "timber"),
        ({"end": "west"}, "end"),
        ({"into": "loose"}, "into"),
        ({"into": "purlin"}, "into"),
    ],
)
def test_what_it_can_stand_between(words: dict[str, str], key: str | None) -> None:
    """A raking end in a level, upright or raking timber of its plane: nothing else."""
    frame = truss()
    timbers = {name: frame.timber(name) for name in ("tie", "post", "rafter", "strut")}
    timbers["loose"] = timber("loose")
    timbers["purlin"] = timber(
        "purlin",
        first_face="up",
        second_face="east",
        reference_end="south",
        length="9'",
        at={"east": "0", "up": "0"},
        reference_end_at="0",
    )
    found = joggle_joint(**words).faults(timbers)
    assert [fault.key for fault in found] == ([] if key is None else [key])
