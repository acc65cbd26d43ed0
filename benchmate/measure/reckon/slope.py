"""A run and a rise: the length along the slope, and the pitch."""

from dataclasses import dataclass
from fractions import Fraction
from math import lcm

from benchmate.measure.length import Length
from benchmate.measure.reckon.rounding import Reckoned, root, settled


@dataclass(frozen=True, slots=True, kw_only=True)
class Slope:
    """How far it goes level and how far up, in nanometres; ValueError unless both are above 0."""

    run: Fraction
    rise: Fraction
    names: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if self.run <= 0 or self.rise <= 0:
            raise ValueError("run and rise are above zero")

    @property
    def length(self) -> Reckoned:
        """From end to end along the slope."""
        return root(self.run**2 + self.rise**2)

    @property
    def ratio(self) -> tuple[int, int]:
        """Run and rise in whole numbers that have the same ratio exactly."""
        whole = lcm(self.run.denominator, self.rise.denominator)
        return int(self.run * whole), int(self.rise * whole)

    def rise_in(self, run: Length) -> Reckoned:
        """The rise in another run, as a pitch is said."""
        return settled(self.rise * run.nm / self.run)
