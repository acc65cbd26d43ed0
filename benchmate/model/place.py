"""Where a timber stands in the building, as its file says it.

Coordinates count east, north and up from the frame's zero, which is where the framer puts it. Each
is a sum of lines, levels, lengths and sections, so a place moves with what it is named after.
"""

from typing import Literal, Self

from pydantic import model_validator

from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction
from benchmate.model.fields import FACES, FaceDirection, Position
from benchmate.model.record import Record

Coordinate = Literal["east", "north", "up"]

COORDINATES: tuple[Coordinate, ...] = ("east", "north", "up")
"""The three coordinates, in the order of a direction's own steps."""

_PLUMB = (Direction.UP, Direction.DOWN)
_THREE_WAYS = (
    'give "foot", "head" and "towards", or "foot", "towards", "run" and "rise", or "corner" and '
    '"legs"'
)


def coordinate_along(direction: Direction) -> Coordinate:
    """The coordinate that changes along a direction."""
    return COORDINATES[[bool(step) for step in direction.value].index(True)]


def sense(direction: Direction) -> int:
    """1 where a coordinate grows along a direction, -1 where it shrinks."""
    return sum(direction.value)


def _table(value: object, remedy: str) -> object:
    """A value as it is; ValueError for one that has no keys."""
    if isinstance(value, (dict, Record)):
        return value
    raise ValueError(f"is not a table; {remedy}")


class Line(Record):
    """The line a timber's reference arris runs on: two coordinates, the third runs along it."""

    east: Position | None = None
    north: Position | None = None
    up: Position | None = None

    @model_validator(mode="before")
    @classmethod
    def _coordinates(cls, value: object) -> object:
        return _table(value, 'write two coordinates, as { east = "0", north = "0" }')

    def sums(self) -> dict[str, Sum]:
        """The coordinates given, by name."""
        found = {"east": self.east, "north": self.north, "up": self.up}
        return {name: total for name, total in found.items() if total is not None}


class Point(Record):
    """A point in the building."""

    east: Position
    north: Position
    up: Position

    def sums(self) -> dict[str, Sum]:
        """The three coordinates by name."""
        return {"east": self.east, "north": self.north, "up": self.up}


class Legs(Record):
    """The two legs of an upright right angle, each by the direction it goes from the corner in."""

    north: Position | None = None
    east: Position | None = None
    south: Position | None = None
    west: Position | None = None
    up: Position | None = None
    down: Position | None = None

    @model_validator(mode="after")
    def _upright(self) -> Self:
        looks = [FACES[word] for word in self.sums()]
        if [look in _PLUMB for look in looks] != [False, True]:
            raise ValueError(
                'make no upright right angle; give two: "up" or "down", and one of north, east, '
                "south, west"
            )
        return self

    @property
    def heading(self) -> Direction:
        """The compass direction in which the line that closes them rises."""
        level, _ = (FACES[word] for word in self.sums())
        return level.opposite if self.up is not None else level

    def sums(self) -> dict[str, Sum]:
        """The legs given, by the word of each, the level one first."""
        words = ("north", "east", "south", "west", "up", "down")
        found = {word: getattr(self, word) for word in words}
        return {word: total for word, total in found.items() if total is not None}


class Roll(Record):
    """How a level timber is rolled to lie in a roof: `rise` in `run`, rising `towards` a side.

    Its faces are named as they would look if the roof were laid level, as a rafter's are.
    """

    towards: FaceDirection
    run: Position
    rise: Position

    @model_validator(mode="before")
    @classmethod
    def _said(cls, value: object) -> object:
        return _table(value, 'write { towards = "north", run = "12", rise = "8" }')

    @model_validator(mode="after")
    def _along_the_compass(self) -> Self:
        if self.towards in _PLUMB:
            raise ValueError('rises "towards" no compass direction; write the side it rises to')
        return self

    def sums(self) -> dict[str, Sum]:
        """Run and rise, under the keys of the file."""
        return {"run": self.run, "rise": self.rise}


class Incline(Record):
    """The arris line of a timber that rakes in a vertical plane, said in one of three ways.

    Two points: `foot`, `head`, and the compass direction that the head lies `towards`. Run and
    rise: `foot`, `towards`, `run` and `rise`. Legs: the `corner` of the right angle it closes, and
    two `legs`, one up or down and one along the compass.
    """

    foot: Point | None = None
    head: Point | None = None
    towards: FaceDirection | None = None
    run: Position | None = None
    rise: Position | None = None
    corner: Point | None = None
    legs: Legs | None = None

    @model_validator(mode="before")
    @classmethod
    def _ways(cls, value: object) -> object:
        return _table(value, _THREE_WAYS)

    @model_validator(mode="after")
    def _said_one_way(self) -> Self:
        given = {name for name in type(self).model_fields if getattr(self, name)}
        ways = ({"foot", "head", "towards"}, {"foot", "towards", "run", "rise"}, {"corner", "legs"})
        if given not in ways:
            raise ValueError(
                f"is said in none of the three ways, or in more than one; {_THREE_WAYS}"
            )
        if self.towards in _PLUMB:
            raise ValueError(
                'has a head that lies "towards" no compass direction; write north, east, south or '
                "west"
            )
        return self

    @property
    def heading(self) -> Direction:
        """The compass direction that the head lies in, as seen from the foot."""
        if self.towards is not None:
            return self.towards
        if self.legs is None:
            raise ValueError("an incline says which way it rises, or has legs")
        return self.legs.heading

    def sums(self) -> dict[str, Sum]:
        """Every figure it is made of, under the keys of the file."""
        found: dict[str, Sum] = {}
        for name, point in (("foot", self.foot), ("head", self.head), ("corner", self.corner)):
            if point is not None:
                found |= {f"{name}.{key}": total for key, total in point.sums().items()}
        if self.legs is not None:
            found |= {f"legs.{key}": total for key, total in self.legs.sums().items()}
        single = {"run": self.run, "rise": self.rise}
        return found | {name: total for name, total in single.items() if total is not None}
