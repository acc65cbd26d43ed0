"""The socket of a dovetail lap: its two sides lean, and are set off on both faces across."""

from benchmate.frame.flats import along_at
from benchmate.frame.marking import Says, slanting_mark
from benchmate.frame.settings import slant_setting
from benchmate.joinery.lap.shape import START, Half
from benchmate.joinery.lap.telling import follows, shrinks
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line
from benchmate.model.solids import Plane
from benchmate.model.stick import reference_for


def entry_face(half: Half) -> Face:
    """The face of the timber let into that the other's end comes in at."""
    mate = half.mate
    if mate.end is None:
        raise ValueError(f"{mate.stick.name} crosses, so it comes in at no face")
    return half.stick.pose.face(mate.stick.pose.direction(mate.end).opposite)


def narrow_and_wide(half: Half) -> tuple[Length, Length]:
    """How wide the socket is where the tail comes in, and at the face across from there."""
    entry = entry_face(half)
    widths = {}
    for face in (entry, entry.opposite):
        deep = ZERO if face.is_reference else half.real_wide
        start, finish = (along_at(wall, half.lie.wide, deep) for wall in half.walls)
        widths[face] = abs(finish - start)
    return widths[entry], widths[entry.opposite]


def socket_line(half: Half, wall: Plane, tape: Tape) -> Line:
    """One leaning side, from the reference face across to the far one."""
    words = half.stick.pose.words
    entry = entry_face(half)
    narrow, wide = narrow_and_wide(half)
    deep = (ZERO, half.real_wide)
    start, finish = (along_at(wall, half.lie.wide, each) for each in deep)
    says = Says(
        title=f"Socket {'start' if wall.line == START else 'finish'} line",
        beside=(
            Beside(narrow, f"wide at the {words(entry)}, where the tail comes in"),
            Beside(wide, f"wide at the {words(entry.opposite)}"),
        ),
        why=(
            f"Narrow at the {words(entry)} and wide at the {words(entry.opposite)}, so that the "
            f"tail cannot draw out. {follows(half, 'width', tape)}"
        ),
        caution=f"The {words(reference_for(half.lie.wide))} first: the line leans. {shrinks(tape)}",
        setting=slant_setting(abs(finish - start).nm, half.real_wide.nm, tape),
    )
    return slanting_mark(half.stick, wall, deep, says)
