"""Building directions, and how a timber stands in them.

A timber is held by two adjacent reference faces and a reference end, each named by the
building direction it looks towards. Its hand follows from the three: nothing else is typed.
"""

from dataclasses import dataclass, field
from enum import Enum


class Direction(Enum):
    """A building direction; the value is its step east, north and up."""

    EAST = (1, 0, 0)
    WEST = (-1, 0, 0)
    NORTH = (0, 1, 0)
    SOUTH = (0, -1, 0)
    UP = (0, 0, 1)
    DOWN = (0, 0, -1)

    @property
    def word(self) -> str:
        """The direction in lower case, as project files write it."""
        return self.name.lower()

    @property
    def opposite(self) -> "Direction":
        """The direction looking the other way."""
        east, north, up = self.value
        return Direction((-east, -north, -up))

    def square_to(self, other: "Direction") -> bool:
        """Whether the two directions are at right angles."""
        return other not in (self, self.opposite)

    def cross(self, other: "Direction") -> "Direction":
        """The third direction of a right-handed set; the two must be square to each other."""
        (a, b, c), (d, e, f) = self.value, other.value
        return Direction((b * f - c * e, c * d - a * f, a * e - b * d))


class Face(Enum):
    """One of the six sides of a timber, named from its reference arris and reference end."""

    FIRST = "first"
    SECOND = "second"
    FAR_FIRST = "far first"
    FAR_SECOND = "far second"
    REFERENCE_END = "reference end"
    FAR_END = "far end"

    @property
    def opposite(self) -> "Face":
        """The side across the timber, or at its other end."""
        return _OPPOSITE[self]

    @property
    def is_end(self) -> bool:
        """Whether this side is end grain."""
        return self in (Face.REFERENCE_END, Face.FAR_END)

    @property
    def is_reference(self) -> bool:
        """Whether marks are measured from this side."""
        return self in (Face.FIRST, Face.SECOND, Face.REFERENCE_END)


_OPPOSITE = {
    Face.FIRST: Face.FAR_FIRST,
    Face.FAR_FIRST: Face.FIRST,
    Face.SECOND: Face.FAR_SECOND,
    Face.FAR_SECOND: Face.SECOND,
    Face.REFERENCE_END: Face.FAR_END,
    Face.FAR_END: Face.REFERENCE_END,
}

LONG_FACES = (Face.FIRST, Face.SECOND, Face.FAR_FIRST, Face.FAR_SECOND)
"""The four long faces in the order they come up as the timber is rolled."""

_FACE_WORDS = {Direction.UP: "top face", Direction.DOWN: "underside"}
_END_WORDS = {Direction.UP: "head", Direction.DOWN: "foot"}


def face_words(direction: Direction) -> str:
    """What a framer calls the long face looking that way: `South face`, `top face`."""
    return _FACE_WORDS.get(direction, f"{direction.word.capitalize()} face")


def end_words(direction: Direction) -> str:
    """What a framer calls the end looking that way: `foot`, `head`, `west end`."""
    return _END_WORDS.get(direction, f"{direction.word} end")


@dataclass(frozen=True, slots=True)
class Pose:
    """How a timber stands: where its two reference faces and its reference end look.

    A timber that rakes is described as it would lie if laid level, and `head` is then the side that
    is raised: an end of a timber that rakes, a long side of one that is rolled to lie in a roof,
    None for a timber that stands or lies. Raises ValueError unless the three directions are square
    to one another.
    """

    first: Direction
    second: Direction
    reference_end: Direction
    head: Direction | None = None
    _looks: "dict[Face, Direction]" = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        pairs = (
            (self.first, self.second),
            (self.first, self.reference_end),
            (self.second, self.reference_end),
        )
        if not all(a.square_to(b) for a, b in pairs):
            raise ValueError(
                "the first face, the second face and the reference end do not look in three "
                "directions square to one another; turn one of them"
            )
        reference = (Face.FIRST, Face.SECOND, Face.REFERENCE_END)
        looks = dict(zip(reference, (self.first, self.second, self.reference_end), strict=True))
        looks |= {face.opposite: direction.opposite for face, direction in looks.items()}
        object.__setattr__(self, "_looks", looks)  # worked out once, as every mark asks for it

    def direction(self, face: Face) -> Direction:
        """Where a side of the timber looks."""
        return self._looks[face]

    def face(self, direction: Direction) -> Face:
        """The side of the timber that looks in a building direction."""
        return next(face for face in Face if self.direction(face) is direction)

    @property
    def rakes(self) -> bool:
        """Whether one end is raised above the other."""
        return self.head is not None and not self.reference_end.square_to(self.head)

    def end(self, direction: Direction) -> Face:
        """The end a file names so: up and down are the head and the foot of a raking timber."""
        if self.head is None or not self.rakes:
            return self.face(direction)
        return self.face({Direction.UP: self.head, Direction.DOWN: self.head.opposite}[direction])

    def words(self, face: Face) -> str:
        """What a framer calls a side of this timber."""
        direction = self.direction(face)
        if not face.is_end:
            return face_words(direction)
        if not self.rakes:
            return end_words(direction)
        return end_words(Direction.UP if direction is self.head else Direction.DOWN)

    def edge_words(self, face: Face) -> str:
        """What a framer calls the edge that a long face makes with the one he strikes a line on.

        For one on the side of a rafter its `top edge`, for one on top of a plate its `South edge`.
        """
        words = self.words(face)
        return "bottom edge" if words == "underside" else f"{words.removesuffix(' face')} edge"

    @property
    def right_handed(self) -> bool:
        """Whether the second face is on the right as the first is seen with its end below."""
        return self.first.cross(self.reference_end) is self.second

    def arris_words(self, one: Face, other: Face) -> str:
        """What a framer calls the arris between two long faces: `North-East`, `top-South`."""
        words = (self.words(face).removesuffix(" face") for face in (one, other))
        return "-".join(words)
