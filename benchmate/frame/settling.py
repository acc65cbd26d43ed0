"""Whether a timber's place and ends are said once each: enough to settle it, nothing twice."""

from collections.abc import Collection, Iterator

from benchmate.frame.rake import Rake, Slope
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, end_words
from benchmate.model.place import COORDINATES, coordinate_along
from benchmate.model.project import Timber
from benchmate.model.work import Fault

NO_PLACE_NEEDED = 'take it out, or give the timber a place with "at"'

_TYPED_ENDS = ("reference_end_at", "far_end_at")
"""The keys that say where an end comes, the reference end's first."""


def faults(timber: Timber, bears: Collection[Direction]) -> Iterator[Fault]:
    """What a timber says twice or leaves open; `bears` are the ends that meet another timber."""
    if timber.at is not None and timber.incline is not None:
        problem = f'gives {timber.name} a second place beside "at"'
        remedy = 'keep "at" for a timber that stands or lies, "incline" for one that rakes'
        yield Fault("incline", problem, remedy)
    elif timber.roll is not None and (fault := _roll_fault(timber)):
        yield fault
    elif timber.incline is not None:
        yield from _said_twice(timber, ("length", *_TYPED_ENDS), '"incline" settles')
    elif timber.at is not None:
        yield from _coordinates(timber)
        yield from _ends(timber, bears)
    else:
        yield from _alone(timber)
    if timber.length is None and timber.length_is == "overall":
        yield Fault("length_is", "says what length means, but there is none", "take it out")
    if timber.placed:
        yield from _said_twice(timber, ("shoulder_level",), "its place settles")


def _roll_fault(timber: Timber) -> Fault | None:
    """A roll of a timber that does not lie level and square to the slope it is rolled to."""
    if timber.roll is None:
        return None
    if timber.at is None:
        remedy = 'take it out, or give the timber a place with "at"'
        return Fault("roll", "counts only for a timber that lies on a line", remedy)
    if timber.upright or not timber.reference_end.square_to(timber.roll.towards):
        towards = timber.roll.towards.word
        problem = f"cannot be: {timber.name} does not lie square to a slope that rises {towards}"
        return Fault("roll", problem, "correct the side it rises towards, or take it out")
    return None


def _said_twice(timber: Timber, keys: tuple[str, ...], whose: str) -> Iterator[Fault]:
    for key in keys:
        if key in timber.sums():
            yield Fault(key, f"says again what {whose}, and the two could differ", "take it out")


def _alone(timber: Timber) -> Iterator[Fault]:
    if timber.length is None:
        problem = f"is missing, and {timber.name} has no place that would settle it"
        yield Fault("length", problem, 'write its length, or give it a place with "at"')
    for key in _TYPED_ENDS:
        if key in timber.sums():
            yield Fault(key, "counts only for a timber that has a place", NO_PLACE_NEEDED)


def _coordinates(timber: Timber) -> Iterator[Fault]:
    along = coordinate_along(timber.reference_end)
    given = timber.at.sums() if timber.at is not None else {}
    for name in COORDINATES:
        if name == along and name in given:
            problem = f"says where along itself {timber.name} starts, which its ends settle"
            end = end_words(timber.reference_end)
            remedy = f'take it out; the {end} comes where a joint or "reference_end_at" puts it'
            yield Fault(f"at.{name}", problem, remedy)
        elif name != along and name not in given:
            problem = f"is missing: it says where the reference arris of {timber.name} runs"
            yield Fault(f"at.{name}", problem, f"write how far {name} of the frame's zero it lies")


def _ends(timber: Timber, bears: Collection[Direction]) -> Iterator[Fault]:
    ends = (timber.reference_end, timber.reference_end.opposite)
    for end, key in zip(ends, _TYPED_ENDS, strict=True):
        if key in timber.sums() and end in bears:
            whose = f"where the {end_words(end)} of {timber.name} comes"
            problem = f"says again {whose}, which the joint there settles"
            yield Fault(key, problem, "take it out, or the joint")
    open_ends = tuple(
        (end, key)
        for end, key in zip(ends, _TYPED_ENDS, strict=True)
        if key not in timber.sums() and end not in bears
    )
    if not open_ends:
        yield from _said_twice(timber, ("length",), f"the two ends of {timber.name} settle")
    elif timber.length is None:
        for end, key in open_ends:
            problem = f"is missing: nothing says where the {end_words(end)} of {timber.name} comes"
            remedy = f'give the joint it has there, or "{key}", or its length from the other end'
            yield Fault(key, problem, remedy)
    elif len(open_ends) == len(ends):
        problem = f"is missing: the length of {timber.name} is given, but not where it starts"
        remedy = f'give a joint at one end, or "{_TYPED_ENDS[0]}"'
        yield Fault(_TYPED_ENDS[0], problem, remedy)


def rule_faults(timber: Timber, rule: str, classes: tuple[str, ...]) -> Iterator[Fault]:
    """An inner section that is missing under square rule, or counts for nothing under mill rule."""
    square = timber.square_ruled(rule)
    if square and timber.inner is None and timber.section not in classes:
        named = isinstance(timber.section, str)
        remedy = f'give "{timber.section}" a section under [inner], or' if named else "give"
        yield Fault(
            "inner",
            f"is missing, though {timber.name} goes by square rule",
            f"{remedy} {timber.name} an inner of its own",
        )
    elif timber.inner is not None and not square:
        yield Fault(
            "inner",
            f"counts only under square rule, and {timber.name} goes by mill rule",
            'take it out, or write rule = "square"',
        )


def roll_faults(run: Length, rise: Length) -> Iterator[Fault]:
    """A slope that goes nowhere, or down."""
    if run <= ZERO:
        yield Fault("roll.run", "is no run at all", "write how far level for so much rise")
    if rise < ZERO:
        remedy = "write it above nothing, and turn the side it rises towards"
        yield Fault("roll.rise", "goes down", remedy)


def plane_faults(timber: Timber, line: Rake) -> Iterator[Fault]:
    """A head that does not lie where it is said to, or not above its foot."""
    if timber.incline is None:
        return
    if line.aside or line.run <= 0:
        problem = f"does not put its head straight {timber.incline.heading.word} of its foot"
        yield Fault("incline", problem, "correct the points, or which way it rakes")
    if line.rise <= 0:
        problem = "does not put its head above its foot"
        yield Fault("incline", problem, "correct the points, the rise or the legs")


def alike_faults(timber: Timber, line: Rake, into: Timber, other: Rake) -> Iterator[Fault]:
    """Two timbers of which one is to enter the other's side, but both rake the same way."""
    same = timber.pose.head is into.pose.head
    if same and Slope(line.run, line.rise).like(Slope(other.run, other.rise)):
        problem = f"{timber.name} and {into.name} rake alike, so one cannot enter the other"
        yield Fault("into", problem, "name a timber that crosses it, or correct one of their rakes")
