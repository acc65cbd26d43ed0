"""A level timber on a diminished housing in a post or in a beam, any way round."""

from collections.abc import Mapping
from typing import Any

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.diminished.family import features
from benchmate.joinery.diminished.mortise_shape import MortiseShape, mortise_shape
from benchmate.joinery.diminished.record import DiminishedTenon
from benchmate.joinery.diminished.shape import EndShape, end_shape
from benchmate.model.feature import Feature
from tests.builders import frame, timber
from tests.compass import ALONG, OPPOSITE, SENSE

Word = Any
"""What a builder may be told of a ledge: each word is of its own type."""


SQUARE = {
    "post": {"rule": "square", "inner": "7-1/2 x 7-1/2"},
    "girt": {"rule": "square", "inner": "7-1/2 x 5-1/2"},
}
"""Both sticks by square rule, half an inch over their inner timbers as drawn."""

SQUARE_BEAM = SQUARE | {"post": {"rule": "square", "inner": "7-1/2 x 9-1/2"}}


def diminished(**words: object) -> DiminishedTenon:
    """The girt's joint: a 1" diminished housing, a 2" tenon 3" long, set back 2"."""
    return DiminishedTenon.model_validate(
        {
            "id": "girt-end",
            "family": "diminished tenon",
            "timber": "girt",
            "end": "west",
            "into": "post",
            "housing": "1",
            "length": "3",
            "thickness": "2",
            "set_back": "2",
        }
        | words
    )


def ledge(
    *,
    heading: str = "west",
    lying: bool = False,
    first: str = "up",
    into_first: str | None = None,
    reference: bool = False,
    side: str | None = None,
    drop: str = "0",
    lift: str = "0",
    inset: str = "0",
    real: Mapping[str, Real] | None = None,
    own: Mapping[str, Mapping[str, object]] | None = None,
    **joint: object,
) -> Frame:
    """An 8 x 6 girt whose end, looking `heading`, is let into an 8 x 8 post or a `lying` beam.

    The girt's `first` face is its top or its underside; its side is `side`, and it stands `inset`
    from the post's. Its end is its reference end or not. `into` is measured from the face the girt
    comes towards if not said otherwise. The girt's top lies `drop` below the beam's, or `lift` over
    it. `own` is what else is said of a timber.
    """
    along = ALONG[heading]
    across = "north" if along == "east" else "east"
    side = side or ("south" if along == "east" else "west")
    level = SENSE[OPPOSITE[side]]
    into = into_first or OPPOSITE[heading]
    at = "0" if into == OPPOSITE[heading] else f"{8 * SENSE[heading]}"
    stick = {name: (own or {}).get(name, {}) for name in ("post", "girt")}
    top = f"8 ft - {drop} + {lift}"
    girt = timber(
        "girt",
        **{
            "kind": "girt",
            "section": "8 x 6",
            "first_face": first,
            "second_face": side,
            "reference_end": heading if reference else OPPOSITE[heading],
            "length": "10'",
            "at": {across: inset if level > 0 else f"-{inset}", "up": top}
            | ({"up": f"{top} - 8"} if first == "down" else {}),
        }
        | dict(stick["girt"]),
    )
    words = _beam(along, into, at) if lying else _post(along, across, into, at, side)
    post = timber("post", **{"section": "8 x 8"} | words | dict(stick["post"]))
    return frame(post, girt, diminished(end=heading, **joint), real=real, units="inches")


def _post(along: str, across: str, first: str, at: str, side: str) -> dict[str, object]:
    return {
        "first_face": first,
        "second_face": side,
        "reference_end": "foot",
        "length": "12 ft",
        "at": {along: at, across: "0"},
        "reference_end_at": "0",
    }


def _beam(along: str, first: str, at: str) -> dict[str, object]:
    """Its top is its second reference face; it runs across the girt."""
    return {
        "kind": "beam",
        "section": "8 x 10",
        "first_face": first,
        "second_face": "up",
        "reference_end": {"east": "south", "north": "west"}[along],
        "length": "20 ft",
        "at": {along: at, "up": "8 ft"},
        "reference_end_at": "-8 ft",
    }


def joint_in(built: Frame) -> DiminishedTenon:
    """The diminished tenon of a frame."""
    return next(work for work in built.project.works if isinstance(work, DiminishedTenon))


def end_of(built: Frame) -> EndShape:
    """Its tenon on the real girt."""
    return end_shape(joint_in(built), built)


def mortise_of(built: Frame) -> MortiseShape:
    """Its mortise in the real timber that receives it."""
    return mortise_shape(joint_in(built), end_of(built), built)


def sides_of(built: Frame) -> tuple[Feature, Feature]:
    """What it puts on the girt and on what receives it."""
    girt, post = features(joint_in(built), built)
    return girt, post
