"""How a timber's net lies on the paper: a box for each face, and where each place along it comes.

How it works
1. The faces are as high as the scale across makes them, but never too low for three rows of
   figures.
2. A joint is as long as it is at that scale, and longer where figures need it; bare wood beside one
   keeps room for the figures of its lines; what is left is shortened to fit (`scale`).
"""

from dataclasses import dataclass
from itertools import pairwise

from benchmate.model.directions import Face
from benchmate.sheets.fitting import Box
from benchmate.sheets.ink import Spot
from benchmate.sheets.scale import Scale, fitted
from benchmate.sheets.sheet import TimberSheet
from benchmate.sheets.unrolled import Figure, Running, Side, unrolled

LEFT, RIGHT = 18.0, 193.0
"""Where the timber's two ends may come on the paper, in millimetres."""

PITCH = 3.3
"""From one running figure to the next."""

_NET = 35.2
"""How high the four faces are together, at most."""

_LEAST_FACE = 8.8
"""The narrowest face: three rows of figures."""

_ROOM = 24.0
"""Bare wood beside a joint that has figures: two columns of them."""

_BARE = 150_000_000
"""A stretch this long, in nanometres, may hold figures of the joint beside it: 150 mm."""

_JOINT = 400_000_000
"""A stretch with waste on it that is shorter than this, in nanometres, is a joint's: 400 mm."""


@dataclass(frozen=True, slots=True)
class Net:
    """The net on the paper: its faces with their boxes, the scale along, and the scale across."""

    sides: tuple[Side, ...]
    boxes: tuple[Box, ...]
    scale: Scale
    across: float

    def spot(self, side: Side, box: Box, along: int, deep: int) -> Spot:
        """A point of a face on the paper; one past the far edge comes on the edge."""
        down = min(deep * self.across, box.bottom - box.top)
        return self.scale.at(along), box.bottom - down if side.turned else box.top + down


def net_of(sheet: TimberSheet, marks: tuple[Running, ...], top: float) -> Net:
    """The net of a timber below a band of running figures `top` high, with room for these."""
    sides, stick = unrolled(sheet), sheet.layout.stick
    widths = [_width(sheet, side.face) for side in sides]
    true = (RIGHT - LEFT) / (stick.finish - stick.start).nm
    across = min(max(true, _LEAST_FACE / min(widths)), _NET / sum(widths))
    places = _places(sheet, sides, marks)
    least = _least(places, sides, marks, across)
    bare = tuple(not _worked(sides, *each) for each in pairwise(places))
    scale = fitted(places, least, bare, true=across, left=LEFT, width=RIGHT - LEFT)
    edges = [top]
    for width in widths:
        edges.append(edges[-1] + width * across)
    boxes = (Box(LEFT, top, scale.papers[-1], bottom) for top, bottom in pairwise(edges))
    return Net(sides=sides, boxes=tuple(boxes), scale=scale, across=across)


def _width(sheet: TimberSheet, face: Face) -> int:
    """How wide a face is drawn: as the stick is drawn."""
    section = sheet.layout.stick.nominal
    wide = section.second if face in (Face.FIRST, Face.FAR_FIRST) else section.first
    return wide.nm


def _places(
    sheet: TimberSheet, sides: tuple[Side, ...], marks: tuple[Running, ...]
) -> tuple[int, ...]:
    stick = sheet.layout.stick
    found = {stick.start.nm, stick.finish.nm, *(mark.along for mark in marks)}
    for side in sides:
        found |= {along for shape in side.waste for along, _ in shape}
        found |= {along for stroke in side.strokes for along, _ in stroke}
    return tuple(sorted(each for each in found if stick.start.nm <= each <= stick.finish.nm))


def _least(
    places: tuple[int, ...], sides: tuple[Side, ...], marks: tuple[Running, ...], true: float
) -> tuple[float, ...]:
    """Each stretch's least width.

    That is a figure's pitch between two marks, room for figures beside a joint, and the true width
    of a joint itself.
    """
    marked = {mark.along for mark in marks}
    figured = {at for side in sides for each in side.figures for at in _ends(each)}
    return tuple(
        max(
            PITCH if {low, high} <= marked else PITCH / 3,
            _ROOM if high - low > _BARE and {low, high} & figured else 0.0,
            (high - low) * true if high - low < _JOINT and _worked(sides, low, high) else 0.0,
        )
        for low, high in pairwise(places)
    )


def _worked(sides: tuple[Side, ...], low: int, high: int) -> bool:
    """Whether there is waste on any face between two places that are next to each other."""
    spans = ([along for along, _ in shape] for side in sides for shape in side.waste)
    return any(min(span) <= low and high <= max(span) for span in spans)


def _ends(figure: Figure) -> tuple[int, int]:
    return figure.start[0], figure.end[0]
