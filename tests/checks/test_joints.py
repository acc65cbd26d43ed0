"""Joint meets joint."""

from dataclasses import replace
from itertools import combinations
from math import sqrt
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.checks.design import findings_on
from benchmate.checks.joints import (
    cuts_meet,
    little_wood_between,
    near_joints,
    opens_in_a_notch,
)
from benchmate.frame.frame import Frame, real_of
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.layout.step import Layout
from benchmate.layout.walk import lay_out
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding, Severity, stop
from benchmate.model.progress import Progress
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.store.reading import read_progress, read_project
from tests.builders import (
    chamfer,
    codes,
    corners,
    frame,
    joist,
    length,
    pocket,
    real,
    sill,
    tenon,
)
from tests.builders import timber as post_of
from tests.joinery.brace.bays import bay
from tests.joinery.tenon.head_ties import head_tie
from tests.joinery.tenon.notched import notched_girt

HALF = length("1/2")
"""The usual least wood of a shop that measures in inches (common practice, no source)."""


def told(frame: Frame, timber: str) -> tuple[Finding, ...]:
    """What is found between the joints of a timber."""
    layout = lay_out(frame, timber)
    near = near_joints(layout)
    return (*cuts_meet(layout, near), *little_wood_between(layout, near, frame.project.tape))


def left(frame: Frame, timber: str) -> list[Length]:
    """The wood that is left where two joints of a timber come too near."""
    return [each.wood for each in near_joints(lay_out(frame, timber))]


def posts(gap: str, **words: Any) -> Frame:  # noqa: ANN401 - as `frame` takes them
    """Two posts on a sill whose tenons run out to their faces, so far apart along it."""
    post = {"into": "sill", "length": "4"}
    return frame(
        sill(),
        post_of("west"),
        post_of("east"),
        tenon(id="west-foot", timber="west", at="4'", **post),
        tenon(id="east-foot", timber="east", at=f"4' 6 + {gap}", **post),
        **words,
    )


@pytest.mark.parametrize(("gap", "code"), [("1/2", None), ("15/32", "little-wood-between")])
def test_less_wood_than_the_shop_keeps_is_found(gap: str, code: str | None) -> None:
    """Just as much is enough: 1/2" unless the shop says otherwise (common practice, no source)."""
    assert codes(told(posts(gap), "sill")) == ((code,) if code else ())


@pytest.mark.parametrize(("gap", "code"), [("1/64", "little-wood-between"), ("0", "cuts-meet")])
def test_cuts_that_touch_have_met(gap: str, code: str) -> None:
    """The thinnest wall is still one; where the mortises only touch there is none."""
    assert codes(told(posts(gap), "sill")) == (code,)


def test_the_shop_says_how_much_is_enough() -> None:
    """Its own house rule counts instead of the usual; with nothing, only what meets is told."""
    for own, found in (("1-1/8", [HALF + HALF]), ("1", []), ("1/4", [])):
        assert left(posts("1", shop={"least_wood": own}), "sill") == found
    assert left(posts("1/64", shop={"least_wood": "0"}), "sill") == []
    assert left(posts("0", shop={"least_wood": "0"}), "sill") == [ZERO]
    metric = posts("11.9 mm", units="mm"), posts("12 mm", units="mm")
    assert [len(left(each, "sill")) for each in metric] == [1, 0]


def test_a_finding_says_which_two_joints_and_how_much_is_left() -> None:
    """By their titles, on the timber, and what to write where it is meant."""
    (found,) = told(posts("1/4"), "sill")
    assert found == Finding(
        code="little-wood-between",
        severity=Severity.LOOK,
        timber="sill",
        feature="west-foot-mortise",
        also="east-foot-mortise",
        message=(
            'The cuts of the mortise for West and the mortise for East leave 1/4" of wood between '
            'them, less than 1/2"'
        ),
        remedy=(
            "move one of them or make it smaller; if the engineer lets it be, write "
            'meets = ["east-foot"] in joint west-foot'
        ),
    )
    (met,) = told(posts("0"), "sill")
    assert met.message == (
        "The cuts of the mortise for West and the mortise for East meet: no wood is left between "
        "them"
    )
    assert met.remedy == (
        "move one of them or make it smaller; if they are meant to meet, write "
        'meets = ["east-foot"] in joint west-foot, or the other way round: of two tenons the one '
        "that says so goes through"
    )


