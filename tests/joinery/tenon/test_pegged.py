"""The pegs of a tenon lie in one place in the building on both timbers, but for the draw."""

import pytest
from hypothesis import given, settings

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.mortise_shape import mortise_shape
from benchmate.joinery.tenon.pegged import Pegged, pegged
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import meeting, shape
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.solids import Cut
from tests.builders import length, real
from tests.joinery.tenon import housed
from tests.joinery.tenon.girts import FROM_THE_WEST, MORTISE, girt_through
from tests.joinery.tenon.housed import Housed
from tests.space import TOWARDS, Box, Placed, Span, bounds

Middle = dict[int, int]
"""Where a hole's centre lies in the building, by axis; none for the axis it runs along."""


def _middle(cut: Cut, placed: Placed) -> Middle:
    """The centre of a hole from the planes that are square to the timber, doubled to be whole."""
    square = Cut(tuple(each for each in cut.planes if sum(map(bool, each.normal)) == 1))
    nowhere: Box = ((0, 0), (0, 0), (0, 0))
    box = placed.box(bounds(square, nowhere))
    along_it = {placed.inward[reading][0] for reading, span in enumerate(_open(square)) if span}
    return {axis: low + high for axis, (low, high) in enumerate(box) if axis not in along_it}


def _open(cut: Cut) -> list[bool]:
    """Which of a timber's readings a hole is not bounded on at both sides."""
    closed = [sum(1 for plane in cut.planes if plane.normal[axis]) for axis in range(3)]
    return [count < 2 for count in closed]


def _centre(case: Housed, place: int, beyond: int) -> Middle:
    """The centre by second opinion: from the shoulder outwards, and in from the narrow edge."""
    scene, joint = case.scene, case.joint
    assert joint.pegs is not None
    edge = (joint.relief_reference or joint.all_round).nm
    apart = (joint.pegs.spacing or ZERO).nm
    deep = edge + joint.pegs.from_edge.nm + place * apart
    cheek: Span = (0, 0)
    readings = (scene.beyond(beyond, beyond), *scene.across(cheek, (deep, deep)))
    box = scene.here.box(readings)
    across = scene.here.inward[scene.cheeks][0]
    return {axis: low + high for axis, (low, high) in enumerate(box) if axis != across}


@settings(max_examples=100)
@given(housed.pegged())
def test_both_holes_lie_in_one_place_but_for_the_draw(case: Housed) -> None:
    """In the building, whatever the hands, by either rule, typed and placed, as drawn and as cut.

    The tenon's hole lies the draw nearer its shoulder, the other at the distance said from it.
    """
    pegs, (own, others) = case.joint.pegs, case.pegs
    assert pegs is not None
    assert len(own.cuts) == len(others.cuts) == pegs.count
    axis, sense = TOWARDS[case.scene.end]
    for place, (drawn, bored) in enumerate(zip(own.cuts, others.cuts, strict=True)):
        there = _middle(bored, case.scene.there)
        here = _middle(drawn, case.scene.here)
        assert there == _centre(case, place, pegs.from_shoulder.nm)
        assert here == _centre(case, place, pegs.from_shoulder.nm - pegs.draw.nm)
        assert there[axis] - here[axis] == 2 * sense * pegs.draw.nm
        (other,) = set(there) - {axis}
        assert there[other] == here[other]


@settings(max_examples=30)
@given(housed.pegged())
def test_the_marks_are_the_holes_own_centres(case: Housed) -> None:
    """Law 4: the peg line and each centre line cross in the middle of the hole, on both timbers."""
    for feature in case.pegs:
        lines = {each.id: each for each in feature.lines if each.axis is not None}
        for place, cut in enumerate(feature.cuts):
            at = [0, 0, 0]
            for line in (lines["peg-line"], lines[f"peg-{place + 1}"]):
                assert line.axis is not None
                at[line.axis.value.index(1)] = line.at.nm
            planes = [each for each in cut.planes if sum(map(bool, each.normal)) == 1]
            reach = {
                each.offset - sum(n * x for n, x in zip(each.normal, at, strict=True))
                for each in planes
                if each.line is None
            }
            assert len(reach) == 1, "as far to every side"


def _pegged(built: Frame) -> Pegged:
    (joint,) = built.project.works
    assert isinstance(joint, TenonJoint)
    assert joint.pegs is not None
    assert joint.into is not None
    made, met = shape(joint, built), meeting(joint, built)
    assert met is not None
    mortise = mortise_shape(joint.mortise, made, met, built.stick(joint.into), ZERO)
    return pegged(joint.pegs, made, mortise, met)


