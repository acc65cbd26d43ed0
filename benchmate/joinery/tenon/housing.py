"""The housing round a mortise: the recess that takes the whole end of the tenoned timber.

Its floor is where the shoulder bears. It goes the joint's own `housing` into the framed face; on a
far face under square rule the stick's excess over its inner timber comes off as well, so the floor
lies as far from the reference face on every stick.
"""

from benchmate.frame.practice import CHISEL, SAW
from benchmate.frame.reduction import lies_in_words, measured_words, unmeasured
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import reference_for

INSIDE = "Inside the housing's lines only."

FLOOR, START, FINISH, NEAR, FAR = (
    f"housing-{name}" for name in ("floor", "start", "finish", "near", "far")
)


def housing_cuts(shape: MortiseShape) -> tuple[Cut, ...]:
    """The recess: a box open at the face it enters, and at every side the end runs out to."""
    if not shape.housed:
        return ()
    bound = below if shape.entry.is_reference else above
    return (Cut((bound(shape.into, shape.seat, FLOOR), *_walls(shape).values())),)


def _walls(shape: MortiseShape) -> dict[str, Plane]:
    """The planes of the sides it is closed at, by line."""
    (start, finish), (near, far) = shape.end_along, shape.end_across
    stick = shape.stick
    walls = (
        (start > stick.start, above(Axis.ALONG, start, START)),
        (finish < stick.finish, below(Axis.ALONG, finish, FINISH)),
        (near > ZERO, above(shape.sides, near, NEAR)),
        (far < shape.framed_sides, below(shape.sides, far, FAR)),
    )
    return {str(plane.line): plane for closed, plane in walls if closed}


def housing_lines(shape: MortiseShape) -> tuple[Line, ...]:
    """Its sides, then its floor."""
    if not shape.housed:
        return ()
    walls = _walls(shape)
    sides = (
        (START, "Housing start line", Axis.ALONG, shape.end_along[0]),
        (FINISH, "Housing finish line", Axis.ALONG, shape.end_along[1]),
        (NEAR, "Housing near line", shape.sides, shape.end_across[0]),
        (FAR, "Housing far line", shape.sides, shape.end_across[1]),
    )
    found = (_side(shape, *side) for side in sides if side[0] in walls)
    return (*found, _floor(shape, blind=len(walls) == len(sides)))


def _side(shape: MortiseShape, name: str, title: str, axis: Axis, at: Length) -> Line:
    far = shape.stick.pose.words(reference_for(shape.sides).opposite)
    size = shape.end_along if axis is Axis.ALONG else shape.end_across
    return Line(
        id=name,
        title=title,
        axis=axis,
        at=at,
        beside=(Beside(size[1] - size[0], f"of {shape.tenon.stick.name} goes in"),),
        why=f"The whole end of {shape.tenon.stick.name} goes in. {_how_wide(shape, axis)}",
        caution=f"Never measure this from the {far}." if name == FAR else "",
    )


def _how_wide(shape: MortiseShape, axis: Axis) -> str:
    """Whether the size of the end that goes in is known, in a sentence."""
    tenon = shape.tenon
    measured = tenon.edges if axis is Axis.ALONG else tenon.cheeks
    return lies_in_words(tenon.stick, measured, tenon.places)


def _floor(shape: MortiseShape, *, blind: bool) -> Line:
    """The floor: struck on the sides it runs out to, or a depth where it is closed all round."""
    entry, reference = shape.entry, shape.stick.pose.words(reference_for(shape.into))
    words = shape.stick.pose.words(entry)
    beside = Beside(shape.recess, f"deep from the {words}")
    if blind:
        beside = Beside(shape.seat, f"from the {reference} to the floor here")
    return Line(
        id=FLOOR,
        title="Housing floor",
        axis=shape.into,
        at=shape.seat,
        faces=(entry,) if blind else (),
        readings=(_deep(shape),) if blind or entry.is_reference else (),
        beside=() if entry.is_reference else (beside,),
        waste=f"Towards the {words}, inside the housing's lines only.",
        why=f"The shoulder bears here. {_how_deep(shape)}",
        caution="" if entry.is_reference else _what_holds(shape, reference),
    )


