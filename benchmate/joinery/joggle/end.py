"""The abutting end's own side: the wood that comes off it, and the lines to strike for it."""

from benchmate.frame.marking import Says, cross_mark, parallel_mark, square_mark
from benchmate.frame.raking_tenon import (
    cheek_cuts,
    cheek_lines,
    reduced_cuts,
    reduced_lines,
    unsure_of_end,
)
from benchmate.frame.reach import crossing
from benchmate.joinery.joggle.shape import EndShape
from benchmate.joinery.joggle.words import WHOLE_END, end_setting, face_setting, looks_words
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Beside, Line, Reading, Spot
from benchmate.model.solids import Axis, Cut
from benchmate.model.stick import reference_for


def end_cuts(shape: EndShape) -> tuple[Cut, ...]:
    """What is past the abutment, beside the tenon, past its end, and what goes by square rule."""
    front = () if shape.square_on_edge else (Cut((shape.abutment,)),)
    return (
        *front,
        Cut((shape.tip,)),
        *cheek_cuts(shape, shape.sole),
        *reduced_cuts(shape, reduced(shape)),
    )


def reduced(shape: EndShape) -> dict[Axis, Length]:
    """The far faces that come down to the inner timber, as the whole end goes in."""
    if shape.stick.inner is None:
        return {}
    sides = (
        (shape.plumb, shape.real_deep, shape.deep),
        (shape.cheeks, shape.real_wide, shape.wide),
    )
    return {axis: at for axis, real, at in sides if real > at}


def end_lines(shape: EndShape, tape: Tape) -> tuple[Line, ...]:
    """The face line, what goes by square rule, abutment and sole, the tenon's end and cheeks."""
    front = () if shape.square_on_edge else (_abutment(shape, tape),)
    return (
        _face(shape, tape),
        *_reduction(shape, tape),
        *front,
        _sole(shape, tape),
        _tip(shape, tape),
        *cheek_lines(shape),
    )


def _words(shape: EndShape, face: Face) -> str:
    return shape.stick.pose.words(face)


def _edge(shape: EndShape, spot: Spot) -> str:
    """What the toe or the heel lies on: a face, or the line it is brought down to."""
    face = _words(shape, shape.edge_face if spot.deep == ZERO else shape.edge_face.opposite)
    return f"reduction line by the {face}" if spot.deep and shape.plumb in reduced(shape) else face


def _toe(shape: EndShape) -> str:
    return _edge(shape, shape.stands.toe)


def _heel(shape: EndShape) -> str:
    return _edge(shape, shape.stands.heel)


def abutment_words(shape: EndShape) -> str:
    """What the abutment is: a line of its own, the squared end, or the face along the toe."""
    if shape.square_on_edge:
        return _toe(shape)
    return f"squared {shape.end_words}" if shape.square_off else "abutment line"


def _face(shape: EndShape, tape: Tape) -> Line:
    into = shape.into.name
    says = Says(
        title="Face line",
        beside=(
            Beside(shape.foot_length, f"along it, from the {_toe(shape)} to the {_heel(shape)}"),
        ),
        why=(
            f"Where {shape.stick.name} meets the face of {into}. Its toe is on the {_toe(shape)}, "
            f"towards the {shape.end_words}: the abutment starts there, the sole at the other edge."
        ),
        caution=" ".join(filter(None, (unsure_of_end(shape), "Do not saw here."))),
        faces=LONG_FACES,
        setting=face_setting(shape, tape),
    )
    return cross_mark(shape.stick, shape.stands.face, (ZERO, shape.real_deep), says)


def _abutment(shape: EndShape, tape: Tape) -> Line:
    says = Says(
        title="Abutment line",
        beside=(Beside(shape.abutment_length, "along it from the toe, to where the sole starts"),),
        why=f"{looks_words(shape)} {WHOLE_END}; the tenon's front goes on in the same line.",
        caution="Bearing: strike it from the toe, and leave the line when sawing.",
        waste=f"Towards the {shape.end_words}, the whole width of the timber.",
        setting=end_setting(shape, shape.abutment, tape),
    )
    where = (_toe(shape), "tenon end line")
    ends = (shape.stands.toe.deep, shape.front.deep)
    return cross_mark(shape.stick, shape.abutment, ends, says, where)


def _sole(shape: EndShape, tape: Tape) -> Line:
    says = Says(
        title="Sole line",
        beside=(
            Beside(shape.sole_length, f"along it, from the heel to the {abutment_words(shape)}"),
            Beside(shape.notch, "from the face line there, square to it"),
        ),
        why=(
            "From the heel to where the notch is deepest: join the two. Both sides of the tenon "
            f"are sawn to it.{_squared_off(shape)}"
        ),
        waste=f"Towards the {shape.end_words}, beside the tenon only.",
        setting=end_setting(shape, shape.sole, tape),
    )
    where = (_heel(shape), abutment_words(shape))
    ends = (shape.stands.heel.deep, shape.bottom.deep)
    return cross_mark(shape.stick, shape.sole, ends, says, where)


def _squared_off(shape: EndShape) -> str:
    """What is said of an abutment that has no line of its own, as it is there already."""
    if not (shape.square_off or shape.square_on_edge):
        return ""
    return f" The {abutment_words(shape)} is the abutment, and bears. {looks_words(shape)}"


def _tip(shape: EndShape, tape: Tape) -> Line:
    reading = Reading(
        value=shape.length, hook="face line", way=f"square to it, towards the {shape.end_words}"
    )
    says = Says(
        title="Tenon end line",
        beside=(
            Beside(shape.length - shape.notch, "longer than the notch is deep"),
            Beside(shape.left_at_tip, f"of tenon left along it, from the {abutment_words(shape)}"),
        ),
        why="Parallel to the face line: measured square to it, and not along the edge.",
        waste=f"Towards the {shape.end_words}, beyond the line.",
        setting=face_setting(shape, tape),
    )
    if not any(shape.tip.normal[1:]):
        return square_mark(shape.tip, says)
    heel = crossing(shape.tip, shape.stands.heel_edge, shape.plumb)[1]
    return parallel_mark(shape.tip, (shape.front.deep, heel), reading, says)


def _reduction(shape: EndShape, tape: Tape) -> tuple[Line, ...]:
    lost = reduced(shape)
    if not lost:
        return ()
    stop = cross_mark(
        shape.stick,
        shape.outside,
        (ZERO, shape.real_deep),
        Says(
            title="Reduction end line",
            why="As far back as the end goes in: beyond it the stick keeps its full size.",
            caution="Only on the far faces: nothing comes off a reference face.",
            faces=tuple(reference_for(axis).opposite for axis in lost),
            setting=face_setting(shape, tape),
        ),
    )
    return (stop, *reduced_lines(shape, lost))
