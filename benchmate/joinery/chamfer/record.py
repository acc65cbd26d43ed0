"""The stored parameters of a stopped chamfer."""

from collections.abc import Mapping
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from benchmate.measure.sums import Sum
from benchmate.model.directions import Face
from benchmate.model.fields import EndDirection, Id, Position, PositiveSize
from benchmate.model.project import Timber
from benchmate.model.record import Record
from benchmate.model.work import Fault, Work, end_fault

Arris = tuple[Face, Face]
ArrisWord = Literal["first-second", "first-far", "far-second", "far-far"]

ARRISES: dict[str, Arris] = {
    "first-second": (Face.FIRST, Face.SECOND),
    "first-far": (Face.FIRST, Face.FAR_SECOND),
    "far-second": (Face.FAR_FIRST, Face.SECOND),
    "far-far": (Face.FAR_FIRST, Face.FAR_SECOND),
}
"""The four arrises, each by the two faces it lies between: `far-far` is across from the
reference arris, so it is the inside arris of a corner post, whichever corner the post stands on."""


class Stop(Record):
    """Where a chamfer ends: a distance from the shoulder at one end, or a level."""

    shoulder: EndDirection | None = None
    distance: Position | None = None
    level: Position | None = None

    @model_validator(mode="after")
    def _one_way(self) -> Self:
        from_shoulder = self.shoulder is not None and self.distance is not None
        if from_shoulder == (self.level is not None) or (
            self.level is not None and (self.shoulder is not None or self.distance is not None)
        ):
            raise ValueError('is not one stop; give "shoulder" and "distance", or "level" alone')
        return self

    def sums(self, key: str) -> dict[str, Sum]:
        """The names and lengths it is made of, under the keys of the file."""
        found = {f"{key}.distance": self.distance, f"{key}.level": self.level}
        return {name: total for name, total in found.items() if total is not None}


class Chamfer(Work):
    """A chamfer of `leg` on both faces of each arris, on one timber or several alike.

    It runs from `near_stop`, the one nearer the reference end, to `far_stop`.
    """

    on: Annotated[tuple[Id, ...], Field(min_length=1, strict=False)]
    arrises: Annotated[tuple[ArrisWord, ...], Field(min_length=1, strict=False)]
    leg: PositiveSize
    near_stop: Stop
    far_stop: Stop

    @model_validator(mode="after")
    def _no_repeats(self) -> Self:
        if len(set(self.on)) != len(self.on):
            raise ValueError('names a timber twice in "on"; name each once')
        if len(set(self.arrises)) != len(self.arrises):
            raise ValueError('names an arris twice in "arrises"; name each once')
        return self

    def timbers(self) -> dict[str, str]:
        """Every timber that gets the chamfer."""
        return {f"on[{place}]": timber for place, timber in enumerate(self.on)}

    def joins(self) -> bool:
        """Timbers that get the same chamfer do not meet by it."""
        return False

    def sums(self) -> dict[str, Sum]:
        """Both stops."""
        return self.near_stop.sums("near_stop") | self.far_stop.sums("far_stop")

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """A stop from an end a timber does not have, or from a level it cannot be set against."""
        stops = (("near_stop", self.near_stop), ("far_stop", self.far_stop))
        found = (
            _stop_fault(key, stop, timbers[timber]) for key, stop in stops for timber in self.on
        )
        return tuple(fault for fault in found if fault)


def _stop_fault(key: str, stop: Stop, timber: Timber) -> Fault | None:
    if stop.shoulder is not None:
        return end_fault(f"{key}.shoulder", stop.shoulder, timber)
    if timber.upright and (timber.placed or timber.shoulder_level is not None):
        return None
    if not timber.upright:
        return Fault(
            f"{key}.level",
            f"{timber.name} does not stand upright, so a level does not cross it square",
            "give a shoulder and a distance instead",
        )
    return Fault(
        f"{key}.level",
        f"{timber.name} does not say at what level its reference shoulder stands",
        'give the timber a place or a "shoulder_level", or the stop a shoulder and a distance',
    )
