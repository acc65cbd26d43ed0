"""One head of a pair: the wood that comes off, and the lines to strike for it."""

from benchmate.frame.flats import reversed_plane
from benchmate.frame.marking import Says, cross_mark, square_mark
from benchmate.frame.practice import unsure_of
from benchmate.frame.reduction import side_line
from benchmate.joinery.rafter.peak.shape import FAR, NEAR, STOP, HeadShape
from benchmate.joinery.rafter.raking import TOP_EDGE
from benchmate.joinery.rafter.words import datum, setting, slanting
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line
from benchmate.model.setting import Setting
from benchmate.model.solids import Cut, Plane, above


def head_cuts(shape: HeadShape) -> tuple[Cut, ...]:
    """What is past the end, beside a tongue or in a fork, and what goes by square rule."""
    found = [] if shape.ended else [Cut((shape.shoulder,))]
    if shape.lapped and shape.tongue:
        found += [Cut((shape.root, reversed_plane(cheek))) for cheek in shape.cheeks]
    elif shape.lapped:
        found.append(Cut((shape.root, *shape.cheeks)))
    lost = shape.reduction
    found += [Cut((shape.stop, above(axis, at, lost.line(axis)))) for axis, at in lost.to.items()]
    return tuple(found)


def head_lines(shape: HeadShape, tape: Tape) -> tuple[Line, ...]:
    """Where it ends, where the other's underside crosses it, then the cheeks."""
    found = [] if shape.ended else [_end_line(shape, tape)]
    if shape.lapped:
        found.append(_root(shape, tape))
        found += [_cheek(shape, cheek, tape) for cheek in shape.cheeks]
    return (*found, *_reduction(shape, tape))


def _across(shape: HeadShape, plane: Plane, says: Says) -> Line:
    rafter = shape.rafter
    return cross_mark(rafter.stick, plane, (ZERO, rafter.real_deep), says)


def _angle(shape: HeadShape, plane: Plane, tape: Tape) -> Setting | None:
    if not shape.lapped:
        return setting(shape.rafter, tape, plumb=True)
    return slanting(plane, shape.rafter.plumb, tape)


def _end_line(shape: HeadShape, tape: Tape) -> Line:
    mate = shape.mate.stick.name
    why = (
        f"It runs on to the top of {mate}, parallel to it, and comes flush with the other slope."
        if shape.lapped
        else f"Plumb, from the {TOP_EDGE} down, at the peak: it bears on {mate}."
    )
    long = Beside(shape.rafter.plumbed(shape.rafter.real_deep), "long, plumb")
    says = Says(
        title="Peak line" if shape.lapped else "Plumb line",
        beside=() if shape.lapped else (long,),
        why=f"{why} {datum(shape.rafter.stick, shape.end)}".rstrip(),
        setting=_angle(shape, shape.shoulder, tape),
    )
    return _across(shape, shape.shoulder, says)


def _root(shape: HeadShape, tape: Tape) -> Line:
    mate = shape.mate
    back = Beside(mate.deep, f"square back from where it ends: as deep as {mate.stick.name} is")
    says = Says(
        title="Fork bottom line" if _forked(shape) else "Shoulder line",
        beside=(back,),
        why=f"Parallel to {mate.stick.name}: its underside comes here.",
        caution=_mate_unmeasured(shape),
        waste=_waste(shape),
        setting=_angle(shape, shape.root, tape),
    )
    return _across(shape, shape.root, says)


def _mate_unmeasured(shape: HeadShape) -> str:
    """The caution while a line follows the other's underside, and nobody has measured it there."""
    mate = shape.mate
    if mate.stick.inner is not None:
        return ""
    if mate.stick.measured_depth(mate.plumb, *mate.places) is not None:
        return ""
    under = mate.stick.pose.words(mate.top.opposite)
    return unsure_of((f"{mate.stick.name}'s {under}",), "mark")


def _forked(shape: HeadShape) -> bool:
    return shape.cut == "bridle" and not shape.tongue


def _waste(shape: HeadShape) -> str:
    head = shape.rafter.stick.pose.words(shape.end)
    if shape.cut == "half lap":
        far = shape.rafter.side.opposite if shape.tongue else _lost_side(shape)
        return f"Towards the {head}, on the {shape.rafter.stick.pose.words(far)} only."
    where = "between the cheeks" if _forked(shape) else "outside the cheeks"
    return f"Towards the {head}, {where} only."


def _lost_side(shape: HeadShape) -> Face:
    """The side the second of a half-lapped pair loses its half from."""
    (cheek,) = shape.cheeks
    return shape.rafter.side if cheek.line == FAR else shape.rafter.side.opposite


def _cheek(shape: HeadShape, cheek: Plane, tape: Tape) -> Line:
    far = shape.rafter.stick.pose.words(shape.rafter.side.opposite)
    lap = shape.cut == "half lap"
    says = Says(
        title="Lap line" if lap else "Near cheek line" if cheek.line == NEAR else "Far cheek line",
        beside=_wide(shape),
        why=_flush(shape, cheek) if shape.tongue else follows(shape, tape),
        caution=f"Never measure this from the {far}." if cheek.line == FAR else "",
        waste=_waste(shape),
    )
    return square_mark(cheek, says)


def _wide(shape: HeadShape) -> tuple[Beside, ...]:
    """What is kept of a lap, or the tongue's or the fork's width."""
    if shape.cut == "bridle":
        return (Beside(shape.thickness, "tongue thickness" if shape.tongue else "fork width"),)
    kept = shape.thickness if shape.tongue else shape.rafter.real_wide - shape.thickness
    return (Beside(kept, "of thickness left in the lap"),)


def _flush(shape: HeadShape, cheek: Plane) -> str:
    side = shape.rafter.stick.pose.words(shape.rafter.side)
    if cheek.line == NEAR:
        return "The set-back. It is the same in the fork, so that the sides come flush."
    return f"What the stick is over or under shows only outside it: the {side} is held."


def follows(shape: HeadShape, tape: Tape) -> str:
    """Whether a lap or a fork goes by the other's thickness as cut, in a sentence."""
    name = f"{shape.mate.stick.name}'s {'lap' if shape.cut == 'half lap' else 'tongue'}"
    as_cut = shape.as_cut.get("thickness")
    if as_cut is None:
        return f"Follows {name} as drawn; it has not been measured as cut."
    return f"Follows {name} as cut: {tape.text(as_cut)} thick."


def _reduction(shape: HeadShape, tape: Tape) -> tuple[Line, ...]:
    lost = shape.reduction
    if not lost.to:
        return ()
    marks = tuple(side_line(lost, axis) for axis in lost.to)
    if shape.stop.line != STOP:
        return marks
    says = Says(
        title="Reduction end line",
        why="As far back as the other goes in: beyond it the stick keeps its full size.",
        waste=f"Towards the {shape.rafter.stick.pose.words(shape.end)}, outside the inner timber.",
        setting=_angle(shape, shape.stop, tape),
    )
    return (_across(shape, shape.stop, says), *marks)
