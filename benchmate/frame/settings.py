"""How to set a framing square and a saw for a line that slants.

The square is laid with both figures on the timber's long edge, which is then the long side of a
right triangle. Struck along the tongue it gives the line that crosses the edge more steeply the
more blade there is; along the blade, the line square to that.

Figures: 12 on the blade stands for a foot of run and the rise lies on the tongue (US Navy Builder
manual, trade notes NAV-65), so struck along the tongue the line is plumb and along the blade level.
"""

from dataclasses import replace
from fractions import Fraction

from benchmate.frame.flats import nearest
from benchmate.frame.reach import slopes
from benchmate.measure.angle import angle_text, tenths
from benchmate.measure.length import Length
from benchmate.measure.printing import Style, Tape
from benchmate.model.solids import Axis, Plane

_STEEPEST = Fraction(7, 6)
"""Rise to run beyond which the rise is set on the tongue as 12: past 14 there is no room for a
stop on a common tongue, 16 long."""

_STRIKE = ", strike along the "


def rake_setting(run: int, rise: int, tape: Tape, *, plumb: bool) -> str:
    """How to set the square and the saw for a plumb or a level line on a timber that rakes."""
    arm = "tongue" if plumb else "blade"
    off = (rise, run) if plumb else (run, rise)
    return f"{_figures(run, rise, tape)}{_STRIKE}{arm}; saw {angle_text(tenths(*off))} off square"


def slant_setting(along: int, across: int, tape: Tape) -> str:
    """How to set the square and the saw for a line that goes so far along for so far across."""
    return (
        f"{_figures(across, along, tape)}{_STRIKE}tongue; "
        f"saw {angle_text(tenths(along, across))} off square"
    )


def plane_setting(plane: Plane, axis: Axis, tape: Tape) -> str:
    """How to set the square and the saw for a plane that slants across on an axis, if it does."""
    x, across = slopes(plane, axis)
    return slant_setting(abs(across), abs(x), tape) if x and across else ""


def taper_setting(along: int, fall: int, tape: Tape) -> str:
    """How to set the square and a bevel for a line that runs along and falls so far."""
    return (
        f"{_figures(along, fall, tape)}{_STRIKE}blade; "
        f"{angle_text(tenths(fall, along))} to the long edge"
    )


def blade_lies(setting: str, ahead: str, behind: str, edge: str) -> str:
    """The setting with how the square lies, so that it is not turned over.

    Both figures lie on the edge of the face `edge`. `ahead` is the end that the line leans to as it
    leaves that edge, `behind` the other. Struck along the tongue a line leans towards the blade,
    struck along the blade away from it.
    """
    figures, strike, rest = setting.partition(_STRIKE)
    if not strike:
        return setting
    arm, _, saw = rest.partition("; ")
    end = ahead if arm == "tongue" else behind
    return (
        f"strike along the {arm}, the blade towards the {end}, {figures}, both on the edge of the "
        f"{edge}; {saw}"
    )


def leans_in(setting: str) -> str:
    """The setting of a line that is struck square across and leans only going in."""
    bevel = bevel_words(setting)
    return f"strike it square across; going in it leans: {bevel}" if bevel != setting else setting


def bevel_words(setting: str) -> str:
    """The setting for a sliding bevel in place of the saw: where a saw does not get in."""
    figures, strike, rest = setting.partition(_STRIKE)
    if not strike:
        return setting
    arm, _, off = rest.partition("; ")
    return f"a bevel set along the {arm}, {figures}, {off.removeprefix('saw ')}"


def _figures(run: int, rise: int, tape: Tape) -> str:
    """Both figures in words: in inches even on a tape in feet, as the square has no feet."""
    square = tape if tape.graduation.metric else replace(tape, style=Style.INCHES)
    blade, tongue = on_the_square(run, rise, tape)
    return f"{square.text(blade)} on the blade and {square.text(tongue)} on the tongue"


def on_the_square(run: int, rise: int, tape: Tape) -> tuple[Length, Length]:
    """What to set on blade and tongue: 12 inches, or 300 mm, to the run if the rise then fits."""
    foot = Length.mm(300) if tape.graduation.metric else Length.inches(12)
    if rise <= _STEEPEST * run:
        return foot, Length(nearest(foot.nm * rise, run))
    return Length(nearest(foot.nm * run, rise)), foot
