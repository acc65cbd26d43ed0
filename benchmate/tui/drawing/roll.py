"""What is drawn of a timber on the horses: the face in hand, and which faces lie beside it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.tui.drawing.face import top_face
from benchmate.tui.drawing.tags import SetOff

if TYPE_CHECKING:
    from collections.abc import Mapping

    from benchmate.layout.step import Layout, Step
    from benchmate.model.directions import Face, Pose
    from benchmate.model.feature import Reading
    from benchmate.model.progress import Blemish
    from benchmate.tui.drawing.tags import Tag


@dataclass(frozen=True, slots=True, kw_only=True)
class Roll:
    """What to draw: a step of a layout, the face in hand, and how much of the length.

    `best` is a face that shows the line in hand. `tags` are the figures along the edges of each
    face, `crown` the face that the crown goes to, `blemishes` those of the stick.
    """

    layout: Layout
    step: Step
    face: Face
    best: Face
    whole: bool
    reading: Reading | None
    figure: str
    tags: Mapping[Face, tuple[Tag, ...]]
    crown: Face | None
    blemishes: tuple[Blemish, ...] = ()


def face_below(pose: Pose, face: Face) -> Face:
    """The long face drawn below another: it comes up as the timber is rolled away."""
    return top_face(pose, face).opposite


def in_order(pose: Pose, face: Face) -> tuple[Face, Face, Face, Face]:
    """The face drawn above one, that one, the face below it, and the one across from it."""
    below = face_below(pose, face)
    return below.opposite, face, below, face.opposite


def beside(roll: Roll, face: Face) -> tuple[tuple[Tag, ...], tuple[Tag, ...]]:
    """The figures that stand above a face, and those of slants that are set off on its lower edge.

    A figure never stands on an edge where its line comes out at another distance.
    """
    reference_up = top_face(roll.layout.stick.pose, face).is_reference
    lower = SetOff.FAR if reference_up else SetOff.REFERENCE
    tags = roll.tags.get(face, ())
    above = tuple(tag for tag in tags if tag.edge is not lower)
    return above, tuple(tag for tag in tags if tag.edge is lower)
