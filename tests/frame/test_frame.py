"""A project with its real sticks."""

from dataclasses import replace

import pytest
from hypothesis import given, settings

from benchmate.frame.frame import Frame, Real, real_of
from benchmate.frame.levels import LevelError
from benchmate.joinery.joist_tenon.record import TuskTenon
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.record import NO_INSET, TenonJoint
from benchmate.measure.length import ZERO, Length
from benchmate.measure.section import read_section
from benchmate.measure.sums import read_sum
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Line
from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.model.project import Timber
from benchmate.model.work import Abutment, Bearing
from tests.builders import chamfer, corners, frame, length, lengths, real, sill, tenon, timber
from tests.floor import Floor
from tests.frame.standing import Between, between
from tests.joinery.joist_tenon.joints import tusk_tenon
from tests.joinery.rafter.roofs import Roof, built, pair, peak, tail
from tests.joinery.scarf.plates import plate
from tests.joinery.tenon.sill_corners import sill_corner


def test_the_check_post_is_8_feet_8_overall() -> None:
    """Common practice, no source: 5" + 7' 11" + 4" = 8' 8"."""
    for post in ("post-sw", "post-se"):
        stick = corners().stick(post)
        assert (stick.near, stick.body, stick.far) == (length("5"), length("7' 11"), length("4"))
        assert stick.overall == length("8' 8")


@pytest.mark.parametrize(
    ("length_is", "typed"), [("overall", "8' 8"), ("shoulder to shoulder", "7' 11")]
)
def test_either_length_makes_the_same_stick(length_is: str, typed: str) -> None:
    """Shoulder to shoulder and overall are two lengths of one post."""
    post = timber("post", length=typed, length_is=length_is)
    stick = frame(post, tenon(), tenon(id="post-head", end="head", length="4")).stick("post")
    assert (stick.body, stick.overall) == (length("7' 11"), length("8' 8"))


@pytest.mark.parametrize(("end", "near", "far"), [("foot", "5", "4"), ("head", "4", "5")])
def test_the_reference_end_s_tenon_is_the_near_one(end: str, near: str, far: str) -> None:
    """Turning the reference end over swaps which tenon lies before zero."""
    joints = (tenon(), tenon(id="post-head", end="head", length="4"))
    stick = frame(timber("post", reference_end=end), *joints).stick("post")
    assert (stick.near, stick.far) == (length(near), length(far))


@pytest.mark.parametrize("order", [1, -1])
def test_the_longest_tenon_at_an_end_sets_the_stick(order: int) -> None:
    """Wood has to be there for the longest, whichever stands first in the file."""
    joints = (tenon(length="3"), tenon(id="post-spur", length="5"))[::order]
    assert frame(timber("post"), *joints).stick("post").near == length("5")


def test_a_length_may_be_a_sum_of_names() -> None:
    """A post between two levels is as long as they are apart."""
    levels = {"sill top": "1' 4", "plate underside": "sill top + 7' 11"}
    post = timber("post", length="plate underside - sill top")
    assert frame(post, levels=levels).stick("post").body == length("7' 11")
    with pytest.raises(LevelError):
        frame(post).stick("post")


def test_a_mortised_timber_gets_no_longer() -> None:
    """Only the tenoned timber needs wood beyond its shoulder."""
    stick = corners().stick("sill")
    assert (stick.near, stick.far, stick.overall) == (ZERO, ZERO, length("16'"))


def test_a_named_section_is_looked_up() -> None:
    """Several timbers may share one section by its name."""
    built = frame(timber("post", section="post"), sections={"post": "7 x 6-1/2"})
    assert built.stick("post").nominal == read_section("7 x 6-1/2")
    with pytest.raises(KeyError):
        frame(timber("post", section="joist")).stick("post")


def test_real_sizes_reach_their_own_stick() -> None:
    """What was measured on one post says nothing about the other."""
    built = corners({"post-se": real({"all": {"first": "6-1/8"}}, {"foot-tenon": {"width": "4"}})})
    assert built.stick("post-se").section().first == length("6-1/8")
    assert built.stick("post-se").as_cut["foot-tenon"].width == length("4")
    assert built.stick("post-sw").section().first == length("6")
    assert not built.stick("post-sw").as_cut


