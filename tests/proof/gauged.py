"""What the steps say of lines gauged from an arris, held against the planes they bound.

So far in from the arris on both its faces: the plane has to pass through both lines, with the arris
itself on its waste side.
"""

from collections.abc import Iterator

from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Feature, Line
from benchmate.model.solids import Plane
from benchmate.model.stick import axis_from
from tests.proof.wood import Log

Arris = tuple[Face, Face]


def gauged(feature: Feature) -> tuple[Line, ...]:
    """The lines of a feature that are gauged from arrises."""
    return tuple(line for line in feature.lines if line.axis is None and line.slant is None)


def misgauged(log: Log, feature: Feature) -> Iterator[str]:
    """What is wrong between the gauged lines of a timber and their planes."""
    for line in gauged(feature):
        where = f"{log.timber.id}: {feature.id}/{line.id}"
        (reading,) = log.layout.step(f"{feature.id}/{line.id}").readings
        told = _arrises(log, reading.hook)
        planes = [each for cut in feature.cuts for each in cut.planes if each.line == line.id]
        if len(told) != len(planes):
            yield f"{where} is gauged from {reading.hook}, but bounds {len(planes)} cuts"
        for arris in told:
            if not any(_gauged_from(log, plane, arris, reading.value.nm) for plane in planes):
                yield f"{where} is not {reading.value} in from {reading.hook}"


def _arrises(log: Log, hook: str) -> list[Arris]:
    """The arrises that a figure is gauged from: `North-East arris`, `top-North, top-South arrises`.

    Raises KeyError for a face that the timber does not have.
    """
    pose = log.layout.stick.pose
    faces = {pose.words(face).removesuffix(" face"): face for face in LONG_FACES}
    names = hook.removesuffix("es").removesuffix(" arris").split(", ")
    pairs = (name.split("-") for name in names)
    return [(faces[one], faces[other]) for one, other in pairs]


def _gauged_from(log: Log, plane: Plane, arris: Arris, leg: int) -> bool:
    """Whether a plane passes a leg in from an arris on both its faces, the arris being waste."""
    corner, inward = [0, 0, 0], [0, 0, 0]
    sizes = (0, log.section.first.nm, log.section.second.nm)
    for face in arris:
        number = axis_from(face).value.index(1)
        corner[number] = 0 if face.is_reference else sizes[number]
        inward[number] = 1 if face.is_reference else -1
    _, nu, nv = plane.normal
    at_corner = nu * corner[1] + nv * corner[2]
    on_faces = {at_corner + nu * inward[1] * leg, at_corner + nv * inward[2] * leg}
    return on_faces == {plane.offset} and at_corner < plane.offset
