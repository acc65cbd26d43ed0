"""Where a brace comes: lengths against published tables, sides against one another."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.brace.record import BraceJoint
from benchmate.joinery.brace.shape import EndShape, HoleShape, end_shape, hole_shape
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Graduation, Style, Tape
from tests.builders import length, real
from tests.joinery.brace.bays import bay

TABLE = {
    ("24", "24"): ("33.94", "Navy Builder manual, NAV-60"),
    ("27", "27"): ("38.18", "Navy Builder manual, NAV-60"),
    ("30", "30"): ("42.43", "Navy Builder manual, NAV-60"),
    ("18", "24"): ("30", "Navy Builder manual, NAV-61"),
    ("40", "40"): ("56.57", "Navy Builder manual, NAV-61"),
    ("36", "36"): ("50.91", "Hodgson, ABC of the Steel Square, 11"),
    ("51", "51"): ("72.12", "Hodgson, 21: printed 6 ft 0.12 in"),
    ("99", "99"): ("140.01", "Hodgson, 21: printed 11 ft 8 in for 8 ft 3 in"),
    ("57", "57"): ("80.61", "Building Trades Pocketbook, brace scale (wood-data 107)"),
    ("36", "48"): ("60", "Hodgson, 21"),
    ("24", "48"): ("53.67", "Hodgson, 39: 12 and 6 stepped four times"),
    ("24", "36"): ("43.27", "trade notes 7.1 [CALC]"),
    ("30", "48"): ("56.60", "trade notes 7.1 [CALC]"),
    ("36", "60"): ("69.97", "trade notes 7.1 [CALC]"),
    ("36", "42"): ("55.32", "trade notes 7.1 [CALC]"),
}
"""Legs to the length of the long edge in inches, each with where it is printed."""

EQUAL_LEGS = {
    "12": "17",
    "15": '21-3/16"',
    "18": '25-7/16"',
    "21": '29-11/16"',
    "33": '46-11/16"',
    "39": '55-1/8"',
    "42": '59-3/8"',
    "45": '63-5/8"',
    "48": '67-7/8"',
    "54": '76-3/8"',
    "57": '80-5/8"',
    "60": '84-7/8"',
}
"""Equal legs to the nearest sixteenth: trade notes 7.1 [CALC], the form of NAV-60."""

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)


def _joint(frame: Frame, end: str = "foot") -> BraceJoint:
    return next(
        work for work in frame.project.works if isinstance(work, BraceJoint) and end in work.id
    )


def made(frame: Frame, end: str = "foot") -> EndShape:
    """One end of the brace of a bay."""
    return end_shape(_joint(frame, end), frame)


def hole(frame: Frame, end: str = "foot") -> HoleShape:
    """The mortise of one end."""
    return hole_shape(_joint(frame, end), made(frame, end), frame)


@pytest.mark.parametrize("legs", TABLE)
def test_the_long_edge_is_as_long_as_the_books_say(legs: tuple[str, str]) -> None:
    """Legs to the faces, whatever is housed: to a hundredth of an inch."""
    printed, _source = TABLE[legs]
    body = bay(legs=legs).stick("brace").body
    assert abs(body.nm / Length.inches(1).nm - float(printed)) <= 0.0051


def test_a_printed_slip_is_not_copied() -> None:
    """One scan prints 36 and 36 as 59.91; it is 50.91 (trade notes 7.6, slip 2)."""
    assert TAPE.text(bay().stick("brace").body).startswith('50-15/16"')


@pytest.mark.parametrize(("leg", "nearest"), EQUAL_LEGS.items())
def test_equal_legs_to_the_nearest_sixteenth(leg: str, nearest: str) -> None:
    """As a framer's brace table gives them."""
    shown = TAPE.text(bay(legs=(leg, leg)).stick("brace").body).rstrip("+-")
    assert shown.rstrip('"') == nearest.rstrip('"')


