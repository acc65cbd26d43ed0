"""Like members, and of which hand: timbers whose marks are the same but for the turn of the arris.

How it works
1. A timber's shape is written in its own readings, from its own arris: its section, its ends and
   the planes of all that is cut from it. Two timbers of the same shape are marked alike.
2. Their hand is how the two reference faces and the reference end turn round one another. Of the
   same hand they are interchangeable; of opposite hands they are a mirrored pair.
3. A timber that is its own mirror image, end for end or face for face, has no hand.
"""

from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.layout.walk import features_on
from benchmate.measure.length import Length
from benchmate.model.solids import Plane

RIGHT, LEFT, NEITHER = "right hand", "left hand", "no hand"

Triple = tuple[int, int, int]
Planes = tuple[tuple[tuple[Triple, int], ...], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Shape:
    """A timber in its own readings: equal for timbers that are marked alike.

    `extent` is how far its wood reaches along, and in from each reference face, from where its
    readings start; `planes` are those of each cut, in an order of their own. A timber with a joint
    that is `scribed` is like no other, and that holds its own id and the joint's.
    """

    kind: str
    start: Length
    extent: tuple[Length, Length, Length]
    planes: Planes
    scribed: tuple[str, ...]

    @property
    def mirrored(self) -> bool:
        """Whether it is its own mirror image."""
        if self.scribed:
            return False
        along, *across = self.extent
        middles = (self.start + self.start + along, *across)
        return any(
            _reflected(self.planes, axis, twice.nm) == self.planes
            for axis, twice in enumerate(middles)
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Alike:
    """Timbers marked alike, by hand; those without a hand are `either`."""

    kind: str
    timbers: tuple[str, ...]
    right: tuple[str, ...]
    left: tuple[str, ...]
    either: tuple[str, ...]

    def hand(self, timber: str) -> str:
        """The hand of one of them."""
        return RIGHT if timber in self.right else LEFT if timber in self.left else NEITHER


def hand(frame: Frame, timber: str) -> str:
    """A timber's hand, as drawn: what a stick measures does not turn it round.

    Seen on its first reference face with its reference end towards the viewer's feet, a right-hand
    timber has its second reference face on the right. Common practice tells left from right; which
    is which has no source, so this is our own word for it.
    """
    drawn = frame.drawn()
    if drawn.once(f"mirror of {timber}", lambda: shape(drawn, timber).mirrored):
        return NEITHER
    return RIGHT if frame.timber(timber).pose.right_handed else LEFT


def alike(frame: Frame) -> tuple[Alike, ...]:
    """Like members in file order, as drawn; worked out once for one drawing."""
    drawn = frame.drawn()
    return drawn.once("like members", lambda: _groups(drawn))


def _groups(drawn: Frame) -> tuple[Alike, ...]:
    groups: dict[Shape, list[str]] = {}
    for timber in drawn.project.timbers:
        groups.setdefault(shape(drawn, timber.id), []).append(timber.id)
    return tuple(_group(drawn, found, members) for found, members in groups.items())


def _group(frame: Frame, found: Shape, members: list[str]) -> Alike:
    right = {each: frame.timber(each).pose.right_handed for each in members}
    handed = () if found.mirrored else members
    return Alike(
        kind=found.kind,
        timbers=tuple(members),
        right=tuple(each for each in handed if right[each]),
        left=tuple(each for each in handed if not right[each]),
        either=tuple(members) if found.mirrored else (),
    )


def shape(frame: Frame, timber: str) -> Shape:
    """A timber's shape in its own readings."""
    stick = frame.stick(timber)
    features = features_on(frame, timber)
    cuts = (cut for feature in features for cut in feature.cuts)
    scribed = [feature.id for feature in features if feature.scribed]
    return Shape(
        kind=frame.timber(timber).kind,
        start=stick.start,
        extent=(stick.overall, stick.nominal.first, stick.nominal.second),
        planes=tuple(sorted(_sorted(cut.planes) for cut in cuts)),
        scribed=(timber, *scribed) if scribed else (),
    )


def _sorted(planes: tuple[Plane, ...]) -> tuple[tuple[Triple, int], ...]:
    return tuple(sorted((plane.normal, plane.offset) for plane in planes))


def _reflected(planes: Planes, axis: int, twice_middle: int) -> Planes:
    """The planes of a shape mirrored along one axis about its middle."""

    def turned(normal: Triple, offset: int) -> tuple[Triple, int]:
        x, u, v = (-part if place == axis else part for place, part in enumerate(normal))
        return (x, u, v), offset - normal[axis] * twice_middle

    return tuple(sorted(tuple(sorted(turned(*plane) for plane in cut)) for cut in planes))
