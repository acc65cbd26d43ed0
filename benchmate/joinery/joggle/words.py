"""What is said of an abutment on both its sides, and how a square is set for it."""

from benchmate.frame.settings import plane_setting, rake_setting
from benchmate.joinery.joggle.shape import EndShape
from benchmate.measure.printing import Tape
from benchmate.model.setting import Setting
from benchmate.model.solids import Plane

ENGINEER = (
    "Notch and wood left beyond it take the thrust: how deep, and how much is left, the engineer "
    "decides."
)
"""Designing the heel is an engineer's part (trade notes 2.7 and 6): no figure here is a rule."""

WHOLE_END = "The whole end bears here, not the tenon alone"
"""A published rule for rafters on a king post's joggle (trade notes 2.7, Axehandle)."""

_LOOKS = {
    "bisecting": "Half-way between square to the face and square to the rake: it halves the angle.",
    "square to the face": "Square to the face it goes into.",
    "square to the rake": "Square to its own timber.",
}
"""How each choice looks, in words."""

_DISPUTED = (
    "Framers are told to make abutments square to the thrust, but published notes on struts call "
    "this way wrong: square to the face, or halving the angle."
)
"""Trade notes 2.1 (Rogers-rules) against 2.7 (Strut, Rivington-strut)."""


def looks_words(shape: EndShape) -> str:
    """How the abutment looks, in a sentence, and a second one where the trade disagrees."""
    disputed = f" {_DISPUTED}" if shape.looks == "square to the rake" else ""
    return f"{_LOOKS[shape.looks]}{disputed}"


def face_setting(shape: EndShape, tape: Tape) -> Setting | None:
    """How to set the square and saw for a line parallel to the face the end goes into."""
    if shape.into.incline is not None:
        return plane_setting(shape.stands.face, shape.plumb, tape)
    return rake_setting(shape.rake.run, shape.rake.rise, tape, plumb=shape.into.upright)


def end_setting(shape: EndShape, plane: Plane, tape: Tape) -> Setting | None:
    """How to set the square and saw on the end itself for its abutment or its sole."""
    return plane_setting(plane, shape.plumb, tape)
