"""The ridge's side: where the rafter comes, and the housing its end goes into, if any."""

from benchmate.frame.marking import Says, square_mark
from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.frame.reduction import unmeasured_recess
from benchmate.joinery.rafter.raking import above, under
from benchmate.joinery.rafter.recess import (
    FACE,
    FLOOR,
    INSIDE,
    LIP,
    bears_here,
    inner_says,
    recess_lines,
)
from benchmate.joinery.rafter.ridge.shape import HeadShape
from benchmate.joinery.rafter.sides import side_lines
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Cut, Plane

SEAT, TOP = ("seat", "top")
"""The lines of a housing alone: its level bottom, and its top where it is closed."""


def housing_cuts(shape: HeadShape) -> tuple[Cut, ...]:
    """The housing, and what goes by square rule in front of it."""
    pieces = {FLOOR: (FLOOR, SEAT, TOP), FACE: (FACE, LIP, TOP)}
    return shape.ridge.cuts(housing_planes(shape), pieces)


def housing_planes(shape: HeadShape) -> dict[str, Plane]:
    """The planes of the housing besides its two sides, by line."""
    rafter, ridge = shape.rafter, shape.ridge
    found = {}
    if shape.let_in:
        found[FLOOR] = ridge.carried(rafter.downhill(shape.bears), FLOOR)
        found[SEAT] = ridge.carried(above(shape.level), SEAT)
    if ridge.over_near:
        found[FACE] = ridge.carried(rafter.downhill(ridge.near), FACE)
        if shape.lowest > ridge.real_bottom:
            found[LIP] = ridge.carried(above(shape.lowest), LIP)
    if found and shape.highest < ridge.real_top:
        found[TOP] = ridge.carried(under(shape.highest), TOP)
    return found


def housing_lines(shape: HeadShape) -> tuple[Line, ...]:
    """Where the rafter's two sides come, then the planes of the housing, or its top edge alone."""
    planes = housing_planes(shape)
    sides = side_lines(shape.ridge, shape.rafter, _faces(shape))
    if not planes:
        return (*sides, *_top_edge(shape))
    says = {
        FLOOR: _floor_says(shape),
        SEAT: Says(
            title="Bottom line",
            why="Level: the rafter's seat stands on it.",
            beside=(Beside(Length(shape.level - shape.ridge.bottom), "left under it"),),
        ),
        TOP: Says(title="Upper end line", why="As high as the rafter's top edge comes inside."),
        FACE: inner_says("Inner face line", _near(shape)),
        LIP: Says(title="Lower end line", why="Where the rafter's underside passes the face."),
    }
    return (*sides, *recess_lines(planes, says, _in(shape)))


def _near(shape: HeadShape) -> str:
    return shape.ridge.words(shape.ridge.near_face)


def _faces(shape: HeadShape) -> tuple[Face, ...]:
    """The faces that the sides of an uncut place are struck on; the cuts tell otherwise."""
    return () if shape.recess else (shape.ridge.near_face,)


def _top_edge(shape: HeadShape) -> tuple[Line, ...]:
    """How high the rafter's top edge comes on the ridge's face, where it comes on it."""
    ridge = shape.ridge
    if not ridge.bottom < shape.highest < ridge.real_top:
        return ()
    says = Says(
        title="Top edge line",
        beside=(Beside(Length(ridge.real_top - shape.highest), "under the top of the ridge"),),
        why=f"The {ridge.rafter} comes up to here with its top edge.",
        caution=ridge.unsure(ridge.top_face),
        faces=(ridge.near_face,),
    )
    return (square_mark(ridge.carried(under(shape.highest), TOP), says),)


def _floor_says(shape: HeadShape) -> Says:
    ridge = shape.ridge
    left = Length(ridge.real_far - shape.bears)
    return Says(
        title="Floor",
        beside=(Beside(left, "left behind it, to the far side"),),
        why=bears_here("The rafter's plumb cut", ridge, ridge.near_face),
        waste=f"Towards the {_near(shape)}, inside the lines only.",
        caution="What a ridge may lose to housings is for the engineer.",
        faces=(ridge.near_face,) if TOP in housing_planes(shape) else (),
    )


def _in(shape: HeadShape) -> Reading:
    return Reading(value=shape.recess, hook=_near(shape), way="straight in, to the floor")


def housing_tasks(shape: HeadShape) -> tuple[Task, ...]:
    """What to do on the ridge besides striking lines: one figure to one task."""
    ridge = shape.ridge
    measure = measure_task(ridge.stick, ridge.feature)
    if not shape.recess:
        return (measure,)
    return (measure, _knife(shape), *_cut(shape), *_try(shape))


def _knife(shape: HeadShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the housing, hatch the inside",
        faces=_open_faces(shape),
        waste=INSIDE,
        why="Its edges show beside the rafter: knifed lines keep them crisp.",
    )


def _open_faces(shape: HeadShape) -> tuple[Face, ...]:
    ridge = shape.ridge
    is_open = shape.highest >= ridge.real_top
    return (ridge.near_face, *((ridge.top_face,) if is_open else ()))


def _cut(shape: HeadShape) -> tuple[Task, ...]:
    """Sawing and chopping it out: to its floor, or by square rule to the inner timber alone."""
    ridge = shape.ridge
    first = unmeasured_recess(ridge.stick, ridge.near_face, ridge.feature)
    return (
        Task(
            id="cut-housing",
            stage=Stage.CUT,
            title="Saw and chop the housing out",
            draws=FLOOR if shape.let_in else FACE,
            faces=_open_faces(shape),
            readings=(_in(shape),),
            waste=INSIDE,
            why="In layers, with floor and bottom left full until they are pared.",
            caution=f"{first}{SAW} {CHISEL}",
        ),
    )


def _try(shape: HeadShape) -> tuple[Task, ...]:
    return (
        Task(
            id="try-floor",
            stage=Stage.PARE,
            title="Pare the floor plumb and flat, try its depth",
            faces=(shape.ridge.near_face,),
            readings=(_in(shape),),
            waste=INSIDE,
            why="The rafter's plumb cut bears on all of it.",
            caution=CHISEL,
        ),
    )
