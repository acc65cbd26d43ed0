"""The tenon's own side: what comes off its timber, and the lines that bound it."""

from benchmate.frame.cheeks import FAR, NEAR, RUNS_ON, cheek_lines
from benchmate.frame.practice import NOT_OVERALL, unsure
from benchmate.frame.reduction import reduction_cuts, reduction_lines, side_words
from benchmate.joinery.tenon.flush import barefaced, depths, lightly
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.joinery.tenon.through import end_beside, through_words
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line
from benchmate.model.solids import Axis, Cut, above, below
from benchmate.model.stick import reference_for


def cuts(shape: TenonShape, allowance: Length) -> tuple[Cut, ...]:
    """The wood that comes off round the tenon, one cut to each side that loses any."""
    beyond = below if shape.end is Face.REFERENCE_END else above
    shoulder = beyond(Axis.ALONG, shape.shoulder, "shoulder")
    cheek, edge = reference_for(shape.cheeks), reference_for(shape.edges)
    sides = {
        cheek: below(shape.cheeks, shape.near, NEAR),
        cheek.opposite: above(shape.cheeks, shape.far, FAR),
        edge: below(shape.edges, shape.edge, "reference-edge"),
        edge.opposite: above(shape.edges, shape.far_edge, "far-edge"),
    }
    losing = depths(shape)
    around = tuple(Cut((shoulder, side)) for face, side in sides.items() if losing[face])
    around = (*around, *reduction_cuts(shape.reduction))
    if not allowance:
        return around
    end = beyond(Axis.ALONG, shape.along(shape.length), "tenon-end")
    return (*around, Cut((end,)))


def lines(shape: TenonShape, allowance: Length) -> tuple[Line, ...]:
    """The lines to strike, shoulder first."""
    reduced = shape.cheeks in shape.reduction.to
    found = [_shoulder(shape), *cheek_lines(shape.between, reduced=reduced, barefaced="")]
    if shape.edge:
        found.append(_reference_edge(shape))
    if shape.far_edge_struck:
        found.append(_far_edge(shape))
    found += reduction_lines(shape.reduction)
    if allowance:
        found.append(_tenon_end(shape, allowance))
    return tuple(found)


def _shoulder(shape: TenonShape) -> Line:
    reference = shape.end is Face.REFERENCE_END
    return Line(
        id="shoulder",
        title="Shoulder line",
        axis=Axis.ALONG,
        at=shape.shoulder,
        beside=(Beside(shape.length, "tenon beyond it"), *end_beside(shape.passage, shape.length)),
        why=(
            "The timber bears here. Square it round from the reference arris, then measure "
            "everything from this line."
            if reference
            else "The timber bears here: shoulder to shoulder is the length that counts."
        )
        + through_words(shape),
        caution=" ".join(filter(None, _shoulder_cautions(shape))),
    )


def _shoulder_cautions(shape: TenonShape) -> tuple[str, ...]:
    """The most dangerous first; a reference shoulder is struck from its own end in any case."""
    if shape.end is Face.REFERENCE_END:
        return (unsure(shape.stick, beyond=shape.end), barefaced(shape), lightly(shape))
    return (unsure(shape.stick), NOT_OVERALL, barefaced(shape), lightly(shape))


def _reference_edge(shape: TenonShape) -> Line:
    face = _words(shape, reference_for(shape.edges))
    return Line(
        id="reference-edge",
        title=f"Relief line, {side_words(face)}",
        axis=shape.edges,
        at=shape.edge,
        beside=(Beside(shape.width, "of tenon left"),),
        why="The narrow edge is cut back so that it is hidden or clears.",
    )


def _far_edge(shape: TenonShape) -> Line:
    far = _words(shape, reference_for(shape.edges).opposite)
    inner = shape.stick.inner is not None and shape.far_edge == shape.framed_edges
    return Line(
        id="far-edge",
        title=f"{'Far edge' if inner else 'Relief'} line, {side_words(far)}",
        axis=shape.edges,
        at=shape.far_edge,
        beside=(
            Beside(shape.real_edges - shape.far_edge, f"to come off the {far}"),
            Beside(shape.width, "of tenon left"),
        ),
        why=(
            "Square rule: the tenon is as wide as the inner timber, whatever the stick."
            f"{RUNS_ON if shape.edges in shape.reduction.to else ''}"
            if inner
            else "The far narrow edge is cut back; its line still comes from the reference face."
        ),
        caution=f"Never measure this from the {far}.",
    )


def _tenon_end(shape: TenonShape, allowance: Length) -> Line:
    return Line(
        id="tenon-end",
        title="Tenon end line",
        axis=Axis.ALONG,
        at=shape.along(shape.length),
        beside=(Beside(allowance, "left on beyond it"),),
        why="The tenon's own end. Leave the allowance on until the joint has been fitted.",
        caution="Do not saw this line yet.",
    )


def _words(shape: TenonShape, face: Face) -> str:
    return shape.stick.pose.words(face)
