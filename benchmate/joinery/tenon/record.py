"""The stored parameters of a tenon and its mortise."""

from collections.abc import Mapping
from typing import Literal, Self

from pydantic import model_validator

from benchmate.measure.length import ZERO, Length
from benchmate.measure.sums import Sum, read_sum
from benchmate.model.fields import EndDirection, Id, Position, PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.work import Extension, Fault, Work, end_fault

NO_INSET = read_sum("0")
"""A post flush with the receiving timber's reference face."""


class TenonJoint(Work):
    """A tenon on the foot or head of a post, and the mortise in the timber that receives it.

    Across the post the tenon starts `set_back` in from a reference face and is `thickness` thick.
    That face is the one that looks across the receiving timber; a post that stands alone says
    which in `cheeks_from`. The narrow edges run out to the post's own faces but for what
    `relief_reference` or `relief_far` takes off, or `all_round` off both; a relief counts instead
    of `all_round` on its own edge. `end_allowance` is wood left on the tenon's end until it has
    been fitted.

    `at` is where the post's other reference face crosses the receiving timber `into`, from that
    timber's reference shoulder; `inset` is how far in from the receiving timber's reference face
    the post stands. The mortise is `bottom_clearance` deeper than the tenon is long, the shop's
    own if not given.
    """

    family: Literal["tenon"]
    timber: Id
    end: EndDirection
    into: Id | None = None
    at: Position | None = None
    inset: Position = NO_INSET
    cheeks_from: Literal["first", "second"] | None = None
    length: PositiveSize
    thickness: PositiveSize
    set_back: Size
    relief_reference: Size = ZERO
    relief_far: Size = ZERO
    all_round: Size = ZERO
    end_allowance: Size = ZERO
    bottom_clearance: Size | None = None

    @model_validator(mode="after")
    def _received_or_alone(self) -> Self:
        if self.into is not None and self.at is None:
            raise ValueError('has no "at"; say where the post\'s reference face crosses the timber')
        if self.into is None and self.at is not None:
            raise ValueError('has "at" but no "into"; name the timber that receives the tenon')
        if self.into is None and (self.bottom_clearance is not None or self.inset != NO_INSET):
            raise ValueError(
                'has "inset" or "bottom_clearance" but no "into"; without a mortise leave them out'
            )
        if self.into is not None and self.cheeks_from is not None:
            raise ValueError(
                'takes "cheeks_from" only when it stands alone: with "into", the cheeks follow '
                "the receiving timber's grain; remove cheeks_from"
            )
        if self.into == self.timber:
            raise ValueError("cannot enter its own timber; name another in into")
        return self

    def timbers(self) -> dict[str, str]:
        """The post, and the timber that receives it."""
        return {"timber": self.timber} | ({"into": self.into} if self.into is not None else {})

    def sums(self) -> dict[str, Sum]:
        """Where the post stands on the receiving timber."""
        return {"inset": self.inset} | ({"at": self.at} if self.at is not None else {})

    def extensions(self) -> tuple[Extension, ...]:
        """The tenon and its end allowance."""
        return (Extension(self.timber, self.end, self.length + self.end_allowance),)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """An end the post does not have, or a receiving timber that runs the post's way."""
        post = timbers[self.timber]
        fault = end_fault("end", self.end, post)
        if fault:
            return (fault,)
        if self.into is None:
            return ()
        receiver = timbers[self.into]
        if receiver.reference_end.square_to(post.reference_end):
            return ()
        return (
            Fault(
                "into",
                f"{post.name} and {receiver.name} run the same way, so one cannot enter the other",
                "name a timber that crosses it",
            ),
        )

    @property
    def mortise(self) -> str:
        """The id of the mortise on the receiving timber."""
        return f"{self.id}-mortise"

    def reference_cut_back(self) -> Length:
        """What comes off the narrow edge on the reference side."""
        return self.relief_reference or self.all_round

    def far_cut_back(self) -> Length:
        """What comes off the narrow edge on the far side of the timber as drawn."""
        return self.relief_far or self.all_round
