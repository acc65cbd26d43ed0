"""A floor that leans across its timber, told by how deep it is at one line and where it runs out.

Such a floor is square to the timber's length but to none of its faces, so no line on a face shows
it. Its step says how deep it is at another line of the joint; from there it runs out to nothing at
a line above, at the upper wall of a housing, or on the timber's upper arris.
"""

from math import hypot

from benchmate.layout.step import Step
from benchmate.model.directions import Direction
from benchmate.model.feature import Feature, Line
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import Stick, axis_from

LEANING = {"haunch-floor": "upper-side"}
"""Floors that lean, and the line at which their depth is measured."""

OUT = "haunch-top"
"""The line at which such a floor runs out, if one is struck."""

Point = tuple[Axis, int, Axis, int]
"""A point square to the timber's length: two axes, and a reading on each."""


def off_leaning(stick: Stick, feature: Feature, line: Line, step: Step, plane: Plane) -> float:
    """How far a leaning plane lies from the two points its step and its lines give, at most."""
    return max(_from(plane, spot) for spot in _points(stick, feature, line, step))


def _points(stick: Stick, feature: Feature, line: Line, step: Step) -> tuple[Point, Point]:
    lines = {each.id: each for each in feature.lines}
    at, (reading,), (entry,) = lines[LEANING[line.id]], step.readings, step.faces
    into = axis_from(entry)
    housing = lines.get("housing-floor")
    face = 0 if entry.is_reference else stick.depth(into, feature.id).nm
    opening = face if reading.hook == stick.pose.words(entry) else _reading(housing)
    inward = 1 if entry.is_reference else -1
    deep = (into, opening + inward * reading.value.nm, _axis(at), _reading(at))
    return deep, _runs_out(stick, lines, (into, opening), _axis(at))


def _runs_out(stick: Stick, lines: dict[str, Line], mouth: tuple[Axis, int], plumb: Axis) -> Point:
    top = stick.pose.face(Direction.UP)
    arris = 0 if top.is_reference else stick.depth(plumb).nm
    upper = lines.get(OUT) or lines.get("housing-near" if top.is_reference else "housing-far")
    if upper is None:
        return (*mouth, plumb, arris)
    if _axis(upper) is plumb:
        return (*mouth, plumb, _reading(upper))
    return (_axis(upper), _reading(upper), plumb, arris)


def _from(plane: Plane, spot: Point) -> float:
    one, here, other, there = spot
    reached = sum(
        part * (step_one * here + step_other * there)
        for part, step_one, step_other in zip(plane.normal, one.value, other.value, strict=True)
    )
    return abs(reached - plane.offset) / hypot(*plane.normal)


def _axis(line: Line | None) -> Axis:
    if line is None or line.axis is None:
        raise ValueError("a line to measure at has an axis")
    return line.axis


def _reading(line: Line | None) -> int:
    if line is None:
        raise ValueError("there is no such line")
    return line.at.nm
