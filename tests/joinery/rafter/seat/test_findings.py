"""Every finding of a seat: just triggered, and just not (law 7: never clamp)."""

from collections.abc import Mapping

import pytest

from benchmate.frame.frame import Real
from benchmate.joinery.rafter.seat.findings import CHECKS, told
from benchmate.measure.length import Length
from benchmate.measure.printing import Style, Tape
from benchmate.model.findings import Severity
from benchmate.model.work import Work
from tests.builders import codes, real
from tests.joinery.rafter.roofs import Roof, tail
from tests.joinery.rafter.seat.test_shape import decimal, shape

TAPE = Tape(style=Style.INCHES)
FINE = Roof(rafter="8 x 4", over="8-3/4")
"""At 12 in 12, 11.314" of plumb depth: 2.56" of seat, a notch of 1.81" or 23 in 100."""


def found(
    roof: Roof, *others: Work, sticks: Mapping[str, Real] | None = None, **words: object
) -> tuple[str, ...]:
    """The codes told of a seat."""
    return codes(told(shape(roof, *others, sticks=sticks, **words), TAPE))


def over(size: float | str | Length) -> Roof:
    """The fine roof with another height above plate."""
    return Roof(rafter="8 x 4", over=decimal(size) if isinstance(size, float) else size)


def test_a_sound_seat_has_no_finding() -> None:
    """Let in or not, stepped or not, with a tail or without."""
    assert found(FINE) == ()
    assert found(FINE, let_in="1") == ()
    assert found(Roof(rafter="8 x 4", over="8-3/4"), let_in="1", step="1") == ()
    assert found(Roof(rafter="8 x 4", over="8-3/4", out="0"), tail()) == ()


@pytest.mark.parametrize(("high", "told"), [("11-5/16", ()), ("11-21/64", ("seat-above",))])
def test_a_rafter_that_passes_above(high: str, told: tuple[str, ...]) -> None:
    """Its plumb depth is 11.3137": 11-5/16" still leaves a hair of seat, 1/64" more none."""
    assert found(over(high)) == told


@pytest.mark.parametrize(("high", "below"), [("1/64", False), ("0", True)])
def test_a_rafter_that_passes_below(high: str, *, below: bool) -> None:
    """With its top edge on the plate the notch would cut it in two."""
    assert ("seat-below" in found(over(high))) is below


def test_a_third_of_the_depth() -> None:
    """Newman-65: at 12/12 a 6" rafter may have a 2.828" seat; 3.5" takes 41 % (trade notes 7.4)."""
    assert found(Roof(over=decimal(8.4853 - 2.828))) == ()
    assert found(Roof(over=decimal(8.4853 - 2.829))) == ("seat-notch-deep",)
    (finding,) = told(shape(Roof(over=decimal(4.985))), TAPE)
    assert "41 %" in finding.message
    assert finding.severity is Severity.LOOK


def test_two_inches_above_the_seat() -> None:
    """NAV-63: at 12 in 12, 2.829" plumb are 2" square; 2.828" are a little less."""
    roofs = [Roof(rafter="4 x 4", over=decimal(size)) for size in (2.829, 2.828)]
    assert [("seat-little-left" in found(roof)) for roof in roofs] == [False, True]


@pytest.mark.parametrize(("cut", "told"), [("plumb", ()), ("level", ("seat-no-plumb",))])
def test_a_seat_without_a_plumb_line(cut: str, told: tuple[str, ...]) -> None:
    """A rafter that ends at its plate has to be cut plumb there."""
    roof = Roof(rafter="8 x 4", over="8-3/4", out="0")
    assert found(roof, tail(cut=cut)) == told
    assert found(roof) == ("seat-no-plumb",), "square is not plumb either"


@pytest.mark.parametrize(("across", "told"), [("92", ()), ("92-1/64", ("seat-off-the-end",))])
def test_a_rafter_past_the_end_of_its_plate(across: str, told: tuple[str, ...]) -> None:
    """The plate ends 8 ft on; a rafter 4" wide may stand 92" along at the most."""
    assert found(Roof(rafter="8 x 4", over="8-3/4", across=across)) == told


@pytest.mark.parametrize(("step", "told"), [("5-63/64", False), ("6", True)])
def test_a_step_that_leaves_no_room(step: str, *, told: bool) -> None:
    """A plate 6" wide has no room for a seat behind a step of 6"."""
    roof = Roof(rafter="8 x 4", over="4")
    assert ("seat-no-room" in found(roof, let_in="1", step=step)) is told


@pytest.mark.parametrize(("deep", "told"), [("7-63/64", ()), ("8", ("seat-through",))])
def test_a_recess_through_its_plate(deep: str, told: tuple[str, ...]) -> None:
    """8" let into a plate 8" deep leaves nothing."""
    roof = Roof(rafter="16 x 4", over="14")
    assert tuple(code for code in found(roof, let_in=deep) if code == "seat-through") == told


@pytest.mark.parametrize(("wide", "told"), [("2-37/64", ()), ("2-9/16", ("seat-past-far-face",))])
def test_a_seat_past_the_far_face(wide: str, told: tuple[str, ...]) -> None:
    """A seat of 2.5637" on a plate 2-37/64" wide, and on one 1/64" less."""
    assert found(Roof(rafter="8 x 4", over="8-3/4", plate=("8", wide))) == told


def test_a_stick_under_its_inner_timber() -> None:
    """By square rule neither stick may be smaller than the timber inside it."""
    own = {
        "plate": {"rule": "square", "inner": "8 x 6"},
        "rafter": {"rule": "square", "inner": "8 x 4"},
    }
    roof = Roof(rafter="8 x 4", over="8-3/4", own=own)
    assert found(roof) == ()
    small = real({"all": {"first": "7-63/64"}})
    assert found(roof, sticks={"rafter": small}) == ("stick-under-inner",)
    assert found(roof, sticks={"plate": small}) == ("stick-under-inner",)


def test_every_check_says_what_and_why() -> None:
    """Each is explained, and gives a remedy."""
    assert all(check.__doc__ and "Remedy" in check.__doc__ for check in CHECKS)
