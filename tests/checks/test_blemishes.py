"""A knot, a check or wane in wood that a joint counts on: found, and just not.

How deep a knot is counted and how much wood a wall keeps are common practice, no source.
"""

from datetime import UTC, datetime

import pytest

from benchmate.checks.blemishes import blemish_box, blemish_findings, left_of
from benchmate.checks.design import findings_on
from benchmate.checks.piece import Piece
from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, Severity
from benchmate.model.progress import Blemish, Progress
from benchmate.model.solids import Axis, Cut, below
from tests.builders import codes, frame, length, real, sill, tenon, timber

AT = datetime(2026, 3, 2, 8, tzinfo=UTC)
PEGS = {"count": 2, "size": "1", "from_shoulder": "2", "from_edge": "1-1/2", "spacing": "3"}


def knot(from_end: str, from_arris: str, **words: object) -> Blemish:
    """A knot an inch each way on the first face, so far along and in."""
    return Blemish.model_validate(
        {
            "id": "knot-1",
            "kind": "knot",
            "face": "first",
            "from_end": from_end,
            "long": "1",
            "from_arris": from_arris,
            "wide": "1",
            "at": AT,
        }
        | words
    )


def housed(**words: object) -> Frame:
    """A 6 x 6 post with a 4" tenon 2" thick, set back 2", housed 1/2" in a sill 4' from its end.

    So the mortise runs from 4' to 4' 6", and from 2" to 4" in from the second face.
    """
    joint = {"into": "sill", "at": "4'", "length": "4"} | words
    return frame(sill(), timber("post"), tenon(**joint))


def told(drawn: Frame, on: str, blemish: Blemish) -> tuple[Finding, ...]:
    """What a blemish on one of its timbers does to the joints there."""
    return blemish_findings(lay_out(drawn, on), (blemish,), drawn.project.tape)


@pytest.mark.parametrize(("deep", "code"), [("2", None), ("2-1/64", "blemish-in-tenon")])
def test_a_knot_reaches_the_tenon_or_goes_with_its_cheek(deep: str, code: str | None) -> None:
    """The near cheek lies 2" in: a knot that is no deeper is sawn off with the waste."""
    found = told(housed(), "post", knot("1", "2", deep=deep))
    assert codes(found) == ((code,) if code else ())


@pytest.mark.parametrize(("start", "code"), [("3", None), ("3-1/64", "blemish-in-bearing")])
def test_a_knot_reaches_the_shoulder_or_not(start: str, code: str | None) -> None:
    """The shoulder lies 4" from the end of the post; what ends there comes off with the cheek."""
    found = told(housed(), "post", knot(start, "2"))
    assert codes(found) == ((code,) if code else ())


@pytest.mark.parametrize(("deep", "code"), [("1/2", "blemish-in-wall"), ("33/64", "bearing")])
def test_a_knot_comes_out_on_the_housing_floor_or_is_cut_away(deep: str, code: str) -> None:
    """The floor lies 1/2" down; one no deeper is gone, and its other half is a wall's matter."""
    drawn = housed(housing="1/2")
    inside = told(drawn, "sill", knot("4' 2", "1/2", deep=deep))
    across = told(drawn, "sill", knot("3' 11-1/2", "1/2", deep=deep))
    assert codes(inside) == (() if code == "blemish-in-wall" else ("blemish-in-bearing",))
    assert codes(across) == (
        ("blemish-in-wall",) if code == "blemish-in-wall" else ("blemish-in-bearing",)
    )


@pytest.mark.parametrize(("start", "code"), [("3' 10-1/2", None), ("3' 10-33/64", "in-wall")])
def test_a_knot_is_near_a_mortise_or_clear_of_it(start: str, code: str | None) -> None:
    """As much wood as the shop keeps is enough: 1/2" (common practice, no source)."""
    found = told(housed(), "sill", knot(start, "2-1/2"))
    assert codes(found) == (("blemish-in-wall",) if code else ())


@pytest.mark.parametrize(("start", "code"), [("4' 5", None), ("4' 4-63/64", "blemish-at-pegs")])
def test_a_check_lies_at_a_peg_or_clear_of_it(start: str, code: str | None) -> None:
    """The second hole is an inch across and ends 4' 4-1/2" along, 2" to 3" in of its seat."""
    shake = knot(start, "1-1/2", face="second", kind="check", long="1/4", wide="1/4", deep="1/4")
    drawn = housed(pegs=PEGS | {"from_edge": "1", "spacing": "3", "from_shoulder": "2"})
    found = told(drawn, "sill", shake)
    assert codes(found) == ((code,) if code else ())


