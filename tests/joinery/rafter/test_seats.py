"""The seats along a rafter."""

from benchmate.joinery.rafter.raking import rafter
from benchmate.joinery.rafter.seats import heels
from benchmate.measure.length import Length
from tests.builders import length
from tests.joinery.rafter.roofs import Roof, built, seat, shed


def test_the_heels_from_the_foot_up() -> None:
    """Of a shed roof's two, whatever order the file has them in."""
    frame = shed(Roof(run="12'"), seat(id="high", into="upper"), seat())
    found = heels(rafter(frame, "rafter"), frame)
    assert [Length(mark.ahead) for mark in found] == [length("0"), length("10' 6")]
    assert [mark.words for mark in found] == ["the heel line on Plate", "the heel line on Upper"]


def test_a_rafter_without_a_seat() -> None:
    """It has no heel."""
    frame = built(Roof())
    assert heels(rafter(frame, "rafter"), frame) == []
