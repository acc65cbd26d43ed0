"""The four faces drawn as one net in black ink, with running figures above it.

How it works
1. Across the timber all is to scale. Along it the scale is broken where nothing is (`scale`), so
   that figures can be read; a zigzag shows where.
2. Above stand the figures along the timber, each once for all four faces, on a thin line that leads
   to its mark: from the end or the shoulder that the table counts from too.
3. On the faces stand the figures in from a reference face and the depths; one that finds no free
   place is left to the table. Nothing overlaps.
"""

from collections.abc import Iterator

from benchmate.model.directions import Face
from benchmate.sheets.fitting import Box, Placed, placed
from benchmate.sheets.ink import (
    HEAVY,
    PLAIN,
    SMALL,
    THIN,
    Spot,
    blank,
    drawing,
    hatched,
    line,
    lines,
    polyline,
    room_for,
    words,
)
from benchmate.sheets.scale import spread
from benchmate.sheets.sheet import TimberSheet
from benchmate.sheets.sizing import LEFT, PITCH, RIGHT, Net, net_of
from benchmate.sheets.unrolled import Running, Side, datum_hook, running

WIDTH = 196.0
"""Millimetres: what both A4 and Letter leave between margins of 7 mm or more."""

NOTE = (
    "Seen from outside in rolling order; heavy: reference arris; hatched: waste; along the timber "
    "not to scale."
)
"""What to know of the drawing."""

_LEADER = 1.8
_HATCH = 1.5
_BREAK = 1.1
_PAST = 0.4


def net(sheet: TimberSheet) -> str:
    """The drawing, or nothing where the faces cannot be drawn."""
    if not sheet.drawn:
        return ""
    hook = datum_hook(sheet)
    marks = running(sheet, hook)
    made = net_of(sheet, marks, _band(sheet, marks))
    parts = (
        *_faces(sheet, made),
        *_figures_along(sheet, made, marks),
        *_captions(sheet, made, hook),
    )
    return drawing(parts, WIDTH, made.boxes[-1].bottom + 0.5, kind="net")


def _band(sheet: TimberSheet, marks: tuple[Running, ...]) -> float:
    """The height of a band of figures with their leaders."""
    widest = max((room_for(sheet.tape.text(mark.value)) for mark in marks), default=0.0)
    return widest + _LEADER + 0.4


def _faces(sheet: TimberSheet, made: Net) -> Iterator[str]:
    strokes: list[tuple[Spot, Spot]] = []
    hatching: list[tuple[Spot, Spot]] = []
    for side, box in zip(made.sides, made.boxes, strict=True):
        for shape in side.waste:
            corners = [made.spot(side, box, *point) for point in shape]
            hatching += hatched(corners, _HATCH)
            hatching += zip(corners, (*corners[1:], corners[0]), strict=True)
        strokes += [
            (made.spot(side, box, *stroke.start), made.spot(side, box, *stroke.end))
            for stroke in side.strokes
        ]
    yield lines(hatching, THIN)
    yield lines(strokes, PLAIN)
    yield from _outline(made)
    for side, box in zip(made.sides, made.boxes, strict=True):
        yield from _figures_on(sheet, made, side, box)


def _outline(made: Net) -> Iterator[str]:
    """The edges of the faces, the reference arris heavy, the ends, and the breaks."""
    top, bottom = made.boxes[0].top, made.boxes[-1].bottom
    edges = [top, *(box.bottom for box in made.boxes)]
    left, right = made.boxes[0].left, made.boxes[0].right
    yield lines([((left, edge), (right, edge)) for edge in edges], PLAIN)
    yield lines([((end, top), (end, bottom)) for end in (left, right)], PLAIN)
    arris = made.boxes[0].bottom
    yield line((left, arris), (right, arris), HEAVY)
    for at in made.scale.breaks:
        yield blank((at - _BREAK / 2, top - _PAST), (at + _BREAK / 2, bottom + _PAST))
        for side in (-_BREAK / 2, _BREAK / 2):
            yield polyline(_zigzag(at + side, top, bottom), THIN)


def _zigzag(at: float, top: float, bottom: float) -> list[Spot]:
    middle = (top + bottom) / 2
    return [
        (at, top - _PAST),
        (at, middle - 1.2),
        (at - 0.9, middle - 0.4),
        (at + 0.9, middle + 0.4),
        (at, middle + 1.2),
        (at, bottom + _PAST),
    ]


def _figures_on(sheet: TimberSheet, made: Net, side: Side, box: Box) -> Iterator[str]:
    """The figures of one face, each where it hides nothing."""
    taken = tuple(_taken(made, side, box))
    others: list[Placed] = []
    for figure in side.figures:
        text = sheet.tape.text(figure.value) + (" deep" if figure.deep else "")
        ends = made.spot(side, box, *figure.start), made.spot(side, box, *figure.end)
        found = placed(ends, room_for(text), _inside(box), taken, tuple(others))
        if found:
            others.append(found)
            yield from _written(found, text)


def _inside(box: Box) -> Box:
    return Box(box.left + 0.3, box.top + 0.1, box.right - 0.3, box.bottom - 0.1)


def _taken(made: Net, side: Side, box: Box) -> Iterator[Box]:
    """What no figure may stand on: waste, lines and breaks."""
    shapes = [*side.waste, *((stroke.start, stroke.end) for stroke in side.strokes)]
    for shape in shapes:
        xs, ys = zip(*(made.spot(side, box, *point) for point in shape), strict=True)
        yield Box(min(xs) - 0.2, min(ys) - 0.1, max(xs) + 0.2, max(ys) + 0.1)
    for at in made.scale.breaks:
        yield Box(at - _BREAK, box.top, at + _BREAK, box.bottom)


def _written(found: Placed, text: str) -> Iterator[str]:
    yield line(*found.lead, THIN)
    yield words(text, (found.box.left, found.box.bottom - SMALL * 0.12))


def _figures_along(sheet: TimberSheet, made: Net, marks: tuple[Running, ...]) -> Iterator[str]:
    """The running figures above: each stands on a thin line that leads to its mark."""
    wished = tuple(made.scale.at(mark.along) for mark in marks)
    edge = made.boxes[0].top
    tip = edge - _LEADER
    spreads = spread(wished, PITCH, LEFT, RIGHT + 1)
    for mark, at, stands in zip(marks, wished, spreads, strict=True):
        yield polyline([(at, edge), (at, edge - 0.6), (stands, tip)], THIN)
        foot = (stands + SMALL * 0.36, tip - 0.4)
        yield words(sheet.tape.text(mark.value), foot, upright=True)


def _captions(sheet: TimberSheet, made: Net, hook: str) -> Iterator[str]:
    """What the figures above count from, and which face is which."""
    stick = sheet.layout.stick
    yield from _caption(hook.removesuffix(" line"), made.boxes[0].top - 3 * SMALL)
    for side, box in zip(made.sides, made.boxes, strict=True):
        middle = (box.top + box.bottom) / 2
        name = stick.pose.words(side.face).removesuffix(" face")
        number = {Face.FIRST: "first ref.", Face.SECOND: "second ref."}.get(side.face, "")
        yield words(name, (0, middle + (0 if number else SMALL * 0.35)), kind="name")
        if number:
            yield words(number, (0, middle + SMALL))


def _caption(hook: str, at: float) -> Iterator[str]:
    """What figures count from, in words of few letters one under the other."""
    squared = hook.removeprefix("squared ")
    parts = ("squared", squared) if squared != hook else tuple(hook.rsplit(" ", 1))
    for row, text in enumerate(("from the", *parts)):
        yield words(text, (0, at + row * SMALL * 1.05))
