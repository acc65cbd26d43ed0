"""What every piece of work on the timbers tells the rest of the program: joints and chamfers."""

from abc import ABC, abstractmethod
from typing import TYPE_CHECKING, Annotated, ClassVar, Literal, NamedTuple, Self

from pydantic import Field, model_validator

from benchmate.measure.length import ZERO, Length
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction, end_words
from benchmate.model.fields import Id
from benchmate.model.record import Record

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping

    from benchmate.measure.reading import Unit
    from benchmate.model.project import Timber
    from benchmate.model.stick import Wood


EndShape = Literal["square", "parallel", "nosed", "plumb", "level"]
"""How the tip of an end is cut: square to its timber; parallel to the face it bears on, with or
without a nose square to that face; plumb; level."""

Front = Literal["bisecting", "square to the face", "square to the rake"]
"""How the front of an end that is let into a face looks: half-way between the other two; square to
the face it is let into; square to its own timber."""


class Extension(NamedTuple):
    """Wood a joint needs beyond the shoulder at one end of a timber, be it `scribed` or not.

    `length` is measured square to the cut at the tip, whose `shape` may slant on a timber that
    rakes. One that goes `through` the timber it bears in takes all the wood it passes there, which
    the frame measures, and `length` more; below nothing where it is held short. One that is let in
    with a `front` stops there. Other joints may be cut in one that is a `lap`. `place` is where the
    end's section is measured, `level` how long a level cut takes the lower corner off a plumb tip,
    and `along` the timber along whose top a parallel tip is cut, if not along the face it bears on.
    """

    timber: str
    end: Direction
    length: Length
    scribed: bool = False
    shape: EndShape = "square"
    through: "Bearing | None" = None
    front: Front | None = None
    lap: bool = False
    place: str = ""
    level: Length = ZERO
    along: str = ""


class Bearing(NamedTuple):
    """Where the end of one timber bears in another: `depth` inside the face it enters.

    `place` is where the receiving timber's section is measured for it. A `scribed` end is marked to
    its mate by hand, so its shoulder is only about where it comes.
    """

    timber: str
    end: Direction
    into: str
    depth: Length
    place: str
    scribed: bool = False


class Abutment(NamedTuple):
    """Where the end of one timber stops against the end of another in its own line.

    Its shoulder lies `short` of a coordinate of the building, `at`, along the line: short the way
    the end looks.
    """

    timber: str
    end: Direction
    to: str
    at: Sum
    short: Length


class Settled(NamedTuple):
    """An end whose shoulder a joint settles, and the key of the file that says which end it is."""

    timber: str
    end: Direction
    key: str


class Fault(NamedTuple):
    """A parameter that cannot stand beside the timbers it is for."""

    key: str
    problem: str
    remedy: str


def end_fault(key: str, end: Direction, timber: "Timber") -> Fault | None:
    """The fault of naming an end that a timber does not have, if it is one."""
    ends = (timber.reference_end, timber.reference_end.opposite)
    if end in ends:
        return None
    words = " and ".join(end_words(each) for each in ends)
    return Fault(
        key,
        f"{timber.name} has no {end_words(end)}: its ends are its {words}",
        "name one of its ends",
    )


def meeting_faults(
    timber: "Timber", end: Direction, into: "Timber", typed: "Mapping[str, bool]"
) -> "Iterator[Fault]":
    """What keeps an end from entering another timber's side.

    `typed` tells which keys that say where on the other it stands were given: they are needed for
    timbers without places, `at` first, and say too much for timbers with them.
    """
    fault = end_fault("end", end, timber)
    if timber.pose.head is not into.pose.head or timber.pose.rakes:
        yield _off_the_slope(timber, into)
    elif fault:
        yield fault
    elif not into.reference_end.square_to(timber.reference_end):
        problem = f"{timber.name} and {into.name} run the same way, so one cannot enter the other"
        yield Fault("into", problem, "name a timber that crosses it")
    elif timber.placed is not into.placed:
        placed, other = (timber, into) if timber.placed else (into, timber)
        problem = f"{placed.name} has a place in the frame, but {other.name} has none"
        yield Fault("into", problem, f"give {other.name} its place too")
    elif timber.placed:
        for key in (key for key, given in typed.items() if given):
            problem = f"says again what the places of {timber.name} and {into.name} settle"
            yield Fault(key, problem, "take it out")
    elif not typed["at"]:
        problem = f"is missing: it says where {timber.name} crosses {into.name}"
        remedy = f"write how far along from the reference shoulder of {into.name}"
        yield Fault("at", problem, f"{remedy}, or give both their places")


def placed_faults(timber: "Timber", end: Direction, into: "Timber") -> "Iterator[Fault]":
    """What keeps an end from entering another timber's side, where both must have places."""
    for key, each in (("timber", timber), ("into", into)):
        if not each.placed:
            problem = f"{each.name} has no place in the frame, and this joint needs one"
            yield Fault(key, problem, 'give it its place with "at"')
            return
    yield from meeting_faults(timber, end, into, {})


def not_level_fault(timber: "Timber", what: str) -> Fault | None:
    """The fault of a timber that does not lie level and plumb, where `what` needs one that does."""
    if timber.upright:
        problem = f"{timber.name} stands upright, and {what}"
    elif timber.pose.head is not None:
        problem = f"{timber.name} lies in a slope, and {what}"
    else:
        return None
    return Fault("timber", problem, "use a tenon there, or name a timber that lies level")


def level_faults(
    timber: "Timber", end: Direction, into: "Timber", what: str
) -> "tuple[Fault, ...]":
    """What keeps an end that lies level, as `what` needs, from entering another timber's side.

    Both must have places.
    """
    found = tuple(placed_faults(timber, end, into))
    fault = not_level_fault(timber, what)
    return found or ((fault,) if fault else ())


