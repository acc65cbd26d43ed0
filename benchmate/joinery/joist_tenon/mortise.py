"""The beam's side: the mortise, the haunch's sloping recess over it, the tusk's under it."""

from benchmate.frame.flats import nearest
from benchmate.frame.housing import FAR as HOUSING_FAR
from benchmate.frame.housing import NEAR as HOUSING_NEAR
from benchmate.frame.housing import housing_cuts, housing_lines, housing_walls
from benchmate.frame.marking import Says, square_mark
from benchmate.frame.mated import follows_words
from benchmate.frame.practice import bears_on
from benchmate.joinery.joist_tenon.hole_shape import (
    DEPTH,
    FINISH,
    HAUNCH_FLOOR,
    LOWER,
    START,
    TOP,
    TUSK_FLOOR,
    TUSK_SIDE,
    UPPER,
    HoleShape,
)
from benchmate.joinery.joist_tenon.shape import EndShape
from benchmate.joinery.joist_tenon.sizes import tusk_area
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import reference_for

ENGINEER = (
    "Mortises weaken the beam, most near its lower face: their depth, size and number are for the "
    "engineer."
)
"""A tusk tenon's mortise lies near the neutral axis for that reason (trade notes 2.4)."""


def hole_cuts(shape: HoleShape) -> tuple[Cut, ...]:
    """What takes the whole end, the mortise, and the recesses of haunch and tusk."""
    start, finish = shape.along
    ends = (above(Axis.ALONG, start, START), below(Axis.ALONG, finish, FINISH))
    upper, lower = _under(shape, shape.upper, UPPER), _over(shape, shape.lower, LOWER)
    found = [*housing_cuts(shape.housing), Cut((*ends, upper, lower, _floor(shape, DEPTH)))]
    if shape.joist.haunched:
        over = _over(shape, shape.upper, UPPER)
        found.append(Cut((*ends, over, shape.haunch_floor, *_joist_top(shape))))
    if shape.joist.part.tusk:
        sides = (_under(shape, shape.lower, LOWER), _over(shape, shape.lowest, TUSK_SIDE))
        found.append(Cut((*ends, *sides, _floor(shape, TUSK_FLOOR))))
    return tuple(found)


def _over(shape: HoleShape, at: Length, line: str) -> Plane:
    """The plane with all that lies above it as waste."""
    return (below if shape.downwards else above)(shape.plumb, at, line)


def _under(shape: HoleShape, at: Length, line: str) -> Plane:
    """The plane with all that lies below it as waste."""
    return (above if shape.downwards else below)(shape.plumb, at, line)


def _floor(shape: HoleShape, line: str) -> Plane:
    down = below if shape.entry.is_reference else above
    return down(shape.into, shape.housing.inside(_depth_of(shape, line)), line)


def _depth_of(shape: HoleShape, line: str) -> Length:
    """How deep a recess is below the seat, by its floor's line."""
    part = shape.joist.part
    return {DEPTH: shape.depth, TUSK_FLOOR: part.tusk, HAUNCH_FLOOR: part.haunch}[line]


def _joist_top(shape: HoleShape) -> tuple[Plane, ...]:
    """Where the haunch's recess stops inside a housing: at that one's upper wall, if it has one."""
    walls = housing_walls(shape.housing)
    upper = HOUSING_NEAR if shape.downwards else HOUSING_FAR
    return (walls[upper],) if upper in walls else ()


def hole_lines(shape: HoleShape, tape: Tape) -> tuple[Line, ...]:
    """The housing, then the mortise, then the two recesses and their depths."""
    return (*housing_lines(shape.housing), *own_lines(shape, tape))


def own_lines(shape: HoleShape, tape: Tape) -> tuple[Line, ...]:
    """The lines of the joint itself, without a housing's."""
    part, joist = shape.joist.part, shape.joist
    found = [*_ends(shape, tape)]
    if joist.haunched:
        found += _top(shape)
    found += _sides(shape, tape)
    if part.tusk:
        found.append(_tusk_side(shape, tape))
    found.append(_depth(shape, tape))
    if joist.haunched:
        found.append(_haunch_floor(shape))
    if part.tusk:
        found.append(_tusk_floor(shape))
    return tuple(found)


def _follows(joist: EndShape, size: str, tape: Tape) -> str:
    words, laid_out = {
        "thickness": ("deep", joist.thickness),
        "width": ("wide", joist.wide),
        "length": ("long", joist.part.length),
    }[size]
    name = f"{joist.stick.name}'s tenon"
    return follows_words(name, words, joist.as_cut.get(size), laid_out, tape)


def _ends(shape: HoleShape, tape: Tape) -> tuple[Line, Line]:
    start, finish = shape.along
    why = (
        "As wide as the joist, and the same for all that is cut here. "
        f"{_follows(shape.joist, 'width', tape)}"
    )
    wide = (Beside(finish - start, "wide, along the beam"),)
    return (
        square_mark(
            above(Axis.ALONG, start, START), Says(title="Start line", beside=wide, why=why)
        ),
        square_mark(
            below(Axis.ALONG, finish, FINISH), Says(title="Finish line", beside=wide, why=why)
        ),
    )


