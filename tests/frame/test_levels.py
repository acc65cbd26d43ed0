"""What names of lengths, levels and sections come to."""

import pytest

from benchmate.frame.levels import LevelError, Levels, section_names
from benchmate.measure.section import Section, read_section
from benchmate.measure.sums import read_sum
from tests.builders import length

JOIST = {"joist": read_section("6 x 3")}


def _levels(sections: dict[str, Section] | None = None, /, **sums: str) -> Levels:
    named = {name.replace("_", " "): read_sum(total) for name, total in sums.items()}
    return Levels(named, sections or {})


def test_the_reveal_above_a_floor() -> None:
    """Common practice, no source: joist 6" + deck 1-1/2" + reveal 8" is 15-1/2"."""
    levels = _levels(JOIST, deck="1-1/2", reveal="8", floor_top="joist depth + deck")
    assert levels.of("floor top") == length("7-1/2")
    assert levels.value(read_sum("floor top + reveal")) == length("15-1/2")


def test_a_section_gives_its_depth_and_its_width() -> None:
    """Depth is in from the first reference face, width in from the second."""
    assert section_names(JOIST) == {"joist depth": length("6"), "joist width": length("3")}
    assert _levels(JOIST).of("joist width") == length("3")


def test_levels_may_lie_below_zero() -> None:
    """A footing lies below the sill top, and its level says so."""
    assert _levels(footing="sill top - 1'", sill_top="4").of("footing") == length("-8")


@pytest.mark.parametrize(
    ("sums", "name", "chain", "circular"),
    [
        ({}, "deck", ("deck",), False),
        ({"a": "b + 1", "b": "joist depth"}, "joist depth", ("a", "b", "joist depth"), False),
        ({"a": "a"}, "a", ("a", "a"), True),
        ({"a": "1 + b", "b": "c - 2", "c": "b"}, "b", ("a", "b", "c", "b"), True),
    ],
)
def test_a_name_that_comes_to_nothing(
    sums: dict[str, str], name: str, chain: tuple[str, ...], circular: bool
) -> None:
    """The error names the culprit and the way that led to it."""
    with pytest.raises(LevelError) as caught:
        _levels(**sums).of(chain[0])
    error = caught.value
    assert (error.name, error.chain, error.circular) == (name, chain, circular)
    assert " → ".join(chain) in str(error)


def test_an_error_leaves_the_other_names_good() -> None:
    """A circle among some levels does not spoil the rest, and is found again when asked again."""
    levels = _levels(a="b", b="a", good="a bit + 1", a_bit="2")
    for _ in range(2):
        with pytest.raises(LevelError):
            levels.of("a")
        assert levels.of("good") == length("3")


def test_a_name_used_twice_is_no_circle() -> None:
    """Two ways to the same name are fine; only the way back is not."""
    assert _levels(a="b + c", b="c + 1", c="2").of("a") == length("5")


def test_a_very_long_chain_is_worked_out() -> None:
    """A thousand levels each on the one before come to their sum, not to a crash."""
    sums = {f"l{i}": read_sum(f"l{i - 1} + 1") for i in range(1, 1001)}
    assert Levels({"l0": read_sum("0")} | sums, {}).of("l1000") == length("1") * 1000
