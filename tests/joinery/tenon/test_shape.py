"""The tenon on its real stick: reference sides hold, far sides follow."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import TenonShape, feature_id, meeting, shape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.progress import Measured
from benchmate.model.solids import Axis
from tests.builders import corners, frame, length, lengths, real, sill, tenon, timber
from tests.corner import measured


def _shape(built: Frame, work: str = "post-foot") -> TenonShape:
    joint = next(found for found in built.project.works if found.id == work)
    assert isinstance(joint, TenonJoint)
    return shape(joint, built)


def _alone(measured: Real | None = None, **words: object) -> TenonShape:
    return _shape(frame(timber("post"), tenon(**words), real={"post": measured or real()}))


def test_the_cheeks_of_the_check_post() -> None:
    """Common practice, no source: 6 x 6, cheeks at 2" and 4" from the first face."""
    for work in ("sw-foot", "sw-head", "se-foot", "se-head"):
        found = _shape(corners(), work)
        assert found.cheeks is Axis.FIRST
        assert (found.near, found.far, found.thickness) == (length("2"), length("4"), length("2"))


def test_an_oversize_stick_is_deeper_on_the_off_side_only() -> None:
    """Common practice, no source: a stick of 6-1/16" reads 2 and 4; the off side is 2-1/16"."""
    found = _shape(corners({"post-se": real({"foot-tenon": {"first": "6-1/16"}})}), "se-foot")
    assert (found.near, found.far) == (length("2"), length("4"))
    assert found.real_cheeks - found.far == length("2-1/16")


@pytest.mark.parametrize(
    ("inner", "actual", "off"),
    [("7-1/2", "7-7/8", "3/8"), ("7-1/2", "8-1/4", "3/4")],
    ids=["trade.md 7.5 row 34 (TFDIY-notation)", "trade.md 7.5 row 35 (TFDIY-notation)"],
)
def test_what_comes_off_the_far_side_is_actual_less_inner(
    inner: str, actual: str, off: str
) -> None:
    """The far line holds at the inner size, and the rest of the real stick comes off."""
    found = _alone(real({"all": {"first": actual}}), set_back="0", thickness=inner)
    assert found.far == length(inner)
    assert found.real_cheeks - found.far == length(off)


def test_a_planed_stick_is_what_it_measures() -> None:
    """An 8 x 8 planed 1/4" on each face is 7-1/2" (TFHQ-rules, trade.md 7.5 row 37)."""
    planed = length("8") - length("1/4") * 2
    typed = real({"all": {"first": planed.exact_text(), "second": planed.exact_text()}})
    found = _shape(frame(timber("post", section="8 x 8"), tenon(), real={"post": typed}))
    assert (found.real_cheeks, found.real_edges) == (length("7-1/2"), length("7-1/2"))
    assert found.width == length("7-1/2")


def test_a_relief_leaves_the_rest_of_the_width() -> None:
    """Common practice, no source: 1-1/4" off the outside narrow edge of 6" leaves 4-3/4"."""
    for work in ("sw-foot", "se-foot"):
        found = _shape(corners(), work)
        assert (found.edge, found.width) == (length("1-1/4"), length("4-3/4"))
        assert not found.far_edge_struck


def test_the_relief_is_on_the_outside_of_either_corner() -> None:
    """The mirrored post has its relief on the mirrored edge."""
    for work, outside in (("sw-foot", "West face"), ("se-foot", "East face")):
        found = _shape(corners(), work)
        assert found.edges is Axis.SECOND
        assert found.stick.pose.words(Face.SECOND) == outside


def test_all_round_comes_off_both_narrow_edges() -> None:
    """Common practice, no source: 1/2" all round on the head tenon leaves 5" of a 6" face."""
    found = _shape(corners(), "sw-head")
    assert (found.edge, found.far_edge) == (length("1/2"), length("5-1/2"))
    assert found.width == length("5")


@pytest.mark.parametrize(("cheeks", "far_edge"), [("first", "7"), ("second", "5")])
def test_a_far_relief_is_taken_off_the_side_it_lies_on(cheeks: str, far_edge: str) -> None:
    """On a 6 x 8 post the far edge lies 8" in behind cheeks from the first face, else 6"."""
    joint = tenon(cheeks_from=cheeks, relief_far="1")
    found = _shape(frame(timber("post", section="6 x 8"), joint))
    assert found.far_edge == length(far_edge)


def test_a_relief_counts_instead_of_all_round_on_its_own_edge() -> None:
    """1-1/4" on the reference edge and 1/2" all round: 1-1/4" there and 1/2" on the far edge."""
    found = _alone(relief_reference="1-1/4", all_round="1/2")
    assert (found.edge, found.far_edge) == (length("1-1/4"), length("5-1/2"))
    found = _alone(relief_far="1-1/4", all_round="1/2")
    assert (found.edge, found.far_edge) == (length("1/2"), length("4-3/4"))


