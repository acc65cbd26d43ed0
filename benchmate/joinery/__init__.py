"""The catalogue of joint families: one line each."""

from benchmate.frame.family import Family
from benchmate.joinery import end_cut
from benchmate.joinery.brace import family as brace
from benchmate.joinery.chamfer import family as chamfer
from benchmate.joinery.diminished import family as diminished
from benchmate.joinery.half_dovetail import family as half_dovetail
from benchmate.joinery.joggle import family as joggle
from benchmate.joinery.joist import family as joist
from benchmate.joinery.joist_tenon import family as joist_tenon
from benchmate.joinery.lap import family as lap
from benchmate.joinery.rafter.peak import family as rafter_peak
from benchmate.joinery.rafter.ridge import family as rafter_ridge
from benchmate.joinery.rafter.seat import family as rafter_seat
from benchmate.joinery.rafter.tail import family as rafter_tail
from benchmate.joinery.scarf import family as scarf
from benchmate.joinery.tenon import family as tenon
from benchmate.model.record import Record

FAMILIES: tuple[Family, ...] = (
    end_cut.FAMILY,
    tenon.FAMILY,
    diminished.FAMILY,
    half_dovetail.FAMILY,
    joist.FAMILY,
    joist.DOVETAIL,
    joist_tenon.SOFFIT,
    joist_tenon.TUSK,
    brace.FAMILY,
    rafter_seat.FAMILY,
    rafter_tail.FAMILY,
    rafter_ridge.FAMILY,
    rafter_peak.FAMILY,
    joggle.FAMILY,
    scarf.FAMILY,
    lap.FAMILY,
    chamfer.FAMILY,
)

_BY_RECORD = {family.record: family for family in FAMILIES}


def family_of(record: Record) -> Family:
    """The family that a stored record belongs to. Raises KeyError for a stranger's."""
    return _BY_RECORD[type(record)]
