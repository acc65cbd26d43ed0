"""Which joint's cut takes away the face that another joint's mortise opens on.

How it works
1. A cut leaves a floor under a face where one plane alone bounds it in from there, parallel to it.
2. A mouth lies all in such a cut where its outline on the face does, corner by corner, as both are
   convex. It must go deeper than the floor, or there is nothing left of it to make.
3. Only work that is done in the same spell counts: a hole that is made when the finished tenon is
   fitted says itself what comes before it.
"""

from collections.abc import Iterator

from benchmate.frame.floors import Floor, Floors
from benchmate.layout.outlines import FaceView, Outline, Point, face_view, outline
from benchmate.measure.length import Length
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Feature, Stage
from benchmate.model.solids import Cut
from benchmate.model.stick import Stick
from benchmate.model.words import lower_first

MAKING = (Stage.CUT, Stage.PARE)
"""The spell in which wood is taken away, before anything is measured as cut."""


def floors_on(stick: Stick, features: tuple[Feature, ...]) -> Floors:
    """Every floor that one joint of a timber leaves over a mouth of another."""
    made = [(each, _spans(each)) for each in features if _is_made(each)]
    return tuple(
        floor
        for under, own in made
        for over, others in made
        if under.joint != over.joint
        for cut, span in own
        for wider, reach in others
        if reach[0] < span[1] and span[0] < reach[1]
        for floor in _floors(stick, under, cut, over, wider)
    )


def _is_made(feature: Feature) -> bool:
    """Whether a feature is a side of a joint that is cut before its timber is finished."""
    return bool(feature.joint) and any(task.stage is Stage.CUT for task in feature.tasks)


_Span = tuple[float, float]


def _spans(feature: Feature) -> tuple[tuple[Cut, _Span], ...]:
    """Its cuts, each with how far it runs along its timber; without bound where a slope ends it."""
    return tuple((cut, _span(cut)) for cut in feature.cuts)


def _span(cut: Cut) -> _Span:
    low, high = float("-inf"), float("inf")
    for plane in cut.planes:
        along, *others = plane.normal
        if any(others):
            continue
        if along > 0:
            high = min(high, plane.offset / along)
        else:
            low = max(low, plane.offset / along)
    return low, high


def _floors(stick: Stick, under: Feature, cut: Cut, over: Feature, wider: Cut) -> Iterator[Floor]:
    for face in LONG_FACES:
        view = face_view(stick, face, stick.section(*under.place))
        at = _floor(wider, view)
        if at is None or not _goes_on(cut, view, at):
            continue
        mouth, around = outline(cut, view), outline(wider, view)
        if mouth and around and all(_holds(around, corner) for corner in mouth.points):
            yield Floor(
                timber=stick.id,
                under=under.id,
                over=over.id,
                face=face,
                at=Length(at),
                name=lower_first(over.title),
            )


def _floor(cut: Cut, view: FaceView) -> int | None:
    """Where a cut from a face ends on one plane parallel to it; None for any other cut."""
    found = [plane for plane in cut.planes if plane.normal[view.fixed]]
    if len(found) != 1 or any(found[0].normal[axis] for axis in view.shown):
        return None
    (plane,) = found
    part = plane.normal[view.fixed]
    inwards = 1 if view.face.is_reference else -1
    return plane.offset // part if part * inwards > 0 else None


def _goes_on(cut: Cut, view: FaceView, at: int) -> bool:
    """Whether a cut that is bounded square to a face goes deeper from it than a floor."""
    for plane in cut.planes:
        part = plane.normal[view.fixed]
        inwards = part if view.face.is_reference else -part
        if inwards > 0:
            deep = plane.offset / part
            return deep > at if view.face.is_reference else deep < at
    return True


def _holds(around: Outline, corner: Point) -> bool:
    """Whether a convex outline holds a point, or has it on an edge."""
    turns = {
        (end[0] - start[0]) * (corner[1] - start[1]) - (end[1] - start[1]) * (corner[0] - start[0])
        for start, end, _ in around.edges()
    }
    return min(turns) >= 0 or max(turns) <= 0


def makings(feature: Feature) -> tuple[str, ...]:
    """The steps that take a feature's wood away, in order."""
    made = sorted(
        (task for task in feature.tasks if task.stage in MAKING), key=lambda task: task.stage
    )
    return tuple(f"{feature.id}/{task.id}" for task in made)
