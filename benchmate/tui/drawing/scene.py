"""What there is to draw on one side of a timber, in the timber's own readings.

A point on a side is (a, b), as in `layout.outlines`: along and depth on a long face, the two depths
on an end.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from benchmate.layout.outlines import FaceView, Outline, Point, face_view, outlines
from benchmate.model.solids import Axis
from benchmate.model.stick import axis_from

if TYPE_CHECKING:
    from collections.abc import Iterable

    from benchmate.layout.step import Layout, Step
    from benchmate.model.directions import Face
    from benchmate.model.feature import Feature, Line, Reading, Slant
    from benchmate.model.stick import Stick


_PAST_WASTE = 6
"""What share of a side's width a line along it runs past its joint's waste."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A struck line from a point to a point; `waste` steps from it to its waste, (0, 0) if none."""

    line: str
    start: Point
    end: Point
    waste: Point

    @property
    def square(self) -> bool:
        """Whether it is struck square across a long face."""
        return self.start[0] == self.end[0]

    @property
    def slants(self) -> bool:
        """Whether it runs neither across the timber nor along it."""
        return not self.square and self.start[1] != self.end[1]


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """One side of a timber: its waste in three kinds, its lines, and the part of it to draw.

    `waste` is what the step takes away, `joint_waste` the rest of its joint's, `other_waste` that
    of other joints. `low` and `high` are its corners; they hold the rough trim where that is cut.
    `blemishes` are the knots, checks and wane on it.
    """

    stick: Stick
    face: Face
    low: Point
    high: Point
    waste: tuple[Outline, ...]
    joint_waste: tuple[Outline, ...]
    other_waste: tuple[Outline, ...]
    lines: tuple[Mark, ...]
    current: tuple[Mark, ...]
    line: Line | None
    reading: Reading | None
    blemishes: tuple[Outline, ...] = ()

    @property
    def slant(self) -> Slant | None:
        """How the current line slants across this side; None where it does not."""
        slant = self.line.slant if self.line else None
        if slant is None or self.face.is_end or axis_from(self.face) is slant.axis:
            return None
        return slant

    @property
    def rough(self) -> bool:
        """Whether it reaches past the squared ends."""
        return not self.face.is_end and self.low[0] < self.stick.start.nm


def scene(layout: Layout, step: Step, face: Face, reading: Reading | None = None) -> Scene:
    """The side of a timber a step is done on, or any other side; `reading` is the one in use."""
    own = layout.feature(step.feature)
    shapes = _shapes(layout, own, face) if own else ()
    deciding = _deciding(layout, own, face, shapes, step.draws) if own and step.draws else ()
    marks = _marks(shapes)
    line = _line(own, step)
    view = face_view(layout.stick, face, layout.stick.section(*(own.place if own else ())))
    low, high = _corners(layout.stick, view, shapes)
    current = _current(marks, line, view, step, shapes)
    return Scene(
        stick=layout.stick,
        face=face,
        low=low,
        high=high,
        waste=deciding or shapes,
        joint_waste=tuple(shape for shape in shapes if shape not in deciding) if deciding else (),
        other_waste=tuple(
            shape
            for feature in layout.features
            if feature is not own
            for shape in _shapes(layout, feature, face)
        ),
        lines=(
            *_the_rest(line, view, step, current),
            *(mark for mark in marks if mark not in current),
        ),
        current=current,
        line=line,
        reading=reading or next(iter(step.readings), None),
    )


def _shapes(layout: Layout, feature: Feature, face: Face) -> tuple[Outline, ...]:
    """The waste on a side; a cut that takes the whole side leaves nothing on it to draw.

    A hole has no lines round it, yet it leaves most of the side.
    """
    found = outlines(feature, layout.stick, face)
    view = face_view(layout.stick, face, layout.stick.section(*feature.place))
    whole = view.rectangle().double_area
    return tuple(shape for shape in found if any(shape.lines) or shape.double_area < whole)


def _deciding(
    layout: Layout, own: Feature, face: Face, shapes: tuple[Outline, ...], line: str
) -> tuple[Outline, ...]:
    """The waste that a line bounds here; of a line that lies inside the wood, that of its cuts."""
    found = tuple(shape for shape in shapes if line in shape.lines)
    cuts = tuple(cut for cut in own.cuts if any(plane.line == line for plane in cut.planes))
    return found or _shapes(layout, replace(own, cuts=cuts), face)


def _current(
    marks: tuple[Mark, ...],
    line: Line | None,
    view: FaceView,
    step: Step,
    shapes: tuple[Outline, ...],
) -> tuple[Mark, ...]:
    """The line in hand on a side: none for a depth down from it, even where its floor comes out."""
    if line is not None and line.slant is None and not view.face.is_end:
        across = line.axis in (Axis.FIRST, Axis.SECOND)
        if across and line.axis is axis_from(view.face):
            return ()
    found = tuple(mark for mark in marks if mark.line == step.draws)
    return found or _stated(line, view, step, shapes)


def _line(feature: Feature | None, step: Step) -> Line | None:
    lines = feature.lines if feature else ()
    return next((line for line in lines if line.id == step.draws), None)


def _corners(stick: Stick, view: FaceView, shapes: tuple[Outline, ...]) -> tuple[Point, Point]:
    """The corners of the side; the rough trim belongs to it where nothing else is taken away."""
    if view.face.is_end:
        return view.low, view.high
    start, finish = stick.start.nm, stick.finish.nm
    inside = (start < a < finish for shape in shapes for a, _ in shape.points)
    if shapes and not any(inside):
        return view.low, view.high
    return (start, view.low[1]), (finish, view.high[1])