def test_it_stands_among_the_other_findings_of_the_timber() -> None:
    """And withholds no figure: it is only to be looked at."""
    layout = lay_out(posts("1/4"), "sill")
    (found,) = findings_on(layout, Progress(timber="sill"), Tape())
    assert (found.code, found.severity) == ("little-wood-between", Severity.LOOK)


@pytest.mark.parametrize("gap", ["0", "1/4"])
def test_joints_meant_to_meet_are_left_alone(gap: str) -> None:
    """Either side naming the other is enough; a third joint is not meant."""
    for west, east, found in ((), ("west-foot",), 0), (("east-foot",), (), 0), ((), ("a",), 1):
        built = posts(gap).project
        meets = {"west-foot": west, "east-foot": east}
        works = (each.model_copy(update={"meets": meets[each.id]}) for each in built.works)
        assert len(told(frame(*built.timbers, *works), "sill")) == found


def girts(rise: str = "0", *, inside: str = "0", rule: str = "mill", **joint: str) -> Frame:
    """Two girts, 6 x 6, in the far faces of an 8 x 8 corner post, one so much above the other.

    They stand so far `inside` of the post's outer faces. Their tenons are 2" thick, set back 2".
    By square rule each inner timber is 1/2" less.
    """
    inner = {"inner": "7-1/2 x 7-1/2"} if rule == "square" else {}
    girt = {"first_face": "up", "length": "6'"} | ({"inner": "5-1/2 x 5-1/2"} if inner else {})
    east = {"second_face": "south", "reference_end": "west", "at": {"north": inside, "up": "4'"}}
    north = {"reference_end": "south", "at": {"east": inside, "up": f"4' + {rise}"}}
    post = {"section": "8 x 8", "at": {"east": "0", "north": "0"}, "reference_end_at": "0"}
    return frame(
        post_of("post", **post, **inner),
        post_of("east", **girt, **east),
        post_of("north", **girt, **north),
        tenon(id="east-girt", timber="east", end="west", into="post", **joint),
        tenon(id="north-girt", timber="north", end="south", into="post", **joint),
        rule=rule,
    )


@pytest.mark.parametrize(
    ("rise", "long", "code"),
    [
        ("0", "4", "cuts-meet"),
        ("6", "4", "cuts-meet"),
        ("6-1/4", "4", "little-wood-between"),
        ("6-1/2", "4", None),
        ("0", "3-17/32", "little-wood-between"),
        ("0", "3-1/2", None),
    ],
)
def test_girts_in_neighbouring_faces_of_a_post(rise: str, long: str, code: str | None) -> None:
    """Their mortises cross inside, unless one lies a girt's depth higher or both stop short.

    With 1/8" of clearance, mortises 3-5/8" deep leave 3/8" both ways and 0.53" from edge to edge.
    """
    assert codes(told(girts(rise, length=long), "post")) == ((code,) if code else ())


def test_housings_that_share_an_arris_have_met() -> None:
    """By mill rule: flush with the inside of the post, both take its inside arris."""
    assert told(girts(length="1", housing="1/2"), "post") == ()
    flush = girts(length="1", housing="1/2", inside="2")
    assert codes(told(flush, "post")) == ("cuts-meet",)


def test_what_lies_outside_the_inner_timber_is_no_wood_to_miss() -> None:
    """By square rule it is taken off wherever a joint needs it, by neighbours at an arris too."""
    gained = girts(rule="square", length="1", inside="2")
    joints = [feature for feature in lay_out(gained, "post").features if feature.joint]
    assert [len(each.cuts) for each in joints] == [2, 2], "each takes its far face down first"
    assert told(gained, "post") == ()
    housed = girts(rule="square", length="1", inside="2", housing="1/2")
    assert codes(told(housed, "post")) == ("cuts-meet",)


