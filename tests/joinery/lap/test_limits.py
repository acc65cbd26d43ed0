"""How far the lines across a lap may be knifed."""

from typing import Any

import pytest

from benchmate.joinery.lap.limits import limits, slot_limit
from tests.joinery.lap.crossings import COGGED, DOVETAIL, both, crossed, steps

NORTH_SOUTH = "Knife the North face and the South face only from the"
BACKWARDS, FORWARDS = "South face and the North", "North face and the South"
"""Whichever of the two is the reference face comes first."""

OUTSIDE = "only outside the flank lines: the tail runs out to it."


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ({}, (f"{NORTH_SOUTH} underside to the lap line.",)),
        (
            {"side": "down", "tie_looks": (True, False)},
            (f"{NORTH_SOUTH} top face to the lap line.",),
        ),
        ({"ends": False}, (f"{NORTH_SOUTH} underside to the notch floor line.",)),
        ({"up": "6", "joint": {"share": "2"}}, ()),
        (
            DOVETAIL,
            (
                f"{NORTH_SOUTH} underside to the line of Plate's top face.",
                f"Knife the underside {OUTSIDE}",
            ),
        ),
        (
            {"up": "6", "joint": {"flare_far": "1"}},
            (
                "Knife the North face only from the underside to the lap line.",
                "Knife the South face only from the underside to the line of Plate's top face.",
            ),
        ),
        ({"joint": {"flare": "1"}}, (f"Knife the top face {OUTSIDE}",)),
        (COGGED, ()),
    ],
    ids=["end", "under", "crossing", "whole", "tail", "half tail", "flush tail", "slot"],
)
def test_a_knife_stops_where_the_wood_stays(words: dict[str, Any], told: tuple[str, ...]) -> None:
    """At the bed, at the other timber's face, and beside a tail; nowhere where nothing is cut."""
    found = (each.replace(BACKWARDS, FORWARDS) for each in limits(both(**words)[0]))
    assert tuple(found) == told


def test_a_slot_s_lines_stop_at_its_roof() -> None:
    """The bed's line is not as deep: a knife that stopped there would leave part of the side."""
    tie, plate = both(**COGGED)
    assert slot_limit(tie) == "The slot's lines stop at the line of Plate's top face."
    assert (slot_limit(plate), slot_limit(both()[0])) == ("", "")
    (knife,) = (step for name, step in steps(crossed(**COGGED), "tie").items() if name == "knife")
    assert slot_limit(tie) in knife.caution
    lines = steps(crossed(**COGGED), "tie")
    assert {lines[f"slot-{end}"].caution for end in ("start", "finish")} == {slot_limit(tie)}


def test_the_other_timber_is_knifed_down_to_its_floor() -> None:
    """Its own sides, from the face that is cut."""
    _, plate = both(**DOVETAIL)
    assert limits(plate) == (
        "Knife the East face and the West face only from the top face to the notch floor line.",
    )
