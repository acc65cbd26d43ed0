"""The mortise is where its tenon goes, whichever way the two timbers stand."""

import pytest
from hypothesis import given, settings

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.mortise_shape import MortiseShape, mortise_shape
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import meeting, shape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.feature import Feature
from benchmate.model.solids import Axis
from tests.builders import corners, frame, length, line, real, sill, tenon, timber
from tests.corner import Corner, corner
from tests.space import TOWARDS


@settings(max_examples=400)
@given(corner())
def test_every_mortise_is_its_tenon_and_the_clearance(case: Corner) -> None:
    """Law 3: one joint, two timbers; in the building the mortise is the tenon, and deeper."""
    clearance = case.joint.bottom_clearance or ZERO
    assert case.mortise_in_building() == case.tenon_in_building(beyond=clearance.nm)


@settings(max_examples=100)
@given(corner())
def test_the_mortise_is_entered_from_the_side_the_post_stands_on(case: Corner) -> None:
    """The face a mortise is cut in looks against the way its tenon goes in."""
    axis, sense = TOWARDS[case.end]
    _, mortised = case.sides
    (entry,) = line(mortised.lines, "depth").faces
    looks = case.frame.stick("receiver").pose.direction(entry)
    assert TOWARDS[looks.word] == (axis, -sense)


def _mortise(built: Frame, work: str) -> MortiseShape:
    joint = next(found for found in built.project.works if found.id == work)
    assert isinstance(joint, TenonJoint)
    met = meeting(joint, built)
    assert met is not None
    assert joint.into is not None
    own = joint.bottom_clearance
    clearance = built.project.practice.bottom_clearance if own is None else own
    receiver = built.stick(joint.into)
    return mortise_shape(joint.mortise, shape(joint, built), met, receiver, clearance)


def _feature(built: Frame, work: str) -> Feature:
    joint = next(found for found in built.project.works if found.id == work)
    assert isinstance(joint, TenonJoint)
    return features(joint, built)[1]


def test_the_relief_as_cut_puts_the_mortise_in_from_the_end() -> None:
    """Common practice, no source: cut back 1-1/4", it starts there and runs 4-3/4"."""
    for size in (real(), real(as_cut={"foot-tenon": {"width": "4-3/4"}})):
        cut = _mortise(corners({"post-sw": size}), "sw-foot")
        assert cut.along == (length("1-1/4"), length("6"))
        assert cut.relish == (length("1-1/4"), Face.REFERENCE_END)


def test_the_other_corner_s_mortise_lies_in_from_the_other_end() -> None:
    """Common practice, no source: at the east end 1-1/4" is left to the far end."""
    cut = _mortise(corners(), "se-foot")
    assert cut.along == (length("15' 6"), length("15' 10-3/4"))
    assert cut.relish == (length("1-1/4"), Face.FAR_END)


@pytest.mark.parametrize(
    ("size", "typed", "along", "across", "depth"),
    [
        ("width", "4-11/16", ("1-1/4", "5-15/16"), ("2", "4"), "5-1/8"),
        ("thickness", "1-15/16", ("1-1/4", "6"), ("2", "3-15/16"), "5-1/8"),
        ("length", "4-7/8", ("1-1/4", "6"), ("2", "4"), "5"),
    ],
)
def test_as_cut_resizes_the_mortise_and_holds_the_reference_side(
    size: str, typed: str, along: tuple[str, str], across: tuple[str, str], depth: str
) -> None:
    """Law 5: as cut beats as drawn, and the side held is the one the tenon is measured from."""
    built = corners({"post-sw": real(as_cut={"foot-tenon": {size: typed}})})
    cut = _mortise(built, "sw-foot")
    assert cut.along == (length(along[0]), length(along[1]))
    assert cut.across == (length(across[0]), length(across[1]))
    assert cut.depth == length(depth)


