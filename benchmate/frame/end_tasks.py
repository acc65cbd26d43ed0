"""What is done at every worked end, whatever its family: knifing its shoulder, measuring it."""

from benchmate.frame.practice import AS_CUT
from benchmate.frame.stick_end import StickEnd
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Reading, Stage, Task

FOR_THE_MORTISE = "The mortise is cut to the tenon that was really made."
"""Why a finished tenon is measured."""


def knife_shoulder(
    made: StickEnd,
    faces: tuple[Face, ...],
    *,
    draws: str = "",
    outside: str = "the tenon's own lines",
    caution: str,
) -> Task:
    """Knifing the shoulder on these faces; the waste lies `outside` the lines that are named."""
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the shoulder, hatch the waste",
        draws=draws,
        faces=(*faces, made.end),
        waste=f"Towards the {made.stick.pose.words(made.end)}, outside {outside}.",
        why="A knifed line stays crisp, and hatching on every face shows which side goes.",
        caution=caution,
    )


def measure_finished(
    what: str,
    faces: tuple[Face, ...],
    readings: tuple[Reading, ...],
    *,
    why: str = FOR_THE_MORTISE,
    caution: str = "",
) -> Task:
    """Typing the real sizes of `what` was finished, for what is cut to it to follow."""
    return Task(
        id=AS_CUT,
        stage=Stage.AS_CUT,
        title=f"Measure {what} as cut",
        faces=faces,
        readings=readings,
        why=why,
        caution=caution,
        asks=Asks.AS_CUT,
        lasting=False,
    )


def knife_only(face: str, where: str) -> str:
    """The caution for a face the tenon runs out to: knifed right across, its root is severed."""
    return f"Knife the {face} only {where}: the tenon runs out to it there."
