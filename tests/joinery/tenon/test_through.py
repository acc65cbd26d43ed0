"""A tenon that goes right through: as long as the wood it passes, its mortise open twice."""

import pytest
from hypothesis import given, settings

from benchmate.frame.chopping import FROM_BOTH
from benchmate.frame.frame import Frame
from benchmate.frame.practice import CHISEL, DRILL
from benchmate.joinery.tenon.shape import Passage, TenonShape, shape
from benchmate.joinery.tenon.through import (
    end_beside,
    through_words,
)
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.measure.length import Length
from benchmate.model.feature import Beside, Stage
from benchmate.model.progress import AsCut
from tests.builders import length, lengths, read, real
from tests.joinery.tenon.girts import BLIND, MORTISE, NONE, Words, girt_tenon, girt_through
from tests.joinery.tenon.head_ties import MORTISE as HEAD_MORTISE
from tests.joinery.tenon.head_ties import head_tie
from tests.joinery.tenon.housed import Housed, passing

EAST_FIRST = {"second_face": "east"}


@settings(max_examples=100)
@given(passing())
def test_the_mortise_is_its_tenon_all_the_way_through(case: Housed) -> None:
    """Law 3: in the building the mortise is the tenon as cut, from the seat to the far face."""
    made = AsCut(
        thickness=case.as_cut.thickness, width=case.as_cut.width, length=Length(case.passed)
    )
    assert case.mortise_in_building() == case.scene.here.box(case.tenon(made))
    assert "depth" not in {line.id for line in case.sides[1].lines}


@settings(max_examples=50)
@given(passing())
def test_the_stick_is_as_long_as_its_tenon(case: Housed) -> None:
    """As given, or all the wood there really is between seat and far face, less what it is held."""
    stick = case.frame.stick("post")
    beyond = stick.near if case.scene.shoulder == 0 else stick.far
    assert beyond.nm == case.long + case.joint.end_allowance.nm
    assert shape(case.joint, case.frame).length.nm == case.long


def _shape(joint: Words = NONE) -> TenonShape:
    return shape(girt_tenon(joint), girt_through(joint))


def _steps(built: Frame, timber: str, feature: str) -> dict[str, Step]:
    """The steps of one feature by what is done, in order."""
    steps = lay_out(built, timber).steps
    return {step.id.partition("/")[2]: step for step in steps if step.feature == feature}


def test_it_knows_the_wood_it_passes_and_the_face_it_comes_out_on() -> None:
    """8" of post less 1/2" of housing; it goes west, so out of the West face."""
    assert _shape().passage == Passage(length("7-1/2"), "Post's West face", length("1/4"))
    assert _shape(BLIND).passage is None


@pytest.mark.parametrize(
    ("words", "ends", "beside"),
    [
        ({}, "stops short of Post's West face", ("1/4", "short of")),
        ({"held_short": "0"}, "ends flush with Post's West face", None),
        (
            {"length": "8", "held_short": "0"},
            "stands out past Post's West face",
            ("1/2", "proud of"),
        ),
        (
            {"length": "7", "held_short": "1/2"},
            "stops short of Post's West face",
            ("1/2", "short of"),
        ),
    ],
)
def test_the_shoulder_says_where_the_end_comes(
    words: dict[str, str], ends: str, beside: tuple[str, str] | None
) -> None:
    """Held short so that it fouls no siding (trade.md 2.1, Rogers-tenon), flush, or proud."""
    made = _shape(words)
    expected = (
        ()
        if beside is None
        else (Beside(length(beside[0]), f"{beside[1]} Post's West face, at the tenon's end"),)
    )
    assert end_beside(made.passage, made.length) == expected
    assert through_words(made) == f" The tenon goes right through and {ends}."
    step = _steps(girt_through(words), "girt", "west-end-tenon")["shoulder"]
    assert step.beside == (Beside(made.length, "tenon beyond it"), *expected)
    assert step.why.endswith(through_words(made))


def test_a_blind_tenon_says_nothing_of_it() -> None:
    """It stops inside, where its depth says all there is."""
    made = _shape(BLIND)
    assert (end_beside(made.passage, made.length), through_words(made)) == ((), "")


def test_the_trimmed_end_says_where_it_comes() -> None:
    """The allowance comes off once the joint was fitted: then short of flush by as much as said."""
    steps = _steps(girt_through({"end_allowance": "1/2"}), "girt", "west-end-tenon")
    assert steps["trim-end"].readings[0].value == length("7-1/4")
    assert [each.value for each in steps["trim-end"].beside] == list(lengths("1/2", "1/4"))


@pytest.mark.parametrize(
    ("post", "faces"),
    [({}, ("West face", "East face")), (EAST_FIRST, ("East face", "West face"))],
)
def test_its_four_lines_are_struck_on_both_faces(
    post: dict[str, str], faces: tuple[str, str]
) -> None:
    """Read off the cut: where it comes out there are lines, the reference face first."""
    steps = _steps(girt_through({"housing": "0"}, post=post), "post", MORTISE)
    for line in ("start", "finish", "near-side", "far-side"):
        assert steps[line].sides == faces
    assert not {"depth", "try-depth"} & set(steps)