def test_a_tenon_s_shoulder_counts_against_a_mortise_beside_it() -> None:
    """Above a shoulder cut on all sides, a mortise 1/4" up the post leaves so much, and no more."""
    for up, code in (("1/4", "little-wood-between"), ("1/2", None)):
        built = frame(
            sill(),
            post_of("post"),
            post_of("girt", first_face="up", second_face="south", reference_end="west"),
            tenon(into="sill", at="4'"),
            tenon(id="girt-west", timber="girt", end="west", into="post", at=f"6 + {up}"),
        )
        assert codes(told(built, "post")) == ((code,) if code else ())


def test_a_pocket_beside_a_mortise_is_found_whatever_the_families() -> None:
    """A joist dropped into a sill next to a post's mortise."""
    for at, code in (("4' 6-1/4", "little-wood-between"), ("4' 7", None), ("4' 5", "cuts-meet")):
        built = frame(
            sill(),
            post_of("post"),
            joist(),
            tenon(into="sill", at="4'", inset="1"),
            pocket(at=at, bearing="3"),
        )
        assert codes(told(built, "sill")) == ((code,) if code else ())


def test_ends_and_chamfers_are_no_joints() -> None:
    """The check frame's own chamfer runs near its tenons, and a mortise may lie at an end."""
    near_stop, far_stop = ({"shoulder": end, "distance": "0"} for end in ("foot", "head"))
    post = post_of("post")
    assert told(frame(post, tenon(), chamfer(near_stop=near_stop, far_stop=far_stop)), "post") == ()
    built = corners()
    assert all(told(built, timber.id) == () for timber in built.project.timbers)


def test_the_cuts_of_one_joint_may_lie_as_they_like() -> None:
    """As a housing and its mortise do, and two sides of one joint on one timber."""
    layout = layout_of(*((hollow(at("9", "0", "0"), at("10", "6", "6")),) for _ in range(2)))
    assert near_joints(layout)
    ends, *sides = layout.features
    one = tuple(replace(side, joint="scarf") for side in sides)
    assert near_joints(replace(layout, features=(ends, *one))) == ()


def test_what_cannot_be_cut_is_mended_first() -> None:
    """A joint with a stop has its figures withheld, so nothing is measured from them."""
    layout = lay_out(posts("1/4"), "sill")
    assert near_joints(layout)
    west, *others = (each for each in layout.features if each.joint)
    stopped = replace(west, findings=(stop("code", "sill", west.id, "No", "choose"),))
    assert near_joints(replace(layout, features=(stopped, *others))) == ()


def test_a_scribed_joint_has_no_cuts_to_meet() -> None:
    """It is marked by hand from its mate."""
    parts = posts("1/4").project
    (west, east) = (each for each in parts.works if isinstance(each, TenonJoint))
    scribed = frame(*parts.timbers, west, east.model_copy(update={"scribed": True}))
    assert told(scribed, "sill") == ()


def test_the_stick_as_it_measures_counts_by_mill_rule() -> None:
    """A tenon typed wider as cut eats into the wood between the two mortises."""
    built = posts("5/8")
    assert told(built, "sill") == ()
    wide = {"west": real(as_cut={"foot-tenon": {"width": "6-1/4"}})}
    assert codes(told(Frame(built.project, wide), "sill")) == ("little-wood-between",)


LITTLE, MEET = ("little-wood-between",), ("cuts-meet",)

BLANK = lay_out(frame(post_of("post")), "post")
"""A post of 6 x 6, 95" long, with nothing cut on it but its ends."""


def layout_of(*cuts: tuple[Cut, ...], least: str = "1/2") -> Layout:
    """The blank post with a joint for each group of cuts."""
    (own,) = BLANK.features
    joints = [
        Feature(id=f"f{at}", timber="post", title=f"F{at}", at=ZERO, cuts=each, joint=f"j{at}")
        for at, each in enumerate(cuts)
    ]
    return replace(BLANK, features=(own, *joints), least_wood=length(least))


def slope(along: int, first: int, second: int, at: str) -> Plane:
    """A plane through a place along the reference arris, in whole numbers as large as they get."""
    steep = 1_000_000_007
    return Plane((along * steep, first * steep, second * steep), along * steep * length(at).nm)