def test_a_progress_holds_the_real_sizes() -> None:
    """The frame is built from what is kept for each timber."""
    kept = Progress(
        timber="post",
        measured={"all": Measured(first=length("6-1/8"))},
        as_cut={"foot-tenon": AsCut(width=length("4"))},
    )
    assert real_of(kept) == Real(kept.measured, kept.as_cut)


def test_works_are_listed_once_on_each_timber_they_touch() -> None:
    """In file order, and none on a timber without any."""
    built = corners()
    assert [work.id for work in built.works_on("post-sw")] == [
        "sw-foot",
        "sw-head",
        "inside-chamfer",
    ]
    assert [work.id for work in built.works_on("sill")] == ["sw-foot", "se-foot"]
    assert frame(sill()).works_on("sill") == ()


def test_work_is_settled_by_the_timbers_it_is_for() -> None:
    """What a joint leaves to a rule of proportion is worked out before its tenon is counted."""
    made = Floor(beam="9 x 8", joist="9 x 4").frame(tusk_tenon())
    (joint,) = made.works_on("joist")
    assert isinstance(joint, TuskTenon)
    assert joint.length == length("3")
    assert made.stick("joist").near == length("3")
    assert made.project.works[0] != joint, "what is stored still leaves it open"


def test_the_neighbours_of_a_timber() -> None:
    """What a changed stick may change: itself and the timbers it meets."""
    assert corners().neighbours("sill") == ("sill", "post-sw", "post-se")
    assert corners().neighbours("post-sw") == ("post-sw", "sill", "plate")
    assert frame(timber("post"), chamfer()).neighbours("post") == ("post",)


def test_unknown_timbers_and_names() -> None:
    """Asking for what is not there is a misuse, and says which."""
    for ask in (corners().timber, corners().stick):
        with pytest.raises(KeyError, match="rafter"):
            ask("rafter")
    with pytest.raises(LevelError, match="ridge"):
        corners().value(read_sum("ridge + 1"))


def test_a_stick_is_worked_out_once() -> None:
    """Asking again gives the same stick."""
    built = corners()
    assert built.stick("sill") is built.stick("sill")
    assert built.timber("sill").id == "sill"


def test_inputs_hold_while_marks_do() -> None:
    """They change with a real size of the timber or of one it meets, and with nothing else."""
    typed = {"post-sw": real(as_cut={"foot-tenon": {"width": "4"}})}
    before, after = corners(), corners(typed)
    changed = {t.id for t in before.project.timbers if before.inputs(t.id) != after.inputs(t.id)}
    assert changed == {"post-sw", "sill", "plate"}


# Timbers that have places.


@settings(max_examples=150)
@given(between(ways=(("meets", "meets"),)))
def test_a_joint_follows_from_places_as_from_figures_typed(case: Between) -> None:
    """Law 3: the same cuts and lines on both timbers, whichever way the frame is written."""
    placed, typed = case.frame(), case.typed()
    for one, other in zip(joints(placed), joints(typed), strict=True):
        for sides in zip(features(one, placed), features(other, typed), strict=True):
            here, there = sides
            assert (here.cuts, bare(here.lines)) == (there.cuts, bare(there.lines))
            assert (here.at, here.sizes) == (there.at, there.sizes)
        (bearing,) = one.bearings()
        met = placed.meeting(bearing, at=None, inset=NO_INSET)
        assert met == typed.meeting(bearing, at=other.at, inset=other.inset)


def bare(lines: tuple[Line, ...]) -> list[Line]:
    """Lines without cautions: only a placed timber warns of faces that are not measured yet."""
    return [replace(line, caution="") for line in lines]


def joints(built: Frame) -> list[TenonJoint]:
    """The tenons of a frame, in file order."""
    return [work for work in built.project.works if isinstance(work, TenonJoint)]


@given(between())
def test_a_placed_stick_is_the_one_its_length_would_make(case: Between) -> None:
    """Settled by what it meets or typed: the same body, and the same wood beyond it."""
    placed, typed = (built.stick("stick") for built in (case.frame(), case.typed()))
    assert (placed.near, placed.body, placed.far) == (typed.near, typed.body, typed.far)
    assert (placed.placed, typed.placed) == (True, False)


AT = {"east": "4'", "north": "0"}


def girt(**words: object) -> Timber:
    """An 8 x 8 that runs 16' east, its top at 9'."""
    at = {"north": "0", "up": "9'"}
    ends = {"reference_end_at": "0", "far_end_at": "16'", "length": None}
    return sill(**({"id": "girt", "name": "Girt", "at": at} | ends | words))


