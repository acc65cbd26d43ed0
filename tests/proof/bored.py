"""What the steps say of round holes, held against the cuts that stand for them.

How it works
1. A hole is a prism of eight sides round it, none of which is struck. What is struck is the line
   that its centre lies on and one across that; it goes in square from the face these are on.
2. So the prism's middle has to be where the two lines cross, and each of its sides has to touch a
   round as wide as the bit.
3. On a tenon that rakes the two are set off square from its shoulder and from its nose.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot

from benchmate.layout.step import Step
from benchmate.model.feature import Feature, Reading
from benchmate.model.solids import Cut, Plane
from benchmate.model.stick import axis_from
from tests.proof.hooked import on_tenon, set_off
from tests.proof.wood import Log

SIDES = 8
"""How many planes stand for a round hole."""

ROUNDED = 1.5
"""How far a side may lie outside the round it touches, in nanometres: a rounding up or two."""


SQUARE_FROM = {
    "shoulder line": ("shoulder",),
    "seat line": ("seat",),
    "nose line": ("nose",),
}
"""The lines of a raking tenon that its own holes are set off square from."""

SQUARE_TO_ONE_ANOTHER = ({"shoulder line", "nose line"}, {"seat line", "nose line"})
"""The pairs of them that place a hole between them."""

NEAR_ENOUGH = 4.0
"""How far such a hole may lie from where its step puts it, in nanometres: a few roundings."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Prism:
    """A hole as its cut has it: the axis it runs along, its middle on the others, half its width.

    `sides` are its planes; the cut may have another where it stops.
    """

    into: int
    middle: dict[int, float]
    radius: float
    sides: tuple[Plane, ...]

    def round(self) -> bool:
        """Whether every side touches the round within."""
        gaps = (plane.offset - self._at_middle(plane) for plane in self.sides)
        steep = (hypot(*plane.normal) for plane in self.sides)
        reach = [gap / length for gap, length in zip(gaps, steep, strict=True)]
        return all(0 <= each - self.radius <= ROUNDED for each in reach)

    def _at_middle(self, plane: Plane) -> float:
        return sum(plane.normal[axis] * at for axis, at in self.middle.items())


def sides_of(cut: Cut) -> tuple[Plane, ...]:
    """The planes of a cut that stand for a round hole; none if it is no hole."""
    found = tuple(plane for plane in cut.planes if plane.line is None)
    return found if len(found) == SIDES else ()


def prisms(feature: Feature) -> tuple[Prism, ...]:
    """The holes of a joint in one timber."""
    return tuple(_prism(sides) for cut in feature.cuts if (sides := sides_of(cut)))


def _prism(sides: tuple[Plane, ...]) -> Prism:
    """A hole by its planes. Raises KeyError for a prism that is not square to a face."""
    reach: dict[tuple[int, int], int] = {}
    for plane in sides:
        if sum(map(abs, plane.normal)) == 1:
            (axis,) = (number for number, part in enumerate(plane.normal) if part)
            reach[axis, plane.normal[axis]] = plane.offset
    across = sorted({axis for axis, _ in reach})
    (into,) = {0, 1, 2} - set(across)
    return Prism(
        into=into,
        middle={axis: (reach[axis, 1] - reach[axis, -1]) / 2 for axis in across},
        radius=min((reach[axis, 1] + reach[axis, -1]) / 2 for axis in across),
        sides=sides,
    )


def misbored(log: Log, feature: Feature) -> Iterator[str]:
    """What is wrong between the holes of a joint and its steps; nothing where all is told true.

    Raises KeyError for a hole without a step for its lines or its bit.
    """
    steps = {step.line or step.id: step for step in log.layout.steps if step.feature == feature.id}
    for number, prism in enumerate(prisms(feature), start=1):
        where = f"{log.timber.id}: {feature.id}/peg-{number}"
        lines = [steps["peg-line"], steps[f"peg-{number}"]]
        for step in lines:
            yield from _off_centre(log, feature, step, prism)
            if [axis_from(face).value.index(1) for face in step.faces] != [prism.into]:
                yield f"{where} is struck on a face it is not bored from"
        if _ways(log, feature, lines) not in (prism.middle.keys(), *SQUARE_TO_ONE_ANOTHER):
            yield f"{where} has lines that do not cross"
        (bit,) = steps[f"{feature.id}/bore-pegs"].readings
        if not 0 <= 2 * prism.radius - bit.value.nm <= 1 or not prism.round():
            yield f"{where} is no round hole of {bit.value}"


def _ways(log: Log, feature: Feature, lines: list[Step]) -> set[int] | set[str]:
    """What two lines go along: the axes across the hole, or the lines they are set off from."""
    hooks = {step.readings[0].hook for step in lines}
    if hooks & SQUARE_FROM.keys():
        return hooks
    return {_centre(log, feature, step.readings[0])[0] for step in lines}


def _off_centre(log: Log, feature: Feature, step: Step, prism: Prism) -> Iterator[str]:
    for reading in step.readings:
        if reading.hook in SQUARE_FROM:
            off = _from_line(log, feature, reading.hook, prism) - reading.value.nm
            if abs(off) > NEAR_ENOUGH:
                yield f"{log.timber.id}: {step.id} is {off:.0f} nm off {reading.words}"
            continue
        axis, at = _centre(log, feature, reading)
        if prism.middle.get(axis) != at:
            yield f"{log.timber.id}: {step.id} is not where {reading.value} {reading.words} is"


def _from_line(log: Log, feature: Feature, hook: str, prism: Prism) -> float:
    """How far a hole's middle lies from a slanting line of its tenon, square to that line."""
    tenon = log.feature(feature.id.removesuffix("-pegs"))
    lines = {line.id: line.slant for line in tenon.lines}
    slant = next(lines[name] for name in SQUARE_FROM[hook] if name in lines)
    if slant is None:
        raise ValueError(f"the {hook} does not slant")
    start, finish = ((spot.along.nm, spot.deep.nm) for spot in (slant.start, slant.finish))
    along, deep = finish[0] - start[0], finish[1] - start[1]
    x, across = prism.middle[0], prism.middle[slant.axis.value.index(1)]
    return abs((x - start[0]) * deep - (across - start[1]) * along) / hypot(along, deep)


def _centre(log: Log, feature: Feature, reading: Reading) -> tuple[int, float]:
    """The axis a centre's figure goes along, and where it comes."""
    return on_tenon(log, feature, reading) or set_off(log, reading)
