"""A timber's own readings as building coordinates: standing, lying and raking."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.place import Place, Point, Way, raking_ways, square_ways
from benchmate.frame.rake import root
from benchmate.measure.length import Length
from benchmate.measure.section import read_section
from benchmate.model.directions import Direction, Pose
from tests.builders import length, lengths
from tests.compass import OPPOSITE
from tests.corner import sixtyfourths
from tests.space import STANCES, TOWARDS, Placed, Stance, inward

MANY = settings(max_examples=500)
READINGS = st.tuples(*(sixtyfourths(-300, 300),) * 3)
LEVEL = tuple(stance for stance in STANCES if TOWARDS[stance.end][0] != 2)
"""The stances of a timber that lies: those that can be raked by raising one end."""


def pose(stance: Stance, head: str | None = None) -> Pose:
    """The stance as the engine has it."""
    first, second, end = (Direction[word.upper()] for word in stance)
    return Pose(first, second, end, head=Direction[head.upper()] if head else None)


def inches(*texts: str) -> Point:
    """A point as a framer says it, east, north and up."""
    east, north, up = (each.nm for each in lengths(*texts))
    return east, north, up


def standing(origin: Point, *looks: str) -> Place:
    """A timber that stands or lies: its first face, its second and its reference end look so."""
    return Place(origin=origin, ways=square_ways(pose(Stance(*looks))))


SW_POST = standing(inches("2'", "1'", "10"), "south", "west", "down")
NE_POST_FROM_ITS_HEAD = standing(inches("12'", "9'", "8'"), "north", "east", "up")
PLATE = standing(inches("-1' 2", "0", "8'"), "up", "south", "west")
TIE = standing(inches("0", "10'", "7'"), "up", "west", "north")


@pytest.mark.parametrize(
    ("place", "reading", "point"),
    [
        (SW_POST, ("0", "0", "0"), ("2'", "1'", "10")),
        (SW_POST, ("3'", "2", "1"), ("2' 1", "1' 2", "3' 10")),
        (SW_POST, ("-4", "0", "7"), ("2' 7", "1'", "6")),
        (NE_POST_FROM_ITS_HEAD, ("3'", "2", "1"), ("11' 11", "8' 10", "5'")),
        (NE_POST_FROM_ITS_HEAD, ("-4", "0", "0"), ("12'", "9'", "8' 4")),
        (PLATE, ("1' 2", "7", "1/2"), ("0", "1/2", "7' 5")),
        (TIE, ("1' 6", "8", "6"), ("6", "8' 6", "6' 4")),
    ],
)
def test_points_worked_by_hand(
    place: Place, reading: tuple[str, str, str], point: tuple[str, str, str]
) -> None:
    """A south-west post grows up, north and east; its mirror on the far corner south and west."""
    assert place.point(*lengths(*reading)) == inches(*point)


@MANY
@given(st.sampled_from(STANCES), READINGS, READINGS)
def test_points_agree_with_directions_alone(
    stance: Stance, origin: tuple[Length, Length, Length], reading: tuple[Length, Length, Length]
) -> None:
    """All 48 stances: each reading goes in from its face or along from its end, exactly."""
    at = (origin[0].nm, origin[1].nm, origin[2].nm)
    mapped = Placed(at, inward(stance))
    expected = list(at)
    for index, value in enumerate(reading):
        expected[mapped.inward[index][0]] = mapped.plane(index, value.nm)
    assert Place(origin=at, ways=square_ways(pose(stance))).point(*reading) == tuple(expected)


@given(st.sampled_from(STANCES), READINGS, sixtyfourths(20, 300))
def test_corners_are_those_of_the_timber_s_box(
    stance: Stance, origin: tuple[Length, Length, Length], body: Length
) -> None:
    """Eight different ones, each on the box the timber fills, the first on its arris."""
    at, section, start = (
        (origin[0].nm, origin[1].nm, origin[2].nm),
        read_section("6 x 8"),
        length("-5"),
    )
    place = Place(origin=at, ways=square_ways(pose(stance)))
    corners = place.corners(section, start, body)
    box = Placed(at, inward(stance)).box(
        ((start.nm, body.nm), (0, section.first.nm), (0, section.second.nm))
    )
    assert len(set(corners)) == 8
    for corner in corners:
        assert all(value in span for value, span in zip(corner, box, strict=True))
    assert corners[0] == place.point(start, Length(0), Length(0))
    assert corners[4] == place.point(body, Length(0), Length(0))


def test_corners_go_round_the_section_and_then_round_the_other_end() -> None:
    """Neighbours in a ring share an edge, and so do the same corners of both ends."""
    corners = SW_POST.corners(read_section("6 x 8"), length("0"), length("8'"))
    rings = (corners[:4], corners[4:])
    edges = [(ring[i - 1], ring[i]) for ring in rings for i in range(4)]
    edges += list(zip(*rings, strict=True))
    assert [sum(a != b for a, b in zip(*edge, strict=True)) for edge in edges] == [1] * 12


def test_a_way_rounds_once_to_a_nanometre() -> None:
    """To the nearest, whichever side of zero."""
    third = Way((1, 0, -2), 3)
    assert [third.go(distance, 0) for distance in (1, 2, 3, -1, -2)] == [0, 1, 1, 0, -1]
    assert [third.go(distance, 2) for distance in (1, 2, 3)] == [-1, -1, -2]
    assert third.go(10**9, 1) == 0


# Raking timbers.

RAKES = [(stance, head) for stance in LEVEL for head in (stance.end, OPPOSITE[stance.end])]
"""Every lying stance, and which of its ends is raised."""


def raked(stance: Stance, head: str, run: int, rise: int) -> Place:
    """A timber of that stance with its foot at zero, its head raised."""
    long = root(run * run + rise * rise)
    ways = raking_ways(pose(stance, head), run, rise, long)
    if stance.end != head:
        return Place(origin=(0, 0, 0), ways=ways)
    axis, sense = TOWARDS[head]
    top = [0, 0, rise]
    top[axis] = sense * run
    return Place(origin=(top[0], top[1], top[2]), ways=ways)


def turned(stance: Stance, head: str, reading: tuple[int, int, int]) -> Point:
    """A point of a timber raked 3 in 4, by second opinion: laid level, then its head raised.

    The plane it is raised in turns as a whole: a step ahead goes 4/5 ahead and 3/5 up, a step up
    4/5 up and 3/5 back.
    """
    axis, sense = TOWARDS[head]
    long = 5 * 12 * 25_400_000
    origin = [0, 0, 0]
    origin[axis] = sense * long if stance.end == head else 0
    level = Placed((origin[0], origin[1], origin[2]), inward(stance))
    flat = list(level.origin)
    for index, value in enumerate(reading):
        flat[level.inward[index][0]] += level.inward[index][1] * value
    ahead, up = sense * flat[axis], flat[2]
    flat[axis] = sense * (4 * ahead - 3 * up) // 5
    flat[2] = (3 * ahead + 4 * up) // 5
    return flat[0], flat[1], flat[2]


@pytest.mark.parametrize(("stance", "head"), RAKES)
@given(st.tuples(*(st.integers(-(10**9), 10**9),) * 3))
@settings(max_examples=15)
def test_a_timber_raked_3_in_4_is_exact(
    stance: Stance, head: str, fifths: tuple[int, int, int]
) -> None:
    """Law 1: run 4', rise 3', length 5'; every reading in fifths comes out to the nanometre."""
    reading = (5 * fifths[0], 5 * fifths[1], 5 * fifths[2])
    place = raked(stance, head, length("4'").nm, length("3'").nm)
    assert place.point(*map(Length, reading)) == turned(stance, head, reading)


