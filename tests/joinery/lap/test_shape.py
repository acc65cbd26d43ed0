"""What a lap takes off its two timbers, in each one's own readings."""

from collections.abc import Mapping

import pytest

from benchmate.frame.frame import Real
from benchmate.joinery.lap.cuts import bounding
from benchmate.joinery.lap.shape import Half, reading
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from tests.builders import length, lengths, real
from tests.joinery.lap.crossings import COGGED, DOVETAIL, SQUARE, both, sizes_of


def _at(half: Half) -> dict[str, tuple[Axis, str]]:
    """Where each square line of a half lies."""
    found = {}
    for name, plane in bounding(half).items():
        sides = [axis for axis, part in zip(Axis, plane.normal, strict=True) if part]
        if len(sides) == 1:
            found[name] = (sides[0], reading(plane, sides[0]).exact_text())
    return found


def _deep(half: Half) -> tuple[str, str]:
    return half.depth.exact_text(), half.left.exact_text()


def test_a_half_lap_at_an_end() -> None:
    """8 x 6 over 8 x 8, tops level: 4" each; the tie's shoulder 8' on, the notch 6" wide."""
    tie, plate = both()
    assert _at(tie) == {"shoulder": (Axis.ALONG, '96"'), "lap": (Axis.FIRST, '4"')}
    assert _at(plate) == {
        "start": (Axis.ALONG, '48"'),
        "finish": (Axis.ALONG, '54"'),
        "floor": (Axis.FIRST, '4"'),
    }
    assert (tie.cut_face, plate.cut_face) == (Face.FAR_FIRST, Face.FIRST)
    assert [_deep(half) for half in (tie, plate)] == [('4"', '4"'), ('4"', '4"')]


def test_let_in_from_below() -> None:
    """The tie lies under the plate then, and each is cut from its other face."""
    tie, plate = both(side="down", tie_looks=(False, True), plate_looks=(False, True))
    assert (tie.cut_face, plate.cut_face) == (Face.FIRST, Face.FAR_FIRST)
    assert [tie.stick.pose.words(tie.cut_face), plate.stick.pose.words(plate.cut_face)] == [
        "top face",
        "underside",
    ]


def test_a_crossing_is_notched_on_both() -> None:
    """Each as wide as the other."""
    tie, plate = both(ends=False, up="2")
    assert _at(tie) == {
        "start": (Axis.ALONG, '96"'),
        "finish": (Axis.ALONG, '104"'),
        "floor": (Axis.FIRST, '5"'),
    }
    assert tie.span == lengths("96", "104")
    assert plate.span == lengths("48", "54")
    assert [_deep(half) for half in (tie, plate)] == [('3"', '5"'), ('3"', '5"')]


def test_a_corner_is_two_ends() -> None:
    """Neither has a far wall."""
    tie, plate = both(corner="north")
    assert _at(plate) == {"shoulder": (Axis.ALONG, '48"'), "lap": (Axis.FIRST, '4"')}
    assert (tie.corner, plate.corner, tie.span, plate.span) == (True, True, None, None)
    assert (tie.stick.far, plate.stick.far) == (length("8"), length("6"))


def test_only_an_end_has_a_tip() -> None:
    """Asking a notch for one is a misuse, not a design."""
    tie, plate = both()
    assert tie.tip is Face.FAR_END
    with pytest.raises(ValueError, match="Plate laps at no end"):
        _ = plate.tip


@pytest.mark.parametrize("end", ["north", "south"])
def test_a_corner_s_ends_come_flush_with_the_real_faces(end: str) -> None:
    """A tie that measures 6-1/4" and a plate of 8-1/2": each end runs to the other's far face."""
    real_sizes = sizes_of(tie=("8", "6-1/4"), plate=("8", "8-1/2"))
    tie, plate = both(real_sizes, corner=end)
    assert tie.stick.far == length("8-1/2")
    assert (plate.stick.far or plate.stick.near) == length("6-1/4")


def test_a_notch_is_as_wide_as_the_other_really_is() -> None:
    """By mill rule as measured at the joint; the side that is placed holds."""
    measured = {
        "tie": real({"lap-lap": {"second": "6-1/4"}}),
        "plate": real({"lap-notch": {"second": "8-3/8"}}),
    }
    tie, plate = both(measured, ends=False)
    assert tie.span == lengths("95-5/8", "104")
    assert plate.span == lengths("47-3/4", "54")


def test_an_odd_stick_is_cut_deeper_and_its_lines_hold() -> None:
    """Law 2: 8-1/2" instead of 8" loses 4-1/2" and keeps 4", struck from the top as before."""
    tie, plate = both(sizes_of(tie=("8-1/2", "6"), plate=("7-3/4", "8")))
    assert (_at(tie)["lap"], _at(plate)["floor"]) == ((Axis.FIRST, '4"'), (Axis.FIRST, '4"'))
    assert [_deep(half) for half in (tie, plate)] == [('4-1/2"', '4"'), ('4"', '3-3/4"')]


def test_from_a_far_face_the_other_one_shows_it() -> None:
    """Measured from its underside a tie is over on top, where nothing is cut."""
    tie, _ = both(sizes_of(tie=("8-1/2", "6")), tie_looks=(False, True))
    assert (_at(tie)["lap"], _deep(tie)) == ((Axis.FIRST, '4"'), ('4"', '4-1/2"'))


