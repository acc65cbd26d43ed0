"""The lines to strike for a lap: where, on which faces, with the waste on which side."""

import pytest

from benchmate.joinery.lap.lines import NOT_OVERALL
from benchmate.joinery.lap.telling import ENGINEER
from benchmate.layout.step import Step
from benchmate.model.directions import LONG_FACES, Face
from tests.builders import length, lengths, read
from tests.joinery.lap.crossings import DOVETAIL, SQUARE, crossed, sizes_of, steps


def _struck(found: dict[str, Step]) -> dict[str, tuple[object, ...]]:
    return {
        name: (read(step), step.readings[0].hook, step.waste_side, step.faces)
        for name, step in found.items()
        if step.line
    }


def test_the_lines_of_a_half_lap_and_its_notch() -> None:
    """Half depth each (trade.md 2.6, Rivington-scarf), both struck from the top."""
    built = crossed()
    assert _struck(steps(built, "tie")) == {
        "shoulder": (
            lengths("96"),
            "squared west end",
            "east end",
            (Face.SECOND, Face.FAR_FIRST, Face.FAR_SECOND),
        ),
        "lap": (
            lengths("4"),
            "top face",
            "underside",
            (Face.SECOND, Face.FAR_SECOND, Face.FAR_END),
        ),
    }
    sides = (Face.FIRST, Face.SECOND, Face.FAR_SECOND)
    assert _struck(steps(built, "plate")) == {
        "start": (lengths("48"), "squared south end", "north end", sides),
        "finish": (lengths("54"), "squared south end", "south end", sides),
        "floor": (lengths("4"), "top face", "top face", (Face.SECOND, Face.FAR_SECOND)),
    }


def test_the_two_lengths_are_never_mixed_up() -> None:
    """Shoulder to shoulder at the far end; at the reference end the shoulder is the datum."""
    for turned, at in ((False, "96"), (True, "8")):
        shoulder = steps(crossed(from_the_lap=turned), "tie")["shoulder"]
        assert read(shoulder) == lengths(at)
        assert (NOT_OVERALL in shoulder.caution) is not turned
        assert ("measure everything from this line" in shoulder.why) is turned
        assert shoulder.beside[0].value == length("8")


def test_the_shoulder_waits_for_the_face_it_follows() -> None:
    """The plate's near face is its far one here, and it is not measured yet."""
    for turned in (False, True):
        first = steps(crossed(from_the_lap=turned), "tie")["shoulder"].caution
        assert first.startswith("Measure Plate's West face at the joint first")
        known = crossed(sizes_of(plate=("8", "8")), from_the_lap=turned)
        assert "Measure" not in steps(known, "tie")["shoulder"].caution


def test_a_shoulder_that_nothing_is_cut_to_is_still_a_datum() -> None:
    """A tie let in whole: struck all round in pencil, and no side is its waste."""
    found = steps(crossed(up="6", joint={"share": "2"}, from_the_lap=True), "tie")
    shoulder = found["shoulder"]
    assert (shoulder.faces, shoulder.waste, shoulder.waste_side) == (LONG_FACES, "", "")
    assert shoulder.caution.endswith("Pencil it only: nothing is cut to it.")
    assert "lap" not in found


def test_how_far_a_lap_runs_past_is_told_at_its_shoulder() -> None:
    """Beside the lap as a whole."""
    shoulder = steps(crossed(joint={"past": "10"}), "tie")["shoulder"]
    assert [(each.value, each.words) for each in shoulder.beside] == [
        (length("18"), "of lap beyond it"),
        (length("10"), "of that runs on past Plate"),
    ]


def test_the_bed_says_what_goes_and_what_stays() -> None:
    """And that the engineer decides how deep it may be."""
    lap = steps(crossed(sizes_of(tie=("8-1/2", "6"))), "tie")["lap"]
    assert [(each.value, each.words) for each in lap.beside] == [
        (length("4-1/2"), "to come off the underside"),
        (length("4"), "left of it, to the top face"),
    ]
    assert lap.caution == f"Never measure this from the underside. {ENGINEER}"
    floor = steps(crossed(), "plate")["floor"]
    assert floor.caution == ENGINEER


def test_the_notch_says_whose_width_it_goes_by() -> None:
    """The plate's by the tie's lap, a crossing tie's by the plate as measured."""
    built = crossed(ends=False)
    assert "has not been measured there yet" in steps(built, "tie")["start"].why
    assert "Follows Tie's notch as laid out" in steps(built, "plate")["start"].why
    known = crossed(sizes_of(plate=("8", "8-1/2")), ends=False)
    start = steps(known, "tie")["start"]
    assert "as it was measured there" in start.why
    assert [(each.value, each.words) for each in start.beside] == [(length("8-1/2"), "notch width")]


def test_a_reduction_is_struck_from_the_reference_face() -> None:
    """And stops where the other timber does; a line of its own only where no other serves."""
    sizes = sizes_of(tie=("8", "6"), plate=("8", "7-7/8"))
    built = crossed(sizes, ends=False, up="2", **SQUARE)
    tie, plate = (steps(built, name) for name in ("tie", "plate"))
    assert _struck(tie)["reduced"] == (
        lengths("5-1/2"),
        "North face",
        "South face",
        (Face.FAR_FIRST,),
    )
    assert tie["reduced"].beside[0].value == length("1/2")
    assert tie["ledge"].short == "Line of Plate's top face"
    assert plate["ledge"].short == "Line of Tie's underside"
    assert (plate["reduction-start"].short, read(plate["reduction-start"])) == (
        "Reduction start line",
        lengths("48"),
    )
    assert "reduction-finish" not in plate
    assert "never" in plate["reduced"].caution.lower()


@pytest.mark.parametrize("name", ["tie", "plate"])
def test_a_dovetail_has_its_lines_in_the_order_struck(name: str) -> None:
    """How far down its sides a tail is cut comes first, as shoulder and flanks stop there.

    Then the shoulder or the socket, and the bed.
    """
    struck = [key for key, step in steps(crossed(**DOVETAIL), name).items() if step.line]
    assert (
        struck
        == {
            "tie": ["ledge", "shoulder", "near-flank", "far-flank"],
            "plate": ["start", "finish", "floor"],
        }[name]
    )


def test_what_goes_beside_a_tail_is_not_taken_for_the_lap() -> None:
    """Let in by half its depth, a tail has both lines: across it the one further down counts."""
    whole = steps(crossed(**DOVETAIL), "tie")["ledge"]
    assert whole.waste == "Towards the underside, beside the tail only, in to the flank lines."
    assert steps(crossed(**DOVETAIL), "plate")["floor"].waste == "Towards the top face."
