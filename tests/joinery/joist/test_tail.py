"""The lines on a dovetailed joist's end, with their figures, faces and waste."""

from benchmate.joinery.joist.tail import (
    DRAWS,
    NECK,
    cut_flanks,
    cut_under,
    flank_name,
    tail_cuts,
    tail_lines,
)
from benchmate.joinery.joist.tail_shape import FAR, NEAR
from benchmate.model.directions import Face
from tests.builders import length, lengths, line, read
from tests.floor import Floor, over
from tests.joinery.joist.tails import HALF, LOW, tailed

SQUARE = over(LOW, (0, 0, 16, 8), "square")
"""By square rule in a reference face: joist 1/2" over below and 1/4" aside, no housing."""


def test_the_lines_in_order() -> None:
    """The shoulder, both flanks, and the underside where wood comes off it."""
    assert [each.id for each in tail_lines(tailed().shapes[0])] == ["shoulder", NEAR, FAR]
    half = tail_lines(tailed(end_depth="3-1/2").shapes[0])
    assert [each.id for each in half] == ["shoulder", NEAR, FAR, "tail-underside"]
    straight = tail_lines(tailed(straight="west").shapes[0])
    assert [each.id for each in straight] == ["shoulder", NEAR]


def test_the_figures_of_a_tail() -> None:
    """Flanks in from the reference side at the shoulder, their other end at the tip."""
    steps = tailed(end_depth="3-1/2").steps("joist")
    struck = {name: step for name, step in steps.items() if step.line}
    found = {name: (read(step)[0], step.readings[0].hook) for name, step in struck.items()}
    assert found["shoulder"] == (length("3"), "squared south end")
    assert found[NEAR] == (length("3/4"), "East face")
    assert found[FAR] == (length("3-1/4"), "East face")
    assert found["tail-underside"] == (length("3-1/2"), "top face")
    assert steps[NEAR].readings[0].way.endswith("on the shoulder line")
    ends = {name: steps[name].beside[0] for name in (NEAR, FAR)}
    assert [each.value for each in ends.values()] == list(lengths("0", "4"))
    assert all("on the tail's end" in each.words for each in ends.values())


def test_flanks_are_named_by_where_they_look() -> None:
    """Alike on joist and beam, whichever side the joist is measured from."""
    east_first, west_first = (tailed(LOW.with_(left=left)).shapes[0] for left in (True, False))
    assert (flank_name(east_first, NEAR), flank_name(east_first, FAR)) == (
        "East flank",
        "West flank",
    )
    assert flank_name(west_first, NEAR) == "West flank"


def test_waste_and_faces() -> None:
    """Outside each flank; on the top, and below too where the tail is as deep as the joist."""
    deep, half = tailed().steps("joist"), tailed(end_depth="3-1/2").steps("joist")
    assert (deep[NEAR].waste_side, deep[FAR].waste_side) == ("East face", "West face")
    assert half["tail-underside"].waste_side == "underside"
    assert deep[NEAR].faces == (Face.FIRST, Face.FAR_FIRST)
    assert half[NEAR].faces == (Face.FIRST,)
    assert deep["shoulder"].waste_side == "south end"


def test_what_can_hurt_carries_its_caution() -> None:
    """A knife across the neck, a joint that opens as it dries, a far line from the far side."""
    steps = tailed(end_depth="3-1/2").steps("joist")
    assert steps["shoulder"].caution == NECK
    assert steps[NEAR].caution == DRAWS
    assert steps[FAR].caution == f"Never measure this from the West face. {DRAWS}"
    assert steps["tail-underside"].caution == "Never measure this from the underside."
    far = tailed(Floor(near=False, lower="1", other=True)).steps("joist")
    assert far["shoulder"].caution.startswith("Measure Beam's North face")


def test_a_straight_flank_is_cut_only_where_its_stick_is_over() -> None:
    """By square rule in a reference face it comes to the inner timber past the shoulder."""
    plain, _ = tailed(straight="west").shapes
    assert [plane.line for plane in cut_flanks(plain)] == [NEAR]
    found = tailed(SQUARE, straight="west")
    tail, _ = found.shapes
    assert [plane.line for plane in cut_flanks(tail)] == [NEAR, FAR]
    far = line(tail_lines(tail), FAR)
    assert far.slant is None
    assert far.at == length("4")
    assert "inner timber" in far.why
    assert read(found.steps("joist")[FAR]) == lengths("4")


def test_where_the_whole_end_is_reduced_no_cut_is_made_twice() -> None:
    """The reduction takes what is below the tail and outside a straight flank."""
    tail, _ = tailed(HALF, straight="west").shapes
    assert not cut_under(tail)
    assert [plane.line for plane in cut_flanks(tail)] == [NEAR]
    planes = [{plane.line for plane in cut.planes} for cut in tail_cuts(tail)]
    assert planes == [
        {"shoulder", NEAR},
        {"reduction-stop", "tail-underside"},
        {"reduction-stop", FAR},
    ]
    assert [each.id for each in tail_lines(tail)] == [
        "shoulder",
        NEAR,
        FAR,
        "tail-underside",
        "reduction-stop",
    ]


def test_a_shallow_tail_in_a_reduced_end_is_cut_below_on_its_own() -> None:
    """The joist goes in 7" deep and its tail is 4"."""
    tail, _ = tailed(HALF, end_depth="4").shapes
    assert cut_under(tail)
    ids = [each.id for each in tail_lines(tail)]
    assert ids[3:] == ["tail-underside", "reduction-stop", "reduced-first", "reduced-second"]
