"""A timber unrolled: its four long faces in rolling order, with all that is struck and cut there.

How it works
1. Faces are seen from outside, never mirrored, the reference end at the left. Each lies under its
   neighbour as the timber is rolled, so the lower arris of one is the upper arris of the next.
2. The reference arris lies between the first two. Which of the reference faces is on top follows
   from that, and so does the difference between the two hands.
3. A point on a face is (along, deep): along from the reference shoulder, deep in from the reference
   face that the face shares an arris with. Nothing beyond the squared ends is shown.
4. What is withheld is not there at all.
"""

from dataclasses import dataclass
from typing import NamedTuple

from benchmate.layout.outlines import Outline, Point, face_view, outlines
from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.model.directions import Face, Pose
from benchmate.model.feature import Feature, Line
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, axis_from, reference_for
from benchmate.sheets.sheet import Item, TimberSheet

Polygon = tuple[Point, ...]


class Stroke(NamedTuple):
    """A line to strike, from a point to a point."""

    start: Point
    end: Point


class Figure(NamedTuple):
    """A figure that belongs on a face: how deep in a line lies, or how deep a cut goes there.

    `start` and `end` are the ends of the line, or the sides of the cut, along the timber.
    """

    start: Point
    end: Point
    value: Length
    deep: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Side:
    """One long face: its waste, the lines struck on it, and the figures that belong on it.

    `turned` tells that the reference edge is the lower one.
    """

    face: Face
    turned: bool
    waste: tuple[Polygon, ...]
    strokes: tuple[Stroke, ...]
    figures: tuple[Figure, ...]


class Running(NamedTuple):
    """A mark along the timber: where it lies, and its figure from the end or from the shoulder."""

    along: int
    value: Length


def rolling_order(pose: Pose) -> tuple[Face, Face, Face, Face]:
    """The four long faces from the top of the sheet down, the reference arris between two of them.

    Each one's lower arris is the next one's upper.
    """
    first = Face.FIRST if pose.above(Face.SECOND) is Face.FIRST else Face.SECOND
    second = Face.SECOND if first is Face.FIRST else Face.FIRST
    return first, second, first.opposite, second.opposite


def unrolled(sheet: TimberSheet) -> tuple[Side, ...]:
    """The four faces from the top down."""
    return tuple(_side(sheet, face) for face in rolling_order(sheet.layout.stick.pose))


def running(sheet: TimberSheet, hook: str) -> tuple[Running, ...]:
    """Every mark along the timber that is measured from a hook, in order, each place once.

    The hook itself is among them, at nothing.
    """
    stick = sheet.layout.stick
    shoulder = hook == shoulder_hook(stick)
    datum = Running(0 if shoulder else stick.start.nm, Length(0))
    return _in_order((datum, *_marks(sheet, sheet.items, hook)))


def face_running(sheet: TimberSheet, face: Face, hook: str) -> tuple[Running, ...]:
    """The marks along the timber that are struck on one face, in order, each place once."""
    on_face = tuple(item for item in sheet.items if face in item.step.faces)
    return _in_order(_marks(sheet, on_face, hook))


def _marks(sheet: TimberSheet, items: tuple[Item, ...], hook: str) -> tuple[Running, ...]:
    return tuple(
        Running(at, reading.value)
        for item in items
        if (at := _along(_line(sheet, item.step))) is not None
        for reading in item.readings
        if reading.hook == hook
    )


def _in_order(marks: tuple[Running, ...]) -> tuple[Running, ...]:
    """Marks in order along the timber, the first one told of each place."""
    found = {mark.along: mark for mark in reversed(marks)}
    return tuple(found[at] for at in sorted(found))


def end_hook(stick: Stick) -> str:
    """What a figure from the squared reference end hooks on."""
    return f"squared {stick.pose.words(Face.REFERENCE_END)}"


def shoulder_hook(stick: Stick) -> str:
    """What a figure from the reference shoulder hooks on."""
    return f"{stick.pose.words(Face.REFERENCE_END)} shoulder line"


def datum_hook(sheet: TimberSheet) -> str:
    """What marks along the timber hook on first: its squared end until the shoulder is struck."""
    shoulder = shoulder_hook(sheet.layout.stick)
    firsts = (item.readings[0].hook for item in sheet.items if item.readings and item.step.line)
    return shoulder if shoulder in firsts else end_hook(sheet.layout.stick)


def _along(line: Line | None) -> int | None:
    """Where along the timber a line comes; None for one that is no place along it."""
    return line.at.nm if line is not None and line.axis is Axis.ALONG else None


