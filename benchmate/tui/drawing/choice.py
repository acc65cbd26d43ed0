"""Which side of a timber to show for a step."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.layout.outlines import outlines
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.stick import axis_from

if TYPE_CHECKING:
    from benchmate.layout.step import Layout, Step


def best_face(layout: Layout, step: Step) -> Face | None:
    """The side to show first; None for a step done on no side in particular.

    A line that slants is shown on a face it slants across. Otherwise a long face along whose arris
    the figure is hooked on shows line and hook at once; of two, the one that keeps more of its wood
    shows what is to be left.
    """
    faces = faces_to_show(step)
    slanted = [face for face in faces if _slants_on(layout, step, face)]
    if slanted:
        return min(slanted, key=lambda face: _waste_on(layout, step, face))
    hooks = {reading.hook for reading in step.readings}
    hooked = [face for face in LONG_FACES if layout.stick.pose.words(face) in hooks]
    beside = [
        face
        for face in faces
        if not face.is_end and any(face not in (hook, hook.opposite) for hook in hooked)
    ]
    if beside:
        return min(beside, key=lambda face: _waste_on(layout, step, face))
    return next(iter(faces), None)


def _slants_on(layout: Layout, step: Step, face: Face) -> bool:
    """Whether the line a step draws slants as that face is looked at."""
    feature = layout.feature(step.feature)
    lines = feature.lines if feature else ()
    slants = (line.slant for line in lines if line.id == step.draws and line.slant)
    return not face.is_end and any(axis_from(face) is not slant.axis for slant in slants)


def _waste_on(layout: Layout, step: Step, face: Face) -> int:
    feature = layout.feature(step.feature)
    if feature is None:
        return 0
    return sum(shape.double_area for shape in outlines(feature, layout.stick, face))


def faces_to_show(step: Step) -> tuple[Face, ...]:
    """The sides a step is done on: long faces as they come up in rolling, then ends."""
    return tuple(
        face for face in (*LONG_FACES, Face.REFERENCE_END, Face.FAR_END) if face in step.faces
    )


def best_end(layout: Layout, step: Step) -> Face:
    """The end to show beside a face: one the step is done on, or the one nearer to its work."""
    for face in step.faces:
        if face.is_end:
            return face
    feature = layout.feature(step.feature)
    stick = layout.stick
    far = feature is not None and feature.at + feature.at > stick.start + stick.finish
    return Face.FAR_END if far else Face.REFERENCE_END