@pytest.mark.parametrize("girt", [{}, FROM_THE_WEST])
def test_the_check_girt(girt: dict[str, str]) -> None:
    """Reckoned by hand: its top is 4' up, housed 1/2" in the East face, 8" from the West face.

    The holes come 2" further in than the seat at 7-1/2", and 2" and 5" below the top.
    """
    found = _pegged(girt_through(girt=girt))
    assert found.bored is not None
    assert [(each.along, each.deep) for each in found.bored.holes.centres] == [
        (length("3' 10"), length("5-1/2")),
        (length("3' 7"), length("5-1/2")),
    ]
    shoulder = ZERO if girt else length("9' 4-1/2")
    drawn = -length("1-7/8") if girt else length("1-7/8")
    assert [(each.along, each.deep) for each in found.holes.centres] == [
        (shoulder + drawn, length("2")),
        (shoulder + drawn, length("5")),
    ]
    assert found.relish == length("5-3/8")


@pytest.mark.parametrize(
    ("post", "girt", "bored_from", "faces"),
    [
        ({}, {}, "reference", (Face.FIRST, Face.SECOND)),
        ({}, {}, "far", (Face.FAR_FIRST, Face.FAR_SECOND)),
        ({}, {"second_face": "north"}, "reference", (Face.FIRST, Face.FAR_SECOND)),
        ({"first_face": "north"}, {}, "reference", (Face.FIRST, Face.FAR_SECOND)),
        (
            {"first_face": "north"},
            {"second_face": "north"},
            "far",
            (Face.FAR_FIRST, Face.FAR_SECOND),
        ),
    ],
)
def test_the_tenon_is_pricked_on_the_side_its_mate_is_bored_from(
    post: dict[str, str], girt: dict[str, str], bored_from: str, faces: tuple[Face, Face]
) -> None:
    """The face that looks the same way, whichever faces of the two are references."""
    found = _pegged(girt_through(post=post, girt=girt, pegs=_words(bored_from=bored_from)))
    assert found.bored is not None
    assert (found.bored.holes.face, found.holes.face) == faces
    looks = (
        found.bored.holes.stick.pose.direction(faces[0]),
        found.holes.stick.pose.direction(faces[1]),
    )
    assert looks[0] is looks[1]


def _words(**words: object) -> dict[str, object]:
    return {
        "count": 1,
        "size": "1",
        "from_shoulder": "2",
        "from_edge": "2",
        **words,
    }


@pytest.mark.parametrize(
    ("bored_from", "needed", "stop"), [("reference", "5", "6"), ("far", "5-1/4", "2-1/4")]
)
def test_blind_holes_end_so_deep_from_the_face_they_are_bored_from(
    bored_from: str, needed: str, stop: str
) -> None:
    """The mortise runs from 3" to 5" in an 8-1/4" post: 5" past the tenon, 5-1/4" from behind."""
    sizes = {"post": real({MORTISE: {"first": "8-1/4"}})}
    words = _words(bored_from=bored_from, blind_depth="6")
    found = _pegged(girt_through(pegs=words, real=sizes))
    assert found.bored is not None
    assert found.bored.through_tenon == length(needed)
    assert found.bored.holes.stop == length(stop)


def test_the_pegs_hold_while_the_tenon_comes_out_otherwise() -> None:
    """They count from the seat and the reference edge, so as-cut sizes move neither hole."""
    made = {"west-end-tenon": {"thickness": "1-7/8", "width": "6-3/4", "length": "7"}}
    drawn, cut = _pegged(girt_through()), _pegged(girt_through(real={"girt": real(as_cut=made)}))
    assert (drawn.holes.centres, drawn.bored and drawn.bored.holes.centres) == (
        cut.holes.centres,
        cut.bored and cut.bored.holes.centres,
    )
    assert cut.relish == length("5-1/8"), '7" less 1-7/8"'
    before, after = (features(*each) for each in _joints(made))
    assert before[1].cuts != after[1].cuts, "the mortise follows the tenon all the same"
    assert before[3].cuts == after[3].cuts


def _joints(made: dict[str, dict[str, str]]) -> tuple[tuple[TenonJoint, Frame], ...]:
    frames = (girt_through(), girt_through(real={"girt": real(as_cut=made)}))
    found = []
    for built in frames:
        (joint,) = built.project.works
        assert isinstance(joint, TenonJoint)
        found.append((joint, built))
    return tuple(found)