def test_a_brace_worked_by_hand() -> None:
    """Rising east 3 in 4, top face first: 2-1/2" in from it is 1-1/2" east and 2" down."""
    place = raked(Stance("up", "south", "west"), "east", length("4'").nm, length("3'").nm)
    assert place.point(*lengths("5'", "0", "0")) == inches("4'", "0", "3'")
    assert place.point(*lengths("2' 6", "0", "4")) == inches("2'", "4", "1' 6")
    assert place.point(*lengths("0", "2-1/2", "0")) == inches("1-1/2", "0", "-2")


@MANY
@given(st.sampled_from(RAKES), sixtyfourths(12, 480), sixtyfourths(12, 480), sixtyfourths(1, 12))
def test_a_raking_timber_keeps_its_lengths_and_right_angles(
    rake: tuple[Stance, str], run: Length, rise: Length, side: Length
) -> None:
    """Its arris goes from foot to head exactly; what is measured across holds to 2 nanometres.

    Two sides square to one another span a diagonal by Pythagoras, in the building as in the wood.
    Each point is rounded three times, once on each axis, and the length of the arris once before.
    """
    place = raked(*rake, run.nm, rise.nm)
    long = Length(root(run.nm**2 + rise.nm**2))
    zero = Length(0)
    start, end = place.origin, place.point(long, zero, zero)
    assert sorted((start[2], end[2])) == [0, rise.nm]
    assert sum(abs(a) + abs(b) for a, b in zip(start, end, strict=True)) == run.nm + rise.nm
    first, second = place.point(zero, side, zero), place.point(zero, zero, side)
    for point, distance in ((first, side), (second, side), (end, long)):
        assert abs(apart(start, point) - distance.nm) <= 2
    for one, other, reach in ((first, second, side), (end, first, long), (end, second, long)):
        assert abs(apart(one, other) - root(side.nm**2 + reach.nm**2)) <= 2


def apart(one: Point, other: Point) -> int:
    """The distance between two points, to the nearest nanometre."""
    return root(sum((a - b) ** 2 for a, b in zip(one, other, strict=True)))


@given(st.sampled_from(RAKES), sixtyfourths(1, 480), sixtyfourths(1, 480))
def test_a_raking_timber_keeps_its_hand(
    rake: tuple[Stance, str], run: Length, rise: Length
) -> None:
    """Raising an end turns a timber and never mirrors it: its three ways stay of one hand."""
    stance, head = rake
    level = square_ways(pose(stance))
    raised = raking_ways(pose(stance, head), run.nm, rise.nm, root(run.nm**2 + rise.nm**2))
    assert (_triple(*raised) > 0) is (_triple(*level) > 0)


def _triple(x: Way, u: Way, v: Way) -> int:
    (a, b, c), (d, e, f), (g, h, i) = x.steps, u.steps, v.steps
    return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)


@pytest.mark.parametrize(("stance", "head"), RAKES)
def test_a_top_face_still_looks_up_once_raked(stance: Stance, head: str) -> None:
    """What is called the top face of a raking timber looks more up than down."""
    ways = raking_ways(pose(stance, head), 4, 3, 5)
    for way, look in zip(ways[1:], (stance.first, stance.second), strict=True):
        inwards_up = way.steps[2]
        expected = {"up": -1, "down": 1}.get(look, 0)
        assert (inwards_up > 0) - (inwards_up < 0) == expected
