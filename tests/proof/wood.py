"""The wood of a frame by the program's own cuts, for families that slant as well as square ones.

How it works
1. Where a timber stands is reckoned anew from its record: square ones by where their faces look,
   raking ones by turning those directions up in their plane. Only how far along its own line a
   timber lies is taken from the program.
2. A timber is a block with one real section. What a joint takes off it is each of its cuts, as far
   as it lies in the block. `told.py` holds every plane of these against what the steps say.
3. A stick may measure differently at each of its joints. So a joint is looked at in a block with
   the section measured there; only `wood`, all joints at once, takes the stick to be one all along.
"""

from dataclasses import dataclass, replace
from functools import cached_property

from benchmate.frame.frame import Frame
from benchmate.layout.step import Layout
from benchmate.layout.walk import lay_out
from benchmate.measure.section import Section
from benchmate.model.feature import Feature
from benchmate.model.place import COORDINATES
from benchmate.model.project import Timber
from benchmate.model.solids import Cut
from tests.proof.kernel import NOTHING, Solid, block
from tests.space import TOWARDS

Direction = tuple[float, float, float]

TOUCH = 5e17
"""Volume that rounding may leave between two bodies that are the same, in cubic nanometres: half a
cubic millimetre. A line that is a millimetre off on the least land of a joint makes a hundred."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Stand:
    """A timber in the building: its zero, and the directions its readings x, u, v grow in."""

    zero: Direction
    ways: tuple[Direction, Direction, Direction]

    def put(self, body: Solid) -> Solid:
        """A body in the timber's own readings, where it is in the building."""
        return body.turned(self.ways, self.zero)

    def point(self, x: float, u: float, v: float) -> Direction:
        """A point of the timber in the building."""
        east, north, up = (
            zero + sum(at * way[axis] for at, way in zip((x, u, v), self.ways, strict=True))
            for axis, zero in enumerate(self.zero)
        )
        return east, north, up


@dataclass(frozen=True, kw_only=True)
class Log:
    """One timber of a frame: its layout, where it stands, and the block it is cut from.

    `place` is where its section was measured, the nearest first; nothing for the whole stick.
    """

    timber: Timber
    layout: Layout
    stand: Stand
    place: tuple[str, ...] = ()

    def at(self, feature: Feature) -> "Log":
        """The timber with the section it has at one of its joints."""
        return replace(self, place=feature.place)

    @property
    def section(self) -> Section:
        """The real section it was measured to have."""
        return self.layout.stick.section(*self.place)

    @cached_property
    def block(self) -> Solid:
        """The squared stick in its own readings, before any joint is cut."""
        stick, section = self.layout.stick, self.section
        sides = ((0, section.first.nm), (0, section.second.nm))
        return block(((stick.start.nm, stick.finish.nm), *sides))

    @cached_property
    def wood(self) -> Solid:
        """What is left of it in the building when every joint is cut."""
        wastes = [self.waste(feature) for feature in self.layout.features]
        return self.stand.put(self.block).without(wastes)

    def waste(self, feature: Feature) -> Solid:
        """What one joint takes off it, in the building."""
        there = self.at(feature)
        return self.stand.put(NOTHING.joined(there.taken(cut) for cut in feature.cuts))

    def taken(self, cut: Cut) -> Solid:
        """What one cut takes off the block, in the timber's own readings."""
        body = self.block
        for plane in cut.planes:
            body = body.behind(plane.normal, plane.offset)
        return body

    def feature(self, feature: str) -> Feature:
        """A feature by id. Raises KeyError for an unknown one."""
        found = self.layout.feature(feature)
        if found is None:
            raise KeyError(feature)
        return found


def logs(frame: Frame) -> dict[str, Log]:
    """Every timber of a frame."""
    return {timber.id: log(frame, timber) for timber in frame.project.timbers}


def log(frame: Frame, timber: Timber) -> Log:
    """One timber of a frame, laid out."""
    return Log(timber=timber, layout=lay_out(frame, timber.id), stand=stand(frame, timber))


def stand(frame: Frame, timber: Timber) -> Stand:
    """Where a timber stands. Raises ValueError for one without a place."""
    there = frame.place(timber.id)
    if there is None:
        raise ValueError(f"{timber.name} stands or lies nowhere")
    typed = timber.at.sums() if timber.at is not None else {}
    east, north, up = (
        frame.value(typed[name]).nm if name in typed else at
        for name, at in zip(COORDINATES, there.origin, strict=True)
    )
    looks = (_level_end(timber), timber.first_face.word, timber.second_face.word)
    x, u, v = (_turned_up(frame, timber, _away(look)) for look in looks)
    return Stand(zero=(east, north, up), ways=(x, u, v))


def _level_end(timber: Timber) -> str:
    """Where the reference end looks, as the timber would lie if it were laid level."""
    if timber.incline is None:
        return timber.reference_end.word
    head = timber.incline.heading
    return (head if timber.reference_end.word == "up" else head.opposite).word


def _away(look: str) -> Direction:
    axis, sense = TOWARDS[look]
    east, north, up = (-float(sense) * (axis == each) for each in range(3))
    return east, north, up


def _turned_up(frame: Frame, timber: Timber, way: Direction) -> Direction:
    """A direction of a timber laid level, once its head is raised or it is rolled into a roof."""
    if timber.incline is None and timber.roll is None:
        return way
    run, rise = slope(frame, timber)
    head = timber.incline.heading if timber.incline else timber.roll and timber.roll.towards
    axis, sense = TOWARDS[head.word if head else ""]
    level, up = way[axis] * sense, way[2]
    found = list(way)
    found[axis] = sense * (level * run - up * rise)
    found[2] = level * rise + up * run
    return found[0], found[1], found[2]


def slope(frame: Frame, timber: Timber) -> tuple[float, float]:
    """How far a slope goes level and up for each of its own length, by a timber's record."""
    said = timber.incline or timber.roll
    if said is None:
        raise ValueError(f"{timber.name} neither rakes nor is rolled")
    figures = {name: float(frame.value(total).nm) for name, total in said.sums().items()}
    level, up = _figures(figures, timber)
    long = (level * level + up * up) ** 0.5
    return level / long, up / long


def _figures(figures: dict[str, float], timber: Timber) -> tuple[float, float]:
    legs = {name.removeprefix("legs."): at for name, at in figures.items() if "legs." in name}
    if legs:
        up = legs.get("up", legs.get("down", 0.0))
        (level,) = (leg for word, leg in legs.items() if word not in ("up", "down"))
        return level, up
    if "run" in figures:
        return figures["run"], figures["rise"]
    axis = ("east", "north")[TOWARDS[timber.incline.heading.word][0]] if timber.incline else ""
    level = abs(figures[f"head.{axis}"] - figures[f"foot.{axis}"])
    return level, figures["head.up"] - figures["foot.up"]
