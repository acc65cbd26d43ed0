"""What a rafter's place on a ridge and its seat on a plate say alike of the wood that comes off."""

from collections.abc import Mapping
from dataclasses import replace

from benchmate.frame.marking import Says, square_mark
from benchmate.frame.reduction import measured_words
from benchmate.joinery.rafter.lying import Lying
from benchmate.joinery.rafter.raking import Rafter
from benchmate.joinery.rafter.sides import width_awaited
from benchmate.model.directions import Face
from benchmate.model.feature import Feature, Line, Reading
from benchmate.model.findings import Finding, told_on
from benchmate.model.solids import Plane
from benchmate.model.stick import axis_from

FLOOR, FACE, LIP = ("floor", "face", "lip")
"""The lines of a recess: how deep it goes; by square rule the inner timber's face, and how far down
that goes."""

INSIDE = "Inside the lines only."


def recess_lines(
    planes: Mapping[str, Plane], says: Mapping[str, Says], floor: Reading
) -> tuple[Line, ...]:
    """Its lines by name; the `floor` is set off from the real face, all else measured square."""
    found = (square_mark(plane, says[name]) for name, plane in planes.items())
    return tuple(replace(line, readings=(floor,)) if line.id == FLOOR else line for line in found)


def inner_says(title: str, face: str) -> Says:
    """What is said of a line that brings a `face`, in words, down to the inner timber."""
    return Says(
        title=title,
        why="Square rule: what the stick is over its inner timber comes off here.",
        caution=f"Never measure this from the {face}.",
    )


def bears_here(what: str, lying: Lying, face: Face) -> str:
    """Why there is a floor, and whether its depth from a far `face` goes by a measured stick."""
    if face.is_reference:
        return f"{what} bears here."
    measured = measured_words(lying.stick, axis_from(face), (lying.feature,))
    return f"{what} bears here. {measured}"


def lying_side(
    lying: Lying, rafter: Rafter, notch: str, noun: str, told: tuple[Finding, ...]
) -> Feature:
    """The side of the timber a rafter lies on: its `noun` waits for the `notch` to be measured.

    `told` is all that is told of the joint. The family adds cuts, lines and tasks.
    """
    return Feature(
        id=lying.feature,
        timber=lying.stick.id,
        title=f"{noun} for {rafter.stick.name}",
        at=lying.along[0],
        place=(lying.feature,),
        awaits=width_awaited(rafter, notch),
        findings=told_on(lying.stick.id, lying.feature, told),
    )
