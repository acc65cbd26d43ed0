"""How the end of one stick meets the side of another.

Both sides of a joint are written in the tenoned stick's own readings and carried across here, so
which way a mortise runs, and so the hand, follows from how the two timbers stand.
"""

from dataclasses import dataclass

from benchmate.frame.flats import nearest
from benchmate.frame.place import Place
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, across, axis_from, reference_for


class MeetingError(ValueError):
    """The end cannot enter the other timber's side."""


Span = tuple[Length, Length]


@dataclass(frozen=True, slots=True, kw_only=True)
class Meeting:
    """An end of a tenoned stick in the side of a receiving one.

    `cheeks` is the tenoned stick's axis its cheeks are measured on: square to the receiving grain.
    `entry` is the receiving face. `with_grain` tells whether going in from the tenoned stick's
    narrow-edge reference face is going away from the receiving stick's reference end, and
    `same_side` whether the two sticks measure across from faces that look the same way.
    """

    at: Length
    inset: Length
    cheeks: Axis
    entry: Face
    with_grain: bool
    same_side: bool

    @property
    def across(self) -> Axis:
        """The receiving stick's axis the mortise is set back on."""
        return across(axis_from(self.entry))

    @property
    def into(self) -> Axis:
        """The receiving stick's axis the mortise is cut down on."""
        return axis_from(self.entry)

    def along_span(self, near: Length, far: Length) -> Span:
        """Two depths in from the tenoned stick's edge face, along the receiving stick, in order."""
        if self.with_grain:
            return self.at + near, self.at + far
        return self.at - far, self.at - near

    def across_span(self, near: Length, far: Length) -> Span:
        """Two depths in from the tenoned stick's cheek face, across the receiver, in order."""
        if self.same_side:
            return self.inset + near, self.inset + far
        return self.inset - far, self.inset - near


def crossing(
    stick: Stick, end: Face, here: Place, receiver: Stick, there: Place
) -> tuple[Length, Length]:
    """Where an end crosses its receiver, from the places of both: `at` and `inset` of `meet`.

    The reference faces of a stick pass through its arris, so where its arris runs says where they
    cross the receiver. The two are square to one another, in a roof as well as out of it. Raises
    MeetingError if they run the same way.
    """
    heading, grain = stick.pose.direction(end), receiver.pose.direction(Face.FAR_END)
    if not heading.square_to(grain):
        raise MeetingError(f"{stick.name} and {receiver.name} run the same way")
    entry = receiver.pose.face(heading.opposite)
    sideways = 1 if across(axis_from(entry)) is Axis.FIRST else 2
    apart = [b - a for a, b in zip(there.origin, here.origin, strict=True)]
    at, inset = (
        Length(
            nearest(sum(step * gap for step, gap in zip(way.steps, apart, strict=True)), way.whole)
        )
        for way in (there.ways[0], there.ways[sideways])
    )
    return at, inset


def meet(stick: Stick, end: Face, receiver: Stick, *, at: Length, inset: Length) -> Meeting:
    """Where an end of `stick` stands on `receiver`.

    `at` is where the plane of the tenoned stick's edge reference face crosses the receiver, from
    the receiver's reference shoulder; `inset` how far in its cheek reference face lies from the
    receiver's own. Raises MeetingError if the two timbers run the same way.
    """
    heading = stick.pose.direction(end)
    entry = receiver.pose.face(heading.opposite)
    if entry.is_end:
        raise MeetingError(f"{stick.name} and {receiver.name} run the same way")
    grain = receiver.pose.direction(Face.FAR_END)
    cheeks = Axis.FIRST if stick.pose.first.square_to(grain) else Axis.SECOND
    edge_face = reference_for(across(cheeks))
    cheek_face = reference_for(cheeks)
    receiving = reference_for(across(axis_from(entry)))
    return Meeting(
        at=at,
        inset=inset,
        cheeks=cheeks,
        entry=entry,
        with_grain=stick.pose.direction(edge_face.opposite) is grain,
        same_side=stick.pose.direction(cheek_face) is receiver.pose.direction(receiving),
    )
