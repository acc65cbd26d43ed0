"""Held against the textbook: what a joint takes off its timbers, and whether they then fit.

A textbook says from a joint's definition alone which wood comes off each timber. The program's own
cuts have to take off the same wood, no more and no less.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import replace
from itertools import combinations
from typing import Any

from benchmate.frame.frame import Frame
from benchmate.measure.length import NM_PER_INCH
from benchmate.model.feature import Feature
from benchmate.model.solids import Cut, Plane
from tests.proof.kernel import Solid, touching
from tests.proof.wood import TOUCH, Log

Wastes = Mapping[str, Solid]
"""What a joint takes off each of its timbers in the building, by `<timber>/<feature>`; a body that
runs past the timber counts only as far as it lies in it."""

Textbook = Callable[[Any, Frame, Mapping[str, Log]], Wastes]
"""A joint's record, its frame and its timbers, to the wood it takes off them by definition."""

PUSH = 1000
"""How far one timber is pushed into another to see what they bear on, in nanometres: a micron."""

SHIFT = 1_000_000
"""How far a line is misplaced to see that it is noticed, in nanometres: a millimetre."""


TURNED = ((2 / 3, 2 / 3, 1 / 3), (-2 / 3, 1 / 3, 2 / 3), (1 / 3, -2 / 3, 2 / 3))
"""Three directions square to one another that lie along no timber."""


def differs(right: Wastes, logs: Mapping[str, Log]) -> Iterator[str]:
    """What the program takes off otherwise than the textbook; nothing where they agree."""
    for name, waste in right.items():
        timber, _, found = name.partition("/")
        feature = logs[timber].feature(found)
        log = logs[timber].at(feature)
        off = _apart(log, log.waste(feature), waste)
        if off > TOUCH:
            yield f"{name}: {off / 1e18:.3f} mm3 more or less than the textbook takes off"


def _apart(log: Log, made: Solid, right: Solid) -> float:
    inside = right.within(log.stand.put(log.block))
    return made.without([inside]).volume + inside.without([made]).volume


def overlaps(logs: Iterable[Log]) -> Iterator[str]:
    """Timbers that are in the same place once every joint is cut."""
    for one, other in combinations(logs, 2):
        if touching(one.wood, other.wood):
            shared = _shared(one.wood, other.wood)
            if shared > TOUCH:
                yield f"{one.timber.id} and {other.timber.id} share {shared / 1e18:.3f} mm3"


def _shared(one: Solid, other: Solid) -> float:
    """The volume two bodies share.

    Where faces coincide at odd angles the kernel at times finds wood that is not there, but not
    when the same two bodies are turned about: so what it finds has to be found both ways.
    """
    found = one.within(other).volume
    if found <= TOUCH:
        return found
    about = (0.0, 0.0, 0.0)
    return min(found, one.turned(TURNED, about).within(other.turned(TURNED, about)).volume)


def borne(one: Log, other: Log, way: tuple[int, int, int]) -> float:
    """The area that one timber bears on another with, going one way, in square inches.

    Pushed on by a thousandth of a millimetre it would share that area, so deep, with the other.
    """
    east, north, up = (PUSH * step for step in way)
    shared = one.wood.moved((east, north, up)).within(other.wood).volume
    return shared / PUSH / NM_PER_INCH**2


def misplaced(feature: Feature, line: str, by: int) -> Feature:
    """A feature with one of its lines struck so far off, in nanometres."""
    return replace(
        feature,
        cuts=tuple(
            Cut(tuple(_moved(plane, by) if plane.line == line else plane for plane in cut.planes))
            for cut in feature.cuts
        ),
    )


def _moved(plane: Plane, by: int) -> Plane:
    steep = round(sum(part * part for part in plane.normal) ** 0.5)
    return replace(plane, offset=plane.offset + by * steep)


def unnoticed(right: Wastes, logs: Mapping[str, Log], left: Wastes | None = None) -> Iterator[str]:
    """Lines that could lie a millimetre off, one way or the other, without any wood to show it.

    `left` is the wood that is there when a joint is cut, where other cuts come first.
    """
    for name, waste in right.items():
        timber, _, found = name.partition("/")
        feature = logs[timber].feature(found)
        log = logs[timber].at(feature)
        struck = {plane.line for cut in feature.cuts for plane in cut.planes if plane.line}
        steps = {step.id for step in log.layout.steps}
        for line in sorted(struck):
            if f"{found}/{line}" not in steps:
                continue
            for by in (SHIFT, -SHIFT):
                wrong = log.waste(misplaced(feature, line, by))
                if left and name in left:
                    wrong = wrong.within(left[name])
                if _apart(log, wrong, waste) <= TOUCH:
                    yield f"{name}/{line} by {by} nm"
