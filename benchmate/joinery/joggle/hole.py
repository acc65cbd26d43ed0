"""The receiving side: the notch an end abuts in, and the mortise that goes on in line with it."""

from benchmate.frame.marking import Says, cross_mark, square_mark
from benchmate.frame.raking_hole import (
    follows_words,
    open_faces,
    side_lines,
    side_planes,
    wall_lines,
    walls,
)
from benchmate.frame.reduction import measured_words
from benchmate.frame.settings import plane_setting
from benchmate.joinery.joggle.shape import HoleShape
from benchmate.joinery.joggle.words import ENGINEER, looks_words
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading
from benchmate.model.solids import Axis, Cut, Plane, above, below

BACK_END, DEPTH = "back-end", "depth"
"""The lines of the mortise that are its own, beside its sides."""


def hole_cuts(shape: HoleShape) -> tuple[Cut, ...]:
    """The notch for the whole end, and the mortise."""
    down = below if shape.entry.is_reference else above
    return (
        Cut((shape.abutment, shape.sole, *walls(shape).values())),
        Cut(
            (
                shape.abutment,
                _back_end(shape),
                *side_planes(shape),
                down(shape.into, shape.floor, DEPTH),
            )
        ),
    )


def _back_end(shape: HoleShape) -> Plane:
    closes = below if shape.onwards else above
    return closes(Axis.ALONG, shape.back_end, BACK_END)


def hole_lines(shape: HoleShape, tape: Tape) -> tuple[Line, ...]:
    """The notch's abutment, sole and walls, then the mortise's back end, sides and depth."""
    return (
        _abutment(shape, tape),
        _sole(shape, tape),
        *wall_lines(shape, "Notch"),
        _mortise_back(shape),
        *side_lines(shape, tape),
        _depth(shape, tape),
    )


def relish(shape: HoleShape) -> Beside:
    """The wood left beyond the notch, as a number and what it is measured to."""
    end = shape.stick.pose.words(shape.relish_end)
    near = shape.relish_end.is_reference
    beyond = shape.stick.near if near else shape.stick.far
    tenoned = beyond and shape.relish_end not in shape.stick.lapped
    to = f"{end} shoulder" if tenoned else f"squared {end}"
    return Beside(shape.relish, f"of relish left along the grain, to the {to}")


def _bevelled(shape: HoleShape) -> str:
    """How an abutment that slants is cut to its slope where it comes out on no side face."""
    if len(open_faces(shape)) > 1 or not any(shape.abutment.normal[1:]):
        return ""
    return "The notch comes out on no side: going in, it leans to the bevel. "


def _abutment(shape: HoleShape, tape: Tape) -> Line:
    entry = shape.stick.pose.words(shape.entry)
    name = shape.tenon.stick.name
    says = Says(
        title="Abutment line",
        beside=(
            Beside(shape.recess, f"deep there, from the {entry}"),
            Beside(shape.tenon.abutment_length, "down it, from the toe to the sole"),
            relish(shape),
        ),
        why=(
            f"{name} thrusts against this face. {looks_words(shape.tenon)} The mortise's front "
            f"goes on in the same line. {_bevelled(shape)}{_measured(shape)}"
        ).rstrip(),
        caution=ENGINEER,
        setting=plane_setting(shape.abutment, shape.into, tape),
    )
    ends = (shape.toe.deep, shape.bottom.deep)
    return cross_mark(shape.stick, shape.abutment, ends, says, (entry, "sole line"))


def _measured(shape: HoleShape) -> str:
    """Whether a notch that follows what the stick is over goes by a measured one, in a sentence."""
    if shape.entry.is_reference or shape.stick.inner is None:
        return ""
    return measured_words(shape.stick, shape.into, (shape.feature,))


def _sole(shape: HoleShape, tape: Tape) -> Line:
    entry = shape.stick.pose.words(shape.entry)
    says = Says(
        title="Sole line",
        beside=(
            Beside(shape.recess, f"deep at the abutment line, from the {entry}"),
            Beside(abs(shape.heel.along - shape.toe.along), f"from toe to heel on the {entry}"),
        ),
        why=(
            "From nothing deep at the heel to the bottom of the abutment. "
            f"{shape.tenon.stick.name} lies on it."
        ),
        setting=plane_setting(shape.sole, shape.into, tape),
    )
    ends = (shape.heel.deep, shape.bottom.deep)
    return cross_mark(shape.stick, shape.sole, ends, says, (entry, "abutment line"))


def _mortise_back(shape: HoleShape) -> Line:
    says = Says(
        title="Mortise back line",
        beside=(Beside(shape.ease, "of it to spare beyond the heel"),) if shape.ease else (),
        why=(
            f"Square in, and a little to spare: what {shape.tenon.stick.name} is over goes to this "
            "end, so it bears on nothing."
        ),
        caution="Between the mortise's sides only: the notch itself ends at the sole line.",
        faces=() if shape.ease else (shape.entry,),
    )
    return square_mark(_back_end(shape), says)


def _depth(shape: HoleShape, tape: Tape) -> Line:
    words = shape.stick.pose.words
    entry, other = words(shape.entry), words(shape.entry.opposite)
    return Line(
        id=DEPTH,
        title="Depth",
        axis=shape.into,
        at=shape.floor,
        faces=(shape.entry,),
        readings=(
            Reading(value=shape.depth, hook=entry, way=f"straight down towards the {other}"),
        ),
        beside=(
            Beside(shape.clearance, "deeper than the tenon goes"),
            Beside(shape.left_below, f"left to the {other}"),
        ),
        waste="Inside the mortise's four lines, down to this depth. Write it in the waste.",
        why=(
            "From a straightedge across the notch. The tenon must never bottom out: abutment and "
            f"sole bear. {follows_words(shape.tenon, 'length', tape)}"
        ),
        caution="Measure after the chips are out.",
    )
