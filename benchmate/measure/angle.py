"""Angles as a bevel shows them: from a rise and a run, in tenths of a degree."""

from math import atan2, degrees


def tenths(rise: int, run: int) -> int:
    """The angle whose tangent is rise over run, both nothing or more, to a tenth of a degree."""
    return round(10 * degrees(atan2(rise, run)))


def angle_text(tenth: int) -> str:
    """An angle as it is read: `33.7°`, `45°`."""
    whole, rest = divmod(tenth, 10)
    return f"{whole}.{rest}°" if rest else f"{whole}°"
