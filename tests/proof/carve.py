"""Cutting a timber by its marks alone: which wood is there, and which comes off.

A textbook reading of the marks, with no help from the program but its steps:

1. The stick is squared at one end and sawn to its overall length. Its section is the one measured
   at each joint; from one joint's to the next it changes half-way.
2. A tenon is what is left between its cheek and edge lines beyond the shoulder; sizes measured as
   cut count from the near cheek and the reference edge. An end allowance is gone by now.
3. A mortise, a housing and a pocket are the wood on the waste side of all their lines at once.
   Where a side has no line, the waste runs out of the stick.
4. A reduced end comes down to its line on every face that the reduction end line is struck on.
5. A chamfer is the wedge off an arris between its stops.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from tests.proof.boxes import beyond, box, empty, grown, meet
from tests.proof.marks import ALONG, Rule, Side
from tests.space import Box, Span

ROOM = 10**7
"""How far waste may run past the stick, in nanometres: 10 mm, so that no two faces coincide."""

TENON, MORTISE, POCKET, BEARING = JOINTS = ("-tenon", "-mortise", "-pocket", "-bearing")
"""How the names of what a joint puts on a timber end."""

HOUSING = ("housing-start", "housing-finish", "housing-near", "housing-far", "housing-floor")
HOLE = ("start", "finish", "near-side", "far-side", "depth")
NOTCH = ("start", "finish", "floor", "back")
CHEEKS = ("near-cheek", "far-cheek")
EDGES = ("reference-edge", "far-edge")

Corner = tuple[int, int, int]


@dataclass(frozen=True, slots=True, kw_only=True)
class Segment:
    """A length of the stick with one section, and the joints it was measured at."""

    span: Span
    section: tuple[int, int]
    features: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Carving:
    """One finished timber: the block it fits in, and what is not there.

    `missing` is what the stick never had, `cuts` what was cut out for each joint, and `wedges` what
    was planed off as chamfers, each by its corners.
    """

    blank: Box
    missing: tuple[Box, ...]
    cuts: dict[str, tuple[Box, ...]]
    wedges: tuple[tuple[Corner, ...], ...]


def carve(rule: Rule) -> Carving:
    """A timber as its marks say."""
    parts = segments(rule)
    first, second = (max(part.section[side] for part in parts) for side in (0, 1))
    blank = ((0, rule.overall), (0, first), (0, second))
    return Carving(
        blank=blank,
        missing=tuple(_taken(blank, (waste for part in parts for waste in _wane(part)))),
        cuts={
            feature: tuple(_taken(blank, _joint(rule, feature, part)))
            for part in parts
            for feature in part.features
        },
        wedges=tuple(wedge for part in parts for wedge in _wedges(rule, part)),
    )


def segments(rule: Rule) -> tuple[Segment, ...]:
    """The stick in lengths that have one section each.

    Raises ValueError if two joints at one spot were measured differently.
    """
    found = spots(rule)
    if not found:
        return (Segment(span=(0, rule.overall), section=rule.stock.section("")),)
    halves = [(left[1] + right[0]) // 2 for (left, _), (right, _) in pairwise(found)]
    spans = pairwise((0, *halves, rule.overall))
    return tuple(
        Segment(span=span, section=_measured(rule, features), features=features)
        for (_, features), span in zip(found, spans, strict=True)
    )


def spots(rule: Rule) -> list[tuple[Span, tuple[str, ...]]]:
    """Where the joints lie along the stick, those side by side taken together."""
    reaches = sorted(
        (_reach(rule, feature), feature) for feature in rule.marks if feature.endswith(JOINTS)
    )
    found: list[tuple[Span, tuple[str, ...]]] = []
    for (low, high), feature in reaches:
        if found and low <= found[-1][0][1]:
            (start, finish), features = found.pop()
            found.append(((start, max(finish, high)), (*features, feature)))
        else:
            found.append(((low, high), (feature,)))
    return found


def end_of(rule: Rule, feature: str) -> Side:
    """The end of the stick that a tenon or a bearing is cut on."""
    return rule.sides[feature.rpartition("-")[0].replace("-", " ")]


def _taken(blank: Box, wastes: Iterable[Box]) -> Iterator[Box]:
    """What takes wood off the block, with a little room outside it."""
    room = grown(blank, ROOM)
    return (meet(room, waste) for waste in wastes if not empty(meet(blank, waste)))


def _measured(rule: Rule, features: tuple[str, ...]) -> tuple[int, int]:
    sections = {rule.stock.section(feature) for feature in features}
    if len(sections) != 1:
        raise ValueError(f"{features} lie at one spot, but measure {sorted(sections)}")
    return sections.pop()


def _reach(rule: Rule, feature: str) -> Span:
    """From where to where a joint lies along the stick."""
    places = [rule.place(feature, line) for line in rule.marks[feature]]
    found = [place.at for place in places if place.axis == ALONG]
    if feature.endswith((TENON, BEARING)):
        found.append(rule.overall if end_of(rule, feature).far else 0)
    return min(found), max(found)


def _wane(part: Segment) -> Iterator[Box]:
    """What lies outside the section of a length of the stick."""
    for axis in (1, 2):
        yield meet(box({ALONG: part.span}), beyond(axis, part.section[axis - 1], far=True))


def _joint(rule: Rule, feature: str, part: Segment) -> Iterator[Box]:
    if feature.endswith(TENON):
        yield from _tenon(rule, feature)
        yield from _reduced(rule, feature)
    elif feature.endswith(BEARING):
        yield from _reduced(rule, feature)
        yield from _planed(rule, feature, part)
    elif feature.endswith(POCKET):
        yield _inside(rule, feature, NOTCH)
    else:
        yield _inside(rule, feature, HOLE)
        if rule.has(feature, "housing-floor"):
            yield _inside(rule, feature, HOUSING)


def _inside(rule: Rule, feature: str, lines: tuple[str, ...]) -> Box:
    """The wood on the waste side of all the lines there are."""
    return meet(*(rule.waste(feature, line) for line in lines if rule.has(feature, line)))


def _tenon(rule: Rule, feature: str) -> Iterator[Box]:
    """The wood round a tenon, and beyond its end."""
    shoulder = rule.waste(feature, "shoulder")
    cheeks = _axis(rule, feature, CHEEKS)
    for axis, lines, size in ((cheeks, CHEEKS, "thickness"), (3 - cheeks, EDGES, "width")):
        near, far = lines
        start = 0
        if rule.has(feature, near):
            start = rule.place(feature, near).at
            yield meet(shoulder, rule.waste(feature, near))
        made = rule.stock.cut(feature, size)
        if made is not None:
            yield meet(shoulder, beyond(axis, start + made, far=True))
        elif rule.has(feature, far):
            yield meet(shoulder, rule.waste(feature, far))
    made = rule.stock.cut(feature, "length")
    end = end_of(rule, feature)
    if made is not None:
        root = rule.place(feature, "shoulder").at
        yield beyond(ALONG, root + made if end.far else root - made, far=end.far)
    elif rule.has(feature, "tenon-end"):
        yield rule.waste(feature, "tenon-end")


def _axis(rule: Rule, feature: str, lines: tuple[str, ...]) -> int:
    """The axis that a pair of lines is measured on; there is always one of them."""
    return next(rule.place(feature, line).axis for line in lines if rule.has(feature, line))


def _reduced(rule: Rule, feature: str) -> Iterator[Box]:
    """What comes off the far faces of an end that goes into another timber."""
    if not rule.has(feature, "reduction-stop"):
        return
    stop = rule.waste(feature, "reduction-stop")
    for word in rule.marks[feature]["reduction-stop"].sides:
        line = next(
            line
            for line in ("reduced-first", "reduced-second", "far-edge")
            if rule.has(feature, line) and rule.marks[feature][line].waste == word
        )
        yield meet(stop, rule.waste(feature, line))


def _planed(rule: Rule, feature: str, part: Segment) -> Iterator[Box]:
    """What came off a joist's end that was measured as cut, below its bearing and at its side."""
    plumb = rule.sides["top face"].axis
    end = box({ALONG: part.span})
    if rule.has(feature, "reduction-stop"):
        end = rule.waste(feature, "reduction-stop")
    for axis, size in ((plumb, "thickness"), (3 - plumb, "width")):
        made = rule.stock.cut(feature, size)
        if made is not None:
            yield meet(end, beyond(axis, made, far=True))