def standing(*parts: Timber | TenonJoint, real: dict[str, Real] | None = None) -> Frame:
    """A post from the zero level up to a girt, whose underside is at 8' 4"."""
    post = timber("post", at=AT, reference_end_at="0", length=None)
    head = tenon(id="post-head", end="head", into="girt", housing="1")
    return frame(post, girt(), head, *parts, real=real)


def test_what_an_end_bears_in() -> None:
    """The joint in another timber at that end; nothing at the other, nor on the other timber."""
    built = standing()
    found = Bearing("post", Direction.UP, "girt", length("1"), "post-head-mortise")
    assert built.bearing("post", Direction.UP) == found
    assert built.bearing("post", Direction.DOWN) is None
    assert built.bearing("girt", Direction.WEST) is None
    assert built.bearing("girt", Direction.UP) is None


def test_where_an_end_stops_at_another_stick_of_its_line() -> None:
    """The scarf at that end of either stick; nothing at the others, nor without a place."""
    built = plate()
    found = built.abutment("one", Direction.EAST)
    assert found == Abutment("one", Direction.EAST, "other", read_sum("14'"), length("18"))
    assert built.abutment("other", Direction.WEST) == found._replace(
        timber="other", end=Direction.WEST, to="one"
    )
    assert built.abutment("one", Direction.WEST) is None
    assert built.abutment("other", Direction.EAST) is None
    alone = plate(one={"at": None, "length": "14'", "reference_end_at": None})
    assert alone.abutment("one", Direction.EAST) is None


def test_a_stick_knows_which_of_its_ends_are_lapped() -> None:
    """The scarfed end of either stick, and no tenoned one."""
    built = plate()
    assert built.stick("one").lapped == (Face.FAR_END,)
    assert built.stick("other").lapped == (Face.REFERENCE_END,)
    assert standing().stick("post").lapped == ()


def test_only_a_timber_with_a_place_has_its_ends_settled_by_what_they_meet() -> None:
    """Without one its length is typed, and the joint says nothing of it."""
    foot = tenon(into="sill", at="4'", housing="1", scribed=True)
    built = frame(timber("post"), sill(), foot)
    assert built.bearing("post", Direction.DOWN) is None
    assert built.stick("post").near_housed == ZERO
    assert built.stick("post").body == length("7' 11")


def test_a_stick_knows_how_much_of_it_is_housed() -> None:
    """One inch of the post's body lies inside the girt, at its far end."""
    stick = standing().stick("post")
    assert (stick.near_housed, stick.far_housed) == lengths("0", "1")
    assert stick.body == length("8' 5")
    assert stick.scribed == ()


def test_a_scribed_end_is_told_apart() -> None:
    """Its shoulder is only about where it comes."""
    post = timber("post", at=AT, reference_end_at="0", length=None)
    head = tenon(id="post-head", end="head", into="girt", scribed=True)
    assert frame(post, girt(), head).stick("post").scribed == (Face.FAR_END,)


def test_a_girt_sawn_full_shortens_the_post_under_it() -> None:
    """By mill rule: 8-1/4" of girt at the joint is 1/4" less of post."""
    full = {"girt": real({"post-head-mortise": {"first": "8-1/4"}})}
    assert standing(real=full).stick("post").body == length("8' 4-3/4")


def test_the_rule_of_a_timber() -> None:
    """The project's unless it has its own, and its class's inner section likewise."""
    built = frame(
        timber("a", section="post"),
        timber("b", section="post", rule="mill"),
        timber("c", section="post", inner="5-1/2 x 5-1/2"),
        rule="square",
        sections={"post": "6 x 6"},
        inner={"post": "5-3/4 x 5-3/4"},
    )
    inner = [built.inner(built.timber(name)) for name in "abc"]
    assert inner == [read_section("5-3/4 x 5-3/4"), None, read_section("5-1/2 x 5-1/2")]
    assert [built.timber(name).square_ruled(built.project.rule) for name in "abc"] == [
        True,
        False,
        True,
    ]
    assert [built.wood(name).inner for name in "abc"] == inner
    with pytest.raises(KeyError):
        frame(timber("a"), rule="square").stick("a")


def test_neither_place_nor_length_is_a_misuse() -> None:
    """A project file is refused before it comes to this."""
    with pytest.raises(ValueError, match="Post has neither a place nor a length"):
        frame(timber("post", length=None)).stick("post")


