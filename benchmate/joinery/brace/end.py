"""The brace's own side: the wood that comes off its end, and the lines to strike for it."""

from benchmate.frame.marking import Says, parallel_mark, slanting_mark
from benchmate.frame.raking_tenon import (
    cheek_cuts,
    cheek_lines,
    reduced_cuts,
    reduced_lines,
    unsure_of_end,
)
from benchmate.frame.reach import crossing
from benchmate.frame.settings import rake_setting
from benchmate.joinery.brace.legs import Legs
from benchmate.joinery.brace.shape import EndShape
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Beside, Line, Reading
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Cut
from benchmate.model.stick import reference_for

BOTH_ENDS = (
    "The foot and the head take the same two figures, one struck along the tongue and the other "
    "along the blade: swapped, the brace still looks right on the horses."
)
"""The classic slip (trade notes 2.3, common practice)."""


def end_cuts(shape: EndShape) -> tuple[Cut, ...]:
    """The nose, the wood beside the tenon, what is past its end, and what goes by square rule."""
    nosed = (shape.nose, shape.abutment) if shape.beside_nose else (shape.nose,)
    found = [Cut(nosed), Cut((shape.tip,))]
    found += [*cheek_cuts(shape, shape.seat), *reduced_cuts(shape, reduced(shape))]
    return tuple(found)


def reduced(shape: EndShape) -> dict[Axis, Length]:
    """The far faces that come down to the inner timber, so that the end goes in."""
    if shape.stick.inner is None:
        return {}
    found = {}
    if shape.real_deep > shape.deep:
        found[shape.plumb] = shape.deep
    if (shape.housing or shape.over) and shape.real_wide > shape.wide:
        found[shape.cheeks] = shape.wide
    return found


def end_lines(shape: EndShape, legs: Legs | None, tape: Tape) -> tuple[Line, ...]:
    """The face line, the nose, the seat, the cheeks and the tenon's end, in the order struck."""
    found = [_shoulder(shape, legs, tape), _nose(shape, tape)]
    if shape.housing:
        found.append(_seat(shape, tape))
    found += cheek_lines(shape)
    found.append(_tip(shape, tape))
    return (*found, *_reduction(shape, tape))


def line_setting(shape: EndShape, tape: Tape, *, like_the_face: bool) -> Setting:
    """How to set the square for a line parallel to the face it enters, or square to that."""
    plumb = shape.upright is like_the_face
    return rake_setting(shape.rake.run, shape.rake.rise, tape, plumb=plumb)


def _shoulder(shape: EndShape, legs: Legs | None, tape: Tape) -> Line:
    housed = bool(shape.housing)
    edge = _words(shape, shape.edge_face)
    says = Says(
        title="Shoulder line, at the face" if housed else "Shoulder line",
        beside=(
            *(legs.beside() if legs else ()),
            Beside(shape.foot_length, "long along it, from the long edge to the short one"),
        ),
        why=(
            f"Start on the {edge}: that is the long edge, and what the stick is over or under goes "
            "to the inside. "
            + (
                "Where it meets the other timber's face: the end goes on into its housing."
                if housed
                else "The brace bears here."
            )
        ),
        caution=" ".join(filter(None, (unsure_of_end(shape), _sawn(shape), BOTH_ENDS))),
        faces=() if shape.sawn_at_face else LONG_FACES,
        setting=line_setting(shape, tape, like_the_face=True),
    )
    return slanting_mark(shape.stick, shape.face, (ZERO, shape.real_deep), says)


def _sawn(shape: EndShape) -> str:
    """What is said of sawing at the face line: nothing where it is the shoulder."""
    if not shape.sawn_at_face:
        return "Do not saw here."
    if not shape.housing:
        return ""
    return "Saw here only from the long edge to the nose line: the rest goes on into its housing."


