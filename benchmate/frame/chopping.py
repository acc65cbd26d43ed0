"""Making a mortise, whatever it is cut for: boring it, paring its walls, trying its depth."""

from dataclasses import dataclass

from benchmate.frame.practice import CHISEL, DRILL
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Reading, Stage, Task

BORE, TRY_DEPTH = ("bore", "try-depth")
"""The first task at a mortise that stops inside its timber, and the one after which it is made."""

FROM_BOTH = "Never right through from one side: the bit splinters the face it comes out on."
"""Boring from both faces and meeting in the middle: common practice, no source."""

_STAY_INSIDE = "Stay inside the lines; the walls are pared afterwards."


@dataclass(frozen=True, slots=True, kw_only=True)
class Mouth:
    """The faces a mortise opens on, and in words which wood goes there."""

    faces: tuple[Face, ...]
    waste: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Depth:
    """How far `down` a mortise goes: its reading, the line it `draws`, and what is told beside."""

    down: Reading
    draws: str = ""
    beside: tuple[Beside, ...] = ()


def bore(mouth: Mouth, depth: Depth, *, why: str = _STAY_INSIDE, beware: str = "") -> Task:
    """Boring it to its depth; the cautions to `beware` of come before the drill's own."""
    return Task(
        id=BORE,
        stage=Stage.CUT,
        title="Bore or rough out the mortise",
        draws=depth.draws,
        faces=mouth.faces,
        readings=(depth.down,),
        beside=depth.beside,
        waste=mouth.waste,
        why=why,
        caution=f"{beware}{DRILL}",
    )


def pare_sides(mouth: Mouth, wide: Length, *, how: str = "Square to the face") -> Task:
    """Paring its two sides, so far apart; `how` says which way they run in."""
    return Task(
        id="pare-sides",
        stage=Stage.PARE,
        title="Pare the mortise sides",
        faces=mouth.faces,
        readings=(Reading(value=wide, hook="near side", way="to the far side"),),
        waste=mouth.waste,
        why=f"{how}: the tenon slides in by hand, without pounding.",
        caution=CHISEL,
    )


def pare_ends(mouth: Mouth, long: Length, *, where: str = "at the bottom") -> Task:
    """Paring its two ends, so far apart; `where` is the place that comes out too short."""
    return Task(
        id="pare-ends",
        stage=Stage.PARE,
        title="Pare the mortise ends",
        faces=mouth.faces,
        readings=(Reading(value=long, hook="start", way="to the finish"),),
        waste=mouth.waste,
        why=f"Square to the face, and no shorter {where}.",
        caution=CHISEL,
    )


def try_depth(mouth: Mouth, depth: Depth, *, bears: str, beware: str = "") -> Task:
    """Trying its depth; `bears` says what bears in place of the tenon's end."""
    return Task(
        id=TRY_DEPTH,
        stage=Stage.PARE,
        title="Try the mortise depth",
        draws=depth.draws,
        faces=mouth.faces,
        readings=(depth.down,),
        beside=depth.beside,
        waste=mouth.waste,
        why=never_bottom(bears),
        caution=beware,
    )


def never_bottom(bears: str) -> str:
    """Why a mortise is deeper than its tenon is long, and what `bears`, in a sentence."""
    return f"The tenon must never bottom out: {bears}."