def test_legs_to_the_seats_make_a_longer_brace() -> None:
    """36" legs and 1/2" housings: seats 51.619" apart on the long edge's line, 50.912" the faces.

    A published rule adds the housing to each leg and multiplies by 1.4142 (Bridges, trade notes
    2.3), which is 51-5/8"; unhoused 50-15/16"; the difference is 0.707" [CALC].
    """
    faces = bay().stick("brace").body
    seats = bay(legs=("36-1/2", "36-1/2")).stick("brace").body
    assert TAPE.text(faces) == '50-15/16"-'
    assert TAPE.text(seats) == '51-5/8"'
    assert abs((seats - faces).nm / Length.inches(1).nm - 0.7071) < 0.0001


@pytest.mark.parametrize(("deep", "foot"), [("5", '7-1/16"'), ("6", '8-1/2"')])
def test_the_foot_of_a_brace_at_45_degrees(deep: str, foot: str) -> None:
    """5" wide stands 7-1/16" long on the post, 6" wide 8-1/2" (trade notes 2.3 [CALC])."""
    frame = bay(own={"brace": {"section": f"{deep} x 4"}})
    assert TAPE.text(made(frame).foot_length).rstrip("+-") == foot


def test_the_steeper_the_brace_the_longer_its_foot_on_the_post() -> None:
    """w / sin(a): 6" at 36.87 degrees from the post is 10", at 53.13 degrees on the beam 7-1/2"."""
    frame = bay(legs=("48", "36"))
    assert made(frame).foot_length == length("10")
    assert made(frame, "head").foot_length == length("7-1/2")


def test_the_mortise_runs_from_the_nose_a_little_past_the_short_edge() -> None:
    """The nose end 36" under the beam is held; the other end lies 1/4" past the foot."""
    found = hole(bay())
    assert found.nose == length("5'")
    assert found.nosed_first
    assert TAPE.text(found.heel).rstrip("+-") == '68-3/4"'
    assert found.depth == length("4-1/8")
    assert found.seat == length("7-1/2")


def test_mortise_and_tenon_are_set_back_alike() -> None:
    """1-1/2" from the south faces, whichever way the others look."""
    for heading, side in (("east", "south"), ("west", "south"), ("north", "west")):
        found = hole(bay(heading=heading, side=side))
        assert found.across == (length("1-1/2"), length("3"))
    turned = hole(bay(own={"post": {}}, side="north"))
    assert turned.across == (length("1-1/2"), length("3"))


def test_what_the_brace_is_over_goes_to_the_inside() -> None:
    """A brace of 6-1/4" moves the heel and neither the nose nor its length."""
    thick = real({"all": {"first": "6-1/4"}})
    plain, wide = bay(), bay(real={"brace": thick})
    assert hole(wide).nose == hole(plain).nose
    assert wide.stick("brace").body == plain.stick("brace").body
    assert hole(wide).heel > hole(plain).heel


def test_a_post_that_is_over_makes_the_brace_shorter() -> None:
    """By mill rule the far face is where it was measured: 1/4" of leg is 0.354" of brace."""
    plain, over = bay(), bay(real={"post": real({"all": {"first": "8-1/4"}})})
    less = plain.stick("brace").body - over.stick("brace").body
    assert abs(less.nm - Length.inches(0, 1, 4).nm * 2**0.5) < 2


def test_the_mortise_follows_the_tenon_as_cut() -> None:
    """1-7/16" thick and 3-7/8" long, counted from the near cheek and the shoulder."""
    cut = real(as_cut={"foot-tenon": {"thickness": "1-7/16", "length": "3-7/8"}})
    found = hole(bay(real={"brace": cut}))
    assert found.across == (length("1-1/2"), length("2-15/16"))
    assert found.depth == length("4")


def test_a_tenon_is_left_beside_its_nose() -> None:
    """4" past a 1/2" housing leaves 8.485 - 4.5 = 3.985" at the tip of a 6" brace [CALC]."""
    assert TAPE.text(made(bay()).left_at_nose) == '4"-'
    gone = made(bay(joint={"length": "8"}))
    assert gone.left_at_nose <= ZERO


def test_the_ease_is_round_in_the_unit_of_the_tape() -> None:
    """A quarter inch, or 6 mm, and none where none is wanted."""
    assert hole(bay()).ease == Length.inches(0, 1, 4)
    assert hole(bay(units="mm")).ease == Length.mm(7)
    assert hole(bay(joint={"ease": "0"})).ease == ZERO
