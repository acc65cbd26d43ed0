"""The frame timber by timber: where each stands, how long it is, what meets it and where."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from benchmate.frame.frame import Frame
from benchmate.frame.place import Place
from benchmate.layout.likeness import hand
from benchmate.layout.walk import features_on
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.feature import Feature
from benchmate.model.project import Timber
from benchmate.model.stick import Stick
from benchmate.model.work import Abutment, Bearing, Work


@dataclass(frozen=True, slots=True, kw_only=True)
class Meets:
    """One timber meeting another.

    `words` say how: `south end bears in SW post`. `at` is from the reference shoulder, `from_end`
    from the squared reference end and `back` from the far end: of the shoulder, or of where the
    other's mortise or pocket starts. `own` says that it is this timber's end that bears, so deep
    inside the other's face (`housed`). Where a `scribed` joint comes is left to the framer.
    """

    timber: str
    words: str
    own: bool
    housed: Length
    scribed: bool
    at: Length
    from_end: Length
    back: Length


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """One timber of the frame.

    `ends` are the building coordinates of its two shoulders along its arris, reference end first;
    one that stands alone has none.
    """

    timber: Timber
    stick: Stick
    hand: str
    ends: tuple[tuple[Length, Length, Length], ...]
    meets: tuple[Meets, ...]


def roster(frame: Frame) -> tuple[Entry, ...]:
    """Every timber in file order."""
    return tuple(entry(frame, timber.id) for timber in frame.project.timbers)


def entry(frame: Frame, timber: str) -> Entry:
    """One timber. Raises KeyError for an unknown id."""
    stick = frame.stick(timber)
    return Entry(
        timber=frame.timber(timber),
        stick=stick,
        hand=hand(frame, timber),
        ends=_ends(stick, frame.place(timber)),
        meets=tuple(sorted(_meets(frame, timber), key=lambda each: each.at)),
    )


def _ends(stick: Stick, place: Place | None) -> tuple[tuple[Length, Length, Length], ...]:
    if place is None:
        return ()
    points = (place.point(along, ZERO, ZERO) for along in (ZERO, stick.body))
    return tuple((Length(east), Length(north), Length(up)) for east, north, up in points)


def _meets(frame: Frame, timber: str) -> Iterator[Meets]:
    features = features_on(frame, timber)
    for work in frame.works_on(timber):
        for bearing in work.bearings():
            if bearing.timber == timber:
                yield _bears(frame, bearing)
            elif bearing.into == timber:
                at = next(each for each in features if bearing.place in each.place)
                yield _takes(frame, bearing, at)
            elif timber not in work.timbers().values():
                yield from _lets_through(frame, timber, work, bearing, features)
        for bearing in work.goes_on():
            yield from _goes_on(frame, timber, bearing, features)
        for abutment in work.abutments():
            if abutment.timber == timber:
                yield _abuts(frame, abutment)


def _bears(frame: Frame, bearing: Bearing) -> Meets:
    stick, into = frame.stick(bearing.timber), frame.stick(bearing.into)
    end = stick.pose.end(bearing.end)
    words = f"{stick.pose.words(end)} bears in {into.name}"
    return _at(stick, bearing, words, stick.shoulder(end))


def _abuts(frame: Frame, abutment: Abutment) -> Meets:
    stick = frame.stick(abutment.timber)
    end = stick.pose.end(abutment.end)
    at = stick.shoulder(end)
    return Meets(
        timber=abutment.to,
        words=f"{stick.pose.words(end)} is joined to the end of {frame.wood(abutment.to).name}",
        own=True,
        housed=ZERO,
        scribed=False,
        at=at,
        from_end=at - stick.start,
        back=stick.finish - at,
    )


def _takes(frame: Frame, bearing: Bearing, feature: Feature) -> Meets:
    stick, other = frame.stick(bearing.into), frame.stick(bearing.timber)
    end = other.pose.words(other.pose.end(bearing.end))
    return _at(stick, bearing, f"takes {other.name}'s {end}", feature.at)


def _goes_on(
    frame: Frame, timber: str, bearing: Bearing, features: tuple[Feature, ...]
) -> Iterator[Meets]:
    """An end that goes on into a further timber, and that timber taking it."""
    stick = frame.stick(timber)
    if bearing.timber == timber:
        end = stick.pose.end(bearing.end)
        words = f"{stick.pose.words(end)} goes on into {frame.wood(bearing.into).name}"
        yield _at(stick, bearing, words, stick.shoulder(end))
    elif bearing.into == timber:
        at = next(each for each in features if bearing.place in each.place)
        yield _takes(frame, bearing, at)


def _lets_through(
    frame: Frame, timber: str, work: Work, bearing: Bearing, features: tuple[Feature, ...]
) -> Iterator[Meets]:
    """A timber's own tenon that another's goes through."""
    other = frame.stick(bearing.timber)
    end = other.pose.words(other.pose.end(bearing.end))
    for feature in features:
        if feature.joint == work.id:
            words = f"lets {other.name}'s {end} through its tenon"
            found = _at(frame.stick(timber), bearing, words, feature.at)
            yield replace(found, own=True, housed=ZERO)


def _at(stick: Stick, bearing: Bearing, words: str, at: Length) -> Meets:
    own = stick.id == bearing.timber
    return Meets(
        timber=bearing.into if own else bearing.timber,
        words=f"{words}{' (scribed)' if bearing.scribed else ''}",
        own=own,
        housed=bearing.depth,
        scribed=bearing.scribed,
        at=at,
        from_end=at - stick.start,
        back=stick.finish - at,
    )


def looks(entry: Entry) -> str:
    """Where the reference faces and the reference end look, in words."""
    first, second, end = (
        entry.stick.pose.words(face) for face in (Face.FIRST, Face.SECOND, Face.REFERENCE_END)
    )
    return f"{first} first, {second} second, measured from the {end}"
