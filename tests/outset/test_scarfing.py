"""Where plates and sills are scarfed."""

from benchmate.measure.length import Length
from benchmate.outset.rows import rafters
from benchmate.outset.scarfing import (
    cannot_scarf_plates,
    cannot_scarf_sills,
    long,
    plate_scarfs,
    sill_scarfs,
    stick_at,
)
from tests.outset.frames import JOISTED, answers, told

LONG = {"length": "50'", "bays": "4", "longest": "34'"}


def test_one_stick_has_no_scarf() -> None:
    """Nor where any length can be had."""
    assert plate_scarfs(answers()) == ()
    assert plate_scarfs(answers(length="50'", bays="4", longest="")) == ()
    assert stick_at((), Length.feet(3)) == ""


def test_a_scarf_lies_past_post_and_brace() -> None:
    """In the furthest bay a stick reaches, 2-1/2 feet long (TFHQ-scarf), no rafter on its tip."""
    frame = answers(LONG)
    (scarf,) = plate_scarfs(frame)
    post = frame.line_at(scarf.bent) + Length.inches(8)
    assert long(frame) == Length.inches(30)
    assert scarf.tip - long(frame) >= post + frame.length("leg")
    assert scarf.tip + frame.length("overhang") <= Length.feet(34)
    for pair in rafters(frame):
        assert not pair.west <= scarf.tip <= pair.west + Length.inches(5)
    (sill,) = sill_scarfs(frame)
    assert sill.tip <= Length.feet(34)


def test_the_stick_over_a_place_is_known() -> None:
    """The western one up to its tip."""
    scarfs = plate_scarfs(answers(LONG))
    assert stick_at(scarfs, scarfs[0].tip - Length(1)) == "-1"
    assert stick_at(scarfs, scarfs[0].tip) == "-2"


def test_what_cannot_be_scarfed_is_told() -> None:
    """Too short a stick, no room beside braces, or joists in the way."""
    assert "cannot be scarfed" in told(
        "longest", LONG, longest="20'", roof="none", leg="60", width="20'"
    )
    assert "joists leave no room" in told("longest", LONG, JOISTED)
    assert cannot_scarf_plates(answers(LONG)) is None
    assert cannot_scarf_sills(answers(LONG)) is None
