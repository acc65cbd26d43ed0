"""Which bent and which wall a timber is in, read off where it lies between the plan lines.

How it works
1. A plan line is a name of `[lines]` that some timber's place is said by, as `east` or as `north`.
   It is the line of a bent or a wall where an upright timber stands on it.
2. A timber lies on a line if its arris keeps to that coordinate from end to end and the line runs
   along the arris or through the wood, or else if its wood lies within that of the posts there: a
   brace in the middle of its posts is in their bent.
3. Walls run the way plates, ridges and purlins do. Where no timber of such a kind lies, or they lie
   both ways, walls run the longer way of the plan. Bents stand across them.

Common practice, no source: a bent is a frame across the building, a wall one along it.
"""

from collections.abc import Iterator, Mapping
from typing import Literal, NamedTuple

from benchmate.frame.frame import Frame
from benchmate.measure.length import ZERO
from benchmate.model.project import Timber
from benchmate.workbench.touching import CLOSE, Span, box_of

Axis = Literal["east", "north"]
AXES: tuple[Axis, Axis] = ("east", "north")

ALONG = ("plate", "ridge", "purlin")
"""Words in the kinds of timbers that run the way the walls do."""


class Bents(NamedTuple):
    """The plan line of the bent and of the wall that each timber is in, by its id.

    `lines` are all those lines in the order of the project file. A timber in none is left out;
    `placed` are those that stand anywhere.
    """

    bents: Mapping[str, str]
    walls: Mapping[str, str]
    lines: tuple[str, ...]
    placed: frozenset[str]


class _Lying(NamedTuple):
    """A timber across one axis: from where to where its wood lies, and its arris if it keeps to it.

    A timber whose arris goes on along the axis has none.
    """

    id: str
    upright: bool
    span: Span
    arris: int | None


def bents_of(frame: Frame) -> Bents:
    """Every timber's bent and wall; worked out once for one frame."""
    return frame.once("bents and walls", lambda: _bents(frame))


def _bents(frame: Frame) -> Bents:
    on = {axis: _on_lines(frame, axis) for axis in AXES}
    across: Axis = "east" if _runs_along(frame) == "east" else "north"
    along: Axis = "north" if across == "east" else "east"
    found = {*on["east"].values(), *on["north"].values()}
    return Bents(
        bents=on[across],
        walls=on[along],
        lines=tuple(name for name in frame.project.lines if name in found),
        placed=frozenset(each.id for each in frame.project.timbers if frame.place(each.id)),
    )


def _on_lines(frame: Frame, axis: Axis) -> dict[str, str]:
    """The plan line of one axis that each timber lies on, if it lies on one with a post."""
    timbers = [found for each in frame.project.timbers if (found := _lying(frame, each, axis))]
    keeping = [each for each in timbers if each.arris is not None]
    posts: dict[str, list[_Lying]] = {}
    lines = {name: frame.value(frame.project.lines[name]).nm for name in _named(frame, axis)}
    on: dict[str, str] = {}
    for timber in keeping:
        name = _line_of(timber, lines)
        if name:
            on[timber.id] = name
            if timber.upright:
                posts.setdefault(name, []).append(timber)
    on = {timber: name for timber, name in on.items() if name in posts}
    for timber in keeping:
        within = (name for name, there in posts.items() if _within(timber, there))
        if timber.id not in on and (name := next(within, "")):
            on[timber.id] = name
    return on


def _named(frame: Frame, axis: Axis) -> tuple[str, ...]:
    """The plan lines that timbers' places are said by on one axis, in file order."""
    used = {name for timber in frame.project.timbers for name in _names(timber, axis)}
    return tuple(name for name in frame.project.lines if name in used)


def _names(timber: Timber, axis: Axis) -> Iterator[str]:
    for said in (timber.at, timber.incline):
        sums = said.sums() if said is not None else {}
        for key, total in sums.items():
            if key.rpartition(".")[2] == axis:
                yield from total.names()


def _line_of(timber: _Lying, lines: Mapping[str, int]) -> str:
    """The line that runs along a timber's arris, or else through its wood; the nearest of those."""
    low, high = timber.span
    arris = low if timber.arris is None else timber.arris
    near = [
        (abs(at - arris), name) for name, at in lines.items() if low - CLOSE <= at <= high + CLOSE
    ]
    return min(near)[1] if near else ""


def _within(timber: _Lying, posts: list[_Lying]) -> bool:
    low = min(post.span[0] for post in posts) - CLOSE
    high = max(post.span[1] for post in posts) + CLOSE
    return low <= timber.span[0] and timber.span[1] <= high


def _lying(frame: Frame, timber: Timber, axis: Axis) -> _Lying | None:
    place, box = frame.place(timber.id), box_of(frame, timber.id)
    if place is None or box is None:
        return None
    number = AXES.index(axis)
    start, finish = (
        place.point(along, ZERO, ZERO)[number] for along in (ZERO, frame.stick(timber.id).body)
    )
    keeps = abs(start - finish) <= CLOSE
    return _Lying(timber.id, timber.upright, box[number], start if keeps else None)


def _runs_along(frame: Frame) -> Axis:
    """The way the walls run."""
    ways = {
        axis
        for timber in frame.project.timbers
        if any(word in timber.kind.casefold() for word in ALONG)
        for axis in AXES
        if _runs(frame, timber, axis)
    }
    if len(ways) == 1:
        return ways.pop()
    boxes = [box for each in frame.project.timbers if (box := box_of(frame, each.id))]
    east, north = (
        max((box[axis][1] for box in boxes), default=0)
        - min((box[axis][0] for box in boxes), default=0)
        for axis in range(2)
    )
    return "east" if east >= north else "north"


def _runs(frame: Frame, timber: Timber, axis: Axis) -> bool:
    """Whether a level timber runs along an axis."""
    if frame.place(timber.id) is None or timber.incline is not None:
        return False
    return bool(timber.reference_end.value[AXES.index(axis)])
