"""The receiving side: the mortise of a brace, and the housing its whole end goes into."""

from functools import partial

from benchmate.frame.chopping import Depth, Mouth, bore, never_bottom, pare_sides, try_depth
from benchmate.frame.marking import Says, square_mark
from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.frame.raking_hole import (
    WALL_FAR,
    WALL_NEAR,
    follows_words,
    open_faces,
    side_lines,
    side_planes,
    wall_lines,
    walls,
)
from benchmate.frame.reduction import measured_words, unmeasured_recess
from benchmate.joinery.brace.legs import Legs
from benchmate.joinery.brace.shape import HoleShape
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import reference_for

NOSE_END, HEEL_END, DEPTH, FLOOR = ("nose-end", "heel-end", "depth", "housing-floor")

INSIDE = "Inside the four lines only."

BEARS = "shoulder and nose bear"


def hole_cuts(shape: HoleShape) -> tuple[Cut, ...]:
    """The housing if there is one, and the mortise."""
    ends = _ends(shape)
    down = below if shape.entry.is_reference else above
    mortise = Cut(
        (
            *ends.values(),
            *side_planes(shape),
            down(shape.into, shape.bottom, DEPTH),
        )
    )
    if not shape.recess:
        return (mortise,)
    floor = down(shape.into, shape.seat, FLOOR)
    return (Cut((*ends.values(), *walls(shape).values(), floor)), mortise)


def _ends(shape: HoleShape) -> dict[str, Plane]:
    start, finish = shape.along
    names = (NOSE_END, HEEL_END) if shape.nosed_first else (HEEL_END, NOSE_END)
    return {
        names[0]: above(Axis.ALONG, start, names[0]),
        names[1]: below(Axis.ALONG, finish, names[1]),
    }


def hole_lines(shape: HoleShape, legs: Legs | None, tape: Tape) -> tuple[Line, ...]:
    """The two ends, the housing's sides and floor, then the mortise's sides and depth."""
    return (
        *_end_lines(shape, legs),
        *_housing_lines(shape),
        *side_lines(shape, tape),
        _depth(shape, tape),
    )


def _end_lines(shape: HoleShape, legs: Legs | None) -> tuple[Line, ...]:
    brace, planes = shape.tenon.stick.name, _ends(shape)
    long = Beside(shape.along[1] - shape.along[0], "long in all")
    nose = Says(
        title="Nose end line",
        beside=(*_to_corner(shape, legs), long),
        why=f"The {_comes_here(shape)} of {brace} comes here and bears on this end: held exactly.",
        caution="The nose bears on this end. It is the end away from the corner.",
    )
    heel = Says(
        title="Heel end line",
        beside=(Beside(shape.ease, "of it to spare beyond the short edge"), long),
        why=f"What {brace} is over or under goes to this end, so it bears on nothing.",
    )
    return (square_mark(planes[NOSE_END], nose), square_mark(planes[HEEL_END], heel))


def _comes_here(shape: HoleShape) -> str:
    return "nose" if shape.tenon.nose_in else "long edge"


def _to_corner(shape: HoleShape, legs: Legs | None) -> tuple[Beside, ...]:
    """The leg, which ends here; for a nose that is set in, where both lie from here."""
    inset = shape.tenon.nose_in
    if not inset:
        return legs.beside() if legs else ()
    edge = Beside(inset, f"nearer the corner than the long edge of {shape.tenon.stick.name}")
    if legs is None:
        return (edge,)
    return (edge, Beside(legs.face - inset, f"from here along {legs.on} to the face of {legs.to}"))


def _housing_lines(shape: HoleShape) -> tuple[Line, ...]:
    if not shape.recess:
        return ()
    return (*wall_lines(shape, "Housing"), _floor(shape))


def _floor(shape: HoleShape) -> Line:
    words = shape.stick.pose.words
    entry, reference = words(shape.entry), words(reference_for(shape.into))
    far = not shape.entry.is_reference
    why = "The brace bears here"
    return Line(
        id=FLOOR,
        title="Housing floor",
        axis=shape.into,
        at=shape.seat,
        faces=(shape.entry,) if len(walls(shape)) == len((WALL_NEAR, WALL_FAR)) else (),
        readings=(Reading(value=shape.recess, hook=entry, way="straight in, to the floor"),),
        beside=(Beside(shape.seat, f"from the {reference} to the floor here"),) if far else (),
        waste=f"Towards the {entry}, inside the housing's lines only.",
        why=(
            f"{why}. {measured_words(shape.stick, shape.into, (shape.feature,))}"
            if far
            else f"{why}."
        ),
    )


def _depth(shape: HoleShape, tape: Tape) -> Line:
    words = shape.stick.pose.words
    entry, other = words(shape.entry), words(shape.entry.opposite)
    in_all = (Beside(shape.recess + shape.depth, f"deep in all, from the {entry}"),)
    return Line(
        id=DEPTH,
        title="Depth",
        axis=shape.into,
        at=shape.bottom,
        faces=(shape.entry,),
        readings=(
            Reading(
                value=shape.depth, hook=opening(shape), way=f"straight down towards the {other}"
            ),
        ),
        beside=(
            *(in_all if shape.recess else ()),
            Beside(shape.clearance, "deeper than the tenon is long"),
            Beside(shape.left_below, f"left to the {other}"),
        ),
        waste="Inside the four lines, down to this depth. Write it in the waste.",
        why=f"{never_bottom(BEARS)} {follows_words(shape.tenon, 'length', tape)}",
        caution="Measure after the chips are out.",
    )


def opening(shape: HoleShape) -> str:
    """What the mortise's depth is measured from: where the brace bears, in words."""
    return "housing floor" if shape.recess else shape.stick.pose.words(shape.entry)


def hole_tasks(shape: HoleShape) -> tuple[Task, ...]:
    """What to do at the mortise besides striking lines: one figure to one task."""
    start, finish = shape.along
    near, far = shape.across
    mouth = Mouth(faces=(shape.entry,), waste=INSIDE)
    task = partial(Task, faces=mouth.faces, waste=mouth.waste)
    depth = Depth(down=Reading(value=shape.depth, hook=opening(shape), way="down"))
    return (
        measure_task(shape.stick, shape.feature),
        task(
            id="knife",
            stage=Stage.KNIFE,
            title="Knife the ends, hatch the inside",
            why="The nose end shows beside the brace and bears: a knifed line keeps it crisp.",
        ),
        *_housing_tasks(shape),
        bore(mouth, depth),
        pare_sides(mouth, far - near),
        task(
            id="pare-ends",
            stage=Stage.PARE,
            title="Pare the ends, the nose end square and flat",
            readings=(Reading(value=finish - start, hook="nose end", way="to the heel end"),),
            why="The nose bears on all of its end: square to the face, and no proud spot.",
            caution=CHISEL,
        ),
        try_depth(mouth, depth, bears=BEARS),
    )


def _housing_tasks(shape: HoleShape) -> tuple[Task, ...]:
    if not shape.recess:
        return ()
    entry = shape.stick.pose.words(shape.entry)
    first = unmeasured_recess(shape.stick, shape.entry, shape.feature)
    return (
        Task(
            id="cut-housing",
            stage=Stage.CUT,
            title="Saw and chop the housing to its floor",
            draws=FLOOR,
            faces=open_faces(shape),
            readings=(
                Reading(value=shape.recess, hook=entry, way="straight in, to the housing floor"),
            ),
            waste="Inside the housing's lines only.",
            why="Pare the floor flat, then strike the mortise's sides on it again from the face.",
            caution=f"{first}{SAW} {CHISEL}",
        ),
    )
