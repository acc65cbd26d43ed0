"""A mark in few words: faces, hooks and waste sides as short as they stay plain.

How it works
1. A long face goes by its first letter, `top` or `under`; an end by its name.
2. What can only be so is left out: from a reference face the way is in, from the squared end and
   from the reference shoulder it is towards the far end. Each sheet says so in one line.
3. Whatever is not said in one of the usual ways is said in full.
"""

import re

from benchmate.layout.step import Step
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Direction, Face, Pose
from benchmate.model.feature import Beside, Reading
from benchmate.model.stick import Stick

FIGURE = re.compile(
    r"""-?(?:\d+'\ )?\d+(?:-\d+/\d+|/\d+)?"[+-]? | -?\d+(?:\.\d+)?\ mm\b[+-]?""", re.VERBOSE
)
"""A figure as the tape shows it: half of one is a wrong figure, so none is ever broken."""

HOW_TO_READ = (
    "N, E, S, W, top, under: faces. Figures run in from the face, or on to the far end, unless it "
    "says so; none is chained. Back: from the overall line."
)
"""What every form of a timber's sheet says of its figures."""


def short_face(pose: Pose, face: Face) -> str:
    """`S`, `top`, `under`, `foot end`, `west end`."""
    direction = pose.direction(face)
    if face.is_end:
        return f"{pose.words(face).removesuffix(' end')} end"
    if direction in (Direction.UP, Direction.DOWN):
        return "top" if direction is Direction.UP else "under"
    return direction.name[0]


def short_faces(pose: Pose, faces: tuple[Face, ...]) -> str:
    """Faces in their order: `all`, `S, W, foot end`."""
    long_faces = [face for face in faces if not face.is_end]
    words = (
        ["all"]
        if set(long_faces) == set(LONG_FACES)
        else [short_face(pose, face) for face in long_faces]
    )
    return ", ".join([*words, *(short_face(pose, face) for face in faces if face.is_end)])


def from_words(stick: Stick, reading: Reading) -> str:
    """What to hook on, and which way to go where that could be taken wrong."""
    way = reading.way
    for usual in _usual_ways(stick, reading.hook):
        if way == usual:
            way = ""
        elif way.startswith(f"{usual}, "):
            way = way.removeprefix(f"{usual}, ")
    return ", ".join(filter(None, (f"from {short_hook(stick, reading.hook)}", way)))


def short_hook(stick: Stick, hook: str) -> str:
    """A face by its letter, a shoulder without its line; all else as it is called."""
    for face in LONG_FACES:
        if hook == stick.pose.words(face):
            return short_face(stick.pose, face)
    return hook.removesuffix(" line") if hook.endswith(" shoulder line") else hook


def _usual_ways(stick: Stick, hook: str) -> tuple[str, ...]:
    words = stick.pose.words
    for face in (Face.FIRST, Face.SECOND):
        if hook == words(face):
            across = words(face.opposite)
            return (f"in towards the {across}", f"across to the {across}")
    start = words(Face.REFERENCE_END)
    if hook in (f"squared {start}", f"{start} shoulder line"):
        return (f"towards the {words(Face.FAR_END)}",)
    return ()


def plain_waste(step: Step) -> bool:
    """Whether the waste is told by naming a side, or there is none to tell."""
    return not step.waste or step.waste == f"Towards the {step.waste_side}."


def waste_words(stick: Stick, step: Step) -> str:
    """The side that goes, `N`, `head`; empty where it takes more words than that."""
    if not step.waste or not plain_waste(step):
        return ""
    sides = (face for face in Face if stick.pose.words(face) == step.waste_side)
    return next((_side(stick, face) for face in sides), step.waste_side)


def _side(stick: Stick, face: Face) -> str:
    return stick.pose.words(face) if face.is_end else short_face(stick.pose, face)


def beside_words(tape: Tape, beside: Beside) -> str:
    """A figure told beside the mark's own."""
    return f"{tape.text(beside.value)} {beside.words}"
