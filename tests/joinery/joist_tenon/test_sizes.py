"""Published sizes beside given ones."""

import pytest

from benchmate.joinery.joist_tenon.sizes import as_published, tusk_area
from benchmate.measure.printing import Graduation, Style, Tape
from tests.builders import length, real
from tests.floor import Floor
from tests.joinery.joist_tenon.floors import jointed
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon

NINE = Floor(beam="9 x 8", joist="9 x 4")


@pytest.mark.parametrize(
    ("size", "value", "rule"),
    [
        ("thickness", "1-1/2", "1/6 of the beam's depth"),
        ("tusk", "1-1/2", "1/6 of the joist's depth"),
        ("haunch", "1", "as far as the tusk is let in"),
        ("length", "4", "twice the tenon's own depth"),
    ],
)
def test_each_size_names_its_rule(size: str, value: str, rule: str) -> None:
    """A 9" joist in a 9" beam (trade.md 7.5 [CALC]); horn and length go by what is given."""
    shape, _ = jointed(tusk_tenon(thickness="2", tusk="1"), NINE).shapes
    (beside,) = as_published(shape, size)
    assert beside.value == length(value)
    assert beside.words == f"by an old handbook: about {rule}"


def test_a_soffit_tenon_has_none() -> None:
    """The rules are for tusk tenons."""
    shape, _ = jointed(soffit_tenon()).shapes
    assert as_published(shape, "thickness") == ()


def test_what_lies_under_the_tusk() -> None:
    """1" of tusk by the 4" that the joist is wide, or that it was cut to."""
    shape, _ = jointed(tusk_tenon(tusk="1"), NINE).shapes
    assert tusk_area(shape, Tape()) == "4 sq in of all that bears lies under it"
    made = {"joist": real({}, {"south-end-tenon": {"width": "3-1/2"}})}
    narrow, _ = jointed(tusk_tenon(tusk="1"), NINE.with_(real=made)).shapes
    assert tusk_area(narrow, Tape()).startswith("3.5 sq in")
    metric = Tape(style=Style.MM, graduation=Graduation.MM)
    assert tusk_area(shape, metric).startswith("25.8 sq cm")
