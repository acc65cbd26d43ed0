"""A stick: a timber with its real sizes, as the engine sees it."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import NamedTuple

from benchmate.measure.length import ZERO, Length
from benchmate.measure.section import Section
from benchmate.model.directions import Direction, Face, Pose
from benchmate.model.progress import AsCut, Measured
from benchmate.model.solids import Axis

STICK = "stick"
"""The feature id of the steps that belong to the whole stick."""

ENDS = "end"
"""The feature id of a timber's two end cuts."""

ALL_ALONG = "all"
"""The place whose measured section stands for the whole stick."""

MIDDLE = "middle"
"""The place half-way along a stick."""


def end_place(direction: Direction) -> str:
    """The place name of the end that looks in a direction: `foot`, `head`, `west-end`."""
    return {Direction.DOWN: "foot", Direction.UP: "head"}.get(direction, f"{direction.word}-end")


@dataclass(frozen=True, slots=True, kw_only=True)
class Wood:
    """A timber's section, drawn and real, whatever its length.

    `inner` is the section of the perfect timber inside it under square rule, sharing its reference
    arris; None under mill rule.
    """

    id: str
    name: str
    pose: Pose
    nominal: Section
    measured: Mapping[str, Measured]
    as_cut: Mapping[str, AsCut]
    inner: Section | None = None

    def depth(self, axis: Axis, *places: str) -> Length:
        """The real depth in from the first or second face at the first place measured.

        Falls back to what was measured for the whole stick, then to the nominal section.
        """
        real = self.measured_depth(axis, *places)
        return self.drawn(axis) if real is None else real

    def measured_depth(self, axis: Axis, *places: str) -> Length | None:
        """The depth measured at the first of some places, or for the whole stick, if any was."""
        for place in (*places, ALL_ALONG):
            found = self.measured.get(place)
            if found is None:
                continue
            real = found.first if axis is Axis.FIRST else found.second
            if real is not None:
                return real
        return None

    def drawn(self, axis: Axis) -> Length:
        """The depth in from the first or second face that the stick is drawn with."""
        return self.nominal.first if axis is Axis.FIRST else self.nominal.second

    def held(self, axis: Axis) -> Length:
        """The depth that far lines are struck at, whatever the stick: inner, or as drawn."""
        if self.inner is None:
            return self.drawn(axis)
        return self.inner.first if axis is Axis.FIRST else self.inner.second

    def framed(self, axis: Axis, *places: str) -> Length:
        """The depth that the frame counts on at a joint: inner, or as it really is there."""
        return self.depth(axis, *places) if self.inner is None else self.held(axis)

    def over(self, axis: Axis, *places: str) -> Length:
        """What a joint takes off the far face to come to the framed depth: nothing or more.

        Below nothing where the stick is smaller than its inner timber, which is a finding.
        """
        return self.depth(axis, *places) - self.framed(axis, *places)

    def over_on(self, face: Face, *places: str) -> Length:
        """The same on one face: nothing comes off a reference face."""
        return ZERO if face.is_reference else self.over(axis_from(face), *places)

    def in_from(self, face: Face, at: Length, *places: str) -> Length:
        """How far in from a long face, as that really is there, a reading across the stick lies.

        The other way round as well: the reading of a place so far in.
        """
        return at if face.is_reference else self.depth(axis_from(face), *places) - at

    def section(self, *places: str) -> Section:
        """The real section at the first place measured, as `depth` finds each side of it."""
        return Section(self.depth(Axis.FIRST, *places), self.depth(Axis.SECOND, *places))

    def place_at(self, end: Face) -> str:
        """The place name of one of the stick's ends: `foot`, `head`, `west-end`."""
        return self.pose.words(end).replace(" ", "-")


class Unmeasured(NamedTuple):
    """A face that a length follows and nobody has measured there: its words, timber and place."""

    words: str
    timber: str
    place: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Stick(Wood):
    """A timber with its real sizes.

    `body` is from the reference shoulder to the far shoulder; `near` and `far` are the wood beyond
    them (tenon and its end allowance), nothing where an end has no tenon. `near_housed` and
    `far_housed` are how much of the body lies inside the timbers its ends bear in. `placed` says
    that its shoulders follow from what it meets; at a `scribed` end they are marked by hand.
    An end that is `lapped` goes on past its shoulder in a lap that other joints may be cut in.
    `unsure` says, by end, which face a shoulder follows that nobody has measured there yet, and
    `unsure_beyond` which one the length of a tenon that goes through follows.
    """

    body: Length
    near: Length
    far: Length
    trim: Length
    near_housed: Length = ZERO
    far_housed: Length = ZERO
    placed: bool = False
    scribed: tuple[Face, ...] = ()
    lapped: tuple[Face, ...] = ()
    unsure: Mapping[Face, Unmeasured] = field(default_factory=dict)
    unsure_beyond: Mapping[Face, Unmeasured] = field(default_factory=dict)

    @property
    def start(self) -> Length:
        """The squared reference end, from the reference shoulder: nothing or less."""
        return -self.near

    @property
    def finish(self) -> Length:
        """The far end, from the reference shoulder."""
        return self.body + self.far

    @property
    def overall(self) -> Length:
        """From end to end, tenons and their end allowances included."""
        return self.near + self.body + self.far

    @property
    def room(self) -> tuple[Length, Length]:
        """From where to where a joint in its side may lie: its body, and any lap at its ends."""
        near = self.start if Face.REFERENCE_END in self.lapped else ZERO
        return near, self.finish if Face.FAR_END in self.lapped else self.body

    def past_room(self, start: Length, finish: Length) -> Length:
        """How far a joint between two readings runs past that; nothing or less if it does not."""
        low, high = self.room
        return max(low - start, finish - high)

    def shoulder(self, end: Face) -> Length:
        """The reading of the shoulder at an end."""
        return ZERO if end is Face.REFERENCE_END else self.body

    def back_from(self, end: Face, distance: Length) -> Length:
        """The reading of a place on the body, so far back from the shoulder at an end."""
        return distance if end is Face.REFERENCE_END else self.body - distance


def axis_from(face: Face) -> Axis:
    """The axis measured in from a long face or the face across from it."""
    return Axis.FIRST if face in (Face.FIRST, Face.FAR_FIRST) else Axis.SECOND


def reference_for(axis: Axis) -> Face:
    """The reference face an axis across the timber starts at."""
    return Face.FIRST if axis is Axis.FIRST else Face.SECOND


def across(axis: Axis) -> Axis:
    """The other axis across the timber."""
    return Axis.SECOND if axis is Axis.FIRST else Axis.FIRST
