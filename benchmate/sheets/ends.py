"""The two ends as they look from outside, where something is struck or cut on their end grain."""

from collections.abc import Iterator

from benchmate.layout.outlines import Outline, face_view, outlines
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis
from benchmate.model.stick import axis_from
from benchmate.sheets.ink import (
    HEAVY,
    PLAIN,
    SMALL,
    THIN,
    Spot,
    drawing,
    hatched,
    line,
    lines,
    words,
)
from benchmate.sheets.sheet import TimberSheet

_SIZE = 18.0
"""Millimetres of the longer side of an end."""

_BESIDE = 9.0
"""Room for the name of a face on either side."""

_HATCH = 1.5


def ends(sheet: TimberSheet) -> tuple[str, ...]:
    """The drawings of the ends that have something on them, the reference end first."""
    if not sheet.drawn:
        return ()
    found = ((end, _shapes(sheet, end)) for end in (Face.REFERENCE_END, Face.FAR_END))
    return tuple(_drawn(sheet, end, shapes) for end, shapes in found if shapes)


def _shapes(sheet: TimberSheet, end: Face) -> tuple[Outline, ...]:
    stick = sheet.layout.stick
    found: list[Outline] = []
    for feature in sheet.layout.features:
        if feature.id not in sheet.stopped:
            whole = face_view(stick, end, stick.section(*feature.place)).rectangle().double_area
            shapes = outlines(feature, stick, end)
            found += [each for each in shapes if any(each.lines) or each.double_area < whole]
    return tuple(found)


def _drawn(sheet: TimberSheet, end: Face, shapes: tuple[Outline, ...]) -> str:
    stick = sheet.layout.stick
    around = stick.pose.around(end)
    flat = axis_from(around[3]) is Axis.FIRST
    first, second = stick.nominal.first.nm, stick.nominal.second.nm
    wide, tall = (first, second) if flat else (second, first)
    scale = _SIZE / max(wide, tall)
    left, top = _BESIDE, 2.4 * SMALL
    right, bottom = left + wide * scale, top + tall * scale

    def spot(point: tuple[int, int]) -> Spot:
        across, down = point if flat else point[::-1]
        x = right - across * scale if around[3].is_reference else left + across * scale
        y = top + down * scale if around[0].is_reference else bottom - down * scale
        return min(max(x, left), right), min(max(y, top), bottom)

    corners = (((left, top), (right, top)), ((left, bottom), (right, bottom)))
    upright = (((left, top), (left, bottom)), ((right, top), (right, bottom)))
    parts = [
        lines(
            [pair for shape in shapes for pair in hatched(list(map(spot, shape.points)), _HATCH)],
            THIN,
        ),
        lines(
            [(spot(a), spot(b)) for shape in shapes for a, b, name in shape.edges() if name], PLAIN
        ),
        *(
            line(*edge, HEAVY if face.is_reference else PLAIN)
            for face, edge in zip(around, (*corners, *upright), strict=True)
        ),
        *_names(sheet, end, ((left, top), (right, bottom))),
    ]
    return drawing(parts, right + _BESIDE, bottom + 1.3 * SMALL, kind="end")


def _names(sheet: TimberSheet, end: Face, box: tuple[Spot, Spot]) -> Iterator[str]:
    """The end's name on top, and round it where its faces look."""
    pose = sheet.layout.stick.pose
    (left, top), (right, bottom) = box
    middle, level = (left + right) / 2, (top + bottom) / 2 + SMALL * 0.35
    above, below, one, other = (_name(sheet, face) for face in pose.around(end))
    yield words(pose.words(end), (middle, SMALL * 0.9), anchor="middle", kind="name")
    yield words(above, (middle, top - SMALL * 0.35), anchor="middle")
    yield words(below, (middle, bottom + SMALL), anchor="middle")
    yield words(one, (left - 1, level), anchor="end")
    yield words(other, (right + 1, level))


def _name(sheet: TimberSheet, face: Face) -> str:
    """`S 1`, `top 2`, `W`: the number tells first from second."""
    direction = sheet.layout.stick.pose.direction(face)
    short = {Direction.UP: "top", Direction.DOWN: "under"}.get(direction, direction.name[0])
    number = {Face.FIRST: " 1", Face.SECOND: " 2"}.get(face, "")
    return f"{short}{number}"
