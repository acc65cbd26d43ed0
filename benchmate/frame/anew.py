"""Striking a mortise anew on the floor it opens on, as cutting that took its lines away."""

from collections.abc import Iterable

from benchmate.frame.mated import Sides
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.feature import Line, Reading, Stage, Task
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, reference_for
from benchmate.model.words import lower_first


def first_struck(stick: Stick, axis: Axis) -> tuple[str, str]:
    """What a line square to the axis was first measured from, and towards what, in words."""
    words = stick.pose.words
    if axis is not Axis.ALONG:
        face = reference_for(axis)
        return words(face), words(face.opposite)
    end = words(Face.REFERENCE_END)
    return f"{end} shoulder line" if stick.near else f"squared {end}", words(Face.FAR_END)


def _again(stick: Stick, axis: Axis, at: Length, name: str, key: str) -> Reading:
    """One line as it was first struck: in a lap at the reference end, back from its shoulder."""
    hook, to = first_struck(stick, axis)
    if at < ZERO:
        to = stick.pose.words(Face.REFERENCE_END)
    return Reading(value=abs(at), hook=hook, way=f"towards the {to}, {name}", key=key)


def struck_anew(sides: Sides, ends: Iterable[tuple[str, Length]]) -> tuple[Reading, ...]:
    """The two ends of a mortise, by name and where they lie along its stick, then its two sides."""
    near, far = sides.span
    lines = (
        *((Axis.ALONG, name, at) for name, at in ends),
        (sides.axis, "near side", near),
        (sides.axis, "far side", far),
    )
    return tuple(
        _again(sides.stick, axis, at, f"{name} line", f"{name} of the mortise")
        for axis, name, at in lines
    )


def strike_anew(
    stick: Stick,
    on: tuple[Face, Axis],
    lines: Iterable[Line],
    *,
    noun: str,
    id_: str,
    title: str,
    why: str,
) -> Task:
    """Striking the `lines` of the hole called `noun` on a floor, each from where it first was.

    `on` is the face that the floor lies under and the axis across the stick on it: of the lines
    those are struck that lie along the stick or on that axis.
    """
    face, across = on
    return Task(
        id=id_,
        stage=Stage.CUT,
        title=title,
        faces=(face,),
        readings=tuple(
            _again(stick, line.axis, line.at, lower_first(line.title), f"{line.id} of the {noun}")
            for line in lines
            if line.axis in (Axis.ALONG, across)
        ),
        waste=f"Inside the {noun}'s lines only.",
        why=why,
    )