def _marks(shapes: Iterable[Outline]) -> tuple[Mark, ...]:
    """The lines round some waste; pieces of one line that touch are struck as one."""
    courses: dict[tuple[str, int | None, int | None], list[Mark]] = {}
    for shape in shapes:
        for start, end, line in shape.edges():
            if line is not None:
                mark = Mark(line, min(start, end), max(start, end), _inward(shape, start, end))
                courses.setdefault(_course(mark), []).append(mark)
    return tuple(mark for pieces in courses.values() for mark in _joined(pieces))


def _course(mark: Mark) -> tuple[str, int | None, int | None]:
    (a, b), (c, d) = mark.start, mark.end
    return mark.line, a if a == c else None, b if b == d else None


def _joined(pieces: list[Mark]) -> Iterable[Mark]:
    """Pieces on one course, those that touch made one; a tenon left between keeps two apart."""
    first, *others = sorted(pieces, key=lambda mark: mark.start)
    for piece in others:
        if piece.start <= first.end:
            first = Mark(first.line, first.start, max(first.end, piece.end), first.waste)
        else:
            yield first
            first = piece
    yield first


def _inward(shape: Outline, start: Point, end: Point) -> Point:
    """The step from an edge into its shape, along the one axis that leads away from it most."""
    count = len(shape.points)
    a, b = (
        2 * sum(point[axis] for point in shape.points) - count * (start[axis] + end[axis])
        for axis in (0, 1)
    )
    along = abs(end[0] - start[0]) > abs(end[1] - start[1])
    return (0, _sign(b)) if along else (_sign(a), 0)


def _sign(number: int) -> int:
    return (number > 0) - (number < 0)


def _stated(
    line: Line | None, view: FaceView, step: Step, shapes: tuple[Outline, ...]
) -> tuple[Mark, ...]:
    """A line that bounds no waste: square across the side its step names, or in from an edge.

    One that runs along the timber is drawn past its joint's waste, as the peg line past the holes.
    """
    if line is None or line.axis is None or view.face not in step.faces or view.face.is_end:
        return ()
    (a, b), (c, d), at = view.low, view.high, line.at.nm
    if line.slant is not None:
        return (_stated_slant(line.id, line.slant, view),)
    if line.axis is Axis.ALONG:
        return (Mark(line.id, (at, b), (at, d), (0, 0)),)
    if line.axis is axis_from(view.face):
        return ()
    along = [point[0] for shape in shapes for point in shape.points]
    past = (d - b) // _PAST_WASTE
    ends = (max(a, min(along) - past), min(c, max(along) + past)) if along else (a, c)
    return (Mark(line.id, (ends[0], at), (ends[1], at), (0, 0)),)


def _the_rest(
    line: Line | None, view: FaceView, step: Step, current: tuple[Mark, ...]
) -> tuple[Mark, ...]:
    """What is struck of a slanting line in hand besides the part that bounds waste."""
    if line is None or line.slant is None or view.face not in step.faces or view.face.is_end:
        return ()
    if step.line is None or not current or axis_from(view.face) is line.slant.axis:
        return ()
    whole = _stated_slant(line.id, line.slant, view)
    ends = sorted(
        (end for mark in current for end in (mark.start, mark.end)),
        key=lambda end: abs(end[1] - whole.start[1]),
    )
    rest = ((whole.start, ends[0]), (ends[-1], whole.end))
    return tuple(
        Mark(line.id, one, other, (0, 0))
        for one, other in rest
        if abs(other[1] - one[1]) > _HAIR and _towards(whole, one, other)
    )


_HAIR = 100_000
"""How much of a line is too little to draw, in nanometres: a tenth of a millimetre."""


def _towards(whole: Mark, one: Point, other: Point) -> bool:
    """Whether a piece goes the way the whole line goes, so that it is a part of it."""
    return (other[1] - one[1] > 0) is (whole.end[1] - whole.start[1] > 0)


def _stated_slant(line: str, slant: Slant, view: FaceView) -> Mark:
    """From spot to spot where it slants, else square across where it comes out on this face."""
    start, finish = slant.start, slant.finish
    if axis_from(view.face) is slant.axis:
        at = (start if view.face.is_reference else finish).along.nm
        return Mark(line, (at, view.low[1]), (at, view.high[1]), (0, 0))
    near, far = ((spot.along.nm, spot.deep.nm) for spot in (start, finish))
    return Mark(line, near, far, (0, 0))


def turned(drawn: Scene) -> Scene:
    """The same side with its two readings exchanged."""
    return replace(
        drawn,
        low=_swap(drawn.low),
        high=_swap(drawn.high),
        waste=_turned_shapes(drawn.waste),
        joint_waste=_turned_shapes(drawn.joint_waste),
        other_waste=_turned_shapes(drawn.other_waste),
        lines=_turned_marks(drawn.lines),
        current=_turned_marks(drawn.current),
    )


def _swap(point: Point) -> Point:
    return point[1], point[0]


def _turned_shapes(shapes: tuple[Outline, ...]) -> tuple[Outline, ...]:
    return tuple(Outline(tuple(map(_swap, shape.points)), shape.lines) for shape in shapes)


def _turned_marks(marks: tuple[Mark, ...]) -> tuple[Mark, ...]:
    return tuple(
        Mark(mark.line, _swap(mark.start), _swap(mark.end), _swap(mark.waste)) for mark in marks
    )
