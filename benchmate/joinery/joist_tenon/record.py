"""The stored parameters of joists tenoned into a beam's side."""

from collections.abc import Callable
from typing import Literal, Self

from benchmate.frame.level_end import LevelEnd
from benchmate.joinery.joist_tenon.proportions import penetration, published
from benchmate.measure.length import ZERO
from benchmate.measure.reading import Unit
from benchmate.model.fields import PositiveSize, Size
from benchmate.model.stick import Wood
from benchmate.model.work import Bearing, Extension


class JoistTenon(LevelEnd):
    """A tenon on a joist's end, as wide as the joist, in a mortise in the beam's side.

    The mortise is `bottom_clearance` deeper than the tenon is long, the shop's own if not given.
    """

    bottom_clearance: Size | None = None

    def bearings(self) -> tuple[Bearing, ...]:
        """The shoulder, on the beam's face."""
        return (Bearing(self.timber, self.end, self.into, ZERO, self.mortise),)

    @property
    def mortise(self) -> str:
        """The id of the mortise on the beam."""
        return f"{self.id}-mortise"


class SoffitTenon(JoistTenon):
    """A low tenon, flush with the joist's underside or `above_soffit`, under a sloping haunch.

    The tenon is `thickness` deep and `length` long. Above it the joist goes in as far as `haunch`
    at the tenon, and from there up less and less, to nothing at its top: a long bearing low down,
    and less of the beam cut away above it (Nair-haunch, trade notes 2.4).
    """

    family: Literal["soffit tenon"]
    thickness: PositiveSize
    length: PositiveSize
    haunch: PositiveSize
    above_soffit: Size = ZERO

    def extensions(self) -> tuple[Extension, ...]:
        """The tenon."""
        return (Extension(self.timber, self.end, self.length),)


class TuskTenon(JoistTenon):
    """A tenon in the middle of the beam, with a tusk that bears under it and a horn above it.

    The tenon is `thickness` deep, its top `set_back` below the joist's, and it goes `length` into
    the beam in all. Under it the tusk, `tusk_height` deep, is let in by `tusk`; above it the horn
    is let in by `horn` at the tenon and slopes up to nothing at the joist's top. What is not given
    is as published (`proportions`); the horn is let in as far as the tusk.
    """

    family: Literal["tusk tenon"]
    thickness: PositiveSize | None = None
    set_back: Size | None = None
    length: PositiveSize | None = None
    tusk: PositiveSize | None = None
    tusk_height: PositiveSize
    horn: Size | None = None

    def extensions(self) -> tuple[Extension, ...]:
        """The tenon. Raises ValueError while its length is not settled."""
        if self.length is None:
            raise ValueError(f"{self.id} has no length until its timbers settle it")
        return (Extension(self.timber, self.end, self.length),)

    def proportioned(self, wood: Callable[[str], Wood], bare: Unit) -> Self:
        """The joint with what is not given as published, but for `set_back`.

        That follows from where the two meet.
        """
        usual = published(wood(self.timber), wood(self.into), bare)
        thickness, tusk = self.thickness or usual.thickness, self.tusk or usual.tusk
        return self.model_copy(
            update={
                "thickness": thickness,
                "length": self.length or penetration(thickness),
                "tusk": tusk,
                "horn": tusk if self.horn is None else self.horn,
            }
        )
