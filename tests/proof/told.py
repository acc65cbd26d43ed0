"""What the steps of a joint say, held against the planes of its cuts.

A framer has nothing but the steps. So every plane that bounds a cut has to be the one that the
figures of its step set off, with its waste on the side the step says.

How it works
1. A square line is set off from a face, the squared end, the reference shoulder or a housing's
   floor.
2. A slanting line has two points: its start as the reading says, its other end as the first figure
   beside it. Where a point is said to lie on a face, it does.
3. A line parallel to another is set off square from that one.
4. A floor that slopes away from a face is told by how deep it is at two lines.
5. A floor that leans across the timber: see `leaning.py`.
6. Round holes: see `bored.py`. Lines gauged from an arris: see `gauged.py`.
7. Depths from a far face count in the section measured at the joint.
8. A level line is set off so far down a plumb one, from the top edge.
9. A line on a tenon is set off from a side that was cut: see `hooked.py`.
"""

import re
from collections.abc import Iterator
from math import hypot

from benchmate.layout.step import Step
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.feature import Feature, Line, Reading, Spot
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import ENDS, reference_for
from benchmate.model.words import lower_first
from tests.proof.bored import misbored, sides_of
from tests.proof.gauged import gauged, misgauged
from tests.proof.hooked import on_tenon, set_off
from tests.proof.leaning import LEANING, off_leaning
from tests.proof.wood import Log

NEAR_ENOUGH = 4.0
"""How far a plane may lie from where its step puts it, in nanometres: a few roundings."""

TOP_EDGE = "top edge"
"""Where a rafter's plumb lines start, and its heights are measured down from."""

OPENINGS = {
    "shoulder line": ("shoulder",),
    "housing floor": ("housing-floor",),
    "seat line": ("seat",),
}
"""What a line that is set off square from another may hook on, and what that one may be called."""


def untrue(log: Log) -> Iterator[str]:
    """What is wrong between the cuts of a timber and its steps; nothing where all is told true."""
    for feature in log.layout.features:
        there = log.at(feature)
        yield from misbored(there, feature)
        yield from misgauged(there, feature)
        for plane in _planes(feature):
            yield from _untrue(there, feature, plane)


def _planes(feature: Feature) -> Iterator[Plane]:
    """The planes of a feature that its steps strike one by one.

    The squared end is struck from the rough one, of which nobody knows where it is.
    """
    apart = {line.id for line in gauged(feature)} | ({"square"} if feature.id == ENDS else set())
    yield from dict.fromkeys(
        plane
        for cut in feature.cuts
        for plane in cut.planes
        if plane not in sides_of(cut) and plane.line not in apart
    )


def _untrue(log: Log, feature: Feature, plane: Plane) -> Iterator[str]:
    where = f"{log.timber.id}: {feature.id}/{plane.line}"
    steps = {step.id: step for step in log.layout.steps}
    step = steps.get(f"{feature.id}/{plane.line}")
    if step is None:
        if not _in_a_face(log, plane):
            yield f"{where} bounds a cut and is never struck"
        return
    line = next(line for line in feature.lines if line.id == plane.line)
    if plane.line in LEANING:
        off = off_leaning(log.layout.stick, feature, line, step, plane)
        if off > NEAR_ENOUGH:
            yield f"{where} lies {off:.0f} nm from where its depth and its end put it"
        return
    if line.slant is None and _sloping(plane):
        yield from _fading(log, feature, step, plane)
        return
    for reading in step.readings:
        off = _off(log, feature, line, reading, plane)
        if off > NEAR_ENOUGH:
            yield f"{where} lies {off:.0f} nm from where {reading.value} {reading.words} puts it"
    yield from _spots(log, step, line, plane)
    if step.waste_side and not _wasted(log, feature, plane, step.waste_side):
        yield f"{where} has its waste on another side than towards the {step.waste_side}"


def _sloping(plane: Plane) -> bool:
    return sum(map(bool, plane.normal)) > 1


def _fading(log: Log, feature: Feature, step: Step, plane: Plane) -> Iterator[str]:
    """Whether a floor that slopes away from a face goes as deep as is said at two of its lines."""
    at = {line.title.lower(): (line.axis, line.at) for line in feature.lines}
    at["this line"] = at[step.short.lower()]
    told = [
        re.fullmatch(r"deep from the (.+), at (?:the )?(.+)", each.words) for each in step.beside
    ]
    points = 0
    for beside, found in zip(step.beside, told, strict=True):
        if found is None:
            continue
        face, where = found.groups()
        axis, reading = at[where]
        point = [0.0, 0.0, 0.0]
        number, deep = set_off(log, Reading(value=beside.value, hook=face, way=""))
        point[(axis or Axis.ALONG).value.index(1)], point[number] = reading.nm, deep
        off = sum(n * each for n, each in zip(plane.normal, point, strict=True)) - plane.offset
        points += 1
        if abs(off) / hypot(*plane.normal) > NEAR_ENOUGH:
            yield f"{step.id} is not {beside.value} {beside.words}"
    if points < 2:
        yield f"{step.id} does not say how deep it is at two lines"
    if step.waste_side and not _towards(log, plane, step.waste_side):
        yield f"{step.id} has its waste on another side than towards the {step.waste_side}"


