"""Where placed timbers start and stop: by what they meet, by what is typed, by their length."""

from collections.abc import Mapping
from dataclasses import replace
from math import hypot

import pytest
from hypothesis import given, settings

from benchmate.frame.frame import Frame, Real
from benchmate.frame.site import entry_face
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.fields import ENDS
from benchmate.model.project import Timber
from tests.builders import frame, length, lengths, real, sill, tenon, timber
from tests.frame.standing import Between, Joint, between
from tests.joinery.joggle.trusses import joggle_joint
from tests.joinery.scarf.plates import plate
from tests.space import inward

MANY = settings(max_examples=300)
"""Enough of them for every stance, way and rule to turn up."""


@MANY
@given(between())
def test_a_shoulder_comes_where_the_timber_it_meets_begins(case: Between) -> None:
    """By second opinion: any stance, face and rule, housed or not, or a coordinate or a length."""
    built = case.frame()
    assert built.stick("stick").body.nm == case.stick.body
    place = built.place("stick")
    assert place is not None
    assert place.origin == case.stick.origin
    assert tuple(way.steps for way in place.ways) == tuple(
        tuple(sense if axis == each else 0 for each in range(3))
        for axis, sense in inward(case.stick.stance)
    )


@given(between(ways=(("meets", "meets"),)))
def test_the_length_of_a_timber_met_moves_nothing(case: Between) -> None:
    """Law: a shoulder follows from sections and places, never from another timber's length."""
    moved = replace(case, joints=tuple(map(_longer, case.joints)))
    assert moved.frame().place("stick") == case.frame().place("stick")
    assert moved.frame().stick("stick").body == case.frame().stick("stick").body


def _longer(joint: Joint) -> Joint:
    """The same joint in a timber that runs on a foot further."""
    if joint.into is None:
        raise ValueError("the joint is in no timber")
    return replace(joint, into=replace(joint.into, body=joint.into.body + length("1'").nm))


def lying(name: str, up: str, **words: object) -> Timber:
    """An 8 x 8 that runs 16' east, its top at a level and its south face on the zero line."""
    place: dict[str, object] = {"at": {"north": "0", "up": up}, "length": None}
    ends = {"reference_end_at": "0", "far_end_at": "16'"}
    return sill(**({"id": name, "name": name.capitalize()} | place | ends | words))


def foot(**words: object) -> TenonJoint:
    """A 5" tenon on the post's foot, in the sill."""
    return tenon(**({"into": "sill"} | words))


def head(**words: object) -> TenonJoint:
    """A 4" tenon on the post's head, in the plate."""
    return tenon(**({"id": "post-head", "end": "head", "into": "plate", "length": "4"} | words))


def posted(
    *joints: TenonJoint,
    real: Mapping[str, Real] | None = None,
    post: Mapping[str, object] | None = None,
) -> Frame:
    """A post 4' east, on a sill whose top is at 1', under a 7" deep plate whose top is at 9'."""
    words = {"at": {"east": "4'", "north": "0"}, "length": None} | dict(post or {})
    plate = lying("plate", "9'", section="7 x 8")
    return frame(timber("post", **words), lying("sill", "1'"), plate, *joints, real=real)


def stands(built: Frame, name: str = "post") -> tuple[Length, Length]:
    """The level of a post's foot shoulder and of its head shoulder."""
    place, body = built.place(name), built.stick(name).body
    assert place is not None
    ends = [place.origin[2], place.point(body, ZERO, ZERO)[2]]
    low, high = sorted(ends)
    return Length(low), Length(high)


def test_a_post_stands_between_a_reference_face_and_a_far_one() -> None:
    """Worked by hand: the sill's top is its arris at 1'; the plate's underside 9' - 7" = 8' 5"."""
    built = posted(foot(), head())
    stick = built.stick("post")
    assert (stick.near, stick.body, stick.far) == lengths("5", "7' 5", "4")
    assert stands(built) == lengths("1'", "8' 5")
    place = built.place("post")
    assert place is not None
    assert place.origin == (length("4'").nm, 0, length("1'").nm)


