"""What is said of every plumb and level line of a rafter: settings, the pitch, and cautions."""

from dataclasses import replace

from benchmate.frame.flats import nearest
from benchmate.frame.reach import slopes
from benchmate.frame.settings import on_the_square, rake_setting, slant_setting
from benchmate.joinery.rafter.raking import Rafter
from benchmate.measure.angle import tenths
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import Stick

ENGINEER = (
    "A notch weakens the rafter: how deep it may be, and what must be left above it, are for local "
    "code and the engineer."
)


def datum(stick: Stick, end: Face) -> str:
    """Whether all along a stick is measured from the line at an end, in a sentence."""
    if end is Face.FAR_END or not stick.near:
        return ""
    return (
        f"All along the rafter is measured from here: it is the {stick.pose.words(end)} shoulder "
        "line."
    )


def setting(rafter: Rafter, tape: Tape, *, plumb: bool) -> Setting:
    """How to set square and saw for a plumb or level line, with both of its angles told apart.

    A plumb line stands at 90 degrees less the pitch to the edge, and is sawn at the pitch off
    square; a level line the other way round (trade notes 7.2).
    """
    run, rise = rafter.line.run, rafter.line.rise
    to_edge = tenths(run, rise) if plumb else tenths(rise, run)
    return replace(rake_setting(run, rise, tape, plumb=plumb), to_edge=to_edge)


def slanting(plane: Plane, axis: Axis, tape: Tape) -> Setting | None:
    """How to set square and saw for a line at any other angle; None for a square one."""
    across, along = slopes(plane, axis)
    if not along:
        return None
    to_edge = tenths(abs(across), abs(along))
    return replace(slant_setting(abs(along), abs(across), tape), to_edge=to_edge)


def pitch(rafter: Rafter, tape: Tape) -> str:
    """The pitch in words: `7" in 12"`, or so many millimetres in 300."""
    square, foot = tape.without_feet, foot_of(tape)
    rise = Length(nearest(foot.nm * rafter.line.rise, rafter.line.run))
    return f"{square.text(rise)} in {square.text(foot)}"


def foot_of(tape: Tape) -> Length:
    """The run that a step-off figure is given for: a foot, or 300 mm."""
    return on_the_square(1, 1, tape)[0]
