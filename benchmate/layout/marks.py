"""Which lines of a feature are marks to strike."""

from benchmate.measure.length import ZERO
from benchmate.model.feature import Feature, Line
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick

SHOULDER = "shoulder"
"""What every family calls the line its timber bears on."""


def is_mark(stick: Stick, feature: Feature, line: Line) -> bool:
    """Whether there is a line to strike: none where it falls on the stick's own arris or end.

    A slanting line falls on none.
    """
    if line.axis is None or line.faces or line.slant or line.id == SHOULDER:
        return True
    if line.axis is Axis.ALONG:
        return line.at not in (stick.start, stick.finish)
    return line.at not in (ZERO, stick.depth(line.axis, *feature.place))
