"""Where a joist's end and its pocket lie, whichever way the timbers lie."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.joist.family import features
from benchmate.joinery.joist.shape import feature_id, shapes
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.progress import Measured
from benchmate.model.solids import Axis
from tests.builders import frame, joist, length, lengths, pocket, real, sill
from tests.joinery.joist.floors import SQUARE, SQUARE_JOIST, SQUARE_SILL, Floor, Laid, laid, spare

GRAIN = length("1/64").nm
SHARES = st.integers(0, 999)


@settings(max_examples=100)
@given(laid())
def test_every_pocket_is_the_end_that_goes_in_and_the_clearance(case: Laid) -> None:
    """Law 3, by either rule, typed and in place: the pocket is the end as cut, and longer."""
    assert case.pocket_in_building() == case.end_in_building(beyond=spare(case.joint))


@settings(max_examples=100)
@given(laid(), SHARES, SHARES, SHARES)
def test_what_no_cut_takes_is_the_end_that_goes_in(
    case: Laid, along: int, first: int, second: int
) -> None:
    """Law 4: inside the other timber only what lies within the end's own lines is left."""
    post, scene = case.scene.post, case.scene
    low, high = scene.beyond(-length("6").nm, 0)
    spans = ((low, high), (0, post.real(1)), (0, post.real(2)))
    shares = zip(spans, (along, first, second), strict=True)
    x, u, v = ((a + (b - a) * s // 1000) // GRAIN * GRAIN + GRAIN // 2 for (a, b), s in shares)
    goes_in = scene.beyond(-case.recess, 0)
    most = scene.across((0, case.end[0]), (0, case.end[1]))
    left = not goes_in[0] <= x <= goes_in[1] or (u <= most[0][1] and v <= most[1][1])
    assert any(cut.takes(x, u, v) for cut in case.sides[0].cuts) is not left


@pytest.mark.parametrize("actual", ["8", "8-1/8", "8-1/2", "9"])
def test_a_2_inch_pocket_on_the_far_side_of_an_8_inch_timber(actual: str) -> None:
    """The line is 6" from the reference face, on any stick (FF-joist, trade.md 7.5 row 36)."""
    floor = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL, sill_measures={"second": actual})
    end, received = floor.shapes(end_clearance="0")
    assert received.entry is Face.FAR_SECOND
    assert (received.into, received.back) == (Axis.SECOND, length("6"))
    assert end.recess == received.recess == length(actual) - length("6")


@pytest.mark.parametrize("actual", ["8", "8-1/8", "9"])
def test_a_pocket_on_the_reference_side_is_as_deep_as_it_is_called(actual: str) -> None:
    """On the reference face cut 2" (FF-joist)."""
    floor = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL, sill_measures={"second": actual})
    end, received = floor.shapes(end="north", end_clearance="0")
    assert received.entry is Face.SECOND
    assert (received.back, received.recess, end.recess) == lengths("2", "2", "2")


def _between(rule: str, west: str, east: str) -> Frame:
    """A joist between two girders of inner 8" that measure so across."""
    lying = {"length": None, "section": "9 x 9", "rule": rule}
    inner = {"inner": "8 x 8"} if rule == "square" else {}
    girders = [
        sill(
            id=name,
            second_face="west",
            reference_end="south",
            at={"east": at, "up": "0"},
            reference_end_at="0",
            far_end_at="16'",
            **lying,
            **inner,
        )
        for name, at in (("west", "0"), ("east", "10'"))
    ]
    member = joist(
        second_face="south", reference_end="west", length=None, at={"north": "4'", "up": "0"}
    )
    joints = [pocket(id=f"joist-{end}", end=end, into=end, at=None) for end in ("west", "east")]
    sizes = {
        name: real({f"joist-{name}-pocket": {"second": actual}})
        for name, actual in (("west", west), ("east", east))
    }
    return frame(*girders, member, *joints, real=sizes)


@pytest.mark.parametrize(("west", "east"), [("8", "8"), ("8-1/4", "9"), ("9", "8-1/2")])
def test_by_square_rule_all_joists_share_one_length(west: str, east: str) -> None:
    """Clear span and both bearings, on any girders (FF-joist; trade.md 2.2 [CALC])."""
    stick = _between("square", west, east).stick("joist")
    assert stick.body == length("10'") - length("8") + length("2") * 2
    assert stick.overall == stick.body


@pytest.mark.parametrize(("west", "east"), [("8", "8"), ("8-1/4", "9"), ("9", "8-1/2")])
def test_by_mill_rule_a_joist_is_as_long_as_the_girders_leave(west: str, east: str) -> None:
    """The stick is what it is, and the joist between is cut to it."""
    stick = _between("mill", west, east).stick("joist")
    assert stick.body == length("10'") - length(west) + length("2") * 2


def test_joists_cut_down_at_their_ends() -> None:
    """4 x 6 joists cut to 4 x 4 at the ends, in 4 x 4 x 3 pockets (TFG-joist, trade.md 2.4)."""
    floor = Floor(joist={"section": "6 x 4"})
    end, received = floor.shapes(bearing="3", end_depth="4", end_clearance="0")
    assert (end.deep, end.wide, end.recess) == lengths("4", "4", "3")
    assert end.reduction.to == {Axis.FIRST: length("4")}
    assert end.reduction.deep(Axis.FIRST) == length("2")
    assert received.along[1] - received.along[0] == length("4")
    assert (received.from_top, received.recess) == lengths("4", "3")


