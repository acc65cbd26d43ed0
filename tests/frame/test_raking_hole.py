"""What every mortise for an end of a raking timber says and does."""

from dataclasses import replace

import pytest

from benchmate.frame.mated import FAR, NEAR
from benchmate.frame.place import Place, square_ways
from benchmate.frame.raking_hole import (
    EASE,
    WALL_FAR,
    WALL_NEAR,
    RakingHole,
    across_receiver,
    along_receiver,
    follows_words,
    open_at_the_side,
    open_faces,
    outside_the_side,
    reading_at,
    side_lines,
    side_planes,
    wall_lines,
    walls,
)
from benchmate.measure.length import ZERO, Length
from benchmate.measure.reading import Unit
from benchmate.model.directions import Direction, Face, Pose
from benchmate.model.findings import Severity
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis, above, below
from tests.builders import frame, length, lengths, real, timber
from tests.frame.test_raking_tenon import TAPE, tenon


def hole(wide: str = "8", **own: object) -> RakingHole:
    """A mortise in the west face of an 8 x 8 post, for an end from 2" to 6" in from its south."""
    post = timber("post", section="8 x 8", first_face="west", second_face="south", length="8'")
    stick = frame(post, real={"post": real({"all": {"second": wide}})}).stick("post")
    made = RakingHole(
        stick=stick,
        feature="brace-mortise",
        tenon=tenon(),
        entry=Face.FIRST,
        across=(length("3"), length("4-1/2")),
        end_across=(length("2"), length("6")),
        same_side=True,
    )
    return replace(made, **own)  # type: ignore[arg-type]


def test_room_to_spare_is_a_quarter_inch_or_more() -> None:
    """Trade notes 2.3, Rogers-var: at least 1/4"; metric is the same rounded up."""
    assert {Unit.INCH: length("1/4"), Unit.MM: Length.mm(7)} == EASE
    assert min(EASE.values()) >= length("1/4")


def test_it_is_cut_down_on_one_axis_and_lies_across_the_other() -> None:
    """In from the west, across from the south."""
    found = hole()
    assert (found.into, found.sides) == (Axis.FIRST, Axis.SECOND)
    assert found.real_into == length("8")
    assert found.not_from_far == "Never measure this from the North face."


@pytest.mark.parametrize(
    ("end", "closed"),
    [
        (("2", "6"), (WALL_NEAR, WALL_FAR)),
        (("0", "4"), (WALL_FAR,)),
        (("4", "8"), (WALL_NEAR,)),
        (("0", "8"), ()),
    ],
)
def test_an_end_has_walls_where_it_does_not_come_flush(
    end: tuple[str, str], closed: tuple[str, ...]
) -> None:
    """Elsewhere what it goes into comes out on the side."""
    low, high = lengths(*end)
    found = hole(end_across=(low, high))
    assert tuple(walls(found)) == closed
    assert tuple(line.id for line in wall_lines(found, "Notch")) == closed
    faces = {WALL_NEAR: Face.SECOND, WALL_FAR: Face.FAR_SECOND}
    opened = tuple(face for name, face in faces.items() if name not in closed)
    assert open_faces(found) == (Face.FIRST, *opened)


def test_walls_say_what_goes_in() -> None:
    """And which face the far one is not measured from."""
    near, far = wall_lines(hole(), "Housing")
    assert (near.title, near.at, near.beside[0].value) == (
        "Housing near line",
        length("2"),
        length("4"),
    )
    assert (near.caution, far.caution) == ("", "Never measure this from the North face.")


def test_its_sides_hold_the_mortise_between_them() -> None:
    """And say on which of them the set-back is held."""
    assert side_planes(hole()) == (
        above(Axis.SECOND, length("3"), NEAR),
        below(Axis.SECOND, length("4-1/2"), FAR),
    )
    near, far = side_lines(hole(), TAPE)
    assert near.why.startswith("The set-back")
    assert far.why.startswith("Follows")
    near, far = side_lines(hole(same_side=False), TAPE)
    assert far.why.startswith("The set-back")
    assert near.why.startswith("Follows")


