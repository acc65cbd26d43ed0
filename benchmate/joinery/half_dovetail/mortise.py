"""The post's side: the mortise right through it, the housing, and the lines to strike for them."""

from dataclasses import replace

from benchmate.frame.flats import along_at
from benchmate.frame.marking import Says, slanting_mark, square_mark
from benchmate.frame.mated import follows_words, side_lines
from benchmate.frame.reduction import lies_in_words, measured_words
from benchmate.frame.tapers import slope_setting
from benchmate.joinery.half_dovetail.mortise_shape import (
    FAR,
    FINISH,
    FLOOR,
    NEAR,
    START,
    MortiseShape,
)
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import reference_for

SLOPES = "It slopes through the post: this figure is for this face alone. "

OTHER_FACE = "-far"
"""What the id of a sloping end's line on the far side from the reference face ends with."""


def mortise_cuts(shape: MortiseShape) -> tuple[Cut, ...]:
    """The mortise, open at both faces, and the housing if there is one."""
    mortise = Cut((shape.tail_end, shape.wedge_end, *shape.sides.planes()))
    if not shape.recess:
        return (mortise,)
    return (Cut((floor_plane(shape), *shape.walls)), mortise)


def floor_plane(shape: MortiseShape) -> Plane:
    """Where the shoulder bears."""
    bound = below if shape.entry.is_reference else above
    return bound(shape.into, shape.seat, FLOOR)


def mortise_lines(shape: MortiseShape, tape: Tape) -> tuple[Line, ...]:
    """The housing, then the two sloping ends of the mortise, face by face, and its two sides."""
    return (
        *_housing_lines(shape),
        *_end_lines(shape, shape.tail_end, _tail_says(shape, tape)),
        *_end_lines(shape, shape.wedge_end, _wedge_says(shape)),
        *side_lines(shape.sides),
    )


def _end_lines(shape: MortiseShape, plane: Plane, says: Says) -> tuple[Line, Line]:
    """A sloping end: on the reference face, and by a figure of its own on the face across from it.

    One step for both would be squared across from the first.
    """
    near = reference_for(shape.into)
    words = shape.stick.pose.words
    first = replace(
        says, title=f"{says.title}, {words(near)}", faces=(near,), beside=_height(shape, near, says)
    )
    end = Face.REFERENCE_END if plane.normal[0] > 0 else Face.FAR_END
    return (
        slanting_mark(shape.stick, plane, (ZERO, shape.real_into), first),
        Line(
            id=f"{plane.line}{OTHER_FACE}",
            title=f"{says.title}, {words(near.opposite)}",
            axis=Axis.ALONG,
            at=along_at(plane, shape.into, shape.real_into),
            faces=(near.opposite,),
            beside=_height(shape, near.opposite, says),
            waste=f"Towards the {words(end)}.",
            why=says.why,
            caution=says.caution,
        ),
    )


def _height(shape: MortiseShape, face: Face, says: Says) -> tuple[Beside, ...]:
    """How tall the mortise is on a face, before what else is said."""
    return (Beside(shape.ends_on(face).height, "from end to end of the mortise here"), *says.beside)


def _tail_says(shape: MortiseShape, tape: Tape) -> Says:
    tail, name = shape.tail, shape.tail.stick.name
    size = follows_words(
        f"{name}'s tail", "deep at its end", tail.as_cut.get("length"), tail.tail, tape
    )
    return Says(
        title="Tail end line",
        why=f"The tail bears on this slope, further out on the far face. {size}",
        caution=f"{SLOPES}{_entry_words(shape)}",
        setting=slope_setting(tail.run.nm, max(shape.flare, ZERO).nm),
    )


def _wedge_says(shape: MortiseShape) -> Says:
    return Says(
        title="Wedge end line",
        beside=wedge_beside(shape),
        why=(
            "So much taller than the tenon that the tail comes in and the wedge has its room: "
            "thin at the shoulder, thick at the far face."
        ),
        caution=f"{SLOPES}{_entry_words(shape)}",
        setting=slope_setting(shape.tail.run.nm, shape.tail.flare.nm),
    )


def _entry_words(shape: MortiseShape) -> str:
    words = shape.stick.pose.words
    return (
        f"{shape.tail.stick.name} comes in from the {words(shape.entry)}; the wedge is driven from "
        f"the {words(shape.entry.opposite)}."
    )


def wedge_beside(shape: MortiseShape) -> tuple[Beside, ...]:
    """The wedge's own sizes."""
    wedge = shape.wedge
    return (
        Beside(wedge.thin, "wedge, thick at its thin end, at the tenon's shoulder"),
        Beside(wedge.thick, "wedge, thick at the far face"),
        Beside(wedge.length, "wedge, long from one to the other"),
    )


def _housing_lines(shape: MortiseShape) -> tuple[Line, ...]:
    if not shape.recess:
        return ()
    found = [square_mark(wall, _wall_says(shape, wall)) for wall in shape.walls]
    return (*found, _floor(shape))


def _wall_says(shape: MortiseShape, wall: Plane) -> Says:
    _, _, side = str(wall.line).partition("-")
    other = shape.stick.pose.words(reference_for(shape.sides.axis).opposite)
    eased = (
        " Eased by what the tie still comes down its slope once it is in the housing."
        if wall.line == _wedge_side(shape)
        else ""
    )
    cheeks = shape.tail.cheeks
    axis = shape.tail.edges if wall.normal[0] else cheeks.axis
    known = lies_in_words(cheeks.stick, axis, cheeks.places)
    return Says(
        title=f"Housing {side} line",
        why=f"The whole end of {cheeks.stick.name} goes in. {known}{eased}",
        caution=f"Never measure this from the {other}." if wall.line == FAR else "",
    )


def _wedge_side(shape: MortiseShape) -> str:
    """The wall of the housing on the wedge's side."""
    ends = shape.ends(shape.seat)
    return FINISH if ends.wedge > ends.tail else START


def _floor(shape: MortiseShape) -> Line:
    words = shape.stick.pose.words
    entry, reference = words(shape.entry), words(reference_for(shape.into))
    far = not shape.entry.is_reference
    return Line(
        id=FLOOR,
        title="Housing floor",
        axis=shape.into,
        at=shape.seat,
        faces=() if _comes_out(shape) else (shape.entry,),
        readings=(Reading(value=shape.recess, hook=entry, way="straight in, to the floor"),),
        beside=(Beside(shape.seat, f"from the {reference} to the floor here"),) if far else (),
        waste=f"Towards the {entry}, inside the housing's lines only.",
        why=f"The shoulder bears here. {_how_deep(shape)}",
    )


def _comes_out(shape: MortiseShape) -> bool:
    """Whether the housing is open at a side, so that its floor shows there."""
    closed_all_round = 4
    return len(shape.walls) < closed_all_round


def _how_deep(shape: MortiseShape) -> str:
    if shape.entry.is_reference:
        return "Shoulder to shoulder already counts it."
    return measured_words(shape.stick, shape.into, (shape.feature,))


def open_faces(shape: MortiseShape) -> tuple[Face, ...]:
    """The faces the housing comes out on: its entry, and each side it is open at."""
    near = reference_for(shape.sides.axis)
    closed = {wall.line for wall in shape.walls}
    sides = ((NEAR, near), (FAR, near.opposite))
    return (shape.entry, *(face for name, face in sides if name not in closed))