def test_inputs_follow_places() -> None:
    """A timber that moves changes its own marks and those of the ones it meets, and no others."""
    corner = timber("corner", at={"east": "0", "north": "0"}, reference_end_at="0", length="8'")
    before = standing(corner)
    moved = standing(corner.model_copy(update={"far_end_at": read_sum("9'"), "length": None}))
    post, _, _ = before.project.timbers
    high = girt(at={"north": "0", "up": "9' 1"})
    raised = frame(post, high, corner, *joints(before))
    ids = (each.id for each in raised.project.timbers)
    changed = {each for each in ids if before.inputs(each) != raised.inputs(each)}
    assert changed == {"post", "girt"}
    assert before.inputs("post") == moved.inputs("post")
    assert before.inputs("corner") != moved.inputs("corner")


def test_inputs_follow_the_names_in_a_place() -> None:
    """A line that moves, moves what stands on it, though no word of the timber changes."""
    post = timber("post", at={"east": "line 1", "north": "0"}, reference_end_at="0", length="8'")
    here, there = (frame(post, lines={"line 1": east}) for east in ("1'", "2'"))
    assert here.inputs("post") != there.inputs("post")
    assert here.inputs("post") == frame(post, lines={"line 1": "12"}).inputs("post")


def test_a_joint_touches_the_timbers_it_goes_through() -> None:
    """A post's tenon through an end sill's is work on that sill too, and they are neighbours."""
    built = sill_corner()
    assert [work.id for work in built.works_on("end")] == ["end-sill", "post-foot"]
    assert [work.id for work in built.works_on("post")] == ["post-foot"]
    post_foot, end_sill = built.works_on("end")[1], built.works_on("end")[0]
    assert built.cut_through(post_foot) == (end_sill,)
    assert built.cut_through(end_sill) == ()
    for timber_id in ("post", "end", "long"):
        assert set(built.neighbours(timber_id)) == {"post", "end", "long"}


@pytest.mark.parametrize("timber_id", ["post", "end", "long"])
def test_inputs_follow_what_a_joint_goes_through(timber_id: str) -> None:
    """Each of the three is laid out anew when the record or the sizes of either other change."""
    before = sill_corner().inputs(timber_id)
    assert sill_corner().inputs(timber_id) == before
    assert sill_corner(sill={"set_back": "1"}).inputs(timber_id) != before
    assert sill_corner(stub={"set_back": "1"}).inputs(timber_id) != before
    cut = real(as_cut={"foot-tenon": {"width": "3"}})
    assert sill_corner(real={"post": cut}).inputs(timber_id) != before
    cut = real(as_cut={"south-end-tenon": {"width": "3"}})
    assert sill_corner(real={"end": cut}).inputs(timber_id) != before


def test_a_joint_that_is_not_there_is_gone_through_by_none() -> None:
    """A name that leads nowhere is told elsewhere."""
    built = sill_corner(stub={"meets": ("end-sil", "end-sill")})
    (joint,) = (work for work in built.project.works if work.id == "post-foot")
    assert [work.id for work in built.cut_through(joint)] == ["end-sill"]


def test_a_plumb_tip_is_as_deep_as_the_stick_really_is() -> None:
    """Nothing reduces a free end: at 12 in 12 it reaches out as far as it measures there."""
    sticks = {"rafter": real({"foot-tail": {"first": "6-1/4"}})}
    assert built(Roof(), tail()).stick("rafter").near == length("6")
    assert built(Roof(), tail(), real=sticks).stick("rafter").near == length("6-1/4")


def test_a_level_cut_takes_the_lower_corner_off_a_plumb_tip() -> None:
    """4" of it at 3-4-5 leave 3.6" of 6" in depth, and 2.7" of the 4-1/2" it would reach."""
    cut = tail(cut="plumb and level", level="4")
    reach = built(Roof(rise="9"), cut).stick("rafter").near
    assert reach == Length(length("2-1/2").nm + length("1").nm // 5)


def test_a_tip_may_run_along_the_top_of_another_timber() -> None:
    """At 9 in 12 a lapped head goes on 1-3/4" to the top of its mate, on the underside."""
    made = pair(Roof(rise="9"), Roof(rise="9", heading="west"), peak())
    assert abs((made.stick("rafter").far - length("1-3/4")).nm) <= 2
