"""Where on a drawn side a reading starts: the place its hook names."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.stick import axis_from

if TYPE_CHECKING:
    from benchmate.model.stick import Stick
    from benchmate.tui.drawing.scene import Mark, Scene


def edge_faces(drawn: Scene) -> tuple[Face, Face]:
    """The faces along the two edges of a long face: the reference face, and the one across."""
    first = axis_from(drawn.face) is not axis_from(Face.FIRST)
    reference = Face.FIRST if first else Face.SECOND
    return reference, reference.opposite


def datum_along(drawn: Scene) -> int | None:
    """Where along the timber the reading starts; None if it starts nowhere along it."""
    return None if drawn.reading is None else hook_along(drawn.stick, drawn.reading.hook)


def hook_along(stick: Stick, hook: str) -> int | None:
    """Where along a stick a hook lies, in nanometres; None for one that is not along it."""
    end = stick.pose.words(Face.REFERENCE_END)
    far = stick.pose.words(Face.FAR_END)
    places = {
        f"squared {end}": stick.start,
        f"{end} shoulder line": ZERO,
        f"{far} shoulder line": stick.body,
        f"rough {end}": stick.start - stick.trim,
        far: stick.finish,
    }
    found = places.get(hook)
    return None if found is None else found.nm


def datum_across(drawn: Scene, mark: Mark) -> int | None:
    """The edge a line's depth is measured in from; None if from neither edge of this face.

    A gauged line starts at its own arris, which lies where its waste does. One that slants without
    an axis is set off from another line.
    """
    if drawn.line is None or drawn.reading is None:
        return None
    edges = drawn.low[1], drawn.high[1]
    if drawn.line.axis is None and drawn.line.slant is not None:
        return None
    if drawn.line.axis is None:
        return edges[mark.waste[1] > 0]
    words = (drawn.stick.pose.words(face) for face in edge_faces(drawn))
    found = (edge for edge, word in zip(edges, words, strict=True) if word == drawn.reading.hook)
    return next(found, None)