def _line(sheet: TimberSheet, step: Step) -> Line | None:
    """The line a step strikes, if it strikes one."""
    feature = sheet.layout.feature(step.feature)
    lines = feature.lines if feature and step.line else ()
    return next((line for line in lines if line.id == step.line), None)


def _side(sheet: TimberSheet, face: Face) -> Side:
    stick = sheet.layout.stick
    waste: list[Polygon] = []
    strokes: dict[Stroke, None] = {}
    for feature in sheet.layout.features:
        if feature.id in sheet.stopped:
            continue
        for shape in _shapes(feature, stick, face):
            waste.append(shape.points)
            strokes |= dict.fromkeys(_edges(shape))
    figures: dict[Figure, None] = {}
    for item in sheet.items:
        line = _line(sheet, item.step)
        if line is not None and face in item.step.faces and not item.withheld:
            strokes |= dict.fromkeys(_struck(sheet, item.step, line, face))
            found = _figure(sheet, item, line, face)
            if found:
                figures[found] = None
    return Side(
        face=face,
        turned=not stick.pose.above(face).is_reference,
        waste=tuple(dict.fromkeys(waste)),
        strokes=tuple(strokes),
        figures=tuple(figures),
    )


def _shapes(feature: Feature, stick: Stick, face: Face) -> tuple[Outline, ...]:
    """The waste of a feature on a face, within the squared ends; none where all of it goes."""
    whole = face_view(stick, face, stick.section(*feature.place)).rectangle().double_area
    found = (
        shape
        for shape in outlines(feature, stick, face)
        if any(shape.lines) or shape.double_area < whole
    )
    kept = (Outline(_kept(shape.points, stick), shape.lines) for shape in found)
    return tuple(shape for shape in kept if shape.double_area)


def _kept(points: Polygon, stick: Stick) -> Polygon:
    low, high = stick.start.nm, stick.finish.nm
    return tuple((min(max(along, low), high), deep) for along, deep in points)


def _edges(shape: Outline) -> tuple[Stroke, ...]:
    """The struck edges round some waste."""
    return tuple(
        Stroke(min(start, end), max(start, end))
        for start, end, line in shape.edges()
        if line is not None and start != end
    )


def _struck(sheet: TimberSheet, step: Step, line: Line, face: Face) -> tuple[Stroke, ...]:
    """A line that bounds no waste here: square across, or from spot to spot where it slants."""
    stick = sheet.layout.stick
    feature = sheet.layout.feature(step.feature)
    low, high = 0, _width(stick, face, feature)
    if line.slant is not None and axis_from(face) is not line.slant.axis:
        spots = (line.slant.start, line.slant.finish)
        start, finish = ((spot.along.nm, spot.deep.nm) for spot in spots)
        return (Stroke(*sorted((start, finish))),)
    if line.axis is Axis.ALONG and line.slant is None:
        return (Stroke((line.at.nm, low), (line.at.nm, high)),)
    return ()


def _width(stick: Stick, face: Face, feature: Feature | None) -> int:
    """How wide a face is at a feature: the depth in from the reference face beside it."""
    section = stick.section(*(feature.place if feature else ()))
    other = section.second if axis_from(face) is Axis.FIRST else section.first
    return other.nm


def _figure(sheet: TimberSheet, item: Item, line: Line, face: Face) -> Figure | None:
    """The figure of a line that runs along the timber here, or of a depth straight in from here."""
    if line.axis in (None, Axis.ALONG) or line.slant is not None or not item.readings:
        return None
    feature, reading = sheet.layout.feature(item.step.feature), item.readings[0]
    shapes = _shapes(feature, sheet.layout.stick, face) if feature else ()
    words = sheet.layout.stick.pose.words
    if line.axis is axis_from(face):
        spots = [point for shape in shapes for point in shape.points]
        own = spots and reading.hook == words(face)
        return Figure(*_sides(spots), reading.value, deep=True) if own else None
    spots = [
        point
        for shape in shapes
        for start, end, name in shape.edges()
        if name == line.id
        for point in (start, end)
    ]
    own = spots and reading.hook == words(reference_for(line.axis))
    return Figure(min(spots), max(spots), reading.value, deep=False) if own else None


def _sides(points: list[Point]) -> tuple[Point, Point]:
    """The middles of the left and the right side of a cut."""
    alongs, deeps = zip(*points, strict=True)
    middle = (min(deeps) + max(deeps)) // 2
    return (min(alongs), middle), (max(alongs), middle)
