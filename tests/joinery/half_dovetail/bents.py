"""A bent's end: a tie right through a post under a plate, any way round."""

from collections.abc import Mapping
from typing import Any

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.half_dovetail.family import features
from benchmate.joinery.half_dovetail.mortise_shape import MortiseShape, mortise_shape
from benchmate.joinery.half_dovetail.record import HalfDovetail
from benchmate.joinery.half_dovetail.shape import TailShape, tail_shape
from benchmate.model.feature import Feature
from benchmate.model.project import Timber
from tests.builders import frame, tenon, timber
from tests.compass import ALONG, OPPOSITE, SENSE

Word = Any
"""What a builder may be told of a bent: each word is of its own type."""


SQUARE = {
    "post": {"rule": "square", "inner": "7-1/2 x 7-1/2"},
    "tie": {"rule": "square", "inner": "7-1/2 x 5-1/2"},
}
"""Both sticks by square rule, half an inch over their inner timbers as drawn."""


def half_dovetail(**words: object) -> HalfDovetail:
    """The tie's joint: a 2" tenon set back 2", a 1" flare over the post, a wedge from 1-1/8"."""
    return HalfDovetail.model_validate(
        {
            "id": "tie-post",
            "family": "wedged half-dovetail",
            "timber": "tie",
            "end": "west",
            "into": "post",
            "thickness": "2",
            "set_back": "2",
            "flare": "1",
            "wedge_thin": "1-1/8",
        }
        | words
    )


def bent(
    *,
    heading: str = "west",
    tie_first: str = "up",
    post_first: str | None = None,
    reference: bool = False,
    side: str | None = None,
    real: Mapping[str, Real] | None = None,
    own: Mapping[str, Mapping[str, object]] | None = None,
    tie_drop: str = "10",
    **joint: object,
) -> Frame:
    """An 8 x 8 post 9' high that an 8 x 6 tie goes through, `heading` that way, under a plate.

    The tie's top lies `tie_drop` below the plate's underside. Its end is its reference end or not.
    The post is measured from `post_first`, the face the tie comes out of if not given; both sticks
    from the `side` face they share. `own` is what else is said of a timber.
    """
    across = "north" if ALONG[heading] == "east" else "east"
    side = side or ("south" if across == "north" else "west")
    post = _post(heading, post_first or heading, side, across)
    tie = _tie(heading, tie_first, side, across, f"9 ft - {tie_drop}")
    ends = {"reference_end": heading if reference else OPPOSITE[heading]}
    said = {name: dict((own or {}).get(name, {})) for name in ("post", "tie")}
    return frame(
        timber("post", **(post | said["post"])),
        timber("tie", **(tie | ends | said["tie"])),
        _plate(heading),
        half_dovetail(end=heading, **joint),
        tenon(id="post-head", end="head", into="plate", length="3"),
        real=real,
        units="inches",
    )


def _post(heading: str, first: str, side: str, across: str) -> dict[str, object]:
    """The face the tie comes out of lies at nothing."""
    along = "0" if first == heading else f"{-8 * SENSE[heading]}"
    return {
        "section": "8 x 8",
        "first_face": first,
        "second_face": side,
        "reference_end": "foot",
        "length": None,
        "at": {ALONG[heading]: along, across: "0"},
        "reference_end_at": "0",
    }


def _tie(heading: str, first: str, side: str, across: str, top: str) -> dict[str, object]:
    return {
        "kind": "tie",
        "section": "8 x 6",
        "first_face": first,
        "second_face": side,
        "reference_end": OPPOSITE[heading],
        "length": "10'",
        "at": {across: "0", "up": top if first == "up" else f"{top} - 8"},
    }


def _plate(heading: str) -> Timber:
    along = ALONG[heading]
    return timber(
        "plate",
        kind="plate",
        section="8 x 8",
        first_face="down",
        second_face=heading,
        reference_end={"east": "south", "north": "west"}[along],
        length="20'",
        at={along: "0", "up": "9 ft"},
        reference_end_at="-5 ft",
    )


def joint_in(built: Frame) -> HalfDovetail:
    """The half-dovetail of a bent."""
    return next(work for work in built.project.works if isinstance(work, HalfDovetail))


def tail_of(built: Frame) -> TailShape:
    """Its tail on the real tie."""
    return tail_shape(joint_in(built), built)


def mortise_of(built: Frame) -> MortiseShape:
    """Its mortise in the real post."""
    return mortise_shape(joint_in(built), tail_of(built), built)


def sides_of(built: Frame) -> tuple[Feature, Feature]:
    """What it puts on the tie and on the post."""
    tie, post = features(joint_in(built), built)
    return tie, post
