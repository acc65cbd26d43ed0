"""A bay with a post, a beam on it, a sill under it and braces in its corners, any way round."""

from collections.abc import Mapping

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.brace.record import BraceJoint
from tests.builders import frame, timber

OPPOSITE = {"east": "west", "west": "east", "north": "south", "south": "north"}
ALONG = {"east": "east", "west": "east", "north": "north", "south": "north"}
SENSE = {"east": 1, "north": 1, "west": -1, "south": -1}


def brace_joint(**words: object) -> BraceJoint:
    """The foot of a brace in a post: 1/2" housed, a 1-1/2" tenon 4" long, set back 1-1/2"."""
    return BraceJoint.model_validate(
        {
            "id": "brace-foot",
            "family": "brace",
            "timber": "brace",
            "end": "foot",
            "into": "post",
            "housing": "1/2",
            "length": "4",
            "thickness": "1-1/2",
            "set_back": "1-1/2",
        }
        | words
    )


def bay(
    *,
    heading: str = "east",
    legs: tuple[str, str] = ("36", "36"),
    low: bool = False,
    post_first: str | None = None,
    beam_first: str | None = None,
    brace_side: str | None = None,
    joint: Mapping[str, object] | None = None,
    real: Mapping[str, Real] | None = None,
    own: Mapping[str, Mapping[str, object]] | None = None,
    **words: object,
) -> Frame:
    """An 8 x 8 post under an 8 x 10 beam, or on it, that a 4 x 6 brace makes a corner with.

    `legs` are the one down or up the post and the one along the beam. The brace stands with its
    foot in the post, or where it is `low` with its foot on the beam, which is then the sill.
    The side faces look `brace_side`; the post is measured from `post_first`, the beam from
    `beam_first`, each of them the face away from the corner if not given. `own` is what else is
    said of a timber.
    """
    along = ALONG[heading]
    across = "north" if along == "east" else "east"
    side = brace_side or ("south" if along == "east" else "west")
    outside = post_first or OPPOSITE[heading]
    toward = SENSE[heading]
    face = f"{8 if outside == OPPOSITE[heading] else 0}"
    at = "0" if outside == OPPOSITE[heading] else f"{8 * toward}"
    corner = f"{int(face) * toward if face != '0' else 8 * toward}"
    up = "0" if low else "8'"
    top = beam_first or ("down" if low else "up")
    level = {"up": f"{'0' if low else '8 ft + 10'}", "down": f"{'-10' if low else '8 ft'}"}[top]
    stick = {name: (own or {}).get(name, {}) for name in ("post", "beam", "brace")}
    post = timber(
        "post",
        **stick["post"],
        section="8 x 8",
        first_face=outside,
        second_face=side,
        reference_end="foot",
        length="8'",
        at={along: at, across: "0"},
        reference_end_at="0",
    )
    beam = timber(
        "beam",
        **stick["beam"],
        kind="beam",
        section="10 x 8",
        first_face=top,
        second_face=side,
        reference_end=OPPOSITE[heading],
        length="12'",
        at={across: "0", "up": level},
        reference_end_at="0",
    )
    plumb, run = legs
    brace = timber(
        "brace",
        **stick["brace"],
        kind="brace",
        section="6 x 4",
        first_face="up" if low else "down",
        second_face=side,
        reference_end="foot",
        length=None,
        incline={
            "corner": {along: corner, across: "0", "up": up},
            "legs": {"up" if low else "down": plumb, heading: run},
        },
    )
    each = dict(joint or {})
    foot, head = ("beam", "post") if low else ("post", "beam")
    return frame(
        post,
        beam,
        brace,
        brace_joint(into=foot, **each),
        brace_joint(id="brace-head", end="head", into=head, **each),
        real=real,
        units="inches",
        **words,
    )
