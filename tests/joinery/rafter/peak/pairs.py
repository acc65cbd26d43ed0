"""Pairs of rafters for the tests of a peak."""

from collections.abc import Mapping

from benchmate.frame.frame import Real
from benchmate.joinery.rafter.peak.shape import HeadShape, head_shapes
from tests.joinery.rafter.roofs import Roof, Words, pair, peak

RULED: Mapping[str, Words] = {
    each: {"rule": "square", "inner": "6 x 4"} for each in ("rafter", "mate")
}
"""Both of a pair by square rule."""


def heads(
    rises: tuple[str, str] = ("12", "12"),
    *,
    sticks: Mapping[str, Real] | None = None,
    own: Mapping[str, Words] | None = None,
    mate: Mapping[str, str] | None = None,
    **words: object,
) -> tuple[HeadShape, HeadShape]:
    """Both heads of a pair at these pitches; `mate` is what else is said of the second's roof."""
    joint = peak(**words)
    roof = Roof(rise=rises[0], own=own or {})
    other = Roof(rise=rises[1], heading="west", own=own or {}, **(mate or {}))  # type: ignore[arg-type]
    return head_shapes(joint, pair(roof, other, joint, real=sticks))