@pytest.mark.parametrize(
    ("along", "wood"), [("25", 0), ("25-1/2", 7_620_000), ("26", 15_240_000), ("27", None)]
)
def test_sloping_cuts_are_measured_square_to_the_slope(along: str, wood: int | None) -> None:
    """A slope of 3 in 4: an inch along is three fifths of one square to it. An inch is enough."""
    lower, upper = slope(3, 4, 0, "25"), slope(-3, -4, 0, along)
    near = near_joints(layout_of((Cut((lower,)),), (Cut((upper,)),), least="1"))
    assert [each.wood.nm for each in near] == ([] if wood is None else [wood])


Point = tuple[Length, Length, Length]


def hollow(low: Point, high: Point) -> Cut:
    """A box cut out between two places."""
    sides = zip(Axis, low, high, strict=True)
    return Cut(tuple(plane for axis, a, b in sides for plane in (above(axis, a), below(axis, b))))


def at(along: str, first: str, second: str) -> Point:
    """A place in the post."""
    return length(along), length(first), length(second)


@pytest.mark.parametrize(("past", "wood"), [("0", 0), ("1/4", 10_998_523)])
def test_cuts_that_share_one_corner_alone_have_met(past: str, wood: int) -> None:
    """One begins where the other ends on all three axes; past it on all three, by 1.732 times."""
    low = hollow(at("10", "0", "0"), at("20", "3", "3"))
    over = length(past)
    high = hollow((length("20") + over, length("3") + over, length("3") + over), at("30", "6", "6"))
    (near,) = near_joints(layout_of((low,), (high,)))
    assert near.wood == Length(wood)


@pytest.mark.parametrize(("real_first", "code"), [("6", ()), ("6-13/16", LITTLE), ("7", MEET)])
def test_cuts_count_only_where_there_is_wood(real_first: str, code: tuple[str, ...]) -> None:
    """Two slopes that cross 7" deep: not in a stick of 6", but in one sawn as full as that."""
    real_post = {"post": real(measured={"all": {"first": real_first}})}
    stick = lay_out(frame(post_of("post"), real=real_post), "post").stick
    low, high = Cut((slope(1, -1, 0, "20"),)), Cut((slope(-1, -1, 0, "34"),))
    layout = replace(layout_of((low,), (high,)), stick=stick)
    near = near_joints(layout)
    assert codes((*cuts_meet(layout, near), *little_wood_between(layout, near, Tape()))) == code


def test_beyond_the_ends_there_is_nothing_to_meet_in() -> None:
    """The post ends at 95"."""
    cuts = [hollow(at(start, "0", "0"), at("98", "6", "6")) for start in ("95", "96")]
    assert near_joints(layout_of((cuts[0],), (cuts[1],))) == ()


@pytest.mark.parametrize(("legs", "told_of"), [("8-7/8", False), ("8-13/16", True)])
def test_the_shoulders_of_a_short_brace_come_near_at_its_short_edge(
    legs: str, told_of: bool
) -> None:
    """At 45 degrees a 6" brace is 12" shorter there than at its long edge, which is 1.414 legs."""
    built = bay(legs=(legs, legs), joint={"housing": "0"})
    near = near_joints(lay_out(built, "brace"))
    short = length(legs).nm * sqrt(2) - length("12").nm
    assert [abs(each.wood.nm - short) < 3 for each in near] == ([True] if told_of else [])
    assert (short < HALF.nm) is told_of


def test_a_cut_that_takes_no_wood_meets_nothing() -> None:
    """Two slopes back to back, right across a mortise."""
    sheet = Cut((slope(1, 1, 0, "14"), slope(-1, -1, 0, "14")))
    mortise = hollow(at("10", "0", "0"), at("12", "3", "3"))
    assert near_joints(layout_of((sheet,), (mortise,))) == ()


def test_of_many_cuts_of_two_joints_the_nearest_count() -> None:
    """One finding for the two, with the least wood left anywhere between them."""
    steps = [hollow(at(along, "0", "0"), at(f"{along}-1/2", "1", "1")) for along in ("10", "20")]
    other = [hollow(at(along, "0", "0"), at("21", "1", "1")) for along in ("20-15/16", "20-3/4")]
    (near,) = near_joints(layout_of(tuple(steps), tuple(other)))
    assert (near.one.id, near.other.id, near.wood) == ("f0", "f1", length("1/4"))


