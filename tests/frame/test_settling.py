"""Each thing a framer may say twice or leave open is told, and what just suffices is not."""

import pytest

from benchmate.frame.rake import Rake
from benchmate.frame.settling import alike_faults, faults, plane_faults, roll_faults, rule_faults
from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from tests.builders import length, sill, timber

AT = {"east": "4'", "north": "0"}
INCLINE = {
    "foot": {"east": "0", "north": "0", "up": "0"},
    "towards": "east",
    "run": "3'",
    "rise": "3'",
}
FOOT, HEAD = Direction.DOWN, Direction.UP


def post(**words: object) -> Timber:
    """A post that says nothing of its length or place but what is given."""
    return timber("post", **({"length": None} | words))


def brace(**words: object) -> Timber:
    """A brace that rises to the east."""
    raking = {"incline": INCLINE, "first_face": "up", "second_face": "south"}
    return post(**(raking | words))


def told(timber: Timber, *bears: Direction) -> list[str]:
    """The keys of the faults of a timber whose ends bear so."""
    return [fault.key for fault in faults(timber, bears)]


@pytest.mark.parametrize(
    ("words", "bears"),
    [
        ({"length": "7'"}, ()),
        ({"length": "7'", "shoulder_level": "0"}, ()),
        ({"at": AT}, (FOOT, HEAD)),
        ({"at": AT, "far_end_at": "7'"}, (FOOT,)),
        ({"at": AT, "reference_end_at": "0"}, (HEAD,)),
        ({"at": AT, "reference_end_at": "0", "far_end_at": "7'"}, ()),
        ({"at": AT, "length": "7'"}, (FOOT,)),
        ({"at": AT, "length": "7'"}, (HEAD,)),
        ({"at": AT, "length": "7'", "reference_end_at": "0"}, ()),
        ({"at": AT, "length": "7'", "far_end_at": "0"}, ()),
    ],
)
def test_what_just_settles_a_timber(words: dict[str, object], bears: tuple[Direction, ...]) -> None:
    """A length alone, or a place with both its ends said once."""
    assert told(post(**words), *bears) == []


@pytest.mark.parametrize(
    ("words", "bears", "keys"),
    [
        # Not enough.
        ({}, (), ["length"]),
        ({}, (FOOT, HEAD), ["length"]),
        ({"at": AT}, (), ["reference_end_at", "far_end_at"]),
        ({"at": AT}, (FOOT,), ["far_end_at"]),
        ({"at": AT}, (HEAD,), ["reference_end_at"]),
        ({"at": AT, "reference_end_at": "0"}, (), ["far_end_at"]),
        ({"at": AT, "far_end_at": "0"}, (), ["reference_end_at"]),
        ({"at": AT, "length": "7'"}, (), ["reference_end_at"]),
        ({"at": {"east": "0"}}, (FOOT, HEAD), ["at.north"]),
        ({"at": {}}, (FOOT, HEAD), ["at.east", "at.north"]),
        # Too much.
        ({"at": AT | {"up": "0"}}, (FOOT, HEAD), ["at.up"]),
        ({"at": AT, "length": "7'"}, (FOOT, HEAD), ["length"]),
        ({"at": AT, "length": "7'", "far_end_at": "7'"}, (FOOT,), ["length"]),
        ({"at": AT, "reference_end_at": "0", "far_end_at": "7'", "length": "7'"}, (), ["length"]),
        ({"at": AT, "reference_end_at": "0"}, (FOOT, HEAD), ["reference_end_at"]),
        ({"at": AT, "far_end_at": "0"}, (FOOT, HEAD), ["far_end_at"]),
        ({"at": AT, "shoulder_level": "0"}, (FOOT, HEAD), ["shoulder_level"]),
        ({"length": "7'", "reference_end_at": "0"}, (), ["reference_end_at"]),
        ({"length": "7'", "far_end_at": "0"}, (), ["far_end_at"]),
        # Both at once.
        (
            {"at": {"up": "0"}, "shoulder_level": "0"},
            (FOOT,),
            ["at.east", "at.north", "at.up", "far_end_at", "shoulder_level"],
        ),
    ],
)
def test_what_leaves_a_timber_open_or_says_it_twice(
    words: dict[str, object], bears: tuple[Direction, ...], keys: list[str]
) -> None:
    """Each at the key to mend, all at once."""
    assert told(post(**words), *bears) == keys


