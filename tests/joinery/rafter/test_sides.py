"""Where a rafter's sides come on the timber it crosses."""

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.rafter.raking import Rafter, rafter
from benchmate.joinery.rafter.sides import side_lines, width_awaited
from benchmate.model.directions import Face
from benchmate.model.feature import Line
from tests.builders import length, real
from tests.joinery.rafter.roofs import Roof, built, seat
from tests.joinery.rafter.test_lying import plate


def frame_of(over: Real | None = None, **own: str) -> Frame:
    """A seat with a rafter measured so, or said to be so."""
    return built(Roof(own={"rafter": own}), seat(), real={"rafter": over} if over else None)


def over_plate(frame: Frame) -> Rafter:
    """The rafter at its seat."""
    return rafter(frame, "rafter", "wall-notch")


def both(frame: Frame) -> tuple[Line, Line]:
    """The lines of both sides."""
    first, second = side_lines(plate(frame), over_plate(frame), (Face.FIRST,))
    return first, second


def test_the_two_lines() -> None:
    """4 ft along and 4" apart, struck on the faces given."""
    first, second = both(frame_of())
    assert (first.at, second.at) == (length("48"), length("52"))
    assert first.beside[0].value == length("4")
    assert first.faces == (Face.FIRST,)


def test_by_mill_rule_they_follow_the_rafter() -> None:
    """As wide as it was measured there, and they wait until it was."""
    frame = frame_of(real({"wall-notch": {"second": "4-1/8"}}))
    first, second = both(frame)
    assert second.at - first.at == length("4-1/8")
    assert "as it was measured" in first.why
    assert width_awaited(over_plate(frame), "wall-notch") == ()
    unmeasured = frame_of()
    assert "not been measured" in both(unmeasured)[0].why
    (waits,) = width_awaited(over_plate(unmeasured), "wall-notch")
    assert waits == ("rafter", "wall-notch/section")


def test_by_square_rule_they_hold() -> None:
    """As wide as the inner timber, whatever the stick, so nothing is waited for."""
    frame = frame_of(real({"all": {"second": "4-1/2"}}), rule="square", inner="6 x 4")
    first, second = both(frame)
    assert second.at - first.at == length("4")
    assert "inner timber" in first.why
    assert width_awaited(over_plate(frame), "wall-notch") == ()
