"""How to set a framing square and a saw for a line that slants.

The square is laid with both figures on the timber's long edge, which is then the long side of a
right triangle. Struck along the tongue it gives the line that crosses the edge more steeply the
more blade there is; along the blade, the line square to that.

Figures: 12 on the blade stands for a foot of run and the rise lies on the tongue (US Navy Builder
manual, trade notes NAV-65), so struck along the tongue the line is plumb and along the blade level.
"""

from fractions import Fraction

from benchmate.frame.flats import nearest
from benchmate.frame.reach import slopes
from benchmate.measure.angle import tenths
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.setting import Arm, Setting, Square
from benchmate.model.solids import Axis, Plane

_STEEPEST = Fraction(7, 6)
"""Rise to run beyond which the rise is set on the tongue as 12: past 14 there is no room for a
stop on a common tongue, 16 long."""


def rake_setting(run: int, rise: int, tape: Tape, *, plumb: bool) -> Setting:
    """How to set the square and the saw for a plumb or a level line on a timber that rakes."""
    arm = Arm.TONGUE if plumb else Arm.BLADE
    off = tenths(rise, run) if plumb else tenths(run, rise)
    return Setting(square=square_set(run, rise, tape, arm), off_square=off)


def slant_setting(along: int, across: int, tape: Tape) -> Setting:
    """How to set the square and the saw for a line that goes so far along for so far across."""
    square = square_set(across, along, tape, Arm.TONGUE)
    return Setting(square=square, off_square=tenths(along, across))


def plane_setting(plane: Plane, axis: Axis, tape: Tape) -> Setting | None:
    """How to set the square and the saw for a plane that slants across on an axis, if it does."""
    x, across = slopes(plane, axis)
    return slant_setting(abs(across), abs(x), tape) if x and across else None


def taper_setting(along: int, fall: int, tape: Tape) -> Setting:
    """How to set the square and a bevel for a line that runs along and falls so far."""
    square = square_set(along, fall, tape, Arm.BLADE)
    return Setting(square=square, to_edge=tenths(fall, along))


def square_set(run: int, rise: int, tape: Tape, arm: Arm | None) -> Square:
    """The square set for a run and a rise, to strike along an arm, or to be stepped with."""
    blade, tongue = on_the_square(run, rise, tape)
    return Square(blade=blade, tongue=tongue, arm=arm)


def on_the_square(run: int, rise: int, tape: Tape) -> tuple[Length, Length]:
    """What to set on blade and tongue: 12 inches, or 300 mm, to the run if the rise then fits."""
    foot = Length.mm(300) if tape.graduation.metric else Length.inches(12)
    if rise <= _STEEPEST * run:
        return foot, Length(nearest(foot.nm * rise, run))
    return Length(nearest(foot.nm * run, rise)), foot