def _nose(shape: EndShape, tape: Tape) -> Line:
    foot = shape.stick.pose.words(shape.end)
    says = Says(
        title="Nose line",
        why=(
            "Square to the other timber, so that the nose seats on the end of its mortise and "
            "takes the thrust."
        ),
        caution="The other arm of the square than for the shoulder, at the same setting.",
        waste=f"Towards the {foot}: the long edge's point.",
        setting=line_setting(shape, tape, like_the_face=False),
    )
    tip = crossing(shape.nose, shape.tip, shape.plumb)[1]
    if not shape.nose_in:
        where = (_words(shape, shape.edge_face), "tenon end line")
        return slanting_mark(shape.stick, shape.nose, (ZERO, tip), says, where)
    start = crossing(shape.nose, shape.face, shape.plumb)[1]
    line = "shoulder line"
    reading = Reading(
        value=shape.nose_in, hook="long edge", way=f"along the {line}, towards the short edge"
    )
    return parallel_mark(shape.nose, (start, tip), reading, says)


def bears_on_line(shape: EndShape) -> str:
    """What the line it bears on is called: the seat line in a housing, else the shoulder line."""
    return "seat line" if shape.housing else "shoulder line"


def _seat(shape: EndShape, tape: Tape) -> Line:
    foot = shape.stick.pose.words(shape.end)
    reading = Reading(
        value=shape.housing, hook="shoulder line", way=f"square to it, towards the {foot}"
    )
    says = Says(
        title="Seat line, at the housing's floor",
        why="The whole end goes in so far: the brace bears here, not on the face.",
        waste=f"Towards the {foot}, beside the tenon.",
        setting=line_setting(shape, tape, like_the_face=True),
    )
    start = crossing(shape.nose, shape.seat, shape.plumb)[1]
    return parallel_mark(shape.seat, (start, shape.real_deep), reading, says)


def _tip(shape: EndShape, tape: Tape) -> Line:
    foot = shape.stick.pose.words(shape.end)
    reading = Reading(
        value=shape.length, hook=bears_on_line(shape), way=f"square to it, towards the {foot}"
    )
    says = Says(
        title="Tenon end line",
        beside=(Beside(shape.left_at_nose, "of tenon left along it, from the nose"),),
        why="The tenon is as long as this, measured square to the shoulder and not along the edge.",
        waste=f"Towards the {foot}, beyond the line.",
        setting=line_setting(shape, tape, like_the_face=True),
    )
    start = crossing(shape.nose, shape.tip, shape.plumb)[1]
    return parallel_mark(shape.tip, (start, shape.real_deep), reading, says)


def _reduction(shape: EndShape, tape: Tape) -> tuple[Line, ...]:
    lost = reduced(shape)
    beside = bool(shape.beside_nose and shape.over)
    if not lost and not beside:
        return ()
    far = tuple(reference_for(axis).opposite for axis in lost)
    edge = (shape.edge_face, *_flanks(shape)) if beside else ()
    stop = slanting_mark(
        shape.stick,
        shape.outside,
        (ZERO, shape.real_deep),
        Says(
            title="Reduction end line" if lost else "End line beside the nose",
            why="As far back as the end goes in: beyond it the stick keeps its full size.",
            caution=_reduced_where(shape, lost=bool(lost), beside=beside),
            faces=tuple(dict.fromkeys((*edge, *far))),
            setting=line_setting(shape, tape, like_the_face=True),
        ),
    )
    return (stop, *reduced_lines(shape, lost))


def _flanks(shape: EndShape) -> tuple[Face, Face]:
    """The two faces that the brace shows from its side, where its angles are struck."""
    near = reference_for(shape.cheeks)
    return near, near.opposite


def _reduced_where(shape: EndShape, *, lost: bool, beside: bool) -> str:
    """What is cut at the reduction end line: far faces, and the point beside a nose set in."""
    nose = f"from the {_words(shape, shape.edge_face)} to the nose line"
    if not beside:
        return "Only on the far faces: nothing comes off a reference face."
    if not lost:
        return f"Saw here only {nose}: the rest goes on into the other timber."
    return f"It ends what comes off the far faces. Right across it is sawn only {nose}."


def _words(shape: EndShape, face: Face) -> str:
    return shape.stick.pose.words(face)