def test_a_lying_timber_runs_along_another_coordinate() -> None:
    """A sill that runs east has its arris north and up; how far east it starts its ends say."""
    both = (Direction.WEST, Direction.EAST)
    assert told(sill(length=None, at={"north": "0", "up": "0"}), *both) == []
    assert told(sill(length=None, at=AT), *both) == ["at.east", "at.up"]


def test_the_end_that_nothing_settles_is_named_as_the_framer_calls_it() -> None:
    """By its own word and its own key, whichever end is the reference end."""
    for end, key in (("foot", "reference_end_at"), ("head", "far_end_at")):
        (fault,) = faults(post(at=AT, reference_end=end), (HEAD,))
        assert fault.key == key
        assert "where the foot of Post comes" in fault.problem
        assert key in fault.remedy
    (fault,) = faults(post(at=AT, far_end_at="7'"), (FOOT, HEAD))
    assert "where the head of Post comes" in fault.problem


def test_a_raking_timber_needs_no_more_than_its_incline() -> None:
    """Whatever meets it."""
    assert told(brace()) == told(brace(), FOOT, HEAD) == []


@pytest.mark.parametrize("key", ["length", "reference_end_at", "far_end_at", "shoulder_level"])
def test_what_an_incline_settles_is_not_said_again(key: str) -> None:
    """Its two ends are its length and its levels."""
    assert told(brace(**{key: "3'"})) == [key]


def test_a_timber_has_one_place() -> None:
    """Upright or lying, or raking."""
    assert told(brace(at=AT)) == ["incline"]
    assert told(brace(at=AT, shoulder_level="0")) == ["incline", "shoulder_level"]


@pytest.mark.parametrize(
    ("words", "rule", "classes", "keys"),
    [
        ({}, "mill", (), []),
        ({"section": "post"}, "mill", ("post",), []),
        ({"section": "post"}, "square", ("post",), []),
        ({"inner": "5 x 5"}, "square", (), []),
        ({"section": "post", "inner": "5 x 5"}, "square", ("post",), []),
        ({"section": "post", "rule": "mill"}, "square", (), []),
        ({"section": "post", "rule": "square"}, "mill", ("post",), []),
        ({"inner": "5 x 5", "rule": "square"}, "mill", (), []),
        ({}, "square", ("post",), ["inner"]),
        ({"section": "post"}, "square", ("sill",), ["inner"]),
        ({"section": "post", "rule": "square"}, "mill", ("sill",), ["inner"]),
        ({"inner": "5 x 5"}, "mill", (), ["inner"]),
        ({"inner": "5 x 5", "rule": "mill"}, "square", (), ["inner"]),
    ],
)
def test_an_inner_section_goes_with_square_rule(
    words: dict[str, object], rule: str, classes: tuple[str, ...], keys: list[str]
) -> None:
    """There is one under square rule, its class's or its own, and none of its own under mill."""
    assert [fault.key for fault in rule_faults(post(**words), rule, classes)] == keys


@pytest.mark.parametrize(("words", "named"), [({"section": "post"}, '"post"'), ({}, "give Post")])
def test_a_missing_inner_section_may_be_given_to_the_class(
    words: dict[str, object], named: str
) -> None:
    """Where the timber has one; a section of its own needs an inner of its own."""
    (fault,) = rule_faults(post(**words), "square", ())
    assert named in fault.remedy
    assert ("[inner]" in fault.remedy) is bool(words)


def line(*, run: int = 1, rise: int = 1, aside: int = 0) -> Rake:
    """A raking arris that lies so far ahead, up and aside."""
    return Rake(foot=(0, 0, 0), head=(run, aside, rise), run=run, rise=rise, aside=aside, length=1)


