"""Two timbers that lap, any way round: along, across, and the side the first comes in from."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.lap.record import LapJoint
from benchmate.joinery.lap.shape import Half, halves
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.measure.length import Length
from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from tests.builders import frame, length, real, timber

AXES = ("east", "north", "up")

WAYS = {direction.word: direction for direction in Direction}

ENDS = {"up": "head", "down": "foot"}
"""What a file calls an end that looks up or down."""


def lap(**words: object) -> LapJoint:
    """The tie's east end, half lapped over the plate."""
    return LapJoint.model_validate(
        {"id": "lap", "family": "lap", "timber": "tie", "into": "plate", "side": "up"} | words
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """A tie that goes `heading` and a plate that runs `run`, with the tie let in from the `side`.

    Counted along those three, the plate lies from 8' to 8' and its width, and under height 0; the
    tie lies from 0 to its width, and its top `up` over height 0. `tie_looks` says whether its two
    reference faces look to the side and along `run`, `plate_looks` whether the plate's look to the
    side and along `heading`; sizes are deep along the side, then wide. The tie ends at the plate,
    or crosses it, and is measured from its other end unless it is `from_the_lap`. At a `corner` the
    plate ends at the tie too, on the side that is named.
    """

    heading: str = "east"
    run: str = "north"
    side: str = "up"
    up: str = "0"
    tie_size: tuple[str, str] = ("8", "6")
    plate_size: tuple[str, str] = ("8", "8")
    tie_looks: tuple[bool, bool] = (True, True)
    plate_looks: tuple[bool, bool] = (True, True)
    from_the_lap: bool = False
    ends: bool = True
    corner: str | None = None
    tie: Mapping[str, object] = field(default_factory=dict)
    plate: Mapping[str, object] = field(default_factory=dict)
    joint: Mapping[str, object] = field(default_factory=dict)

    def timbers(self) -> tuple[Timber, Timber]:
        """The tie and the plate."""
        high, wide = _measures(self.tie_size)
        top = length(self.up)
        body = {self.side: (top - high, top), self.run: (Length(0), wide)}
        at_plate = WAYS[self.heading].opposite.word
        ends = {"reference_end_at": _at(self.heading, "0"), "far_end_at": _at(self.heading, "16'")}
        if self.ends:
            open_end = "far_end_at" if self.from_the_lap else "reference_end_at"
            ends = {open_end: _at(self.heading, "0")}
        one = self._timber(
            "tie",
            self.tie_looks,
            body,
            reference_end=_end(self.heading if self.ends and self.from_the_lap else at_plate),
            **(ends | dict(self.tie)),
        )
        deep, across = _measures(self.plate_size)
        start = length("8'")
        body = {self.side: (Length(0) - deep, Length(0)), self.heading: (start, start + across)}
        other = self._timber(
            "plate",
            self.plate_looks,
            body,
            reference_end=_end(WAYS[self.run].opposite.word),
            **(_plate_ends(self.run, self.corner) | dict(self.plate)),
        )
        return one, other

    def _timber(
        self,
        name: str,
        looks: tuple[bool, bool],
        body: Mapping[str, tuple[Length, Length]],
        **words: object,
    ) -> Timber:
        size = self.tie_size if name == "tie" else self.plate_size
        given = {"kind": name, "section": " x ".join(size), "length": None}
        return timber(name, **(given | _faces(looks, *body) | {"at": _arris(body, looks)} | words))

    def record(self) -> LapJoint:
        """The lap between them."""
        ends = {"end": _end(self.heading)} if self.ends else {}
        if self.corner is not None:
            ends["into_end"] = _end(self.corner)
        return lap(**({"side": self.side} | ends | dict(self.joint)))

    def frame(self, sizes: Mapping[str, Real] | None = None, **words: object) -> Frame:
        """Both timbers and the lap, as they really are."""
        return frame(*self.timbers(), self.record(), real=sizes, **({"units": "inches"} | words))


def crossed(sizes: Mapping[str, Real] | None = None, **words: Any) -> Frame:  # noqa: ANN401 - a scene's
    """The frame of a scene, its sticks of these real sizes."""
    return Scene(**words).frame(sizes)


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


def both(sizes: Mapping[str, Real] | None = None, **words: Any) -> tuple[Half, Half]:  # noqa: ANN401 - a scene's
    """The tie's half of a scene's lap, and the plate's."""
    scene = Scene(**words)
    first, second, _ = halves(scene.record(), scene.frame(sizes))
    return first, second


def steps(frame: Frame, timber_id: str) -> dict[str, Step]:
    """A timber's steps at its lap, by what is done, in order."""
    walk = lay_out(frame, timber_id)
    ends = {"stick", "end"}
    return {step.id.partition("/")[2]: step for step in walk.steps if step.feature not in ends}


def sizes_of(**sizes: tuple[str, str]) -> dict[str, Real]:
    """Timbers measured all along: deep along the side, then wide."""
    return {
        name: real({"all": {"first": deep, "second": wide}}) for name, (deep, wide) in sizes.items()
    }


SQUARE: dict[str, Any] = {
    "tie": {"rule": "square", "inner": "7-1/2 x 5-1/2"},
    "plate": {"rule": "square", "inner": "7-1/2 x 7-1/2"},
}
"""Both timbers by square rule."""

DOVETAIL: dict[str, Any] = {"up": "6", "joint": {"share": "2", "flare": "1"}}
"""A tie let down 2" over the plate, all of it cut from the plate, with a tail."""

COGGED: dict[str, Any] = {"up": "6", "ends": False, "joint": {"cog": "2", "share": "2"}}
"""The same, crossing over a cog."""
