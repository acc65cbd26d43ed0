"""The housing: where the whole end goes in, and what is done there before the mortise."""

from collections.abc import Mapping

import pytest
from hypothesis import given, settings

from benchmate.frame.practice import CHISEL, SAW
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.tenon.family import features
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.feature import Feature, Stage, Task
from benchmate.model.solids import Axis
from tests.builders import frame, length, lengths, line, read, real, sill, tenon, timber
from tests.joinery.tenon.housed import Housed, housed
from tests.joinery.tenon.scenes import cut_by

MORTISE = "post-foot-mortise"
SQUARE = {"rule": "square", "inner": "7-1/2 x 7-1/2"}
INNER_POST = {"rule": "square", "inner": "5-3/4 x 5-3/4"}

Words = Mapping[str, str]


NONE: Words = {}


def _mortise(
    *, receiver: Words = NONE, post: Words = NONE, measured: Words = NONE, **words: str
) -> Feature:
    """The mortise in the sill's underside, its far face, for a post's head housed 1/2"."""
    joint = tenon(**({"end": "head", "into": "sill", "at": "4'", "housing": "1/2"} | words))
    sizes = {"sill": real({MORTISE: measured})}
    built = frame(timber("post", **post), sill(**receiver), joint, real=sizes)
    return features(joint, built)[1]


def _steps(**words: str) -> dict[str, Step]:
    """The sill's steps at the mortise, by what is done, in order."""
    joint = tenon(**({"end": "head", "into": "sill", "at": "4'", "housing": "1/2"} | words))
    steps = lay_out(frame(timber("post"), sill(), joint), "sill").steps
    return {step.id.partition("/")[2]: step for step in steps if step.feature == MORTISE}


def _tasks(feature: Feature) -> dict[str, Task]:
    return {task.id: task for task in feature.tasks}


def _lines(feature: Feature) -> tuple[str, ...]:
    return tuple(found.id for found in feature.lines if found.id.startswith("housing-"))


@settings(max_examples=300)
@given(housed())
def test_the_housing_is_the_end_that_goes_in(case: Housed) -> None:
    """Law 3: in the building it is the end's framed section, from the seat to the real face."""
    found = cut_by(case.sides[1], "housing-floor")
    assert bool(found) is (case.recess > 0)
    if found:
        assert case.housing_in_building() == case.end_in_building()


def test_without_a_recess_there_is_no_housing() -> None:
    """A shoulder on the face itself has nothing to cut before its mortise."""
    feature = _mortise(housing="0")
    assert _lines(feature) == ()
    assert not {name for name in _tasks(feature) if "housing" in name or "floor" in name}
    assert len(feature.cuts) == 1


@pytest.mark.parametrize(
    ("actual", "cut"),
    [("7-7/8", "3/8"), ("8-1/4", "3/4")],
    ids=["trade.md 7.5 row 34 (TFDIY-notation)", "trade.md 7.5 row 35 (TFDIY-notation)"],
)
def test_a_far_face_is_cut_to_the_inner_timber(actual: str, cut: str) -> None:
    """Cut depth = actual - inner; the floor is 7-1/2" from the reference face on every stick."""
    feature = _mortise(receiver=SQUARE, post=INNER_POST, measured={"first": actual}, housing="0")
    floor = line(feature.lines, "housing-floor")
    assert floor.at == length("7-1/2")
    assert [beside.value for beside in floor.beside] == [length(cut)]
    for task in ("cut-housing", "pare-housing"):
        assert [each.value for each in _tasks(feature)[task].readings] == [length(cut)]


@pytest.mark.parametrize("actual", ["7-7/8", "8", "8-1/4"])
def test_a_reference_face_is_cut_as_deep_as_the_housing(actual: str) -> None:
    """The cut equals the housing there, and without one there is none (trade.md 1.3)."""
    deep, bare = (
        _tasks(
            _mortise(
                receiver=SQUARE,
                post=INNER_POST,
                measured={"first": actual},
                end="foot",
                housing=housing,
            )
        )
        for housing in ("1/2", "0")
    )
    assert [each.value for each in deep["cut-housing"].readings] == [length("1/2")]
    assert "cut-housing" not in bare


@pytest.mark.parametrize(
    ("rule", "actual", "at", "deep"),
    [
        (SQUARE, "8-1/4", "7", "1-1/4"),
        (SQUARE, "7-7/8", "7", "7/8"),
        (NONE, "8-1/4", "7-3/4", "1/2"),
        (NONE, "7-7/8", "7-3/8", "1/2"),
    ],
    ids=["square, over", "square, under", "mill, over", "mill, under"],
)
def test_what_holds_on_an_odd_stick(rule: Words, actual: str, at: str, deep: str) -> None:
    """By square rule the floor's distance from the reference face, by mill rule its depth."""
    feature = _mortise(receiver=rule, post=INNER_POST, measured={"first": actual})
    floor = line(feature.lines, "housing-floor")
    assert (floor.axis, floor.at) == (Axis.FIRST, length(at))
    assert [beside.value for beside in floor.beside] == [length(deep)]
    held, follows = ("As far from", "only the depth") if rule else ("As deep", "how far from")
    assert floor.caution.startswith(held)
    assert follows in floor.caution


