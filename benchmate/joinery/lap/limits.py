"""How far the lines across a lap run: a knife taken past them cuts into what stays."""

from collections.abc import Iterator

from benchmate.joinery.lap.shape import Half
from benchmate.joinery.lap.telling import ledge_title
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.stick import reference_for


def limits(half: Half) -> tuple[str, ...]:
    """The cautions for the lines that are struck across: where each face's line stops."""
    return (*_beside(half), *_flush(half))


def slot_limit(half: Half) -> str:
    """Where a slot's lines stop on the two faces across: deeper than the bed, at its own roof."""
    return f"The slot's lines stop at the {ledge_title(half)}." if half.slot else ""


def _beside(half: Half) -> Iterator[str]:
    """On the two faces across: down to the bed, or along a flank to the other timber's face."""
    words = half.stick.pose.words
    near = reference_for(half.lie.wide)
    stops: dict[str, list[str]] = {}
    for face in (near, near.opposite):
        stop = _stop(half, face)
        if stop:
            stops.setdefault(stop, []).append(words(face))
    for stop, faces in stops.items():
        yield (
            f"Knife the {' and the '.join(faces)} only from the {words(half.cut_face)} to the "
            f"{stop}."
        )


def _stop(half: Half, face: Face) -> str:
    """What the line on one face stops at; nothing where it runs right across or is not struck."""
    if half.tail is not None and face in half.tail.flanks:
        return ledge_title(half) if half.ledge is not None else ""
    if half.depth <= ZERO:
        return ""
    return "lap line" if half.end is not None else "notch floor line"


def _flush(half: Half) -> Iterator[str]:
    """On the faces that a tail runs out to, only beside it: across, the cut would sever it."""
    if half.tail is None:
        return
    words = half.stick.pose.words
    faces = []
    if half.depth <= ZERO:
        faces.append(half.cut_face)
    if half.ledge is None:
        faces.append(half.cut_face.opposite)
    for face in faces:
        yield f"Knife the {words(face)} only outside the flank lines: the tail runs out to it."
