"""Which timbers touch by place: the mates to suggest for a joint, and those of a copy or a twin.

A timber is taken as the box it fills in the building, as drawn and without its tenons. One whose
ends are not settled yet is taken as a lane: the box of its section, open along the way it runs.
"""

from collections.abc import Iterator

from benchmate.frame.frame import Frame
from benchmate.frame.levels import LevelError
from benchmate.measure.length import ZERO
from benchmate.measure.section import Section
from benchmate.measure.tolerance import LONGEST_TIMBER
from benchmate.model.place import COORDINATES, sense
from benchmate.model.project import Timber

Span = tuple[int, int]
Box = tuple[Span, Span, Span]
"""From where to where east, north and up of the frame's zero, in nanometres."""

CLOSE = 3_175_000
"""How near two boxes touch: an eighth of an inch, which no timber is off its face by more."""


def box_of(frame: Frame, timber: str) -> Box | None:
    """The box that a timber fills, from shoulder to shoulder; None for one without a place."""
    place = frame.place(timber)
    if place is None:
        return None
    stick = frame.stick(timber)
    corners = place.corners(stick.nominal, ZERO, stick.body)
    low = tuple(min(corner[axis] for corner in corners) for axis in range(3))
    high = tuple(max(corner[axis] for corner in corners) for axis in range(3))
    return ((low[0], high[0]), (low[1], high[1]), (low[2], high[2]))


def lane_of(frame: Frame, timber: Timber) -> Box | None:
    """The lane that a timber lies in by its `at` alone; None for one that says no sound place."""
    if timber.at is None:
        return None
    named = timber.section
    section = named if isinstance(named, Section) else frame.project.sections.get(named)
    try:
        typed = {name: frame.value(total).nm for name, total in timber.at.sums().items()}
    except LevelError:
        return None
    if section is None:
        return None
    far = LONGEST_TIMBER.nm
    spans: dict[str, Span] = dict.fromkeys(COORDINATES, (-far, far))
    for face, deep in ((timber.first_face, section.first), (timber.second_face, section.second)):
        name = COORDINATES[[bool(step) for step in face.value].index(True)]
        if name not in typed:
            return None
        other = typed[name] - sense(face) * deep.nm
        spans[name] = (min(typed[name], other), max(typed[name], other))
    return spans["east"], spans["north"], spans["up"]


def touch(one: Box, other: Box) -> bool:
    """Whether two boxes touch or run into one another."""
    pairs = zip(one, other, strict=True)
    return all(a[0] <= b[1] + CLOSE and b[0] <= a[1] + CLOSE for a, b in pairs)


def touching(frame: Frame, timber: Timber) -> tuple[str, ...]:
    """The other timbers that one touches and crosses, by where along it they come.

    Those whose boxes it touches are told, be it settled or only a lane.
    """
    known = {each.id for each in frame.project.timbers}
    box = box_of(frame, timber.id) if timber.id in known else lane_of(frame, timber)
    if box is None:
        return ()
    axis = [bool(step) for step in timber.reference_end.value].index(True)
    found = (pair for pair in _others(frame, timber) if touch(box, pair[1]))
    ordered = sorted(found, key=lambda pair: -sense(timber.reference_end) * sum(pair[1][axis]))
    return tuple(other for other, _ in ordered)


def _others(frame: Frame, timber: Timber) -> Iterator[tuple[str, Box]]:
    for other in frame.project.timbers:
        box = box_of(frame, other.id)
        square = other.reference_end.square_to(timber.reference_end)
        slopes = other.incline is not None or timber.incline is not None
        if other.id != timber.id and box is not None and (square or slopes):
            yield other.id, box