@pytest.mark.parametrize(
    ("at", "inset", "closed"),
    [
        ("4'", "1", {"start", "finish", "near", "far"}),
        ("4'", "0", {"start", "finish", "far"}),
        ("4'", "2", {"start", "finish", "near"}),
        ("0", "1", {"finish", "near", "far"}),
        ("15' 6", "1", {"start", "near", "far"}),
        ("-1", "0", {"finish", "far"}),
    ],
    ids=["blind", "near edge", "far edge", "at the near end", "at the far end", "past a corner"],
)
def test_it_is_closed_only_where_wood_is_left(at: str, inset: str, closed: set[str]) -> None:
    """Common practice, no source: a 6" end in an 8" sill leaves a wall where it stops short."""
    feature = _mortise(at=at, inset=inset)
    assert set(_lines(feature)) == {f"housing-{name}" for name in closed | {"floor"}}
    (cut,) = cut_by(feature, "housing-floor")
    assert {plane.line for plane in cut.planes} == set(_lines(feature))


@pytest.mark.parametrize("measured", ["7-7/8", "8-1/2"])
def test_an_end_as_wide_as_the_inner_timber_leaves_no_sliver(measured: str) -> None:
    """By square rule a cross sill as wide as the long one is open there on every stick."""
    feature = _mortise(
        receiver=SQUARE,
        post={"rule": "square", "section": "8 x 8", "inner": "7-1/2 x 7-1/2"},
        measured={"second": measured},
    )
    assert _lines(feature) == ("housing-start", "housing-finish", "housing-floor")


def test_a_blind_floor_is_a_depth_and_an_open_one_a_line() -> None:
    """Where it comes out on a side it is struck there; closed all round there is only its depth."""
    blind, opened = _steps(inset="1"), _steps()
    assert blind["housing-floor"].faces == (Face.FAR_FIRST,)
    assert read(blind["housing-floor"]) == lengths("1/2")
    assert blind["housing-floor"].readings[0].hook == "underside"
    assert [beside.value for beside in blind["housing-floor"].beside] == [length("7-1/2")]
    assert opened["housing-floor"].faces == (Face.SECOND,)
    assert read(opened["housing-floor"]) == lengths("7-1/2")
    assert opened["housing-floor"].readings[0].hook == "top face"
    assert [beside.value for beside in opened["housing-floor"].beside] == [length("1/2")]


@pytest.mark.parametrize(
    ("words", "faces"),
    [
        ({"inset": "1"}, (Face.FAR_FIRST,)),
        ({}, (Face.SECOND, Face.FAR_FIRST)),
        ({"inset": "2"}, (Face.FAR_FIRST, Face.FAR_SECOND)),
        ({"inset": "1", "at": "0"}, (Face.FAR_FIRST, Face.REFERENCE_END)),
        ({"inset": "1", "at": "15' 6"}, (Face.FAR_FIRST, Face.FAR_END)),
    ],
    ids=["blind", "near edge", "far edge", "at the near end", "at the far end"],
)
def test_it_is_worked_on_every_face_it_comes_out_on(words: Words, faces: tuple[Face, ...]) -> None:
    """Its sides are knifed and its floor pared right out to where it is open."""
    steps = _steps(**words)
    for name in ("knife-housing", "cut-housing", "pare-housing"):
        assert steps[name].faces == faces


def test_everything_at_the_housing_comes_before_the_bore() -> None:
    """Knife, cut, pare the floor, strike the mortise on it, bore: the depth counts from the floor.

    Common practice, no source: lines struck on the face go with the housing's chips.
    """
    steps = _steps(inset="1")
    order = [name for name, step in steps.items() if step.stage in (Stage.KNIFE, Stage.CUT)]
    assert order == ["knife-housing", "cut-housing", "pare-housing", "strike-floor", "bore"]
    assert "knife" not in steps
    assert steps["bore"].readings[0].hook == "housing floor"
    assert "knife" in _steps(housing="0")


def test_its_lines_in_order() -> None:
    """The whole end's four sides and the floor, then the mortise inside it."""
    steps = _steps(inset="1")
    marks = [name for name, step in steps.items() if step.line]
    assert marks == [
        "housing-start",
        "housing-finish",
        "housing-near",
        "housing-far",
        "housing-floor",
        "start",
        "finish",
        "near-side",
        "far-side",
        "depth",
    ]


def test_the_figures_and_waste_of_a_blind_housing() -> None:
    """Common practice, no source: 6 x 6, 4' from the end and 1" in, on the underside."""
    steps = _steps(inset="1")
    found = {
        name: (read(step), step.readings[0].hook, step.waste_side, step.faces)
        for name, step in steps.items()
        if name.startswith("housing-")
    }
    under = (Face.FAR_FIRST,)
    assert found == {
        "housing-start": (lengths("4'"), "squared west end", "east end", under),
        "housing-finish": (lengths("4' 6"), "squared west end", "west end", under),
        "housing-near": (lengths("1"), "South face", "North face", under),
        "housing-far": (lengths("7"), "South face", "South face", under),
        "housing-floor": (lengths("1/2"), "underside", "underside", under),
    }


