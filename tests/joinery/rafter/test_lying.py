"""A level timber as a rafter meets it."""

from dataclasses import replace

from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.lying import FINISH, START, Lying, lying
from benchmate.joinery.rafter.raking import rafter, under
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.solids import Axis, Cut, above
from tests.builders import length, real
from tests.joinery.rafter.roofs import Roof, Words, built, seat

FAR = ("down", "in")


def plate(frame: Frame) -> Lying:
    """The plate of a roof, under its rafter."""
    return lying(frame, "plate", "wall-seat", rafter(frame, "rafter", "wall-notch"))


def measured(roof: Roof, first: str, second: str) -> Lying:
    """The plate, measured at the seat."""
    sizes = real({"wall-seat": {"first": first, "second": second}})
    return plate(built(roof, seat(), real={"plate": sizes}))


def ruled(inner: str) -> dict[str, Words]:
    """A plate by square rule."""
    return {"plate": {"rule": "square", "inner": inner}}


def test_its_four_faces() -> None:
    """8" deep, 6" wide, its outside at zero and its top at 8 ft, whichever way the roof rises."""
    for heading in ("east", "west", "north", "south"):
        for faces in (("up", "out"), FAR):
            found = plate(built(Roof(heading=heading, plate_faces=faces), seat()))
            sides = (found.near, found.far, found.top, found.bottom)
            assert [Length(each) for each in sides] == [
                ZERO,
                length("6"),
                length("8'"),
                length("7' 4"),
            ]


def test_reference_faces_hold() -> None:
    """Measured from its outside and top, what it is over lies elsewhere."""
    found = measured(Roof(), "8-1/2", "6-1/4")
    assert (Length(found.near), Length(found.top)) == (ZERO, length("8'"))
    assert (Length(found.far), Length(found.bottom)) == (length("6-1/4"), length("7' 3-1/2"))


def test_by_mill_rule_far_faces_are_where_they_are_measured() -> None:
    """Measured from its inside and underside, its outside and top move."""
    found = measured(Roof(plate_faces=FAR), "8-1/2", "6-1/4")
    assert (Length(found.near), Length(found.top)) == (-length("1/4"), length("8' 1/2"))
    assert (found.over_near, found.over_top) == (ZERO, ZERO)


def test_by_square_rule_far_faces_are_counted_inner() -> None:
    """The frame counts on the inner timber; what is over it is told apart."""
    found = measured(Roof(plate_faces=FAR, own=ruled("8 x 6")), "8-1/2", "6-1/4")
    assert (Length(found.near), Length(found.top)) == (ZERO, length("8'"))
    assert (found.over_near, found.over_top, found.over_far) == (
        length("1/4"),
        length("1/2"),
        ZERO,
    )
    assert Length(found.real_near) == -length("1/4")
    assert Length(found.real_top) == length("8' 1/2")
    assert (found.real_far, found.real_bottom) == (found.far, found.bottom)


def test_where_the_rafter_crosses_it() -> None:
    """4" wide, 4 ft along; its two sides in order, with the rafter behind both."""
    found = plate(built(Roof(), seat()))
    assert found.along == (length("48"), length("52"))
    assert list(found.sides) == [START, FINISH]
    inside = length("50").nm
    assert all(plane.holds(inside, 0, 0) for plane in found.sides.values())
    assert found.past_an_end == -length("48")


def test_a_level_plane_in_its_readings() -> None:
    """A level plane 1" below its top lies 1" in from it."""
    found = plate(built(Roof(), seat()))
    plane = found.carried(under(length("7' 11").nm), "floor")
    assert Length(plane.offset * plane.normal[1]) == length("1")


def test_a_face_nobody_has_measured() -> None:
    """By mill rule a far face is cautioned about and waited for until it is measured."""
    open_faces = plate(built(Roof(plate_faces=FAR), seat()))
    words = open_faces.unsure(open_faces.near_face, open_faces.top_face)
    assert "Plate's West face and Plate's top face" in words
    assert [each.step for each in open_faces.awaited(open_faces.top_face)] == ["wall-seat/section"]
    known = measured(Roof(plate_faces=FAR), "8", "6")
    assert (known.unsure(known.top_face), known.awaited(known.top_face)) == ("", ())
    held = plate(built(Roof(), seat()))
    assert held.awaited(held.near_face, held.top_face) == ()
    inner = plate(built(Roof(plate_faces=FAR, own=ruled("8 x 6")), seat()))
    assert inner.awaited(inner.top_face) == ()
    assert inner.near_face is Face.FAR_SECOND


def test_pieces_come_off_between_the_sides_where_their_planes_are() -> None:
    """A piece without its own plane is none; of its other lines only those that are there count."""
    found = plate(built(Roof(), seat()))
    floor, end = above(Axis.FIRST, length("1"), "floor"), above(Axis.FIRST, length("2"), "end")
    pieces = {"floor": ("floor", "step", "end"), "face": ("face", "end")}
    assert found.cuts({"floor": floor, "end": end}, pieces) == (
        Cut((found.start, found.finish, floor, end)),
    )


def test_a_rafter_past_an_end_is_told_by_how_much() -> None:
    """Beyond the end by anything at all is a stop; flush with it is not."""
    found = plate(built(Roof(), seat()))
    moved = replace(found, stick=replace(found.stick, body=found.along[1]))
    assert moved.off_the_end("off", Tape()) is None
    short = replace(found, stick=replace(found.stick, body=found.along[1] - length("1-1/2")))
    told = short.off_the_end("off", Tape())
    assert told is not None
    assert (told.code, told.timber, told.feature) == ("off", "plate", "wall-seat")
    assert told.message == 'Rafter stands 1-1/2" past an end of Plate'
