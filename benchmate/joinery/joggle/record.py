"""The stored parameters of an end that is let in to abut, and its notch."""

from collections.abc import Mapping
from typing import Literal

from benchmate.measure.length import ZERO
from benchmate.model.fields import PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.two_timbers import EndAtTimber
from benchmate.model.work import Bearing, Extension, Fault, Front, raking_faults


class JoggleJoint(EndAtTimber):
    """One end of a raking timber that thrusts, and the notch it abuts in.

    It is the heel of a principal rafter on its tie, the foot of a strut or the head of a rafter on
    the joggle of a king or queen post, the head of a strut under a rafter: `into` stands, lies or
    rakes in the plane that `timber` rakes in.

    The end is let in so that it cannot slide along the face. From its toe, the edge that reaches
    farther out, its front goes in until it is `notch` deep: the abutment. From there the sole runs
    back to the heel, where it is nothing deep. How the `abutment` looks is the framer's choice.
    Published notes on struts want it square to the piece that contains the shoulder, which is the
    one that is notched, or halving the angle, and call squaring it to the strut wrong (trade notes
    2.7, Strut and Rivington-strut); so it halves the angle where nothing is said.

    A tenon goes on in line with the abutment, `length` longer than the notch is deep (both square
    to the face), `thickness` thick and `set_back` from the reference face that looks across. Its
    mortise is `ease` longer than the end on the heel's side and `bottom_clearance` deeper than the
    tenon goes. How deep a notch may be and how much wood has to be left beyond it is for the
    engineer: neither has a usual figure here.
    """

    family: Literal["joggle"]
    notch: PositiveSize
    abutment: Front = "bisecting"
    length: PositiveSize
    thickness: PositiveSize
    set_back: Size
    ease: Size | None = None
    bottom_clearance: Size | None = None

    def extensions(self) -> tuple[Extension, ...]:
        """What goes in and the tenon together, square to the face they enter."""
        length = self.notch + self.length
        shape = Extension(self.timber, self.end, length, shape="parallel", front=self.abutment)
        return (shape,)

    def bearings(self) -> tuple[Bearing, ...]:
        """Its reference edge comes to the face itself: the notch lies beyond."""
        return (Bearing(self.timber, self.end, self.into, ZERO, self.mortise),)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """Timbers that do not lie in one upright plane, or of which the first does not rake."""
        return tuple(raking_faults(timbers[self.timber], self.end, timbers[self.into]))

    @property
    def mortise(self) -> str:
        """The id of the notch on the receiving timber."""
        return f"{self.id}-notch"
