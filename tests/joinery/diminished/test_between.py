"""Shoulder to shoulder, along the top and along the underside."""

import pytest

from benchmate.joinery.diminished.between import between
from benchmate.joinery.diminished.record import DiminishedTenon
from tests.builders import frame, length, tenon, timber
from tests.joinery.diminished.ledges import diminished, joint_in, ledge


def test_an_end_alone_adds_its_own_housing() -> None:
    """120" along the top, and 1" more along the underside."""
    built = ledge()
    assert [(each.value, each.words) for each in between(joint_in(built), built)] == [
        (length("120"), "shoulder to shoulder along the top"),
        (length("121"), "shoulder to shoulder along the underside"),
    ]


@pytest.mark.parametrize(
    ("other", "top", "under"),
    [
        ({"family": "diminished tenon", "housing": "3/4"}, "9' 4", "9' 5-3/4"),
        ({"family": "tenon", "housing": "3/4"}, "9' 4-3/4", "9' 5-3/4"),
        ({"family": "tenon"}, "9' 4", "9' 5"),
    ],
)
def test_both_housings_count_along_the_underside(
    other: dict[str, str], top: str, under: str
) -> None:
    """Trade notes 2.2: shoulder to shoulder is the clear span and both housings.

    8" posts 10 ft apart, outside to inside, leave 112" clear. A square housing counts along the top
    as well.
    """
    posts = (
        timber("post", section="8 x 8", at={"east": "0", "north": "0"}, reference_end_at="0"),
        timber("east", section="8 x 8", at={"east": "10'", "north": "0"}, reference_end_at="0"),
    )
    girt = timber(
        "girt",
        section="8 x 6",
        length=None,
        first_face="up",
        second_face="south",
        reference_end="west",
        at={"north": "0", "up": "4'"},
    )
    words = {"id": "girt-east", "timber": "girt", "end": "east", "into": "east", "length": "3"}
    make = diminished if other["family"] == "diminished tenon" else tenon
    built = frame(*posts, girt, diminished(), make(**words | other))
    found = between(joint_in(built), built)
    assert [each.value for each in found] == [length(top), length(under)]


def test_a_joint_of_another_timber_does_not_count() -> None:
    """A girt that itself receives a joist's end is no longer for it."""
    built = ledge()
    other = diminished(id="joist", timber="joist", end="east", into="girt")
    joined = built.project.model_copy(update={"works": (*built.project.works, other)})
    assert isinstance(other, DiminishedTenon)
    again = type(built)(joined, {})
    assert [each.value for each in between(joint_in(built), again)] == [
        length("120"),
        length("121"),
    ]
