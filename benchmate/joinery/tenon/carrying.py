"""Readings of one placed timber carried into another that lies square to it.

A tenon that touches a third timber is marked there from the same planes of the building, so which
axis of the third one they lie across follows from how it stands.
"""

from typing import NamedTuple

from benchmate.frame.flats import built, carried
from benchmate.frame.marking import axis_of
from benchmate.frame.meeting import Span
from benchmate.frame.place import Place
from benchmate.measure.length import Length
from benchmate.model.solids import Axis, below


class Carried(NamedTuple):
    """A span as another timber reads it: on which of its axes, and from where to where."""

    axis: Axis
    span: Span


def carried_reading(axis: Axis, at: Length, here: Place, there: Place) -> tuple[Axis, Length]:
    """A reading of the timber that stands `here` as the one that stands `there` has it.

    Raises ValueError for timbers that are not square to one another.
    """
    plane = carried(built(below(axis, at), here), there)
    found, sense = axis_of(plane)
    return found, Length(plane.offset * sense)


def carried_span(axis: Axis, span: Span, here: Place, there: Place) -> Carried:
    """Two readings on one axis as another timber has them, in the order they grow there."""
    (found, one), (_, other) = (carried_reading(axis, at, here, there) for at in span)
    return Carried(found, (min(one, other), max(one, other)))
