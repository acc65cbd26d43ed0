"""Where a timber stands, as its file says it."""

import pytest
from pydantic import ValidationError

from benchmate.measure.sums import read_sum
from benchmate.model.directions import Direction
from benchmate.model.place import (
    COORDINATES,
    Incline,
    Legs,
    Line,
    Point,
    Roll,
    coordinate_along,
    sense,
)
from tests.space import TOWARDS

ZERO = {"east": "0", "north": "0", "up": "0"}
HIGH = {"east": "3'", "north": "0", "up": "3'"}
BY_POINTS = {"foot": ZERO, "head": HIGH, "towards": "east"}
BY_RUN = {"foot": ZERO, "towards": "east", "run": "3'", "rise": "3'"}
BY_LEGS = {"corner": ZERO, "legs": {"down": "3'", "east": "3'"}}
WAYS = (BY_POINTS, BY_RUN, BY_LEGS)


@pytest.mark.parametrize("direction", Direction)
def test_a_direction_changes_one_coordinate(direction: Direction) -> None:
    """By its own axis, growing or shrinking."""
    axis, grows = TOWARDS[direction.word]
    assert coordinate_along(direction) == COORDINATES[axis] == ("east", "north", "up")[axis]
    assert sense(direction) == grows


def test_a_line_holds_the_coordinates_it_is_given() -> None:
    """In the order of the axes, and no others."""
    line = Line.model_validate({"up": "sill top", "east": "line 1 + 6"})
    assert line.sums() == {"east": read_sum("line 1 + 6"), "up": read_sum("sill top")}
    assert Line().sums() == {}


def test_a_point_has_all_three() -> None:
    """One that is left out is missed by name."""
    assert tuple(Point.model_validate(ZERO).sums()) == COORDINATES
    with pytest.raises(ValidationError, match="up"):
        Point.model_validate({"east": "0", "north": "0"})


@pytest.mark.parametrize("record", [Line, Point])
def test_there_is_no_fourth_coordinate(record: type[Line | Point]) -> None:
    """A coordinate is east, north or up; west is east below zero."""
    with pytest.raises(ValidationError, match="Extra inputs"):
        record.model_validate(ZERO | {"west": "1"})


@pytest.mark.parametrize("words", WAYS)
def test_an_incline_is_said_in_one_of_three_ways(words: dict[str, object]) -> None:
    """All of one way is enough, and reads back equal."""
    incline = Incline.model_validate(words)
    assert Incline.model_validate(incline.model_dump(exclude_none=True)) == incline


@pytest.mark.parametrize(
    "words",
    [
        {},
        *({key: way[key] for key in way if key != left} for way in WAYS for left in way),
        *(one | other for one in WAYS for other in WAYS if one is not other),
        BY_POINTS | {"run": "3'"},
        BY_RUN | {"legs": {"down": "3'", "east": "3'"}},
        BY_LEGS | {"towards": "east"},
    ],
)
def test_an_incline_said_by_halves_or_twice_is_refused(words: dict[str, object]) -> None:
    """Two ways could differ, and part of one leaves it open; the message says all three."""
    with pytest.raises(ValidationError) as caught:
        Incline.model_validate(words)
    for key in Incline.model_fields:
        assert f'"{key}"' in str(caught.value)


@pytest.mark.parametrize("word", ["up", "down"])
@pytest.mark.parametrize("way", [BY_POINTS, BY_RUN])
def test_a_head_lies_towards_a_compass_direction(way: dict[str, object], word: str) -> None:
    """It is up in any case."""
    with pytest.raises(ValidationError, match=r"towards.*; write north, east, south or west"):
        Incline.model_validate(way | {"towards": word})


@pytest.mark.parametrize(
    "legs",
    [
        {},
        {"up": "1"},
        {"east": "1"},
        {"up": "1", "down": "1"},
        {"east": "1", "north": "1"},
        {"east": "1", "west": "1"},
        {"up": "1", "east": "1", "north": "1"},
        {"up": "1", "down": "1", "east": "1"},
    ],
)
def test_legs_make_an_upright_right_angle(legs: dict[str, str]) -> None:
    """One plumb, one level, and no third."""
    with pytest.raises(ValidationError, match="no upright right angle; give two"):
        Incline.model_validate({"corner": ZERO, "legs": legs})


def test_a_leg_goes_in_a_building_direction() -> None:
    """A word that is none is refused, as any unknown key."""
    with pytest.raises(ValidationError, match="Extra inputs"):
        Legs.model_validate({"dawn": "1", "east": "1"})


@pytest.mark.parametrize("level", ["north", "east", "south", "west"])
@pytest.mark.parametrize(("plumb", "towards_it"), [("down", True), ("up", False)])
def test_which_way_legs_make_it_rise(level: str, plumb: str, towards_it: bool) -> None:
    """A brace under a beam rises along it; one that leans on a post rises towards the post."""
    for words in ((level, plumb), (plumb, level)):
        legs = dict.fromkeys(words, "3'")
        heading = Incline.model_validate({"corner": ZERO, "legs": legs}).heading
        looks = Direction[level.upper()]
        assert heading is (looks if towards_it else looks.opposite)


def test_the_figures_of_an_incline_are_told_by_key() -> None:
    """A dangling name can be reported at the key that holds it, points and legs included."""
    points = ("east", "north", "up")
    assert tuple(Incline.model_validate(BY_POINTS).sums()) == (
        *(f"foot.{key}" for key in points),
        *(f"head.{key}" for key in points),
    )
    by_run = Incline.model_validate(BY_RUN).sums()
    assert tuple(by_run) == (*(f"foot.{key}" for key in points), "run", "rise")
    by_legs = Incline.model_validate(BY_LEGS | {"legs": {"down": "leg", "east": "leg + 1"}}).sums()
    assert tuple(by_legs) == (*(f"corner.{key}" for key in points), "legs.east", "legs.down")
    assert by_legs["legs.east"] == read_sum("leg + 1")


def test_a_roll_rises_towards_a_side() -> None:
    """Run and rise by key; up and down are no sides to rise towards."""
    roll = Roll.model_validate({"towards": "north", "run": "12", "rise": "roof rise"})
    assert {name: str(total.names()) for name, total in roll.sums().items()}.keys() == {
        "run",
        "rise",
    }
    for wrong in ({"towards": "up", "run": "12", "rise": "8"}, "8 in 12"):
        with pytest.raises(ValidationError):
            Roll.model_validate(wrong)