def _in_a_face(log: Log, plane: Plane) -> bool:
    """Whether a plane lies in the timber's own face or end, or outside it, so needs no line."""
    stick, section = log.layout.stick, log.section
    limits = (
        (stick.start.nm, stick.finish.nm),
        (0, section.first.nm),
        (0, section.second.nm),
    )
    found = [number for number, part in enumerate(plane.normal) if part]
    if len(found) != 1:
        return False
    low, high = limits[found[0]]
    return not low < plane.offset * plane.normal[found[0]] < high


def _off(log: Log, feature: Feature, line: Line, reading: Reading, plane: Plane) -> float:
    """How far a plane lies from where a reading puts it."""
    if line.slant is not None and line.axis is None and reading.hook == TOP_EDGE:
        return _down_off(log, feature, line, reading)
    if line.slant is not None and line.axis is None and reading.hook not in OPENINGS:
        return 0.0  # along another line: told by its spots
    if reading.hook in OPENINGS:
        gaps = _gaps(feature, plane, reading.hook)
        return max(abs(gap - reading.value.nm) for gap in gaps)
    axis, at = on_tenon(log, feature, reading) or set_off(log, reading)
    if line.slant is None:
        return abs(at - plane.offset * plane.normal[axis])
    start = line.slant.start
    return abs(at - (start.along if axis == 0 else start.deep).nm)


def _down_off(log: Log, feature: Feature, line: Line, reading: Reading) -> float:
    """How far a line's start lies from where it comes down a plumb line from the top edge."""
    name = reading.way.removeprefix("down the ").partition(",")[0]
    others = (feature, *log.layout.features)
    plumb = next(
        found.slant
        for each in others
        for found in each.lines
        if lower_first(found.title) == name and found.slant is not None
    )
    start, here = plumb.start, line.slant.start if line.slant else Spot(ZERO, ZERO)
    along, down = (here.along - start.along).nm, (here.deep - start.deep).nm
    slope = Spot(plumb.finish.along - start.along, plumb.finish.deep - start.deep)
    aside = abs(along * slope.deep.nm - down * slope.along.nm) / hypot(*(each.nm for each in slope))
    return max(abs(hypot(along, down) - reading.value.nm), aside, abs(start.deep.nm))


def _gaps(feature: Feature, plane: Plane, hook: str) -> Iterator[float]:
    """How far a plane lies from the line it is set off square from, at both ends of that line.

    A plane's own height above a timber's zero would blow a nanometre's tilt up, feet away from it.
    """
    lines = {line.id: line for line in feature.lines}
    other = next(lines[name] for name in OPENINGS[hook] if name in lines)
    if other.slant is None:
        found = (plane for cut in feature.cuts for plane in cut.planes if plane.line == other.id)
        yield _gap(plane, next(found))
        return
    number = other.slant.axis.value.index(1)
    for spot in (other.slant.start, other.slant.finish):
        yield _from_plane(plane, number, spot)


def _gap(one: Plane, other: Plane) -> float:
    """How far apart two parallel planes lie, either way round."""
    heights = [plane.offset / hypot(*plane.normal) for plane in (one, other)]
    same = sum(a * b for a, b in zip(one.normal, other.normal, strict=True)) > 0
    return abs(heights[0] - heights[1] if same else heights[0] + heights[1])


def _spots(log: Log, step: Step, line: Line, plane: Plane) -> Iterator[str]:
    """Whether the two points of a slanting line lie on its plane, and where they are said to."""
    if line.slant is None:
        return
    number = line.slant.axis.value.index(1)
    for spot, where in zip((line.slant.start, line.slant.finish), line.slant.where, strict=True):
        off = _from_plane(plane, number, spot)
        if off > NEAR_ENOUGH:
            yield f"{step.id} has a spot {off:.0f} nm off its plane"
        deep = _depth_of(log, line.slant.axis, where)
        if deep is not None and deep != spot.deep.nm:
            yield f"{step.id} says {spot.deep} in is on the {where}"


def _from_plane(plane: Plane, number: int, spot: Spot) -> float:
    reached = plane.normal[0] * spot.along.nm + plane.normal[number] * spot.deep.nm
    return abs(reached - plane.offset) / hypot(*plane.normal)


def _depth_of(log: Log, axis: Axis, where: str) -> int | None:
    """How deep in a face lies on an axis; None for words that are no face of the timber."""
    stick, near = log.layout.stick, reference_for(axis)
    section = log.section
    if where == stick.pose.words(near):
        return 0
    if where == stick.pose.words(near.opposite):
        return (section.first if axis is Axis.FIRST else section.second).nm
    return None


def _wasted(log: Log, feature: Feature, plane: Plane, side: str) -> bool:
    """Whether a line's waste lies on a side; one that ends another cut too has waste on both."""
    bounds = [each for cut in feature.cuts for each in cut.planes if each.line == plane.line]
    return any(_towards(log, each, side) for each in bounds)


def _towards(log: Log, plane: Plane, side: str) -> bool:
    """Whether the waste of a plane lies towards a side of the timber."""
    pose = log.layout.stick.pose
    face = next(face for face in Face if pose.words(face) == side)
    number = 0 if face.is_end else 1 if face in (Face.FIRST, Face.FAR_FIRST) else 2
    return (plane.normal[number] > 0) is face.is_reference