def quarters(longest: int) -> st.SearchStrategy[tuple[Length, Length]]:
    """From one quarter of an inch to a later one, up to so many."""
    ends = st.integers(0, longest - 1).flatmap(
        lambda low: st.tuples(st.just(low), st.integers(low + 1, longest))
    )
    return ends.map(lambda two: (Length.inches(0, two[0], 4), Length.inches(0, two[1], 4)))


HOLLOWS = st.tuples(quarters(96), quarters(24), quarters(24))
Spans = tuple[tuple[Length, Length], tuple[Length, Length], tuple[Length, Length]]


@given(st.lists(HOLLOWS, max_size=9))
def test_whatever_comes_near_is_found_and_nothing_else(hollows: list[Spans]) -> None:
    """Square hollows, every one against every other by their gaps, as often as they are given."""
    cuts = (hollow((a, b, c), (d, e, f)) for (a, d), (b, e), (c, f) in hollows)
    layout = layout_of(*((cut,) for cut in cuts))
    found = {(each.one.id, each.other.id): each.wood.nm for each in near_joints(layout)}
    expected = {}
    for (one, a), (other, b) in combinations(enumerate(hollows), 2):
        gaps = [max(0, p.nm - s.nm, r.nm - q.nm) for (p, q), (r, s) in zip(a, b, strict=True)]
        square = sum(gap * gap for gap in gaps)
        if not square or square < HALF.nm**2:
            expected[f"f{one}", f"f{other}"] = square
    assert found.keys() == expected.keys()
    assert all(abs(wood**2 - expected[pair]) <= wood for pair, wood in found.items())


def test_the_two_are_told_in_order_from_the_reference_end() -> None:
    """As the timber's own features are, whatever their cuts start at."""
    built = posts("1/4")
    turned = frame(*built.project.timbers, *reversed(built.project.works))
    assert told(built, "sill")[0].feature == told(turned, "sill")[0].feature == "west-foot-mortise"


DEMOS = Path(__file__).parents[2] / "projects"


@pytest.mark.parametrize("name", ["hillside-wood-store", "orchard-tool-shed"])
def test_the_demos_leave_enough_wood_between_their_joints(name: str) -> None:
    """With the sizes that are kept for them, as they open."""
    project = read_project(DEMOS / name)
    kept = (read_progress(DEMOS / name, each.id, project.bare) for each in project.timbers)
    built = Frame(project, {each.timber: real_of(each) for each in kept})
    assert all(told(built, each.id) == () for each in project.timbers)


@pytest.mark.parametrize(
    "joint",
    [
        {"housing": "1/2", "through": False, "length": "4", "held_short": "0"},
        {"housing": "0", "through": False, "length": "4", "held_short": "0"},
        {"housing": "0"},
    ],
)
def test_a_joint_that_opens_in_a_notch_and_does_not_follow_it_is_stopped(
    joint: dict[str, object],
) -> None:
    """A shoulder that should bear on the face would bear on nothing, housed or not.

    That is told once, and not as two cuts that meet.
    """
    built = notched_girt(joint)
    layout = lay_out(built, "post")
    (found,) = opens_in_a_notch(layout)
    assert (found.severity, found.code, found.feature) == (
        Severity.STOP,
        "opens-in-a-notch",
        "girt-west-mortise",
    )
    assert found.message == (
        "The mortise for Girt opens in the notch for Rail, which takes away the East face that its "
        "figures count from"
    )
    assert found in findings_on(layout, Progress(timber="post"), built.project.tape)
    assert near_joints(layout) == ()


def test_what_follows_its_notch_is_no_finding() -> None:
    """The tie's mortise past its plate, and the plate's own, bored from the notch's floor."""
    built = head_tie(lap={})
    for owner in ("tie", "plate"):
        layout = lay_out(built, owner)
        assert layout.floors
        assert opens_in_a_notch(layout) == ()
        assert near_joints(layout) == ()


def test_joints_beside_a_notch_are_none_of_its_business() -> None:
    """Without a floor over it nothing is told."""
    assert opens_in_a_notch(lay_out(corners(), "sill")) == ()
