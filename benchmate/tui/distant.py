"""What is shown to a framer who stands back from the screen: the figure, and what guards it.

The words are those of the bench, so that nothing reads otherwise from two paces than at arm's
length. What keeps a figure from being cut to comes first, in letters of its own.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.layout.standing import State
from benchmate.layout.step import shown_readings

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.layout.step import Step
    from benchmate.measure.printing import Shown
    from benchmate.tui.desk_view import DeskView
    from benchmate.tui.words import Saying

STOP = "STOP"
WAITS = "WAITS"
LOOK_AGAIN = "LOOK AGAIN"
OLD = "OLD FIGURES"
TICKED = "TICKED"

GUARDS = ("again", "stop", "waits", "care")
"""The labels of sayings that keep a figure from being cut to blindly."""

MAKES = ("from", "set", "and", "or", "to", "on", "waste", "square")
"""The labels of sayings that make the mark and keep it off the wrong side."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Distant:
    """A step as seen from two paces.

    `alarms` go before all else. `figure` is None for a step without one, or whose figure cannot be
    trusted; `headline` then stands in its place. `other_end` is where a slanting line comes out.
    `words` are in the order of their need. `after` is what a tick would go on to; empty on a stop,
    where no figure at all is to be read.
    """

    alarms: tuple[str, ...]
    title: str
    figure: Shown | None
    headline: str
    other_end: str
    words: tuple[Saying, ...]
    after: str


def distant(desk: DeskView) -> Distant:
    """The step in hand as seen from two paces."""
    step, withheld = desk.step, bool(desk.walk.withheld(desk.step))
    # A step that works to several figures is not told by one of them.
    several = step.line is None and len(step.readings) > 1
    figure = None if several else desk.figure()
    told = (*GUARDS, *MAKES) if step.readings else (*GUARDS, *MAKES, "why")
    said = [saying for saying in desk.words() if saying.label in told]
    other = [f"to {saying.text}" for saying in said if saying.label == "to"]
    return Distant(
        alarms=tuple(_alarms(desk)),
        title=step.title,
        figure=figure,
        headline=STOP if withheld else step.title if figure is None else "",
        other_end=other[0] if other and figure is not None else "",
        words=tuple(said),
        after="" if withheld else after(desk),
    )


def _alarms(desk: DeskView) -> Iterator[str]:
    """What a framer must see before the figure; a stop stands in the figure's place itself."""
    state = desk.standing.state
    if desk.bench.broken:
        yield OLD
    if state is State.LOOK_AGAIN:
        yield LOOK_AGAIN
    if desk.waiting and not desk.walk.withheld(desk.step):
        yield WAITS
    if state is State.TICKED:
        yield TICKED


def after(desk: DeskView) -> str:
    """What a tick would go on to, with its figure as it will be read then; empty for nothing."""
    walk = desk.walk
    place = walk.next_open(desk.place, passing=desk.waits)
    if place is None or place == desk.place:
        return ""
    step = walk.steps[place]
    return f"{figure_then(desk, step)} {step.title}".lstrip()


def figure_then(desk: DeskView, step: Step) -> str:
    """The figure of a step once the one in hand is ticked: that tick may strike the shoulder."""
    walk = desk.walk
    if walk.withheld(step):
        return STOP
    readings = shown_readings(
        step,
        shoulder_struck=walk.struck or desk.step.id == walk.layout.shoulder,
        swapped=desk.swapped,
    )
    if not readings or (step.line is None and len(readings) > 1):
        return ""
    return walk.tape.text(readings[0].value)
