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
    """The largest safe inner section of some sticks; None until both its depths were measured."""
    sticks = tuple(woods)
    first, second = (least_measured(sticks, axis) for axis in (Axis.FIRST, Axis.SECOND))
    return None if first is None or second is None else Section(first, second)


def least_measured(woods: Iterable[Wood], axis: Axis) -> Length | None:
    """The smallest depth measured in from one face, at whatever place; None if none was."""
    sizes = (size for wood in woods for size in wood.measured.values())
    depths = (size.first if axis is Axis.FIRST else size.second for size in sizes)
    return min((depth for depth in depths if depth is not None), default=None)
