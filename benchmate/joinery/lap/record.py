"""The stored parameters of a lap: two timbers, each cut away to let the other by."""

from collections.abc import Iterator, Mapping
from typing import ClassVar, Literal, Self

from pydantic import model_validator

from benchmate.measure.length import ZERO, Length
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction
from benchmate.model.fields import EndDirection, FaceDirection, Id, Position, PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.stick import end_place
from benchmate.model.two_timbers import TwoTimbers
from benchmate.model.work import Bearing, Extension, Fault, end_fault, slope_words

_ONLY_AT_AN_END = ("past", "flare", "flare_reference", "flare_far", "into_end")
_NOT_AT_A_CORNER = ("past", "flare", "flare_reference", "flare_far", "cog")


class LapJoint(TwoTimbers):
    """A timber let in from one side of another that it crosses or ends at.

    `timber` is cut first and `into` to what it came out as. Both stand or lie square to one
    another, and `side` is the side of `into` that the timber comes in from: "up" for one that lies
    over it. Of the height they have in common `share` is cut from `into`, half of it if not given,
    and the rest from the timber; both are counted as drawn, so that the lines hold whatever the
    sticks measure.

    Without `end` the timber crosses. With it that end laps over `into` and stops flush with its far
    face, or `past` it by so much; with `into_end` too the two make a corner. A lap at an end is a
    dovetail where it has `flare`: it is as wide as the timber at the far face of `into`, and
    narrower by so much on each side where it comes in; `flare_reference` or `flare_far` counts
    instead of it on that side alone, and of nothing leaves that side straight. A `cog` so wide is
    left standing in the notch of `into`, `cog_set_back` from its reference face (in the middle if
    not given), and the timber slotted to go over it.
    """

    itself: ClassVar[str] = "cannot lap its own timber; name another in into"

    family: Literal["lap"]
    timber: Id
    end: EndDirection | None = None
    into: Id
    into_end: EndDirection | None = None
    side: FaceDirection
    share: Position | None = None
    past: Size = ZERO
    flare: Size = ZERO
    flare_reference: Size | None = None
    flare_far: Size | None = None
    cog: PositiveSize | None = None
    cog_set_back: Size | None = None

    @model_validator(mode="after")
    def _one_joint(self) -> Self:
        given = [key for key in type(self).model_fields if getattr(self, key)]
        for key in _ONLY_AT_AN_END:
            if self.end is None and key in given:
                raise ValueError(
                    f'has "{key}" but no "end"; name the end that laps, or take it out'
                )
        for key in _NOT_AT_A_CORNER:
            if self.into_end is not None and key in given:
                raise ValueError(f'has "{key}" at a corner, where both ends lap; take it out')
        if self.cog is not None and self.dovetailed:
            raise ValueError('has "cog" and a flare; keep the one or the other')
        if self.cog is None and self.cog_set_back is not None:
            raise ValueError('has "cog_set_back" but no "cog"; say how wide the cog is')
        return self

    def timbers(self) -> dict[str, str]:
        """The timber that is cut first, and the one it is let into."""
        return {"timber": self.timber, "into": self.into}

    def sums(self) -> dict[str, Sum]:
        """How much of the common height is cut from `into`."""
        return {} if self.share is None else {"share": self.share}

    def extensions(self) -> tuple[Extension, ...]:
        """The ends that lap, each through to the far face of the other timber or past it."""
        past = (self.past, ZERO)
        return tuple(
            Extension(bearing.timber, bearing.end, over, through=bearing, lap=True)
            for bearing, over in zip(self.bearings(), past, strict=False)
        )

    def bearings(self) -> tuple[Bearing, ...]:
        """The ends that lap: each stops with its shoulder at the near face of the other timber."""
        found = []
        if self.end is not None:
            found.append(Bearing(self.timber, self.end, self.into, ZERO, self.into_feature))
        if self.into_end is not None:
            found.append(Bearing(self.into, self.into_end, self.timber, ZERO, self.feature))
        return tuple(found)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """Timbers that do not cross square, or a side that does not look across both."""
        timber, into = timbers[self.timber], timbers[self.into]
        found = next(self._apart(timber, into), None)
        if found is not None:
            return (found,)
        ends = (("end", self.end, timber), ("into_end", self.into_end, into))
        faults = [end_fault(key, end, whose) for key, end, whose in ends if end is not None]
        return (*filter(None, faults), *self._along(timber, into))

    def _apart(self, timber: Timber, into: Timber) -> Iterator[Fault]:
        """What keeps two timbers from crossing square."""
        for key, each in (("timber", timber), ("into", into)):
            slope = slope_words(each)
            if slope:
                problem = f"laps {each.name}, which {slope}"
                remedy = "take the joint out: it is for timbers square to one another"
                yield Fault(key, problem, remedy)
            elif not each.placed:
                problem = f"{each.name} has no place in the frame, so where it laps stays open"
                yield Fault(key, problem, 'give it a place with "at"')
        if not into.reference_end.square_to(timber.reference_end):
            problem = f"{timber.name} and {into.name} run the same way, so they do not cross"
            yield Fault("into", problem, "name a timber that crosses it")

    def _along(self, timber: Timber, into: Timber) -> Iterator[Fault]:
        """A side that one of the timbers runs along."""
        runs = (timber.reference_end, into.reference_end)
        if all(self.side.square_to(run) for run in runs):
            return
        along = next(each for each in (timber, into) if not self.side.square_to(each.reference_end))
        either = runs[0].cross(runs[1])
        words = " or ".join(f'"{each.word}"' for each in _both_ways(either))
        problem = f"is a way that {along.name} runs, so it is let in from no such side"
        yield Fault("side", problem, f"write {words}: which side of {into.name} it comes in from")

    @property
    def dovetailed(self) -> bool:
        """Whether the lapping end is cut as a tail."""
        return bool(self.reference_flare() or self.far_flare())

    @property
    def feature(self) -> str:
        """The id of what is cut on the timber: `west-end-lap`, or after the joint if it crosses."""
        return f"{self.id if self.end is None else end_place(self.end)}-lap"

    @property
    def into_feature(self) -> str:
        """The id of what is cut on the other: its notch, or its own end lap at a corner."""
        end = self.into_end
        return f"{self.id}-notch" if end is None else f"{end_place(end)}-lap"

    def reference_flare(self) -> Length:
        """What the tail loses at its narrow end on the side of the timber's reference face."""
        return self.flare if self.flare_reference is None else self.flare_reference

    def far_flare(self) -> Length:
        """What the tail loses at its narrow end on the far side of the timber."""
        return self.flare if self.flare_far is None else self.flare_far


def _both_ways(direction: Direction) -> tuple[Direction, Direction]:
    found = (direction, direction.opposite)
    forward, back = sorted(found, key=lambda each: -sum(each.value))
    return forward, back
