"""Half of the slot through the middle of a splayed scarf that folding wedges are driven into.

How it is cut and wedged is common practice, no source.
"""

from benchmate.frame.marking import Says, square_mark
from benchmate.frame.practice import CHISEL, SAW
from benchmate.joinery.scarf.shape import KEY_FLOOR, Half, KeySlot
from benchmate.joinery.scarf.words import far_words
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Cut, Plane, above, below
from benchmate.model.stick import reference_for


def key_cuts(half: Half) -> tuple[Cut, ...]:
    """The notch in this stick's splay."""
    if half.key is None:
        return ()
    return (Cut((half.key.start, half.key.finish, _floor(half, half.key))),)


def _floor(half: Half, key: KeySlot) -> Plane:
    return (above if half.leads else below)(half.halved, key.floor, KEY_FLOOR)


def key_lines(half: Half) -> tuple[Line, ...]:
    """Its two ends and its floor."""
    if half.key is None:
        return ()
    key, far = half.key, far_words(half, half.halved)
    wide = Beside(key.wide, "wide along, and as high with both halves together")
    why = f"Half of it in either stick: it lies opposite the notch in {half.mate.name}."
    ends = ((key.start, "Key slot start line"), (key.finish, "Key slot finish line"))
    floor = Says(
        title="Key slot floor line",
        beside=(Beside(key.deep, "below the splay at its middle"),),
        why="Square to the stick, not to the splay, so that the wedges bear all along.",
        caution=f"Never measure this from the {far}.",
    )
    return (
        *(
            square_mark(plane, Says(title=title, beside=(wide,), why=why, faces=_beside(half)))
            for plane, title in ends
        ),
        square_mark(_floor(half, key), floor),
    )


def key_tasks(half: Half) -> tuple[Task, ...]:
    """Cutting the notch once the splay is flat."""
    if half.key is None:
        return ()
    return (
        Task(
            id="cut-key-slot",
            stage=Stage.PARE,
            title="Saw and chop the key slot",
            draws=KEY_FLOOR,
            faces=_beside(half),
            readings=(
                Reading(
                    value=half.key.deep,
                    hook="splay at the slot's middle",
                    way="square to the stick, to the floor",
                ),
            ),
            waste="Between its two end lines, from the splay to its floor.",
            why=(
                "Cut it last, on the finished splay. Folding wedges are driven from both sides, no "
                "harder than it takes to seat the lap."
            ),
            caution=f"{SAW} {CHISEL}",
        ),
    )


def _beside(half: Half) -> tuple[Face, ...]:
    near = reference_for(half.sides)
    return (near, near.opposite)