def _how_deep(shape: MortiseShape) -> str:
    if shape.entry.is_reference:
        return "Shoulder to shoulder already counts it."
    return measured_words(shape.stick, shape.into, (shape.feature,))


def _what_holds(shape: MortiseShape, reference: str) -> str:
    """What stays the same on an odd stick: by square rule the floor's place, else its depth."""
    if shape.stick.inner is not None:
        return f"As far from the {reference} on every stick; only the depth differs."
    return f"As deep on every stick; how far from the {reference} differs."


def _open_faces(shape: MortiseShape) -> tuple[Face, ...]:
    """The faces the recess comes out on: where it enters, and each side it is open at."""
    near = reference_for(shape.sides)
    closed = {START: Face.REFERENCE_END, FINISH: Face.FAR_END, NEAR: near, FAR: near.opposite}
    walls = _walls(shape)
    found = {shape.entry, *(face for line, face in closed.items() if line not in walls)}
    return tuple(face for face in (*LONG_FACES, Face.REFERENCE_END, Face.FAR_END) if face in found)


def housing_tasks(shape: MortiseShape) -> tuple[Task, ...]:
    """Knife it, cut it, try its floor, strike the mortise on it: all before boring."""
    if not shape.housed:
        return ()
    return (_knife(shape), _cut(shape), _pare(shape), _strike_anew(shape))


def _knife(shape: MortiseShape) -> Task:
    return Task(
        id="knife-housing",
        stage=Stage.KNIFE,
        title="Knife the housing, hatch the inside",
        faces=_open_faces(shape),
        waste=INSIDE,
        why="Its edges show round the other timber: crisp lines make a tight housing.",
    )


def _cut(shape: MortiseShape) -> Task:
    follows = shape.stick.inner is not None and not shape.entry.is_reference
    caution = unmeasured(shape.stick, shape.into, (shape.feature,)) if follows else ""
    return Task(
        id="cut-housing",
        stage=Stage.CUT,
        title="Saw and chop the housing to its floor",
        draws=FLOOR,
        faces=_open_faces(shape),
        readings=(_deep(shape),),
        waste=INSIDE,
        why="Leave the floor full: it is pared flat next.",
        caution=f"{caution}{SAW} {CHISEL}",
    )


def _pare(shape: MortiseShape) -> Task:
    counts = "" if shape.through else ", and the mortise's depth counts from here"
    return Task(
        id="pare-housing",
        stage=Stage.CUT,
        title="Pare the housing floor flat, try its depth",
        draws=FLOOR,
        faces=_open_faces(shape),
        readings=(_deep(shape),),
        waste=INSIDE,
        why=f"The shoulder bears on all of it{counts}.",
        caution=CHISEL,
    )


def _strike_anew(shape: MortiseShape) -> Task:
    return Task(
        id="strike-floor",
        stage=Stage.CUT,
        title="Strike the mortise anew on the housing floor, knife its ends",
        readings=_mortise_readings(shape),
        waste="Inside the four lines only.",
        why=(
            "Cutting the housing took its lines away. Measure each as it was first struck, never "
            "from the housing's edges."
        ),
    )


def _mortise_readings(shape: MortiseShape) -> tuple[Reading, ...]:
    """The mortise's four lines, each from where it was first struck."""
    words = shape.stick.pose.words
    end, far_end = words(Face.REFERENCE_END), words(Face.FAR_END)
    across = words(reference_for(shape.sides))
    along = f"{end} shoulder line" if shape.stick.near else f"squared {end}"
    lines = (
        ("start", along, far_end, shape.along[0]),
        ("finish", along, far_end, shape.along[1]),
        ("near-side", across, words(reference_for(shape.sides).opposite), shape.across[0]),
        ("far-side", across, words(reference_for(shape.sides).opposite), shape.across[1]),
    )
    return tuple(
        Reading(
            value=at,
            hook=hook,
            way=f"towards the {way}, {name.replace('-', ' ')} line",
            key=f"{name} of the mortise",
        )
        for name, hook, way, at in lines
    )


def _deep(shape: MortiseShape) -> Reading:
    words = shape.stick.pose.words(shape.entry)
    return Reading(value=shape.recess, hook=words, way="straight in, to the housing floor")
