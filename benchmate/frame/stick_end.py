"""One worked end of a real stick: what every family that cuts one reads off it alike."""

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.cheeks import Cheeks
from benchmate.frame.housing import Guest
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, across


@dataclass(frozen=True, slots=True, kw_only=True)
class StickEnd(ABC):
    """The `end` of a stick that the joint's `feature` is cut on, and its sizes `as_cut`."""

    stick: Stick
    end: Face
    feature: str
    as_cut: AsCut

    @property
    @abstractmethod
    def laid_out(self) -> Mapping[str, Length]:
        """The sizes that are typed once it is cut, by name, as they are laid out."""

    @property
    def places(self) -> tuple[str, ...]:
        """Where its section may have been measured, the nearest place first."""
        return (self.feature, self.stick.place_at(self.end))

    @property
    def shoulder(self) -> Length:
        """The reading of its shoulder: where the end comes to the face it enters."""
        return self.stick.shoulder(self.end)

    def along(self, beyond: Length) -> Length:
        """The reading of a place so far `beyond` the shoulder, towards the tip."""
        ahead = self.end is Face.FAR_END
        return self.shoulder + beyond if ahead else self.shoulder - beyond

    def cheeks_at(self, axis: Axis, near: Length, far: Length) -> Cheeks:
        """Two cheeks of a tenon on it, so far in on an axis across it."""
        return Cheeks(
            stick=self.stick, end=self.end, feature=self.feature, axis=axis, near=near, far=far
        )

    def real(self, size: str) -> Length:
        """A size as cut if it was typed, otherwise as laid out.

        Raises KeyError for one that is neither typed nor laid out here.
        """
        return self.as_cut.get(size) or self.laid_out[size]


@dataclass(frozen=True, slots=True, kw_only=True)
class CheekedEnd(StickEnd):
    """An end with a tenon whose cheeks lie `near` and `far` in on the `cheek_axis`."""

    cheek_axis: Axis
    near: Length
    far: Length

    @property
    def cheeks(self) -> Cheeks:
        """Its two cheeks."""
        return self.cheeks_at(self.cheek_axis, self.near, self.far)

    @property
    def edges(self) -> Axis:
        """The axis its narrow edges lie on."""
        return across(self.cheek_axis)

    @property
    def real_edges(self) -> Length:
        """How deep the stick really is from narrow edge to narrow edge."""
        return self.stick.depth(self.edges, *self.places)

    @property
    def framed_edges(self) -> Length:
        """How deep the frame counts on it being there."""
        return self.stick.framed(self.edges, *self.places)


@dataclass(frozen=True, slots=True, kw_only=True)
class JoistEnd(StickEnd):
    """The end of a level joist, its depths counted from its top on the `plumb` axis.

    `recess` is how far it goes in through the beam's real face.
    """

    plumb: Axis
    recess: Length

    @property
    def sides(self) -> Axis:
        """The axis across the joist."""
        return across(self.plumb)

    @property
    def framed(self) -> Length:
        """How deep the joist is there, as the frame counts on it."""
        return self.stick.framed(self.plumb, *self.places)

    @property
    def wide(self) -> Length:
        """How wide it is there, as the frame counts on it."""
        return self.stick.framed(self.sides, *self.places)

    @property
    def real_deep(self) -> Length:
        """The real depth of the stick from its top."""
        return self.stick.depth(self.plumb, *self.places)

    @property
    def real_wide(self) -> Length:
        """The real width of the stick."""
        return self.stick.depth(self.sides, *self.places)

    @property
    def guest(self) -> Guest:
        """Its end as a housing takes it."""
        return Guest(
            stick=self.stick,
            places=self.places,
            along=self.sides,
            cheeks=self.framed,
            edges=self.wide,
            recess=self.recess,
        )
