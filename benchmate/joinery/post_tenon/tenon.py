"""The tenon's own side: what comes off the post, and the lines and tasks that shape it."""

from benchmate.frame.practice import CHAINSAW, CHISEL, SAW, measure_task
from benchmate.joinery.post_tenon.shape import TenonShape
from benchmate.measure.length import Length
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Asks, Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import reference_for


def cuts(shape: TenonShape, allowance: Length) -> tuple[Cut, ...]:
    """The wood that comes off round the tenon, one cut to each side that loses any."""
    beyond = below if shape.end is Face.REFERENCE_END else above
    shoulder = beyond(Axis.ALONG, shape.shoulder, "shoulder")
    sides: list[Plane] = []
    if shape.near:
        sides.append(below(shape.cheeks, shape.near, "near-cheek"))
    sides.append(above(shape.cheeks, shape.far, "far-cheek"))
    if shape.edge:
        sides.append(below(shape.edges, shape.edge, "reference-edge"))
    if shape.far_edge_struck:
        sides.append(above(shape.edges, shape.far_edge, "far-edge"))
    around = tuple(Cut((shoulder, side)) for side in sides)
    if not allowance:
        return around
    end = beyond(Axis.ALONG, shape.along(shape.length), "tenon-end")
    return (*around, Cut((end,)))


def lines(shape: TenonShape, allowance: Length) -> tuple[Line, ...]:
    """The lines to strike, shoulder first."""
    found = [_shoulder(shape)]
    if shape.near:
        found.append(_near_cheek(shape))
    found.append(_far_cheek(shape))
    if shape.edge:
        found.append(_reference_edge(shape))
    if shape.far_edge_struck:
        found.append(_far_edge(shape))
    if allowance:
        found.append(_tenon_end(shape, allowance))
    return tuple(found)


def _shoulder(shape: TenonShape) -> Line:
    reference = shape.end is Face.REFERENCE_END
    return Line(
        id="shoulder",
        title="Shoulder line",
        axis=Axis.ALONG,
        at=shape.shoulder,
        beside=(Beside(shape.length, "tenon beyond it"),),
        why=(
            "The timber bears here. Square it round from the reference arris, then measure "
            "everything from this line."
            if reference
            else "The timber bears here: shoulder to shoulder is the length that counts."
        ),
        caution="" if reference else "Shoulder to shoulder, not overall: the tenon lies beyond.",
    )


def _near_cheek(shape: TenonShape) -> Line:
    return Line(
        id="near-cheek",
        title="Near cheek line",
        axis=shape.cheeks,
        at=shape.near,
        why="The set-back. It is the same in the mortise, so the faces come flush.",
    )


def _far_cheek(shape: TenonShape) -> Line:
    far = _words(shape, reference_for(shape.cheeks).opposite)
    return Line(
        id="far-cheek",
        title="Far cheek line",
        axis=shape.cheeks,
        at=shape.far,
        beside=(
            Beside(shape.thickness, "tenon thickness"),
            Beside(shape.real_cheeks - shape.far, f"to come off the {far}"),
        ),
        why=(
            "Set-back and thickness together, from the reference face. What the stick is over or "
            "under shows only on the far side."
        ),
        caution=f"Never measure this from the {far}.",
    )


def _reference_edge(shape: TenonShape) -> Line:
    face = _words(shape, reference_for(shape.edges))
    return Line(
        id="reference-edge",
        title=f"Relief line, {face.removesuffix(' face')} side",
        axis=shape.edges,
        at=shape.edge,
        beside=(Beside(shape.width, "of tenon left"),),
        why="The narrow edge is cut back so that it is hidden or clears.",
    )


def _far_edge(shape: TenonShape) -> Line:
    far = _words(shape, reference_for(shape.edges).opposite)
    return Line(
        id="far-edge",
        title=f"Relief line, {far.removesuffix(' face')} side",
        axis=shape.edges,
        at=shape.far_edge,
        beside=(
            Beside(shape.real_edges - shape.far_edge, f"to come off the {far}"),
            Beside(shape.width, "of tenon left"),
        ),
        why="The far narrow edge is cut back; its line still comes from the reference face.",
        caution=f"Never measure this from the {far}.",
    )


