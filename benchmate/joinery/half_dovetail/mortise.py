"""The post's side: the mortise right through it, the housing, and the lines to strike for them."""

from benchmate.frame.flats import along_at
from benchmate.frame.marking import Says, slanting_mark, square_mark
from benchmate.frame.mated import follows_words, side_lines
from benchmate.frame.reduction import measured_words
from benchmate.frame.tapers import slope_setting
from benchmate.joinery.half_dovetail.mortise_shape import FLOOR, MortiseShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading
from benchmate.model.solids import Cut, Plane, above, below
from benchmate.model.stick import reference_for

SLOPES = "It slopes through the post: set it off on each of the two faces by its own figure."


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
    """The housing, then the two sloping ends of the mortise and its two sides."""
    return (
        *_housing_lines(shape),
        _tail_end(shape, tape),
        _wedge_end(shape),
        *side_lines(shape.sides),
    )


def _tail_end(shape: MortiseShape, tape: Tape) -> Line:
    tail, name = shape.tail, shape.tail.stick.name
    size = follows_words(
        f"{name}'s tail", "deep at its end", tail.as_cut.get("length"), tail.tail, tape
    )
    says = Says(
        title="Tail end line",
        beside=(_far_figure(shape, shape.tail_end),),
        why=f"The tail bears on this slope, further out on the far face. {size}",
        caution=f"{SLOPES} {_entry_words(shape)}",
        setting=slope_setting(tail.run.nm, max(shape.flare, ZERO).nm),
    )
    return slanting_mark(shape.stick, shape.tail_end, (ZERO, shape.real_into), says)


def _wedge_end(shape: MortiseShape) -> Line:
    words, tail = shape.stick.pose.words, shape.tail
    enters, leaves = shape.ends_on(shape.entry), shape.ends_on(shape.entry.opposite)
    says = Says(
        title="Wedge end line",
        beside=(
            _far_figure(shape, shape.wedge_end),
            Beside(enters.height, f"from the tail end line, on the {words(shape.entry)}"),
            Beside(leaves.height, f"on the {words(shape.entry.opposite)}"),
            *wedge_beside(shape),
        ),
        why=(
            "So much taller than the tenon that the tail comes in and the wedge has its room: "
            "thin at the shoulder, thick at the far face."
        ),
        caution=f"{SLOPES} {_entry_words(shape)}",
        setting=slope_setting(tail.run.nm, tail.flare.nm),
    )
    return slanting_mark(shape.stick, shape.wedge_end, (ZERO, shape.real_into), says)


def _far_figure(shape: MortiseShape, plane: Plane) -> Beside:
    """Where a sloping end comes on the far side from the reference face, as a running figure."""
    stick, far = shape.stick, reference_for(shape.into).opposite
    end = stick.pose.words(Face.REFERENCE_END)
    hook = f"{end} shoulder line" if stick.near else f"squared {end}"
    at = along_at(plane, shape.into, shape.real_into)
    return Beside(at, f"from the {hook}, on the {stick.pose.words(far)}")


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
    name, across = shape.tail.stick.name, not wall.normal[0]
    other = shape.stick.pose.words(reference_for(shape.sides.axis).opposite)
    return Says(
        title=f"Housing {side} line",
        why=(
            f"The whole end of {name} goes in. On the wedge's side it is eased by what the tie "
            "still comes down once it is in the housing."
            if not across
            else f"The whole end of {name} goes in."
        ),
        caution=f"Never measure this from the {other}." if across and side == "far" else "",
    )


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
    sides = (("housing-near", near), ("housing-far", near.opposite))
    return (shape.entry, *(face for name, face in sides if name not in closed))
