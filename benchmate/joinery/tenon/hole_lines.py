"""The marks of a hole in a tenon: struck on its cheek, once that is cut and measured."""

from benchmate.frame.peg_steps import ENGINEER
from benchmate.frame.reduction import side_words
from benchmate.joinery.tenon.cutting import far_cheek, near_cheek, near_edge
from benchmate.joinery.tenon.hole import (
    DEPTH,
    END_SIDE,
    FAR_SIDE,
    REFERENCE_SIDE,
    SHOULDER_SIDE,
    Hole,
)
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage
from benchmate.model.solids import Axis
from benchmate.model.stick import axis_from, reference_for

ON_CHEEK = "on the tenon's cheek"

LEFT = f"What is left beside it has to hold the tenon together: {ENGINEER}."


def hole_lines(shape: Hole, tape: Tape) -> tuple[Line, ...]:
    """The lines that are struck: none on a side where it is open."""
    beyond, (near, far) = shape.beyond, shape.across
    left, edges = shape.to_edges, reference_for(shape.tenon.edges)
    found = (
        _along(shape, SHOULDER_SIDE, beyond[0], "of tenon left to the shoulder", tape),
        _along(shape, END_SIDE, shape.to_end, "of tenon left to its end", tape),
        _across(shape, REFERENCE_SIDE, near, (edges, left[0]), tape),
        _across(shape, FAR_SIDE, far, (edges.opposite, left[1]), tape),
        _depth(shape, tape),
    )
    return tuple(line for line in found if line.id in shape.planes)


def end_words(shape: Hole) -> str:
    """The end of the timber that the tenon is on."""
    return shape.tenon.stick.pose.words(shape.tenon.end)


def opening(shape: Hole) -> str:
    """The cheek it is cut in from, in words."""
    return near_cheek(shape.tenon) if shape.entry.is_reference else far_cheek(shape.tenon)


def what(shape: Hole) -> str:
    """A hole with wood all round it, or a notch."""
    return "Notch" if shape.notch else "Hole"


def _open_at(shape: Hole) -> str:
    """Where a notch runs out of the tenon, in a sentence; nothing for a hole."""
    near = reference_for(shape.tenon.edges)
    words = shape.tenon.stick.pose.words
    sides = (
        ("its end", shape.to_end),
        (f"its {side_words(words(near))}", shape.to_edges[0]),
        (f"its {side_words(words(near.opposite))}", shape.to_edges[1]),
    )
    found = " and ".join(side for side, wood in sides if wood <= ZERO)
    return f"It runs out of the tenon at {found}. " if found else ""


def _along(shape: Hole, line: str, left: Length, words: str, tape: Tape) -> Line:
    """A line across the tenon, measured from its shoulder."""
    at = shape.beyond[0 if line == SHOULDER_SIDE else 1]
    end = end_words(shape)
    return Line(
        id=line,
        title=f"{what(shape)} line, {line.replace('-', ' ')}",
        axis=Axis.ALONG,
        at=shape.tenon.along(at),
        faces=shape.mouths,
        readings=(
            Reading(
                value=at,
                hook=f"{end} shoulder line",
                way=f"towards the {end}, {ON_CHEEK}",
            ),
        ),
        beside=(Beside(shape.taken[0], "of the tenon's length taken"), Beside(left, words)),
        why=f"{_open_at(shape)}{_follows(shape, 'thickness', tape)}",
        stage=Stage.FIT,
    )


def _across(shape: Hole, line: str, at: Length, side: tuple[Face, Length], tape: Tape) -> Line:
    """A line along the tenon, measured from its narrow edge on the reference side."""
    face, left = side
    words = side_words(shape.tenon.stick.pose.words(face))
    return Line(
        id=line,
        title=f"{what(shape)} line, {words}",
        axis=shape.tenon.edges,
        at=at,
        faces=shape.mouths,
        readings=(
            Reading(
                value=at - shape.tenon.edge,
                hook=near_edge(shape.tenon),
                way=f"across, {ON_CHEEK}",
            ),
        ),
        beside=(
            Beside(left, f"of tenon left beside it, {words}"),
            Beside(shape.taken[1], "of the tenon's width taken"),
        ),
        why=f"{LEFT} {_follows(shape, 'width', tape)}",
        stage=Stage.FIT,
    )


def _depth(shape: Hole, tape: Tape) -> Line:
    """How deep it goes where it stops inside the tenon: as deep as the mortise it is part of."""
    words = shape.tenon.stick.pose.words
    return Line(
        id=DEPTH,
        title=f"{what(shape)} depth",
        axis=axis_from(shape.entry),
        at=shape.bottom,
        faces=(shape.entry,),
        readings=(
            Reading(
                value=shape.depth,
                hook=opening(shape),
                way=f"straight in towards the {words(shape.entry.opposite)}",
            ),
        ),
        beside=(
            Beside(shape.stub.clearance, f"deeper than {shape.stub.tenon.stick.name} goes in"),
            Beside(shape.to_cheek, "of tenon left under it"),
        ),
        waste="Inside the lines, down to this depth.",
        why=(
            f"As deep as the mortise in {shape.stub.stick.name}, so that the tenon never bottoms "
            f"out. {_follows(shape, 'length', tape)}"
        ),
        caution="Measure after the chips are out.",
        stage=Stage.FIT,
    )


def _follows(shape: Hole, size: str, tape: Tape) -> str:
    """Which tenon's size it takes over, in a sentence."""
    tenon = shape.stub.tenon
    end = tenon.stick.pose.words(tenon.end)
    made = tenon.as_cut.get(size)
    if made is None:
        return f"It lets {tenon.stick.name}'s {end} tenon through, as drawn: not measured as cut."
    return f"It lets {tenon.stick.name}'s {end} tenon through, as cut: {tape.text(made)} {size}."