@pytest.mark.parametrize(
    ("size", "typed", "drawn", "lines"),
    [
        ("width", "4-11/16", "4-3/4", ("start", "finish")),
        ("thickness", "1-15/16", "2", ("near-side", "far-side")),
        ("length", "4-7/8", "5", ("depth",)),
    ],
)
def test_the_mortise_says_what_it_follows(
    size: str, typed: str, drawn: str, lines: tuple[str, ...]
) -> None:
    """Law 5: an as-cut size says so on the steps of the mortise it changes, and on no others."""
    built = corners({"post-sw": real(as_cut={"foot-tenon": {size: typed}})})
    told = {found.id for found in _feature(built, "sw-foot").lines if f'{typed}"' in found.why}
    assert told == set(lines)
    assert all(f'{drawn}"' in line(_feature(built, "sw-foot").lines, each).why for each in lines)


def test_a_mortise_from_the_far_face_reads_its_bottom_from_the_reference_face() -> None:
    """A 2" pocket on the far side of an 8" timber: a line at 6" (FF-joist, trade.md 7.5 row 36)."""
    post = timber("post", reference_end="head")
    built = frame(
        post,
        sill(),
        tenon(end="head", into="sill", at="4'", length="2", bottom_clearance="0"),
    )
    feature = _feature(built, "post-foot")
    depth = line(feature.lines, "depth")
    assert depth.faces == (Face.FAR_FIRST,)
    assert depth.at == length("6")
    assert depth.readings[0].value == length("2")
    (cut,) = feature.cuts
    inside = (length("4' 1").nm, length("3").nm)
    assert cut.takes(inside[0], length("6").nm, inside[1])
    assert not cut.takes(inside[0], length("6").nm - 1, inside[1])


def test_an_oversize_receiver_deepens_only_what_its_far_face_bounds() -> None:
    """Law 2: a mortise entered from the far face keeps its depth, and its bottom reads deeper."""
    built = frame(
        timber("post"),
        sill(),
        tenon(end="head", into="sill", at="4'", length="2", bottom_clearance="0"),
        real={"sill": real({"post-foot-mortise": {"first": "8-1/4"}})},
    )
    cut = _mortise(built, "post-foot")
    assert (cut.depth, cut.real_into) == (length("2"), length("8-1/4"))
    feature = _feature(built, "post-foot")
    assert line(feature.lines, "depth").at == length("6-1/4")
    assert line(feature.lines, "near-side").at == length("2")


def test_the_clearance_is_the_joint_s_own_or_else_the_shop_s() -> None:
    """A joint may say how much deeper its mortise is; otherwise the shop's practice counts."""
    parts = (timber("post"), sill())
    stands = {"into": "sill", "at": "4'"}
    shop = {"bottom_clearance": "1/4"}
    depths = [
        line(_feature(frame(*parts, joint, shop=shop), "post-foot").lines, "depth")
        for joint in (tenon(**stands), tenon(**stands, bottom_clearance="0"))
    ]
    assert [found.at for found in depths] == [length("5-1/4"), length("5")]


def test_the_waste_of_a_mortise_is_between_its_lines() -> None:
    """Law 4: the mortise is one box, open at its entry, and its lines bound it."""
    feature = _feature(corners(), "sw-foot")
    (cut,) = feature.cuts
    middle = [length("3").nm, 0, length("3").nm]
    assert cut.takes(middle[0], middle[1], middle[2])
    edges = {"start": (0, -1), "finish": (0, 1), "near-side": (2, -1), "far-side": (2, 1)}
    for name, (axis, out) in edges.items():
        at = middle.copy()
        at[axis] = line(feature.lines, name).at.nm
        assert cut.takes(at[0], at[1], at[2])
        at[axis] += out
        assert not cut.takes(at[0], at[1], at[2])
    assert line(feature.lines, "depth").axis is Axis.FIRST


def test_what_is_left_below_a_mortise_is_measured_from_the_real_stick() -> None:
    """A thicker sill leaves more wood below; the depth itself holds."""
    sills = (real(), real({"all": {"first": "8-1/4"}}))
    cuts = [_mortise(corners({"sill": size}), "sw-foot") for size in sills]
    assert [cut.left_below for cut in cuts] == [length("2-7/8"), length("3-1/8")]
    assert {cut.bottom for cut in cuts} == {length("5-1/8")}


