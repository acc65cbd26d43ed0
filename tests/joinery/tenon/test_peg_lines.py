"""The marks of a tenon's pegs, on the post that is bored and on the girt's tenon."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.frame.pegs import DEPTH_LINE
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Stage
from tests.builders import length, lengths, read, real
from tests.joinery.tenon.girts import BLIND, FROM_THE_WEST, MORTISE, PEGS, Words, girt_through

EAST_FIRST = {"second_face": "east"}
SQUARE = {"rule": "square", "inner": "7 x 7"}


def _steps(built: Frame, timber: str) -> dict[str, Step]:
    """The steps of the pegs on one timber by what is done, in order."""
    found = (step for step in lay_out(built, timber).steps if step.feature.endswith("-pegs"))
    return {step.id.partition("/")[2]: step for step in found}


def _beside(step: Step, words: str) -> str:
    """The figure beside a step whose words start so."""
    (found,) = (each for each in step.beside if each.words.startswith(words))
    return found.value.exact_text()


def test_the_post_s_marks() -> None:
    """The line from the reference face, the centres along from the squared foot, on the face bored.

    By hand: the seat is 7-1/2" from the West face, the holes 2" further in; 2" and 5" below 4'.
    """
    steps = _steps(girt_through(), "post")
    assert list(steps) == ["peg-line", "peg-1", "peg-2", "back-check", "bore-pegs"]
    assert [read(steps[name]) for name in ("peg-line", "peg-1", "peg-2")] == [
        lengths("5-1/2"),
        lengths("3' 10"),
        lengths("3' 7"),
    ]
    assert steps["peg-line"].readings[0].hook == "West face"
    assert {step.sides for name, step in steps.items() if name != "back-check"} == {("South face",)}
    assert {steps[name].stage for name in ("peg-line", "peg-1", "peg-2")} == {Stage.MARK}
    assert {steps[name].waste for name in ("peg-line", "peg-1", "peg-2")} == {""}


@pytest.mark.parametrize(
    ("post", "joint", "from_face", "in_all", "opening"),
    [
        ({}, {}, "5-1/2", "2-1/2", "housing floor"),
        ({}, {"housing": "0"}, "6", None, "East face"),
        (EAST_FIRST, {}, "2-1/2", "2-1/2", "housing floor"),
        (EAST_FIRST, {"housing": "0"}, "2", None, "East face"),
        (SQUARE, {}, "4-1/2", "3-1/2", "housing floor"),
    ],
)
def test_the_line_is_measured_from_where_the_shoulder_bears(
    post: Words, joint: Words, from_face: str, in_all: str | None, opening: str
) -> None:
    """From the face or the housing's floor, which by square rule lies at the inner timber.

    The reading itself comes from the reference face, and how deep in all stands beside it.
    """
    step = _steps(girt_through(joint, post=post), "post")["peg-line"]
    assert read(step) == lengths(from_face)
    assert _beside(step, f"from the centre to the {opening}, 2 diameters") == '2"'
    assert _beside(step, f"of wood from the hole to the {opening}") == '1-1/2"'
    in_from = [each.value for each in step.beside if each.words.startswith("in from the East")]
    assert in_from == ([] if in_all is None else [length(in_all)])


@pytest.mark.parametrize("timber", ["post", "girt"])
def test_the_relish_is_a_number_and_diameters_and_the_engineer_decides(timber: str) -> None:
    """Wharton's 4" tenon with a 1" peg 1-1/2" from the shoulder: 2-1/2", 2.5D, 2" clear.

    Reckoned in trade.md 3, where another framer asks for 4D: the number is shown, and no law.
    """
    pegs = {**PEGS, "from_shoulder": "1-1/2", "draw": "0"}
    step = _steps(girt_through(BLIND, pegs=pegs), timber)["peg-line"]
    assert (
        _beside(step, "from the centre to the tenon's end, 2.5 diameters of the 1\" hole")
        == '2-1/2"'
    )
    assert _beside(step, "of wood from the hole to the tenon's end") == '2"'
    assert "the engineer decides" in step.why


def test_the_draw_leaves_more_relish_on_the_tenon() -> None:
    """Its holes lie nearer the shoulder, so further from the end; as cut counts."""
    pegs = {**PEGS, "from_shoulder": "1-1/2"}
    drawn = girt_through(BLIND, pegs=pegs)
    made = {"girt": real(as_cut={"west-end-tenon": {"length": "3-7/8"}})}
    cut = girt_through(BLIND, pegs=pegs, real=made)
    said = [_beside(_steps(each, "girt")["peg-line"], "from the centre") for each in (drawn, cut)]
    assert said == ['2-5/8"', '2-1/2"']


def test_on_the_post_a_drawn_tenon_s_relish_counts_from_its_own_hole() -> None:
    """Wharton's tenon, drawn 1/8": its hole at 1-3/8" leaves 2-5/8" and 2-1/8" clear.

    The centre marked on the post lies 1-1/2" in, 2-1/2" from the tenon's end.
    """
    pegs = {**PEGS, "from_shoulder": "1-1/2"}
    made = {"girt": real(as_cut={"west-end-tenon": {"length": "3-7/8"}})}
    for built, left, clear in (
        (girt_through(BLIND, pegs=pegs), '2-5/8"', '2-1/8"'),
        (girt_through(BLIND, pegs=pegs, real=made), '2-1/2"', '2"'),
    ):
        step = _steps(built, "post")["peg-line"]
        own = "from the tenon's own hole, drawn 1/8\" nearer the shoulder, to its end, 2."
        assert _beside(step, own) == left
        assert _beside(step, "of wood from that hole to the tenon's end") == clear
        assert not any("the centre to the tenon" in each.words for each in step.beside)
        on_girt = _steps(built, "girt")["peg-line"]
        assert _beside(on_girt, "from the centre to the tenon's end") == left
        assert _beside(on_girt, "of wood from the hole to the tenon's end") == clear


def test_each_centre_says_how_far_it_is_from_the_mortise_s_nearer_end() -> None:
    """The other distance a framer looks at; the first peg is 2" from the top, where it ends."""
    steps = _steps(girt_through(), "post")
    assert _beside(steps["peg-1"], "from the centre to the mortise's finish line, 2 diam") == '2"'
    assert _beside(steps["peg-1"], "of wood from the hole to the mortise's finish") == '1-1/2"'
    assert _beside(steps["peg-2"], "from the centre to the mortise's start line") == '2"'


