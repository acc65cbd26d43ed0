"""The lines of a notch: as a framer strikes them."""

from benchmate.joinery.rafter.seat.notch import level_words, notch_cuts, notch_lines
from benchmate.measure.length import NM_PER_INCH, Length
from benchmate.measure.printing import Style, Tape
from benchmate.model.feature import Line
from benchmate.model.solids import Axis
from tests.builders import length, line, real, set_in_words
from tests.joinery.rafter.roofs import Roof, tail
from tests.joinery.rafter.seat.test_shape import decimal, shape

TAPE = Tape(style=Style.INCHES)

ROOF = Roof(rise="9", over=decimal(5.25))
"""The 9/12 row of the trade notes' table 7.4, at 3-4-5: a 3" seat and a 2-1/4" heel in 6"."""


def beside(found: Line) -> dict[str, Length]:
    """The figures beside a line, by the first words of each."""
    return {each.words: each.value for each in found.beside}


def lines(roof: Roof, **words: object) -> tuple[Line, ...]:
    """The lines of a notch."""
    return notch_lines(shape(roof, **words), TAPE)  # type: ignore[arg-type]


def test_the_heel_is_struck_from_the_top_edge_at_its_running_distance() -> None:
    """12" out at 3-4-5 is 15" along; down to the underside it comes back 4-1/2"."""
    heel = line(lines(ROOF), "heel")
    assert (heel.axis, heel.at) == (Axis.ALONG, length("15"))
    assert heel.slant is not None
    assert abs((heel.slant.finish.along - length("10-1/2")).nm) <= 1
    assert heel.slant.where == ("top face", "underside")
    assert "strike along the tongue" in set_in_words(heel.slant.setting)
    assert list(beside(heel).values()) == [length("5-1/4"), length("2-1/4"), length("7-1/2")]


def test_the_height_above_plate_is_measured_down_the_heel_line() -> None:
    """Then level from there, along the blade."""
    found = line(lines(ROOF), "seat")
    (reading,) = found.readings
    assert reading.value == length("5-1/4")
    assert reading.words == "from the top edge, down the heel line, then level"
    assert found.slant is not None
    assert "strike along the blade" in set_in_words(found.slant.setting)


def test_all_figures_of_a_notch_are_shown() -> None:
    """Seat, bearing, wood left square, and the notch with its share of the depth (table 7.4)."""
    found = beside(line(lines(ROOF), "seat"))
    assert found["long, level"] == length("3")
    assert found["of it stands on Plate"] == length("3")
    assert found["of wood left at the least, square to the rafter"] == decimal(4.2)
    assert found["of notch, square: 30 % of the rafter's depth"] == decimal(1.8)


def test_a_seat_let_in_shows_its_height_above_plate_too() -> None:
    """What is left over the seat is 1" more than the height above plate."""
    found = line(lines(ROOF, let_in="1"), "seat")
    assert found.readings[0].value == length("6-1/4")
    assert beside(found)["height above plate"] == length("5-1/4")


def test_a_step_seat_is_struck_by_two_pairs() -> None:
    """Heel and ledge over the step, abutment and seat behind it; each plumb by its own distance."""
    found = lines(ROOF, let_in="1", step="1-1/2")
    assert [each.id for each in found] == ["heel", "abutment", "ledge", "seat"]
    assert line(found, "abutment").at == length("15") + decimal(1.875)
    assert line(found, "ledge").readings[0].way == "down the heel line, then level"
    assert line(found, "seat").readings[0].way == "down the abutment line, then level"
    assert line(found, "seat").readings[0].value == length("5-1/4 ") + length("1-1/8") + length("1")


def test_without_a_tail_the_seat_is_measured_down_the_tail_line() -> None:
    """The rafter's own plumb cut stands for the heel."""
    found = notch_lines(shape(Roof(out="0"), tail()), TAPE)
    assert [each.id for each in found] == ["seat"]
    assert found[0].readings[0].way == "down the tail line, then level"


def test_a_step_without_a_tail() -> None:
    """The ledge is then measured down the abutment line and runs out at the rafter's end."""
    found = notch_lines(shape(Roof(out="0"), tail(), let_in="1", step="1"), TAPE)
    assert [each.id for each in found] == ["abutment", "ledge", "seat"]
    assert line(found, "ledge").readings[0].way == "down the abutment line, then level"


def test_one_notch_is_one_cut() -> None:
    """A step makes a second, and square rule one for the far side."""
    assert len(notch_cuts(shape(ROOF))) == 1
    assert len(notch_cuts(shape(ROOF, let_in="1", step="1"))) == 2
    ruled = Roof(own={"rafter": {"rule": "square", "inner": "6 x 4"}})
    sticks = {"rafter": real({"all": {"second": "4-1/4"}})}
    found = shape(ruled, sticks=sticks, let_in="1")
    assert len(notch_cuts(found)) == 2
    reduced = line(notch_lines(found, TAPE), "reduced-second")
    assert reduced.at == length("4")


def test_a_plate_that_nobody_measured_is_cautioned_about() -> None:
    """By mill rule the heel goes by the plate's far face, the seat by its far top."""
    found = lines(Roof(plate_faces=("down", "in")))
    assert "Plate's West face" in line(found, "heel").caution
    assert "Plate's top face" in line(found, "seat").caution


def test_where_the_heel_stops() -> None:
    """At the seat line, or at the ledge over a step."""
    assert level_words(shape(ROOF)) == "seat line"
    assert level_words(shape(ROOF, let_in="1", step="1")) == "ledge line"
    assert "to the seat line" in line(lines(ROOF), "heel").caution


def test_the_lines_of_a_side_that_is_reduced() -> None:
    """They end at the plate's real top and outside where those are not the notch's own lines."""
    own = {
        "plate": {"rule": "square", "inner": "8 x 6"},
        "rafter": {"rule": "square", "inner": "6 x 4"},
    }
    sticks = {
        "plate": real({"all": {"first": "8-1/4", "second": "6-3/8"}}),
        "rafter": real({"all": {"first": "6", "second": "4-1/4"}}),
    }
    roof = Roof(own=own, plate_faces=("down", "in"))
    found = notch_lines(shape(roof, sticks=sticks), TAPE)
    assert "inner timber's West face" in line(found, "heel").why
    assert "the floor let into Plate" in line(found, "seat").why
    upper = line(found, "reduction-top")
    assert (upper.readings[0].value, upper.readings[0].hook) == (length("1/4"), "seat line")
    outside = line(found, "reduction-outside")
    back = (line(found, "heel").at - outside.at).nm / NM_PER_INCH
    assert abs(back - 0.375 * 2**0.5) < 1e-6
