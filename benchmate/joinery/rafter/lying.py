"""A level timber that a rafter crosses or bears on, seen in the plane the rafter rakes in."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from benchmate.frame.flats import Flat, built, carried
from benchmate.frame.frame import Frame
from benchmate.frame.place import Place
from benchmate.frame.practice import unsure_of
from benchmate.joinery.rafter.raking import Rafter
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Awaits
from benchmate.model.findings import Finding, stop
from benchmate.model.solids import Cut, Plane, above, below
from benchmate.model.stick import Stick, axis_from

START, FINISH = "start", "finish"
"""The lines where a rafter's two sides cross the timber, in order from its reference end."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Lying:
    """A plate, purlin or ridge that runs across a rafter.

    Its faces as the frame counts on them: `near` and `far` are how far ahead, the way the rafter
    rises, those lie that look down and up the slope; `top` and `bottom` how high. `start` and
    `finish` are where the rafter's sides cross it, with all of the rafter behind both.
    """

    stick: Stick
    place: Place
    feature: str
    rafter: str
    near_face: Face
    near: int
    far: int
    top: int
    bottom: int
    start: Plane
    finish: Plane

    @property
    def top_face(self) -> Face:
        """The face that looks up."""
        return self.stick.pose.face(Direction.UP)

    @property
    def over_near(self) -> Length:
        """What the stick is over its framed size where it looks down the slope."""
        return self._over(self.near_face)

    @property
    def over_far(self) -> Length:
        """What the stick is over its framed size where it looks up the slope."""
        return self._over(self.near_face.opposite)

    @property
    def over_top(self) -> Length:
        """What the stick is over its framed size at its top."""
        return self._over(self.top_face)

    @property
    def real_near(self) -> int:
        """How far ahead the face that looks down the slope really lies."""
        return self.near - self.over_near.nm

    @property
    def real_far(self) -> int:
        """How far ahead the face that looks up the slope really lies."""
        return self.far + self.over_far.nm

    @property
    def real_top(self) -> int:
        """How high the top really lies."""
        return self.top + self.over_top.nm

    @property
    def real_bottom(self) -> int:
        """How high the underside really lies."""
        return self.bottom - self._over(self.top_face.opposite).nm

    @property
    def sides(self) -> dict[str, Plane]:
        """Where the rafter's sides cross it, by line."""
        return {START: self.start, FINISH: self.finish}

    @property
    def along(self) -> tuple[Length, Length]:
        """From side to side of the rafter, along the grain."""
        start, finish = (Length(each.offset * each.normal[0]) for each in (self.start, self.finish))
        return start, finish

    @property
    def past_an_end(self) -> Length:
        """How far the rafter stands past an end of this timber; nothing or less if not at all."""
        start, finish = self.along
        return max(self.stick.start - start, finish - self.stick.finish)

    def carried(self, flat: Flat, line: str | None = None) -> Plane:
        """A plane of the building in this timber's own readings."""
        return carried(flat, self.place, line)

    def cuts(
        self, planes: Mapping[str, Plane], pieces: Mapping[str, tuple[str, ...]]
    ) -> tuple[Cut, ...]:
        """The wood between the rafter's sides that comes off, in pieces.

        Each piece is bounded by those of its lines that have planes, and comes off where the line
        it is named after has one.
        """
        return tuple(
            Cut((*self.sides.values(), *(planes[name] for name in names if name in planes)))
            for piece, names in pieces.items()
            if piece in planes
        )

    def off_the_end(self, code: str, tape: Tape) -> Finding | None:
        """The rafter stands past an end of it. Remedy: check where the rafter stands along it."""
        if self.past_an_end <= ZERO:
            return None
        return stop(
            code,
            self.stick.id,
            self.feature,
            f"{self.rafter} stands {tape.text(self.past_an_end)} past an end of {self.stick.name}",
            f"check where {self.rafter} stands along {self.stick.name}",
        )

    def words(self, face: Face) -> str:
        """What a framer calls one of its faces."""
        return self.stick.pose.words(face)

    def unsure(self, *faces: Face) -> str:
        """The caution for a mark that follows faces of this timber which nobody has measured."""
        named = (f"{self.stick.name}'s {self.words(face)}" for face in self._open(faces))
        return unsure_of(named, "mark")

    def awaited(self, *faces: Face) -> tuple[Awaits, ...]:
        """The measuring that comes before marks that follow such faces."""
        return (Awaits(self.stick.id, f"{self.feature}/section"),) if self._open(faces) else ()

    def _open(self, faces: tuple[Face, ...]) -> tuple[Face, ...]:
        if self.stick.inner is not None:
            return ()
        return tuple(
            face
            for face in faces
            if not face.is_reference
            and self.stick.measured_depth(axis_from(face), self.feature) is None
        )

    def _over(self, face: Face) -> Length:
        return self.stick.over_on(face, self.feature)


def lying(frame: Frame, timber: str, feature: str, crossed_by: Rafter) -> Lying:
    """A level timber where a rafter crosses it at a joint. Raises ValueError without a place."""
    stick, heading = frame.stick(timber), crossed_by.heading
    near_face = stick.pose.face(heading.opposite)
    looks = (near_face, near_face.opposite, *map(stick.pose.face, (Direction.UP, Direction.DOWN)))
    near, far, top, bottom = (frame.face(timber, face, feature).offset for face in looks)
    place = frame.standing(timber)
    start, finish = _sides(place, crossed_by)
    return Lying(
        stick=stick,
        place=place,
        feature=feature,
        rafter=crossed_by.stick.name,
        near_face=near_face,
        near=-near,
        far=far,
        top=top,
        bottom=-bottom,
        start=start,
        finish=finish,
    )


def _sides(place: Place, crossed_by: Rafter) -> tuple[Plane, Plane]:
    """Both sides of a rafter in the readings of the timber it crosses, in order along it."""
    side, other = above(crossed_by.sides, ZERO), below(crossed_by.sides, crossed_by.wide)
    planes = (carried(built(each, crossed_by.place), place) for each in (side, other))
    rising, falling = sorted(planes, key=lambda plane: plane.normal[0])
    return replace(rising, line=START), replace(falling, line=FINISH)
