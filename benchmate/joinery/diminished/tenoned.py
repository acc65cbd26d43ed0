"""The tenon's own side: what comes off its timber, and the lines that bound it."""

from benchmate.frame.cheeks import cheek_lines
from benchmate.frame.marking import Says, slanting_mark, square_mark
from benchmate.frame.practice import unsure
from benchmate.frame.reduction import reduction_cuts, reduction_lines, side_words
from benchmate.frame.settings import slant_setting
from benchmate.joinery.diminished.shape import FAR_EDGE, REFERENCE_EDGE, EndShape
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Beside, Line
from benchmate.model.setting import Setting
from benchmate.model.solids import Cut, Plane, above, below
from benchmate.model.stick import reference_for

BOTH_LENGTHS = (
    "It slopes: strike both its ends, then join them. At the underside it lies further out than at "
    "the top; the other way round the end hangs on its tenon."
)
"""The housing carries the load (trade notes 2.2, NEBarn), and only at its full depth."""


def tenon_cuts(shape: EndShape) -> tuple[Cut, ...]:
    """The wood that comes off beyond the sloping shoulder, one cut to each side that loses any.

    The reductions come first: their waste is the one that a line they share with others is for.
    """
    reduced, slope = shape.reduction, shape.slope
    under = _under_the_top(shape)
    edges = {
        reference_for(shape.edges): below(shape.edges, shape.edge, REFERENCE_EDGE),
        reference_for(shape.edges).opposite: above(shape.edges, shape.far_edge, FAR_EDGE),
    }
    beside = (
        *shape.cheeks.cuts(slope, reduced=shape.cheeks.axis in reduced.to),
        *(Cut((slope, edges[face])) for face in edge_sides(shape)),
    )
    return (*reduction_cuts(reduced), *(Cut((*cut.planes, *under)) for cut in beside))


def _under_the_top(shape: EndShape) -> tuple[Plane, ...]:
    """Where a top that is reduced to the inner timber ends the slope.

    Run on above it the slope would go back from the other timber's face.
    """
    if shape.top_is_reference or shape.plumb not in shape.reduction.to:
        return ()
    return (below(shape.plumb, shape.deep, shape.reduction.line(shape.plumb)),)


def edge_sides(shape: EndShape) -> dict[Face, Length]:
    """How deep the shoulder is cut in from the faces by the narrow edges, where it is cut at all.

    A far face that is reduced to the tenon's own line is flush with it once it is.
    """
    face, reduced = reference_for(shape.edges), shape.reduction
    deep = {face: shape.edge}
    if not (shape.edges in reduced.to and shape.edges in reduced.struck):
        deep[face.opposite] = shape.real_edges - shape.far_edge
    return {side: depth for side, depth in deep.items() if depth}


def shoulder_setting(shape: EndShape, tape: Tape) -> Setting:
    """How to set the square and the saw for the shoulder."""
    return slant_setting(shape.housing.nm, shape.deep.nm, tape)


def tenon_lines(shape: EndShape, lengths: tuple[Beside, ...], tape: Tape) -> tuple[Line, ...]:
    """The shoulder first, then the cheeks and the narrow edges."""
    found = [
        _shoulder(shape, lengths, tape),
        *cheek_lines(shape.cheeks, reduced=shape.cheeks.axis in shape.reduction.to),
    ]
    if shape.edge:
        found.append(_reference_edge(shape))
    if shape.far_edge_struck:
        found.append(_far_edge(shape))
    return (*found, *reduction_lines(shape.reduction))


def _shoulder(shape: EndShape, lengths: tuple[Beside, ...], tape: Tape) -> Line:
    first = unsure(shape.stick) if shape.end is Face.FAR_END else ""
    says = Says(
        title="Sloping shoulder line",
        beside=(
            Beside(shape.length, "tenon beyond it, from the underside"),
            *lengths,
        ),
        why=(
            "At the top it comes to the other timber's face, at the underside to the ledge of its "
            "housing, where the end bears. Across top and underside it is square."
        ),
        caution=" ".join(filter(None, (first, BOTH_LENGTHS))),
        setting=shoulder_setting(shape, tape),
    )
    where = (_found_on(shape, Direction.UP), _found_on(shape, Direction.DOWN))
    return slanting_mark(shape.stick, shape.slope, (shape.top, shape.bottom), says, where)


def _found_on(shape: EndShape, looks: Direction) -> str:
    """What an end of the shoulder line is found on: a face, or the line that is reduced to."""
    face = shape.stick.pose.face(looks)
    words = shape.stick.pose.words(face)
    reduced = shape.reduction
    if face.is_reference or shape.plumb not in reduced.to:
        return words
    name = {"far-cheek": "far cheek line", FAR_EDGE: "far edge line"}
    return name.get(reduced.line(shape.plumb), f"reduction line, {side_words(words)}")


def _reference_edge(shape: EndShape) -> Line:
    face = shape.stick.pose.words(reference_for(shape.edges))
    says = Says(
        title=f"Relief line, {side_words(face)}",
        beside=(Beside(shape.width, "of tenon left"),),
        why="The narrow edge is cut back so that it is hidden or clears.",
    )
    return square_mark(below(shape.edges, shape.edge, REFERENCE_EDGE), says)


def _far_edge(shape: EndShape) -> Line:
    far = shape.stick.pose.words(reference_for(shape.edges).opposite)
    inner = shape.stick.inner is not None and shape.far_edge == shape.framed_edges
    runs_on = " Run it on past the shoulder, as far as the reduction end line."
    on = runs_on if inner and shape.edges in shape.reduction.to else ""
    says = Says(
        title=f"{'Far edge' if inner else 'Relief'} line, {side_words(far)}",
        beside=(
            Beside(shape.real_edges - shape.far_edge, f"to come off the {far}"),
            Beside(shape.width, "of tenon left"),
        ),
        why=(
            f"Square rule: the tenon is as wide as the inner timber, whatever the stick.{on}"
            if inner
            else "The far narrow edge is cut back; its line still comes from the reference face."
        ),
        caution=f"Never measure this from the {far}.",
    )
    return square_mark(above(shape.edges, shape.far_edge, FAR_EDGE), says)
