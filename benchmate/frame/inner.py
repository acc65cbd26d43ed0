"""The largest perfect timber that lies inside every stick of a class, by square rule.

It may be no larger than the smallest section found at any joint of any member of the class (trade
notes, the square-rule essay under Timberbee).
"""

from collections.abc import Iterable

from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.model.solids import Axis
from benchmate.model.stick import Wood


def safe_inner(woods: Iterable[Wood]) -> Section | None:
    """The largest safe inner section of some sticks; None where none has been measured.

    A depth that was measured on none of them is left as the first is drawn.
    """
    sticks = tuple(woods)
    found = {axis: _measured(sticks, axis) for axis in (Axis.FIRST, Axis.SECOND)}
    if not any(found.values()):
        return None
    first, second = (min(sizes, default=sticks[0].drawn(axis)) for axis, sizes in found.items())
    return Section(first, second)


def _measured(sticks: tuple[Wood, ...], axis: Axis) -> list[Length]:
    """Every depth measured on one axis, at whatever place."""
    sizes = (size for wood in sticks for size in wood.measured.values())
    depths = (size.first if axis is Axis.FIRST else size.second for size in sizes)
    return [depth for depth in depths if depth is not None]
