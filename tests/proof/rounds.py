"""Round holes held against the textbook: where their axes are, and how much wood they take.

The program's hole is a prism of eight sides with the round one inside it, so it takes a little more
wood: nothing of the round one is left in, and how much more goes is known.
"""

from collections.abc import Iterator, Mapping
from math import pi, sin, tan

from tests.proof.bored import SIDES, Prism, prisms
from tests.proof.textbook.tenon import ROUND, Bore, Bores
from tests.proof.wood import TOUCH, Log

ON_AXIS = 0.9
"""How far an axis may lie off, in nanometres: in a slope it is rounded on two axes; in square
timbers all is whole, so that an axis which is off at all is off by one."""

MORE = SIDES * tan(pi / SIDES) / (ROUND / 2 * sin(2 * pi / ROUND)) - 1
"""How much more than the textbook's hole the prism about it takes: a twentieth or so."""

NEARLY = 0.001
"""How far off that may be: a hole of a few inches is a millimetre deeper by more than this."""


def rounds_off(right: Bores, logs: Mapping[str, Log]) -> Iterator[str]:
    """What is wrong with the holes of a joint's pegs; nothing where they agree."""
    for name, bores in right.items():
        timber, _, feature = name.partition("/")
        log = logs[timber].at(logs[timber].feature(feature))
        made = prisms(log.feature(feature))
        if len(made) != len(bores):
            yield f"{name} has {len(made)} holes, not {len(bores)}"
            continue
        for number, (prism, bore) in enumerate(zip(made, bores, strict=True), start=1):
            where = f"{name}/peg-{number}"
            off = max(abs(gap) for gap in axis_off(log, prism, bore))
            if off > ON_AXIS:
                yield f"{where} is {off:.0f} nm off its axis"
            yield from _other_wood(where, log, number, bore)


def axis_off(log: Log, prism: Prism, bore: Bore) -> tuple[float, float, float, float]:
    """How far a hole's axis lies off, at the two reference planes it may start from."""
    depth = log.section.first if prism.into == 1 else log.section.second
    gaps: list[float] = []
    for at in (0, depth.nm):
        x, u, v = (prism.middle.get(axis, at) for axis in range(3))
        gaps += bore.off(log.stand.point(x, u, v))
    return gaps[0], gaps[1], gaps[2], gaps[3]


def _other_wood(where: str, log: Log, number: int, bore: Bore) -> Iterator[str]:
    feature = log.feature(where.split("/")[1])
    made = log.stand.put(log.taken(feature.cuts[number - 1]))
    right = bore.body().within(log.stand.put(log.block))
    if right.volume == 0:
        yield f"{where} should not be in this timber"
        return
    left, over = (
        one.without([other]).volume / right.volume for one, other in ((right, made), (made, right))
    )
    if left * right.volume > TOUCH:
        yield f"{where} leaves {left:.1%} of the round hole in"
    if abs(over - MORE) > NEARLY:
        yield f"{where} takes {over:.1%} more than the round hole"
