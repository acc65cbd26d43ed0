"""Angles from rise and run."""

import pytest

from benchmate.measure.angle import angle_text, tenths

PITCHES = {
    2: "9.5°",
    4: "18.4°",
    6: "26.6°",
    7: "30.3°",
    8: "33.7°",
    9: "36.9°",
    12: "45°",
    13: "47.3°",
    16: "53.1°",
    18: "56.3°",
}
"""Level angles of a rise in 12, to a tenth: trade notes 7.2 [CALC], from 9.46 to 56.31 degrees."""


@pytest.mark.parametrize(("rise", "shown"), PITCHES.items())
def test_a_pitch_reads_as_its_angle(rise: int, shown: str) -> None:
    """A rise in a foot of run is the angle of the published table."""
    assert angle_text(tenths(rise, 12)) == shown


def test_the_ends_of_the_quadrant() -> None:
    """Nothing of rise is level and nothing of run is plumb."""
    assert (angle_text(tenths(0, 1)), angle_text(tenths(1, 0))) == ("0°", "90°")
