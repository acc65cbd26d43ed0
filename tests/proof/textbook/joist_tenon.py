"""A soffit or a tusk tenon by its definition: a profile seen from the side, as wide as the joist.

How it works
1. Of all that lies beyond the beam's face the joist keeps three pieces: a wedge that is thickest at
   the tenon and comes to nothing at the joist's top, the tenon, and a tusk under it if it has one.
2. The beam loses just these, the tenon's own a little longer than it is.
"""

from collections.abc import Mapping
from fractions import Fraction

from benchmate.frame.frame import Frame
from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon
from benchmate.measure.length import NM_PER_INCH
from tests.proof.fits import Wastes
from tests.proof.kernel import Solid
from tests.proof.textbook.level import ALL, FAR, Level, housing, level, reduced
from tests.proof.wood import Log

SIXTEENTH = NM_PER_INCH // 16


def textbook(joint: SoffitTenon | TuskTenon, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood that a joist's tenon takes off it and off its beam."""
    found = dict(logs)
    joist, beam = found[joint.timber], found[joint.into]
    met = level(joint, found)
    near, far, tusk = profile(joint, met, joist, beam)
    length, lean, let_in = sizes(joint, joist, beam)
    wide = (0.0, met.wide)
    recesses = [*wedge(met, near, lean)]
    if let_in:
        recesses.append(met.box((0, let_in), wide, (far, tusk)))
    kept = [met.box((0, length), wide, (near, far)), *recesses]
    beyond = met.box((0, FAR), ALL, ALL).without(kept)
    spare = joint.bottom_clearance or frame.project.practice.bottom_clearance
    mortise = met.box((-met.over, length + spare.nm), wide, (near, far))
    end = f"{joint.end.word}-end-tenon"
    return {
        f"{joint.timber}/{end}": beyond.joined(reduced(met, joist)),
        f"{joint.into}/{joint.id}-mortise": mortise.joined([*recesses, *housing(met)]),
    }


def wedge(met: Level, near: float, lean: float) -> list[Solid]:
    """The haunch: from nothing at the joist's top to its full depth at the tenon."""
    if not lean:
        return []
    corners = ((0.0, 0.0), (0.0, near), (lean, near))
    return [met.profile(corners, (0, met.wide))]


def profile(
    joint: SoffitTenon | TuskTenon, met: Level, joist: Log, beam: Log
) -> tuple[float, float, float]:
    """How far below the joist's top the upper and the lower cheek lie, and the tusk's underside."""
    if isinstance(joint, SoffitTenon):
        low = drawn(joist) - joint.above_soffit.nm
        return low - joint.thickness.nm, (low if joint.above_soffit else met.deep), 0
    thick = joint.thickness.nm if joint.thickness else sixth(drawn(beam))
    if joint.set_back is not None:
        near: float = joint.set_back.nm
    else:
        near = _middle(met, beam) - thick
    return near, near + thick, near + thick + joint.tusk_height.nm


def _middle(met: Level, beam: Log) -> float:
    """How far below the joist's top the middle of the beam lies, as it is drawn or inner."""
    up = 1 if beam.timber.first_face.word in ("up", "down") else 2
    reference = (beam.timber.first_face, beam.timber.second_face)[up - 1]
    arris = met.zero[2] - beam.stand.zero[2]
    return arris + drawn(beam) / 2 * (1 if reference.word == "up" else -1)


def sizes(joint: SoffitTenon | TuskTenon, joist: Log, beam: Log) -> tuple[float, float, float]:
    """How far in the tenon, the wedge over it and the tusk go."""
    if isinstance(joint, SoffitTenon):
        return joint.length.nm, joint.haunch.nm, 0
    thick = joint.thickness.nm if joint.thickness else sixth(drawn(beam))
    tusk = joint.tusk.nm if joint.tusk else sixth(drawn(joist))
    horn = tusk if joint.horn is None else joint.horn.nm
    return (joint.length.nm if joint.length else 2 * thick), horn, tusk


def drawn(log: Log) -> float:
    """How deep a level timber is as drawn, or its inner timber."""
    stick = log.layout.stick
    section = stick.inner or stick.nominal
    return (section.first if log.timber.first_face.word in ("up", "down") else section.second).nm


def sixth(deep: float) -> int:
    """A sixth of a depth, to the nearest sixteenth of an inch."""
    return SIXTEENTH * round(Fraction(round(deep), 6 * SIXTEENTH))
