"""The frame as a list, in text and as plain data: places, lengths, what meets what."""

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from benchmate.frame.frame import Frame
from benchmate.frame.inner import safe_inner
from benchmate.layout.likeness import Alike
from benchmate.layout.roster import Entry, Meets, looks
from benchmate.layout.walk import features_on
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.measure.section import Section, section_text
from benchmate.model.directions import Face
from benchmate.model.place import COORDINATES
from benchmate.model.stick import ALL_ALONG, Wood
from benchmate.workbench.data_form import length_data

NO_PLACE = "no place in the frame: give it at or incline to say where it stands"


def entry_lines(entry: Entry, tape: Tape) -> Iterator[str]:
    """One timber, a few lines."""
    timber, stick = entry.timber, entry.stick
    inner = f", inner {section_text(stick.inner, tape)}" if stick.inner else ""
    yield (
        f"{timber.name} ({timber.id}): {timber.what}, {section_text(stick.nominal, tape)}{inner}, "
        f"{entry.hand}"
    )
    yield f"  {looks(entry)}"
    yield f"  {place_words(entry, tape)}"
    yield f"  shoulder to shoulder {tape.text(stick.body)}, overall {tape.text(stick.overall)}"
    for meets in entry.meets:
        yield f"  {meets_words(meets, tape)}"


def place_words(entry: Entry, tape: Tape) -> str:
    """Where its reference arris runs, from shoulder to shoulder, from the frame's zero."""
    if not entry.ends:
        return NO_PLACE
    start, finish = entry.ends
    same = [axis for axis in range(3) if start[axis] == finish[axis]]
    runs = [axis for axis in range(3) if axis not in same]
    held = "".join(f" {_coordinates(start, [axis], tape)}," for axis in same)
    return (
        f"arris{held} from {_coordinates(start, runs, tape)} to {_coordinates(finish, runs, tape)}"
    )


_COMPASS = (("east", "west"), ("north", "south"), ("up", "down"))


def _coordinates(point: tuple[Length, Length, Length], axes: list[int], tape: Tape) -> str:
    return ", ".join(
        f"{tape.text(abs(point[axis]))} {_COMPASS[axis][point[axis] < ZERO]}" for axis in axes
    )


def meets_words(meets: Meets, tape: Tape) -> str:
    """How it meets another timber, with running figures for what it takes from others."""
    if meets.own:
        housed = f", housed {tape.text(meets.housed)}" if meets.housed else ""
        return f"{meets.words}{housed}"
    if meets.scribed:
        return meets.words
    return (
        f"{meets.words} from {tape.text(meets.at)}: {tape.text(meets.from_end)} from the squared "
        f"end, {tape.text(meets.back)} from the far end"
    )


def alike_line(group: Alike, names: dict[str, str]) -> str:
    """Like members with a count, and a count of each hand."""
    hands = (("right hand", group.right), ("left hand", group.left), ("no hand", group.either))
    told = (
        f"{len(members)} {word} ({', '.join(names[each] for each in members)})"
        for word, members in hands
        if members
    )
    return f"{len(group.timbers)} {group.kind}: {'; '.join(told)}"


def inner_lines(frame: Frame, tape: Tape) -> Iterator[str]:
    """Each class that goes by square rule, and the largest inner section its sticks allow."""
    for name, inner in frame.project.inner.items():
        sticks = _sticks(frame, name)
        if sticks:
            most = largest_safe(frame, name)
            told = section_text(most, tape) if most else "not known yet"
            count = sum(bool(each.measured) for each in sticks)
            yield (
                f"{name}: inner {section_text(inner, tape)}; largest that the {count} of "
                f"{len(sticks)} sticks measured allow: {told}"
            )


def largest_safe(frame: Frame, name: str) -> Section | None:
    """The largest inner section that every measured stick of a class allows, if any was measured.

    Only sizes at places that the timbers have count.
    """
    return safe_inner(_sticks(frame, name))


def _sticks(frame: Frame, name: str) -> tuple[Wood, ...]:
    """The sticks of a class that go by square rule, with what was measured at their own places."""
    own = (t.id for t in frame.project.timbers if t.section == name and frame.inner(t))
    return tuple(_measured_where_it_counts(frame, each) for each in own)


def _measured_where_it_counts(frame: Frame, timber: str) -> Wood:
    wood = frame.wood(timber)
    places = {place for feature in features_on(frame, timber) for place in feature.place}
    places.add(ALL_ALONG)
    measured = {place: size for place, size in wood.measured.items() if place in places}
    return replace(wood, measured=measured)


def entry_data(entry: Entry, tape: Tape) -> dict[str, Any]:
    """One timber as plain data."""
    timber, stick = entry.timber, entry.stick
    return {
        "id": timber.id,
        "name": timber.name,
        "kind": timber.kind,
        "species": timber.species,
        "section": _section_data(stick.nominal, tape),
        "inner": _section_data(stick.inner, tape) if stick.inner else None,
        "hand": entry.hand,
        "first_face": timber.first_face.word,
        "second_face": timber.second_face.word,
        "reference_end": stick.pose.words(Face.REFERENCE_END),
        "rule": "mill" if stick.inner is None else "square",
        "shoulders": [
            {name: length_data(at, tape) for name, at in zip(COORDINATES, point, strict=True)}
            for point in entry.ends
        ],
        "shoulder_to_shoulder": length_data(stick.body, tape),
        "overall": length_data(stick.overall, tape),
        "meets": [_meets_data(meets, tape) for meets in entry.meets],
    }


def _meets_data(meets: Meets, tape: Tape) -> dict[str, Any]:
    figures = {"at": meets.at, "from_end": meets.from_end, "from_far_end": meets.back}
    return {
        "timber": meets.timber,
        "how": meets.words,
        "housed": length_data(meets.housed, tape) if meets.own else None,
        "scribed": meets.scribed,
        **{
            name: None if meets.scribed else length_data(value, tape)
            for name, value in figures.items()
        },
    }


def _section_data(section: Section, tape: Tape) -> dict[str, Any]:
    sides = {"first": section.first, "second": section.second}
    return {name: length_data(side, tape) for name, side in sides.items()}


def alike_data(group: Alike) -> dict[str, Any]:
    """Like members as plain data."""
    return {
        "kind": group.kind,
        "right_hand": list(group.right),
        "left_hand": list(group.left),
        "no_hand": list(group.either),
    }


def inner_data(frame: Frame, tape: Tape) -> dict[str, Any]:
    """Inner sections as plain data."""
    safe = {name: largest_safe(frame, name) for name in frame.project.inner}
    return {
        name: {
            "inner": _section_data(inner, tape),
            "largest_safe": _section_data(most, tape) if (most := safe[name]) else None,
        }
        for name, inner in frame.project.inner.items()
    }


def name_lines(frame: Frame) -> Iterator[str]:
    """Every line, level and length with how it is made up and what it comes to."""
    tape = frame.tape
    for name, total in frame.project.names.items():
        value = tape.text(frame.value(total))
        made = f" = {total.text()}" if total.names() else ""
        yield f"  {name}{made}: {value}"


def names_data(frame: Frame) -> dict[str, Any]:
    """The same as plain data."""
    tape = frame.tape
    return {
        name: length_data(frame.value(total), tape) | {"made_of": total.text()}
        for name, total in frame.project.names.items()
    }