def test_no_step_has_two_figures_to_cut_to() -> None:
    """Of two figures on one step, one is missed; measuring and striking cut no wood."""
    for task in _mortise(inset="1").tasks:
        if task.id not in ("section", "strike-floor"):
            assert len(task.readings) <= 1, task


@pytest.mark.parametrize("inset", ["0", "1", "2"])
def test_the_far_line_is_never_measured_from_the_far_face(inset: str) -> None:
    """Only the reference face lies where it was drawn."""
    cautions = {
        found.id: found.caution for found in _mortise(inset=inset).lines if "Never" in found.caution
    }
    assert set(cautions) == {"far-side"} | ({"housing-far"} if inset != "2" else set())
    assert set(cautions.values()) == {"Never measure this from the North face."}


def test_a_depth_that_follows_the_stick_waits_for_its_size() -> None:
    """On a far face by square rule nobody may cut to a depth before the stick is measured."""
    warned = unmeasured(frame(sill()).stick("sill"), Axis.FIRST, ())
    assert warned
    for rule, end, measured, said in (
        (SQUARE, "head", NONE, True),
        (SQUARE, "head", {"second": "8-1/4"}, True),
        (SQUARE, "head", {"first": "8-1/4"}, False),
        (SQUARE, "foot", NONE, False),
        (NONE, "head", NONE, False),
    ):
        found = _mortise(receiver=rule, post=INNER_POST, measured=measured, end=end)
        task = _tasks(found)["cut-housing"]
        assert task.caution == f"{warned if said else ''}{SAW} {CHISEL}"


def test_its_sides_say_whether_the_end_was_measured() -> None:
    """By mill rule the housing takes the real end, so a size as drawn is told apart."""
    joint = tenon(end="head", into="sill", at="4'", inset="1", housing="1/2")
    said = {}
    cases: tuple[tuple[str, Words, Mapping[str, Words]], ...] = (
        ("drawn", NONE, {}),
        ("one way", NONE, {"head-tenon": {"second": "6-1/8"}}),
        ("at its end", NONE, {"head": {"first": "6-1/4", "second": "6-1/8"}}),
        ("inner", INNER_POST, {}),
    )
    for name, words, sizes in cases:
        built = frame(timber("post", **words), sill(), joint, real={"post": real(sizes)})
        feature = features(joint, built)[1]
        said[name] = [
            ("not been measured" in line(feature.lines, side).why, line(feature.lines, side).at)
            for side in ("housing-finish", "housing-far")
        ]
    assert said == {
        "drawn": [(True, length("4' 6")), (True, length("7"))],
        "one way": [(False, length("4' 6-1/8")), (True, length("7"))],
        "at its end": [(False, length("4' 6-1/8")), (False, length("7-1/4"))],
        "inner": [(False, length("4' 5-3/4")), (False, length("6-3/4"))],
    }


@pytest.mark.parametrize(("near", "far"), [("1/2", "1/2"), ("0", "1/2"), ("1", "0")])
def test_shoulder_to_shoulder_is_the_clear_span_and_both_housings(near: str, far: str) -> None:
    """Trade.md 2.2 [CALC], for a tie between two 6" posts whose outsides are 8' apart."""
    posts = [
        timber(
            f"post-{word}",
            second_face=word,
            length="8'",
            at={"east": east, "north": "0"},
            reference_end_at="0",
        )
        for word, east in (("west", "0"), ("east", "8'"))
    ]
    tie = timber(
        "tie",
        first_face="up",
        second_face="south",
        reference_end="west",
        length=None,
        at={"north": "0", "up": "7'"},
    )
    joints = [
        tenon(id=word, timber="tie", end=word, into=f"post-{word}", housing=housing)
        for word, housing in (("west", near), ("east", far))
    ]
    stick = frame(*posts, tie, *joints).stick("tie")
    assert stick.body == length("7'") + length(near) + length(far)
    assert stick.body - stick.near_housed - stick.far_housed == length("7'")
    assert stick.overall == stick.body + length("5") * 2


def test_a_housing_cuts_no_deeper_than_its_floor() -> None:
    """Law 4: the wood at the seat stays, but for the mortise; what is above it goes."""
    feature = _mortise(receiver=SQUARE, post=INNER_POST, measured={"first": "8-1/4"})
    seat, beside = length("7").nm, length("4' 1/2").nm
    middle = length("1/2").nm
    assert not any(cut.takes(beside, seat - 1, middle) for cut in feature.cuts)
    assert any(cut.takes(beside, seat, middle) for cut in feature.cuts)
    assert line(feature.lines, "depth").at == length("7") - length("5-1/8")
    assert line(feature.lines, "depth").at > ZERO