def test_the_line_warns_of_a_post_nobody_has_measured() -> None:
    """By mill rule a seat on the far face lies where that really is."""
    said = "Not measured here yet: measure first, as this depth follows the stick."
    measured = {"post": real({MORTISE: {"second": "8"}})}
    assert _steps(girt_through(), "post")["peg-line"].caution == said
    for built in (
        girt_through(real=measured),
        girt_through(post=EAST_FIRST),
        girt_through(post=SQUARE),
    ):
        assert _steps(built, "post")["peg-line"].caution == ""


def test_holes_are_marks_that_read_back_from_the_far_end() -> None:
    """Like any mark along the post, with the pegs' own joint, as they wait with it."""
    step = _steps(girt_through(), "post")["back-check"]
    assert [(each.key, each.value) for each in step.readings] == [
        (f"{MORTISE}-pegs/peg-1", length("4' 2")),
        (f"{MORTISE}-pegs/peg-2", length("4' 5")),
    ]


@pytest.mark.parametrize("girt", [{}, FROM_THE_WEST])
def test_the_tenon_s_marks_lie_nearer_its_shoulder(girt: dict[str, str]) -> None:
    """From its own shoulder, 1/8" less than on the post, and across from its narrow edge."""
    steps = _steps(girt_through(girt=girt), "girt")
    assert list(steps) == ["prick-pegs", "peg-line", "peg-1", "peg-2", "bore-pegs"]
    line = steps["peg-line"]
    assert [(each.value, each.hook, each.way) for each in line.readings] == [
        (length("1-7/8"), "west end shoulder line", "towards the west end, on the tenon")
    ]
    assert _beside(line, "nearer the shoulder than the holes in the mortise") == '1/8"'
    assert '1/8" towards the shoulder' in line.why
    assert '1/8" towards the shoulder, away from the west end' in line.caution
    assert [(read(steps[each]), steps[each].readings[0].hook) for each in ("peg-1", "peg-2")] == [
        (lengths("2"), "top face"),
        (lengths("5"), "top face"),
    ]
    assert {step.sides for step in steps.values()} == {("South face",)}
    assert {steps[each].stage for each in ("peg-line", "peg-1", "peg-2")} == {Stage.FINISH}


def test_a_relieved_tenon_is_measured_from_its_own_edge() -> None:
    """The top face is gone there; on the post the centre lies lower by the relief."""
    built = girt_through({"relief_reference": "1"}, pegs={**PEGS, "from_edge": "1-1/2"})
    step = _steps(built, "girt")["peg-1"]
    assert (read(step), step.readings[0].hook) == (lengths("1-1/2"), "narrow edge by the top face")
    assert read(_steps(built, "post")["peg-1"]) == lengths("3' 9-1/2")


def test_without_a_draw_nothing_is_shifted() -> None:
    """The holes lie where they were pricked, and no step speaks of a way to shift them."""
    for timber in ("post", "girt"):
        for step in _steps(girt_through(pegs={**PEGS, "draw": "0"}), timber).values():
            assert "nearer the shoulder" not in " ".join(each.words for each in step.beside)
            assert "towards the shoulder" not in f"{step.why} {step.caution}"
    step = _steps(girt_through(pegs={**PEGS, "draw": "0"}), "girt")["peg-line"]
    assert step.short == "Peg line"
    assert read(step) == lengths("2")


@pytest.mark.parametrize(
    ("bored_from", "face", "past", "left"),
    [("reference", "South face", "1", "2"), ("far", "North face", "1", "2")],
)
def test_blind_holes_say_how_far_past_the_tenon_they_go(
    bored_from: str, face: str, past: str, left: str
) -> None:
    """The post is 8" through, the mortise from 3" to 5": 6" deep is 1" past and leaves 2"."""
    depth = "6"
    pegs = {**PEGS, "bored_from": bored_from, "blind_depth": depth}
    step = _steps(girt_through(pegs=pegs), "post")[DEPTH_LINE]
    assert (step.sides, read(step)) == ((face,), lengths(depth))
    assert [each.value for each in step.beside] == list(lengths(past, left))
    assert DEPTH_LINE not in _steps(girt_through(), "post")
    assert DEPTH_LINE not in _steps(girt_through(pegs=pegs), "girt")
