"""Holes through the cheeks of a mortise, and their marks, by hand-reckoned figures."""

from dataclasses import dataclass

import pytest

from benchmate.frame.bored import Bored, ToEnd, bored_in, bored_side, mark_bored
from benchmate.frame.meeting import Span
from benchmate.frame.peg_steps import ENGINEER
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Line
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick
from tests.builders import frame, length, lengths, line, real, timber
from tests.frame.test_pegs import pegs

TAPE = Tape()


@dataclass(frozen=True, slots=True, kw_only=True)
class Mortise:
    """A mortise in the side of an 8 x 8 post, 2" to 4" in across it, from 4' to 4' 7" up."""

    stick: Stick
    entry: Face
    recess: Length
    seat: Length
    feature: str = "girt-mortise"
    into: Axis = Axis.FIRST
    sides: Axis = Axis.SECOND
    along: Span = (length("4'"), length("4' 7"))
    across: Span = (length("2"), length("4"))


def mortise(
    entry: Face = Face.FIRST, recess: str = "0", measured: str = "", **post: object
) -> Mortise:
    """One cut in from a face, with a housing so deep, in a post that measures so on both sides."""
    sizes = real({"girt-mortise": {"first": measured, "second": measured}}) if measured else real()
    stick = frame(timber("post", **({"section": "8 x 8"} | post)), real={"post": sizes}).stick(
        "post"
    )
    deep = length(recess)
    far = stick.depth(Axis.FIRST, "girt-mortise")
    seat = deep if entry.is_reference else far - deep
    return Mortise(stick=stick, entry=entry, recess=deep, seat=seat)


def bored(found: Mortise, **words: object) -> Bored:
    """The holes of two 1" pegs in it, 2" from the shoulder, 4' 2" and 4' 5" up."""
    return bored_in(found, pegs(**words), lengths("4' 2", "4' 5"))


def marks(found: Mortise, relish: str = "5-1/8", **words: object) -> tuple[Line, ...]:
    """Their lines, for a tenon with so much wood beyond its own holes."""
    ends = (ToEnd(length("2"), "start line"), ToEnd(length("2"), "finish line"))
    return mark_bored(bored(found, **words), length(relish), ends, TAPE)


def told(found: Line) -> list[tuple[Length, str]]:
    """What is told beside a line."""
    return [(each.value, each.words) for each in found.beside]


@pytest.mark.parametrize(
    ("found", "deep"),
    [
        (mortise(), "2"),
        (mortise(recess="1/2"), "2-1/2"),
        (mortise(Face.FAR_FIRST), "6"),
        (mortise(Face.FAR_FIRST, "1/2"), "5-1/2"),
        (mortise(Face.FAR_FIRST, "1/2", measured="8-1/4"), "5-3/4"),
    ],
)
def test_they_lie_so_far_in_from_where_the_shoulder_bears(found: Mortise, deep: str) -> None:
    """2" further in than the seat, which on a far face lies where that was measured."""
    centres = bored(found).holes.centres
    assert [each.along for each in centres] == list(lengths("4' 2", "4' 5"))
    assert {each.deep for each in centres} == {length(deep)}


@pytest.mark.parametrize(
    ("bored_from", "face", "through", "stop"),
    [("reference", Face.SECOND, "4", "6"), ("far", Face.FAR_SECOND, "6-1/4", "2-1/4")],
)
def test_blind_holes_stop_past_the_tenon(
    bored_from: str, face: Face, through: str, stop: str
) -> None:
    """8-1/4" of post: bored from the far face the tenon's other cheek lies 8-1/4" less 2" in."""
    found = bored(mortise(measured="8-1/4"), bored_from=bored_from, blind_depth="6")
    assert found.real_sides == length("8-1/4")
    assert (found.holes.face, found.holes.stop) == (face, length(stop))
    assert found.through_tenon == length(through)
    assert bored_side(Axis.FIRST, "far") is Face.FAR_FIRST


def test_the_line_then_the_centres_then_the_depth() -> None:
    """On the face that is bored; the depth only where they are blind."""
    found = marks(mortise())
    assert [(each.id, each.axis, each.at) for each in found] == [
        ("peg-line", Axis.FIRST, length("2")),
        ("peg-1", Axis.ALONG, length("4' 2")),
        ("peg-2", Axis.ALONG, length("4' 5")),
    ]
    assert {each.faces for each in found} == {(Face.SECOND,)}
    assert ENGINEER in found[0].why
    blind = line(marks(mortise(), blind_depth="6"), "peg-depth")
    assert told(blind) == [
        (length("2"), "past the tenon"),
        (length("2"), "left to the East face"),
    ]


def test_a_centre_tells_how_far_the_end_of_its_mortise_is() -> None:
    """2" to the centre is two diameters of a 1" hole, and 1-1/2" of wood."""
    assert told(marks(mortise())[1]) == [
        (
            length("2"),
            "from the centre to the mortise's start line, 2 diameters of the 1\" hole",
        ),
        (length("1-1/2"), "of wood from the hole to the mortise's start line"),
    ]


def test_over_a_housing_it_tells_how_far_in_it_is_in_all() -> None:
    """2" from the floor of a 1/2" housing is 2-1/2" from the face."""
    housed = told(marks(mortise(recess="1/2"))[0])
    assert housed[0] == (length("2-1/2"), "in from the South face")
    assert housed[1][1].startswith("from the centre to the housing floor, 2 diameters")
    assert told(marks(mortise())[0])[0][1].startswith("from the centre to the South face")


def test_what_is_left_in_a_drawn_tenon_counts_from_its_own_hole() -> None:
    """A 7" tenon bored 2" in and drawn 1/8" has its own hole at 1-7/8": 5-1/8" to its end.

    From the centre marked here it would be 5", and with 1/2" of hole off that 4-1/2" of wood.
    """
    assert told(marks(mortise())[0])[-2:] == [
        (
            length("5-1/8"),
            (
                "from the tenon's own hole, drawn 1/8\" nearer the shoulder, to its end, "
                '5.1 diameters of the 1" hole'
            ),
        ),
        (length("4-5/8"), "of wood from that hole to the tenon's end"),
    ]
    assert told(marks(mortise(), "5", draw="0")[0])[-2:] == [
        (length("5"), "from the centre to the tenon's end, 5 diameters of the 1\" hole"),
        (length("4-1/2"), "of wood from the hole to the tenon's end"),
    ]


def test_a_seat_on_a_far_face_waits_to_be_measured() -> None:
    """By mill rule it lies where that face really is; by square rule at the inner timber."""
    said = "Not measured here yet: measure first, as this depth follows the stick."
    assert marks(mortise(Face.FAR_FIRST))[0].caution == said
    ruled = mortise(Face.FAR_FIRST, rule="square", inner="7 x 7")
    for found in (mortise(), mortise(Face.FAR_FIRST, measured="8"), ruled):
        assert marks(found)[0].caution == ""
