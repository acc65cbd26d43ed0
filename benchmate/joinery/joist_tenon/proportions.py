"""The published proportions of a tusk tenon, offered beside what is given, or used instead.

Tenon 1/6 of the beam's depth; tusk let in 1/6 of the joist's depth, and the horn above as far;
blind penetration twice the tenon's own depth; lower edge of the mortise on the beam's centre line
(Rivington-tusk, trade notes 2.4). "About" each time there, so sixths are rounded to a sixteenth of
an inch or a millimetre. Depths are as drawn, or the inner timber's: a proportion does not follow
what one stick measures.
"""

from typing import NamedTuple

from benchmate.frame.flats import nearest
from benchmate.measure.length import NM_PER_INCH, NM_PER_MM, Length
from benchmate.measure.reading import Unit
from benchmate.model.directions import Direction
from benchmate.model.stick import Wood, axis_from

SIXTH = 6
"""The part of the beam's depth that the tenon takes, and of the joist's that the tusk lets in."""

_GRAIN = {Unit.INCH: NM_PER_INCH // 16, Unit.MM: NM_PER_MM}


class Tusk(NamedTuple):
    """The published sizes for one joist in one beam: tenon depth, penetration, tusk let in."""

    thickness: Length
    length: Length
    tusk: Length


def plumb_depth(wood: Wood) -> Length:
    """How deep a level timber is as drawn, or its inner timber."""
    return wood.held(axis_from(wood.pose.face(Direction.UP)))


def published(joist: Wood, beam: Wood, bare: Unit) -> Tusk:
    """The published sizes for a joist in a beam."""
    thickness, tusk = (_sixth(plumb_depth(wood), bare) for wood in (beam, joist))
    return Tusk(thickness=thickness, length=penetration(thickness), tusk=tusk)


def penetration(thickness: Length) -> Length:
    """How far a blind tenon of this depth goes in: twice its depth."""
    return thickness * 2


def _sixth(deep: Length, bare: Unit) -> Length:
    grain = _GRAIN[bare]
    return Length(grain * nearest(deep.nm, SIXTH * grain))
