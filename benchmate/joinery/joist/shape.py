"""Where a joist's end and its pocket lie on the real sticks."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar

from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Meeting, Span
from benchmate.frame.reduction import Reduction, reduction
from benchmate.frame.stick_end import JoistEnd
from benchmate.joinery.joist.record import JoistPocket
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, across, axis_from


@dataclass(frozen=True, slots=True, kw_only=True)
class EndShape(JoistEnd):
    """The end of a joist that lies in a pocket, `deep` from its top.

    `diminished` is how far back from the real face of the timber it bears on its underside starts
    to slope up to its depth: nothing for a notch.
    """

    deep: Length
    diminished: Length

    @property
    def reduction(self) -> Reduction:
        """What comes off its underside and its far side so that it goes in.

        An underside that slopes up to its depth is not brought down to it here.
        """
        to = {self.plumb: self.deep, self.sides: self.wide}
        if self.sloped:
            del to[self.plumb]
        return reduction(self.stick, self.end, self.recess, to, places=self.places)

    @property
    def sloped(self) -> bool:
        """Whether its underside slopes up to its depth."""
        return bool(self.diminished) and self.real_deep > self.deep

    @property
    def laid_out(self) -> Mapping[str, Length]:
        """The depth (`thickness`) and the width, as they are laid out."""
        return {"thickness": self.deep, "width": self.wide}


@dataclass(frozen=True, slots=True, kw_only=True)
class Notch:
    """A recess in a level stick that an end drops into, in that stick's own readings.

    It is open above and at `entry`, `along` from start to finish at its widest. `floor` and `back`
    are readings on the `plumb` and `into` axes; it is `clearance` longer than the end in it.
    """

    noun: ClassVar[str]
    stick: Stick
    feature: str
    entry: Face
    along: Span
    floor: Length
    back: Length
    clearance: Length

    @property
    def into(self) -> Axis:
        """The axis the end goes in along."""
        return axis_from(self.entry)

    @property
    def plumb(self) -> Axis:
        """The axis its floor is measured on."""
        return across(self.into)

    @property
    def top(self) -> Face:
        """The face the joist drops in through."""
        return self.stick.pose.face(Direction.UP)

    @property
    def from_top(self) -> Length:
        """How far the floor lies below the stick's real top."""
        return self.stick.in_from(self.top, self.floor, self.feature)

    @property
    def left_below(self) -> Length:
        """The wood left under the floor."""
        return self.stick.in_from(self.top.opposite, self.floor, self.feature)

    @property
    def recess(self) -> Length:
        """How far the back lies in from the real entry face."""
        return self.stick.in_from(self.entry, self.back, self.feature)

    @property
    def left_behind(self) -> Length:
        """The wood left between the back and the face across from the entry."""
        return self.stick.in_from(self.entry.opposite, self.back, self.feature)


@dataclass(frozen=True, slots=True, kw_only=True)
class PocketShape(Notch):
    """A pocket for a joist's end, as wide all along."""

    noun: ClassVar[str] = "Pocket"
    joist: EndShape


def feature_id(joint: JoistPocket, stick: Stick) -> str:
    """The id of the joist's end: `west-end-bearing`."""
    return f"{stick.place_at(stick.pose.face(joint.end))}-bearing"


def shapes(joint: JoistPocket, frame: Frame) -> tuple[EndShape, PocketShape]:
    """The joist's end, and the pocket cut to it as it came out."""
    (bearing,) = joint.bearings()
    met = frame.meeting(bearing, at=joint.at, inset=joint.drop)
    end = _end(joint, frame.stick(joint.timber), frame.recess(bearing, met))
    return end, _pocket(joint, frame, end, met)


def _end(joint: JoistPocket, stick: Stick, recess: Length) -> EndShape:
    end = stick.pose.face(joint.end)
    feature = feature_id(joint, stick)
    plumb = axis_from(stick.pose.face(Direction.UP))
    places = (feature, stick.place_at(end))
    return EndShape(
        stick=stick,
        end=end,
        feature=feature,
        plumb=plumb,
        deep=joint.end_depth or stick.framed(plumb, *places),
        recess=recess,
        diminished=joint.diminished or ZERO,
        as_cut=stick.as_cut.get(feature, AsCut()),
    )


def _pocket(joint: JoistPocket, frame: Frame, end: EndShape, met: Meeting) -> PocketShape:
    receiver = frame.stick(joint.into)
    given = joint.end_clearance
    clearance = frame.project.practice.bottom_clearance if given is None else given
    upper, lower = met.across_span(ZERO, end.real("thickness"))
    deep = joint.bearing + clearance
    return PocketShape(
        stick=receiver,
        feature=joint.pocket,
        joist=end,
        entry=met.entry,
        along=met.along_span(ZERO, end.real("width")),
        floor=lower if receiver.pose.face(Direction.UP).is_reference else upper,
        back=deep if met.entry.is_reference else receiver.framed(met.into, joint.pocket) - deep,
        clearance=clearance,
    )
