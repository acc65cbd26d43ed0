"""Both sides of a seat from one record."""

from benchmate.checks.joints import cuts_meet, near_joints
from benchmate.joinery import FAMILIES
from benchmate.joinery.rafter.seat.family import FAMILY, features
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.model.findings import Severity
from tests.builders import codes, length, real
from tests.joinery.rafter.roofs import Roof, built, seat, tail


def test_it_is_in_the_catalogue() -> None:
    """Under the word of the project file."""
    assert FAMILY in FAMILIES
    assert FAMILY.name == "rafter seat"


def test_both_sides_are_made_at_once() -> None:
    """The notch on the rafter, the seat on the plate, each with what it is called."""
    notch, plate = features(seat(), built(Roof(), seat()))
    assert (notch.timber, notch.id, notch.title) == ("rafter", "wall-notch", "Seat on Plate")
    assert (plate.timber, plate.id, plate.title) == ("plate", "wall-seat", "Seat for Rafter")
    assert plate.at == length("48")


def test_what_stops_one_side_stops_the_other() -> None:
    """A rafter that passes above stops its plate's steps too; a look is told where it lies."""
    both = features(seat(), built(Roof(over="12"), seat()))
    assert [codes(side.findings) for side in both] == [("seat-above",)] * 2
    deep = features(seat(), built(Roof(over="4"), seat()))
    assert [codes(side.findings) for side in deep] == [("seat-notch-deep",), ()]
    assert deep[0].findings[0].severity is Severity.LOOK


def test_by_mill_rule_it_waits_for_far_faces() -> None:
    """The notch for the plate's, the plate's place for the rafter's width."""
    frame = built(Roof(plate_faces=("down", "in")), seat(), tail())
    rafter, plate = lay_out(frame, "rafter"), lay_out(frame, "plate")
    assert awaited(rafter, rafter.step("wall-notch/heel")) == (("plate", "wall-seat/section"),)
    assert awaited(plate, plate.step("wall-seat/start")) == (("rafter", "wall-notch/section"),)
    assert awaited(plate, plate.step("wall-seat/section")) == ()


def test_measured_faces_are_not_waited_for() -> None:
    """Once both were measured at the joint nothing waits."""
    sticks = {
        "plate": real({"wall-seat": {"first": "8", "second": "6"}}),
        "rafter": real({"wall-notch": {"first": "6", "second": "4"}}),
    }
    frame = built(Roof(plate_faces=("down", "in")), seat(), real=sticks)
    assert [side.awaits for side in features(seat(), frame)] == [(), ()]


def test_a_seat_runs_into_the_plumb_cut_of_a_rafter_without_a_tail() -> None:
    """They are meant to meet, so nothing is told of it; a tail that is too short is."""
    flush = lay_out(built(Roof(over="6", out="0"), seat(), tail()), "rafter")
    assert cuts_meet(flush, near_joints(flush)) == ()
    works = (seat(), tail(cut="level"))
    short = lay_out(built(Roof(over="6", out="6"), *works), "rafter")
    assert codes(cuts_meet(short, near_joints(short))) == ("cuts-meet",)


def test_step_ids_are_stable_words() -> None:
    """Ticks go by them."""
    layout = lay_out(built(Roof(), seat(), tail()), "rafter")
    ids = [step.id for step in layout.steps if step.feature == "wall-notch"]
    assert ids == [
        "wall-notch/section",
        "wall-notch/heel",
        "wall-notch/seat",
        "wall-notch/step-off",
        "wall-notch/knife",
        "wall-notch/saw-heel",
        "wall-notch/saw-seat",
        "wall-notch/pare",
    ]
