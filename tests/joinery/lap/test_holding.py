"""What keeps a lap from drawing: flanks, slot and cog, as lines to strike."""

from benchmate.joinery.lap.holding import slot_width
from benchmate.joinery.lap.telling import shrinks
from benchmate.layout.step import Step
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import LONG_FACES, Face
from tests.builders import length, lengths, read
from tests.joinery.lap.crossings import COGGED, DOVETAIL, SQUARE, both, crossed, sizes_of, steps

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)


def _beside(step: Step) -> dict[str, object]:
    return {each.words: each.value for each in step.beside}


def test_a_flank_runs_from_the_shoulder_to_the_end() -> None:
    """1" in at the shoulder, nothing at the end; 4" of tail, 6" wide: on the tie (7.6, slip 7)."""
    found = steps(crossed(**DOVETAIL), "tie")
    for name, at, end, side in (
        ("near-flank", "1", "0", "North"),
        ("far-flank", "5", "6", "South"),
    ):
        step = found[name]
        assert step.short == f"Flank line, {side} side"
        assert (read(step), step.readings[0].hook) == (lengths(at), "North face")
        assert step.readings[0].way.endswith("on the shoulder line")
        assert step.waste_side == f"{side} face"
        assert _beside(step) == {
            "from the North face on the east end": length(end),
            f"to come off the {side} face at the shoulder": length("1"),
            "of tail left at the shoulder": length("4"),
            "wide at the east end": length("6"),
        }
    assert not [name for name in steps(crossed(**DOVETAIL), "plate") if "flank" in name]


def test_a_flank_has_the_caution_that_it_opens() -> None:
    """And the far one that it is not measured from its own side."""
    found = steps(crossed(**DOVETAIL), "tie")
    assert found["near-flank"].caution == shrinks(TAPE)
    assert found["far-flank"].caution == f"Never measure this from the South face. {shrinks(TAPE)}"


def test_the_far_flank_says_what_its_width_goes_by() -> None:
    """Measured or not by mill rule, the inner timber by square rule."""
    for words, sizes, said in (
        (DOVETAIL, {}, "Not measured here yet"),
        (DOVETAIL, sizes_of(tie=("8", "6")), "measured here"),
        (DOVETAIL | SQUARE | {"up": "5-1/2"}, {}, "as the inner timber"),
    ):
        found = steps(crossed(sizes, **words), "tie")
        assert said in found["far-flank"].why
        assert said not in found["near-flank"].why


def test_by_square_rule_what_is_over_comes_off_beside_the_flank() -> None:
    """A tie 1/2" over its inner 5-1/2" loses 1-1/2" at the shoulder on its far side."""
    sizes = sizes_of(tie=("8", "6"))
    far = steps(crossed(sizes, **(DOVETAIL | SQUARE | {"up": "5-1/2"})), "tie")["far-flank"]
    assert read(far) == lengths("4-1/2")
    assert _beside(far)["to come off the South face at the shoulder"] == length("1-1/2")


def test_a_tail_that_runs_on_is_widest_at_the_far_face() -> None:
    """Which is then struck as a line of its own."""
    joint = {"flare": "1", "past": "10"}
    found = steps(crossed(up="6", joint=joint), "tie")
    outside = found["outside"]
    assert (read(outside), outside.faces) == (lengths("104"), LONG_FACES)
    assert outside.short == "Line of Plate's East face"
    assert _beside(outside) == {"of the timber beyond it": length("10")}
    flank = found["near-flank"]
    assert "from the North face on the line of Plate's East face" in _beside(flank)
    assert "outside" not in steps(crossed(**DOVETAIL), "tie")


def test_a_reduced_end_that_runs_on_is_reduced_to_the_far_face_only() -> None:
    """Past the plate the tie keeps its full width; one without anything to reduce has no line."""
    joint = {"past": "10"}
    words = SQUARE | {"joint": joint}
    found = steps(crossed(sizes_of(tie=("8", "6"), plate=("8", "8")), **words), "tie")
    outside = found["outside"]
    assert (read(outside), outside.waste_side) == (lengths("104"), "west end")
    assert outside.caution == "Only where it is reduced."
    assert Face.FAR_SECOND in outside.faces
    assert "outside" not in steps(crossed(joint=joint), "tie")


def test_a_slot_and_its_cog() -> None:
    """Two lines each; the cog's waste lies outside it, the slot's inside."""
    built = crossed(**COGGED)
    tie, plate = (steps(built, name) for name in ("tie", "plate"))
    struck = {
        name: (read(step), step.waste_side, step.faces)
        for name, step in {**tie, **plate}.items()
        if name.startswith(("slot-", "cog-")) and step.line
    }
    across = (Face.SECOND, Face.FAR_FIRST, Face.FAR_SECOND)
    assert struck == {
        "slot-start": (lengths("99"), "east end", across),
        "slot-finish": (lengths("101"), "west end", across),
        "cog-near": (lengths("3"), "East face", (Face.FIRST,)),
        "cog-far": (lengths("5"), "West face", (Face.FIRST,)),
    }
    assert "hatch beside it" in plate["cog-near"].caution
    assert _beside(plate["cog-far"]) == {"of cog left standing": length("2")}
    assert slot_width(both(**COGGED)[0]) == length("2")
    for name in ("slot-start", "slot-finish"):
        assert _beside(tie[name])["slot width"] == length("2")


def test_a_cog_in_a_face_has_one_line() -> None:
    """The other would fall on the arris."""
    joint = {"cog": "2", "cog_set_back": "0"}
    found = steps(crossed(**(COGGED | {"joint": joint})), "plate")
    assert ("cog-near" in found, "cog-far" in found) == (False, True)
