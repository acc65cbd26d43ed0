"""The plate's side of a seat: where the rafter stands, and the recess it goes into, if any."""

from benchmate.frame.marking import Says
from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.rafter.raking import above
from benchmate.joinery.rafter.recess import (
    FACE,
    FLOOR,
    INSIDE,
    LIP,
    bears_here,
    inner_says,
    recess_lines,
)
from benchmate.joinery.rafter.seat.shape import SeatShape
from benchmate.joinery.rafter.sides import side_lines
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Axis, Cut, Plane
from benchmate.model.stick import axis_from

WALL, END, TOP = ("step", "end", "top")
"""The lines of a seat's recess alone: the step left outside it and its inner end; by square rule
the inner timber's top."""


def plate_cuts(shape: SeatShape) -> tuple[Cut, ...]:
    """The recess in the top, and what goes by square rule over a step and on the face."""
    pieces = {FLOOR: (FLOOR, WALL, END), TOP: (TOP, END), FACE: (FACE, LIP)}
    return shape.plate.cuts(recess_planes(shape), pieces)


def recess_planes(shape: SeatShape) -> dict[str, Plane]:
    """The planes of the recess besides its two sides, by line."""
    rafter, plate = shape.rafter, shape.plate
    found = {}
    if shape.recess:
        found[FLOOR] = plate.carried(above(shape.level), FLOOR)
        if shape.stepped:
            found[WALL] = plate.carried(rafter.uphill(shape.wall), WALL)
        if shape.end is not None:
            found[END] = plate.carried(rafter.downhill(shape.end), END)
    if shape.stepped and plate.over_top:
        found[TOP] = plate.carried(above(plate.top), TOP)
    if shape.recess_near:
        found[FACE] = plate.carried(rafter.downhill(plate.near), FACE)
        if shape.lip > plate.real_bottom:
            found[LIP] = plate.carried(above(shape.lip), LIP)
    return found


def plate_lines(shape: SeatShape) -> tuple[Line, ...]:
    """Where the rafter's two sides come, then the planes of the recess."""
    planes = recess_planes(shape)
    says = {
        FLOOR: _floor_says(shape),
        WALL: Says(
            title="Step line",
            beside=(Beside(shape.step, f"in from the {_near(shape)}"),),
            why="The step left outside it takes the rafter's thrust: held exactly.",
            caution=shape.plate.unsure(shape.plate.near_face),
        ),
        END: Says(
            title="Inner end line",
            why="Where the rafter rises out of the top. It bears on nothing there.",
        ),
        TOP: inner_says("Inner top line", _top(shape)),
        FACE: inner_says("Inner face line", _near(shape)),
        LIP: Says(
            title="Lower end line",
            why="Where the underside of the rafter passes the face.",
        ),
    }
    marked = () if shape.recessed else (shape.plate.top_face, shape.plate.near_face)
    sides = side_lines(shape.plate, shape.rafter, marked)
    return (*sides, *recess_lines(planes, says, _down(shape)))


def _near(shape: SeatShape) -> str:
    return shape.plate.words(shape.plate.near_face)


def _top(shape: SeatShape) -> str:
    return shape.plate.words(shape.plate.top_face)


def _floor_says(shape: SeatShape) -> Says:
    plate = shape.plate
    left = Beside(Length(shape.level - plate.bottom), "left under it, to the underside")
    return Says(
        title="Floor line",
        beside=(left, Beside(shape.bearing, "of the rafter's seat stands on it, level")),
        why=bears_here("The rafter's seat", plate, plate.top_face),
        caution="What is left of the timber under a recess is for the engineer.",
        waste=f"Towards the {_top(shape)}, inside the lines only.",
        faces=(plate.top_face,) if {WALL, END} <= set(recess_planes(shape)) else (),
    )


def _plumb(shape: SeatShape) -> Axis:
    return axis_from(shape.plate.top_face)


def _down(shape: SeatShape) -> Reading:
    return Reading(value=shape.recess, hook=_top(shape), way="straight down, to the floor")


def plate_tasks(shape: SeatShape) -> tuple[Task, ...]:
    """What to do on the plate besides striking lines: one figure to one task."""
    measure = measure_task(shape.plate.stick, shape.plate.feature)
    if not shape.recessed:
        return (measure, _name(shape))
    return (measure, _knife(shape), *_cut_top(shape), *_cut_face(shape), *_try(shape))


def _name(shape: SeatShape) -> Task:
    return Task(
        id="name",
        stage=Stage.MARK,
        title=f"Write {shape.plate.rafter} between the two lines",
        faces=(shape.plate.top_face,),
        why="Nothing comes off here: the rafter is notched to stand on it.",
    )


def _knife(shape: SeatShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the recess, hatch the inside",
        faces=_open_faces(shape),
        waste=INSIDE,
        why="Crisp lines across the grain keep the edges from breaking out.",
    )


def _open_faces(shape: SeatShape) -> tuple[Face, ...]:
    planes, plate = recess_planes(shape), shape.plate
    sides = (plate.near_face, WALL not in planes), (plate.near_face.opposite, END not in planes)
    return (plate.top_face, *(face for face, is_open in sides if is_open))


def _cut_top(shape: SeatShape) -> tuple[Task, ...]:
    if not shape.recess:
        return ()
    unsure = "" if shape.plate.top_face.is_reference else _unmeasured(shape, _plumb(shape))
    return (
        Task(
            id="cut-floor",
            stage=Stage.CUT,
            title="Saw and chop the recess to its floor",
            draws=FLOOR,
            faces=_open_faces(shape),
            readings=(_down(shape),),
            waste="Inside the lines only, down to the floor.",
            why="In layers, with the floor left full until it is pared.",
            caution=f"{unsure}{SAW} {CHISEL}",
        ),
    )


def _unmeasured(shape: SeatShape, axis: Axis) -> str:
    return unmeasured(shape.plate.stick, axis, (shape.plate.feature,))


def _cut_face(shape: SeatShape) -> tuple[Task, ...]:
    if not shape.recess_near:
        return ()
    reading = Reading(
        value=shape.recess_near, hook=_near(shape), way="straight in, to the inner face line"
    )
    return (
        Task(
            id="cut-face",
            stage=Stage.CUT,
            title="Cut the face down to the inner timber",
            draws=FACE,
            faces=(shape.plate.near_face, shape.plate.top_face),
            readings=(reading,),
            waste=f"Towards the {_near(shape)}, between the side lines only.",
            why="So deep on this stick, here: the rafter's heel stands against the inner timber.",
            caution=f"{_unmeasured(shape, axis_from(shape.plate.near_face))}{SAW} {CHISEL}",
        ),
    )


def _try(shape: SeatShape) -> tuple[Task, ...]:
    if not shape.recess:
        return ()
    return (
        Task(
            id="try-floor",
            stage=Stage.PARE,
            title="Pare the floor flat, try its depth",
            faces=(shape.plate.top_face,),
            readings=(_down(shape),),
            waste=INSIDE,
            why="The seat bears on all of it: flat, level, and as deep at both sides.",
            caution=CHISEL,
        ),
    )
