"""The stored parameters of the peak where the heads of two rafters meet without a ridge."""

from collections.abc import Mapping
from typing import ClassVar, Literal, Self

from pydantic import model_validator

from benchmate.joinery.rafter.faults import rafter_faults
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.fields import Id, PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.two_timbers import TwoTimbers
from benchmate.model.work import EndShape, Extension, Fault

PeakCut = Literal["butt", "half lap", "bridle"]
"""How a pair of rafters meets at the peak."""


class RafterPeak(TwoTimbers):
    """The heads of a pair of rafters at the peak, where both their inclines end.

    Butted, both are cut plumb on the centre line. Half-lapped, `timber` keeps the half by its own
    reference side and `into` the other. Bridled, `timber` has a tongue, `thickness` thick and
    `set_back` from its reference side (in its middle as drawn, if not given), and `into` the fork.
    Lapped or bridled, the shoulder of each runs along the underside of the other, and its end along
    the other's top; the pitches may differ.
    """

    itself: ClassVar[str] = "cannot meet itself; name the other rafter in into"

    family: Literal["rafter peak"]
    timber: Id
    into: Id
    cut: PeakCut
    thickness: PositiveSize | None = None
    set_back: Size | None = None

    @model_validator(mode="after")
    def _sound(self) -> Self:
        if self.cut == "bridle" and self.thickness is None:
            raise ValueError('does not say how thick its tongue is; give "thickness"')
        if self.cut != "bridle" and (self.thickness or self.set_back) is not None:
            raise ValueError(
                f'is a {self.cut}, which has no tongue; write cut = "bridle", or take "thickness" '
                'and "set_back" out'
            )
        return self

    def timbers(self) -> dict[str, str]:
        """The pair."""
        return {"timber": self.timber, "into": self.into}

    def extensions(self) -> tuple[Extension, ...]:
        """Each runs on to the other's top, unless both are cut plumb."""
        own, other = self.parts
        pairs = ((self.timber, self.into, own), (self.into, self.timber, other))
        shape: EndShape = "plumb" if self.cut == "butt" else "parallel"
        return tuple(
            Extension(
                timber,
                Direction.UP,
                ZERO,
                shape=shape,
                place=part,
                along="" if shape == "plumb" else mate,
            )
            for timber, mate, part in pairs
        )

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """Timbers that are no rafters, or do not rise towards one another."""
        pair = {key: timbers[timber] for key, timber in self.timbers().items()}
        found = [fault for key, timber in pair.items() for fault in rafter_faults(key, timber)]
        one, other = (timber.pose.head for timber in pair.values())
        if not found and one is not None and other is not one.opposite:
            names = " and ".join(timber.name for timber in pair.values())
            problem = f"{names} do not rise towards one another"
            found.append(Fault("into", problem, "name the rafter of the other slope"))
        return tuple(found)

    @property
    def parts(self) -> tuple[str, str]:
        """The ids of both heads, that of `timber` first."""
        return {
            "butt": ("head-cut", "head-cut"),
            "half lap": ("head-lap", "head-lap"),
            "bridle": ("head-tongue", "head-fork"),
        }[self.cut]
