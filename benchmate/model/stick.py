"""A stick: a timber with its real sizes, as the engine sees it."""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.measure.length import Length
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
class Stick:
    """A timber with its real sizes.

    `body` is from the reference shoulder to the far shoulder; `near` and `far` are the wood beyond
    them (tenon and its end allowance), nothing where an end has no tenon.
    """

    id: str
    name: str
    pose: Pose
    nominal: Section
    body: Length
    near: Length
    far: Length
    trim: Length
    measured: Mapping[str, Measured]
    as_cut: Mapping[str, AsCut]

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

    def depth(self, axis: Axis, *places: str) -> Length:
        """The real depth in from the first or second face at the first place measured.

        Falls back to what was measured for the whole stick, then to the nominal section.
        """
        for place in (*places, ALL_ALONG):
            found = self.measured.get(place)
            if found is None:
                continue
            real = found.first if axis is Axis.FIRST else found.second
            if real is not None:
                return real
        return self.drawn(axis)

    def drawn(self, axis: Axis) -> Length:
        """The depth in from the first or second face that the stick is drawn with."""
        return self.nominal.first if axis is Axis.FIRST else self.nominal.second

    def section(self, *places: str) -> Section:
        """The real section at the first place measured, as `depth` finds each side of it."""
        return Section(self.depth(Axis.FIRST, *places), self.depth(Axis.SECOND, *places))

    def place_at(self, end: Face) -> str:
        """The place name of one of the stick's ends."""
        return end_place(self.pose.direction(end))


def axis_from(face: Face) -> Axis:
    """The axis measured in from a long face or the face across from it."""
    return Axis.FIRST if face in (Face.FIRST, Face.FAR_FIRST) else Axis.SECOND


def reference_for(axis: Axis) -> Face:
    """The reference face an axis across the timber starts at."""
    return Face.FIRST if axis is Axis.FIRST else Face.SECOND


def across(axis: Axis) -> Axis:
    """The other axis across the timber."""
    return Axis.SECOND if axis is Axis.FIRST else Axis.FIRST
