"""The mortise in the timber that a tenon goes on into, past the one it goes through.

How it works
1. A tie lies over a plate, on it, notched over it or let into it: which of the two was cut for that
   is another joint's business. So nothing here counts from where they bear on one another.
2. The tenon as it was cut is carried through the building into the third timber. There it enters
   by the face that really is there, and its end comes where it comes: the mortise is as deep as the
   way between the two. What of it runs in a notch is air.
"""

from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.frame.place import Place
from benchmate.joinery.tenon.carrying import Carried, carried_reading, carried_span
from benchmate.joinery.tenon.mortise_shape import MortiseShape, Past, TenonSize, bottom_clearance
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import Passage, TenonShape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, across, axis_from


@dataclass(frozen=True, slots=True, kw_only=True)
class _Further:
    """A tenon and the third timber it comes to, which it enters by its `entry` face."""

    tenon: TenonShape
    stick: Stick
    entry: Face
    real_into: Length
    here: Place
    there: Place

    def inside(self, beyond: Length) -> Length:
        """How far inside the entry face a place so far beyond the tenon's shoulder lies."""
        at = self.tenon.along(beyond)
        _, found = carried_reading(Axis.ALONG, at, self.here, self.there)
        return found if self.entry.is_reference else self.real_into - found

    def lying(self, axis: Axis) -> tuple[Carried, TenonSize]:
        """What of the tenon lies along an axis of the third timber, and which size it is."""
        tenon = self.tenon
        thick = (tenon.near, tenon.near + tenon.real("thickness"))
        cheeks = carried_span(tenon.cheeks, thick, self.here, self.there)
        if cheeks.axis is axis:
            return cheeks, "thickness"
        wide = (tenon.edge, tenon.edge + tenon.real("width"))
        return carried_span(tenon.edges, wide, self.here, self.there), "width"


def mortise_beyond(joint: TenonJoint, tenon: TenonShape, frame: Frame) -> MortiseShape | None:
    """The mortise for what stands past the first timber; None for a tenon that ends there."""
    if joint.beyond is None or joint.into is None or tenon.passage is None:
        return None
    further = _further(joint, joint.beyond, tenon, frame)
    stick, entry, real_into = further.stick, further.entry, further.real_into
    sides, through = across(axis_from(entry)), joint.beyond_through
    along, along_follows = further.lying(Axis.ALONG)
    beside, across_follows = further.lying(sides)
    wood, face, _ = tenon.passage
    return MortiseShape(
        stick=stick,
        feature=joint.mortise,
        tenon=tenon,
        entry=entry,
        into=axis_from(entry),
        sides=sides,
        along=along.span,
        across=beside.span,
        end_along=along.span,
        end_across=beside.span,
        seat=ZERO if entry.is_reference else real_into,
        recess=ZERO,
        length=further.inside(tenon.real("length")),
        clearance=ZERO if through else bottom_clearance(joint, frame),
        real_into=real_into,
        drawn_into=stick.drawn(axis_from(entry)),
        real_sides=stick.depth(sides, joint.mortise),
        framed_sides=stick.framed(sides, joint.mortise),
        held="",
        passage=_passage(further, joint.held_short) if through else None,
        past=Past(frame.wood(joint.into).name, face, further.inside(wood)),
        along_follows=along_follows,
        across_follows=across_follows,
    )


def _further(joint: TenonJoint, beyond: str, tenon: TenonShape, frame: Frame) -> _Further:
    stick = frame.stick(beyond)
    entry = stick.pose.face(tenon.stick.pose.direction(tenon.end).opposite)
    return _Further(
        tenon=tenon,
        stick=stick,
        entry=entry,
        real_into=stick.depth(axis_from(entry), joint.mortise),
        here=frame.standing(joint.timber),
        there=frame.standing(beyond),
    )


def _passage(further: _Further, held_short: Length) -> Passage:
    """The wood of the third timber, where the tenon goes right through that as well."""
    stick = further.stick
    face = f"{stick.name}'s {stick.pose.words(further.entry.opposite)}"
    return Passage(further.real_into, face, held_short)
