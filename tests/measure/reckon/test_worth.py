"""A bare number is a number or a length, as it is wanted; all else is a length."""

from fractions import Fraction

import pytest

from benchmate.measure.length import NM_PER_INCH, NM_PER_MM
from benchmate.measure.reading import LengthError, Unit
from benchmate.measure.reckon.worth import Worth, as_length, read_worth


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("2", Fraction(2)),
        ("2.5", Fraction(5, 2)),
        (".5", Fraction(1, 2)),
        ("2/3", Fraction(2, 3)),
        ("7-1/2", Fraction(15, 2)),
        ("7 1/2", Fraction(15, 2)),
        ("7½", Fraction(15, 2)),
        ("⅔", Fraction(2, 3)),
        ("9/4", Fraction(9, 4)),
    ],
)
def test_a_bare_number(text: str, number: Fraction) -> None:
    """It has no unit yet, and any fraction will do."""
    worth = read_worth(text, Unit.INCH)
    assert worth == Worth(number, bare=True, text=text)


@pytest.mark.parametrize(
    ("text", "nm"),
    [
        ("7'", 84 * NM_PER_INCH),
        ('3/4"', 3 * NM_PER_INCH // 4),
        ("14' 3", 171 * NM_PER_INCH),
        ("190 mm", 190 * NM_PER_MM),
        ("84.666667 mm", 84_666_667),
    ],
)
def test_a_length_has_its_unit(text: str, nm: int) -> None:
    """Read as everywhere, and down to a nanometre as a stored length is."""
    assert read_worth(text, Unit.MM) == Worth(Fraction(nm))


@pytest.mark.parametrize(
    ("text", "column"),
    [("14' 3/2", 4), ("14'-12/2", 4), ("14 ft 3/3", 6), ("14\N{PRIME} 5/4", 4)],
)
def test_a_division_behind_feet_is_not_taken_for_inches(text: str, column: int) -> None:
    """14' 3/2 could be 14' 1-1/2 or 7' 1-1/2, so it is refused."""
    with pytest.raises(LengthError, match="inches or a division") as caught:
        read_worth(text, Unit.INCH)
    assert caught.value.column == column


@pytest.mark.parametrize("text", ["14' 1/2", "14' 3-1/2", "3/0", "7 5/4", "4x", ""])
def test_what_is_no_number_is_the_reader_s(text: str) -> None:
    """Read as a length everywhere is, and refused as there."""
    try:
        assert not read_worth(text, Unit.INCH).bare
    except LengthError as error:
        assert "inches or a division" not in error.problem  # noqa: PT017 - either way will do


def test_a_bare_number_is_a_length_in_the_project_s_unit() -> None:
    """Inches here, millimetres there."""
    seven = read_worth("7", Unit.INCH)
    assert as_length(seven, Unit.INCH) == 7 * NM_PER_INCH
    assert as_length(seven, Unit.MM) == 7 * NM_PER_MM
    assert as_length(Worth(Fraction(1, 3), bare=True), Unit.MM) == Fraction(NM_PER_MM, 3)
    assert as_length(Worth(Fraction(5)), Unit.INCH) == 5


@pytest.mark.parametrize(
    ("text", "unit"), [("1/3", Unit.INCH), ("7-1/2", Unit.MM), ("2401", Unit.INCH)]
)
def test_a_lone_number_has_to_be_a_length(text: str, unit: Unit) -> None:
    """A third of an inch, a fraction of a millimetre, a timber of 200 ft and more: as elsewhere."""
    with pytest.raises(LengthError):
        as_length(read_worth(text, unit), unit)
