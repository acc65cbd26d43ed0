"""What is measured of the half that is cut first."""

from benchmate.joinery.lap.sizes import as_cut_task, made, sizes
from benchmate.model.directions import Face
from benchmate.model.feature import Asks
from tests.builders import length, lengths, real
from tests.joinery.lap.crossings import COGGED, DOVETAIL, both


def test_what_is_left_and_how_wide_it_is() -> None:
    """The plate's bed and the width of its notch follow from these."""
    tie, plate = both()
    assert [(size.name, size.laid_out) for size in sizes(tie)] == [
        ("thickness", length("4")),
        ("width", length("6")),
    ]
    assert sizes(plate) == ()


def test_a_tail_is_measured_where_it_is_widest() -> None:
    """And nothing is left to measure of a tie that is let in whole."""
    tie, _ = both(**DOVETAIL)
    ((name, at, how),) = sizes(tie)
    assert (name, at) == ("width", length("6"))
    assert "widest" in how
    (reading,) = as_cut_task(tie).readings
    assert reading.way.endswith("where it is widest")


def test_a_slot_is_measured_for_the_cog() -> None:
    """Along the timber."""
    tie, _ = both(**COGGED)
    assert [size.name for size in sizes(tie)] == ["width", "length"]
    assert sizes(tie)[1].laid_out == length("2")


def test_a_corner_is_measured_for_its_bed_only() -> None:
    """Its end has no wall beside it."""
    tie, _ = both(corner="north")
    assert [size.name for size in sizes(tie)] == ["thickness"]
    assert as_cut_task(tie).caution == "What is left counts from the top face."


def test_measuring_shows_what_was_typed() -> None:
    """As cut where it was, otherwise as laid out; hooked on the faces the other is laid out by."""
    made = {"tie": real(as_cut={"east-end-lap": {"width": "5-7/8"}})}
    task = as_cut_task(both(made)[0])
    assert [(each.value, each.hook) for each in task.readings] == [
        (length("4"), "top face"),
        (length("5-7/8"), "North face"),
    ]
    assert (task.asks, task.lasting, task.faces) == (Asks.AS_CUT, False, (Face.FAR_END,))
    assert task.caution == (
        "What is left counts from the top face, the width counts from the North face."
    )
    crossing = as_cut_task(both(ends=False)[0])
    assert crossing.faces == (Face.FAR_FIRST,)
    assert [each.value for each in crossing.readings] == list(lengths("4", "6"))


def test_where_the_bed_came_out_is_known_once_it_was_measured() -> None:
    """What is left of the tie counts from its top, so its bed lies so deep; the plate has none."""
    tie, plate = both()
    assert made(tie) == ()
    tie, plate = both({"tie": real(as_cut={tie.lie.place: {"thickness": "3-7/8"}})})
    assert [(each.line, each.at) for each in made(tie)] == [(tie.bed.line, length("3-7/8"))]
    assert made(plate) == ()
