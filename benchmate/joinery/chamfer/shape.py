"""Where a chamfer lies on one real stick."""

from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.chamfer.record import ARRISES, Arris, Chamfer, Stop
from benchmate.measure.length import Length
from benchmate.model.directions import LONG_FACES, Direction, Face
from benchmate.model.stick import MIDDLE, Stick


@dataclass(frozen=True, slots=True, kw_only=True)
class ChamferShape:
    """A chamfer on one stick: stops along it from the reference shoulder, arrises across it."""

    stick: Stick
    feature: str
    arrises: tuple[Arris, ...]
    leg: Length
    near: Length
    far: Length
    block: Length

    @property
    def places(self) -> tuple[str, ...]:
        """Where its section may have been measured: for it, or half-way along."""
        return (self.feature, MIDDLE)

    def at(self, end: Face) -> Length:
        """The stop nearer an end."""
        return self.near if end is Face.REFERENCE_END else self.far

    def block_at(self, end: Face) -> Length:
        """Where the guide block is clamped, outside the stop nearer an end."""
        if end is Face.REFERENCE_END:
            return self.near - self.block
        return self.far + self.block

    def from_shoulder(self, end: Face, at: Length) -> Length:
        """How far a place is from the shoulder at an end."""
        return at if end is Face.REFERENCE_END else self.stick.body - at

    @property
    def faces(self) -> tuple[Face, ...]:
        """The faces its lines run on, in rolling order."""
        touched = {face for arris in self.arrises for face in arris}
        return tuple(face for face in LONG_FACES if face in touched)


def shape(chamfer: Chamfer, frame: Frame, timber: str) -> ChamferShape:
    """The chamfer on one of its timbers."""
    stick = frame.stick(timber)
    return ChamferShape(
        stick=stick,
        feature=chamfer.id,
        arrises=tuple(ARRISES[word] for word in chamfer.arrises),
        leg=chamfer.leg,
        near=_along(chamfer.near_stop, frame, stick),
        far=_along(chamfer.far_stop, frame, stick),
        block=frame.project.practice.guide_block,
    )


def _along(stop: Stop, frame: Frame, stick: Stick) -> Length:
    if stop.level is not None:
        return _from_level(frame.value(stop.level), frame, stick)
    if stop.distance is None or stop.shoulder is None:
        raise ValueError("a stop needs a level, or a shoulder and a distance")
    distance = frame.value(stop.distance)
    if stick.pose.end(stop.shoulder) is Face.REFERENCE_END:
        return distance
    return stick.body - distance


def _from_level(level: Length, frame: Frame, stick: Stick) -> Length:
    rise = level - shoulder_level(frame, stick)
    return rise if stick.pose.reference_end is Direction.DOWN else -rise


def shoulder_level(frame: Frame, stick: Stick) -> Length:
    """The level of an upright timber's reference shoulder: by its place, or as typed."""
    place = frame.place(stick.id)
    if place is not None:
        return Length(place.origin[2])
    typed = frame.timber(stick.id).shoulder_level
    if typed is None:
        raise ValueError(f"{stick.name} does not say at what level its shoulder stands")
    return frame.value(typed)