def test_a_check_between_two_holes_lies_on_their_line() -> None:
    """However far it is off the holes themselves."""
    drawn = housed(pegs=PEGS | {"from_edge": "1", "spacing": "4"})
    words = {"face": "second", "kind": "check", "long": "1/8", "wide": "1/8", "deep": "1"}
    (found,) = told(drawn, "sill", knot("4' 2-15/16", "2", **words))
    assert found.code == "blemish-at-pegs"
    assert 'lies on the peg line of the pegs for Post, 1-7/16" off a hole' in found.message
    assert told(drawn, "sill", knot("4' 2-15/16", "3-1/64", **words)) == ()


def test_a_finding_says_what_where_how_much_and_what_to_do() -> None:
    """By the joint's title, on the timber it lies on, in the figures of the tape."""
    (found,) = told(housed(), "post", knot("1", "2", deep="3"))
    assert found == Finding(
        code="blemish-in-tenon",
        severity=Severity.LOOK,
        timber="post",
        feature="foot-tenon",
        message=(
            'The knot on the South face, 1" from the squared foot, lies in the foot tenon: 1" '
            'along and 1" across of it stay beyond the shoulder'
        ),
        remedy=(
            "turn the stick end for end, move the joint or take another stick; what strength is "
            "left is for the engineer"
        ),
    )


def test_the_shop_says_how_much_wood_a_wall_keeps() -> None:
    """With nothing, only what touches is told."""
    for least, start, found in (("0", "3' 10-63/64", 0), ("0", "3' 11", 1), ("2", "3' 10", 1)):
        drawn = frame(
            sill(),
            timber("post"),
            tenon(into="sill", at="4'", length="4"),
            shop={"least_wood": least},
        )
        assert len(told(drawn, "sill", knot(start, "2-1/2"))) == found


def test_a_depth_nobody_knows_is_as_deep_as_it_is_wide() -> None:
    """From a far face inwards, by the stick as it was measured there."""
    drawn = frame(timber("post"), tenon(), real={"post": real({"all": {"first": "6-1/4"}})})
    stick = lay_out(drawn, "post").stick
    box = blemish_box(stick, knot("5", "0", face="far first", wide="2"))
    assert (box.low[1], box.high[1]) == (length("4-1/4").nm, length("6-1/4").nm)
    assert (box.low[0], box.high[0]) == (0, length("1").nm)
    assert (box.low[2], box.high[2]) == (0, length("2").nm)


def test_a_blemish_off_the_stick_is_told() -> None:
    """Past its far end, over its arris, or through it; just within is nothing."""
    drawn, post = frame(timber("post"), tenon()), "post"
    assert told(drawn, post, knot("5'", "5", deep="6")) == ()
    for off, words in (
        (knot("8' 3-1/2", "0"), 'runs 1/2" past the far end'),
        (knot("5'", "5-1/4"), 'runs 1/4" over the arris across the face'),
        (knot("5'", "0", deep="7"), 'runs 1" through the opposite face'),
    ):
        (found,) = told(drawn, post, off)
        assert found.code == "blemish-off-the-stick"
        assert found.message.endswith(words)


def test_blemishes_are_among_the_findings_of_their_timber() -> None:
    """And a note about a step that is not there any more."""
    drawn = housed()
    kept = Progress.model_validate(
        {
            "timber": "post",
            "notes": ({"id": "note-1", "about": "gone/line", "text": "Mind this", "at": AT},),
            "blemishes": (knot("1", "2", deep="3"),),
        }
    )
    found = codes(findings_on(lay_out(drawn, "post"), kept, Tape()))
    assert "blemish-in-tenon" in found
    assert "note-without-place" in found


def test_what_is_left_of_a_piece_is_what_no_cut_takes() -> None:
    """An inch cube with a quarter inch off one side; and one that nothing reaches stays whole."""
    inch = Length.inches(1).nm
    cube = Piece((0, 0, 0), (inch, inch, inch))
    quarter = Length.inches(0, 1, 4)
    (left,) = left_of(cube, (Cut((below(Axis.FIRST, quarter),)),))
    assert left == Piece((0, quarter.nm, 0), (inch, inch, inch))
    assert left_of(cube, (Cut((below(Axis.FIRST, -quarter),)),)) == (cube,)
    assert left_of(cube, (Cut((below(Axis.FIRST, Length(inch)),)),)) == ()
