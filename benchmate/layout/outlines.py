"""Where a cut comes out on the faces of a timber: outlines of the waste, edge by edge.

Everything drawn or said about a face is read off these outlines: which faces a line is struck on,
what is hatched, where the current line stands.

How it works
1. A long face is seen in (along, across): x, and the depth in from the reference face it shares an
   edge with. An end is seen in (first, second): u and v.
2. A cut's planes meet the face in lines, so the waste on it is the face's rectangle clipped by
   each plane in turn. The rectangle includes the trim at both ends of the rough stick.
3. Clipping keeps, for every edge, the id of the plane's line it came from. An edge of the stick
   itself has none.
"""

from dataclasses import dataclass

from benchmate.measure.section import Section
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Feature
from benchmate.model.solids import Cut, Plane
from benchmate.model.stick import Stick

Point = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Outline:
    """A convex outline on a face, in nanometres; `lines[i]` names the edge from point i."""

    points: tuple[Point, ...]
    lines: tuple[str | None, ...]

    def edges(self) -> tuple[tuple[Point, Point, str | None], ...]:
        """The edges in order, each from where to where and the line it is struck by."""
        ahead = (*self.points[1:], *self.points[:1])
        return tuple(zip(self.points, ahead, self.lines, strict=True))

    @property
    def double_area(self) -> int:
        """Twice the enclosed area, in square nanometres."""
        return abs(sum(p[0] * q[1] - q[0] * p[1] for p, q, _ in self.edges()))


@dataclass(frozen=True, slots=True)
class FaceView:
    """A face as a flat rectangle: what each of its two readings is, and how far they run."""

    face: Face
    fixed: int
    at: int
    low: Point
    high: Point

    @property
    def shown(self) -> tuple[int, int]:
        """Which of (x, u, v) the two readings are."""
        first, second = (axis for axis in range(3) if axis != self.fixed)
        return first, second

    def rectangle(self) -> Outline:
        """The whole face."""
        (a, b), (c, d) = self.low, self.high
        return Outline(((a, b), (c, b), (c, d), (a, d)), (None,) * 4)


def face_view(stick: Stick, face: Face, section: Section) -> FaceView:
    """A face of the rough stick, with the real section at the place looked at."""
    depths = (section.first.nm, section.second.nm)
    ends = ((stick.start - stick.trim).nm, (stick.finish + stick.trim).nm)
    if face.is_end:
        at = stick.start.nm if face is Face.REFERENCE_END else stick.finish.nm
        return FaceView(face, 0, at, (0, 0), depths)
    fixed = 1 if face in (Face.FIRST, Face.FAR_FIRST) else 2
    at = 0 if face.is_reference else depths[fixed - 1]
    return FaceView(face, fixed, at, (ends[0], 0), (ends[1], depths[2 - fixed]))


def outline(cut: Cut, view: FaceView) -> Outline | None:
    """The waste of a cut on a face; None where the cut does not come out on it."""
    found = view.rectangle()
    for plane in cut.planes:
        found = _clip(found, plane, view)
        if len(found.points) < 3:  # noqa: PLR2004 - fewer corners than a triangle
            return None
    return found if found.double_area else None


def _clip(shape: Outline, plane: Plane, view: FaceView) -> Outline:
    first, second = view.shown
    a, b = plane.normal[first], plane.normal[second]
    limit = plane.offset - plane.normal[view.fixed] * view.at
    points: list[Point] = []
    lines: list[str | None] = []
    for start, end, line in shape.edges():
        over_start = a * start[0] + b * start[1] - limit
        over_end = a * end[0] + b * end[1] - limit
        if over_start <= 0:
            points.append(start)
            lines.append(line)
        if (over_start < 0 < over_end) or (over_end < 0 < over_start):
            points.append(_between(start, end, over_start, over_end))
            lines.append(plane.line if over_end > 0 else line)
        elif over_start == 0 < over_end:
            lines[-1] = plane.line
    return Outline(tuple(points), tuple(lines))


def _between(start: Point, end: Point, over_start: int, over_end: int) -> Point:
    """Where an edge crosses a plane, rounded once to a nanometre."""
    whole = over_start - over_end
    return (
        _weighted(start[0], end[0], over_start, whole),
        _weighted(start[1], end[1], over_start, whole),
    )


def _weighted(start: int, end: int, part: int, whole: int) -> int:
    top = (end - start) * part
    if whole < 0:
        top, whole = -top, -whole
    return start + (2 * top + whole) // (2 * whole)


def outlines(feature: Feature, stick: Stick, face: Face) -> tuple[Outline, ...]:
    """The waste of a feature's cuts on one face of its stick.

    A cut square across the stick takes the whole of an end, so it has no side to show there and
    would only hide the others.
    """
    view = face_view(stick, face, stick.section(*feature.place))
    found = (outline(cut, view) for cut in feature.cuts if _bounded(cut, view))
    return tuple(shape for shape in found if shape)


def _bounded(cut: Cut, view: FaceView) -> bool:
    return any(plane.normal[axis] for plane in cut.planes for axis in view.shown)


def struck(feature: Feature, stick: Stick) -> dict[str, tuple[Face, ...]]:
    """The faces on which each line of a feature bounds its waste, in rolling order, ends last."""
    found: dict[str, list[Face]] = {}
    for face in (*LONG_FACES, Face.REFERENCE_END, Face.FAR_END):
        lines = {line for shape in outlines(feature, stick, face) for line in shape.lines if line}
        for line in lines:
            found.setdefault(line, []).append(face)
    return {line: tuple(faces) for line, faces in found.items()}
