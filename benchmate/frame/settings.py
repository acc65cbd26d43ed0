"""How to set a framing square and a saw for a line that slants.

The square is laid with both figures on the timber's long edge, which is then the long side of a
right triangle. Struck along the tongue it gives the line that crosses the edge more steeply the
more blade there is; along the blade, the line square to that.

Figures: 12 on the blade stands for a foot of run and the rise lies on the tongue (US Navy Builder
manual, trade notes NAV-65), so struck along the tongue the line is plumb and along the blade level.
"""

from dataclasses import replace

from benchmate.frame.flats import nearest
from benchmate.frame.reach import slopes
from benchmate.measure.angle import angle_text, tenths
from benchmate.measure.length import Length
from benchmate.measure.printing import Style, Tape
from benchmate.model.solids import Axis, Plane

_STEEPEST = 4
"""A rise more than this many thirds of the run does not fit the tongue: 16 to the blade's 12."""


def rake_setting(run: int, rise: int, tape: Tape, *, plumb: bool) -> str:
    """How to set the square and the saw for a plumb or a level line on a timber that rakes."""
    arm = "tongue" if plumb else "blade"
    off = (rise, run) if plumb else (run, rise)
    return (
        f"{_figures(run, rise, tape)}, strike along the {arm}; "
        f"saw {angle_text(tenths(*off))} off square"
    )


def slant_setting(along: int, across: int, tape: Tape) -> str:
    """How to set the square and the saw for a line that goes so far along for so far across."""
    return (
        f"{_figures(across, along, tape)}, strike along the tongue; "
        f"saw {angle_text(tenths(along, across))} off square"
    )


def plane_setting(plane: Plane, axis: Axis, tape: Tape) -> str:
    """How to set the square and the saw for a plane that slants across on an axis, if it does."""
    x, across = slopes(plane, axis)
    return slant_setting(abs(across), abs(x), tape) if x and across else ""


def taper_setting(along: int, fall: int, tape: Tape) -> str:
    """How to set the square and a bevel for a line that runs along and falls so far."""
    return (
        f"{_figures(along, fall, tape)}, strike along the blade; "
        f"{angle_text(tenths(fall, along))} to the long edge"
    )


def _figures(run: int, rise: int, tape: Tape) -> str:
    """Both figures in words: in inches even on a tape in feet, as the square has no feet."""
    square = tape if tape.graduation.metric else replace(tape, style=Style.INCHES)
    blade, tongue = on_the_square(run, rise, tape)
    return f"{square.text(blade)} on the blade and {square.text(tongue)} on the tongue"


def on_the_square(run: int, rise: int, tape: Tape) -> tuple[Length, Length]:
    """What to set on blade and tongue: 12 inches, or 300 mm, to the run if the rise then fits."""
    foot = Length.mm(300) if tape.graduation.metric else Length.inches(12)
    if 3 * rise <= _STEEPEST * run:
        return foot, Length(nearest(foot.nm * rise, run))
    return Length(nearest(foot.nm * run, rise)), foot