@given(measured(5, 9), st.sampled_from(["first", "second"]))
def test_struck_lines_do_not_move_with_the_stick(size: Measured, cheeks: str) -> None:
    """Law 2: u and v grow from the arris; an odd stick changes only what is beyond the lines."""
    words = {"cheeks_from": cheeks, "relief_reference": "1", "relief_far": "1-1/2"}
    typed = {"post": Real({"foot-tenon": size})}
    built = frame(timber("post", section="6 x 7"), tenon(**words), real=typed)
    found, drawn = _shape(built), _shape(frame(timber("post", section="6 x 7"), tenon(**words)))
    held = ("near", "far", "edge", "far_edge", "width", "thickness", "shoulder", "length")
    assert [getattr(found, name) for name in held] == [getattr(drawn, name) for name in held]
    stick = built.stick("post")
    assert found.real_cheeks == stick.depth(found.cheeks, "foot-tenon")
    assert found.real_edges == stick.depth(found.edges, "foot-tenon")


def test_an_edge_without_relief_runs_out_to_the_real_face() -> None:
    """Nothing is cut back there, so the tenon is as wide as the stick is."""
    found = _alone(real({"foot-tenon": {"second": "6-1/8"}}), relief_reference="1")
    assert (found.far_edge, found.width) == (length("6-1/8"), length("5-1/8"))


def test_the_nearest_measured_place_counts() -> None:
    """At a tenon its own section comes before its end's, and that before the whole stick's."""
    sizes = {"all": {"first": "6-1/4"}}
    assert _alone(real(sizes)).real_cheeks == length("6-1/4")
    sizes["foot"] = {"first": "6-1/8"}
    assert _alone(real(sizes)).real_cheeks == length("6-1/8")
    sizes["foot-tenon"] = {"first": "6-1/16"}
    assert _alone(real(sizes)).real_cheeks == length("6-1/16")
    assert _alone(real(sizes)).real_edges == length("6")


def test_tenons_lie_beyond_their_shoulders() -> None:
    """x is zero at the reference shoulder, so its tenon ends at minus its length (law 2)."""
    foot, head = _shape(corners(), "sw-foot"), _shape(corners(), "sw-head")
    assert (foot.end, foot.shoulder, foot.along(foot.length)) == (
        Face.REFERENCE_END,
        ZERO,
        -length("5"),
    )
    assert (head.end, head.shoulder, head.along(head.length)) == (
        Face.FAR_END,
        length("7' 11"),
        length("8' 3"),
    )


def test_a_size_as_cut_beats_the_size_as_laid_out() -> None:
    """Law 5, size by size; one that was not typed stays as laid out."""
    typed = real(as_cut={"foot-tenon": {"width": "4-3/4"}})
    found = _alone(typed, relief_reference="1")
    assert found.real("width") == length("4-3/4")
    assert (found.real("thickness"), found.real("length")) == (length("2"), length("5"))


def test_a_post_that_stands_alone_says_where_its_cheeks_come_from() -> None:
    """Without a receiving timber the first face counts unless the joint names the second."""
    axes = [_alone(cheeks_from=side).cheeks for side in (None, "first", "second")]
    assert axes == [Axis.FIRST, Axis.FIRST, Axis.SECOND]
    joint = tenon()
    assert meeting(joint, frame(timber("post"), joint)) is None


def test_a_tenon_s_id_follows_its_end() -> None:
    """The id names the end, in words that no renaming changes."""
    ids = [feature_id(tenon(end=end)) for end in ("foot", "head", "west")]
    assert ids == ["foot-tenon", "head-tenon", "west-end-tenon"]


def test_relish_of_width_goes_below_zero_rather_than_to_nothing() -> None:
    """Law 7: reliefs wider than the tenon leave a width below zero, never a clamped one."""
    found = _alone(relief_reference="4", relief_far="3")
    assert found.width == Length.inches(-1)


SQUARE_POST = {"rule": "square", "section": "8 x 8", "inner": "7-1/2 x 7"}
SQUARE_SILL = {"rule": "square", "section": "10 x 10", "inner": "9-1/2 x 9-1/2"}


def _square(
    *, post: dict[str, str] | None = None, receiver: dict[str, str] | None = None, **words: object
) -> TenonShape:
    """A post by square rule in the underside of a sill by square rule, measured at the joint."""
    joint = tenon(**({"end": "head", "into": "sill", "at": "4'"} | words))
    sizes = {
        "post": real({"head-tenon": post or {}}),
        "sill": real({"post-foot-mortise": receiver or {}}),
    }
    built = frame(timber("post", **SQUARE_POST), sill(**SQUARE_SILL), joint, real=sizes)
    return _shape(built)


