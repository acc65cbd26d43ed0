"""Areas as they are shown."""

import pytest

from benchmate.measure.area import area_text
from tests.builders import length


@pytest.mark.parametrize(
    ("one", "other", "shown"),
    [
        ("5", "2", "10 sq in"),
        ("3-1/2", "2", "7 sq in"),
        ("3-1/2", "1-1/2", "5.3 sq in"),
        ("1/2", "1/8", "0.1 sq in"),
        ("0", "4", "0 sq in"),
        ("-2", "3", "-6 sq in"),
        ("-1/8", "1/8", "0 sq in"),
    ],
)
def test_an_area_in_square_inches(one: str, other: str, shown: str) -> None:
    """To a tenth, a half going up: a 5" joist in a 2" pocket bears on 10 sq in (FF-joist)."""
    assert area_text(length(one), length(other), metric=False) == shown


def test_an_area_on_a_metric_tape() -> None:
    """In square centimetres."""
    assert area_text(length("90 mm"), length("55 mm"), metric=True) == "49.5 sq cm"
    assert area_text(length("100 mm"), length("60 mm"), metric=True) == "60 sq cm"
