"""Every finding of a head at a ridge: just triggered, and just not (law 7: never clamp)."""

import pytest

from benchmate.joinery.rafter.ridge.findings import CHECKS, told
from benchmate.measure.printing import Style, Tape
from benchmate.model.findings import Severity
from tests.builders import codes, real
from tests.joinery.rafter.ridge.test_shape import ROOF, SQUARE, shape
from tests.joinery.rafter.roofs import Roof

TAPE = Tape(style=Style.INCHES)


def found(roof: Roof = ROOF, **words: object) -> tuple[str, ...]:
    """The codes told of a head."""
    return codes(told(shape(roof, **words), TAPE))  # type: ignore[arg-type]


def at(up: str, **words: object) -> Roof:
    """A ridge whose top lies so high; the rafter's top edge comes to 172-1/4" at its face."""
    return Roof(rise="9", own={"ridge": {"at": {"east": "8' 1", "up": up}} | words})


def test_a_sound_head_has_no_finding() -> None:
    """Let in or not."""
    assert found() == ()
    assert found(let_in="3/4") == ()


@pytest.mark.parametrize(("up", "told"), [("164-49/64", False), ("164-3/4", True)])
def test_a_ridge_below_the_head(up: str, *, told: bool) -> None:
    """The plumb cut ends 164-3/4" high: a ridge that comes up to there is missed."""
    assert ("ridge-missed" in found(at(up))) is told


@pytest.mark.parametrize(("up", "told"), [("182-15/64", ()), ("182-1/4", ("ridge-missed",))])
def test_a_ridge_above_the_head(up: str, told: tuple[str, ...]) -> None:
    """A ridge 10" deep that starts where the top edge ends is missed too."""
    assert tuple(code for code in found(at(up)) if code == "ridge-missed") == told


@pytest.mark.parametrize(("up", "told"), [("174-3/4", ()), ("174-49/64", ("ridge-shallow",))])
def test_a_plumb_cut_that_hangs_below(up: str, told: tuple[str, ...]) -> None:
    """A ridge that ends 164-3/4" high holds all of it; 1/64" higher, not all."""
    assert found(at(up)) == told


def test_a_plumb_cut_that_hangs_below_is_only_looked_at() -> None:
    """It can be cut; whether it may be is for the engineer."""
    (finding,) = told(shape(at("175")), TAPE)
    assert (finding.severity, "engineer" in finding.remedy) == (Severity.LOOK, True)


@pytest.mark.parametrize(("deep", "told"), [("1-63/64", ()), ("2", ("ridge-through",))])
def test_a_housing_through_the_ridge(deep: str, told: tuple[str, ...]) -> None:
    """2" let into a ridge 2" thick leaves nothing."""
    assert found(let_in=deep) == told


@pytest.mark.parametrize(("up", "told"), [("175-19/64", False), ("175-5/16", True)])
def test_a_seat_under_the_ridge(up: str, *, told: bool) -> None:
    """Let in 3/4" the seat lies 165-5/16" high, and the ridge has to reach below it."""
    assert ("ridge-no-seat" in found(at(up), let_in="3/4")) is told


@pytest.mark.parametrize(("deep", "told"), [("9-63/64", False), ("10", True)])
def test_a_seat_out_of_the_top_edge(deep: str, *, told: bool) -> None:
    """6" at 3-4-5 is 10" level: a seat as long leaves nothing over it."""
    roof = Roof(rise="9", ridge=("20", "12"))
    assert ("ridge-seat-too-long" in found(roof, let_in=deep)) is told


@pytest.mark.parametrize(("across", "told"), [("92", ()), ("92-1/64", ("ridge-off-the-end",))])
def test_a_rafter_past_the_end_of_its_ridge(across: str, told: tuple[str, ...]) -> None:
    """The ridge ends 8 ft on; a rafter 4" wide may stand 92" along at the most."""
    assert found(Roof(rise="9", across=across)) == told


def test_a_stick_under_its_inner_timber() -> None:
    """By square rule neither stick may be smaller than the timber inside it."""
    roof = Roof(rise="9", own=SQUARE)
    thin = {"ridge": real({"all": {"second": "1-63/64"}})}
    assert found(roof) == ()
    assert "stick-under-inner" in found(roof, sticks=thin)
    assert "stick-under-inner" in found(roof, sticks={"rafter": real({"all": {"first": "5"}})})


def test_every_check_says_what_and_why() -> None:
    """Each is explained, and gives a remedy."""
    assert all(check.__doc__ and "Remedy" in check.__doc__ for check in CHECKS)
