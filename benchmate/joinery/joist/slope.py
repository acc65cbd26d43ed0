"""A joist's underside that slopes up to its end's depth, in place of a notch square across it.

From the pocket back the joist gains its full depth over a length, so that it is less apt to split
along the grain from the inner corner of the notch (common practice, no source).
"""

from benchmate.frame.flats import leaning
from benchmate.frame.marking import Says, slanting_mark
from benchmate.frame.practice import CHISEL, SAW
from benchmate.frame.reduction import Reduction, side_line, unmeasured
from benchmate.joinery.joist.shape import EndShape
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Axis, Cut, Plane, above
from benchmate.model.stick import reference_for

SLOPE = "slope"
"""The line of the sloping underside."""


def slope_cuts(shape: EndShape) -> tuple[Cut, ...]:
    """The wedge off its underside, and all below its depth from there to the end: one piece."""
    if not shape.sloped:
        return ()
    return (Cut((_plane(shape), above(shape.plumb, shape.deep, _flat(shape).line(shape.plumb)))),)


def slope_lines(shape: EndShape) -> tuple[Line, ...]:
    """The depth line along the end, and the slope from there back to the underside."""
    if not shape.sloped:
        return ()
    under = shape.stick.pose.words(reference_for(shape.plumb).opposite)
    slope = slanting_mark(
        shape.stick,
        _plane(shape),
        (shape.real_deep, shape.deep),
        Says(
            title=f"Slope line, {under}",
            beside=(Beside(shape.diminished, "long, back from the other timber's face"),),
            why=(
                "From here the underside slopes up to the depth line, which it meets at the other "
                "timber's face: a square notch there splits more easily."
            ),
            caution="Join the two points with a straightedge on both sides before cutting.",
            waste=f"Towards the {under}.",
        ),
        (under, "reduction line"),
    )
    return (side_line(_flat(shape), shape.plumb), slope)


def slope_knife(shape: EndShape) -> tuple[Task, ...]:
    """Knifing where the slope starts, and hatching what comes off."""
    if not shape.sloped:
        return ()
    under = reference_for(shape.plumb).opposite
    return (
        Task(
            id="knife-slope",
            stage=Stage.KNIFE,
            title="Knife where the slope starts, hatch the waste",
            draws=SLOPE,
            faces=(under, shape.end),
            waste=f"Towards the {shape.stick.pose.words(under)}, below both lines.",
            why="It shows from below, and hatching shows which side goes.",
        ),
    )


def slope_tasks(shape: EndShape) -> tuple[Task, ...]:
    """Ripping the end to its depth, then the slope: one figure to one task."""
    if not shape.sloped:
        return ()
    words, near = shape.stick.pose.words, reference_for(shape.plumb)
    under, end = words(near.opposite), words(shape.end)
    caution = f"{unmeasured(shape.stick, shape.plumb, shape.places)}{SAW}"
    off = Reading(
        value=shape.real_deep - shape.deep,
        hook=under,
        way="straight in to the depth line, from the end to where the slope meets it",
    )
    back = Reading(
        value=shape.recess + shape.diminished, hook=end, way=f"back along the {under}, to nothing"
    )
    return (
        Task(
            id=f"reduce-{shape.plumb.name.lower()}",
            stage=Stage.CUT,
            title=f"Rip the {under} to its line",
            draws=_flat(shape).line(shape.plumb),
            faces=(near.opposite, shape.end),
            readings=(off,),
            waste=f"Towards the {under}, below the line.",
            why="Leave the line: the end bears on this face and is pared to it.",
            caution=caution,
        ),
        Task(
            id="cut-slope",
            stage=Stage.CUT,
            title="Cut the slope, pare it smooth",
            draws=SLOPE,
            faces=(near.opposite,),
            readings=(back,),
            waste=f"Towards the {under}, below the slope line.",
            why="Cut with the grain, from the underside down towards the end.",
            caution=f"{caution} {CHISEL}",
        ),
    )


def _plane(shape: EndShape) -> Plane:
    stick, end = shape.stick, shape.end
    start = stick.back_from(end, shape.recess + shape.diminished)
    meets = stick.back_from(end, shape.recess)
    return leaning(
        (Axis.ALONG, shape.plumb),
        (start, shape.real_deep),
        (meets, shape.deep),
        (meets, shape.real_deep),
        SLOPE,
    )


def _flat(shape: EndShape) -> Reduction:
    """The part of the end that is brought down square to its depth."""
    return Reduction(
        stick=shape.stick,
        end=shape.end,
        length=shape.recess,
        to={shape.plumb: shape.deep},
        struck={},
        places=shape.places,
    )
