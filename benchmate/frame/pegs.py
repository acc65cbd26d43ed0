"""Pegs through a joint: what is stored of them, and their holes in either timber.

The holes in the tenon lie nearer its shoulder than those in the timber it enters, so that the peg
draws the joint up tight. How much is a house rule that differs between good framers by a factor of
four (trade notes 3: Massie-draw, Underhill, LeeValley), so nothing here is set for them; pegs that
carry load are the engineer's (TFG-peg).
"""

from dataclasses import dataclass
from math import isqrt
from typing import Annotated, Literal, NamedTuple, Self

from pydantic import PlainValidator, model_validator

from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.fields import PositiveSize, Size
from benchmate.model.record import Record
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import Stick, across, axis_from

MOST_PEGS = 4
"""The most pegs one joint is given."""

BoredFrom = Literal["reference", "far"]


def _count(value: object) -> int:
    if type(value) is int and 1 <= value <= MOST_PEGS:
        return value
    raise ValueError(f"is no number of pegs; write 1 to {MOST_PEGS}, without quotes")


class Pegs(Record):
    """The pegs of one joint.

    `size` is the hole's diameter: pegs go by their hole (trade notes 3: TFG-peg, TimberHomes).
    `from_shoulder` is from where the shoulder bears to the centre line of the holes in the timber
    that receives it, and `from_edge` from the narrow edge of the tenon on its reference side to the
    first centre; further ones follow `spacing` apart. In the tenon they lie `draw` nearer its
    shoulder. The receiving timber is bored from its reference face across the tenon's cheeks or
    from its far one, right through or `blind_depth` deep.
    """

    count: Annotated[int, PlainValidator(_count)]
    size: PositiveSize
    from_shoulder: PositiveSize
    from_edge: PositiveSize
    spacing: PositiveSize | None = None
    draw: Size = ZERO
    bored_from: BoredFrom = "reference"
    blind_depth: PositiveSize | None = None

    @model_validator(mode="after")
    def _spaced(self) -> Self:
        if self.count > 1 and self.spacing is None:
            raise ValueError(
                f'has {self.count} pegs but no "spacing"; write how far apart their centres are'
            )
        if self.count == 1 and self.spacing is not None:
            raise ValueError('has "spacing" but only one peg; take it out')
        return self

    @property
    def from_edges(self) -> tuple[Length, ...]:
        """Each centre from the narrow edge of the tenon on its reference side, the first first."""
        apart = self.spacing or ZERO
        return tuple(self.from_edge + apart * place for place in range(self.count))

    @property
    def drawn(self) -> Length:
        """From the tenon's shoulder to the centre line of its own holes."""
        return self.from_shoulder - self.draw

    @property
    def radius(self) -> Length:
        """Half the hole, rounded up to a nanometre."""
        return Length((self.size.nm + 1) // 2)


class Centre(NamedTuple):
    """Where a hole comes on the face it is bored from: along the stick, and in across that face."""

    along: Length
    deep: Length


@dataclass(frozen=True, slots=True, kw_only=True)
class Holes:
    """The peg holes in one stick, bored square to `face`, a long one, or pricked from that side.

    `deep` of each centre counts from the reference face beside `face`. `stop` is the reading, in
    the way they are bored, where blind ones end.
    """

    stick: Stick
    face: Face
    pegs: Pegs
    centres: tuple[Centre, ...]
    stop: Length | None = None

    @property
    def into(self) -> Axis:
        """The axis they run along: across the stick, and across the tenon's cheeks."""
        return axis_from(self.face)

    @property
    def aside(self) -> Axis:
        """The other axis across the stick, on which the centres lie so deep."""
        return across(self.into)


DEPTH_LINE = "peg-depth"
"""The line that says where blind holes end."""


def hole_cuts(holes: Holes) -> tuple[Cut, ...]:
    """The holes as cuts: each a prism of eight sides round it, none of which is struck."""
    end: tuple[Plane, ...] = ()
    if holes.stop is not None:
        bound = below if holes.face.is_reference else above
        end = (bound(holes.into, holes.stop, DEPTH_LINE),)
    return tuple(Cut((*_prism(holes, centre), *end)) for centre in holes.centres)


def _prism(holes: Holes, centre: Centre) -> tuple[Plane, ...]:
    """The eight planes that touch a round hole, those on the slant rounded out to a nanometre."""
    radius = holes.pegs.radius.nm
    reach = {1: radius, 2: isqrt(2 * radius * radius) + 1}
    return tuple(
        Plane(
            _normal(holes.aside, along, deep),
            along * centre.along.nm + deep * centre.deep.nm + reach[abs(along) + abs(deep)],
        )
        for along in (-1, 0, 1)
        for deep in (-1, 0, 1)
        if along or deep
    )


def _normal(aside: Axis, along: int, deep: int) -> tuple[int, int, int]:
    return (along, deep, 0) if aside is Axis.FIRST else (along, 0, deep)


def in_diameters(wood: Length, size: Length) -> str:
    """Some wood in diameters of a hole, to a tenth, never more than there is: `2.5 diameters`."""
    tenths = 10 * wood.nm // size.nm
    sign = "-" if tenths < 0 else ""
    whole, tenth = divmod(abs(tenths), 10)
    figure = f"{whole}.{tenth}" if tenth else f"{whole}"
    return f"{sign}{figure} {'diameter' if figure == '1' else 'diameters'}"
