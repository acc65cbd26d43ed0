"""The housing round a mortise: the recess that takes the whole end of the tenoned timber."""

from benchmate.frame.housing import Housing
from benchmate.joinery.tenon.mortise_shape import MortiseShape


def housing(shape: MortiseShape) -> Housing:
    """Where it lies; its floor is where the tenon's shoulder bears."""
    tenon = shape.tenon
    return Housing(
        stick=shape.stick,
        feature=shape.feature,
        guest=tenon.stick,
        guest_places=tenon.places,
        guest_along=tenon.edges,
        entry=shape.entry,
        along=shape.end_along,
        across=shape.end_across,
        seat=shape.seat,
        recess=shape.recess,
    )