@pytest.mark.parametrize("housing", ["0", "1/2"])
def test_it_is_bored_from_both_faces_and_met_in_the_middle(housing: str) -> None:
    """Half the wood from each, the housed side counted from its floor; no one bores it through."""
    steps = _steps(girt_through({"housing": housing}), "post", MORTISE)
    half = "4" if housing == "0" else "3-3/4"
    opening = "East face" if housing == "0" else "housing floor"
    bored = [(name, each) for name, each in steps.items() if name.startswith("bore")]
    assert [(name, each.sides) for name, each in bored] == [
        ("bore", ("East face",)),
        ("bore-far", ("West face",)),
    ]
    assert [read(each) for _, each in bored] == [lengths(half), lengths(half)]
    assert [each.readings[0].hook for _, each in bored] == [opening, "West face"]
    for _, each in bored:
        assert each.stage is Stage.CUT
        assert each.caution == f"{FROM_BOTH} {DRILL}"


def test_the_two_halves_are_all_the_wood() -> None:
    """An odd nanometre goes to one of them, and none is left between."""
    odd = {"post": real({MORTISE: {"second": "7-63/64"}})}
    steps = _steps(girt_through({"housing": "0"}, real=odd), "post", MORTISE)
    halves = [steps[name].readings[0].value for name in ("bore", "bore-far")]
    assert halves[0] + halves[1] == length("7-63/64")


@pytest.mark.parametrize(("housing", "knifed"), [("0", ("West", "East")), ("1/2", ("West",))])
def test_it_is_knifed_wherever_it_is_struck(housing: str, knifed: tuple[str, ...]) -> None:
    """In a housing the floor is knifed once it is cut, so the far face alone comes before that."""
    steps = _steps(girt_through({"housing": housing}), "post", MORTISE)
    assert set(steps["knife"].sides) == {f"{each} face" for each in knifed}
    assert ("strike-floor" in steps) is (housing != "0")


def test_it_is_pared_and_tried_from_both_faces() -> None:
    """A step in the middle holds the tenon; the finish says where its end is to come."""
    built = girt_through()
    steps = _steps(built, "post", MORTISE)
    for name in ("pare-sides", "pare-ends", "try-through"):
        assert set(steps[name].sides) == {"East face", "West face"}
    tried = steps["try-through"]
    assert (tried.stage, tried.caution) == (Stage.PARE, CHISEL)
    assert read(tried) == lengths("2")
    assert [each.value for each in tried.beside] == [length("1/4")]
    made = girt_through(real={"girt": real(as_cut={"west-end-tenon": {"length": "7-3/4"}})})
    (beside,) = _steps(made, "post", MORTISE)["try-through"].beside
    assert beside == Beside(length("1/4"), "proud of Post's West face, at the tenon's end")


def test_the_housing_s_floor_bears_and_counts_no_depth() -> None:
    """There is no bottom to count to."""
    why = _steps(girt_through(), "post", MORTISE)["pare-housing"].why
    assert "depth" not in why
    blind = girt_through(BLIND)
    assert "depth counts from here" in _steps(blind, "post", MORTISE)["pare-housing"].why


def test_a_length_may_be_said_past_the_wood_it_goes_through() -> None:
    """1" proud of 7-1/2" of wood, and as much more as the post really is over."""
    proud = {"held_short": "0", "past": "1"}
    assert _shape(proud).length == length("8-1/2")
    over = girt_through(proud, real={"post": real({MORTISE: {"second": "8-1/4"}})})
    made = shape(girt_tenon(proud), over)
    assert made.length == length("8-1/2") + length("1/4")
    assert over.stick("girt").far == made.length
    assert end_beside(made.passage, made.length)[0].words.startswith("proud of Post's West face")


def test_a_notch_over_the_far_face_is_bored_from_its_floor() -> None:
    """Half an inch off a 7" plate leaves 6-1/2": half of that from either side.

    The underside's mortise is knifed on its face, the other's on the floor of the notch.
    """
    steps = {
        step.id.partition("/")[2]: step
        for step in lay_out(head_tie(lap={}), "plate").steps
        if step.feature == HEAD_MORTISE
    }
    halves = [steps[name].readings[0] for name in ("bore", "bore-far")]
    assert [(each.value, each.hook) for each in halves] == [
        (length("3-1/4"), "underside"),
        (length("3-1/4"), "floor of the notch for Tie"),
    ]
    assert steps["knife"].on == "underside"
    assert steps["strike-anew-far"].on == "top face"
    assert "strike-anew" not in steps


def test_without_a_notch_it_is_bored_from_both_faces() -> None:
    """All 7" of it."""
    steps = {step.id: step for step in lay_out(head_tie(), "plate").steps}
    halves = [steps[f"{HEAD_MORTISE}/{name}"].readings[0] for name in ("bore", "bore-far")]
    assert [(each.value, each.hook) for each in halves] == [
        (length("3-1/2"), "underside"),
        (length("3-1/2"), "top face"),
    ]
    assert steps[f"{HEAD_MORTISE}/knife"].on == "underside and top face"
