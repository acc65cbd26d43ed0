"""The stored parameters of a tenon with a diminished housing, and of its mortise."""

from collections.abc import Mapping
from typing import Literal

from benchmate.measure.length import ZERO
from benchmate.model.fields import PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.two_timbers import EndAtTimber
from benchmate.model.work import Bearing, Extension, Fault, level_faults


class DiminishedTenon(EndAtTimber):
    """An end of a level tie, girt or joist, tenoned and let into the side of another timber.

    Its shoulder slopes: at the top it comes to the face of `into` and no further, at the underside
    it goes `housing` deep in, where it bears on the housing's ledge. So shoulder to shoulder is
    longer along the underside than along the top.

    The tenon is `length` long from the shoulder at the underside, `thickness` thick, and `set_back`
    from the reference face that looks across the receiving timber's grain; without set-back it is
    barefaced. Its narrow edges run out to the timber's own faces but for what `relief_reference` or
    `relief_far` takes off. The mortise is `bottom_clearance` deeper than the tenon is long, the
    shop's own if not given.
    """

    family: Literal["diminished tenon"]
    housing: PositiveSize
    length: PositiveSize
    thickness: PositiveSize
    set_back: Size
    relief_reference: Size = ZERO
    relief_far: Size = ZERO
    bottom_clearance: Size | None = None

    def extensions(self) -> tuple[Extension, ...]:
        """What goes into the housing and the tenon: both lie beyond the shoulder at the top."""
        return (Extension(self.timber, self.end, self.housing + self.length),)

    def bearings(self) -> tuple[Bearing, ...]:
        """The shoulder at the top comes to the face itself: the housing lies beyond."""
        return (Bearing(self.timber, self.end, self.into, ZERO, self.mortise),)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """Timbers without places, or an end that does not lie level."""
        timber, into = timbers[self.timber], timbers[self.into]
        return level_faults(timber, self.end, into, "a diminished housing carries a level end")

    @property
    def mortise(self) -> str:
        """The id of the mortise on the receiving timber."""
        return f"{self.id}-mortise"