@given(measured(8, 9))
def test_by_square_rule_the_tenon_is_the_inner_timber_s(size: Measured) -> None:
    """Law 2: it is taken down to the inner size on the far side, so every stick's is alike."""
    typed = {"post": Real({"head-tenon": size})}
    joint = tenon(end="head", into="sill", at="4'")
    found = _shape(frame(timber("post", **SQUARE_POST), sill(), joint, real=typed))
    assert (found.edge, found.far_edge, found.width) == lengths("0", "7", "7")
    assert found.far_edge_struck
    assert (found.framed_cheeks, found.framed_edges) == lengths("7-1/2", "7")


def test_by_square_rule_a_far_relief_comes_off_the_inner_timber() -> None:
    """1" off the far edge of an inner 7" leaves the line at 6", whatever the stick."""
    for second in ("7", "8-1/8"):
        found = _square(post={"second": second}, relief_far="1")
        assert found.far_edge == length("6")


@pytest.mark.parametrize(
    ("end", "housing", "actual", "recess"),
    [
        ("head", "0", "9-1/2", "0"),
        ("head", "0", "9-7/8", "3/8"),
        ("head", "1/2", "10-1/4", "1-1/4"),
        ("foot", "0", "10-1/4", "0"),
        ("foot", "1/2", "10-1/4", "1/2"),
    ],
)
def test_the_end_goes_in_through_what_the_receiver_is_over(
    end: str, housing: str, actual: str, recess: str
) -> None:
    """Trade.md 1.3: on a reference face the housing alone; on a far one actual - inner as well."""
    found = _square(end=end, housing=housing, receiver={"first": actual})
    assert found.recess == length(recess)


@pytest.mark.parametrize(
    ("inner", "actual", "off"),
    [("7-1/2", "7-7/8", "3/8"), ("7-1/2", "8-1/4", "3/4")],
    ids=["trade.md 7.5 row 34 (TFDIY-notation)", "trade.md 7.5 row 35 (TFDIY-notation)"],
)
def test_a_housed_end_is_reduced_to_its_inner_timber(inner: str, actual: str, off: str) -> None:
    """Cut depth = actual - inner, on the far faces alone, as far back as the end goes in."""
    reduced = _square(post={"first": actual, "second": "7-1/4"}, housing="1/2").reduction
    assert reduced.to == {Axis.FIRST: length(inner), Axis.SECOND: length("7")}
    assert (reduced.deep(Axis.FIRST), reduced.deep(Axis.SECOND)) == lengths(off, "1/4")
    assert reduced.length == length("1")
    assert reduced.stop == length("7' 11") - length("1")


@pytest.mark.parametrize(
    ("thickness", "relief", "struck"),
    [
        ("2", "0", {Axis.SECOND: "far-edge"}),
        ("2", "1", {}),
        ("5-1/2", "0", {Axis.FIRST: "far-cheek", Axis.SECOND: "far-edge"}),
    ],
    ids=["an edge at the inner timber", "relieved", "a cheek there too"],
)
def test_a_line_the_tenon_has_at_the_inner_timber_is_not_struck_twice(
    thickness: str, relief: str, struck: dict[Axis, str]
) -> None:
    """One line on the wood serves the tenon and the reduction."""
    found = _square(housing="1/2", thickness=thickness, relief_far=relief)
    assert found.reduction.struck == struck


def test_an_end_that_goes_in_nowhere_is_not_reduced() -> None:
    """A foot on the top of a sill keeps its full section, by either rule."""
    assert _square(end="foot").reduction.to == {}
    joint = tenon(into="sill", at="4'", housing="1/2")
    assert _shape(frame(timber("post"), sill(), joint)).reduction.to == {}


def test_where_both_have_places_those_say_where_they_meet() -> None:
    """Law 3: the crossing typed and the crossing of two places are the same meeting."""
    typed = frame(
        timber("post", length="8'"), sill(), tenon(into="sill", at="5'", inset="1", housing="1/2")
    )
    placed = frame(
        timber("post", length="8'", at={"east": "7'", "north": "1"}),
        sill(length=None, at={"north": "0", "up": "2'"}, reference_end_at="2'", far_end_at="18'"),
        tenon(into="sill", housing="1/2"),
    )
    met = [meeting(found, built) for built in (typed, placed) for found in _tenons(built)]
    assert met[0] == met[1]
    assert met[0] is not None
    assert (met[0].at, met[0].inset) == lengths("5'", "1")


def _tenons(built: Frame) -> list[TenonJoint]:
    return [found for found in built.project.works if isinstance(found, TenonJoint)]
