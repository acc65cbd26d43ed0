"""What a lap says beside its lines."""

import pytest

from benchmate.joinery.lap.telling import (
    as_placed,
    beyond_words,
    follows,
    from_far,
    ledge_title,
    ledge_words,
    part_words,
    shrinks,
)
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.solids import Axis
from tests.builders import real
from tests.joinery.lap.crossings import COGGED, DOVETAIL, SQUARE, both, sizes_of

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)
METRIC = Tape(style=Style.MM, graduation=Graduation.MM)

MADE = {
    "tie": real(
        as_cut={
            part: {"thickness": "3-7/8", "width": "5-7/8", "length": "2-1/8"}
            for part in ("east-end-lap", "lap-lap")
        }
    )
}


def test_a_dovetail_that_dries_opens() -> None:
    """About 1/4" on an 8 x 8 of white pine, so wedge it or use a cog (trade.md 2.5, TFG-etj)."""
    assert '1/4" on an 8 x 8 of white pine: wedge it' in shrinks(TAPE)
    assert "use a cog" in shrinks(TAPE)
    assert "6 mm on a 200 x 200" in shrinks(METRIC)
    assert "engineer" in shrinks(TAPE)


def test_the_part_that_comes_first() -> None:
    """Told alike from both timbers."""
    assert {part_words(half) for half in both()} == {"Tie's east end lap"}
    assert {part_words(half) for half in both(ends=False)} == {"Tie's notch"}


@pytest.mark.parametrize(
    ("size", "told"),
    [("width", '5-7/8" wide, counted from its reference side'), ("length", '2-1/8" wide at its')],
)
def test_the_second_follows_the_first_as_cut(size: str, told: str) -> None:
    """Law 5: and says so."""
    _, plate = both(MADE, **COGGED)
    assert follows(plate, size, TAPE).startswith("Follows Tie's notch as cut: ")
    assert told in follows(plate, size, TAPE)
    _, drawn = both(**COGGED)
    assert "as laid out; it has not been measured as cut" in follows(drawn, size, TAPE)


def test_the_first_follows_the_second_as_it_lies() -> None:
    """Measured or not by mill rule, the inner timber by square rule."""
    assert "not been measured" in follows(both(ends=False)[0], "width", TAPE)
    known = both(sizes_of(plate=("8", "8")), ends=False)[0]
    assert "as it was measured" in follows(known, "width", TAPE)
    assert "By square rule" in follows(both(ends=False, **SQUARE)[0], "width", TAPE)


def test_what_the_bed_goes_by() -> None:
    """The reference face, or the other's lap as it came out."""
    tie, plate = both()
    assert "Not measured here yet" in as_placed(tie, TAPE)
    assert as_placed(plate, TAPE).startswith("From the top face")
    assert "measured" not in as_placed(plate, TAPE).replace("sticks measure", "")
    _, made = both(MADE)
    assert as_placed(made, TAPE) == "Follows Tie's east end lap as cut: 3-7/8\" left of it."


def test_where_the_waste_of_an_end_lies() -> None:
    """On one side of it only, beside a tail, or nowhere."""
    assert beyond_words(both()[0]) == "Towards the east end, on the side of the underside."
    assert beyond_words(both(**DOVETAIL)[0]) == "Towards the east end, beside the tail."
    whole = both(joint={"flare": "1"})[0]
    assert beyond_words(whole).endswith("on the side of the underside and beside the tail.")
    assert beyond_words(both(up="6", joint={"share": "2"})[0]) == ""


def test_the_line_of_the_other_s_face() -> None:
    """Named for that face, and what it bounds."""
    tie, plate = both(**DOVETAIL)
    assert (ledge_title(tie), ledge_title(plate)) == (
        "line of Plate's top face",
        "line of Tie's underside",
    )
    assert "The tail is let in" in ledge_words(tie)
    assert "The cog stands" in ledge_words(both(**COGGED)[0])
    assert "keeps its full width" in ledge_words(plate)


def test_a_far_face_is_no_place_to_measure_from() -> None:
    """It shows what the stick is over or under."""
    tie, _ = both()
    assert from_far(tie.stick, Axis.FIRST) == "Never measure this from the underside."
    assert from_far(tie.stick, Axis.SECOND) == "Never measure this from the South face."
