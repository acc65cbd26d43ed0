"""Where a tail lies on the real tie, by hand-reckoned figures."""

from typing import Any

import pytest

from benchmate.frame.flats import deep_at
from benchmate.joinery.half_dovetail.shape import feature_id
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from tests.builders import length, real
from tests.joinery.half_dovetail.bents import SQUARE, bent, half_dovetail, tail_of


def test_it_is_called_after_its_end() -> None:
    """As every tenon is, so that what was measured there is found."""
    assert feature_id(half_dovetail()) == "west-end-tenon"


@pytest.mark.parametrize(
    ("words", "passed", "run", "long"),
    [
        ({}, "8", "8", "8"),
        ({"past": "2"}, "8", "8", "10"),
        ({"held_short": "1/4"}, "8", "7-3/4", "7-3/4"),
        ({"housing": "1/2"}, "7-1/2", "7-1/2", "7-1/2"),
        ({"real": {"post": real({"all": {"first": "8-1/4"}})}}, "8-1/4", "8-1/4", "8-1/4"),
        (
            {"post_first": "east", "real": {"post": real({"all": {"first": "7-7/8"}})}},
            "7-7/8",
            "7-7/8",
            "7-7/8",
        ),
        ({"own": SQUARE}, "7-1/2", "7-1/2", "7-1/2"),
        ({"own": SQUARE, "post_first": "east"}, "8", "8", "8"),
    ],
    ids=[
        "flush",
        "past",
        "short",
        "housed",
        "over",
        "under",
        "square rule, far entry",
        "square rule, near entry",
    ],
)
def test_it_passes_the_post_as_it_really_is(
    words: dict[str, Any], passed: str, run: str, long: str
) -> None:
    """The section at that joint (trade.md 2.1, Rogers-tenon), less the housing.

    By square rule a tie that enters the far face bears at the inner timber.
    """
    shape = tail_of(bent(**words))
    assert (shape.passed, shape.run, shape.length) == tuple(map(length, (passed, run, long)))
    assert shape.stick.far == shape.length


@pytest.mark.parametrize(
    ("words", "root", "tail"),
    [
        ({}, "7", "8"),
        ({"depth": "5"}, "5", "6"),
        ({"flare": "3/4"}, "7-1/4", "8"),
        ({"real": {"tie": real({"west-end-tenon": {"first": "8-1/4"}})}}, "7-1/4", "8-1/4"),
        (
            {"depth": "5", "real": {"tie": real({"west-end-tenon": {"first": "8-1/4"}})}},
            "5",
            "6",
        ),
        ({"own": SQUARE}, "6-1/2", "7-1/2"),
    ],
)
def test_it_is_a_flare_deeper_at_its_end(words: dict[str, Any], root: str, tail: str) -> None:
    """Out to the tie's own edge, unless it has a depth of its own, which holds on any stick."""
    shape = tail_of(bent(**words))
    assert (shape.root, shape.tail) == (length(root), length(tail))


@pytest.mark.parametrize(
    ("words", "straight", "sense", "surface"),
    [
        ({}, "0", 1, "8"),
        ({"tie_first": "down"}, "8", -1, "0"),
        ({"wedged": "underside"}, "8", -1, "0"),
        ({"wedged": "underside", "tie_first": "down"}, "0", 1, "8"),
        ({"tie_first": "down", "own": SQUARE}, "7-1/2", -1, "0"),
    ],
)
def test_its_straight_edge_lies_where_the_wedge_goes(
    words: dict[str, Any], straight: str, sense: int, surface: str
) -> None:
    """On the reference side at nothing; on the far side at the framed depth, counting back."""
    shape = tail_of(bent(**words))
    assert (shape.straight, shape.sense) == (length(straight), sense)
    assert shape.surface == length(surface)


