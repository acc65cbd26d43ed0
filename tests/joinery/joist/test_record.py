"""What the record of a joist and its pocket accepts, and what it answers."""

import pytest
from pydantic import ValidationError

from benchmate.frame.level_end import NO_DROP
from benchmate.joinery.joist.record import DovetailJoist, JoistPocket
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from benchmate.model.work import Bearing, Extension
from tests.builders import joist, length, pocket, sill, timber
from tests.joinery.joist.joints import dovetail_joist

JOIST, SILL, POST = joist(), sill(), timber("post")


def faults(joint: JoistPocket, *timbers: Timber) -> list[str]:
    """The keys of the joint's faults beside these timbers."""
    return [fault.key for fault in joint.faults({each.id: each for each in timbers})]


def test_a_joist_needs_only_its_bearing() -> None:
    """Its top is level with the sill's, its end full deep, and the shop gives the clearance."""
    joint = pocket()
    assert (joint.drop, joint.end_depth, joint.end_clearance) == (NO_DROP, None, None)
    assert joint.diminished is None


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"into": "joist"}, "its own timber"),
        ({"into": None}, "usable id|not text"),
        ({"bearing": "0"}, "more than nothing"),
        ({"end_depth": "0"}, "more than nothing"),
        ({"end_clearance": "-1/8"}, "not below zero"),
        ({"end": "up"}, "end of a timber"),
        ({"family": "tenon"}, "joist pocket"),
        ({"housing": "1"}, "Extra inputs"),
        ({"bearing": 2}, "not text"),
        ({"diminished": "0", "end_depth": "4"}, "more than nothing"),
        ({"diminished": "12"}, 'no "end_depth"; say how deep'),
    ],
)
def test_what_is_refused(words: dict[str, object], says: str) -> None:
    """A record that could not be cut is refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        pocket(**words)


def test_what_it_names_is_told_by_key() -> None:
    """Timbers, and the sums that say where they cross."""
    joint = pocket(at="line a + 2'", drop="deck")
    assert joint.timbers() == {"timber": "joist", "into": "sill"}
    assert {key: total.names() for key, total in joint.sums().items()} == {
        "drop": ("deck",),
        "at": ("line a",),
    }
    assert tuple(pocket(at=None).sums()) == ("drop",)


def test_its_end_bears_in_the_pocket() -> None:
    """So deep, and measured there; it needs no wood beyond that."""
    joint = pocket(bearing="2-1/2")
    expected = Bearing("joist", Direction.SOUTH, "sill", length("2-1/2"), "joist-south-pocket")
    assert joint.bearings() == (expected,)
    assert joint.pocket == "joist-south-pocket"
    assert joint.extensions() == ()


@pytest.mark.parametrize("side", ["first_face", "second_face"])
def test_two_level_timbers_and_a_joist_measured_from_its_top(side: str) -> None:
    """Whichever of its reference faces is the top."""
    other = "second_face" if side == "first_face" else "first_face"
    assert faults(pocket(), joist(**{side: "up", other: "west"}), SILL) == []


@pytest.mark.parametrize("first", ["down", "east"])
def test_a_joist_not_measured_from_its_top_is_told(first: str) -> None:
    """Its tops are to come level, whatever each joist measures."""
    second = "west" if first == "down" else "down"
    turned = joist(first_face=first, second_face=second)
    assert faults(pocket(), turned, SILL) == ["timber"]


def test_a_timber_that_stands_upright_is_told() -> None:
    """It has no pocket in its top, nor drops into one; the fault lies at the key that names it."""
    onto_post = pocket(into="post")
    assert faults(onto_post, JOIST, POST) == ["into"]
    post_down = pocket(timber="post", end="foot", into="sill")
    assert faults(post_down, POST, SILL) == ["timber"]
    (fault,) = onto_post.faults({"joist": JOIST, "post": POST})
    assert "Post stands upright" in fault.problem
    assert "tenon" in fault.remedy


@pytest.mark.parametrize(
    ("words", "timbers", "keys"),
    [
        ({"at": None}, (JOIST, SILL), ["at"]),
        ({"end": "west"}, (JOIST, SILL), ["end"]),
        ({"into": "other"}, (JOIST, joist(id="other", name="Other")), ["into"]),
    ],
)
def test_what_keeps_its_end_out(
    words: dict[str, object], timbers: tuple[Timber, ...], keys: list[str]
) -> None:
    """A place that is missing, an end it has not, a timber that runs the same way."""
    assert faults(pocket(**words), *timbers) == keys


def test_places_say_where_it_crosses() -> None:
    """Then `at` and `drop` would say it again."""
    placed = (
        joist(at={"east": "4'", "up": "0"}),
        sill(at={"north": "0", "up": "0"}),
    )
    assert faults(pocket(at=None), *placed) == []
    assert faults(pocket(drop="1"), *placed) == ["at", "drop"]


def test_a_record_says_itself_again() -> None:
    """What is written to the file reads back equal."""
    joint = pocket(drop="deck", end_depth="4", end_clearance="0")
    assert JoistPocket.model_validate(joint.model_dump()) == joint


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"flare": "0"}, "more than nothing"),
        ({"length": "0"}, "more than nothing"),
        ({"wedge": "1/4"}, 'one of "wedge" and "wedge_side"'),
        ({"wedge_side": "east"}, "give both"),
        ({"wedge": "0", "wedge_side": "east"}, "more than nothing"),
        ({"straight": "left"}, "where a face looks"),
        ({"diminished": "12"}, "Extra inputs"),
    ],
)
def test_what_a_dovetail_refuses(words: dict[str, object], says: str) -> None:
    """A record that could not be cut is refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        dovetail_joist(**words)  # type: ignore[arg-type]


def test_a_dovetail_s_tail_lies_beyond_its_shoulder() -> None:
    """The shoulder bears on the beam's face, and the stick is longer by the tail."""
    joint = dovetail_joist()
    south = Direction.SOUTH
    assert joint.bearings() == (Bearing("joist", south, "beam", ZERO, "joist-end-socket"),)
    assert joint.extensions() == (Extension("joist", south, length("3")),)
    assert joint.socket == "joist-end-socket"


@pytest.mark.parametrize("key", ["straight", "wedge_side"])
@pytest.mark.parametrize(
    ("looks", "keys"), [("east", []), ("west", []), ("north", ["key"]), ("up", ["key"])]
)
def test_a_side_is_one_that_the_joist_has(key: str, looks: str, keys: list[str]) -> None:
    """A joist that runs north and south has an east side and a west one."""
    words = {key: looks} | ({"wedge": "1/4"} if key == "wedge_side" else {})
    joint = dovetail_joist(into="sill", at="4'", **words)
    found = joint.faults({"joist": JOIST, "sill": SILL})
    assert [fault.key for fault in found] == [key for _ in keys]
    for fault in found:
        assert "its sides look west and east" in fault.problem
    turned = joist(first_face="east", second_face="up")
    assert [fault.key for fault in joint.faults({"joist": turned, "sill": SILL})] == [
        key for _ in keys
    ]


def test_what_keeps_a_dovetail_out_is_told_first() -> None:
    """Like any joist's joint."""
    joint = dovetail_joist(into="post", straight="north")
    assert [fault.key for fault in joint.faults({"joist": JOIST, "post": POST})] == ["at"]


def test_a_dovetail_s_record_says_itself_again() -> None:
    """What is written to the file reads back equal."""
    joint = dovetail_joist(wedge="1/4", wedge_side="east", straight="west", end_depth="4")
    assert DovetailJoist.model_validate(joint.model_dump()) == joint
