"""Where wood comes off round a tenon, and where the tenon runs out flush to a face.

A shoulder is struck, knifed and sawn across a whole face where wood comes off all of it. On a face
the tenon runs out to, it is struck only beside the tenon: a cut across would sever the tenon's
root. Where nothing comes off at all there is no shoulder. A far face that is reduced to the tenon's
own line is flush once it is: the reduction takes all of its wood, back beyond the shoulder.
"""

from benchmate.frame.end_tasks import knife_only
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.solids import Axis
from benchmate.model.stick import axis_from, reference_for


def depths(shape: TenonShape) -> dict[Face, Length]:
    """How deep each long face is cut at the shoulder: nothing where the tenon ends up flush."""
    cheek, edge, reduced = reference_for(shape.cheeks), reference_for(shape.edges), shape.reduction
    found = {
        cheek: shape.near,
        cheek.opposite: shape.real_cheeks - shape.far,
        edge: shape.edge,
        edge.opposite: shape.real_edges - shape.far_edge,
    }
    found |= {reference_for(axis).opposite: ZERO for axis in reduced.struck if axis in reduced.to}
    return {face: found[face] for face in LONG_FACES}


def loses_wood(shape: TenonShape, axis: Axis) -> bool:
    """Whether wood comes off either of the two faces an axis runs between."""
    return any(depth for face, depth in depths(shape).items() if axis_from(face) is axis)


def shouldered(shape: TenonShape) -> tuple[Face, ...]:
    """The long faces that have a shoulder, across all of them or beside the tenon."""
    found = depths(shape)
    return tuple(face for face in LONG_FACES if found[face] or _beside_tenon(found, face))


def only_outside(shape: TenonShape) -> str:
    """The caution at the knife for faces the tenon is flush with; nothing where there are none."""
    return " ".join(knife_only(face, f"outside the {lines}") for face, lines in _flush(shape))


def lightly(shape: TenonShape) -> str:
    """The caution when the shoulder is struck, before there are lines to stay outside of."""
    return " ".join(
        f"Pencil the {face} lightly: it is knifed only outside the {lines}, as the tenon runs out "
        "to it."
        for face, lines in _flush(shape)
    )


def barefaced(shape: TenonShape) -> str:
    """The caution at a tenon with one shoulder along its cheeks; nothing at any other.

    Barefaced timbers come in left and right (trade notes 2.1: TFG-bare, TFG-gloss).
    """
    words = shape.stick.pose.words
    cheek, found = reference_for(shape.cheeks), depths(shape)
    shouldered_at = [face for face in (cheek, cheek.opposite) if found[face]]
    if len(shouldered_at) != 1:
        return ""
    (face,) = shouldered_at
    return (
        f"Barefaced: its one cheek shoulder is on the {words(face)}. Left and right differ: check "
        "the faces."
    )


def _flush(shape: TenonShape) -> tuple[tuple[str, str], ...]:
    """Faces the tenon is flush with, with a shoulder beside it, and the lines to keep to."""
    found = depths(shape)
    return tuple(
        (shape.stick.pose.words(face), _lines(shape, found, face))
        for face in LONG_FACES
        if not found[face] and _beside_tenon(found, face)
    )


def _beside_tenon(found: dict[Face, Length], face: Face) -> bool:
    """Whether wood comes off a flush face on either side of the tenon."""
    across = [other for other in LONG_FACES if axis_from(other) is not axis_from(face)]
    return any(found[other] for other in across)


def _lines(shape: TenonShape, found: dict[Face, Length], face: Face) -> str:
    """The line or lines that bound the tenon on a face it is flush with."""
    name = "relief" if axis_from(face) is shape.cheeks else "cheek"
    beside = [other for other in LONG_FACES if axis_from(other) is not axis_from(face)]
    return f"{name} lines" if all(found[other] for other in beside) else f"{name} line"
