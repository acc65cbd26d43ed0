"""Two timbers that lap, any way round: along, across, and the side the first comes in from."""

from collections.abc import Mapping

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.lap.record import LapJoint
from benchmate.measure.length import Length
from benchmate.model.directions import Direction
from tests.builders import frame, length, timber

AXES = ("east", "north", "up")

WAYS = {direction.word: direction for direction in Direction}

ENDS = {"up": "head", "down": "foot"}
"""What a file calls an end that looks up or down."""


def lap(**words: object) -> LapJoint:
    """The tie's east end, half lapped over the plate."""
    return LapJoint.model_validate(
        {"id": "lap", "family": "lap", "timber": "tie", "into": "plate", "side": "up"} | words
    )


def crossed(
    *,
    heading: str = "east",
    run: str = "north",
    side: str = "up",
    tie: Mapping[str, object] | None = None,
    plate: Mapping[str, object] | None = None,
    tie_size: tuple[str, str] = ("8", "6"),
    plate_size: tuple[str, str] = ("8", "8"),
    up: str = "0",
    tie_looks: tuple[bool, bool] = (True, True),
    plate_looks: tuple[bool, bool] = (True, True),
    from_the_lap: bool = False,
    ends: bool = True,
    corner: str | None = None,
    joint: Mapping[str, object] | None = None,
    real: Mapping[str, Real] | None = None,
    **words: object,
) -> Frame:
    """A tie that goes `heading` and a plate that runs `run`, with the tie let in from the `side`.

    Counted along those three, the plate lies from 8' to 8' and its width, and under height 0; the
    tie lies from 0 to its width, and its top `up` over height 0. `tie_looks` says whether its two
    reference faces look to the side and along `run`, `plate_looks` whether the plate's look to the
    side and along `heading`; sizes are deep along the side, then wide. The tie ends at the plate,
    or crosses it, and is measured from its other end unless it is `from_the_lap`. At a `corner` the
    plate ends at the tie too, on the side that is named.
    """
    high, wide = _measures(tie_size)
    top = length(up)
    tie_body = {side: (top - high, top), run: (Length(0), wide)}
    deep, across = _measures(plate_size)
    start = length("8'")
    plate_body = {side: (Length(0) - deep, Length(0)), heading: (start, start + across)}
    at_plate = WAYS[heading].opposite.word
    open_end = {"reference_end_at" if not from_the_lap else "far_end_at": _at(heading, "0")}
    through = {"reference_end_at": _at(heading, "0"), "far_end_at": _at(heading, "16'")}
    one = timber(
        "tie",
        kind="tie",
        section=" x ".join(tie_size),
        **_faces(tie_looks, side, run),
        reference_end=_end(heading if from_the_lap and ends else at_plate),
        at=_arris(tie_body, tie_looks),
        length=None,
        **(open_end if ends else through),
        **(tie or {}),
    )
    other = timber(
        "plate",
        kind="plate",
        section=" x ".join(plate_size),
        **_faces(plate_looks, side, heading),
        reference_end=_end(WAYS[run].opposite.word),
        at=_arris(plate_body, plate_looks),
        length=None,
        **_plate_ends(run, corner),
        **(plate or {}),
    )
    given: dict[str, object] = {"side": side}
    if ends:
        given["end"] = _end(heading)
    if corner is not None:
        given["into_end"] = _end(corner)
    return frame(one, other, lap(**given, **(joint or {})), real=real, units="inches", **words)


def _plate_ends(run: str, corner: str | None) -> dict[str, str]:
    found = {"reference_end_at": _at(run, "-4'"), "far_end_at": _at(run, "12'")}
    if corner is not None:
        del found["far_end_at" if corner == run else "reference_end_at"]
    return found


def _measures(size: tuple[str, str]) -> tuple[Length, Length]:
    deep, wide = map(length, size)
    return deep, wide


def _faces(looks: tuple[bool, bool], side: str, across: str) -> dict[str, str]:
    first, second = (
        way if outward else WAYS[way].opposite.word
        for way, outward in zip((side, across), looks, strict=True)
    )
    return {"first_face": first, "second_face": second}


def _end(way: str) -> str:
    return ENDS.get(way, way)


def _axis(way: str) -> str:
    return AXES[[bool(step) for step in WAYS[way].value].index(True)]


def _at(way: str, along: str) -> str:
    """A coordinate that lies so far along a way."""
    return (length(along) * sum(WAYS[way].value)).exact_text()


def _arris(body: Mapping[str, tuple[Length, Length]], looks: tuple[bool, bool]) -> dict[str, str]:
    """Where the reference arris runs: the side of each stretch that its face looks to."""
    return {
        _axis(way): (stretch[1 if outward else 0] * sum(WAYS[way].value)).exact_text()
        for (way, stretch), outward in zip(body.items(), looks, strict=True)
    }
