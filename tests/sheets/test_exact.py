"""Cells and records of a table file."""

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import Length
from benchmate.sheets.exact import cell, exact_mm, record


@pytest.mark.parametrize(
    ("nm", "told"),
    [(0, "0"), (2_235_200_000, "2235.2"), (-396_875, "-0.396875"), (1, "0.000001")],
)
def test_millimetres_are_exact(nm: int, told: str) -> None:
    """A length in millimetres has every digit it needs and none more."""
    assert exact_mm(Length(nm)) == told


@pytest.mark.parametrize("lead", ["=", "+", "-", "@", "\t"])
def test_no_cell_is_a_formula(lead: str) -> None:
    """A text that a spreadsheet would work out is told to be text."""
    assert cell(f"{lead}1+2").lstrip('"').startswith("'")


def test_a_number_below_zero_stays_a_number() -> None:
    """Exact millimetres may be below zero, and are no formula."""
    assert cell("-12.7") == "-12.7"
    assert cell("-1-2") == "'-1-2"


@given(st.lists(st.text(st.characters(exclude_categories=["Cs", "Cc"])), min_size=2))
def test_a_record_is_read_back_as_it_was_written(texts: list[str]) -> None:
    """Whatever names hold, a reader of RFC 4180 finds the same cells, but for the guard."""
    (found,) = csv.reader(io.StringIO(record(texts), newline=""))
    guarded = [
        read.removeprefix("'") if read != text else read
        for read, text in zip(found, texts, strict=True)
    ]
    assert guarded == texts


def test_a_record_ends_as_the_standard_says() -> None:
    """RFC 4180, section 2: a record ends with CR and LF, and quotes are doubled."""
    assert record(('7"', "a,b")) == '"7""","a,b"\r\n'
