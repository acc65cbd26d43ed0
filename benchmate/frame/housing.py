"""The housing: the recess in a stick's side that takes the whole end of another timber.

Its floor is where the shoulder bears. It goes the joint's own depth into the framed face; on a far
face under square rule the stick's excess over its inner timber comes off as well, so the floor lies
as far from the reference face on every stick.
"""

from dataclasses import dataclass

from benchmate.frame.anew import strike_anew
from benchmate.frame.meeting import Meeting, Span
from benchmate.frame.practice import CHISEL, SAW
from benchmate.frame.reduction import lies_in_words, measured_words, unmeasured_recess
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import LONG_FACES, Direction, Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import Stick, across, axis_from, reference_for
from benchmate.model.words import lower_first

INSIDE = "Inside the housing's lines only."

FLOOR, START, FINISH, NEAR, FAR = (
    f"housing-{name}" for name in ("floor", "start", "finish", "near", "far")
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Housing:
    """A housing in the receiving stick, in that stick's own readings.

    `along` and `across` bound the end of `guest`, measured at `guest_places`, whose `guest_along`
    axis runs along the receiving stick. `seat` is the reading the shoulder bears at on the `into`
    axis, and `recess` how deep that lies below the real face: nothing where there is no housing. An
    end that is `dropped` in from above needs it open there, however low that end lies.
    """

    stick: Stick
    feature: str
    guest: Stick
    guest_places: tuple[str, ...]
    guest_along: Axis
    entry: Face
    along: Span
    across: Span
    seat: Length
    recess: Length
    dropped: bool = False

    @property
    def into(self) -> Axis:
        """The axis it is cut down on."""
        return axis_from(self.entry)

    @property
    def sides(self) -> Axis:
        """The axis across it."""
        return across(self.into)

    @property
    def cut(self) -> bool:
        """Whether there is any to cut."""
        return self.recess > ZERO

    def inside(self, distance: Length) -> Length:
        """The reading of a place so far in from where the shoulder bears."""
        return self.seat + distance if self.entry.is_reference else self.seat - distance

    @property
    def deep(self) -> Reading:
        """Its depth, from the face it is cut in."""
        words = self.stick.pose.words(self.entry)
        return Reading(value=self.recess, hook=words, way="straight in, to the housing floor")

    @property
    def opening(self) -> str:
        """What the depths of all that is cut below its floor are measured from."""
        return "housing floor" if self.cut else self.stick.pose.words(self.entry)


@dataclass(frozen=True, slots=True, kw_only=True)
class Guest:
    """The end of a stick that goes into another: its section there as the frame counts on it.

    `cheeks` is its size on the axis square to the receiving grain, `edges` on the other, which is
    named by `along`. `recess` is how far it goes in through the real face before it bears.
    """

    stick: Stick
    places: tuple[str, ...]
    along: Axis
    cheeks: Length
    edges: Length
    recess: Length


def housing_for(
    guest: Guest, met: Meeting, stick: Stick, feature: str, *, dropped: bool = False
) -> Housing:
    """The housing in `stick` for an end that meets it so."""
    real = stick.depth(met.into, feature)
    return Housing(
        stick=stick,
        feature=feature,
        guest=guest.stick,
        guest_places=guest.places,
        guest_along=guest.along,
        entry=met.entry,
        along=met.along_span(ZERO, guest.edges),
        across=met.across_span(ZERO, guest.cheeks),
        seat=guest.recess if met.entry.is_reference else real - guest.recess,
        recess=guest.recess,
        dropped=dropped,
    )


def housing_walls(shape: Housing) -> dict[str, Plane]:
    """The planes of the sides it is closed at, by line."""
    (start, finish), (near, far) = shape.along, shape.across
    stick = shape.stick
    over = FAR if stick.pose.direction(reference_for(shape.sides)) is Direction.DOWN else NEAR
    walls = (
        (start > stick.start, above(Axis.ALONG, start, START)),
        (finish < stick.finish, below(Axis.ALONG, finish, FINISH)),
        (near > ZERO, above(shape.sides, near, NEAR)),
        (far < stick.framed(shape.sides, shape.feature), below(shape.sides, far, FAR)),
    )
    return {
        str(plane.line): plane
        for closed, plane in walls
        if closed and shape.cut and not (shape.dropped and plane.line == over)
    }


def housing_cuts(shape: Housing) -> tuple[Cut, ...]:
    """The recess: a box open at the face it enters, and at every side the end runs out to."""
    if not shape.cut:
        return ()
    bound = below if shape.entry.is_reference else above
    return (Cut((bound(shape.into, shape.seat, FLOOR), *housing_walls(shape).values())),)


def housing_lines(shape: Housing) -> tuple[Line, ...]:
    """Its sides, then its floor."""
    if not shape.cut:
        return ()
    walls = housing_walls(shape)
    sides = (
        (START, Axis.ALONG, shape.along[0]),
        (FINISH, Axis.ALONG, shape.along[1]),
        (NEAR, shape.sides, shape.across[0]),
        (FAR, shape.sides, shape.across[1]),
    )
    found = (_side(shape, *side) for side in sides if side[0] in walls)
    return (*found, _floor(shape, blind=len(walls) == len(sides)))


def _side(shape: Housing, name: str, axis: Axis, at: Length) -> Line:
    far = shape.stick.pose.words(reference_for(shape.sides).opposite)
    size = shape.along if axis is Axis.ALONG else shape.across
    return Line(
        id=name,
        title=f"Housing {name.removeprefix('housing-')} line",
        axis=axis,
        at=at,
        beside=(Beside(size[1] - size[0], f"of {shape.guest.name} goes in"),),
        why=f"The whole end of {shape.guest.name} goes in. {_how_wide(shape, axis)}",
        caution=f"Never measure this from the {far}." if name == FAR else "",
    )


def _how_wide(shape: Housing, axis: Axis) -> str:
    """Whether the size of the end that goes in is known, in a sentence."""
    measured = shape.guest_along if axis is Axis.ALONG else across(shape.guest_along)
    return lies_in_words(shape.guest, measured, shape.guest_places)


def _floor(shape: Housing, *, blind: bool) -> Line:
    """The floor: struck on the sides it runs out to, or a depth where it is closed all round."""
    entry, reference = shape.entry, shape.stick.pose.words(reference_for(shape.into))
    words = shape.stick.pose.words(entry)
    beside = Beside(shape.recess, f"deep from the {words}")
    if blind:
        beside = Beside(shape.seat, f"from the {reference} to the floor here")
    return Line(
        id=FLOOR,
        title="Housing floor",
        axis=shape.into,
        at=shape.seat,
        faces=(entry,) if blind else (),
        readings=(shape.deep,) if blind or entry.is_reference else (),
        beside=() if entry.is_reference else (beside,),
        waste=f"Towards the {words}, {lower_first(INSIDE)}",
        why=f"The shoulder bears here. {_how_deep(shape)}",
        caution="" if entry.is_reference else _what_holds(shape, reference),
    )


def _how_deep(shape: Housing) -> str:
    if shape.entry.is_reference:
        return "Shoulder to shoulder already counts it."
    return measured_words(shape.stick, shape.into, (shape.feature,))


def _what_holds(shape: Housing, reference: str) -> str:
    """What stays the same on an odd stick: by square rule the floor's place, else its depth."""
    if shape.stick.inner is not None:
        return f"As far from the {reference} on every stick; only the depth differs."
    return f"As deep on every stick; how far from the {reference} differs."


def open_faces(shape: Housing) -> tuple[Face, ...]:
    """The faces the recess comes out on: where it enters, and each side it is open at."""
    near = reference_for(shape.sides)
    closed = {START: Face.REFERENCE_END, FINISH: Face.FAR_END, NEAR: near, FAR: near.opposite}
    walls = housing_walls(shape)
    found = {shape.entry, *(face for line, face in closed.items() if line not in walls)}
    return tuple(face for face in (*LONG_FACES, Face.REFERENCE_END, Face.FAR_END) if face in found)


def housing_tasks(
    shape: Housing, noun: str, lines: tuple[Line, ...], *, counts: bool = True
) -> tuple[Task, ...]:
    """Knife it, cut it, try its floor, strike anew on it the `lines` of the hole called `noun`.

    `counts` tells whether that one's depth counts from its floor.
    """
    if not shape.cut:
        return ()
    return (
        _knife(shape),
        _cut(shape),
        _pare(shape, f", and the {noun}'s depth counts from here" if counts else ""),
        _strike_anew(shape, noun, lines),
    )


def _knife(shape: Housing) -> Task:
    return Task(
        id="knife-housing",
        stage=Stage.KNIFE,
        title="Knife the housing, hatch the inside",
        faces=open_faces(shape),
        waste=INSIDE,
        why="Its edges show round the other timber: crisp lines make a tight housing.",
    )


def _cut(shape: Housing) -> Task:
    caution = unmeasured_recess(shape.stick, shape.entry, shape.feature)
    return Task(
        id="cut-housing",
        stage=Stage.CUT,
        title="Saw and chop the housing to its floor",
        draws=FLOOR,
        faces=open_faces(shape),
        readings=(shape.deep,),
        waste=INSIDE,
        why="Leave the floor full: it is pared flat next.",
        caution=f"{caution}{SAW} {CHISEL}",
    )


def _pare(shape: Housing, counts: str) -> Task:
    return Task(
        id="pare-housing",
        stage=Stage.CUT,
        title="Pare the housing floor flat, try its depth",
        draws=FLOOR,
        faces=open_faces(shape),
        readings=(shape.deep,),
        waste=INSIDE,
        why=f"The shoulder bears on all of it{counts}.",
        caution=CHISEL,
    )


def _strike_anew(shape: Housing, noun: str, lines: tuple[Line, ...]) -> Task:
    """Striking on the floor what cutting the housing took away, each from where it first was."""
    return strike_anew(
        shape.stick,
        (shape.entry, shape.sides),
        lines,
        noun=noun,
        id_="strike-floor",
        title=f"Strike the {noun} anew on the housing floor, knife its ends",
        why=(
            "Cutting the housing took its lines away. Measure each as it was first struck, never "
            "from the housing's edges."
        ),
    )
