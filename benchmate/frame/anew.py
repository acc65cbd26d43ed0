"""Striking a mortise anew on the floor of its housing, as cutting that took its lines away."""

from collections.abc import Iterable

from benchmate.frame.mated import Sides
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Reading
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, reference_for


def first_struck(stick: Stick, axis: Axis) -> tuple[str, str]:
    """What a line square to the axis was first measured from, and towards what, in words."""
    words = stick.pose.words
    if axis is not Axis.ALONG:
        face = reference_for(axis)
        return words(face), words(face.opposite)
    end = words(Face.REFERENCE_END)
    return f"{end} shoulder line" if stick.near else f"squared {end}", words(Face.FAR_END)


def struck_anew(sides: Sides, ends: Iterable[tuple[str, Length]]) -> tuple[Reading, ...]:
    """The two ends of a mortise, by name and where they lie along its stick, then its two sides."""
    near, far = sides.span
    lines = (
        *((Axis.ALONG, name, at) for name, at in ends),
        (sides.axis, "near side", near),
        (sides.axis, "far side", far),
    )
    found = []
    for axis, name, at in lines:
        hook, to = first_struck(sides.stick, axis)
        way, key = f"towards the {to}, {name} line", f"{name} of the mortise"
        found.append(Reading(value=at, hook=hook, way=way, key=key))
    return tuple(found)
