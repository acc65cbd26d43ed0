"""The stored parameters of a wedged half-dovetail and its mortise."""

from collections.abc import Mapping
from typing import ClassVar, Literal, Self

from pydantic import model_validator

from benchmate.measure.length import ZERO
from benchmate.model.fields import PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.two_timbers import EndAtTimber
from benchmate.model.work import Bearing, Extension, Fault, level_faults


class HalfDovetail(EndAtTimber):
    """An end of a level tie or girt right through a post, as a half-dovetail that a wedge holds.

    Of the tenon's two narrow edges the `wedged` one is straight, and runs on from the tie's own
    face. The other leaves the tie at the shoulder and is `flare` deeper at the post's far face: the
    tail. A tenon that is `depth` deep at its shoulder keeps that, whatever the stick; without it
    the tail comes out to the tie's other face. Past the post's far face the tenon stands on as deep
    as its tail, `past` it, or it is `held_short` of it and ends there.

    Across the tie it is `thickness` thick and `set_back` from the reference face that looks across;
    without set-back it is barefaced. The whole end goes `housing` deep in.

    The mortise is as much taller than the tenon as the wedge is thick: `wedge_thin` at the tenon's
    shoulder, where the wedge's thin end comes, and thicker by the same taper as the tail's at the
    far face, which it is driven from. So the thin end is at least the flare, or the tail would not
    come in.
    """

    itself: ClassVar[str] = "cannot go through its own timber; name another in into"

    family: Literal["wedged half-dovetail"]
    housing: Size = ZERO
    thickness: PositiveSize
    set_back: Size
    wedged: Literal["top", "underside"] = "top"
    """Which edge the wedge is driven over; the top is common practice, no source."""

    flare: PositiveSize
    wedge_thin: PositiveSize
    depth: PositiveSize | None = None
    past: Size = ZERO
    held_short: Size = ZERO

    @model_validator(mode="after")
    def _ends_one_way(self) -> Self:
        if self.past and self.held_short:
            raise ValueError(
                'stands "past" the far face and is "held_short" of it as well; keep one of them'
            )
        return self

    def extensions(self) -> tuple[Extension, ...]:
        """All the wood it passes, and what stands past it."""
        (bearing,) = self.bearings()
        beyond = self.past - self.held_short
        return (Extension(self.timber, self.end, beyond, through=bearing),)

    def bearings(self) -> tuple[Bearing, ...]:
        """The shoulder, on the face of the post or in its housing."""
        return (Bearing(self.timber, self.end, self.into, self.housing, self.mortise),)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """Timbers without places, a tie that does not lie level or a post that does not stand."""
        tie, post = timbers[self.timber], timbers[self.into]
        found = level_faults(tie, self.end, post, "a wedged half-dovetail lies level")
        if found:
            return found
        if not post.upright:
            problem = f"{post.name} lies level, and a wedged half-dovetail goes through a post"
            return (Fault("into", problem, "use a tenon there, or name a timber that stands"),)
        return ()

    @property
    def mortise(self) -> str:
        """The id of the mortise through the post."""
        return f"{self.id}-mortise"
