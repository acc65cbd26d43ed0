"""Where a figure comes to: set off from a face, the squared end or a shoulder of a timber.

On a tenon there is no such face any more: there it is set off from a side that was cut. Where
another joint cut the face away it is set off from the floor that one's own step puts there.
"""

from benchmate.model.directions import Face
from benchmate.model.feature import Feature, Reading
from benchmate.model.solids import Axis
from benchmate.model.stick import reference_for
from benchmate.model.words import lower_first
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
    if reading.hook.startswith(FLOOR):
        return _below_floor(log, reading)
    return 0, _along(log, reading)


FLOOR = "floor of the "
"""What the hook on another joint's floor starts with, before that one's title."""


def _below_floor(log: Log, reading: Reading) -> tuple[int, float]:
    """A place below the floor of another joint, which is where the figures of its step put it."""
    title = reading.hook.removeprefix(FLOOR)
    over = next(each for each in log.layout.features if lower_first(each.title) == title)
    steps = (log.layout.step(f"{over.id}/{line.id}") for line in over.lines if line.id in FLOORS)
    number, at = set_off(log, next(steps).readings[0])
    words = log.layout.stick.pose.words
    far = words(reference_for((Axis.FIRST, Axis.SECOND)[number - 1]).opposite)
    ahead = f"towards the {far}" in reading.way
    return number, at + (reading.value.nm if ahead else -reading.value.nm)


FLOORS = ("floor", "lap")
"""The lines that a notch or a lap ends on."""


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


CUT_SIDES = {
    "narrow edge by the ": "reference-edge",
    "near cheek, by the ": "near-cheek",
    "far cheek": "far-cheek",
}
"""What a line on a tenon may hook on, and the line that was cut to there."""


def on_tenon(log: Log, feature: Feature, reading: Reading) -> tuple[int, float] | None:
    """The axis and the place of a reading that hooks on a cut side of a tenon; None if it does not.

    The feature is measured where its tenon is. Raises ValueError for a side that it has not.
    """
    hook = next((hook for hook in CUT_SIDES if reading.hook.startswith(hook)), None)
    if hook is None:
        return None
    tenon, face = log.feature(feature.place[0]), reading.hook.removeprefix(hook)
    lines = {line.id: line for line in tenon.lines}
    side = lines.get(CUT_SIDES[hook])
    if side is None or side.axis is None:
        raise ValueError(f"no {reading.hook} on {tenon.id}")
    number = side.axis.value.index(1)
    if face:
        if set_off(log, Reading(value=side.at, hook=face, way="")) != (number, side.at.nm):
            raise ValueError(f"no {hook}{face}")
        return number, side.at.nm + reading.value.nm
    return number, _far_cheek(log, tenon) - reading.value.nm


def _far_cheek(log: Log, tenon: Feature) -> float:
    """Where a tenon's far cheek lies: as it was cut, if that was measured."""
    at = {line.id: line.at.nm for line in tenon.lines}
    made = log.layout.stick.as_cut.get(tenon.id)
    if made is None or made.thickness is None:
        return at["far-cheek"]
    return at.get("near-cheek", 0) + made.thickness.nm
