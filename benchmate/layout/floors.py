"""Which joint's cut takes away the face that another joint's mortise opens on.

How it works
1. A cut leaves a floor under a face where one plane alone bounds it in from there, parallel to it.
   Where the work over it was measured as cut, that is where the floor lies.
2. A mouth is closed on its face: a housing that runs out to an arris comes out on the face beside
   as well, and does not open on that.
3. A mouth lies all in such a cut where its outline on the face does, corner by corner, as both are
   convex. It must go deeper than the floor, or there is nothing left of it to make.
4. Only work that is done in the same spell counts: a hole that is made when the finished tenon is
   fitted says itself what comes before it.
"""

from collections.abc import Iterator

from benchmate.layout.outlines import FaceView, Outline, Point, face_view, outline
from benchmate.measure.length import Length
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Feature, Stage
from benchmate.model.floors import Floor, Floors
from benchmate.model.solids import Cut, Plane
from benchmate.model.stick import Stick
from benchmate.model.words import lower_first

MAKING = (Stage.CUT, Stage.PARE)
"""The spell in which wood is taken away, before anything is measured as cut."""

MADE = (*MAKING, Stage.AS_CUT)
"""The same, and measuring what came out of it."""


def floors_on(stick: Stick, features: tuple[Feature, ...]) -> Floors:
    """Every floor that one joint of a timber leaves over a mouth of another."""
    made = [(each, _spans(each)) for each in features if _is_made(each)]
    found = (
        floor
        for under, own in made
        for over, others in made
        if under.joint != over.joint
        for cut, span in own
        for wider, reach in others
        if reach[0] < span[1] and span[0] < reach[1]
        for floor in _floors(stick, under, cut, over, wider)
    )
    return tuple(dict.fromkeys(found))


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
        plane = _floor(wider, view)
        if plane is None or not _goes_on(cut, view, _at(plane, view)):
            continue
        mouth, around = outline(cut, view), outline(wider, view)
        if not (mouth and around and _closed(mouth, view)):
            continue
        if all(_holds(around, corner) for corner in mouth.points):
            made = {each.line: each.at for each in over.made}
            yield Floor(
                timber=stick.id,
                under=under.id,
                over=over.id,
                face=face,
                at=made.get(plane.line or "", Length(_at(plane, view))),
                name=lower_first(over.title),
            )


def _floor(cut: Cut, view: FaceView) -> Plane | None:
    """The one plane, parallel to a face, that a cut from there ends on; None for any other cut."""
    found = [plane for plane in cut.planes if plane.normal[view.fixed]]
    if len(found) != 1 or any(found[0].normal[axis] for axis in view.shown):
        return None
    return found[0] if _inwards(found[0], view) > 0 else None


def _inwards(plane: Plane, view: FaceView) -> int:
    """Above nothing where the waste of a plane lies on the side of a face."""
    part = plane.normal[view.fixed]
    return part if view.face.is_reference else -part


def _at(plane: Plane, view: FaceView) -> int:
    return plane.offset // plane.normal[view.fixed]


def _goes_on(cut: Cut, view: FaceView, at: int) -> bool:
    """Whether a cut goes deeper from a face than a floor; one with a sloping bottom is taken to."""
    for plane in cut.planes:
        square = not any(plane.normal[axis] for axis in view.shown)
        if square and _inwards(plane, view) > 0:
            bottom = _at(plane, view)
            return bottom > at if view.face.is_reference else bottom < at
    return True


def _closed(mouth: Outline, view: FaceView) -> bool:
    """Whether an outline on a long face runs out to neither of its edges."""
    edges = view.low[1], view.high[1]
    return all(edges[0] < across < edges[1] for _, across in mouth.points)


def _holds(around: Outline, corner: Point) -> bool:
    """Whether a convex outline holds a point, or has it on an edge."""
    turns = {
        (end[0] - start[0]) * (corner[1] - start[1]) - (end[1] - start[1]) * (corner[0] - start[0])
        for start, end, _ in around.edges()
    }
    return min(turns) >= 0 or max(turns) <= 0


def last_making(feature: Feature) -> str:
    """The step after which a feature is made, and measured where it is. Raises ValueError."""
    made = [task for task in feature.tasks if task.stage in MADE]
    if not made:
        raise ValueError(f"{feature.id} has nothing to make")
    *_, last = sorted(made, key=lambda task: task.stage)
    return f"{feature.id}/{last.id}"
