"""Every finding of a tail: just triggered, and just not (law 7: never clamp)."""

import pytest

from benchmate.joinery.rafter.tail.findings import CHECKS, told
from benchmate.measure.printing import Style, Tape
from tests.builders import codes
from tests.joinery.rafter.tail.test_shape import shape

TAPE = Tape(style=Style.INCHES)


def found(deep: str | None = None, **words: object) -> tuple[str, ...]:
    """The codes told of a tail."""
    return codes(told(shape(deep=deep, **words), TAPE))  # type: ignore[arg-type]


def test_a_sound_tail_has_no_finding() -> None:
    """However it is cut."""
    assert found() == found(cut="level") == found(cut="plumb and level", level="3") == ()


@pytest.mark.parametrize(("level", "told"), [("9-63/64", ()), ("10", ("tail-level-too-long",))])
def test_a_level_cut_out_of_the_top_edge(level: str, told: tuple[str, ...]) -> None:
    """At 3-4-5 a rafter 6" deep is 10" level all through."""
    assert found(cut="plumb and level", level=level) == told


@pytest.mark.parametrize(("deep", "told"), [("5-29/32", ()), ("5-57/64", ("tail-no-level",))])
def test_a_stick_too_shallow_for_its_level_cut(deep: str, told: tuple[str, ...]) -> None:
    """11/64" of level cut is gone once the stick is 3/5 of that under its drawn 6"."""
    assert found(deep, cut="plumb and level", level="11/64") == told


def test_every_check_says_what_and_why() -> None:
    """Each is explained, and gives a remedy."""
    assert all(check.__doc__ and "Remedy" in check.__doc__ for check in CHECKS)
