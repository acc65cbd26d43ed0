"""What is stored of pegs, and the holes they go in."""

from math import isqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from benchmate.frame.pegs import (
    DEPTH_LINE,
    MOST_PEGS,
    Centre,
    Holes,
    Pegs,
    hole_cuts,
    in_diameters,
)
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.solids import Axis, Cut
from tests.builders import frame, length, lengths, timber
from tests.joinery.tenon.girts import PEGS


def pegs(**words: object) -> Pegs:
    """Two 1" pegs, with other words where they are given; None takes one out."""
    given_words = {key: each for key, each in (dict(PEGS) | words).items() if each is not None}
    return Pegs.model_validate(given_words)


def holes(face: Face = Face.FIRST, stop: Length | None = None, **words: object) -> Holes:
    """The holes 12" and 15" up a 6 x 6 post, 2" in from the reference face beside theirs."""
    centres = tuple(Centre(length(along), length("2")) for along in ("12", "15"))
    stick = frame(timber("post")).stick("post")
    return Holes(stick=stick, face=face, pegs=pegs(**words), centres=centres, stop=stop)


def test_what_is_needed_and_what_is_not() -> None:
    """Nothing is set for the framer; without more they are bored through, undrawn."""
    one = pegs(count=1, spacing=None, draw=None)
    assert (one.draw, one.bored_from, one.blind_depth) == (ZERO, "reference", None)
    needed = {name for name, field in Pegs.model_fields.items() if field.is_required()}
    assert needed == {"count", "size", "from_shoulder", "from_edge"}


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"count": 0}, "no number of pegs; write 1 to 4"),
        ({"count": MOST_PEGS + 1}, "no number of pegs"),
        ({"count": "2"}, "without quotes"),
        ({"count": True}, "no number of pegs"),
        ({"count": 2.0}, "no number of pegs"),
        ({"size": "0"}, "more than nothing"),
        ({"from_shoulder": "0"}, "more than nothing"),
        ({"from_edge": "-1"}, "not below zero"),
        ({"draw": "-1/8"}, "not below zero"),
        ({"blind_depth": "0"}, "more than nothing"),
        ({"bored_from": "near"}, "reference"),
        ({"spacing": None}, 'has 2 pegs but no "spacing"'),
        ({"count": 1}, 'has "spacing" but only one peg'),
        ({"length": "8"}, "Extra inputs"),
    ],
)
def test_what_is_refused(words: dict[str, object], says: str) -> None:
    """Pegs that could not be bored are refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        pegs(**words)


def test_a_record_says_itself_again() -> None:
    """What is written to the file reads back equal."""
    for each in (pegs(), pegs(count=1, spacing=None), pegs(blind_depth="5", bored_from="far")):
        assert Pegs.model_validate(each.model_dump()) == each


def test_the_centres_go_by_the_edge_and_the_spacing() -> None:
    """Running figures: each from the edge itself, never from its neighbour."""
    assert pegs(count=4).from_edges == lengths("2", "5", "8", "11")
    assert pegs(count=1, spacing=None).from_edges == lengths("2")


def test_the_draw_brings_the_tenon_s_holes_nearer_its_shoulder() -> None:
    """Towards the shoulder (trade.md 3, TFG-when): 2" in the mortise, 1-7/8" on the tenon."""
    assert pegs().drawn == length("1-7/8")
    assert pegs(draw="0").drawn == length("2")


def test_half_a_hole_is_rounded_up() -> None:
    """A hole an odd number of nanometres wide is never drawn too small."""
    assert pegs(size="1").radius == length("1/2")
    assert pegs(size="13/16").radius.nm * 2 >= length("13/16").nm


@pytest.mark.parametrize("face", LONG_FACES)
def test_a_hole_is_an_eight_sided_prism_round_its_circle(face: Face) -> None:
    """It takes all the wood within its radius, right through, and none a fifth further out."""
    made = holes(face)
    square = ((1, 0), (0, 1), (-1, 0), (0, -1))
    slanting = ((1, 1), (1, -1), (-1, 1), (-1, -1))
    probes = [
        (length(far), turn, taken)
        for far, turns, taken in (
            ("1/2", square, True),
            ("5/8", square, False),
            ("22/64", slanting, True),
            ("30/64", slanting, False),
        )
        for turn in turns
    ]
    for cut, (along, deep) in zip(hole_cuts(made), made.centres, strict=True):
        assert len(cut.planes) == 8
        for over in lengths("0", "3", "6"):
            assert _takes(made, cut, along, deep, over)
            for far, (x, y), taken in probes:
                assert _takes(made, cut, along + far * x, deep + far * y, over) is taken


@given(st.integers(10**7, 10**9), st.integers(-1000, 1000))
def test_no_wood_within_a_hole_is_left(size: int, share: int) -> None:
    """Whatever its size in nanometres, its circle lies inside the prism."""
    made = holes(size=Length(size))
    (cut, _) = hole_cuts(made)
    radius = size // 2
    x = radius * share // 1000
    y = isqrt(radius * radius - x * x)
    along, deep = made.centres[0]
    for sign in (1, -1):
        assert _takes(made, cut, along + Length(x), deep + Length(sign * y), ZERO)


def _takes(made: Holes, cut: Cut, along: Length, deep: Length, over: Length) -> bool:
    """Whether a hole takes the wood at a place on its face, so far over the way it is bored."""
    if made.into is Axis.FIRST:
        return cut.takes(along.nm, over.nm, deep.nm)
    return cut.takes(along.nm, deep.nm, over.nm)


@pytest.mark.parametrize(
    ("face", "stop", "in_wood"),
    [(Face.FIRST, "4", ("0", "4")), (Face.FAR_SECOND, "1", ("1", "6"))],
)
def test_a_blind_hole_stops(face: Face, stop: str, in_wood: tuple[str, str]) -> None:
    """At its depth line, which bounds it; on the other side of that the wood stays."""
    made = holes(face, length(stop))
    along, deep = made.centres[0]
    (cut, _) = hole_cuts(made)
    assert [plane.line for plane in cut.planes].count(DEPTH_LINE) == 1
    low, high = lengths(*in_wood)
    for over in lengths("0", "1/64", "1", "4", "5-63/64", "6"):
        assert _takes(made, cut, along, deep, over) is (low <= over <= high)


def test_none_of_a_hole_is_struck() -> None:
    """Its centre is marked; nobody draws the circle."""
    assert {plane.line for cut in hole_cuts(holes()) for plane in cut.planes} == {None}


@pytest.mark.parametrize(
    ("wood", "size", "said"),
    [
        ("2-1/2", "1", "2.5 diameters"),
        ("3", "3/4", "4 diameters"),
        ("3-1/4", "13/16", "4 diameters"),
        ("2-7/16", "13/16", "3 diameters"),
        ("1-5/8", "13/16", "2 diameters"),
        ("1", "1", "1 diameter"),
        ("3-63/64", "1", "3.9 diameters"),
        ("1/16", "1", "0 diameters"),
        ("-1/2", "1", "-0.5 diameters"),
    ],
)
def test_wood_in_diameters(wood: str, size: str, said: str) -> None:
    """Conversions reckoned in trade.md 3 (4D, 3D and 2D of 3/4 and 13/16, 2.5D of 1).

    Never more than there is: 3-63/64" is not 4 diameters of a 1" hole.
    """
    assert in_diameters(length(wood), length(size)) == said
