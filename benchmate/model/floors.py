"""Floors that other joints leave: where a notch takes away the face a mortise opens on.

A family knows only its own joint. Which cuts lie over which is read off them once all are known,
and a family that can is asked again, with the floors under which its mouths then lie.
"""

from dataclasses import dataclass

from benchmate.measure.length import Length
from benchmate.model.directions import Face


@dataclass(frozen=True, slots=True, kw_only=True)
class Floor:
    """The floor that a cut of the feature `over` leaves all across a mouth of the feature `under`.

    Both are on one `timber`. The mouth opens on a `face`, and the floor lies parallel to that at a
    reading `at` on its axis: as it came out, where that was measured. `name` is what the work over
    it is called: `notch for Middle tie`.
    """

    timber: str
    under: str
    over: str
    face: Face
    at: Length
    name: str

    @property
    def words(self) -> str:
        """The floor as something to hook on."""
        return f"floor of the {self.name}"


Floors = tuple[Floor, ...]


def floor_at(floors: Floors, timber: str, under: str, face: Face) -> Floor | None:
    """The floor at one mouth of a feature, the deepest of several; None where its face stays."""
    found = [
        each for each in floors if (each.timber, each.under, each.face) == (timber, under, face)
    ]
    deepest = max if face.is_reference else min
    return deepest(found, key=lambda each: each.at, default=None)
