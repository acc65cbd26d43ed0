"""Where an abutting end and its notch come, by figures worked by hand.

Everything stands in triangles of 3, 4 and 5: the rafter rises 9 in 12, the strut 36 in 48. No book
gives numbers for the joint; they are [CALC] from its definition (trade notes 2.7 for its kinds).
"""

from fractions import Fraction

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.joggle.record import JoggleJoint
from benchmate.joinery.joggle.shape import EndShape, HoleShape, apart, end_shape, hole_shape
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Spot
from tests.builders import length, real
from tests.joinery.joggle.trusses import truss

INCH = length("1").nm


def joint_of(frame: Frame, name: str) -> JoggleJoint:
    """A joint of a truss by name."""
    return next(
        work for work in frame.project.works if isinstance(work, JoggleJoint) and work.id == name
    )


def made(frame: Frame, name: str = "heel") -> EndShape:
    """An abutting end of a truss."""
    return end_shape(joint_of(frame, name), frame)


def hole(frame: Frame, name: str = "heel") -> HoleShape:
    """A notch of a truss."""
    return hole_shape(joint_of(frame, name), made(frame, name), frame)


def near(value: Length, inches: Fraction | float) -> bool:
    """Whether a length is so many inches, to a few nanometres."""
    return abs(value.nm - inches * INCH) < 4


FEET = {
    "heel": Fraction(40, 3),
    "crown": Fraction(10),
    "strut-foot": Fraction(25, 4),
    "strut-head": Fraction(125, 24),
}
"""Depth over the sine of the angle with the face: 8/0.6, 8/0.8, 5/0.8, 5/0.96."""


@pytest.mark.parametrize("name", FEET)
def test_an_end_is_as_long_on_the_face_as_its_angle_makes_it(name: str) -> None:
    """Trade notes 2.3 [CALC], said there of braces: foot length is width / sin(angle)."""
    assert near(made(truss(), name).foot_length, FEET[name])


ABUTMENTS = [
    ("heel", "bisecting", Fraction(1, 3)),
    ("heel", "square to the face", Fraction(0)),
    ("heel", "square to the rake", Fraction(3, 4)),
    ("crown", "bisecting", Fraction(1, 2)),
    ("crown", "square to the rake", Fraction(4, 3)),
    ("strut-foot", "bisecting", Fraction(1, 2)),
    ("strut-head", "bisecting", Fraction(3, 4)),
]


@pytest.mark.parametrize(("name", "looks", "lean"), ABUTMENTS)
def test_an_abutment_leans_back_by_none_half_or_all_of_the_angle(
    name: str, looks: str, lean: Fraction
) -> None:
    """A notch 1-1/2" deep: so long along the slope, its bottom so far in along the face.

    Leans are tangents: of half 36.87 degrees 1/3, of half 53.13 1/2, of half 73.74 3/4.
    """
    frame = truss(joints={name: {"abutment": looks}})
    end, cut = made(frame, name), hole(frame, name)
    assert near(end.abutment_length, 1.5 * float(1 + lean**2) ** 0.5)
    assert near(abs(cut.bottom.along - cut.toe.along), 1.5 * lean)
    assert near(abs(cut.heel.along - cut.toe.along), FEET[name])
    assert near(end.sole_length, float(1.5**2 + (FEET[name] - 1.5 * lean) ** 2) ** 0.5)


def test_the_tenon_is_cut_off_by_its_abutment() -> None:
    """3-1/2" in, the front is 1-1/6" along, the underside 13-1/3" - 4-2/3"; the tip reaches 1-1/6".

    That is 3-1/2" x 0.6 - 1-1/6" x 0.8 along the rafter past its shoulder.
    """
    frame = truss()
    assert near(made(frame).left_at_tip, Fraction(15, 2))
    assert near(frame.stick("rafter").near, Fraction(7, 6))


def test_square_to_the_rake_the_abutment_is_the_squared_end() -> None:
    """Nothing reaches past it, so no line is struck for it."""
    frame = truss(joints={"heel": {"abutment": "square to the rake"}})
    assert frame.stick("rafter").near == Length(0)
    assert made(frame).square_off
    assert not made(truss()).square_off


