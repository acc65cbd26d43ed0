"""The running figures of a face: every mark along the timber that is struck on it.

1. They all run from one place, the squared reference end or the reference shoulder, whichever the
   bench measures from. A figure that runs from elsewhere says so beside it.
2. A figure whose joint cannot be is STOP. One that waits, is ticked or wants another look has the
   sign that it has in the list of steps.
3. A slanting line has its figure where it is set off, and on no face where it comes out elsewhere.
"""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from benchmate.layout.standing import State
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.solids import Axis
from benchmate.model.stick import axis_from
from benchmate.tui.distant import STOP
from benchmate.tui.drawing.datum import hook_along
from benchmate.tui.drawing.tags import SetOff, Tag

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from benchmate.layout.step import Step
    from benchmate.model.feature import Line, Reading
    from benchmate.tui.desk_view import DeskView


def running_figures(desk: DeskView) -> Mapping[Face, tuple[Tag, ...]]:
    """The figures to stand along the edges of each long face."""
    marks = tuple(_along(desk))
    datum = _datum(marks)
    signs = _signs(desk)
    return {face: tuple(_tags(desk, marks, face, datum, signs)) for face in LONG_FACES}


def datum_words(desk: DeskView) -> str:
    """The place that the running figures run from, in words; empty where there are none."""
    return _datum(tuple(_along(desk)))


_Mark = tuple["Step", "Line", "Reading"]


def _along(desk: DeskView) -> Iterator[_Mark]:
    """The steps that strike a line at a distance along the timber."""
    walk = desk.walk
    for step in walk.steps:
        feature = walk.layout.feature(step.feature)
        lines = feature.lines if feature else ()
        line = next((line for line in lines if line.id == step.line), None)
        readings = walk.readings(step, swapped=desk.swapped)
        if line is not None and line.axis is Axis.ALONG and readings:
            yield step, line, readings[0]


def _datum(marks: tuple[_Mark, ...]) -> str:
    """The hook that most of the figures run from."""
    hooks = Counter(reading.hook for _, _, reading in marks)
    return max(hooks, key=lambda hook: hooks[hook], default="")


def _signs(desk: DeskView) -> Mapping[str, str]:
    """The sign of each step, by its id, as in the list of steps; an open one has none."""
    glyphs, waits = desk.glyphs, desk.waits
    states = {State.TICKED: glyphs.tick, State.LOOK_AGAIN: glyphs.look_again}
    return {
        step.id: glyphs.waiting if step.id in waits else states.get(standing.state, "")
        for step, standing in zip(desk.walk.steps, desk.walk.standings, strict=True)
    }


def _tags(
    desk: DeskView,
    marks: tuple[_Mark, ...],
    face: Face,
    datum: str,
    signs: Mapping[str, str],
) -> Iterator[Tag]:
    walk = desk.walk
    zero = hook_along(walk.layout.stick, datum)
    if zero is not None:
        yield Tag(at=zero, figure="0")
    for step, line, reading in marks:
        spot = _spot(line, face) if face in step.faces else None
        if spot is None:
            continue
        stopped = bool(walk.withheld(step))
        figure = STOP if stopped else f"{signs[step.id]} {walk.tape.text(reading.value)}".lstrip()
        yield Tag(
            at=spot[0],
            figure=figure,
            source="" if stopped or reading.hook == datum else _source(reading.hook),
            current=step.id == desk.step.id,
            edge=spot[1],
        )


def _source(hook: str) -> str:
    """Where a figure runs from, as shortly as it can be said."""
    place = hook.removesuffix(" line")
    if place.startswith("squared "):
        end = place.removeprefix("squared ")
        place = end if end.endswith(" end") else f"{end} end"
    return f"from {place}"


def _spot(line: Line, face: Face) -> tuple[int, SetOff] | None:
    """Where along a face a line is set off, and on which edge.

    None where it comes out on the face at another distance than its figure tells.
    """
    slant = line.slant
    if slant is None:
        return line.at.nm, SetOff.EITHER
    along = slant.start.along.nm
    if axis_from(face) is slant.axis:
        return (along, SetOff.EITHER) if face.is_reference else None
    return along, SetOff.FAR if slant.start.deep > slant.finish.deep else SetOff.REFERENCE