def _wedges(rule: Rule, part: Segment) -> Iterator[tuple[Corner, ...]]:
    """What is planed off the arrises along one length of the stick."""
    for feature, lines in rule.marks.items():
        stops = [line for line in lines if line.endswith("-stop") and line != "reduction-stop"]
        if not stops:
            continue
        between = meet(box({ALONG: part.span}), *(rule.waste(feature, stop) for stop in stops))
        if empty(between):
            continue
        (gauge,) = lines["line"].readings
        names = gauge.hook.removesuffix("es").removesuffix(" arris")
        for arris in names.split(", "):
            yield _wedge(rule, part, between[ALONG], arris.split("-"), gauge.value.nm)


def _wedge(rule: Rule, part: Segment, span: Span, arris: list[str], leg: int) -> tuple[Corner, ...]:
    """The wedge between an arris and the line a leg in from it on both its faces."""
    faces = (rule.sides.get(f"{word} face") or rule.sides[word] for word in arris)
    far = {side.axis: side.far for side in faces}
    triangle = ((-ROOM, -ROOM), (leg + ROOM, -ROOM), (-ROOM, leg + ROOM))
    return tuple(
        (
            x,
            part.section[0] - u if far[1] else u,
            part.section[1] - v if far[2] else v,
        )
        for x in span
        for u, v in triangle
    )
