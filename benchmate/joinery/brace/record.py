"""The stored parameters of a brace's end and its mortise."""

from collections.abc import Mapping
from typing import Literal

from benchmate.frame.pegs import Pegs
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face, face_words
from benchmate.model.fields import PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.two_timbers import EndAtTimber
from benchmate.model.work import Bearing, Extension, Fault, raking_faults


class BraceJoint(EndAtTimber):
    """One end of a brace, and the mortise in the post, beam or sill it enters.

    The brace is measured from its long edge, the one away from the corner it closes: that is the
    line its `incline` says, and what its width is over or under goes to the inside. Where that edge
    meets the face of `into` the end is cut square to that face, `nose` further in towards the
    corner if the framer wants it so. The whole end goes `housing` deep in, and from there a tenon
    `length` long, square to the face, `thickness` thick and `set_back` from the reference face that
    looks across; without set-back it is barefaced. Mortise and housing are `ease` longer than the
    brace on the inside, so that rough stock still enters, and the mortise `bottom_clearance` deeper
    than the tenon is long.

    `pegs` go through the cheeks of both, their `from_edge` counted from the nose. The brace's own
    holes lie `draw` nearer its shoulder and `draw` further from its nose.
    """

    family: Literal["brace"]
    housing: Size = ZERO
    length: PositiveSize
    thickness: PositiveSize
    set_back: Size
    nose: Size = ZERO
    ease: Size | None = None
    bottom_clearance: Size | None = None
    pegs: Pegs | None = None

    def extensions(self) -> tuple[Extension, ...]:
        """Housed end and tenon together, square to the face they enter."""
        return (Extension(self.timber, self.end, self.housing + self.length, shape="nosed"),)

    def bearings(self) -> tuple[Bearing, ...]:
        """The long edge comes to the face itself: the housing lies beyond."""
        return (Bearing(self.timber, self.end, self.into, ZERO, self.mortise),)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """Timbers that do not make a triangle, or a brace measured from its short edge."""
        brace, into = timbers[self.timber], timbers[self.into]
        found = tuple(raking_faults(brace, self.end, into))
        if found:
            return found
        if into.incline is not None:
            problem = f"{into.name} rakes too, and a brace stands between an upright and a level"
            return (Fault("into", problem, "name a timber that stands or lies level"),)
        outer = self.end if into.upright else self.end.opposite
        if brace.pose.face(outer) not in (Face.FIRST, Face.SECOND):
            inner = face_words(outer.opposite).removesuffix(" face")
            problem = f"{brace.name} is measured from its short edge, inside the corner"
            remedy = (
                f'turn its reference face "{outer.opposite.word}" ({inner}) to "{outer.word}", and '
                "let its incline say where the long edge runs"
            )
            return (Fault("timber", problem, remedy),)
        return ()

    @property
    def mortise(self) -> str:
        """The id of the mortise on the receiving timber."""
        return f"{self.id}-mortise"
