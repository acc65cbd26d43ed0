"""A slanting line in words and figures: its start leads, its other end and its settings follow."""

from benchmate.layout.step import LINE
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, reference_for
from benchmate.model.words import lower_first


def start_words(line: Line) -> str:
    """What the start of a slanting line is found on, to end a reading: `, on the South arris`."""
    return f", on the {line.slant.where[0]}" if line.slant else ""


def other_end(stick: Stick, line: Line) -> tuple[Beside, ...]:
    """Where the finish of a slanting line lies: along from its start, or in from the face."""
    if line.slant is None or line.axis is None:
        return ()
    start, finish = line.slant.start, line.slant.finish
    on = line.slant.where[1]
    if line.axis is not Axis.ALONG:
        face = stick.pose.words(reference_for(line.slant.axis))
        return (Beside(finish.deep, f"in from the {face} on the {on}"),)
    further = finish.along - start.along
    end = stick.pose.words(Face.FAR_END if further >= ZERO else Face.REFERENCE_END)
    return (Beside(abs(further), f"further towards the {end} on the {on}"),)


def slant_rests(line: Line) -> tuple[Reading, ...]:
    """Where the finish of a slanting line lies, for a tick to remember."""
    if line.slant is None or line.axis is None:
        return ()
    along = line.axis is Axis.ALONG
    return (
        Reading(
            value=line.slant.finish.along if along else line.slant.finish.deep,
            hook=f"other end of the {lower_first(line.title)}",
            way=f"on the {line.slant.where[1]}",
            key=f"{line.id} other end{LINE}",
        ),
    )


def parallel_rests(line: Line) -> tuple[Reading, ...]:
    """How far a line lies from the one it is parallel to, for a tick to remember."""
    if line.slant is None or line.axis is not None:
        return ()
    return tuple(
        Reading(
            value=reading.value,
            hook=lower_first(line.title),
            way=f"from the {reading.hook}",
            key=f"{line.id}{LINE}",
        )
        for reading in line.readings
    )
