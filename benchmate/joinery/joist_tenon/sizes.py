"""A tusk tenon's sizes beside those that are published for its joist and its beam."""

from benchmate.joinery.joist_tenon.proportions import penetration
from benchmate.joinery.joist_tenon.shape import EndShape
from benchmate.measure.area import area_text
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside

_RULES = {
    "thickness": "1/6 of the beam's depth",
    "tusk": "1/6 of the joist's depth",
    "haunch": "as far as the tusk is let in",
    "length": "twice the tenon's own depth",
}


def as_published(shape: EndShape, size: str) -> tuple[Beside, ...]:
    """What an old handbook's rule gives for a size, beside a tusk tenon's; else nothing.

    The rules: see `proportions`. For the penetration it counts the tenon as it is laid out, and
    for the horn the tusk.
    """
    usual = shape.part.usual
    if usual is None:
        return ()
    found = {
        "thickness": usual.thickness,
        "tusk": usual.tusk,
        "haunch": shape.part.tusk,
        "length": penetration(shape.thickness),
    }
    return (Beside(found[size], f"by an old handbook: about {_RULES[size]}"),)


def tusk_area(shape: EndShape, tape: Tape) -> str:
    """How much of all that bears lies under the tusk, in words."""
    area = area_text(shape.part.tusk, shape.real("width"), metric=tape.graduation.metric)
    return f"{area} of all that bears lies under it"
