"""What every piece of work answers for."""

import pytest
from pydantic import ValidationError

from benchmate.measure.length import ZERO
from benchmate.measure.reading import Unit
from benchmate.measure.sums import read_sum
from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from benchmate.model.work import (
    Abutment,
    Bearing,
    Settled,
    Work,
    end_fault,
    level_faults,
    meeting_faults,
    not_level_fault,
    placed_faults,
    rolled_fault,
    slope_words,
)
from tests.builders import frame, sill, timber


class Bare(Work):
    """Work that says no more than it must."""

    def timbers(self) -> dict[str, str]:
        """One timber."""
        return {"timber": "post"}


def test_work_that_names_no_timbers_is_a_misuse() -> None:
    """A family has to say which timbers its record touches."""
    with pytest.raises(TypeError, match="timbers"):
        type("Nameless", (Work,), {})(id="joint")


def test_work_is_harmless_until_a_family_says_otherwise() -> None:
    """It joins its timbers, leaves nothing open, and has no sums, tenons, bearings or faults."""
    work = Bare(id="joint")
    assert work.proportioned(frame().wood, Unit.INCH) is work
    assert work.joins()
    assert (work.sums(), work.extensions(), work.faults({})) == ({}, (), ())
    assert (work.bearings(), work.abutments(), work.settled()) == ((), (), ())
    assert work.goes_on() == ()
    assert work.cuts_through(Bare(id="other")) is None
    assert Work.settling == ("timber",)


def test_work_settles_the_ends_that_bear_or_abut() -> None:
    """Each is told at the key that says which end it is."""
    at = read_sum("4'")

    class Both(Bare):
        """A joint that bears with one end and joins another stick with two."""

        def timbers(self) -> dict[str, str]:
            """The timber whose end it names, and the one that goes on from it."""
            return {"timber": "post", "into": "other"}

        def bearings(self) -> tuple[Bearing, ...]:
            """Its foot."""
            return (Bearing("post", Direction.DOWN, "sill", ZERO, "joint-mortise"),)

        def abutments(self) -> tuple[Abutment, ...]:
            """Its head, and the foot on it."""
            return (
                Abutment("post", Direction.UP, "other", at, ZERO),
                Abutment("other", Direction.DOWN, "post", at, ZERO),
            )

    assert Both(id="joint").settled() == (
        Settled("post", Direction.DOWN, "end"),
        Settled("post", Direction.UP, "end"),
        Settled("other", Direction.DOWN, "into"),
    )


def test_work_is_meant_to_meet_what_it_names() -> None:
    """Nothing unless it says so, and each once."""
    assert Bare(id="joint").meets == ()
    assert Bare.model_validate({"id": "joint", "meets": ["a", "b"]}).meets == ("a", "b")
    with pytest.raises(ValidationError, match="names a joint twice"):
        Bare.model_validate({"id": "joint", "meets": ["a", "a"]})
    with pytest.raises(ValidationError, match="not a usable id"):
        Bare.model_validate({"id": "joint", "meets": ["Post foot"]})


@pytest.mark.parametrize("direction", Direction)
def test_only_a_timber_s_own_ends_can_be_named(direction: Direction) -> None:
    """A post has a foot and a head; a sill running east has neither."""
    upright = direction in (Direction.UP, Direction.DOWN)
    along = direction in (Direction.EAST, Direction.WEST)
    assert (end_fault("end", direction, timber("post")) is None) is upright
    assert (end_fault("end", direction, sill()) is None) is along


def test_an_end_fault_names_the_ends_there_are() -> None:
    """The framer learns which words would do."""
    fault = end_fault("near_stop.shoulder", Direction.WEST, timber("post"))
    assert fault
    assert fault.key == "near_stop.shoulder"
    for word in ("west end", "foot", "head"):
        assert word in fault.problem
    assert fault.remedy


AT = {"east": "4'", "north": "0"}
PLACED_POST = timber("post", at=AT)
PLACED_SILL = sill(name="South sill", at={"north": "0", "up": "0"})
POST, SILL = timber("post"), sill(name="South sill")
GIRT = {
    "first_face": "up",
    "second_face": "west",
    "reference_end": "south",
    "at": {"east": "4'", "up": "0"},
}
BRACE = timber(
    "brace",
    first_face="up",
    second_face="south",
    length=None,
    incline={"corner": AT | {"up": "7'"}, "legs": {"down": "3'", "east": "3'"}},
)


def met(one: Timber, other: Timber, *typed: str, end: Direction = Direction.DOWN) -> list[str]:
    """The keys of the faults of one timber's end in the other, with some keys typed."""
    given = {key: key in typed for key in ("at", "inset")}
    return [fault.key for fault in meeting_faults(one, end, other, given)]


def test_what_an_end_may_enter() -> None:
    """Timbers square to one another: with places nothing typed, without them `at`."""
    assert met(PLACED_POST, PLACED_SILL) == []
    assert met(POST, SILL, "at") == []
    assert met(POST, SILL, "at", "inset") == []


