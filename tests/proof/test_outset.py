"""Frames set out from their driving dimensions, raised whole with the geometry kernel.

Nothing overlaps, and no line of any timber is told otherwise than it is cut.
"""

import pytest
from hypothesis import HealthCheck, assume, given, settings

from benchmate.outset.answering import fill
from tests.outset.frames import JOISTED, LAPPED, METRIC, PEGGED, SMALL, SQUARE, frame, sensible
from tests.proof.sizes import UNSHRUNK
from tests.proof.test_cart_house import wrong_with


@pytest.mark.parametrize(
    "typed",
    [
        {},
        LAPPED | JOISTED | PEGGED | {"corners": "half-lapped", "roof": "on a ridge"},
        LAPPED | SQUARE | PEGGED | SMALL,
        METRIC | SQUARE | {"roof": "bridled at the peak", "overhang": "0"},
        {"length": "50'", "bays": "4", "longest": "34'", "roof": "butted at the peak"},
    ],
)
def test_a_frame_as_suggested_stands(typed: dict[str, str]) -> None:
    """By either rule, ties tenoned and lapped, plates in one stick and in two."""
    assert wrong_with(frame(typed)) == []


@given(typed=sensible())
@settings(
    max_examples=3,
    deadline=None,
    phases=UNSHRUNK,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
def test_any_sensible_frame_stands(typed: dict[str, str]) -> None:
    """Whatever is answered, as long as nothing is refused while typing."""
    assume(not fill(typed).faults)
    assert wrong_with(frame(typed)) == []