@pytest.mark.parametrize("reference", [False, True])
@pytest.mark.parametrize("tie_first", ["up", "down"])
def test_the_slope_runs_from_root_to_tail(tie_first: str, *, reference: bool) -> None:
    """7" at the shoulder, 8" eight inches on, and 7-1/2" half-way, from the straight edge."""
    shape = tail_of(bent(tie_first=tie_first, reference=reference))
    plane = shape.slope(shape.root, shape.tail, "tail")
    for beyond, deep in (("0", "7"), ("4", "7-1/2"), ("8", "8")):
        along = shape.along(length(beyond))
        assert deep_at(plane, Axis.FIRST, along) == shape.at(length(deep))
    outside = shape.at(length("7-3/4"))
    assert plane.holds(shape.along(ZERO).nm, outside.nm, 0)
    assert not plane.holds(shape.along(ZERO).nm, shape.at(length("6-3/4")).nm, 0)


def test_readings_go_towards_its_own_end() -> None:
    """Below nothing at a reference end, past the body at a far one."""
    near, far = tail_of(bent(reference=True)), tail_of(bent())
    assert near.end is Face.REFERENCE_END
    assert near.along(length("8")) == length("-8")
    assert far.along(length("8")) == length("128")


@pytest.mark.parametrize(
    ("words", "landed"),
    [
        ({}, False),
        ({"past": "1"}, False),
        ({"depth": "6"}, False),
        ({"depth": "6", "past": "1"}, True),
        ({"depth": "7", "past": "1"}, False),
        ({"depth": "6", "past": "1", "tie_first": "down"}, True),
        ({"past": "1", "own": SQUARE}, True),
        ({"held_short": "1", "depth": "6"}, False),
    ],
)
def test_past_the_post_it_stays_as_deep_as_its_tail(words: dict[str, Any], *, landed: bool) -> None:
    """There is something to cut there only where the stick is deeper than the tail."""
    assert tail_of(bent(**words)).landed is landed


@pytest.mark.parametrize(
    ("words", "straightened"),
    [
        ({}, False),
        ({"tie_first": "down"}, False),
        ({"tie_first": "down", "own": SQUARE}, True),
        ({"own": SQUARE}, False),
    ],
)
def test_wood_comes_off_over_the_straight_edge_by_square_rule(
    words: dict[str, Any], *, straightened: bool
) -> None:
    """Where that is a far face, which lies outside the inner timber."""
    assert tail_of(bent(**words)).straightened is straightened


@pytest.mark.parametrize(
    ("words", "to", "struck"),
    [
        ({}, {}, {}),
        ({"housing": "1/2"}, {}, {}),
        ({"own": SQUARE, "post_first": "west"}, {Axis.FIRST, Axis.SECOND}, {}),
        ({"own": SQUARE, "post_first": "east"}, {}, {}),
        (
            {"own": SQUARE, "tie_first": "down"},
            {Axis.FIRST, Axis.SECOND},
            {Axis.FIRST: "straight-edge"},
        ),
        (
            {"own": SQUARE, "past": "1"},
            {Axis.FIRST, Axis.SECOND},
            {Axis.FIRST: "tail-edge"},
        ),
        (
            {"own": SQUARE, "thickness": "3-1/2"},
            {Axis.FIRST, Axis.SECOND},
            {Axis.SECOND: "far-cheek"},
        ),
    ],
)
def test_what_goes_into_a_recess_is_reduced(
    words: dict[str, Any], to: object, struck: object
) -> None:
    """By square rule both far faces, to lines that the tenon has anyway where they coincide."""
    reduced = tail_of(bent(**words)).reduction
    assert set(reduced.to) == (set(to) if isinstance(to, (set, dict)) else to)
    assert reduced.struck == struck


def test_real_sizes_as_cut_or_as_laid_out() -> None:
    """The width is the depth at the shoulder, the length the tail's."""
    drawn = tail_of(bent())
    assert [drawn.real(size) for size in ("thickness", "width", "length")] == [
        length(each) for each in ("2", "7", "8")
    ]
    sizes = {"thickness": "1-15/16", "width": "6-7/8", "length": "7-15/16"}
    cut = tail_of(bent(real={"tie": real(as_cut={"west-end-tenon": sizes})}))
    assert [cut.real(size) for size in sizes] == [length(each) for each in sizes.values()]


def test_a_tenon_without_length_has_no_slope() -> None:
    """The family lays nothing out for it."""
    shape = tail_of(bent(held_short="8"))
    assert shape.run == ZERO
    with pytest.raises(ValueError, match="no plane"):
        shape.slope(shape.root, shape.tail, "tail")