def test_every_task_of_a_mortise_is_done_at_its_entry_or_to_the_stick() -> None:
    """Knife, bore and pare name the entry face; measuring goes in from the reference faces."""
    tasks = {task.id: task.faces for task in _feature(corners(), "sw-head").tasks}
    assert tasks == {
        "section": (Face.FIRST, Face.SECOND),
        "knife": (Face.FAR_FIRST,),
        "bore": (Face.FAR_FIRST,),
        "pare-sides": (Face.FAR_FIRST,),
        "pare-ends": (Face.FAR_FIRST,),
        "try-depth": (Face.FAR_FIRST,),
    }


def test_each_task_of_a_mortise_has_the_figure_of_what_is_worked() -> None:
    """Sides across, ends along, bottom down: of two figures on one step, one is missed."""
    typed = {"width": "4-11/16", "thickness": "1-15/16", "length": "4-7/8"}
    built = corners({"post-sw": real(as_cut={"foot-tenon": typed})})
    tasks = {task.id: task for task in _feature(built, "sw-foot").tasks}
    figures = {
        name: [(reading.value, reading.hook) for reading in task.readings]
        for name, task in tasks.items()
        if name != "section"
    }
    assert figures == {
        "knife": [],
        "bore": [(length("5"), "top face")],
        "pare-sides": [(length("1-15/16"), "near side")],
        "pare-ends": [(length("4-11/16"), "start")],
        "try-depth": [(length("5"), "top face")],
    }


def test_relish_stands_beside_the_line_nearest_its_end_alone() -> None:
    """Beside the other line it would be read as the wood left there."""
    for work, near, left in (("sw-foot", "start", "west"), ("se-foot", "finish", "east")):
        lines = _feature(corners(), work).lines
        told = {
            found.id: beside.value
            for found in lines
            for beside in found.beside
            if beside.words == f"relish to the {left} end"
        }
        assert told == {near: length("1-1/4")}
        assert sum("relish" in beside.words for found in lines for beside in found.beside) == 1


def test_a_post_standing_in_from_the_receiver_s_face_moves_its_mortise_in() -> None:
    """`inset` carries the whole mortise across, and the set-back counts from the post's face."""
    joint = {"into": "sill", "at": "4'", "inset": "1/2"}
    cut = _mortise(frame(timber("post"), sill(), tenon(**joint)), "post-foot")
    assert cut.across == (length("2-1/2"), length("4-1/2"))
    assert cut.across[1] - cut.across[0] == Length.inches(2)


@pytest.mark.parametrize(
    ("words", "at", "said"),
    [
        (
            {"set_back": "0", "inset": "1-1/2"},
            "1-1/2",
            "No set-back: the tenon runs on from",
        ),
        ({"set_back": "2"}, "2", "The set-back, so that the faces come flush."),
    ],
)
def test_a_barefaced_tenon_s_mortise_has_no_set_back(
    words: dict[str, str], at: str, said: str
) -> None:
    """Its one side comes where the timber's own face does (trade.md 2.1, TFG-bare)."""
    joint = tenon(into="sill", at="4'", **words)
    side = line(features(joint, frame(timber("post"), sill(), joint))[1].lines, "near-side")
    assert side.at == length(at)
    assert side.why.startswith(said)


@pytest.mark.parametrize(
    ("at", "relish", "end"),
    [("1", "6", Face.REFERENCE_END), ("15' 5", "5", Face.FAR_END)],
)
def test_relish_runs_to_the_end_of_a_tenon(at: str, relish: str, end: Face) -> None:
    """On a sill with a tenon at either end the wood beyond its shoulders counts too."""
    joints = (
        tenon(into="sill", at=at),
        tenon(id="sill-west", timber="sill", end="west"),
        tenon(id="sill-east", timber="sill", end="east", length="4"),
    )
    cut = _mortise(frame(timber("post"), sill(), *joints), "post-foot")
    assert cut.relish == (length(relish), end)


def test_the_sides_lie_across_the_depth_that_is_across() -> None:
    """A sill 8" deep and 10" wide has 10" for the mortise's sides and 8" for its bottom."""
    built = frame(timber("post"), sill(section="8 x 10"), tenon(into="sill", at="4'"))
    cut = _mortise(built, "post-foot")
    assert (cut.real_sides, cut.real_into) == (length("10"), length("8"))
