"""Where a figure comes to: set off from a face, the squared end or a shoulder of a timber."""

from benchmate.model.directions import Face
from benchmate.model.feature import Reading
from benchmate.model.solids import Axis
from benchmate.model.stick import reference_for
from tests.proof.wood import Log


def set_off(log: Log, reading: Reading) -> tuple[int, float]:
    """The axis a reading goes along, and where on it it comes.

    Raises ValueError for a hook that is no face, no shoulder and not the squared end.
    """
    words, section = log.layout.stick.pose.words, log.section
    depths = (section.first.nm, section.second.nm)
    for axis in (Axis.FIRST, Axis.SECOND):
        number, near = axis.value.index(1), reference_for(axis)
        if reading.hook == words(near):
            return number, reading.value.nm
        if reading.hook == words(near.opposite):
            return number, depths[number - 1] - reading.value.nm
    return 0, _along(log, reading)


def _along(log: Log, reading: Reading) -> float:
    stick = log.layout.stick
    words = stick.pose.words
    if reading.hook == f"squared {words(Face.REFERENCE_END)}":
        return stick.start.nm + reading.value.nm
    for end in (Face.REFERENCE_END, Face.FAR_END):
        if reading.hook == f"{words(end)} shoulder line":
            ahead = f"towards the {words(Face.FAR_END)}" in reading.way
            return stick.shoulder(end).nm + (reading.value.nm if ahead else -reading.value.nm)
    raise ValueError(f"nothing to hook on: {reading}")
