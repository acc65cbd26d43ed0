"""The receiving side: the diminished housing, the mortise in it, and the lines for both."""

from benchmate.frame.marking import Says, square_mark
from benchmate.frame.mated import follows_words, side_lines
from benchmate.frame.reduction import lies_in_words, measured_words
from benchmate.joinery.diminished.mortise_shape import FAR, NEAR, TOP, MortiseShape
from benchmate.measure.printing import Tape
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Beside, Line, Reading
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import across, reference_for

ENGINEER = "How much bearing the load needs is for local code and a licensed engineer."


def mortise_cuts(shape: MortiseShape) -> tuple[Cut, ...]:
    """The housing, a wedge of wood from its top down to its ledge, and the mortise."""
    bound = below if shape.entry.is_reference else above
    mortise = Cut(
        (
            *_end_planes(shape),
            *shape.sides.planes(),
            bound(shape.into, shape.bottom, "depth"),
        )
    )
    return (Cut((shape.slope, shape.ledge, *shape.walls)), mortise)


def _end_planes(shape: MortiseShape) -> tuple[Plane, Plane]:
    start, finish = shape.along
    return above(Axis.ALONG, start, "start"), below(Axis.ALONG, finish, "finish")


def mortise_lines(shape: MortiseShape, tape: Tape) -> tuple[Line, ...]:
    """The housing's top, ledge and sides, then the mortise's two ends, two sides and depth."""
    walls = (square_mark(wall, _says(shape, wall)) for wall in shape.walls if wall.line != TOP)
    return (
        _slope(shape),
        *walls,
        _ledge(shape),
        *_ends(shape, tape),
        *side_lines(shape.sides),
        _depth(shape, tape),
    )


def open_faces(shape: MortiseShape) -> tuple[Face, ...]:
    """The faces the housing comes out on: its entry, and each side it is open at."""
    near = reference_for(shape.sides.axis)
    if shape.upright:
        closed = {wall.line for wall in shape.walls}
        sides = ((NEAR, near), (FAR, near.opposite))
        return (shape.entry, *(face for name, face in sides if name not in closed))
    above_it = shape.made.over and not shape.top_proud
    return (shape.entry, shape.stick.pose.face(Direction.UP)) if above_it else (shape.entry,)


def _slope(shape: MortiseShape) -> Line:
    """The floor by the line its slope starts at; how deep it goes is said at both its ends."""
    entry, made = shape.stick.pose.words(shape.entry), shape.made
    return Line(
        id=TOP,
        title="Housing top line",
        axis=shape.plumb,
        at=shape.top_at,
        faces=(shape.entry,),
        beside=(
            Beside(made.over, f"deep from the {entry}, at this line"),
            Beside(made.recess, f"deep from the {entry}, at the housing's ledge line"),
        ),
        why=(
            f"Where the top of {made.stick.name} comes. The housing's floor slopes from here to "
            f"its full depth at the ledge.{_on_the_sides(shape)} {_how_deep(shape)}"
        ),
        caution="Full depth at the bottom, never here: the end bears on the ledge.",
    )


def _on_the_sides(shape: MortiseShape) -> str:
    """What to strike where the housing is open at a side of its timber."""
    words = [shape.stick.pose.words(face) for face in open_faces(shape)[1:]]
    if not words:
        return ""
    return f" On the {' and the '.join(words)}, where it is open, join its two depths."


def _how_deep(shape: MortiseShape) -> str:
    if shape.entry.is_reference:
        return "Shoulder to shoulder already counts it."
    return measured_words(shape.stick, shape.into, (shape.feature,))


def _ledge(shape: MortiseShape) -> Line:
    entry, made = shape.stick.pose.words(shape.entry), shape.made
    says = Says(
        title="Housing's ledge line",
        beside=(Beside(made.recess, f"deep here, from the {entry}"),),
        why=(
            f"The underside of {made.stick.name} bears on this ledge, so that the end does not "
            f"hang on its tenon. {lies_in_words(made.stick, made.plumb, made.places)}"
        ),
        caution=ENGINEER,
    )
    return square_mark(shape.ledge, says)


def _says(shape: MortiseShape, wall: Plane) -> Says:
    _, _, side = str(wall.line).partition("-")
    other = shape.stick.pose.words(reference_for(shape.sides.axis).opposite)
    made = shape.made
    known = lies_in_words(made.stick, across(made.plumb), made.places)
    return Says(
        title=f"Housing {side} line",
        why=f"The whole end of {made.stick.name} goes in. {known}",
        caution=f"Never measure this from the {other}." if wall.line == FAR else "",
    )


def _ends(shape: MortiseShape, tape: Tape) -> tuple[Line, Line]:
    start, finish = shape.along
    name, made = f"{shape.made.stick.name}'s tenon", shape.made
    long = (Beside(finish - start, "mortise length"),)
    why = follows_words(name, "wide", made.as_cut.get("width"), made.width, tape)
    first, last = _end_planes(shape)
    return (
        square_mark(first, Says(title="Start line", beside=long, why=why)),
        square_mark(last, Says(title="Finish line", beside=long, why=why)),
    )


def _depth(shape: MortiseShape, tape: Tape) -> Line:
    words, made = shape.stick.pose.words, shape.made
    entry, other = words(shape.entry), words(shape.entry.opposite)
    follows = follows_words(
        f"{made.stick.name}'s tenon", "long", made.as_cut.get("length"), made.length, tape
    )
    return Line(
        id="depth",
        title="Depth",
        axis=shape.into,
        at=shape.bottom,
        faces=(shape.entry,),
        readings=(Reading(value=shape.depth, hook=entry, way=f"straight in, towards the {other}"),),
        beside=(
            Beside(shape.clearance, "deeper than the tenon is long"),
            Beside(shape.left_below, f"left to the {other}"),
        ),
        waste="Inside the four lines, down to this depth. Write it in the waste.",
        why=f"The tenon must never bottom out: the shoulder bears, not the end. {follows}",
        caution="From the face, with a straight edge laid over the housing: its floor slopes.",
    )
