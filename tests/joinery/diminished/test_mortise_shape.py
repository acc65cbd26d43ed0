"""Where mortise and housing lie on the real receiving stick, by hand-reckoned figures."""

from typing import Any

import pytest

from benchmate.joinery.diminished.mortise_shape import MortiseShape
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from tests.builders import length, lengths, real
from tests.joinery.diminished.ledges import SQUARE, SQUARE_BEAM, ledge, mortise_of


def _walls(shape: MortiseShape) -> dict[str | None, Length]:
    return {wall.line: Length(wall.offset * sum(wall.normal)) for wall in shape.walls}


def test_in_a_post_top_and_ledge_lie_along_it() -> None:
    """The girt's top at 96", its underside 8" lower; the mortise as tall as the tenon."""
    shape = mortise_of(ledge())
    assert (shape.entry, shape.upright, shape.plumb) == (Face.FIRST, True, Axis.ALONG)
    assert (shape.top_at, shape.ledge_at) == lengths("96", "88")
    assert shape.along == lengths("88", "96")
    assert shape.sides.span == lengths("2", "4")
    assert shape.span == lengths("88", "96")


def test_in_a_beam_they_lie_across_it() -> None:
    """1" and 9" down from its top; the mortise 6" along it, where the joist's cheeks are."""
    shape = mortise_of(ledge(lying=True, drop="1"))
    assert (shape.upright, shape.plumb) == (False, Axis.SECOND)
    assert (shape.top_at, shape.ledge_at) == lengths("1", "9")
    assert shape.along == lengths("96", "102")
    assert shape.sides.span == lengths("3", "5")
    assert shape.ledge_left == length("1")
    assert shape.top_proud == length("-1")


@pytest.mark.parametrize("words", [{}, {"into_first": "west"}, {"lying": True}])
def test_the_floor_slopes_from_face_to_full_depth(words: dict[str, Any]) -> None:
    """On the face at the top, 1" in at the ledge, 1/2" in half-way."""
    shape = mortise_of(ledge(**words))
    number, vertical = shape.into.value.index(1), shape.plumb.value.index(1)
    for part in (0, 1, 2):
        deep = length("1/2") * part
        point = [0, 0, 0]
        point[number] = (deep if shape.entry.is_reference else shape.real_into - deep).nm
        point[vertical] = shape.top_at.nm + (shape.ledge_at - shape.top_at).nm * part // 2
        reached = sum(n * each for n, each in zip(shape.slope.normal, point, strict=True))
        assert reached == shape.slope.offset


@pytest.mark.parametrize(
    ("words", "depth", "bottom", "left"),
    [
        ({}, "4-1/8", "4-1/8", "3-7/8"),
        ({"into_first": "west"}, "4-1/8", "3-7/8", "3-7/8"),
        ({"bottom_clearance": "1/4"}, "4-1/4", "4-1/4", "3-3/4"),
        ({"own": SQUARE, "into_first": "west"}, "4-5/8", "3-3/8", "3-3/8"),
        (
            {"real": {"girt": real(as_cut={"west-end-tenon": {"length": "2-7/8"}})}},
            "4",
            "4",
            "4",
        ),
    ],
)
def test_the_mortise_is_deeper_than_housing_and_tenon(
    words: dict[str, Any], depth: str, bottom: str, left: str
) -> None:
    """By the clearance, from the real face in; the length as the tenon was cut."""
    shape = mortise_of(ledge(**words))
    assert (shape.depth, shape.bottom, shape.left_below) == lengths(depth, bottom, left)


@pytest.mark.parametrize(
    ("words", "walls"),
    [
        ({}, {"housing-far": "6"}),
        ({"inset": "1"}, {"housing-near": "1", "housing-far": "7"}),
        ({"own": {"girt": {"section": "8 x 8"}}}, {}),
        ({"lying": True}, {"housing-start": "96", "housing-finish": "102"}),
        ({"own": SQUARE}, {"housing-far": "5-1/2"}),
        (
            {"own": SQUARE, "into_first": "west"},
            {"housing-far": "5-1/2", "housing-top": "96"},
        ),
        (
            {"own": SQUARE_BEAM, "lying": True, "into_first": "west", "drop": "1"},
            {"housing-start": "96", "housing-finish": "101-1/2", "housing-top": "1"},
        ),
        (
            {"own": SQUARE_BEAM, "lying": True, "into_first": "west"},
            {"housing-start": "96", "housing-finish": "101-1/2"},
        ),
    ],
)
def test_the_housing_is_closed_where_there_is_wood(
    words: dict[str, Any], walls: dict[str, str]
) -> None:
    """At the top only on a stick that is over its inner timber, and not in its own top."""
    found = _walls(mortise_of(ledge(**words)))
    assert found == {name: length(at) for name, at in walls.items()}


def test_it_follows_the_tenon_as_cut() -> None:
    """Thickness and width from the tenon's reference side."""
    sizes = {"thickness": "1-7/8", "width": "7-3/4"}
    shape = mortise_of(ledge(real={"girt": real(as_cut={"west-end-tenon": sizes})}))
    assert shape.sides.span == lengths("2", "3-7/8")
    assert shape.along == lengths("88-1/4", "96")
    assert shape.ledge_at == length("88"), "the end itself bears as low as before"


def test_a_beam_measured_from_below() -> None:
    """Up from its underside: a joist 1" down leaves 1" under an 8" one in 10"."""
    own = {"post": {"second_face": "down", "at": {"east": "0", "up": "8 ft - 10"}}}
    shape = mortise_of(ledge(lying=True, drop="1", own=own))
    assert (shape.top_at, shape.ledge_at) == lengths("9", "1")
    assert (shape.ledge_left, shape.top_proud) == lengths("1", "-1")
