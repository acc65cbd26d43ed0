"""An end of a rafter is cut by one joint alone."""

from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.model.work import Work
from tests.builders import codes
from tests.joinery.rafter.roofs import Roof, built, pair, peak, ridge, seat, tail


def told(frame: Frame) -> list[str]:
    """The codes told of the rafter, feature by feature."""
    features = lay_out(frame, "rafter").features
    return sorted({code for feature in features for code in codes(feature.findings)})


def roof(*works: Work) -> Frame:
    """A rafter with these joints."""
    return built(Roof(ridge=("12", "2"), over="5-3/4"), *works)


def test_each_end_once_is_fine() -> None:
    """A tail, a seat and a ridge do not meet."""
    assert told(roof(tail(), seat(), ridge())) == []


def test_two_joints_at_one_head() -> None:
    """A tail at the head and a ridge there: only one of them can be right."""
    assert told(roof(ridge(), tail(id="high", end="head"))) == ["rafter-end-twice"]


def test_two_peaks_at_one_head() -> None:
    """A half lap and a bridle of the same pair stop each other."""
    works = (peak(), peak(id="again", cut="bridle", thickness="1-1/2"))
    assert "rafter-end-twice" in told(pair(Roof(), Roof(heading="west"), *works))
