"""The two lists of the bench screen as rows: the timbers, and the steps of the one in hand."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.layout.standing import State
from benchmate.tui.rows import Row
from benchmate.tui.stages import group_of
from benchmate.workbench.jobs import stuck

if TYPE_CHECKING:
    from collections.abc import Callable

    from benchmate.layout.step import Step
    from benchmate.tui.glyphs import Glyphs
    from benchmate.workbench.jobs import Waits
    from benchmate.workbench.walk import Walk


@dataclass(frozen=True, slots=True)
class StepRows:
    """The rows of the step list, and which step each row stands for (None for a heading)."""

    rows: tuple[Row, ...]
    places: tuple[int | None, ...]

    def row_of(self, place: int) -> int:
        """The row of a step."""
        return self.places.index(place)


def timber_row(walk: Walk, waits: Waits) -> Row:
    """A timber's name and progress, and whether it wants a second look or can only wait."""
    tail = f"{walk.done}/{len(walk.steps)}"
    if stuck(walk, waits):
        tail = f"waits  {tail}"
    if walk.look_again:
        tail = f"{walk.look_again} again  {tail}"
    if walk.stopped:
        tail = f"STOP  {tail}"
    if walk.trouble:
        tail = "unreadable"
    return Row(text=walk.timber.name, tail=tail, dim=walk.done == len(walk.steps))


def step_rows(walk: Walk, tail: Callable[[Step], str], glyphs: Glyphs, waits: Waits) -> StepRows:
    """The steps in order under their headings, each with a box or a waiting sign, and a tail."""
    boxes = {
        State.OPEN: glyphs.open_box,
        State.TICKED: glyphs.tick,
        State.LOOK_AGAIN: glyphs.look_again,
    }
    rows: list[Row] = []
    places: list[int | None] = []
    heading = ""
    for place, (step, standing) in enumerate(zip(walk.steps, walk.standings, strict=True)):
        group = group_of(walk, step)
        if group.heading != heading:
            heading = group.heading
            rows.append(Row(text=heading, heading=True))
            places.append(None)
        row = Row(
            text=group.short,
            lead=glyphs.waiting if step.id in waits else boxes[standing.state],
            tail=tail(step),
            dim=standing.state is State.TICKED,
            bold=standing.state is State.LOOK_AGAIN,
        )
        rows.append(row)
        places.append(place)
    return StepRows(tuple(rows), tuple(places))