@pytest.mark.parametrize(
    ("one", "other", "typed", "keys"),
    [
        (POST, SILL, (), ["at"]),
        (POST, SILL, ("inset",), ["at"]),
        (PLACED_POST, SILL, (), ["into"]),
        (POST, PLACED_SILL, ("at",), ["into"]),
        (PLACED_POST, PLACED_SILL, ("at",), ["at"]),
        (PLACED_POST, PLACED_SILL, ("inset",), ["inset"]),
        (PLACED_POST, PLACED_SILL, ("at", "inset"), ["at", "inset"]),
        (POST, timber("other"), ("at",), ["into"]),
        (PLACED_POST, timber("other", at=AT), (), ["into"]),
        (BRACE, PLACED_SILL, (), ["into"]),
        (PLACED_POST, BRACE, (), ["into"]),
    ],
)
def test_what_keeps_an_end_out(
    one: Timber, other: Timber, typed: tuple[str, ...], keys: list[str]
) -> None:
    """Too little, too much, or the wrong timber, each at the key to mend."""
    assert met(one, other, *typed) == keys


def test_an_end_the_timber_has_not_comes_before_anything_else() -> None:
    """It may be why the rest looks wrong."""
    assert met(POST, SILL, end=Direction.WEST) == ["end"]
    assert met(POST, PLACED_SILL, end=Direction.WEST) == ["end"]


@pytest.mark.parametrize(
    ("one", "other", "named"),
    [
        (POST, SILL, ("Post", "South sill")),
        (POST, PLACED_SILL, ("Post", "South sill")),
        (PLACED_POST, SILL, ("Post", "South sill")),
        (PLACED_POST, BRACE, ("Brace",)),
        (BRACE, PLACED_SILL, ("Brace",)),
    ],
)
def test_a_fault_names_the_timbers_in_question(
    one: Timber, other: Timber, named: tuple[str, ...]
) -> None:
    """By the names a framer gave them, and with something to do."""
    given = {"at": False, "inset": False}
    (fault,) = meeting_faults(one, Direction.DOWN, other, given)
    assert all(name in fault.problem for name in named)
    assert fault.remedy


@pytest.mark.parametrize(("one", "other"), [(POST, PLACED_SILL), (PLACED_POST, SILL)])
def test_the_timber_to_place_is_the_one_without_a_place(one: Timber, other: Timber) -> None:
    """Whichever of the two it is."""
    (fault,) = meeting_faults(one, Direction.DOWN, other, {"at": True})
    assert (one if not one.placed else other).name in fault.remedy


@pytest.mark.parametrize(
    ("post", "sill_", "keys"),
    [
        (PLACED_POST, PLACED_SILL, []),
        (POST, PLACED_SILL, ["timber"]),
        (PLACED_POST, SILL, ["into"]),
        (POST, SILL, ["timber"]),
    ],
)
def test_some_joints_need_places(post: Timber, sill_: Timber, keys: list[str]) -> None:
    """Where a timber has none that alone is told, on the key that names it."""
    found = list(placed_faults(post, Direction.DOWN, sill_))
    assert [fault.key for fault in found] == keys
    assert all("has no place in the frame" in fault.problem for fault in found)


def test_placed_timbers_still_have_to_meet() -> None:
    """An end there is not, or a timber that runs the same way, is told as for any joint."""
    (fault,) = placed_faults(PLACED_POST, Direction.EAST, PLACED_SILL)
    assert fault.key == "end"


def test_some_joints_lie_level() -> None:
    """A timber that stands, or lies in a slope, is told so; a level one is sound."""
    assert not_level_fault(PLACED_SILL, "a tail lies level") is None
    for timber_, how in ((PLACED_POST, "stands upright"), (BRACE, "lies in a slope")):
        fault = not_level_fault(timber_, "a tail lies level")
        assert fault
        assert (fault.key, fault.problem) == (
            "timber",
            f"{timber_.name} {how}, and a tail lies level",
        )


def test_a_level_joint_that_cannot_be_is_told_once() -> None:
    """Without a place or an end to enter by, nothing is said of how it lies."""

    def keys(timber_: Timber, end: Direction) -> list[str]:
        """The keys of what is told of an end of a timber in the sill."""
        return [fault.key for fault in level_faults(timber_, end, PLACED_SILL, "it lies level")]

    assert keys(PLACED_POST, Direction.DOWN) == ["timber"]
    assert keys(PLACED_POST, Direction.EAST) == ["end"]
    assert keys(POST, Direction.EAST) == ["timber"]
    girt = timber("girt", **GIRT)
    assert keys(girt, Direction.SOUTH) == []


def test_how_a_timber_lies_in_a_slope() -> None:
    """One that rakes and one that is rolled are told apart; one that lies square is neither."""
    roll = {"towards": "north", "run": "3", "rise": "2"}
    rolled = sill(at={"north": "0", "up": "0"}, roll=roll)
    assert [slope_words(each) for each in (PLACED_SILL, PLACED_POST, BRACE, rolled)] == [
        "",
        "",
        "rakes",
        "is rolled to lie in a slope",
    ]


def test_a_rolled_timber_is_told_where_faces_have_to_be_plumb_or_level() -> None:
    """It is named with the reason; one that stands or lies has no fault."""
    rolled = timber(
        "purlin",
        name="Purlin",
        first_face="up",
        second_face="south",
        reference_end="west",
        at={"north": "0", "up": "0"},
        roll={"towards": "north", "run": "12", "rise": "8"},
    )
    fault = rolled_fault("into", rolled, "a lap lies level")
    assert fault is not None
    assert (fault.key, fault.problem) == (
        "into",
        "Purlin is rolled to lie in a slope, and a lap lies level",
    )
    assert rolled_fault("into", sill(), "a lap lies level") is None
