"""What names of lengths, levels and sections come to."""

from collections import Counter
from typing import Any

import pytest

from benchmate.frame.levels import LevelError, Levels, section_names
from benchmate.measure.length import Length
from benchmate.measure.section import Section, read_section
from benchmate.measure.sums import Sum, read_sum
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


class Counted(dict[str, Sum]):
    """Sums that count how often each is looked up to be worked out."""

    def __init__(self, sums: dict[str, Sum]) -> None:
        super().__init__(sums)
        self.asked: Counter[str] = Counter()

    def get(self, name: str, default: Any = None) -> Any:  # noqa: ANN401 - as in a dict
        """As in a dict, counted."""
        self.asked[name] += 1
        return super().get(name, default)


FLOORS = {
    "sill top": "0",
    "deck": "1-1/4",
    "floor top": "sill top + joist depth + deck",
    "bench": "floor top + 3'",
    "plate": "sill top + 8'",
    "eaves": "plate + rafter depth",
}
SECTIONS = {"joist": read_section("6 x 3"), "rafter": read_section("5 x 3")}


def _after(
    changes: dict[str, str], sections: dict[str, Section] | None = None
) -> tuple[dict[str, Length], set[str]]:
    """What all names come to once some have changed, and which were worked out for that."""
    before = Levels({name: read_sum(text) for name, text in FLOORS.items()}, SECTIONS)
    for name in FLOORS:
        before.of(name)
    texts = {**FLOORS, **changes}
    sums = Counted({name: read_sum(text) for name, text in texts.items() if text})
    levels = Levels(sums, SECTIONS if sections is None else sections)
    levels.carry_over(before)
    sums.asked.clear()
    values = {name: levels.of(name) for name in sums}
    return values, set(sums.asked)


@pytest.mark.parametrize(
    ("changes", "sections", "worked_out"),
    [
        ({}, None, set()),
        ({"deck": "1-1/2"}, None, {"deck", "floor top", "bench"}),
        ({"sill top": "1"}, None, {"sill top", "floor top", "bench", "plate", "eaves"}),
        ({"eaves": "plate + 1"}, None, {"eaves"}),
        ({"bench": "deck"}, None, {"bench"}),
        ({"ridge": "eaves + 4'"}, None, {"ridge"}),
        ({"bench": ""}, None, set()),
        (
            {},
            {"joist": read_section("7 x 3"), "rafter": SECTIONS["rafter"]},
            {"floor top", "bench"},
        ),
        ({}, {**SECTIONS, "rafter": read_section("5 x 2")}, set()),
    ],
)
def test_only_what_follows_from_a_changed_name_is_worked_out_again(
    changes: dict[str, str], sections: dict[str, Section] | None, worked_out: set[str]
) -> None:
    """Change one and everything that follows from it is new, and only that is recomputed."""
    values, asked = _after(changes, sections)
    texts = {name: text for name, text in {**FLOORS, **changes}.items() if text}
    fresh = Levels({n: read_sum(t) for n, t in texts.items()}, sections or SECTIONS)
    assert values == {name: fresh.of(name) for name in texts}
    assert asked == worked_out


def test_what_was_never_asked_for_is_not_carried_over() -> None:
    """There is nothing to carry, and it is worked out when it is asked for."""
    before, after = (_levels(JOIST, deck="1", top="joist depth + deck") for _ in range(2))
    after.carry_over(before)
    assert "top" not in after.known()
    assert after.of("top") == length("7")


def test_a_name_that_is_now_a_section_is_not_carried_over() -> None:
    """The side of a section counts, whatever stood under that name before."""
    before = _levels(joist_depth="9")
    before.of("joist depth")
    after = _levels(JOIST)
    after.carry_over(before)
    assert after.of("joist depth") == length("6")


def test_a_circle_made_by_the_change_is_still_found() -> None:
    """What is carried over hides no circle."""
    before = _levels(a="b + 1", b="2")
    before.of("a")
    after = _levels(a="b + 1", b="a")
    after.carry_over(before)
    with pytest.raises(LevelError, match="circle"):
        after.of("a")