_ROLLED = "is rolled to lie in a slope"


def slope_words(timber: "Timber") -> str:
    """How a timber lies in a slope, after its name; empty for one that stands or lies square."""
    if timber.pose.head is None:
        return ""
    return "rakes" if timber.pose.rakes else _ROLLED


def rolled_fault(key: str, timber: "Timber", what: str) -> Fault | None:
    """The fault of a timber that is rolled to lie in a slope, where `what` needs one that is not.

    None of its long faces is level or plumb. `key` is the one that names it.
    """
    if timber.roll is None:
        return None
    problem = f"{timber.name} {_ROLLED}, and {what}"
    return Fault(key, problem, "take its roll out, or name another timber")


def _off_the_slope(timber: "Timber", into: "Timber") -> Fault:
    """A square joint of two timbers of which one rakes or is rolled and the other is not so too."""
    raking = next((each for each in (timber, into) if each.pose.rakes), None)
    if raking is timber or (raking is not None and timber.roll is not None):
        problem = f"makes a square joint with {raking.name}, which rakes"
        remedy = 'use a family for timbers that rake, such as "brace", or take the joint out'
    elif raking is not None:
        problem = f"makes a square joint with {raking.name}, which rakes"
        remedy = (
            f'give {timber.name} a "roll" if it lies in that slope, or use a family for timbers '
            'that rake, such as "brace"'
        )
    else:
        rolled = timber if timber.roll is not None else into
        problem = f"makes a square joint with {rolled.name}, which {_ROLLED}"
        remedy = "name a timber that rakes or is rolled the same way"
    return Fault("into", problem, remedy)


def raking_faults(timber: "Timber", end: Direction, into: "Timber") -> "Iterator[Fault]":
    """What keeps an end of a raking timber from entering the side of one in its own plane."""
    if timber.incline is None:
        problem = f"is for a timber that rakes, and {timber.name} stands or lies"
        yield Fault("timber", problem, 'give it "incline" instead of "at", or use a tenon')
    elif end not in (Direction.UP, Direction.DOWN):
        problem = f"{timber.name} rakes, so its ends are its foot and its head"
        yield Fault("end", problem, 'write "foot" or "head"')
    elif not into.placed:
        problem = f"{timber.name} has a place in the frame, but {into.name} has none"
        yield Fault("into", problem, f"give {into.name} its place too")
    elif fault := rolled_fault("into", into, "this end enters a face that is plumb or level"):
        yield fault
    elif not _in_one_plane(timber, into):
        problem = f"{into.name} does not run in the upright plane that {timber.name} rakes in"
        yield Fault("into", problem, "name a timber that stands or runs in that plane")


def _in_one_plane(timber: "Timber", into: "Timber") -> bool:
    head = timber.pose.head
    grain = into.pose.reference_end
    return head is not None and (grain in (head, head.opposite) or into.upright)


class Work(Record, ABC):
    """A joint or other work, written once, on one timber or more.

    Each family's record derives from this and answers for its own parameters. `meets` are the ids
    of other joints that its cuts are meant to run into; one side saying so is enough. Of two that
    cross it is the one that says so which goes through.
    """

    settling: ClassVar[tuple[str, ...]] = ("timber",)
    """The keys of the file that name the timbers whose ends it may settle."""

    id: Id
    meets: Annotated[tuple[Id, ...], Field(strict=False)] = ()

    @model_validator(mode="after")
    def _meets_each_once(self) -> Self:
        if len(set(self.meets)) != len(self.meets):
            raise ValueError('names a joint twice in "meets"; name each once')
        return self

    @abstractmethod
    def timbers(self) -> dict[str, str]:
        """The timbers the work touches, each under the key of the file that names it."""

    def proportioned(self, wood: "Callable[[str], Wood]", bare: "Unit") -> Self:  # noqa: ARG002 - each family's own
        """The work with what it leaves to a rule of proportion worked out from its timbers.

        `wood` gives a timber's section by id, `bare` the unit to round in. A frame asks for it
        first of all, so `extensions` may count on it; all else is asked of stored work too. Asked
        again, such work is itself.
        """
        return self

    def joins(self) -> bool:
        """Whether it is a joint: its timbers meet, so sizes of one bear on marks of the others."""
        return True

    def goes_on(self) -> tuple[Bearing, ...]:
        """The ends that go on through what they bear in into a further timber, and bear on none."""
        return ()

    def cuts_through(self, other: "Work") -> str | None:  # noqa: ARG002 - each family's own
        """The timber of another joint that it is cut into as well, for one that it meets."""
        return None

    def sums(self) -> dict[str, Sum]:
        """The parameters that may hold names of levels and lengths, by key."""
        return {}

    def extensions(self) -> tuple[Extension, ...]:
        """The tenons it puts on the ends of timbers."""
        return ()

    def bearings(self) -> tuple[Bearing, ...]:
        """The ends whose shoulders it settles, where its timbers have places."""
        return ()

    def abutments(self) -> tuple[Abutment, ...]:
        """The ends whose shoulders it settles by a coordinate of its own."""
        return ()

    def settled(self) -> tuple[Settled, ...]:
        """Every end whose shoulder it settles, one way or the other."""
        keys = {timber: key for key, timber in self.timbers().items()}
        keys = {timber: "end" if key == "timber" else key for timber, key in keys.items()}
        ends: tuple[Bearing | Abutment, ...] = (*self.bearings(), *self.abutments())
        return tuple(Settled(each.timber, each.end, keys[each.timber]) for each in ends)

    def faults(self, timbers: "Mapping[str, Timber]") -> tuple[Fault, ...]:  # noqa: ARG002 - each family's own
        """What cannot be, given how the timbers stand. All the timbers it names are known."""
        return ()