def test_housings_lengthen_a_timber_by_both_their_depths() -> None:
    """Trade notes 2.2, CALC: shoulder to shoulder is the clear span and both housing depths."""
    built = posted(foot(housing="1/2"), head(housing="3/4"))
    stick = built.stick("post")
    assert stick.body == length("7' 5") + length("1-1/4")
    assert (stick.near_housed, stick.far_housed) == lengths("1/2", "3/4")
    assert stands(built) == lengths("11-1/2", "8' 5-3/4")


@pytest.mark.parametrize("end", ["foot", "head"])
def test_either_end_may_be_the_reference_end(end: str) -> None:
    """The same post measured from its head: its shoulders stay, its origin is the upper one."""
    built = posted(foot(housing="1/2"), head(housing="3/4"), post={"reference_end": end})
    assert stands(built) == lengths("11-1/2", "8' 5-3/4")
    place = built.place("post")
    assert place is not None
    assert Length(place.origin[2]) == length("11-1/2" if end == "foot" else "8' 5-3/4")


@pytest.mark.parametrize(
    ("place", "underside"),
    [
        ("post-head-mortise", "8' 4-3/4"),
        ("all", "8' 4-3/4"),
        ("post-foot-mortise", "8' 5"),
        ("west-end", "8' 5"),
    ],
)
def test_by_mill_rule_the_section_at_that_joint_counts(place: str, underside: str) -> None:
    """A plate that measures 7-1/4" at the joint comes 1/4" lower there; elsewhere says nothing."""
    measured = {"plate": real({place: {"first": "7-1/4"}})}
    assert stands(posted(foot(), head(), real=measured)) == lengths("1'", underside)


def test_a_stick_that_is_not_to_size_moves_no_reference_face() -> None:
    """A sill an inch too deep grows downwards: the post's foot stays."""
    deep = {"sill": real({"all": {"first": "9", "second": "9"}})}
    assert stands(posted(foot(), head(), real=deep)) == lengths("1'", "8' 5")


@pytest.mark.parametrize("actual", ["6-1/2", "7", "7-1/2"])
def test_by_square_rule_the_inner_timber_counts(actual: str) -> None:
    """Whatever the plate measures, its inner 6-1/2" puts the shoulder at 9' - 6-1/2"."""
    plate = lying("plate", "9'", section="7 x 8", rule="square", inner="6-1/2 x 7-1/2")
    post = timber("post", at={"east": "4'", "north": "0"}, length=None)
    measured = {"plate": real({"post-head-mortise": {"first": actual}})}
    built = frame(post, lying("sill", "1'"), plate, foot(), head(housing="1/2"), real=measured)
    assert stands(built) == lengths("1'", "8' 6")


@pytest.mark.parametrize("end", ["foot", "head"])
def test_an_end_may_be_typed_or_follow_from_a_length(end: str) -> None:
    """A post cut off at 7', or 6' long from its foot, or from a head at 7' down."""
    top = "far_end_at" if end == "foot" else "reference_end_at"
    typed = posted(foot(), post={"reference_end": end, top: "7'"})
    from_foot = posted(foot(), post={"reference_end": end, "length": "6'"})
    from_head = posted(post={"reference_end": end, "length": "6'", top: "7'"})
    for built in (typed, from_foot, from_head):
        assert stands(built) == lengths("1'", "7'")


@pytest.mark.parametrize("reference_end", ["west", "east"])
def test_an_end_may_stop_at_a_coordinate_that_a_joint_gives(reference_end: str) -> None:
    """Two sticks of a line scarfed at 14': each stops 18" short of it, the way its end looks."""
    keys = ("reference_end_at", "far_end_at")[:: 1 if reference_end == "west" else -1]
    built = plate(
        one={"reference_end": reference_end, "reference_end_at": None, keys[0]: "0"},
        other={"reference_end": reference_end, "far_end_at": None, keys[1]: "28'"},
    )
    found = {}
    for name in ("one", "other"):
        place, body = built.place(name), built.stick(name).body
        assert place is not None
        ends = sorted(place.point(along, ZERO, ZERO)[0] for along in (ZERO, body))
        found[name] = tuple(map(Length, ends))
    assert found == {"one": lengths("0", "12' 6"), "other": lengths("15' 6", "28'")}


def test_such_an_end_leaves_the_other_to_a_length() -> None:
    """A stick 10' long from shoulder to shoulder starts so far before its scarf."""
    built = plate(one={"reference_end_at": None, "length": "10'"})
    place = built.place("one")
    assert place is not None
    assert Length(place.origin[0]) == length("2' 6")
    overall = plate(one={"reference_end_at": None, "length": "13'", "length_is": "overall"})
    assert overall.place("one") == place