def test_by_square_rule_far_faces_come_down_where_they_are_clasped() -> None:
    """Inner 7-1/2": a plate of 7-7/8" loses 3/8", a tie of 6" 1/2" (7.5 no. 34, TFDIY-notation)."""
    tie, plate = both(sizes_of(tie=("8", "6"), plate=("8", "7-7/8")), ends=False, **SQUARE)
    assert tie.span == lengths("96-1/2", "104")
    assert _at(tie)["reduced"] == (Axis.SECOND, '5-1/2"')
    assert _at(plate)["reduced"] == (Axis.SECOND, '7-1/2"')
    assert plate.lie.over == length("3/8")
    assert plate.span == lengths("48-1/2", "54")
    assert _at(plate)["reduction-start"] == (Axis.ALONG, '48"'), "as far as the real tie"


@pytest.mark.parametrize(
    ("words", "tie_loses", "plate_loses"),
    [
        ({}, True, True),
        ({"heading": "west"}, True, True),
        ({"plate_looks": (True, False)}, True, False),
        ({"plate_looks": (True, False), "heading": "west"}, True, False),
        ({"corner": "north", "tie_looks": (True, False)}, False, True),
        ({"corner": "north"}, True, True),
        ({"corner": "south"}, False, True),
        ({"up": "8", "ends": False, "joint": {"share": "0"}}, False, False),
    ],
)
def test_only_what_the_other_clasps_is_reduced(
    words: dict[str, object], tie_loses: bool, plate_loses: bool
) -> None:
    """Not the outside of a corner, nor a far face that an end only passes, nor above a timber."""
    tie, plate = both(sizes_of(tie=("8", "6"), plate=("8", "8")), **words, **SQUARE)
    assert (bool(tie.reduced), bool(plate.reduced)) == (tie_loses, plate_loses)


def test_what_rises_above_the_other_is_not_reduced() -> None:
    """A tie let down 2" comes down to its inner timber only as high as the plate goes."""
    square = {"tie": {"rule": "square", "inner": "8 x 5-1/2"}}
    tie, _ = both(sizes_of(tie=("8", "6")), up="6", **square)
    assert _at(tie)["ledge"] == (Axis.FIRST, '6"')
    assert tie.into_ledge() == length("2")
    level, _ = both(sizes_of(tie=("8", "6")), **square)
    assert level.ledge is None
    assert level.into_ledge() == length("8")


def _made(**sizes: str) -> Mapping[str, Real]:
    return {"tie": real(as_cut={"east-end-lap": sizes, "lap-lap": sizes})}


def test_the_other_follows_the_lap_as_it_came_out() -> None:
    """1/8" too little left on the tie: the plate is cut 1/8" less, and the tops stay level."""
    tie, plate = both(_made(thickness="3-7/8", width="5-7/8"))
    assert _deep(tie) == ('4"', '4"')
    assert _at(plate) == {
        "start": (Axis.ALONG, '48-1/8"'),
        "finish": (Axis.ALONG, '54"'),
        "floor": (Axis.FIRST, '3-7/8"'),
    }


def test_a_tie_measured_from_below_is_counted_from_its_real_top() -> None:
    """What is left of it lies under that face, wherever it is."""
    sizes = {
        "tie": real(
            {"all": {"first": "8-1/2", "second": "6"}},
            {"east-end-lap": {"thickness": "4-1/4"}},
        )
    }
    _, plate = both(sizes, tie_looks=(False, True))
    assert _deep(plate) == ('3-3/4"', '4-1/4"')


def test_a_socket_follows_its_tail() -> None:
    """1/4" narrower at its wide end: the far flank comes in by as much, the near one holds."""
    _, drawn = both(**DOVETAIL)
    _, made = both(_made(width="5-3/4"), **DOVETAIL)
    assert drawn.reach == lengths("48", "54")
    assert made.reach == lengths("48-1/4", "54")
    assert drawn.span is None


def test_a_cog_stands_where_it_is_set_and_the_slot_goes_over_it() -> None:
    """2" in the middle of an 8" plate, from its outside: 3" to 5"; the slot lies over it."""
    tie, plate = both(**COGGED)
    at, standing = _at(tie), _at(plate)
    assert (at["slot-start"], at["slot-finish"]) == ((Axis.ALONG, '99"'), (Axis.ALONG, '101"'))
    assert at["ledge"] == (Axis.FIRST, '6"')
    assert (standing["cog-near"], standing["cog-far"]) == (
        (Axis.SECOND, '3"'),
        (Axis.SECOND, '5"'),
    )


def test_a_cog_is_made_to_its_slot() -> None:
    """A slot that came out 1/8" wide takes a cog as wide, from the same side."""
    _, plate = both(_made(length="2-1/8"), **COGGED)
    assert _at(plate)["cog-near"] == (Axis.SECOND, '3"')
    assert _at(plate)["cog-far"] == (Axis.SECOND, '5-1/8"')


def test_a_set_back_cog() -> None:
    """Counted from the plate's own reference face, here the outer one."""
    joint = {"cog": "2", "share": "2", "cog_set_back": "1"}
    tie, plate = both(**(COGGED | {"joint": joint}))
    assert _at(plate)["cog-near"] == (Axis.SECOND, '1"')
    assert _at(tie)["slot-finish"] == (Axis.ALONG, '103"')


def test_a_slot_s_side_in_the_other_s_face_is_the_notch_s_own_end() -> None:
    """One line shows both, so that neither can be struck without the other."""
    joint = {"cog": "2", "cog_set_back": "0"}
    tie, _ = both(**(COGGED | {"joint": joint}))
    assert [plane.line for plane in tie.slot] == ["finish", "slot-start", "ledge"]


def test_a_lap_that_runs_on_is_as_much_longer() -> None:
    """Shoulder to shoulder stays."""
    tie, _ = both(joint={"past": "10"})
    assert (tie.stick.body, tie.stick.far, tie.past) == tuple(map(length, ("96", "18", "10")))