@pytest.mark.parametrize(
    ("inner", "actual", "off"),
    [("7-1/2", "7-7/8", "3/8"), ("7-1/2", "8-1/4", "3/4")],
    ids=["trade.md 7.5 row 34 (TFDIY-notation)", "trade.md 7.5 row 35 (TFDIY-notation)"],
)
def test_what_comes_off_an_end_is_actual_less_inner(inner: str, actual: str, off: str) -> None:
    """The end comes down to the inner timber on its far faces: underside and east side."""
    words = {"section": "8 x 8", "rule": "square", "inner": f"{inner} x {inner}"}
    floor = Floor(joist=words, joist_measures={"first": actual, "second": actual})
    end, _ = floor.shapes()
    assert (end.deep, end.wide) == lengths(inner, inner)
    assert [end.reduction.deep(axis) for axis in (Axis.FIRST, Axis.SECOND)] == [length(off)] * 2


@pytest.mark.parametrize(
    ("as_cut", "along", "floor"),
    [
        ({}, ("4'", "4' 3-1/2"), "5-1/2"),
        ({"width": "3-7/16"}, ("4'", "4' 3-7/16"), "5-1/2"),
        ({"thickness": "5-3/8"}, ("4'", "4' 3-1/2"), "5-3/8"),
    ],
)
def test_the_pocket_follows_the_end_as_it_was_cut(
    as_cut: dict[str, str], along: tuple[str, str], floor: str
) -> None:
    """Law 5: so all tops come level; the joist's own reference side and top are held."""
    _, received = Floor(as_cut=as_cut).shapes()
    assert received.along == lengths(*along)
    assert received.floor == length(floor)


@pytest.mark.parametrize(
    ("side", "along"), [("west", ("4'", "4' 3-1/2")), ("east", ("3' 8-1/2", "4'"))]
)
def test_the_pocket_lies_on_the_side_the_joist_is_measured_from(
    side: str, along: tuple[str, str]
) -> None:
    """`at` is where the joist's side reference face crosses; its width goes away from there."""
    _, received = Floor(joist={"second_face": side}).shapes()
    assert received.along == lengths(*along)


@pytest.mark.parametrize(
    ("drop", "floor", "left"),
    [("0", "5-1/2", "2-1/2"), ("1", "6-1/2", "1-1/2"), ("-2", "3-1/2", "4-1/2")],
)
def test_a_joist_may_lie_below_the_top_or_above_it(drop: str, floor: str, left: str) -> None:
    """The floor is as deep below the joist's own top as its end is."""
    _, received = Floor().shapes(drop=drop)
    assert (received.from_top, received.left_below) == lengths(floor, left)


@pytest.mark.parametrize("actual", ["8", "8-1/4", "7-7/8"])
def test_a_sill_that_is_measured_from_its_underside_holds_the_floor_from_there(actual: str) -> None:
    """Law 2: the reading holds and what lies above it follows the stick."""
    floor = Floor(sill={"first_face": "down"}, sill_measures={"first": actual})
    _, received = floor.shapes(drop="8")
    assert received.top is Face.FAR_FIRST
    assert (received.floor, received.left_below) == lengths("2-1/2", "2-1/2")
    assert received.from_top == length(actual) - length("2-1/2")


def test_the_clearance_is_the_joint_s_own_or_else_the_shop_s() -> None:
    """A little to spare behind the joist's end, so that it never bottoms out."""
    joint = pocket()
    for shop, spared in (({}, "1/8"), ({"bottom_clearance": "3/16"}, "3/16")):
        _, received = shapes(joint, frame(joist(), sill(), joint, shop=shop))
        assert received.clearance == length(spared)
        assert received.back == length("6") - length(spared)
    _, received = Floor().shapes(end_clearance="0")
    assert (received.clearance, received.back) == lengths("0", "6")


def test_a_mill_rule_end_without_its_own_depth_loses_nothing() -> None:
    """It goes in as it is, so its real size is its pocket's."""
    floor = Floor(joist_measures={"first": "5-5/8", "second": "3-3/8"})
    end, received = floor.shapes()
    assert end.reduction.to == {}
    assert (end.deep, end.wide) == lengths("5-5/8", "3-3/8")
    assert received.floor == length("5-5/8")


@given(st.sampled_from(["first", "second"]), st.integers(-64, 64))
def test_what_is_left_goes_under_nothing_rather_than_to_it(side: str, over: int) -> None:
    """Law 7: below the floor and behind the back, never clamped."""
    actual = length("5-1/2") if side == "first" else length("2-1/8")
    size = Measured(**{side: Length(actual.nm + over * GRAIN)})
    joint = pocket()
    built = frame(joist(), sill(), joint, real={"sill": Real({joint.pocket: size})})
    _, received = shapes(joint, built)
    left = received.left_below if side == "first" else received.left_behind
    assert left == Length(over * GRAIN)


def test_ids_follow_the_joint_and_the_end() -> None:
    """In words that no renaming changes."""
    joint = pocket()
    built = Floor().frame(joint)
    assert feature_id(joint, built.stick("joist")) == "south-end-bearing"
    end, received = features(joint, built)
    assert (end.id, received.id) == ("south-end-bearing", "joist-south-pocket")
    assert received.at > ZERO


def test_the_nearest_measured_place_counts() -> None:
    """At its end the joist's own section there comes before the one of that end of the stick."""
    joint = pocket()
    sizes = {"all": {"first": "5-3/4"}}
    for place, deep in (("south-end", "5-5/8"), ("south-end-bearing", "5-9/16")):
        sizes[place] = {"first": deep}
        end, _ = shapes(joint, frame(joist(), sill(), joint, real={"joist": real(sizes)}))
        assert end.deep == length(deep)
    assert SQUARE.shapes()[0].deep == length("5")
