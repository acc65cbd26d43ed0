"""A post with a girt right through it, pegged: the whole of it in the words of a project file."""

from collections.abc import Mapping

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.tenon.record import TenonJoint
from tests.builders import frame, tenon, timber

MORTISE = "girt-west-mortise"

Words = Mapping[str, object]
NONE: Words = {}

PEGS: Words = {
    "count": 2,
    "size": "1",
    "from_shoulder": "2",
    "from_edge": "2",
    "spacing": "3",
    "draw": "1/8",
}
"""Two 1" pegs 2" from the shoulder, 2" and 5" in from the tenon's top, drawn 1/8"."""

BLIND: Words = {"through": False, "length": "4", "held_short": "0"}
"""The tenon stopped 4" from its shoulder."""

FROM_THE_WEST = {"reference_end": "west", "reference_end_at": None, "far_end_at": "10'"}
"""The girt turned end for end: its reference end is the one in the post."""


def girt_through(
    joint: Words = NONE,
    *,
    post: Words = NONE,
    girt: Words = NONE,
    pegs: Words | None = PEGS,
    real: Mapping[str, Real] | None = None,
) -> Frame:
    """A 7 x 6 girt's west end through an 8 x 8 post, housed 1/2" in its east, far face.

    The tenon is 2" thick, 2" in, as deep as the girt, and held 1/4" short of the west face.
    """
    stands = timber(
        "post",
        **{
            "length": None,
            "section": "8 x 8",
            "at": {"east": "0", "north": "0"},
            "reference_end_at": "0",
            "far_end_at": "8'",
        }
        | dict(post),
    )
    lies = timber(
        "girt",
        **{
            "length": None,
            "kind": "girt",
            "section": "7 x 6",
            "first_face": "up",
            "second_face": "south",
            "reference_end": "east",
            "at": {"north": "1", "up": "4'"},
            "reference_end_at": "10'",
        }
        | dict(girt),
    )
    return frame(stands, lies, girt_tenon(joint, pegs=pegs), real=real)


def girt_tenon(joint: Words = NONE, *, pegs: Words | None = PEGS) -> TenonJoint:
    """The girt's tenon, with other words where they are given."""
    return tenon(
        **{
            "id": "girt-west",
            "timber": "girt",
            "end": "west",
            "into": "post",
            "through": True,
            "length": None,
            "held_short": "1/4",
            "housing": "1/2",
            "pegs": pegs,
        }
        | dict(joint)
    )
