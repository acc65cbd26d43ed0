"""An end of one timber in the side of another, in the building, as the project file has it.

It goes by where the arrises run, how the timbers stand and what the sticks measure. Of the marks it
takes the shoulder alone, to know where to look, and where other joints nearby left no wood.
"""

from dataclasses import dataclass

from tests.proof.areas import content, seen
from tests.proof.boxes import OPEN, between, beyond, empty, meet
from tests.proof.kernel import Vector
from tests.proof.marks import ALONG
from tests.proof.raising import Joint, Piece, Raising, end_names
from tests.space import TOWARDS, Box, Span

SKIN = 2_000
"""How deep under a face its wood is looked at, in nanometres: as deep as anything is pushed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Meeting:
    """An end of a stick, which looks along an axis of the building, in the side of a receiver.

    `feature` and `other` are what the joint puts on the two.
    """

    stick: Piece
    receiver: Piece
    axis: int
    sense: int
    feature: str
    other: str

    @property
    def inward(self) -> Vector:
        """The way in."""
        return vector(self.axis, self.sense)

    @property
    def aside(self) -> tuple[tuple[int, int], ...]:
        """The four ways to the side: an axis of the building and a sense along it."""
        return tuple((axis, sense) for axis in range(3) if axis != self.axis for sense in (1, -1))

    @property
    def grain(self) -> int:
        """The axis of the building that the receiver runs along."""
        return self.receiver.placed.inward[ALONG][0]

    @property
    def over(self) -> int:
        """The wood on the receiver that its mates do not count on: none at a reference face."""
        reading = reading_along(self.receiver, self.axis)
        far = self.receiver.placed.inward[reading][1] != self.sense
        return self.receiver.rule.stock.over(reading, self.other) if far else 0

    @property
    def wood(self) -> Box:
        """The receiver with its real section here, before it was cut."""
        return self._receiver(*self.receiver.rule.stock.section(self.other))

    @property
    def framed(self) -> Box:
        """The receiver as its mates count on it."""
        stock = self.receiver.rule.stock
        return self._receiver(stock.framed(1, self.other), stock.framed(2, self.other))

    def across(self, spans: dict[int, Span]) -> Box:
        """A part of the stick's section, however far along."""
        return self.stick.placed.box((OPEN, spans[1], spans[2]))

    def past(self, plane: int) -> Box:
        """All that lies further in than a plane across the way in."""
        return beyond(self.axis, plane, far=self.sense > 0)

    def before(self, plane: int) -> Box:
        """All that lies not so far in."""
        return beyond(self.axis, plane, far=self.sense < 0)

    def facing(self, part: Box, way: tuple[int, int], *missing: Box, uncut: bool = False) -> int:
        """The area of the receiver's wood that a part of the stick meets, pushed along an axis.

        There is none where other joints took it, nor where it is `missing` besides; this joint is
        taken to be cut as well, unless the receiver is thought of as `uncut` for it.
        """
        axis, sense = way
        plane = part[axis][sense > 0]
        skin = between(axis, *sorted((plane, plane + sense * SKIN)))
        there = meet(self.wood, skin, _open_along(part, axis))
        gone = (
            void
            for feature, void in self.receiver.voids()
            if not (uncut and feature == self.other) and not empty(meet(void, there))
        )
        if empty(there):
            return 0
        return content(seen(there, axis), (seen(each, axis) for each in (*missing, *gone)))

    def _receiver(self, first: int, second: int) -> Box:
        whole = self.receiver.carving.blank[ALONG]
        return self.receiver.placed.box((whole, (0, first), (0, second)))


def _open_along(part: Box, axis: int) -> Box:
    """A box without its ends on one axis."""
    x, y, z = (OPEN if number == axis else span for number, span in enumerate(part))
    return x, y, z


def vector(axis: int, length: int) -> Vector:
    """So far along an axis of the building."""
    east, north, up = (length * (axis == each) for each in range(3))
    return east, north, up


def reading_along(piece: Piece, axis: int) -> int:
    """Which of a timber's readings runs along an axis of the building."""
    return next(number for number, way in enumerate(piece.placed.inward) if way[0] == axis)


def meeting(raising: Raising, joint: Joint) -> Meeting:
    """The end of one joint and the timber it enters. Raises KeyError if either is not raised."""
    axis, sense = TOWARDS[joint.end.word]
    feature, other = end_names(joint)
    return Meeting(
        stick=raising.pieces[joint.timber],
        receiver=raising.pieces[joint.into or ""],
        axis=axis,
        sense=sense,
        feature=feature,
        other=other,
    )
