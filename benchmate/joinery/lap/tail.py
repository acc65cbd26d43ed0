"""The tail of a dovetail lap: as wide as its timber at the far face of the other, narrower inside.

The tail is on the timber whose end laps, a tie on a plate, never on the other: one published text
has it the wrong way round (trade notes 7.6, slip 7).
"""

from dataclasses import dataclass

from benchmate.frame.flats import lowest
from benchmate.frame.frame import Frame
from benchmate.frame.through import wood_passed
from benchmate.joinery.lap.lie import Lie
from benchmate.joinery.lap.record import LapJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import reference_for

NEAR, FAR = "near-flank", "far-flank"
"""The lines of its two sides, the one by the reference face first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tail:
    """A tail along its own timber: from `root`, where it comes in, to `mouth`, where it is widest.

    `near` and `far` are what it is narrower by at its root, on the side of the reference face and
    on the other; `wide` is its width at the mouth.
    """

    axis: Axis
    root: Length
    mouth: Length
    near: Length
    far: Length
    wide: Length

    @property
    def narrow(self) -> Length:
        """Its width at the root."""
        return self.wide - self.near - self.far

    @property
    def long(self) -> Length:
        """How far it takes to widen."""
        return abs(self.mouth - self.root)

    @property
    def flanks(self) -> dict[Face, Plane]:
        """The planes beside it, by the face that loses the wood there."""
        reference = reference_for(self.axis)
        found = {}
        if self.near:
            found[reference] = self._flank(self.near, ZERO, 1, NEAR)
        if self.far:
            found[reference.opposite] = self._flank(self.far, self.wide, -1, FAR)
        return found

    def _flank(self, flare: Length, wide: Length, inward: int, line: str) -> Plane:
        """The plane from so far in at the root to the side at the mouth, its waste outside."""
        outward = 1 if self.mouth >= self.root else -1
        along, deep = outward * flare.nm, inward * self.long.nm
        offset = along * self.mouth.nm + deep * wide.nm
        first, second = (deep, 0) if self.axis is Axis.FIRST else (0, deep)
        return lowest((along, first, second), offset, line)


def tail(joint: LapJoint, frame: Frame, first: Lie, wide: Length) -> Tail | None:
    """The tail on the end that laps, so wide at its mouth; None where it is not a dovetail."""
    if not joint.dovetailed or first.end is None:
        return None
    (bearing,) = joint.bearings()
    root, long = first.stick.shoulder(first.end), wood_passed(frame.wood(joint.into), bearing)
    return Tail(
        axis=first.wide,
        root=root,
        mouth=root - long if first.end is Face.REFERENCE_END else root + long,
        near=joint.reference_flare(),
        far=joint.far_flare(),
        wide=wide,
    )
