"""What to do at a tenon besides striking lines: one figure to one task, so none can be missed."""

from benchmate.frame.cheeks import SHOULDERS_FIRST, near_edge_words, saw_edges, saw_shoulder
from benchmate.frame.end_tasks import FOR_THE_MORTISE, knife_shoulder, measure_finished
from benchmate.frame.practice import CHAINSAW, CHISEL, LEAVE_THE_LINE, SAW, measure_task
from benchmate.frame.reduction import reduction_knife, reduction_tasks
from benchmate.joinery.tenon.flush import depths, loses_wood, only_outside, shouldered
from benchmate.joinery.tenon.past import draw_ends
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.joinery.tenon.through import end_beside
from benchmate.measure.length import Length
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Beside, Reading, Size, Stage, Task
from benchmate.model.stick import reference_for

BOTH_CHEEKS = "cheeks"


def tasks(shape: TenonShape, allowance: Length, *, received: bool) -> tuple[Task, ...]:
    """Every task at the tenon, in the order it is done. `received` if a mortise follows it."""
    found = [
        measure_task(shape.stick, *shape.places),
        *draw_ends(shape),
        _knife(shape),
        *reduction_knife(shape.reduction),
        *(
            saw_shoulder(shape.between, face, depth, before=SHOULDERS_FIRST)
            for face, depth in depths(shape).items()
            if depth
        ),
    ]
    if loses_wood(shape, shape.cheeks):
        found.append(_saw_cheeks(shape))
    if loses_wood(shape, shape.edges):
        cheek = reference_for(shape.cheeks)
        found.append(saw_edges(shape.end, cheek, shape.width, near_edge(shape)))
    found += reduction_tasks(shape.reduction)
    found += [_pare(shape), _as_cut(shape, allowance, received=received)]
    if allowance:
        found.append(_trim_end(shape, allowance))
    return tuple(found)


def _knife(shape: TenonShape) -> Task:
    return knife_shoulder(shape, shouldered(shape), caution=only_outside(shape))


def _saw_cheeks(shape: TenonShape) -> Task:
    edge, cheeks = reference_for(shape.edges), _cheeks_to_cut(shape)
    return Task(
        id="saw-cheeks",
        stage=Stage.CUT,
        title=f"Cut the {cheeks}",
        faces=(shape.end, edge, edge.opposite),
        readings=(
            Reading(
                value=shape.thickness,
                hook=near_cheek(shape),
                way=f"to the {far_cheek(shape)}, left on",
            ),
        ),
        waste=f"Outside the {'cheek lines' if cheeks == BOTH_CHEEKS else f'{cheeks} line'}.",
        why=LEAVE_THE_LINE,
        caution=f"{SAW} {CHAINSAW}",
    )


def _pare(shape: TenonShape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the tenon, check it flat",
        faces=(shape.end,),
        readings=(
            Reading(
                value=shape.thickness,
                hook=near_cheek(shape),
                way=f"to the {far_cheek(shape)}",
            ),
        ),
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
    return measure_finished(
        "the tenon",
        (shape.end,),
        (
            Reading(
                value=shape.real("thickness"),
                hook=near_cheek(shape),
                way=f"to the {far_cheek(shape)}",
            ),
            Reading(value=shape.real("width"), hook=near_edge(shape), way="to the other edge"),
            Reading(value=shape.real("length"), hook="shoulder", way=_to_its_end(allowance)),
        ),
        why=(
            FOR_THE_MORTISE
            if received
            else "Whatever it goes into is cut to the tenon that was really made."
        ),
        caution=counts_from(shape),
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
        beside=(Beside(allowance, "to come off"), *end_beside(shape.passage, shape.length)),
        waste=f"Towards the {_end(shape)}, beyond the tenon end line.",
        why="Once the joint has been fitted the allowance is no longer needed.",
        caution=SAW,
    )


def _end(shape: TenonShape) -> str:
    return shape.stick.pose.words(shape.end)


def near_cheek(shape: TenonShape) -> str:
    """What the tenon's thickness is measured from: the face itself where the tenon is barefaced."""
    return shape.between.near_words


def far_cheek(shape: TenonShape) -> str:
    """What the tenon's thickness is measured to: the far face where the tenon runs out to it."""
    far = reference_for(shape.cheeks).opposite
    return "far cheek" if depths(shape)[far] else shape.stick.pose.words(far)


def _cheeks_to_cut(shape: TenonShape) -> str:
    """Both cheeks, or the one that loses wood on a barefaced tenon."""
    near, found = reference_for(shape.cheeks), depths(shape)
    if found[near] and found[near.opposite]:
        return BOTH_CHEEKS
    return "near cheek" if found[near] else "far cheek"


def counts_from(shape: TenonShape) -> str:
    """What the as-cut sizes count from, and what to do if that itself was overcut."""
    words = shape.stick.pose.words
    sides = (("near cheek", shape.near, shape.cheeks), ("reference edge", shape.edge, shape.edges))
    counted = " and the ".join(
        name if cut_back else words(reference_for(axis)) for name, cut_back, axis in sides
    )
    overcut = " or the ".join(name for name, cut_back, _ in sides if cut_back)
    if not overcut:
        return f"Sizes count from the {counted}."
    return (
        f"Sizes count from the {counted}. If the {overcut} was overcut, move its line in the "
        "mortise as well."
    )


def near_edge(shape: TenonShape) -> str:
    """What the tenon's width is measured from: the face itself where that edge is not cut back."""
    return near_edge_words(shape.stick, shape.edges, shape.edge)