def test_a_strut_square_under_its_rafter_may_abut_on_its_own_edge() -> None:
    """45 degrees under 45 degrees: square to the face is along the strut."""
    words: dict[str, tuple[str, str]] = {"slope": ("12'", "12'"), "strut_slope": ("48", "48")}
    square = truss(**words, joint={"abutment": "square to the face"})  # type: ignore[arg-type]
    assert made(square, "strut-head").square_on_edge
    assert not made(truss(**words), "strut-head").square_on_edge  # type: ignore[arg-type]


RELISH = {
    "heel": (Fraction(24), Face.REFERENCE_END),
    "crown": (Fraction(60), Face.FAR_END),
    "strut-foot": (Fraction(12), Face.REFERENCE_END),
    "strut-head": (Fraction(307, 3), Face.REFERENCE_END),
}
"""What is left along the grain: the tie starts 2' out, the post ends 5' over the rafter, the strut
stands a foot up the post and 0.8 x 86-2/3" + 0.6 x 55" up the rafter."""


@pytest.mark.parametrize("name", RELISH)
def test_relish_is_what_is_left_beyond_the_notch(name: str) -> None:
    """A number, towards the end that the thrust goes to."""
    cut = hole(truss(), name)
    assert near(cut.relish, RELISH[name][0])
    assert cut.relish_end is RELISH[name][1]


def test_the_mortise_goes_as_deep_as_the_tenon_and_its_clearance() -> None:
    """1-1/2" + 2" + 1/8", as wide as its tenon, and 1/4" past the heel."""
    cut = hole(truss())
    assert (cut.recess, cut.depth, cut.floor) == (
        length("1-1/2"),
        length("3-5/8"),
        length("3-5/8"),
    )
    assert cut.left_below == length("6-3/8")
    assert cut.across == (length("2"), length("4"))
    assert near(cut.back_end, 24 + FEET["heel"] + Fraction(1, 4))
    assert cut.along == (cut.toe.along, cut.back_end)


def test_it_follows_the_tenon_as_cut() -> None:
    """Thickness and length as typed; the notch stays."""
    cut = hole(
        truss(real={"rafter": real(None, {"foot-tenon": {"thickness": "1-7/8", "length": "3"}})})
    )
    assert cut.across == (length("2"), length("3-7/8"))
    assert (cut.depth, cut.recess) == (length("3-1/8"), length("1-1/2"))


def test_by_mill_rule_the_heel_follows_the_measured_rafter() -> None:
    """8-3/10" is 8.3 / 0.6 on the face, and the toe stays."""
    frame = truss(real={"rafter": real({"foot-tenon": {"first": "8-3/8"}})})
    assert near(made(frame).foot_length, Fraction(67, 8) / Fraction(3, 5))
    assert hole(frame).toe == hole(truss()).toe


def test_by_square_rule_a_far_face_is_notched_by_what_it_is_over() -> None:
    """An inner 8" in a post of 8-1/2": 2" through the real face for a notch of 1-1/2"."""
    own = {"post": {"rule": "square", "inner": "8 x 8", "section": "8-1/2 x 8-1/2"}}
    frame = truss(edges={"post": "east"}, own=own)
    cut, drawn = hole(frame, "crown"), hole(truss(edges={"post": "east"}), "crown")
    assert cut.recess == length("2")
    assert (cut.toe.deep, cut.bottom.deep) == (length("8-1/2"), length("6-1/2"))
    assert near(cut.bottom.along, Fraction(drawn.bottom.along.nm, INCH))
    assert cut.relish < drawn.relish


def test_an_end_that_cannot_be_let_in_so_deep_is_not_clamped() -> None:
    """It keeps its notch for the stop, and lines that can be named."""
    end = made(truss(joints={"heel": {"notch": "9"}}))
    assert not end.fits
    assert end.notch == length("9")
    assert end.bottom.deep == length("4")


def test_spots_are_apart_as_the_crow_flies() -> None:
    """3 along and 4 in are 5."""
    assert apart(Spot(Length(1), Length(9)), Spot(Length(4), Length(5))) == Length(5)
