"""A drawing read back with nothing but plain vectors, to be held against the cuts themselves.

Right is from the reference end to the far end, up is the outward normal x right, and one row is as
long as two columns; where each of these leads is worked out here anew.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.model.directions import Face
from benchmate.tui.drawing.canvas import Drawing, Role

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.layout.step import Layout
    from benchmate.model.feature import Feature

Vector = tuple[int, int, int]
Place = tuple[int, int, int]

SOUTH, EAST, WEST = (0, -1, 0), (1, 0, 0), (-1, 0, 0)
UP, DOWN = (0, 0, 1), (0, 0, -1)

POSES: dict[str, tuple[Vector, Vector, Vector]] = {
    "post-sw": (SOUTH, WEST, DOWN),
    "post-se": (SOUTH, EAST, DOWN),
    "sill": (UP, SOUTH, WEST),
    "plate": (UP, SOUTH, WEST),
    "short": (UP, SOUTH, WEST),
}
"""Where each timber's first face, second face and reference end look."""

HATCHED = {Role.WASTE, Role.JOINT_WASTE, Role.OTHER_WASTE}
ENDED = {Role.OUTLINE, Role.REFERENCE, Role.CURRENT, Role.WASTE, Role.WASTE_ARROW}


def cross(one: Vector, other: Vector) -> Vector:
    """The vector product."""
    (a, b, c), (d, e, f) = one, other
    return (b * f - c * e, c * d - a * f, a * e - b * d)


def against(vector: Vector) -> Vector:
    """The vector the other way."""
    a, b, c = vector
    return (-a, -b, -c)


def normals(timber: str) -> dict[Face, Vector]:
    """Where the six sides of a timber look."""
    first, second, end = POSES[timber]
    return {
        Face.FIRST: first,
        Face.SECOND: second,
        Face.FAR_FIRST: against(first),
        Face.FAR_SECOND: against(second),
        Face.REFERENCE_END: end,
        Face.FAR_END: against(end),
    }


def reference_on_top(timber: str, face: Face) -> bool:
    """Whether the upper edge of a face, seen from outside, is that of a reference face."""
    sides = normals(timber)
    up = cross(sides[face], sides[Face.FAR_END])
    return up in (sides[Face.FIRST], sides[Face.SECOND])


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """A drawn face read back: a grid of roles, and the place on the timber each cell stands for."""

    roles: tuple[tuple[Role, ...], ...]
    chars: tuple[str, ...]
    top: int
    bottom: int
    columns: dict[int, int]
    per_row: int
    fixed: tuple[int, int]
    wide: int
    downwards: bool

    def depth(self, row: int) -> int:
        """The depth in from the reference edge at a row."""
        down = (row - self.top) * self.wide // (self.bottom - self.top)
        return down if self.downwards else self.wide - down

    def place(self, row: int, column: int, *, right: int = 0, up: int = 0) -> Place:
        """The place of a cell, moved some nanometres right and up on the drawing."""
        depth = self.depth(row) + (-up if self.downwards else up)
        axis, at = self.fixed
        across = (at, depth) if axis == 1 else (depth, at)
        return (self.columns[column] + right, *across)

    def inner(self) -> Iterator[tuple[int, int]]:
        """Every other cell between the edges whose place along the timber is known."""
        for row in range(self.top + 1, self.bottom):
            for column in tuple(self.columns)[row % 2 :: 2]:
                yield row, column


def grid_of(drawing: Drawing) -> tuple[tuple[Role, ...], ...]:
    """The role of every cell."""
    return tuple(tuple(role for text, role in row for _ in text) for row in drawing.rows)


def read_back(drawing: Drawing, walk: Layout, face: Face, feature: Feature, *, rough: bool) -> Seen:
    """A drawing with a place for each cell of a stretch that reaches one of the timber's ends."""
    roles = grid_of(drawing)
    edges = [row for row, cells in enumerate(roles) if Role.BREAK in cells or _long(cells)]
    section = walk.stick.section(*feature.place)
    depths = (section.first.nm, section.second.nm)
    axis = 1 if face in (Face.FIRST, Face.FAR_FIRST) else 2
    wide = depths[2 - axis]
    trim = walk.stick.trim.nm if rough else 0
    ends = walk.stick.start.nm - trim, walk.stick.finish.nm + trim
    per_row = wide // (edges[-1] - edges[0])
    return Seen(
        roles=roles,
        chars=tuple("".join(text for text, _ in row) for row in drawing.rows),
        top=edges[0],
        bottom=edges[-1],
        columns=_columns(roles[edges[0] : edges[-1] + 1], ends, per_row),
        per_row=per_row,
        fixed=(axis, 0 if face in (Face.FIRST, Face.SECOND) else depths[axis - 1]),
        wide=wide,
        downwards=reference_on_top(walk.stick.id, face),
    )


def _long(cells: tuple[Role, ...]) -> bool:
    return sum(cell in (Role.OUTLINE, Role.REFERENCE) for cell in cells) >= 2


def _columns(
    rows: tuple[tuple[Role, ...], ...], ends: tuple[int, int], per_row: int
) -> dict[int, int]:
    """Places along the timber by column, counted from whichever true end a stretch reaches."""
    found: dict[int, int] = {}
    for first, last in _stretches(rows[0]):
        left, right = (all(row[at] is not Role.BREAK for row in rows) for at in (first, last))
        for column in range(first, last + 1):
            if left:
                found[column] = ends[0] + (column - first) * per_row // 2
            elif right:
                found[column] = ends[1] - (last - column) * per_row // 2
    return found


_BESIDE = (Role.BLANK, Role.DIMENSION, Role.POINTER, Role.FIGURE)


def _stretches(edge: tuple[Role, ...]) -> Iterator[tuple[int, int]]:
    start = None
    for column, role in enumerate((*edge, Role.BLANK)):
        if role not in _BESIDE and start is None:
            start = column
        elif role in _BESIDE and start is not None:
            yield start, column - 1
            start = None
