"""What to do at a tenon besides striking lines: one figure to one task, so none can be missed."""

from benchmate.frame.practice import CHAINSAW, CHISEL, SAW, measure_task
from benchmate.frame.reduction import reduction_knife, reduction_tasks, unmeasured
from benchmate.joinery.tenon.flush import depths, loses_wood, only_outside, shouldered
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.measure.length import Length
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Asks, Beside, Reading, Size, Stage, Task
from benchmate.model.stick import axis_from, reference_for

AS_CUT = "as-cut"
"""The task after which a tenon's real sizes are known."""

LEAVE_THE_LINE = "Leave the line: what is left on can be pared, what is gone cannot be put back."

FROM_REFERENCE_SIDE = (
    "Sizes count from the near cheek and the reference edge. If one of those was overcut, "
    "move its line in the mortise as well."
)


def tasks(shape: TenonShape, allowance: Length, *, received: bool) -> tuple[Task, ...]:
    """Every task at the tenon, in the order it is done. `received` if a mortise follows it."""
    found = [
        measure_task(shape.stick, *shape.places),
        _knife(shape),
        *reduction_knife(shape.reduction),
        *_saw_shoulders(shape),
    ]
    if loses_wood(shape, shape.cheeks):
        found.append(_saw_cheeks(shape))
    if loses_wood(shape, shape.edges):
        found.append(_saw_edges(shape))
    found += reduction_tasks(shape.reduction)
    found += [_pare(shape), _as_cut(shape, allowance, received=received)]
    if allowance:
        found.append(_trim_end(shape, allowance))
    return tuple(found)


def _knife(shape: TenonShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the shoulder, hatch the waste",
        faces=(*shouldered(shape), shape.end),
        waste=f"Towards the {_end(shape)}, outside the tenon's own lines.",
        why="A knifed line stays crisp, and hatching on every face shows which side goes.",
        caution=only_outside(shape),
    )


def _saw_shoulders(shape: TenonShape) -> tuple[Task, ...]:
    return tuple(
        Task(
            id=f"saw-{face.value.replace(' ', '-')}",
            draws="shoulder",
            stage=Stage.CUT,
            title=f"Saw the shoulder, {shape.stick.pose.words(face)}",
            faces=(face,),
            readings=(Reading(value=depth, hook=shape.stick.pose.words(face), way="straight in"),),
            waste=f"Keep the kerf on the {_end(shape)} side of the knifed line.",
            why="Shoulders before cheeks. Stop at the depth: deeper weakens the tenon's root.",
            caution=f"{_follows_stick(shape, face)}{SAW}",
        )
        for face, depth in depths(shape).items()
        if depth
    )


def _follows_stick(shape: TenonShape, face: Face) -> str:
    """The caution for a depth from a far face on a stick nobody has measured there, or nothing."""
    return "" if face.is_reference else unmeasured(shape.stick, axis_from(face), shape.places)


def _saw_cheeks(shape: TenonShape) -> Task:
    edge = reference_for(shape.edges)
    return Task(
        id="saw-cheeks",
        stage=Stage.CUT,
        title="Cut the cheeks",
        faces=(shape.end, edge, edge.opposite),
        readings=(
            Reading(
                value=shape.thickness, hook=_near_cheek(shape), way="to the far cheek, left on"
            ),
        ),
        waste="Outside the cheek lines.",
        why=LEAVE_THE_LINE,
        caution=f"{SAW} {CHAINSAW}",
    )


def _saw_edges(shape: TenonShape) -> Task:
    cheek = reference_for(shape.cheeks)
    return Task(
        id="saw-edges",
        stage=Stage.CUT,
        title="Cut the narrow edges",
        faces=(shape.end, cheek, cheek.opposite),
        readings=(
            Reading(
                value=shape.width,
                hook=_near_edge(shape),
                way="to the other narrow edge, left on",
            ),
        ),
        waste="Outside the lines of the narrow edges.",
        why=LEAVE_THE_LINE,
        caution=SAW,
    )


def _pare(shape: TenonShape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the tenon, check it flat",
        faces=(shape.end,),
        readings=(Reading(value=shape.thickness, hook=_near_cheek(shape), way="to the far cheek"),),
        waste="Only what stands proud of the lines.",
        why="Flat and square to the reference faces: a proud spot holds the joint off.",
        caution=CHISEL,
    )


def sizes(shape: TenonShape, allowance: Length) -> tuple[Size, ...]:
    """What can be typed of the finished tenon."""
    return (
        Size("thickness", shape.thickness, "tenon thickness"),
        Size("width", shape.width, "tenon width"),
        Size("length", shape.length, f"tenon length to its end{' line' if allowance else ''}"),
    )


def _to_its_end(allowance: Length) -> str:
    return "to its end line, not the sawn end" if allowance else "to its end"


def _as_cut(shape: TenonShape, allowance: Length, *, received: bool) -> Task:
    return Task(
        id=AS_CUT,
        stage=Stage.AS_CUT,
        title="Measure the tenon as cut",
        faces=(shape.end,),
        readings=(
            Reading(value=shape.real("thickness"), hook=_near_cheek(shape), way="to the far cheek"),
            Reading(value=shape.real("width"), hook=_near_edge(shape), way="to the other edge"),
            Reading(value=shape.real("length"), hook="shoulder", way=_to_its_end(allowance)),
        ),
        why=(
            "The mortise is cut to the tenon that was really made."
            if received
            else "Whatever it goes into is cut to the tenon that was really made."
        ),
        caution=FROM_REFERENCE_SIDE,
        asks=Asks.AS_CUT,
        lasting=False,
    )


def _trim_end(shape: TenonShape, allowance: Length) -> Task:
    return Task(
        id="trim-end",
        stage=Stage.FINISH,
        title="Trim the tenon's end",
        draws="tenon-end",
        faces=(*LONG_FACES, shape.end),
        readings=(
            Reading(
                value=shape.length,
                hook=f"{_end(shape)} shoulder",
                way=f"towards the {_end(shape)}, squared round the tenon",
            ),
        ),
        beside=(Beside(allowance, "to come off"),),
        waste=f"Towards the {_end(shape)}, beyond the tenon end line.",
        why="Once the joint has been fitted the allowance is no longer needed.",
        caution=SAW,
    )


def _end(shape: TenonShape) -> str:
    return shape.stick.pose.words(shape.end)


def _near_cheek(shape: TenonShape) -> str:
    """What the tenon's thickness is measured from: the face itself where the tenon is barefaced."""
    face = shape.stick.pose.words(reference_for(shape.cheeks))
    return f"near cheek, by the {face}" if shape.near else face


def _near_edge(shape: TenonShape) -> str:
    """What the tenon's width is measured from: the face itself where that edge is not cut back."""
    face = shape.stick.pose.words(reference_for(shape.edges))
    return f"narrow edge by the {face}" if shape.edge else face