def test_the_coordinate_of_a_joint_may_be_a_sum_of_names() -> None:
    """And moves both sticks at once."""
    built = plate(joint={"at": "line 2 - 1'"}, lines={"line 2": "15'"})
    assert built.stick("one").body == length("12' 6")
    moved = plate(joint={"at": "line 2 - 1'"}, lines={"line 2": "16'"})
    assert (moved.stick("one").body, moved.stick("other").body) == lengths("13' 6", "11' 6")


def test_an_overall_length_holds_its_tenons() -> None:
    """A 5" tenon in the sill and a 4" one alone on the head: 6' 9" overall is 6' of body."""
    alone = head(into=None)
    built = posted(foot(), alone, post={"length": "6' 9", "length_is": "overall"})
    assert stands(built) == lengths("1'", "7'")
    assert built.stick("post").overall == length("6' 9")


def test_a_place_may_be_a_sum_of_names() -> None:
    """Lines, levels and inner sections, as a whole frame is written."""
    at = {"east": "line 2 - post inner width", "north": "post inner depth"}
    ends = {"reference_end_at": "sill top", "far_end_at": "plate underside"}
    post = timber("post", at=at, length=None, **ends)
    built = frame(
        post,
        lines={"line 2": "line 1 + bay", "line 1": "2'"},
        lengths={"bay": "10'"},
        levels={"plate underside": "sill top + 8'", "sill top": "1'"},
        sections={"post": "7 x 7"},
        inner={"post": "6 x 6-1/2"},
    )
    place = built.place("post")
    assert place is not None
    assert place.origin == tuple(each.nm for each in lengths("11' 5-1/2", "6", "1'"))


def test_a_timber_without_a_place_stands_nowhere() -> None:
    """It has its length, and that is all."""
    built = frame(timber("post"))
    assert built.place("post") is None
    assert built.stick("post").body == length("7' 11")


@pytest.mark.parametrize("reference_end", ["foot", "head"])
def test_a_raking_timber_starts_at_either_end_of_its_arris(reference_end: str) -> None:
    """Its body is the arris itself, and its zero at the end it is measured from."""
    incline = {
        "foot": {"east": "1'", "north": "2'", "up": "3'"},
        "towards": "east",
        "run": "4'",
        "rise": "3'",
    }
    faces = {"first_face": "up", "second_face": "south", "reference_end": reference_end}
    built = frame(timber("brace", incline=incline, length=None, **faces))
    place = built.place("brace")
    assert place is not None
    ends = {"foot": ("1'", "2'", "3'"), "head": ("5'", "2'", "6'")}
    assert place.origin == tuple(each.nm for each in lengths(*ends[reference_end]))
    assert built.stick("brace").body == length("5'")


def test_what_nothing_settles_is_a_misuse() -> None:
    """A project file is refused before it comes to this; the words still say which timber."""
    with pytest.raises(ValueError, match="nothing settles where Post starts and ends"):
        posted().place("post")
    with pytest.raises(ValueError, match="Post has no length"):
        posted(foot()).place("post")
    with pytest.raises(ValueError, match="Post does not say where its arris lies east"):
        posted(foot(), head(), post={"at": {"north": "0"}})._site.arris("post", Direction.EAST)
    built = posted(foot(), head())
    with pytest.raises(ValueError, match="Post does not rake"):
        built._site._raking(built.timber("post"))


def _face(built: Frame, face: Face) -> tuple[float, float, float]:
    """The outward normal of a raking timber's face, one long, and where its foot edge is on it."""
    flat = built.face("brace", face, "foot")
    steep = hypot(*flat.normal)
    east, north, up = (part / steep for part in flat.normal)
    return east, north, up


