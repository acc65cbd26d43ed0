"""What is said of a tenon that goes on past one timber into another."""

import pytest

from benchmate.frame.practice import DRILL
from benchmate.joinery.tenon.past import (
    comes_past,
    draw_ends,
    from_the_face,
    notched,
    spare_words,
    under_the_notch,
)
from benchmate.joinery.tenon.shape import shape
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Beside, Stage
from tests.builders import length, lengths, read, real
from tests.joinery.tenon.girts import girt_tenon, girt_through
from tests.joinery.tenon.head_ties import MORTISE, Lie, head_tenon, head_tie, made
from tests.joinery.tenon.sill_corners import mortise, sill_corner


def _steps(timber: str, feature: str, **words: object) -> dict[str, Step]:
    steps = lay_out(head_tie(**words), timber).steps  # type: ignore[arg-type]
    return {step.id.partition("/")[2]: step for step in steps if step.feature == feature}


def test_all_of_it_is_drawn_before_any_end_is_cut() -> None:
    """Or the second tenon is cut off with the first (trade.md 2.5, TFG-etj)."""
    steps = _steps("post", "head-tenon")
    drawn = steps["draw-ends"]
    assert drawn.stage is Stage.MARK
    assert (read(drawn), drawn.readings[0].hook) == (lengths("10"), "head shoulder line")
    assert drawn.beside == (
        Beside(length("7"), "of it to Plate's top face"),
        Beside(length("3"), "of it past that, for Tie"),
    )
    assert drawn.caution == (
        "Never saw it off at Plate's top face: the tenon for Tie would be gone with it."
    )
    order = [step.id for step in lay_out(head_tie(), "post").steps]
    assert order.index("head-tenon/draw-ends") < order.index("end/saw")


def test_a_tenon_that_ends_in_the_first_draws_nothing_more() -> None:
    """Neither one that stands proud of it for its own sake, nor a blind one."""
    proud = head_tenon({"beyond": None})
    assert draw_ends(shape(proud, head_tie(joint={"beyond": None}))) == ()
    blind = {"through": False, "length": "4", "held_short": "0"}
    assert draw_ends(shape(girt_tenon(blind), girt_through(blind))) == ()


def test_its_shoulder_says_where_it_goes() -> None:
    """Through the plate, past it and into the tie."""
    step = _steps("post", "head-tenon")["shoulder"]
    assert step.why.endswith(
        " The tenon goes right through and goes on past Plate's top face into Tie."
    )
    assert step.beside[1] == Beside(length("3"), "proud of Plate's top face, at the tenon's end")


def test_the_mortise_says_where_the_tenon_comes_from() -> None:
    """Nothing in the timber that its shoulder bears on."""
    assert comes_past(made(head_tie())) == "The tenon comes on past Plate's top face. "
    assert comes_past(mortise(sill_corner(), "post-foot")) == ""
    start = _steps("tie", MORTISE)["start"]
    assert start.why.startswith("The tenon comes on past Plate's top face. Follows Post's head")


@pytest.mark.parametrize(("down", "overlaps"), [("0", False), ("1/64", True), ("-1", False)])
def test_where_the_two_overlap_one_may_be_notched(down: str, overlaps: bool) -> None:
    """Which of them, another joint says; so the caution says if."""
    found = made(head_tie(lie=Lie(down=down)))
    assert bool(notched(found)) is overlaps
    assert bool(under_the_notch(found)) is overlaps
    assert ("go so much less deep as the notch is" in from_the_face(found)) is overlaps


def test_a_notch_is_cut_first_and_the_depth_is_kept() -> None:
    """4-1/8" from the underside of 9" leaves 4-7/8", whatever is cut away in between."""
    steps = _steps("tie", MORTISE)
    strike_anew = (
        "Where this timber is notched over Plate, cut the notch before the mortise, and strike "
        "the mortise anew on its floor."
    )
    assert steps["start"].caution == steps["knife"].caution == strike_anew
    left = Beside(length("4-7/8"), "left to the top face, however deep a notch there is")
    for name in ("depth", "bore", "try-depth"):
        assert (read(steps[name]), steps[name].readings[0].hook) == (lengths("4-1/8"), "underside")
        assert length("4-7/8") in [each.value for each in steps[name].beside]
        assert "Counted from the underside as it was before any notch" in steps[name].caution
    assert steps["bore"].caution.endswith(DRILL)
    assert steps["bore"].beside == steps["try-depth"].beside == (left,)


def test_its_depth_follows_the_stick_until_that_is_measured() -> None:
    """From a far face: one that is over lies lower. From a reference face nothing moves it."""
    measured = {"tie": real({MORTISE: {"first": "9", "second": "8"}})}
    assert from_the_face(made(head_tie())).startswith("Not measured here yet: measure first")
    assert "measure first" not in from_the_face(made(head_tie(real=measured)))
    assert "measure first" not in from_the_face(made(head_tie(lie=Lie(tie=("down", "west")))))


def test_what_the_room_at_the_bottom_is_over() -> None:
    """Past the plate only part of the tenon goes in."""
    assert spare_words(made(head_tie())) == "deeper than the tenon goes in"
    assert spare_words(mortise(sill_corner(), "post-foot")) == "deeper than the tenon is long"
    assert from_the_face(mortise(sill_corner(), "post-foot")) == ""


def test_where_a_lap_is_cut_for_it_the_notch_is_no_longer_in_doubt() -> None:
    """An inch of overlap, half of it from the tie: 4-1/8" deep from its underside is 3-5/8" there.

    What is left over it, 4-7/8" of 9", does not change.
    """
    steps = _steps("tie", MORTISE, lap={})
    assert steps["start"].caution == (
        "On the underside the notch for Plate takes these lines away: it is cut first, and they "
        "are struck anew on its floor."
    )
    left = Beside(length("4-7/8"), "left to the top face")
    for name in ("depth", "bore", "try-depth"):
        found = steps[name]
        assert (read(found), found.readings[0].hook) == (
            lengths("3-5/8"),
            "floor of the notch for Plate",
        )
        assert left in found.beside
        assert "as it was before any notch" not in found.caution
        assert "Not measured here yet" not in found.caution


def test_below_a_floor_the_depth_is_the_same_on_every_stick() -> None:
    """Floor and bottom both count from the face above, so a tie that is over changes neither."""
    over = {"tie": real({MORTISE: {"first": "9-1/4", "second": "8"}})}
    for sticks in (None, over):
        depth = _steps("tie", MORTISE, lap={}, real=sticks)["depth"]
        assert read(depth) == lengths("3-5/8")


def test_lines_that_went_with_the_notch_are_struck_anew_on_its_floor() -> None:
    """Each from where it first was; nothing is knifed on a face that is about to go."""
    steps = _steps("tie", MORTISE, lap={})
    assert "knife" not in steps
    anew = steps["strike-anew"]
    assert anew.title.endswith(
        "strike the mortise anew on the floor of the notch for Plate, knife its ends"
    )
    assert anew.on == "underside"
    struck = [steps[name].readings[0] for name in ("start", "finish", "near-side", "far-side")]
    assert [(each.value, each.hook) for each in anew.readings] == [
        (each.value, each.hook) for each in struck
    ]
