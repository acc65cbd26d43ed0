"""Where a dovetailed joist's end and its socket lie on the real sticks.

How it works
1. Seen from above the tail is as wide as the joist at its tip, and comes in by the flare at each
   flank where it meets the shoulder. A flank that is left straight does not come in.
2. The socket has the tail's flanks, carried on past its tip to the socket's back, and one of them
   may stand further out by the room for a wedge.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar

from benchmate.frame.flats import along_at, leaning
from benchmate.frame.frame import Frame
from benchmate.frame.housing import Housing, housing_for
from benchmate.frame.meeting import Meeting, Span
from benchmate.frame.reduction import Reduction, reduction
from benchmate.frame.stick_end import JoistEnd
from benchmate.joinery.joist.record import DovetailJoist
from benchmate.joinery.joist.shape import Notch
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis, Plane, above, below
from benchmate.model.stick import Stick, across, axis_from, reference_for

SHOULDER, UNDER, NEAR, FAR = ("shoulder", "tail-underside", "near-flank", "far-flank")
"""The lines of a tail; its socket's flanks are called the same."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TailShape(JoistEnd):
    """A dovetailed end of a joist, `deep` from its top and as wide at its tip as the joist.

    `flares` is how far the flank on the reference side comes in at the shoulder, and the one on the
    far side: nothing for a straight one.
    """

    deep: Length
    length: Length
    flares: Span

    @property
    def tip(self) -> Length:
        """The reading of the tail's end."""
        return self.along(self.length)

    @property
    def neck(self) -> Length:
        """How wide the tail is at the shoulder."""
        near, far = self.flares
        return self.wide - near - far

    @property
    def reduction(self) -> Reduction:
        """What the end loses on its far faces so that it goes into a beam over its size."""
        struck = {}
        if self.deep == self.framed:
            struck[self.plumb] = UNDER
        if not self.flares[1]:
            struck[self.sides] = FAR
        to = {self.plumb: self.framed, self.sides: self.wide}
        return reduction(self.stick, self.end, self.recess, to, places=self.places, struck=struck)

    @property
    def beyond(self) -> Plane:
        """The shoulder, all past it waste."""
        bound = above if self.end is Face.FAR_END else below
        return bound(Axis.ALONG, self.shoulder, SHOULDER)

    @property
    def flanks(self) -> tuple[Plane, Plane]:
        """The flank on the reference side and the one on the far side, the waste outside each."""
        spots = (
            (self.flares[0], ZERO, -self.wide, NEAR),
            (self.wide - self.flares[1], self.wide, self.wide + self.wide, FAR),
        )
        one, other = (
            leaning(
                (Axis.ALONG, self.sides),
                (self.shoulder, neck),
                (self.tip, tip),
                (self.shoulder, outside),
                line,
            )
            for neck, tip, outside, line in spots
        )
        return one, other

    def looks(self, line: str) -> Direction:
        """Where the joist's side along a flank looks."""
        near = reference_for(self.sides)
        return self.stick.pose.direction(near if line == NEAR else near.opposite)

    @property
    def laid_out(self) -> Mapping[str, Length]:
        """Its depth (`thickness`), its width at the tip and its length, as they are laid out."""
        return {"thickness": self.deep, "width": self.wide, "length": self.length}


@dataclass(frozen=True, slots=True, kw_only=True)
class SocketShape(Notch):
    """A socket for a dovetail; `flanks` are as the tail's, its own waste inside them.

    `wedge` is how much room one of them leaves, and `wedge_line` which; nothing for neither.
    """

    noun: ClassVar[str] = "Socket"
    tail: TailShape
    housing: Housing
    flanks: tuple[Plane, Plane]
    wedge: Length
    wedge_line: str

    @property
    def seat(self) -> Length:
        """The reading of the plane the joist's shoulder bears on."""
        return self.housing.seat

    def wide(self, deep: Length) -> Length:
        """How wide it is along the beam, so deep on the axis it goes in along."""
        one, other = (along_at(plane, self.into, deep) for plane in self.flanks)
        return abs(one - other)


def tail_shapes(joint: DovetailJoist, frame: Frame) -> tuple[TailShape, SocketShape]:
    """The joist's tail, and the socket cut to it as it came out."""
    (bearing,) = joint.bearings()
    met = frame.meeting(bearing, at=joint.at, inset=joint.drop)
    tail = _tail(joint, frame.stick(joint.timber), frame.recess(bearing, met))
    return tail, _socket(joint, frame, tail, met)


def _tail(joint: DovetailJoist, stick: Stick, recess: Length) -> TailShape:
    end = stick.pose.face(joint.end)
    place = stick.place_at(end)
    feature = f"{place}-dovetail"
    plumb = axis_from(stick.pose.face(Direction.UP))
    near = stick.pose.direction(reference_for(across(plumb)))
    return TailShape(
        stick=stick,
        end=end,
        feature=feature,
        plumb=plumb,
        deep=joint.end_depth or stick.framed(plumb, feature, place),
        length=joint.length,
        flares=(
            ZERO if joint.straight is near else joint.flare,
            ZERO if joint.straight is near.opposite else joint.flare,
        ),
        recess=recess,
        as_cut=stick.as_cut.get(feature, AsCut()),
    )


def _socket(joint: DovetailJoist, frame: Frame, tail: TailShape, met: Meeting) -> SocketShape:
    stick = frame.stick(joint.into)
    given = joint.end_clearance
    clearance = frame.project.practice.bottom_clearance if given is None else given
    housing = housing_for(tail.guest, met, stick, joint.socket, dropped=True)
    upper, lower = met.across_span(ZERO, tail.real("thickness"))
    line = "" if joint.wedge_side is None else NEAR
    if joint.wedge_side is tail.looks(FAR):
        line = FAR
    wedge = joint.wedge or ZERO
    long = tail.real("length")
    flanks = _flanks(tail, met, housing, {line: wedge})
    back = housing.inside(long + clearance)
    one, other = (along_at(plane, met.into, back) for plane in flanks)
    return SocketShape(
        stick=stick,
        feature=joint.socket,
        entry=met.entry,
        along=(min(one, other), max(one, other)),
        floor=lower if stick.pose.face(Direction.UP).is_reference else upper,
        back=back,
        clearance=clearance,
        tail=tail,
        housing=housing,
        flanks=flanks,
        wedge=wedge,
        wedge_line=line,
    )


def _flanks(
    tail: TailShape, met: Meeting, housing: Housing, room: dict[str, Length]
) -> tuple[Plane, Plane]:
    """The tail's flanks as it was made, each as far out as the room it leaves."""
    wide, (near, far) = tail.real("width"), tail.flares
    out = {line: room.get(line, ZERO) for line in (NEAR, FAR)}
    spots = {
        NEAR: (near - out[NEAR], -out[NEAR]),
        FAR: (wide - far + out[FAR], wide + out[FAR]),
    }
    mouth, tip = housing.seat, housing.inside(tail.real("length"))
    inside = (_along(met, Length(wide.nm // 2)), tip)
    one, other = (
        leaning(
            (Axis.ALONG, met.into),
            (_along(met, narrow), mouth),
            (_along(met, broad), tip),
            inside,
            line,
        )
        for line, (narrow, broad) in spots.items()
    )
    return one, other


def _along(met: Meeting, deep: Length) -> Length:
    """A depth in from the joist's side reference face, along the beam."""
    return met.at + deep if met.with_grain else met.at - deep
