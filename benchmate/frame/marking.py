"""Lines to strike, made from the planes that bound a cut."""

from dataclasses import dataclass, replace

from benchmate.frame.flats import along_at, deep_at
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Slant, Spot
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import Stick, reference_for

AXES = (Axis.ALONG, Axis.FIRST, Axis.SECOND)


@dataclass(frozen=True, slots=True, kw_only=True)
class Says:
    """What is said of a line: what it is called and why, what to beware of, figures beside it.

    `waste` and `faces` are stated only where the cuts cannot tell, `setting` only for a slant.
    """

    title: str
    why: str
    caution: str = ""
    beside: tuple[Beside, ...] = ()
    waste: str = ""
    faces: tuple[Face, ...] = ()
    setting: Setting | None = None


def square_mark(plane: Plane, says: Says) -> Line:
    """A line square to the timber or along it. Raises ValueError for a plane that slants."""
    axis, normal = axis_of(plane)
    return _line(plane, says, axis, Length(plane.offset * normal))


def slanting_mark(
    stick: Stick,
    plane: Plane,
    deep: tuple[Length, Length],
    says: Says,
    where: tuple[str, str] | None = None,
) -> Line:
    """A line that slants across two long faces, set off along the timber at two depths.

    The depths are in from the reference face that the line starts on; `where` says what its ends
    are found on where those are not the two faces. Raises ValueError for a plane that does not
    slant along the timber.
    """
    axis = slant_axis(plane)
    start, finish = (Spot(along_at(plane, axis, each), each) for each in deep)
    near, words = reference_for(axis), stick.pose.words
    slant = Slant(
        axis=axis,
        start=start,
        finish=finish,
        where=where or (words(near), words(near.opposite)),
        setting=says.setting,
    )
    return _line(plane, says, Axis.ALONG, start.along, slant)


def cross_mark(
    stick: Stick,
    plane: Plane,
    deep: tuple[Length, Length],
    says: Says,
    where: tuple[str, str] | None = None,
) -> Line:
    """A line across the timber, square or slanting as its plane has it.

    As `slanting_mark` where it slants. Raises ValueError for a plane that runs along the timber.
    """
    if any(plane.normal[1:]):
        return slanting_mark(stick, plane, deep, says, where)
    return square_mark(plane, says)


def tapering_mark(
    plane: Plane, along: tuple[Length, Length], where: tuple[str, str], says: Says
) -> Line:
    """A line that runs along the timber and leans, set off in from a reference face at two places.

    `where` says what its two ends are found on. Raises ValueError for a plane that does not slant.
    """
    axis = slant_axis(plane)
    start, finish = (Spot(each, deep_at(plane, axis, each)) for each in along)
    slant = Slant(axis=axis, start=start, finish=finish, where=where, setting=says.setting)
    return _line(plane, says, axis, start.deep, slant)


def parallel_mark(plane: Plane, deep: tuple[Length, Length], reading: Reading, says: Says) -> Line:
    """A line parallel to another that slants, set off square from that one as the reading says."""
    axis = slant_axis(plane)
    start, finish = (Spot(along_at(plane, axis, each), each) for each in deep)
    slant = Slant(axis=axis, start=start, finish=finish, where=("", ""), setting=says.setting)
    return replace(_line(plane, says, None, ZERO, slant), readings=(reading,))


def axis_of(plane: Plane) -> tuple[Axis, int]:
    """The axis a plane is square to, and its sense along it: 1 or -1. ValueError for a slant."""
    found = [(axis, part) for axis, part in zip(AXES, plane.normal, strict=True) if part]
    if len(found) != 1 or abs(found[0][1]) != 1:
        raise ValueError(f"{plane.line} is square to no axis")
    return found[0]


def slant_axis(plane: Plane) -> Axis:
    """The axis across the timber that a slanting plane leans on. ValueError for another plane."""
    along, *across = plane.normal
    if not along or bool(across[0]) is bool(across[1]):
        raise ValueError(f"{plane.line} does not slant across two faces")
    return Axis.FIRST if across[0] else Axis.SECOND


def _line(
    plane: Plane, says: Says, axis: Axis | None, at: Length, slant: Slant | None = None
) -> Line:
    if plane.line is None:
        raise ValueError("a line to strike has an id")
    return Line(
        id=plane.line,
        title=says.title,
        axis=axis,
        at=at,
        faces=says.faces,
        beside=says.beside,
        waste=says.waste,
        why=says.why,
        caution=says.caution,
        slant=slant,
    )
