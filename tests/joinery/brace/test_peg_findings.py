"""What cannot be of a brace's pegs: each check fires, and just does not."""

import pytest

from benchmate.joinery.brace.family import features
from benchmate.joinery.brace.record import BraceJoint
from benchmate.model.findings import Severity
from tests.builders import codes
from tests.joinery.brace.bays import PEG, bay


def _told(words: dict[str, object], **joint: object) -> tuple[str, ...]:
    """What is told of the pegs at the foot; what stops them is told on both timbers."""
    frame = bay(joint={"pegs": {**PEG, **words}, **joint})
    work = next(work for work in frame.project.works if isinstance(work, BraceJoint))
    *_, own, other = features(work, frame)
    stops = [found for found in own.findings if found.severity is Severity.STOP]
    assert [found.code for found in stops] == [
        found.code for found in other.findings if found.severity is Severity.STOP
    ]
    assert all(found.timber == other.timber for found in other.findings)
    return codes(other.findings)


def test_pegs_that_can_be_have_nothing_told() -> None:
    """One drawn peg, and two of them."""
    assert _told({}) == ()
    assert _told({"count": 2, "spacing": "1-1/2"}) == ()


@pytest.mark.parametrize(
    ("words", "code"),
    [
        ({"from_shoulder": "3-3/4"}, "peg-past-end"),
        ({"from_shoulder": "3-47/64"}, None),
        ({"from_shoulder": "31/64"}, "peg-past-shoulder"),
        ({"from_shoulder": "1/2"}, None),
        ({"from_edge": "3/8"}, "brace-peg-at-nose"),
        ({"from_edge": "25/64"}, None),
        ({"draw": "17/32", "from_shoulder": "2"}, "peg-draw-too-large"),
        ({"draw": "33/64", "from_shoulder": "2"}, None),
        ({"count": 2, "spacing": "3/4"}, "peg-holes-meet"),
        ({"count": 2, "spacing": "49/64"}, None),
        ({"blind_depth": "2-63/64"}, "peg-blind-short"),
        ({"blind_depth": "3"}, None),
        ({"blind_depth": "8"}, "peg-blind-through"),
        ({"blind_depth": "7-63/64"}, None),
        ({"from_edge": "6"}, "peg-off-timber"),
        ({"from_edge": "5-7/8"}, None),
    ],
)
def test_what_cannot_be(words: dict[str, object], code: str | None) -> None:
    """A sixty-fourth either way, or two: 4" of tenon, 1-1/2" thick, a 6" brace at 45 degrees.

    The hole 6-1/8" from the nose and 1-7/8" past the face lies 5.657" in, 0.343" from the short
    edge: less than its half. At 6" it is 0.431". A draw of 17/32" both ways is 0.751" in all.
    """
    assert _told(words) == (() if code is None else (code,))


def test_what_stops_the_joint_stops_its_pegs() -> None:
    """A far cheek in the air leaves nothing to bore."""
    assert _told({}, set_back="3") == ("brace-cheek-outside",)