def test_a_barefaced_tenon_has_no_set_back_to_hold() -> None:
    """Its mortise runs on from the face of the timber that has it."""
    near, _ = side_lines(hole(tenon=replace(tenon(), near=ZERO)), TAPE)
    assert near.why.startswith("No set-back: the tenon runs on from the face of Brace. ")


def test_it_follows_the_tenon_that_was_made() -> None:
    """And says whether it was measured."""
    made = replace(tenon(), as_cut=AsCut(thickness=length("1-7/16")))
    assert follows_words(made, "length", TAPE) == (
        "Follows Brace's foot tenon as drawn; it has not been measured as cut."
    )
    assert follows_words(made, "thickness", TAPE) == (
        'Follows Brace\'s foot tenon as cut: 1-7/16" thickness, laid out as 1-1/2".'
    )


def test_depths_across_are_carried_point_by_point() -> None:
    """Into a stick measured from the other side they change places."""
    here = Place(
        origin=(0, 0, 0),
        ways=square_ways(Pose(Direction.UP, Direction.SOUTH, Direction.WEST)),
    )
    span = (length("1"), length("3"))
    for second, expected, same in (
        (Direction.SOUTH, ("0", "2"), True),
        (Direction.NORTH, ("5", "7"), False),
    ):
        sense = 1 if same else 8
        start = Length.inches(sense).nm
        pose = Pose(Direction.WEST, second, Direction.DOWN)
        there = Place(origin=(0, start, 0), ways=square_ways(pose))
        low, high = lengths(*expected)
        assert across_receiver(there, here, tenon(), span, Axis.SECOND) == ((low, high), same)


def test_a_reading_on_a_raking_stick_counts_its_own_length() -> None:
    """5" up a slope of 3 in 4 is 4" level and 3" up."""
    rake = frame_place()
    inch = Length.inches(1).nm
    assert reading_at(rake, (4 * inch, 0, 3 * inch), 0) == length("5")
    assert reading_at(rake, (4 * inch, 0, 3 * inch), 1) == ZERO
    assert along_receiver(rake, rake, tenon(), length("7"), length("2")) == length("7")


def frame_place() -> Place:
    """Where the raking timber of these tests stands."""
    stick = tenon().stick
    brace = timber(
        "brace",
        section="6 x 4",
        first_face="up",
        second_face="south",
        length=None,
        incline={
            "foot": {"east": "0", "north": "0", "up": "0"},
            "towards": "east",
            "run": "4'",
            "rise": "3'",
        },
    )
    return frame(brace).standing(stick.id)


@pytest.mark.parametrize(
    ("across", "told"),
    [
        (("0", "8"), None),
        (("-1/64", "4"), "brace-mortise-outside"),
        (("4", "8-1/64"), "brace-mortise-outside"),
    ],
)
def test_a_mortise_lies_in_its_stick(across: tuple[str, str], told: str | None) -> None:
    """It may come flush, and no farther."""
    low, high = lengths(*across)
    found = outside_the_side("brace", hole(across=(low, high)), TAPE)
    assert (found.code if found else None) == told


@pytest.mark.parametrize(
    ("across", "side"),
    [(("1/64", "7-63/64"), None), (("0", "2"), "South face"), (("6", "8"), "North face")],
)
def test_a_mortise_without_a_wall_is_looked_at(across: tuple[str, str], side: str | None) -> None:
    """The side that is open is named."""
    low, high = lengths(*across)
    found = open_at_the_side("brace", hole(across=(low, high)), TAPE)
    assert (found is None) is (side is None)
    if found is not None:
        assert found.severity is Severity.LOOK
        assert found.message == f"The mortise has no wall at the {side}"
        assert found.remedy == "give the tenon more set-back, or stand its timber further in"
