"""The receiving side: the mortise, cut to the tenon as it really came out."""

from benchmate.frame.anew import strike_anew
from benchmate.frame.chopping import (
    TRY_DEPTH,
    Depth,
    Mouth,
    bore,
    never_bottom,
    pare_ends,
    pare_sides,
    try_depth,
)
from benchmate.frame.housing import housing_cuts, housing_lines, housing_tasks
from benchmate.frame.practice import measure_task
from benchmate.joinery.tenon.housing import housing
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.past import (
    comes_past,
    from_the_face,
    notched,
    spare_words,
    under_the_notch,
)
from benchmate.joinery.tenon.through import TRY_THROUGH, through_bore, through_try
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import reference_for

INSIDE = "Inside the four lines only."

BEARS = "the shoulder bears, not the end"


def cuts(shape: MortiseShape) -> tuple[Cut, ...]:
    """The housing if there is one, and the mortise: one box, open at the faces it comes out on."""
    return (
        *housing_cuts(housing(shape)),
        Cut(
            (
                above(Axis.ALONG, shape.along[0], "start"),
                below(Axis.ALONG, shape.along[1], "finish"),
                above(shape.sides, shape.across[0], "near-side"),
                below(shape.sides, shape.across[1], "far-side"),
                *_bottom(shape),
            )
        ),
    )


def _bottom(shape: MortiseShape) -> tuple[Plane, ...]:
    if shape.through:
        return ()
    bound = below if shape.entry.is_reference else above
    return (bound(shape.into, shape.bottom, "depth"),)


def lines(shape: MortiseShape, tape: Tape) -> tuple[Line, ...]:
    """The lines to strike: the housing, then the mortise's two ends and two sides, and its depth.

    A mortise that goes through has no depth: its four lines are struck on both its faces.
    """
    depth = () if shape.through else (_depth(shape, tape),)
    return (*housing_lines(housing(shape)), *_ends(shape, tape), *_sides(shape, tape), *depth)


def _follows(shape: MortiseShape, size: str, tape: Tape) -> str:
    name = f"{shape.tenon.stick.name}'s {shape.tenon.feature.replace('-', ' ')}"
    as_cut = shape.tenon.as_cut.get(size)
    if as_cut is None:
        return f"Follows {name} as drawn; it has not been measured as cut."
    drawn = {"width": shape.tenon.width, "thickness": shape.tenon.thickness}
    laid_out = drawn.get(size, shape.tenon.length)
    return (
        f"Follows {name} as cut: {tape.text(as_cut)} {size}, laid out as {tape.text(laid_out)}, "
        "counted from its reference side."
    )


def _ends(shape: MortiseShape, tape: Tape) -> tuple[Line, Line]:
    start, finish = shape.along
    relish, end = shape.relish
    long = Beside(finish - start, "mortise length")
    left = Beside(relish, f"relish to the {shape.stick.pose.words(end)}")
    why = f"{comes_past(shape)}{_follows(shape, shape.along_follows, tape)}"
    return (
        Line(
            id="start",
            title="Start line",
            axis=Axis.ALONG,
            at=start,
            beside=(long, left) if end is Face.REFERENCE_END else (long,),
            why=why,
            caution=notched(shape),
        ),
        Line(
            id="finish",
            title="Finish line",
            axis=Axis.ALONG,
            at=finish,
            beside=(long, left) if end is Face.FAR_END else (long,),
            why=why,
        ),
    )


def _sides(shape: MortiseShape, tape: Tape) -> tuple[Line, Line]:
    near, far = shape.across
    beside = (Beside(far - near, "mortise width"),)
    follows = _follows(shape, shape.across_follows, tape)
    why = {"near-side": follows, "far-side": follows}
    if shape.held:
        why[shape.held] = f"{_held(shape)} {follows}"
    other = shape.stick.pose.words(reference_for(shape.sides).opposite)
    return (
        Line(
            id="near-side",
            title="Near side line",
            axis=shape.sides,
            at=near,
            beside=beside,
            why=why["near-side"],
        ),
        Line(
            id="far-side",
            title="Far side line",
            axis=shape.sides,
            at=far,
            beside=beside,
            why=why["far-side"],
            caution=f"Never measure this from the {other}.",
        ),
    )


def _held(shape: MortiseShape) -> str:
    """What the side line on the tenon's reference side is, in a sentence."""
    tenon = shape.tenon
    if tenon.near:
        return "The set-back, so that the faces come flush."
    face = tenon.stick.pose.words(reference_for(tenon.cheeks))
    return f"No set-back: the tenon runs on from {tenon.stick.name}'s {face}."