def _tenon_end(shape: TenonShape, allowance: Length) -> Line:
    return Line(
        id="tenon-end",
        title="Tenon end line",
        axis=Axis.ALONG,
        at=shape.along(shape.length),
        beside=(Beside(allowance, "left on beyond it"),),
        why="The tenon's own end. Leave the allowance on until the joint has been fitted.",
        caution="Do not saw this line yet.",
    )


def tasks(shape: TenonShape, allowance: Length) -> tuple[Task, ...]:
    """What to do at the tenon besides striking lines."""
    found = [
        measure_task(shape.stick, *shape.places),
        _knife(shape),
        _saw_shoulders(shape),
        _saw_cheeks(shape),
        _pare(shape),
        _as_cut(shape),
    ]
    if allowance:
        found.append(_trim_end(shape, allowance))
    return tuple(found)


def _knife(shape: TenonShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the shoulder, hatch the waste",
        faces=(*LONG_FACES, shape.end),
        waste=f"Towards the {_end(shape)}, outside the cheek and relief lines.",
        why="A knifed line stays crisp, and hatching on every face shows which side goes.",
    )


def _saw_shoulders(shape: TenonShape) -> Task:
    depths = _depths(shape)
    return Task(
        id="saw-shoulders",
        stage=Stage.CUT,
        title="Saw the shoulders",
        faces=tuple(face for face in LONG_FACES if depths[face]),
        readings=tuple(
            Reading(value=depth, hook=_words(shape, face), way="deep")
            for face, depth in depths.items()
            if depth
        ),
        waste=f"Keep the kerf on the {_end(shape)} side of the knifed line.",
        why="Shoulders before cheeks. Stop at each depth: deeper weakens the tenon's root.",
        caution=SAW,
    )


def _depths(shape: TenonShape) -> dict[Face, Length]:
    """How deep the saw goes in from each face: nothing where the tenon runs out to it."""
    cheek, edge = reference_for(shape.cheeks), reference_for(shape.edges)
    return {
        cheek: shape.near,
        cheek.opposite: shape.real_cheeks - shape.far,
        edge: shape.edge,
        edge.opposite: shape.real_edges - shape.far_edge,
    }


def _saw_cheeks(shape: TenonShape) -> Task:
    return Task(
        id="saw-cheeks",
        stage=Stage.CUT,
        title="Cut the cheeks and edges to the lines",
        faces=(shape.end, reference_for(shape.edges), reference_for(shape.edges).opposite),
        readings=(
            Reading(value=shape.thickness, hook="near cheek", way="to the far cheek, to be left"),
            Reading(value=shape.width, hook="narrow edge", way="to narrow edge, to be left"),
        ),
        waste="Outside the cheek and relief lines; the middle is the tenon.",
        why="Leave the line: what is left on can be pared, what is gone cannot be put back.",
        caution=f"{SAW} {CHAINSAW}",
    )


def _pare(shape: TenonShape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the tenon, check it flat",
        faces=(shape.end,),
        readings=(Reading(value=shape.thickness, hook="near cheek", way="to the far cheek"),),
        waste="Only what stands proud of the lines.",
        why="Flat and square to the reference faces: a proud spot holds the joint off.",
        caution=CHISEL,
    )


def _as_cut(shape: TenonShape) -> Task:
    return Task(
        id="as-cut",
        stage=Stage.AS_CUT,
        title="Measure the tenon as cut",
        faces=(shape.end,),
        readings=(
            Reading(value=shape.real("thickness"), hook="near cheek", way="to the far cheek"),
            Reading(value=shape.real("width"), hook="narrow edge", way="to narrow edge"),
            Reading(value=shape.real("length"), hook="shoulder", way="to the tenon's end"),
        ),
        why="The mortise is cut to the tenon that was really made.",
        asks=Asks.TENON,
        lasting=False,
    )


def _trim_end(shape: TenonShape, allowance: Length) -> Task:
    return Task(
        id="trim-end",
        stage=Stage.FINISH,
        title="Trim the tenon's end",
        faces=(shape.end,),
        readings=(Reading(value=allowance, hook=_end(shape), way="back to the tenon end line"),),
        waste=f"Towards the {_end(shape)}, beyond the tenon end line.",
        why="Once the joint has been fitted the allowance is no longer needed.",
        caution=SAW,
    )


def _end(shape: TenonShape) -> str:
    return shape.stick.pose.words(shape.end)


def _words(shape: TenonShape, face: Face) -> str:
    return shape.stick.pose.words(face)
