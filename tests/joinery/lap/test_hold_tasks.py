"""What to do at a tail, a slot and a cog."""

from benchmate.frame.practice import CHISEL, SAW
from benchmate.joinery.lap.hold_tasks import COG_STAYS, cog_caution, width_readings
from benchmate.layout.step import Step
from benchmate.model.feature import Stage
from tests.builders import length, lengths
from tests.joinery.lap.crossings import COGGED, DOVETAIL, SQUARE, both, crossed, sizes_of, steps


def _figures(found: dict[str, Step]) -> dict[str, list[tuple[object, str]]]:
    return {
        name: [(each.value, each.hook) for each in step.readings]
        for name, step in found.items()
        if step.stage is Stage.CUT
    }


def test_a_flank_is_sawn_at_its_root_and_then_cut() -> None:
    """So deep at the shoulder, and no higher than the plate goes."""
    found = steps(crossed(sizes_of(tie=("8", "6")), **DOVETAIL), "tie")
    assert _figures(found) == {
        "saw-near-flank-root": [(length("1"), "North face")],
        "cut-near-flank": [],
        "saw-far-flank-root": [(length("1"), "South face")],
        "cut-far-flank": [],
    }
    limit = ", only as far as the line of Plate's top face."
    for name, step in found.items():
        if name in _figures(found):
            assert step.waste.endswith(limit)
    assert found["saw-near-flank-root"].caution.endswith(SAW)
    assert CHISEL in found["cut-far-flank"].caution
    assert found["cut-far-flank"].draws == "far-flank"


def test_a_root_on_the_far_face_waits_for_its_size() -> None:
    """By square rule what is over comes off with the flank, so it is as much deeper."""
    found = steps(crossed(**DOVETAIL), "tie")
    assert found["saw-far-flank-root"].caution.startswith("Not measured here yet")
    assert not found["saw-near-flank-root"].caution.startswith("Not measured")
    words = DOVETAIL | SQUARE | {"up": "5-1/2"}
    over = _figures(steps(crossed(sizes_of(tie=("8", "6")), **words), "tie"))
    assert list(over) == [
        "saw-near-flank-root",
        "cut-near-flank",
        "saw-far-flank-root",
        "cut-far-flank",
        "saw-shoulder",
        "saw-lap",
    ]
    assert over["saw-far-flank-root"] == [(length("1-1/2"), "South face")]


def test_a_tail_through_the_whole_timber_has_no_such_limit() -> None:
    """A dovetailed half lap: its flanks run from the lap right up."""
    found = steps(crossed(sizes_of(tie=("8", "6")), joint={"flare": "1"}), "tie")
    assert found["saw-near-flank-root"].caution == SAW
    assert "only as far" not in found["saw-near-flank-root"].waste


def test_a_slot_is_sawn_and_chopped_before_the_notch() -> None:
    """While the face that its depth counts from is still there."""
    words = COGGED | {"joint": {"cog": "2", "share": "1-1/2"}}
    found = steps(crossed(sizes_of(tie=("8", "6")), **words), "tie")
    assert _figures(found) == {
        "saw-slot": [(length("2"), "underside")],
        "chop-slot": [(length("2"), "slot start")],
        "saw-sides": [(length("1/2"), "underside")],
        "chop": [(length("1/2"), "underside")],
    }
    assert found["saw-slot"].readings[0].way.endswith("to the line of Plate's top face")
    assert found["saw-slot"].caution == SAW
    unknown = steps(crossed(**words), "tie")
    assert unknown["saw-slot"].caution.startswith("Not measured here yet")


def test_the_cog_is_not_chopped_away() -> None:
    """The caution stands at the knife, the saw and the chisel."""
    found = steps(crossed(**COGGED), "plate")
    for name in ("knife", "saw-sides", "chop"):
        assert COG_STAYS in found[name].caution
    tie, plate = both(**COGGED)
    assert (cog_caution(tie), cog_caution(plate)) == ("", COG_STAYS)


def test_a_notch_has_one_width_and_a_socket_two() -> None:
    """One figure to one task."""
    _, plate = both(ends=False)
    assert [(name, each.value) for name, _, each in width_readings(plate)] == [
        ("sides", length("6"))
    ]
    _, socket = both(**DOVETAIL)
    found = [(name, each.value, each.way) for name, _, each in width_readings(socket)]
    assert found == [
        ("narrow", length("4"), "to the finish, at the West face"),
        ("wide", lengths("6")[0], "to the finish, at the East face"),
    ]