def _depth(shape: MortiseShape, tape: Tape) -> Line:
    other = shape.stick.pose.words(shape.entry.opposite)
    return Line(
        id="depth",
        title="Depth",
        axis=shape.into,
        at=shape.bottom,
        faces=(shape.entry,),
        readings=(
            Reading(
                value=shape.down, hook=opening(shape), way=f"straight down towards the {other}"
            ),
        ),
        beside=(
            *_from_the_face(shape),
            Beside(shape.clearance, spare_words(shape)),
            Beside(shape.left_below, f"left to the {other}"),
        ),
        waste="Inside the four lines, down to this depth. Write it in the waste.",
        why=f"{never_bottom(BEARS)} {_follows(shape, 'length', tape)}",
        caution=f"{from_the_face(shape)}Measure after the chips are out.",
    )


def _from_the_face(shape: MortiseShape) -> tuple[Beside, ...]:
    """How deep the mortise is from the face itself, for boring before the housing is cut."""
    if not shape.housed:
        return ()
    entry = shape.stick.pose.words(shape.entry)
    return (Beside(shape.recess + shape.depth, f"deep in all, from the {entry}"),)


def tried(shape: MortiseShape) -> str:
    """The task after which a mortise is made."""
    return TRY_THROUGH if shape.through else TRY_DEPTH


def opening(shape: MortiseShape) -> str:
    """What the mortise's depth is measured from, in words: the floor it opens on, or its face."""
    floor = shape.floor(shape.entry)
    return floor.words if floor else housing(shape).opening


def tasks(shape: MortiseShape, tape: Tape, meets: tuple[str, ...] = ()) -> tuple[Task, ...]:
    """What to do at the mortise besides striking lines: one figure to one task.

    `meets` are the timbers whose own mortises it runs into.
    """
    mouth, passage = _mouth(shape), shape.passage
    return (
        measure_task(shape.stick, shape.feature),
        *housing_tasks(
            housing(shape),
            "mortise",
            (*_ends(shape, tape), *_sides(shape, tape)),
            counts=not shape.through,
        ),
        *_knife(shape),
        *_struck_anew(shape, tape),
        *_boring(shape, meets),
        pare_sides(mouth, shape.across[1] - shape.across[0]),
        pare_ends(
            mouth, shape.along[1] - shape.along[0], where="inside" if passage else "at the bottom"
        ),
        through_try(shape)
        if passage
        else try_depth(mouth, _down(shape), bears=BEARS, beware=from_the_face(shape).rstrip()),
    )


def _boring(shape: MortiseShape, meets: tuple[str, ...]) -> tuple[Task, ...]:
    """Boring it: from both faces if it goes through, half the wood from each."""
    breaks = "".join(
        f"It breaks out into the mortise for {name} on the way: ease the bit through. "
        for name in meets
    )
    if shape.passage:
        return through_bore(shape, shape.passage, opening(shape), waste=INSIDE, beware=breaks)
    return (bore(_mouth(shape), _down(shape), beware=f"{from_the_face(shape)}{breaks}"),)


def _mouth(shape: MortiseShape) -> Mouth:
    return Mouth(faces=shape.mouths, waste=INSIDE)


def _down(shape: MortiseShape) -> Depth:
    down = Reading(value=shape.down, hook=opening(shape), way="down")
    return Depth(down=down, beside=under_the_notch(shape))


def _knife(shape: MortiseShape) -> tuple[Task, ...]:
    """Knifing the mortise on its faces; on a floor that waits until the floor is cut."""
    housed = shape.mouths[:1] if shape.housed else ()
    faces = tuple(face for face in shape.mouths if face not in housed and not shape.floor(face))
    if not faces:
        return ()
    return (
        Task(
            id="knife",
            stage=Stage.KNIFE,
            faces=faces,
            waste=INSIDE,
            title="Knife the mortise ends, hatch the inside",
            why="The knifed cross-grain lines keep the ends from tearing.",
            caution="" if shape.followed else notched(shape),
        ),
    )


def _struck_anew(shape: MortiseShape, tape: Tape) -> tuple[Task, ...]:
    """Striking it on every floor of another joint that it opens on."""
    lines = (*_ends(shape, tape), *_sides(shape, tape))
    return tuple(
        strike_anew(
            shape.stick,
            (face, shape.sides),
            lines,
            noun="mortise",
            id_="strike-anew" if face is shape.entry else "strike-anew-far",
            title=f"Strike the mortise anew on the {floor.words}, knife its ends",
            why=(
                f"The {floor.name} took its lines away. Measure each as it was first struck, "
                "never from the edges of the floor."
            ),
        )
        for face in shape.mouths
        if (floor := shape.floor(face))
    )
