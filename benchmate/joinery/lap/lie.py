"""How the two timbers of a lap lie to one another: faces, heights, and the bed between them.

How it works
1. A lap has one direction that both timbers look across: the `side` that the first is let into the
   other from. Heights count along it, growing outwards, in nanometres.
2. The bed is the plane where the two lie on one another. What the first timber, the upper one seen
   from that side, has below the bed comes off where it crosses, and what the other has above it.
3. The bed follows from where the two lie as drawn (by square rule as their inner timbers lie), so a
   stick that is over or under moves no line from a reference face.
"""

from dataclasses import dataclass
from typing import NamedTuple

from benchmate.frame.flats import Flat
from benchmate.frame.frame import Frame
from benchmate.frame.place import Place
from benchmate.joinery.lap.record import LapJoint
from benchmate.measure.length import Length
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, across, axis_from, reference_for


class Stretch(NamedTuple):
    """What a timber takes up between two heights."""

    base: int
    top: int


class Crossing(NamedTuple):
    """The height two timbers have in common, the share cut from the second, and the bed's height.

    `common` is nothing or less where one lies clear of the other.
    """

    common: Length
    share: Length
    bed: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Lie:
    """One timber of a lap: `outer` is the face that looks to the side it is let in from.

    `deep` is its axis along that direction and `wide` the one across, which runs along the other
    timber; `place` is where its section is measured for the joint.
    """

    stick: Stick
    place: str
    stands: Place
    outer: Face
    end: Face | None
    deep: Axis
    wide: Axis
    reference_height: int

    @property
    def inner(self) -> Face:
        """The face across from the outer one."""
        return self.outer.opposite

    def stretch(self, deep: Length) -> Stretch:
        """The heights it takes up if it is so deep, held at its reference face."""
        if self.outer.is_reference:
            return Stretch(self.reference_height - deep.nm, self.reference_height)
        return Stretch(self.reference_height, self.reference_height + deep.nm)

    @property
    def real(self) -> Stretch:
        """The heights it takes up as it really is at the joint."""
        return self.stretch(self.stick.depth(self.deep, self.place))

    @property
    def over(self) -> Length:
        """What its far face across is over the section that the frame counts on."""
        return self.stick.over(self.wide, self.place)

    @property
    def far(self) -> Face:
        """Its far face across: the one that shows what the stick is over or under."""
        return reference_for(self.wide).opposite


def lies(joint: LapJoint, frame: Frame) -> tuple[Lie, Lie]:
    """How the timber that is cut first lies, and the one it is let into."""
    first = _lie(frame, joint.timber, joint.feature, joint.end, joint.side)
    second = _lie(frame, joint.into, joint.into_feature, joint.into_end, joint.side)
    return first, second


def _lie(frame: Frame, timber: str, place: str, end: Direction | None, side: Direction) -> Lie:
    stick = frame.stick(timber)
    outer = stick.pose.face(side)
    deep = axis_from(outer)
    reference = frame.face(timber, reference_for(deep), place)
    return Lie(
        stick=stick,
        place=place,
        stands=frame.standing(timber),
        outer=outer,
        end=None if end is None else stick.pose.face(end),
        deep=deep,
        wide=across(deep),
        reference_height=reference.offset if outer.is_reference else -reference.offset,
    )


def crossing(joint: LapJoint, frame: Frame, first: Lie, second: Lie) -> Crossing:
    """How the two share out the height they have in common, as drawn."""
    one, other = (each.stretch(each.stick.held(each.deep)) for each in (first, second))
    top = min(one.top, other.top)
    common = Length(top - max(one.base, other.base))
    share = Length(common.nm // 2) if joint.share is None else frame.value(joint.share)
    return Crossing(common, share, top - share.nm)


def below(side: Direction, height: int) -> Flat:
    """The plane square to a side at a height; what lies behind it is lower."""
    return Flat(side.value, height)
