"""The stored parameters of a tenon and its mortise."""

from collections.abc import Iterator, Mapping
from typing import Literal, Self

from pydantic import Field, ValidationInfo, field_validator, model_validator

from benchmate.frame.pegs import Pegs
from benchmate.measure.length import ZERO, Length
from benchmate.measure.sums import Sum, read_sum
from benchmate.model.fields import EndDirection, Id, Position, PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.work import Bearing, Extension, Fault, Work, end_fault, meeting_faults

NO_INSET = read_sum("0")
"""A timber flush with the receiving one's reference face."""


class TenonJoint(Work):
    """A tenon on an end of one timber, and the mortise in the side of the timber it enters.

    Across the timber the tenon starts `set_back` in from a reference face and is `thickness` thick.
    That face is the one that looks across the receiving timber's grain; a timber that stands alone
    says which in `cheeks_from`. The narrow edges run out to the timber's own faces but for what
    `relief_reference` or `relief_far` takes off, or `all_round` off both; a relief counts instead
    of `all_round` on its own edge. `end_allowance` is wood left on the tenon's end until it has
    been fitted.

    The whole end goes `housing` deep into the receiving timber `into`. Where both timbers have
    places, those say where they meet. Otherwise `at` is where the timber's other reference face
    crosses the receiving one, from that one's reference shoulder, and `inset` how far in from its
    reference face the timber stands. The mortise is `bottom_clearance` deeper than the tenon is
    long, the shop's own if not given. A `scribed` joint is marked by hand from its mate: its sizes
    say how much wood it needs, and no figure is given.

    A tenon that goes `through` is as long as the wood it passes, as the receiving timber really is
    there, less what it is `held_short` of the far face, or with as much more as it stands `past`
    it; a `length` that is given counts instead. Its mortise has no bottom. `pegs` go through the
    cheeks of both.

    What stands past goes on into a third timber, `beyond`, if there is one, as where a tie lies
    over the plate: it has a mortise there too, with the bottom clearance, or right through
    (`beyond_through`, and `held_short` then counts from that timber's far face).

    Of the joints that it `meets`, its tenon goes through that of a joint whose end enters the same
    timber square to it, as where a post's stub crosses the tenon of a sill corner.
    """

    family: Literal["tenon"]
    timber: Id
    end: EndDirection
    into: Id | None = None
    at: Position | None = None
    inset: Position = NO_INSET
    housing: Size = ZERO
    scribed: bool = False
    cheeks_from: Literal["first", "second"] | None = None
    through: bool = False
    length: PositiveSize | None = Field(default=None, validate_default=True)
    held_short: Size = ZERO
    past: Size = ZERO
    beyond: Id | None = None
    beyond_through: bool = False
    thickness: PositiveSize
    set_back: Size
    relief_reference: Size = ZERO
    relief_far: Size = ZERO
    all_round: Size = ZERO
    end_allowance: Size = ZERO
    bottom_clearance: Size | None = None
    pegs: Pegs | None = None

    @field_validator("length")
    @classmethod
    def _long_enough_said(cls, length: Length | None, info: ValidationInfo) -> Length | None:
        if length is None and not info.data.get("through", True):
            raise ValueError("is missing; write length = ... here, or through = true")
        return length

    @model_validator(mode="after")
    def _received_or_alone(self) -> Self:
        if self.into is None and self.at is not None:
            raise ValueError('has "at" but no "into"; name the timber that receives the tenon')
        mortised = self.bottom_clearance is not None or self.housing or self.inset != NO_INSET
        if self.into is None and mortised:
            raise ValueError(
                'has "inset", "housing" or "bottom_clearance" but no "into"; without a mortise '
                "leave them out"
            )
        if self.into is not None and self.cheeks_from is not None:
            raise ValueError(
                'takes "cheeks_from" only when it stands alone: with "into", the cheeks follow '
                "the receiving timber's grain; remove cheeks_from"
            )
        if self.into == self.timber:
            raise ValueError("cannot enter its own timber; name another in into")
        return self

    @model_validator(mode="after")
    def _through_or_blind(self) -> Self:
        if self.through and self.into is None:
            raise ValueError('has "through" but no "into"; name the timber that it goes through')
        bottomless = self.through and (self.beyond is None or self.beyond_through)
        if bottomless and self.bottom_clearance is not None:
            key = "beyond_through" if self.beyond_through else "through"
            raise ValueError(
                f'goes through, so its mortise has no bottom; remove "bottom_clearance" or "{key}"'
            )
        if self.held_short and not self.through:
            raise ValueError(
                'has "held_short" but does not go through; remove it, or write through = true'
            )
        if self.pegs is not None and self.pegs.blind_depth is not None and self.into is None:
            raise ValueError(
                'has pegs with "blind_depth" but no "into"; name the timber that they are bored in'
            )
        return self

    @model_validator(mode="after")
    def _past_the_first(self) -> Self:
        if self.past and not self.through:
            raise ValueError('has "past" but does not go through; write through = true')
        if self.past and self.length is not None:
            raise ValueError(
                'has "past" and "length", which says how far it stands out too; keep one of them'
            )
        if self.past and self.held_short and not self.beyond_through:
            raise ValueError('is held short and stands past; keep "held_short" or "past"')
        return self

    @model_validator(mode="after")
    def _goes_on(self) -> Self:
        if self.beyond is None and self.beyond_through:
            raise ValueError('has "beyond_through" but no "beyond"; name the timber past the first')
        if self.beyond is None:
            return self
        if not self.through:
            raise ValueError('has "beyond" but does not go through; write through = true')
        if self.beyond in (self.timber, self.into):
            raise ValueError("cannot go on into a timber it has already; name a third in beyond")
        if not self.past and self.length is None:
            raise ValueError(
                'has "beyond", but nothing of it stands past the timber it goes through; write '
                "past = ..., or length = ..."
            )
        if self.held_short and not self.beyond_through:
            raise ValueError(
                'stops in the timber beyond, so it is held short of none; remove "held_short", or '
                "write beyond_through = true"
            )
        return self

    def timbers(self) -> dict[str, str]:
        """The tenoned timber, the one that receives it, and the one it goes on into."""
        named = {"timber": self.timber, "into": self.into, "beyond": self.beyond}
        return {key: timber for key, timber in named.items() if timber is not None}

    def goes_on(self) -> tuple[Bearing, ...]:
        """The tenon's end, in the timber past the one it goes through."""
        if self.beyond is None:
            return ()
        return (Bearing(self.timber, self.end, self.beyond, ZERO, self.mortise, self.scribed),)

    def cuts_through(self, other: Work) -> str | None:
        """The timber of another joint whose tenon this one's goes through; None for any other."""
        if not isinstance(other, TenonJoint) or other.id not in self.meets:
            return None
        same = self.into is not None and self.into == other.into and self.timber != other.timber
        return other.timber if same and self.end.square_to(other.end) else None

    def sums(self) -> dict[str, Sum]:
        """Where the timber stands on the receiving one."""
        return {"inset": self.inset} | ({"at": self.at} if self.at is not None else {})

    def extensions(self) -> tuple[Extension, ...]:
        """The tenon and its end allowance, as far as it is known without the receiving timber."""
        known = self.past_the_wood if self.length is None else self.length
        return (
            Extension(
                self.timber,
                self.end,
                known + self.end_allowance,
                self.scribed,
                through=self.passes(),
            ),
        )

    def passes(self) -> Bearing | None:
        """The bearing whose wood settles the tenon's length; None where that is given."""
        return next(iter(self.bearings()), None) if self.length is None else None

    def bearings(self) -> tuple[Bearing, ...]:
        """The shoulder, on the face of the receiving timber or in its housing."""
        if self.into is None:
            return ()
        return (
            Bearing(self.timber, self.end, self.into, self.housing, self.mortise, self.scribed),
        )

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """An end the timber does not have, or a receiving timber it cannot enter."""
        timber = timbers[self.timber]
        if self.into is None:
            fault = end_fault("end", self.end, timber)
            return (fault,) if fault else ()
        typed = {"at": self.at is not None, "inset": self.inset != NO_INSET}
        found = tuple(meeting_faults(timber, self.end, timbers[self.into], typed))
        if found or self.beyond is None:
            return found
        return tuple(_beyond_faults(timber, timbers[self.into], timbers[self.beyond]))

    @property
    def past_the_wood(self) -> Length:
        """How far it stands out of the timber it goes through; below nothing if held short of it.

        That counts where no length is given.
        """
        return self.past or (ZERO if self.beyond else -self.held_short)

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


def _beyond_faults(timber: Timber, into: Timber, beyond: Timber) -> Iterator[Fault]:
    """What keeps a tenon from going on into a third timber."""
    lost = next((each for each in (timber, into, beyond) if not each.placed), None)
    if lost is not None:
        problem = f"needs the places of all three timbers, and {lost.name} has none"
        yield Fault("beyond", problem, 'give it its place with "at"')
    elif timber.pose.head is not beyond.pose.head:
        problem = f"is {beyond.name}, which lies in another slope than {timber.name}"
        yield Fault("beyond", problem, "name a timber that stands, lies or is rolled the same way")
    elif not beyond.reference_end.square_to(timber.reference_end):
        problem = (
            f"{timber.name} and {beyond.name} run the same way, so one cannot go into the other"
        )
        yield Fault("beyond", problem, "name a timber that crosses it")