def _top(shape: HoleShape) -> tuple[Line, ...]:
    """Where the haunch's recess runs out to nothing, or comes out on a beam lower than its joist.

    A joist level with its beam needs none: there it runs out on the arris. Nor does one in a
    housing: there it is the housing's own upper line.
    """
    word, name = shape.joist.haunch_word, shape.joist.stick.name
    if not shape.below_top or _joist_top(shape):
        return ()
    says = Says(
        title=f"{word.capitalize()} top line",
        why=(
            f"The top of {name} comes here, where the {word}'s recess runs out to nothing."
            if shape.below_top > ZERO
            else f"{name} stands proud of the beam, so the {word}'s recess is open here."
        ),
        faces=(shape.entry if shape.below_top > ZERO else shape.beam_top,),
        waste=f"Inside the {word}'s lines only.",
    )
    if shape.below_top > ZERO:
        return (square_mark(_over(shape, shape.top, TOP), says),)
    return (square_mark(below(shape.into, _at_beam_top(shape), TOP), says),)


def _at_beam_top(shape: HoleShape) -> Length:
    """How far in from its reference face the haunch's floor comes out on the beam's top."""
    plane = shape.haunch_floor
    real = shape.stick.depth(shape.plumb, shape.feature)
    level = ZERO if shape.downwards else real
    plumb, into = (
        sum(part for part, step in zip(plane.normal, axis.value, strict=True) if step)
        for axis in (shape.plumb, shape.into)
    )
    return Length(nearest(plane.offset - plumb * level.nm, into))


def _sides(shape: HoleShape, tape: Tape) -> tuple[Line, Line]:
    high = (Beside(abs(shape.lower - shape.upper), "of mortise between the two"),)
    name = shape.joist.stick.name
    wide = shape.along[1] - shape.along[0]
    bears = bears_on(name, shape.joist.real("length"), wide, tape)
    upper = Says(
        title="Upper side line",
        beside=high,
        why=f"The tenon's upper cheek, held from the top of {name}, so that all tops come level.",
        caution=_not_from_far(shape),
        waste=_both_sides("below", "above", shape.joist.haunch_word, there=shape.joist.haunched),
    )
    lower = Says(
        title="Lower side line",
        beside=(*high, Beside(shape.left_below, "of beam left under all of it")),
        why=f"{bears} {_follows(shape.joist, 'thickness', tape)}",
        caution=f"{_not_from_far(shape)} {ENGINEER}",
        waste=_both_sides("above", "below", "tusk", there=bool(shape.joist.part.tusk)),
    )
    return (
        square_mark(_under(shape, shape.upper, UPPER), upper),
        square_mark(_over(shape, shape.lower, LOWER), lower),
    )


def _both_sides(mortise: str, recess: str, what: str, *, there: bool) -> str:
    """Which wood goes beside a line between the mortise and a recess, if there is one."""
    if not there:
        return ""
    return f"Both sides: the mortise {mortise} it, the {what}'s shallower recess {recess} it."


def _not_from_far(shape: HoleShape) -> str:
    far = reference_for(shape.plumb).opposite
    return f"Never measure this from the {shape.stick.pose.words(far)}."


def _tusk_side(shape: HoleShape, tape: Tape) -> Line:
    says = Says(
        title="Tusk side line",
        beside=(Beside(abs(shape.lowest - shape.lower), "below the lower side line"),),
        why=f"The tusk bears here, and takes load off the tenon: {tusk_area(shape.joist, tape)}.",
        caution=_not_from_far(shape),
    )
    return square_mark(_over(shape, shape.lowest, TUSK_SIDE), says)


def straight_in(shape: HoleShape, line: str, way: str = "straight in") -> Reading:
    """The depth of a recess, from what it is measured from."""
    return Reading(value=_depth_of(shape, line), hook=shape.housing.opening, way=way)


def _depth(shape: HoleShape, tape: Tape) -> Line:
    other = shape.stick.pose.words(shape.entry.opposite)
    return Line(
        id=DEPTH,
        title="Mortise depth",
        axis=shape.into,
        at=shape.housing.inside(shape.depth),
        faces=(shape.entry,),
        readings=(straight_in(shape, DEPTH, f"straight in towards the {other}"),),
        beside=(
            Beside(shape.clearance, "deeper than the tenon is long"),
            Beside(shape.left_behind, f"left to the {other}"),
        ),
        waste="Inside the mortise's four lines, in to this depth. Write it in the waste.",
        why=(
            "The tenon must never bottom out: the shoulder comes up to the beam. "
            f"{_follows(shape.joist, 'length', tape)}"
        ),
        caution="Measure after the chips are out.",
    )


def _haunch_floor(shape: HoleShape) -> Line:
    word = shape.joist.haunch_word
    return Line(
        id=HAUNCH_FLOOR,
        title=f"{word.capitalize()} depth",
        axis=shape.into,
        at=shape.housing.inside(_depth_of(shape, HAUNCH_FLOOR)),
        faces=(shape.entry,),
        readings=(straight_in(shape, HAUNCH_FLOOR, "straight in, at the upper side line"),),
        waste=f"Above the mortise only, sloping out to nothing at the top of the {word}.",
        why=(
            f"So deep where the tenon starts, and from there straight up to nothing at the top of "
            f"{shape.joist.stick.name}."
        ),
        caution="No deeper above the upper side line: try it with a straightedge.",
    )


def _tusk_floor(shape: HoleShape) -> Line:
    return Line(
        id=TUSK_FLOOR,
        title="Tusk depth",
        axis=shape.into,
        at=shape.housing.inside(_depth_of(shape, TUSK_FLOOR)),
        faces=(shape.entry,),
        readings=(straight_in(shape, TUSK_FLOOR),),
        waste="Under the mortise only, down to the tusk side line.",
        why="The tusk goes so far in, and bears on the recess's lower side.",
    )
