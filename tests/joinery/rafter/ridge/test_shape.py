"""Where a rafter's head lies at its ridge."""

from collections.abc import Mapping

import pytest

from benchmate.frame.flats import along_at
from benchmate.frame.frame import Real
from benchmate.joinery.rafter.ridge.shape import HeadShape, head_shape
from benchmate.measure.length import ZERO, Length
from benchmate.model.solids import Axis
from tests.builders import length, real
from tests.joinery.rafter.roofs import Roof, built, ridge

ROOF = Roof(rise="9", ridge=("10", "2"))
"""3-4-5, 6" deep: 7-1/2" of plumb cut."""

SQUARE = {
    "ridge": {"rule": "square", "inner": "10 x 2"},
    "rafter": {"rule": "square", "inner": "6 x 4"},
}


def shape(
    roof: Roof = ROOF, *, sticks: Mapping[str, Real] | None = None, **words: object
) -> HeadShape:
    """The head of a roof's rafter at its ridge."""
    joint = ridge(**words)
    return head_shape(joint, built(roof, joint, real=sticks))


@pytest.mark.parametrize(("thick", "half"), [("1-1/2", "3/4"), ("2", "1"), ("7", "3-1/2")])
def test_the_ridge_deduction(thick: str, half: str) -> None:
    """Half the ridge, level: 1-1/2" takes 3/4" (trade notes 7.5, row 28, NAV-65)."""
    found = shape(Roof(rise="9", ridge=("10", thick)))
    assert found.deduction == length(half)


def test_the_rafter_is_as_much_shorter_along_its_edge() -> None:
    """1" level at 3-4-5 is 1-1/4": from 12" before the wall to 8 ft, 11' 3" less that."""
    found = shape()
    assert abs((found.rafter.stick.body - length("11' 1-3/4")).nm) <= 1


def test_the_ridge_as_it_really_is_settles_the_length() -> None:
    """By mill rule a ridge measured from its far side and 1/4" over takes 1/4" of run more."""
    sticks = {"ridge": real({"top-housing": {"first": "10", "second": "2-1/4"}})}
    drawn, found = shape(), shape(sticks=sticks)
    assert found.deduction == length("1-1/4")
    assert abs((drawn.rafter.stick.body - found.rafter.stick.body - length("5/16")).nm) <= 1


def test_a_head_let_in() -> None:
    """3/4" deeper in; its seat lies 7-1/2" under the top, where the underside meets the cut."""
    found = shape(let_in="3/4")
    assert abs((found.rafter.stick.body - shape().rafter.stick.body - length("15/16")).nm) <= 1
    assert Length(found.highest - found.level) == length("7-1/2")
    assert found.recess == length("3/4")
    assert found.deduction == length("1"), "still to the face"


def test_the_planes_on_the_rafter() -> None:
    """Plumb where it bears and at the face, 3/4" level or 15/16" along the edge apart."""
    found = shape(let_in="3/4")
    axis = found.rafter.plumb
    gap = along_at(found.shoulder, axis, ZERO) - along_at(found.face, axis, ZERO)
    assert abs((gap - length("15/16")).nm) <= 1
    assert found.stop == found.face


def test_by_square_rule_the_rafter_goes_into_what_is_over() -> None:
    """1/2" over on the far side: the end goes in so deep, reduced on both far faces."""
    sticks = {
        "ridge": real({"all": {"first": "10", "second": "2-1/2"}}),
        "rafter": real({"all": {"first": "6-1/4", "second": "4-1/8"}}),
    }
    found = shape(Roof(rise="9", own=SQUARE), sticks=sticks)
    assert (found.deduction, found.recess) == (length("1"), length("1/2"))
    assert found.reduction.to == {Axis.FIRST: length("6"), Axis.SECOND: length("4")}
    assert found.stop.line == "reduction-stop"
    assert Length(found.highest - found.lowest) == length("7-7/8")


def test_behind_a_reference_face_only_the_side_is_reduced() -> None:
    """The seat takes more off the underside than the inner timber asks for."""
    sticks = {"rafter": real({"all": {"first": "6-1/4", "second": "4-1/8"}})}
    roof = Roof(rise="9", own=SQUARE, ridge_faces=("up", "out"))
    assert shape(roof, sticks=sticks, let_in="3/4").reduction.to == {Axis.SECOND: length("4")}
    assert shape(roof, sticks=sticks).reduction.to == {}
