"""A girt's end in a post where a rail is lapped over the same spot."""

from benchmate.frame.frame import Frame
from benchmate.joinery.lap.record import LapJoint
from tests.builders import frame, timber
from tests.joinery.tenon.girts import NONE, Words, girt_through

RAIL: Words = {
    "kind": "rail",
    "section": "12 x 3",
    "first_face": "up",
    "second_face": "west",
    "reference_end": "south",
    "length": None,
    "at": {"east": "8 - 1/2", "up": "4' 2"},
    "reference_end_at": "-2'",
    "far_end_at": "6'",
}

LAP: Words = {
    "id": "rail-lap",
    "family": "lap",
    "timber": "rail",
    "into": "post",
    "side": "east",
}


def notched_girt(joint: Words = NONE) -> Frame:
    """The post and girt of `girt_through` without pegs, and a rail along the post's east face.

    The rail is 12" deep, over all of the girt's end, and lies 1/2" inside the post; each of the two
    is notched for half of that.
    """
    plain = girt_through(joint, pegs=None).project
    lap = LapJoint.model_validate(LAP)
    return frame(*plain.timbers, timber("rail", **RAIL), *plain.works, lap)
