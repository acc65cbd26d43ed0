"""The wood that a tenon passes which goes right through the timber it bears in."""

from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from benchmate.model.stick import Unmeasured, Wood, axis_from, reference_for
from benchmate.model.work import Bearing


def exit_face(wood: Wood, bearing: Bearing) -> Face:
    """The face of the receiving timber where an end that goes through comes out."""
    return wood.pose.face(bearing.end)


def wood_passed(wood: Wood, bearing: Bearing) -> Length:
    """From where an end bears to the face it comes out on, as the receiving timber really is there.

    An end that enters by the far face bears where the frame counts on that face, and comes out on
    the reference face. Below nothing where it bears past the face it should come out on.
    """
    axis = _axis(wood, bearing)
    deep = wood.framed if exit_face(wood, bearing).is_reference else wood.depth
    return deep(axis, bearing.place) - bearing.depth


def unmeasured_passed(wood: Wood, bearing: Bearing) -> Unmeasured | None:
    """The far face that bounds the wood passed, while nobody has measured it there.

    By square rule an end that enters by the far face goes from the inner timber to the reference
    face, whatever the stick.
    """
    axis = _axis(wood, bearing)
    held = wood.inner is not None and exit_face(wood, bearing).is_reference
    if held or wood.measured_depth(axis, bearing.place) is not None:
        return None
    words = f"{wood.name}'s {wood.pose.words(reference_for(axis).opposite)}"
    return Unmeasured(words, bearing.into, bearing.place)


def _axis(wood: Wood, bearing: Bearing) -> Axis:
    return axis_from(exit_face(wood, bearing))