def test_a_raking_face_looks_square_to_the_rake() -> None:
    """Rising 3 in 4 to the east, the upper face looks 3 back and 4 up, and lies on the arris."""
    built = frame(
        timber(
            "brace",
            section="5 x 4",
            first_face="up",
            second_face="south",
            reference_end="foot",
            length=None,
            incline={
                "foot": {"east": "0", "north": "0", "up": "0"},
                "towards": "east",
                "run": "4'",
                "rise": "3'",
            },
        )
    )
    assert _face(built, Face.FIRST) == pytest.approx((-0.6, 0, 0.8))
    assert _face(built, Face.FAR_FIRST) == pytest.approx((0.6, 0, -0.8))
    assert _face(built, Face.SECOND) == pytest.approx((0, -1, 0))
    upper, lower = (built.face("brace", face, "foot") for face in (Face.FIRST, Face.FAR_FIRST))
    assert upper.offset == 0
    assert lower.offset / hypot(*lower.normal) == pytest.approx(length("5").nm)


@pytest.mark.parametrize(
    ("end", "into", "look"),
    [
        ("foot", {"first_face": "south", "second_face": "west"}, "east"),
        ("head", {"first_face": "south", "second_face": "west"}, "west"),
        ("head", {"reference_end": "west", "first_face": "up", "second_face": "south"}, "down"),
        ("foot", {"reference_end": "west", "first_face": "up", "second_face": "south"}, "up"),
        ("head", {"reference_end": "south", "first_face": "up", "second_face": "west"}, "west"),
    ],
)
def test_the_face_a_rake_runs_into(end: str, into: dict[str, object], look: str) -> None:
    """Rising east: an upright and a crossing timber by their side, one alongside by top or foot."""
    brace = timber(
        "brace",
        first_face="down",
        second_face="south",
        reference_end="foot",
        length=None,
        incline={
            "foot": {"east": "0", "north": "0", "up": "0"},
            "towards": "east",
            "run": "4'",
            "rise": "3'",
        },
    )
    other = timber("other", **into)
    found = entry_face(brace, ENDS[end], other)
    assert other.pose.direction(found).word == look


def _raking(name: str, foot: tuple[str, str], towards: str, slope: tuple[str, str]) -> Timber:
    """A timber 6" deep whose top edge rises from a point so far east and up."""
    return timber(
        name,
        section="6 x 4",
        first_face="up",
        second_face="south",
        length=None,
        incline={
            "foot": {"east": foot[0], "north": "0", "up": foot[1]},
            "towards": towards,
            "run": slope[0],
            "rise": slope[1],
        },
    )


@pytest.mark.parametrize(
    ("end", "towards", "slope", "enters"),
    [
        ("head", "west", ("4'", "3'"), "down"),
        ("foot", "west", ("4'", "3'"), "up"),
        ("head", "east", ("4'", "1'"), "down"),
        ("head", "east", ("4'", "5'"), "up"),
        ("foot", "east", ("4'", "1'"), "up"),
        ("foot", "east", ("4'", "5'"), "down"),
    ],
)
def test_a_rake_into_another_meets_its_top_or_its_underside(
    end: str, towards: str, slope: tuple[str, str], enters: str
) -> None:
    """Rising 3 in 4 east: up under one that rises less or towards it, on top of a steeper."""
    strut = _raking("strut", ("0", "0"), "east", ("4'", "3'"))
    rafter = _raking("rafter", ("0", "5'"), towards, slope)
    joint = joggle_joint(timber="strut", end=end, into="rafter")
    (bearing,) = joint.bearings()
    face = frame(strut, rafter, joint).entry(bearing)
    assert rafter.pose.direction(face).word == enters


@pytest.mark.parametrize(("size", "east"), [("6", 43.0), ("6-3/4", 42.375)])
def test_a_strut_ends_where_its_arris_meets_the_underside_of_a_rafter(
    size: str, east: float
) -> None:
    """Worked by hand: two that rise 3 in 4 towards one another, 8' apart.

    The rafter's underside lies its depth / 0.8 under its top: at 72" - 7-1/2" less 3/4 of the way
    east. The strut's arris is at 3/4 of it: they meet 43" east, and less if the rafter is deeper.
    """
    strut = _raking("strut", ("0", "0"), "east", ("8'", "6'"))
    rafter = _raking("rafter", ("8'", "0"), "west", ("8'", "6'"))
    joint = joggle_joint(timber="strut", end="head", into="rafter")
    built = frame(strut, rafter, joint, real={"rafter": real({joint.mortise: {"first": size}})})
    assert abs(built.stick("strut").body.nm - round(east / 0.8 * length("1").nm)) < 3
    assert built.face("rafter", Face.FAR_FIRST, joint.mortise).normal[2] < 0
