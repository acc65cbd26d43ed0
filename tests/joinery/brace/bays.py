"""A bay with a post, a beam and a brace in the corner between them, any way round."""

from collections.abc import Mapping
from typing import NamedTuple

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.brace.record import BraceJoint
from benchmate.model.project import Timber
from tests.builders import frame, timber
from tests.compass import ALONG, OPPOSITE, SENSE

Own = Mapping[str, Mapping[str, object]]
"""What is said of a timber besides, by its id."""


PEG: Mapping[str, object] = {
    "count": 1,
    "size": "3/4",
    "from_shoulder": "1-1/2",
    "from_edge": "2",
    "draw": "1/8",
}
"""One 3/4" peg, as braces are pegged where they are (trade notes 3, TFG-bare)."""


class Bay(NamedTuple):
    """Which way the brace rises from the post, and what the others are measured from.

    A `low` brace has its foot on the beam, which is then a sill. `side` is where the side faces
    look; `post_first` and `beam_first` where the other reference faces do.
    """

    heading: str
    low: bool
    side: str
    post_first: str
    beam_first: str

    @property
    def along(self) -> str:
        """The coordinate that changes along the beam."""
        return ALONG[self.heading]

    @property
    def across(self) -> str:
        """The coordinate square to the plane of the bay."""
        return "north" if self.along == "east" else "east"


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
    side: str = "",
    post_first: str = "",
    beam_first: str = "",
    joint: Mapping[str, object] | None = None,
    real: Mapping[str, Real] | None = None,
    own: Own | None = None,
    **words: object,
) -> Frame:
    """An 8 x 8 post, an 8 x 10 beam on it or under it, and a 4 x 6 brace in their corner.

    `legs` are the one along the post and the one along the beam, to their faces. Reference faces
    look away from the corner if nothing is said.
    """
    usual_side = "south" if heading in ("east", "west") else "west"
    how = Bay(
        heading,
        low,
        side or usual_side,
        post_first or OPPOSITE[heading],
        beam_first or ("down" if low else "up"),
    )
    said = own or {}
    each = dict(joint or {})
    foot, head = ("beam", "post") if low else ("post", "beam")
    return frame(
        _post(how, said.get("post", {})),
        _beam(how, said.get("beam", {})),
        _brace(how, legs, said.get("brace", {})),
        brace_joint(**{"into": foot, **each}),
        brace_joint(**{"id": "brace-head", "end": "head", "into": head, **each}),
        real=real,
        **words,
    )


def _post(how: Bay, own: Mapping[str, object]) -> Timber:
    """From zero towards the heading, 8" deep."""
    outside = how.post_first == OPPOSITE[how.heading]
    at = "0" if outside else f"{8 * SENSE[how.heading]}"
    return timber(
        "post",
        section="8 x 8",
        first_face=how.post_first,
        second_face=how.side,
        length="8'",
        at={how.along: at, how.across: "0"},
        reference_end_at="0",
        **own,
    )


def _beam(how: Bay, own: Mapping[str, object]) -> Timber:
    """Its underside 8 ft up, or its top at zero where it is a sill; 10" deep."""
    faces = {
        (False, "up"): "8' 10",
        (False, "down"): "8'",
        (True, "up"): "0",
        (True, "down"): "-10",
    }
    return timber(
        "beam",
        kind="beam",
        section="10 x 8",
        first_face=how.beam_first,
        second_face=how.side,
        reference_end=OPPOSITE[how.heading],
        length="12'",
        at={how.across: "0", "up": faces[how.low, how.beam_first]},
        reference_end_at="0",
        **own,
    )


def _brace(how: Bay, legs: tuple[str, str], own: Mapping[str, object]) -> Timber:
    """Measured from its long edge: the under one below a beam, the upper one above a sill."""
    upright, level = legs
    words: dict[str, object] = {
        "kind": "brace",
        "section": "6 x 4",
        "first_face": "up" if how.low else "down",
        "second_face": how.side,
        "length": None,
        "incline": {
            "corner": {
                how.along: f"{8 * SENSE[how.heading]}",
                how.across: "0",
                "up": "0" if how.low else "8'",
            },
            "legs": {"up" if how.low else "down": upright, how.heading: level},
        },
    }
    return timber("brace", **(words | dict(own)))
