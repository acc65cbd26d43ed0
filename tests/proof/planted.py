"""Slips planted in one line of a joint after another: in what is cut, and in what is said.

How it works
1. A line is cut to in the wrong place: a millimetre off either way, mirrored as on a timber of the
   other hand, or measured from the far side and hatched as it should be. The textbook has to show
   that other wood is gone.
2. A line's figure, what it hooks on or its waste side is said wrongly in the same ways. The cut has
   to show that it is untrue.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import replace
from typing import NamedTuple, TypeVar

from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Feature, Reading
from benchmate.model.solids import Cut, Plane
from benchmate.model.stick import ENDS
from tests.proof.bored import prisms, sides_of
from tests.proof.fits import SHIFT, misplaced
from tests.proof.gauged import gauged
from tests.proof.told import untrue
from tests.proof.wood import Log

Spans = tuple[tuple[int, int], tuple[int, int], tuple[int, int]]
"""From where to where a stick runs on each of its axes."""

Turn = Callable[[Plane, Spans], Plane]
"""A plane to the one that is cut to by mistake."""

UNCUT = ("-block",)
"""How the names of marks end at which nothing is cut."""


class Slip(NamedTuple):
    """What went wrong at a line, and the timber with it."""

    words: str
    log: Log


Right = TypeVar("Right")


def uncaught_cuts(
    right: Mapping[str, Right],
    logs: Mapping[str, Log],
    wrong: Callable[[Mapping[str, Right], Mapping[str, Log]], Iterable[str]],
) -> Iterator[str]:
    """Slips in cutting to a line that a textbook does not show; nothing if it is good.

    `right` is what it says of each `<timber>/<feature>`, and `wrong` tells what is otherwise.
    """
    for name, here in right.items():
        timber, _, feature = name.partition("/")
        for slip in miscut(logs[timber], feature):
            if not list(wrong({name: here}, {timber: slip.log})):
                yield f"{name}/{slip.words}"


def uncaught_words(logs: Mapping[str, Log]) -> Iterator[str]:
    """Slips in saying where a line or its waste is that the cuts do not show."""
    for timber, log in logs.items():
        for slip in misread(log):
            if not list(untrue(slip.log)):
                yield f"{timber}/{slip.words}"


def miscut(log: Log, feature: str) -> Iterator[Slip]:
    """A timber with every slip in cutting at every struck line of one of its joints, in turn."""
    found = log.feature(feature)
    steps = {step.id for step in log.layout.steps}
    lines = {plane.line for cut in found.cuts for plane in cut.planes if plane.line}
    for line in sorted(line for line in lines if f"{feature}/{line}" in steps):
        for by in (SHIFT, -SHIFT):
            yield _cut(log, misplaced(found, line, by), f"{line} off by {by} nm")
        for words, turn in (("mirrored", mirrored), ("from the far side", from_far_side)):
            wrong = _turned(log.at(found), found, line, turn)
            if wrong != found:
                yield _cut(log, wrong, f"{line} {words}")
    for number, prism in enumerate(prisms(found)):
        for axis in prism.middle:
            for by in (SHIFT, -SHIFT):
                wrong = _bored_off(found, number, axis, by)
                yield _cut(log, wrong, f"peg-{number + 1} off by {by} nm on axis {axis}")


def _bored_off(feature: Feature, number: int, axis: int, by: int) -> Feature:
    """A feature with one of its round holes moved along an axis."""
    hole = feature.cuts[number]
    sides = sides_of(hole)
    moved = [
        replace(plane, offset=plane.offset + by * plane.normal[axis]) if plane in sides else plane
        for plane in hole.planes
    ]
    cuts = list(feature.cuts)
    cuts[number] = Cut(tuple(moved))
    return replace(feature, cuts=tuple(cuts))


def mirrored(plane: Plane, spans: Spans) -> Plane:
    """Where a plane lies on a timber of the other hand, its waste with it."""
    axis = _axis(plane)
    normal = [-part if number == axis else part for number, part in enumerate(plane.normal)]
    offset = plane.offset - plane.normal[axis] * sum(spans[axis])
    return replace(plane, normal=(normal[0], normal[1], normal[2]), offset=offset)


def from_far_side(plane: Plane, spans: Spans) -> Plane:
    """A square plane as far from the far side as it should be from the near one."""
    axis = _axis(plane)
    if sum(map(abs, plane.normal)) != 1:
        return plane
    at = plane.normal[axis] * plane.offset
    return replace(plane, offset=plane.normal[axis] * (sum(spans[axis]) - at))


def _axis(plane: Plane) -> int:
    """The first axis that a plane is not along."""
    return next(number for number, part in enumerate(plane.normal) if part)


def _turned(log: Log, feature: Feature, line: str, turn: Turn) -> Feature:
    stick, section = log.layout.stick, log.section
    spans = ((stick.start.nm, stick.finish.nm), (0, section.first.nm), (0, section.second.nm))
    cuts = (
        Cut(tuple(turn(plane, spans) if plane.line == line else plane for plane in cut.planes))
        for cut in feature.cuts
    )
    return replace(feature, cuts=tuple(cuts))


def _cut(log: Log, wrong: Feature, words: str) -> Slip:
    features = tuple(wrong if each.id == wrong.id else each for each in log.layout.features)
    return Slip(words, replace(log, layout=replace(log.layout, features=features)))


def misread(log: Log) -> Iterator[Slip]:
    """A timber with every slip in saying where any line of its joints is, in turn."""
    for step in log.layout.steps:
        if step.line is None or step.feature == ENDS or step.line.endswith(UNCUT):
            continue
        for by in (SHIFT, -SHIFT):
            off = [replace(each, value=each.value + Length(by)) for each in step.readings]
            yield _said(log, replace(step, readings=tuple(off)), f"off by {by} nm")
        across = tuple(replace(each, hook=_wrong_hook(log, step, each)) for each in step.readings)
        if across != step.readings:
            yield _said(log, replace(step, readings=across), "from the far side")
        if step.waste_side:
            side = _across(log)[step.waste_side]
            yield _said(log, replace(step, waste_side=side), "wasted on the far side")


def _said(log: Log, wrong: Step, words: str) -> Slip:
    steps = tuple(wrong if each.id == wrong.id else each for each in log.layout.steps)
    return Slip(f"{wrong.id} {words}", replace(log, layout=replace(log.layout, steps=steps)))


def _across(log: Log) -> dict[str, str]:
    """What a framer calls the side across from each side of a timber."""
    words = log.layout.stick.pose.words
    return {words(face): words(face.opposite) for face in Face}


def _wrong_hook(log: Log, step: Step, reading: Reading) -> str:
    """What a figure may be measured from by mistake: the face across, the other datum or arris."""
    stick, feature = log.layout.stick, log.feature(step.feature)
    if step.line in {line.id for line in gauged(feature)}:
        return _wrong_arris(log, reading.hook)
    end = stick.pose.words(Face.REFERENCE_END)
    datums = [f"squared {end}", f"{end} shoulder line"]
    if reading.hook in datums and stick.near:
        return datums[reading.hook == datums[0]]
    return _across(log).get(reading.hook, reading.hook)


def _wrong_arris(log: Log, hook: str) -> str:
    """The arris across from each that a line should be gauged from."""
    across = {
        here.removesuffix(" face"): there.removesuffix(" face")
        for here, there in _across(log).items()
    }
    names, _, kind = hook.rpartition(" ")
    pairs = (name.split("-") for name in names.split(", "))
    return f"{', '.join('-'.join(map(across.__getitem__, pair)) for pair in pairs)} {kind}"
