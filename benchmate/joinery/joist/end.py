"""The joist's own side: what comes off its end, and measuring it as it came out."""

from benchmate.frame.end_tasks import measure_finished
from benchmate.frame.practice import measure_task
from benchmate.frame.reduction import reduction_knife, reduction_tasks
from benchmate.joinery.joist.shape import EndShape
from benchmate.joinery.joist.slope import slope_knife, slope_tasks
from benchmate.model.directions import Direction
from benchmate.model.feature import Reading, Size, Task
from benchmate.model.stick import across, reference_for


def end_tasks(shape: EndShape) -> tuple[Task, ...]:
    """Measuring the section, knifing and cutting the end down, measuring it as cut."""
    return (
        measure_task(shape.stick, *shape.places),
        *slope_knife(shape),
        *reduction_knife(shape.reduction),
        *slope_tasks(shape),
        *reduction_tasks(shape.reduction),
        _as_cut(shape),
    )


def end_sizes(shape: EndShape) -> tuple[Size, ...]:
    """What can be typed of the finished end."""
    return (
        Size("thickness", shape.deep, "depth of the end, from the top"),
        Size("width", shape.wide, "width of the end"),
    )


def _as_cut(shape: EndShape) -> Task:
    words = shape.stick.pose.words
    top = shape.stick.pose.face(Direction.UP)
    side = reference_for(across(shape.plumb))
    return measure_finished(
        "the joist's end",
        (shape.end,),
        (
            Reading(value=shape.real("thickness"), hook=words(top), way="down to the bearing"),
            Reading(
                value=shape.real("width"),
                hook=words(side),
                way=f"across to the {words(side.opposite)}",
            ),
        ),
        why="The pocket is cut to the end that was really made, so that all tops come level.",
    )
