"""A tongue on the tip of a lap, and the open slot in the body for the tongue of the other stick."""

from functools import partial

from benchmate.frame.marking import Says, square_mark
from benchmate.frame.practice import CHISEL, SAW
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.scarf.shape import (
    SLOT_END,
    SLOT_FAR,
    SLOT_NEAR,
    TONGUE_FAR,
    TONGUE_NEAR,
    Bridle,
    Half,
)
from benchmate.joinery.scarf.words import far_words, words
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Cut, above, below
from benchmate.model.stick import reference_for

IN_THE_SLOT = "Between the slot's two sides, down to the lap line."


def bridle_cuts(half: Half) -> tuple[Cut, ...]:
    """The wood on both sides of the tongue, and the slot."""
    if half.bridle is None:
        return ()
    bridle, sides = half.bridle, half.sides
    slot = (above(sides, bridle.near, SLOT_NEAR), below(sides, bridle.slot_far, SLOT_FAR))
    return (
        Cut((bridle.shoulder, below(sides, bridle.near, TONGUE_NEAR))),
        Cut((bridle.shoulder, above(sides, bridle.far, TONGUE_FAR))),
        Cut((bridle.slot_end, half.lap, *slot)),
    )


def bridle_lines(half: Half, tape: Tape) -> tuple[Line, ...]:
    """The tongue, then the slot."""
    if half.bridle is None:
        return ()
    return (*_tongue(half, half.bridle), *_slot(half, half.bridle, tape))


def _tongue(half: Half, bridle: Bridle) -> tuple[Line, ...]:
    far = far_words(half, half.sides)
    shoulder = Says(
        title="Tongue shoulder line",
        beside=(Beside(bridle.length, "of tongue beyond it"),),
        why=f"Both sides of the tongue bear on the shoulder of {half.mate.name} here.",
        caution="Only beside the tongue: the tongue runs on to the end.",
        faces=(half.keeps, reference_for(half.sides), reference_for(half.sides).opposite),
    )
    near = Says(
        title="Tongue near line",
        beside=(Beside(bridle.far - bridle.near, "tongue thickness"),),
        why="The set-back. It is the same in the slot, so the faces come flush.",
        faces=(half.keeps, half.end),
    )
    off = Says(
        title="Tongue far line",
        beside=(
            Beside(bridle.far - bridle.near, "tongue thickness"),
            Beside(half.real_wide - bridle.far, f"to come off the {far}"),
        ),
        why="What the stick is over or under shows only on the far side.",
        caution=f"Never measure this from the {far}.",
        faces=(half.keeps, half.end),
    )
    return (
        square_mark(bridle.shoulder, shoulder),
        square_mark(below(half.sides, bridle.near, TONGUE_NEAR), near),
        square_mark(above(half.sides, bridle.far, TONGUE_FAR), off),
    )


def _slot(half: Half, bridle: Bridle, tape: Tape) -> tuple[Line, ...]:
    far, wide = far_words(half, half.sides), Beside(bridle.slot_far - bridle.near, "slot width")
    follows = _follows(half, tape)
    end = Says(
        title="Slot end line",
        beside=(
            Beside(bridle.slot_length, "long, from the shoulder line"),
            Beside(bridle.clearance, "longer than the tongue that goes in"),
        ),
        why=f"The tongue must never bottom out: the shoulders bear. {follows}",
    )
    near = Says(
        title="Slot near line",
        beside=(wide,),
        why="The set-back, as on the tongue.",
        faces=(half.keeps.opposite,),
    )
    off = Says(
        title="Slot far line",
        beside=(wide,),
        why=follows,
        caution=f"Never measure this from the {far}.",
        faces=(half.keeps.opposite,),
    )
    return (
        square_mark(bridle.slot_end, end),
        square_mark(above(half.sides, bridle.near, SLOT_NEAR), near),
        square_mark(below(half.sides, bridle.slot_far, SLOT_FAR), off),
    )


def _follows(half: Half, tape: Tape) -> str:
    name = half.mate.name
    if half.leads:
        return f"To the tongue as drawn: that of {name} is pared to this slot."
    sizes = {"thick": half.as_cut.thickness, "long": half.as_cut.length}
    known = [f"{tape.text(size)} {what}" for what, size in sizes.items() if size is not None]
    if not known:
        return f"Follows {name}'s tongue as drawn; it has not been measured as cut."
    return f"Follows {name}'s tongue as cut: {' and '.join(known)}."


def bridle_tasks(half: Half) -> tuple[Task, ...]:
    """Cutting the tongue and the slot once the lap is down: one figure to one task."""
    if half.bridle is None:
        return ()
    return (*_tongue_tasks(half, half.bridle), *_slot_tasks(half, half.bridle))


def _tongue_tasks(half: Half, bridle: Bridle) -> tuple[Task, ...]:
    near = reference_for(half.sides)
    first = unmeasured(half.stick, half.sides, half.places)
    sides = (
        ("near", near, TONGUE_NEAR, bridle.near, ""),
        ("far", near.opposite, TONGUE_FAR, half.real_wide - bridle.far, first),
    )
    return tuple(
        Task(
            id=f"cut-tongue-{side}",
            stage=Stage.CUT,
            title=f"Saw the tongue free, {words(half, face)}",
            draws=line,
            faces=(face, half.keeps, half.end),
            readings=(Reading(value=deep, hook=words(half, face), way="straight in"),),
            waste=f"Towards the {words(half, face)}, beyond the tongue shoulder line.",
            why="Shoulder first, then along the tongue: leave the line to pare to.",
            caution=f"{caution}{SAW}",
        )
        for side, face, line, deep, caution in sides
    )


def _slot_tasks(half: Half, bridle: Bridle) -> tuple[Task, ...]:
    open_to = half.keeps.opposite
    task = partial(Task, faces=(open_to,), waste=IN_THE_SLOT)
    first = unmeasured(half.stick, half.halved, half.places) if half.leads else ""
    return (
        task(
            id="saw-slot",
            stage=Stage.CUT,
            title="Saw the slot's two sides",
            draws=SLOT_FAR,
            readings=(
                Reading(
                    value=half.off(half.root),
                    hook=words(half, open_to),
                    way="straight in, to the lap line",
                ),
            ),
            why="From the shoulder to the slot's end, kerfs inside the lines.",
            caution=f"{first}{SAW}",
        ),
        task(
            id="chop-slot",
            stage=Stage.CUT,
            title="Chop the slot out to its end",
            draws=SLOT_END,
            readings=(
                Reading(
                    value=bridle.slot_length,
                    hook="shoulder line",
                    way="into the body, to the slot's end",
                ),
            ),
            why="In from the open side, its floor level with the lap.",
            caution=CHISEL,
        ),
        task(
            id="pare-slot",
            stage=Stage.PARE,
            title="Pare the slot's sides",
            readings=(
                Reading(
                    value=bridle.slot_far - bridle.near, hook="near side", way="to the far side"
                ),
            ),
            why="The tongue drops in by hand, without pounding.",
            caution=CHISEL,
        ),
        Task(
            id="pare-tongue",
            stage=Stage.PARE,
            title="Pare the tongue's sides",
            faces=(half.keeps, half.end),
            readings=(
                Reading(value=bridle.far - bridle.near, hook="near side", way="to the far side"),
            ),
            waste="Only what stands proud of the lines.",
            why=f"It fills the slot in {half.mate.name}, and its shoulders bear.",
            caution=CHISEL,
        ),
    )
