"""Slips that framers make between a mark and the cut, to be planted."""

from collections.abc import Callable
from dataclasses import replace

from benchmate.measure.length import Length
from tests.proof.marks import Mark, Marks
from tests.proof.raising import Slip

Change = Callable[[Mark], Mark]


def misread(feature: str, lines: tuple[str, ...], change: Change) -> Slip:
    """Some lines of one joint set off wrongly. Raises KeyError for a line that is not there."""

    def slip(struck: Marks) -> Marks:
        wrong = {line: change(struck[feature][line]) for line in lines}
        return {**struck, feature: {**struck[feature], **wrong}}

    return slip


def forgotten(feature: str, start: str) -> Slip:
    """Lines of one joint that nobody struck: those whose names start so."""

    def slip(struck: Marks) -> Marks:
        left = {line: mark for line, mark in struck[feature].items() if not line.startswith(start)}
        return {**struck, feature: left}

    return slip


def mirrored(one: str, other: str) -> Slip:
    """A timber made with a reference face on the other side."""
    turned = swapped(one, other)
    return lambda struck: {
        feature: {line: turned(mark) for line, mark in lines.items()}
        for feature, lines in struck.items()
    }


def in_turn(*slips: Slip) -> Slip:
    """Several slips on one timber."""

    def slip(struck: Marks) -> Marks:
        for each in slips:
            struck = each(struck)
        return struck

    return slip


def swapped(one: str, other: str) -> Change:
    """A line laid out and hatched from one face where it should have been from the other."""
    words = {one: other, other: one}
    return lambda mark: replace(
        mark,
        readings=tuple(
            replace(reading, hook=words.get(reading.hook, reading.hook))
            for reading in mark.readings
        ),
        sides=tuple(words.get(side, side) for side in mark.sides),
        waste=words.get(mark.waste, mark.waste),
    )


def hooked_on(hook: str) -> Change:
    """A figure measured from something else."""
    return lambda mark: replace(
        mark, readings=tuple(replace(reading, hook=hook) for reading in mark.readings)
    )


def longer(by: Length) -> Change:
    """A figure read too long, or too short."""
    return lambda mark: replace(
        mark,
        readings=tuple(replace(reading, value=reading.value + by) for reading in mark.readings),
    )
