"""How far two convex pieces of wood lie apart: reckoned exactly, rounded once to a nanometre.

How it works
1. Two boxes lie apart by the gaps between them on each axis. For sloping pieces the differences of
   their points are looked at: they make a convex solid too, whose corners are differences of
   corners, and the distance is that from nothing to this solid.
2. At most four of its corners are held. The point between them that lies nearest to nothing gives a
   direction, and the corner furthest back against that direction is held next.
3. Where no corner lies further back than the point itself, that point is the nearest of all. Every
   round comes nearer and there are only so many corners, so it ends.
"""

from collections.abc import Sequence
from fractions import Fraction
from itertools import combinations
from math import isqrt

from benchmate.checks.piece import Corner, Piece, box_gap
from benchmate.measure.length import Length

_Held = tuple[Corner, ...]
"""Corners of the solid of differences, the newest first: one to four."""


def apart(one: Piece, other: Piece) -> Length | None:
    """The least distance between two pieces: nothing where they meet or only touch.

    None where one of them is so thin that it is no wood.
    """
    if not one.slopes and not other.slopes:
        return _root(Fraction(box_gap(one, other)))
    corners, others = one.corners(), other.corners()
    return _root(_least_square(corners, others)) if corners and others else None


def _root(square: Fraction) -> Length:
    return Length((isqrt(4 * square.numerator // square.denominator) + 1) // 2)


def _least_square(corners: Sequence[Corner], others: Sequence[Corner]) -> Fraction:
    """The square of the least distance between two convex solids, by their corners."""
    held: _Held = (_from(others[0], corners[0]),)
    while True:
        near, held = _nearest(held)
        back = min(corners, key=lambda corner: _dot(near, corner))
        ahead = max(others, key=lambda corner: _dot(near, corner))
        newest = _from(ahead, back)
        if _dot(near, newest) >= _dot(near, near):
            return _dot(near, near)
        held = (newest, *held)


def _nearest(held: _Held) -> tuple[Corner, _Held]:
    """The point nearest to nothing between the corners held, and those of them it lies between.

    The newest is one of them: without it the point was found the round before.
    """
    newest, *older = held
    chosen = [(newest, *some) for count in range(len(held)) for some in combinations(older, count)]
    feet = [(foot, some) for some in chosen if (foot := _foot(some)) is not None]
    return min(feet, key=lambda each: _dot(each[0], each[0]))


def _foot(held: _Held) -> Corner | None:
    """Where the square from nothing meets the flat through some corners; None if outside them."""
    first, *rest = held
    edges = [_from(first, each) for each in rest]
    rows = [[*(_dot(edge, each) for each in edges), -_dot(edge, first)] for edge in edges]
    shares = _solved(rows)
    if sum(shares) > 1 or any(share < 0 for share in shares):
        return None
    x, u, v = (
        sum((share * step for share, step in zip(shares, steps, strict=True)), start)
        for start, *steps in zip(first, *edges, strict=True)
    )
    return x, u, v


def _solved(rows: list[list[Fraction]]) -> list[Fraction]:
    """What satisfies equations that mirror about their diagonal.

    Nothing is ever divided by nothing: a corner is only taken up where it lies off the flat through
    those that are held.
    """
    for place in range(len(rows)):
        lead = [each / rows[place][place] for each in rows[place]]
        rows = [
            lead if at == place else [a - row[place] * b for a, b in zip(row, lead, strict=True)]
            for at, row in enumerate(rows)
        ]
    return [row[-1] for row in rows]


def _from(start: Corner, finish: Corner) -> Corner:
    (a, b, c), (d, e, f) = start, finish
    return d - a, e - b, f - c


def _dot(one: Corner, other: Corner) -> Fraction:
    (a, b, c), (d, e, f) = one, other
    return a * d + b * e + c * f