@pytest.mark.parametrize(
    ("rakes", "told"),
    [
        (line(), ()),
        (line(aside=1), ("straight east of its foot",)),
        (line(aside=-1), ("straight east of its foot",)),
        (line(run=0), ("straight east of its foot",)),
        (line(run=-1), ("straight east of its foot",)),
        (line(rise=0), ("above its foot",)),
        (line(rise=-1), ("above its foot",)),
        (line(run=-1, rise=-1), ("straight east of its foot", "above its foot")),
    ],
)
def test_a_head_lies_straight_ahead_and_up(rakes: Rake, told: tuple[str, ...]) -> None:
    """A nanometre ahead and up will do; level with the foot, under it, behind it or aside not."""
    found = list(plane_faults(brace(), rakes))
    assert [fault.problem for fault in found] == [f"does not put its head {each}" for each in told]
    assert {fault.key for fault in found} <= {"incline"}
    assert not list(plane_faults(post(at=AT), rakes))


@pytest.mark.parametrize(
    ("towards", "other", "alike"),
    [
        ("east", line(run=2000, rise=1000), True),
        ("east", line(run=2000, rise=1001), True),
        ("east", line(run=2000, rise=1010), False),
        ("west", line(run=2000, rise=1000), False),
    ],
)
def test_rakes_that_are_alike_do_not_cross(towards: str, other: Rake, alike: bool) -> None:
    """Not but for a hair; the same slope the other way round does."""
    near, far = brace(), brace(incline=INCLINE | {"towards": towards})
    found = list(alike_faults(near, line(run=200, rise=100), far, other))
    assert [fault.key for fault in found] == (["into"] if alike else [])


def test_every_fault_says_what_to_do() -> None:
    """No fault without a remedy, none that repeats itself."""
    found = [
        *faults(post(), ()),
        *faults(post(at={"up": "0"}, shoulder_level="0", length="1"), (FOOT, HEAD)),
        *faults(post(at=AT), ()),
        *faults(brace(at=AT), ()),
        *rule_faults(post(), "square", ()),
        *plane_faults(brace(), line(run=0, rise=0)),
    ]
    assert all(fault.remedy and fault.problem for fault in found)
    assert len({(fault.key, fault.problem) for fault in found}) == len(found)


def purlin(**words: object) -> Timber:
    """A level timber on a line, rolled towards the north."""
    roll = {"towards": "north", "run": "12", "rise": "8"}
    placed = {"at": {"north": "0", "up": "0"}, "reference_end_at": "0", "roll": roll}
    faces = {"first_face": "up", "second_face": "south", "reference_end": "west"}
    return timber("purlin", **(faces | placed | words))


@pytest.mark.parametrize(
    ("words", "problem"),
    [
        ({}, []),
        ({"at": None, "reference_end_at": None}, ["roll"]),
        (
            {"roll": {"towards": "east", "run": "12", "rise": "8"}},
            ["roll"],
        ),
    ],
)
def test_only_a_timber_that_lies_across_a_slope_is_rolled(
    words: dict[str, object], problem: list[str]
) -> None:
    """One without a line, and one that runs up the slope, are told."""
    assert told(purlin(**words)) == problem


def test_a_post_is_not_rolled() -> None:
    """It stands."""
    roll = {"towards": "north", "run": "12", "rise": "8"}
    (fault,) = faults(post(at=AT, roll=roll), (FOOT, HEAD))
    assert fault.problem.startswith("cannot be: Post does not lie")


@pytest.mark.parametrize(
    ("run", "rise", "keys"),
    [("12", "0", []), ("0", "8", ["roll.run"]), ("12", "-1/64", ["roll.rise"])],
)
def test_a_slope_goes_somewhere_and_not_down(run: str, rise: str, keys: list[str]) -> None:
    """A flat one is as good as any."""
    assert [fault.key for fault in roll_faults(length(run), length(rise))] == keys
