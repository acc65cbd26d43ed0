"""The stored parameters of a scarf."""

from collections.abc import Iterator, Mapping
from typing import ClassVar, Literal, Self

from pydantic import model_validator

from benchmate.measure.length import ZERO, Length
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction, end_words, face_words
from benchmate.model.fields import (
    FaceDirection,
    Position,
    PositiveRun,
    PositiveSize,
    Size,
)
from benchmate.model.project import Timber
from benchmate.model.two_timbers import EndAtTimber
from benchmate.model.work import Abutment, Extension, Fault, end_fault, slope_words

Kind = Literal["half lap", "stop-splayed", "under-squinted", "bridled"]

NEEDS: dict[Kind, tuple[str, ...]] = {
    "half lap": (),
    "stop-splayed": ("butt",),
    "under-squinted": ("butt", "squint"),
    "bridled": ("tongue", "tongue_length", "set_back"),
}
"""The keys that each kind of scarf must have, besides those of every scarf."""

MAY: dict[Kind, tuple[str, ...]] = {
    "half lap": (),
    "stop-splayed": ("key",),
    "under-squinted": ("key",),
    "bridled": ("bottom_clearance",),
}
"""The keys that each kind may have."""


class ScarfJoint(EndAtTimber):
    """Two sticks of one line, joined end to end: an end of `timber` and the end of `into` it meets.

    They lap over `length`, from the tip of the one to the tip of the other, tongues and squints
    included; that is what the scarf costs, once, in wood. The middle of it lies `at` a coordinate
    along the line, which settles where both sticks end. The lap of `timber` keeps the face
    `keeps`, that of `into` the face across from it, each half the section as drawn, or inner.

    A `stop-splayed` lap slopes, from one square abutment, `butt` high, to the other. The abutments
    of an `under-squinted` one lean so that neither tip can lift: `squint` is how far along, in the
    height of the butt. Either may have a slot `key` wide and high through its middle for folding
    wedges. A `bridled` lap ends on both sticks in a tongue, `tongue` thick (usually 1-1/2", trade
    notes 2.6, Cadley), `tongue_length` long and `set_back` from the reference face beside the lap,
    in an open slot that is `bottom_clearance` longer, the shop's own if not given.
    """

    itself: ClassVar[str] = "cannot join a timber to itself; name another in into"

    settling: ClassVar[tuple[str, ...]] = ("timber", "into")

    family: Literal["scarf"]
    kind: Kind
    at: Position
    length: PositiveRun
    keeps: FaceDirection
    butt: PositiveSize | None = None
    squint: PositiveSize | None = None
    key: PositiveSize | None = None
    tongue: PositiveSize | None = None
    tongue_length: PositiveSize | None = None
    set_back: PositiveSize | None = None
    bottom_clearance: Size | None = None

    @model_validator(mode="after")
    def _its_own_kind(self) -> Self:
        needs, may = NEEDS[self.kind], MAY[self.kind]
        every = {key for keys in (*NEEDS.values(), *MAY.values()) for key in keys}
        given = {key for key in every if getattr(self, key) is not None}
        missing = [key for key in needs if key not in given]
        if missing:
            write = " and ".join(f"{key} = ..." for key in missing)
            raise ValueError(f'is "{self.kind}" but has no {_listed(missing)}; write {write} here')
        surplus = [key for key in sorted(given) if key not in (*needs, *may)]
        if surplus:
            raise ValueError(f'is "{self.kind}", which has no {_listed(surplus)}; take it out')
        return self

    def sums(self) -> dict[str, Sum]:
        """Where along the line the middle of the scarf lies."""
        return {"at": self.at}

    @property
    def tongued(self) -> Length:
        """How far a tongue reaches past the abutment beside it; nothing where there is none."""
        return self.tongue_length or ZERO

    @property
    def between(self) -> Length:
        """From the shoulder of the one stick to that of the other: the lap without its tongues."""
        return self.length - self.tongued - self.tongued

    def extensions(self) -> tuple[Extension, ...]:
        """Each stick's lap, from its own shoulder to its tip."""
        beyond = self.length - self.tongued
        return tuple(Extension(timber, end, beyond, lap=True) for timber, end in self._ends())

    def abutments(self) -> tuple[Abutment, ...]:
        """Both shoulders, as far from the middle as each other but for a nanometre."""
        (timber, end), (into, other) = self._ends()
        half = Length(self.between.nm // 2)
        return (
            Abutment(timber, end, into, self.at, half),
            Abutment(into, other, timber, self.at, self.between - half),
        )

    def _ends(self) -> tuple[tuple[str, Direction], tuple[str, Direction]]:
        return (self.timber, self.end), (self.into, self.end.opposite)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """Sticks that cannot be in one line, or a lap that keeps an end."""
        timber, into = timbers[self.timber], timbers[self.into]
        found = next(_standing_faults(timber, self.end, into), None)
        if found is not None:
            return (found,)
        if self.keeps.square_to(self.end):
            return ()
        sides = [each for each in Direction if each.square_to(self.end)]
        problem = f"is {self.keeps.word}, which is where an end of {timber.name} looks"
        return (Fault("keeps", problem, f"write one of {', '.join(each.word for each in sides)}"),)


def _standing_faults(timber: Timber, end: Direction, into: Timber) -> Iterator[Fault]:
    """What keeps two timbers from being two sticks of one line, the first reason first."""
    both = (("timber", timber), ("into", into))
    wrong_end = end_fault("end", end, timber)
    for key, each in both:
        slope = slope_words(each)
        if slope:
            problem = f"{each.name} {slope}, and a scarf joins sticks that stand or lie square"
            yield Fault(key, problem, "name one that stands or lies square")
    if wrong_end:
        yield wrong_end
    if end not in (into.reference_end, into.reference_end.opposite):
        problem = f"{into.name} does not run the same way as {timber.name}"
        yield Fault("into", problem, f"name the stick that the {end_words(end)} goes on in")
    for key, each in both:
        if not each.placed:
            problem = f"{each.name} has no place, and a scarf says where two sticks of a line meet"
            yield Fault(key, problem, f'give {each.name} its place with "at"')
    if {timber.first_face, timber.second_face} != {into.first_face, into.second_face}:
        faces = " and ".join(map(face_words, (timber.first_face, timber.second_face)))
        problem = f"{into.name} is not measured from the {faces}, as {timber.name} is"
        remedy = "give both sticks the same two reference faces, so that they come flush"
        yield Fault("into", problem, remedy)


def _listed(keys: list[str]) -> str:
    return " and ".join(f'"{key}"' for key in keys)
