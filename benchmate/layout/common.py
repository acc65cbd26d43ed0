"""The steps every timber has, whatever its joints."""

from collections.abc import Iterable

from benchmate.frame.practice import LIFT
from benchmate.frame.reach import plumb_axis
from benchmate.layout.marks import is_mark
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Feature, Line, Reading, Stage, Task
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, reference_for
from benchmate.model.words import lower_first


def stick_tasks(stick: Stick, features: tuple[Feature, ...]) -> tuple[Task, ...]:
    """Choosing, crown, back-check of all that waits for no other timber, and label."""
    own = tuple(feature for feature in features if not feature.mated)
    return (_crown(stick), _faces(stick), _back_check(stick, own), _label(stick))


def mated_back_check(stick: Stick, feature: Feature) -> Task | None:
    """The back-check of marks that wait for another timber, on their own once they are struck."""
    readings = _marks_back(stick, (feature,))
    if not feature.mated or not readings:
        return None
    end = stick.pose.words(Face.FAR_END)
    return Task(
        id="back-check",
        stage=Stage.BACK_CHECK,
        title=f"Back-check from the {end}",
        readings=readings,
        why=_READ_BACK,
    )


def _faces(stick: Stick) -> Task:
    first, second = stick.pose.words(Face.FIRST), stick.pose.words(Face.SECOND)
    end = stick.pose.words(Face.REFERENCE_END)
    return Task(
        id="faces",
        stage=Stage.CHOOSE,
        title="Choose and mark the reference faces",
        faces=(Face.FIRST, Face.SECOND),
        why=(
            f"First reference: the {first}. Second: the {second}. Mark both, their arris and the "
            f"{end} as reference end. Pick the two flattest faces that are square to each other."
        ),
        caution=LIFT,
    )


def _crown(stick: Stick) -> Task:
    return Task(
        id="crown",
        stage=Stage.CHOOSE,
        title="Sight the crown, knots and wane",
        why=(
            f"Crown {_crown_goes(stick)}. Keep knots and wane off the reference arris, tenons and "
            "bearings, or turn the stick end for end before anything is marked."
        ),
    )


def _crown_goes(stick: Stick) -> str:
    """Where the crown goes (trade notes 1.4: posts outwards, lying timbers up; common practice).

    A raking timber has its reference line on the edge that is away from the corner, or on the roof
    plane; the crown goes to that side.
    """
    side = crown_side(stick)
    if side is None:
        return "outwards, butt of the tree down"
    if stick.pose.rakes:
        return f"towards the {stick.pose.words(side)}, its reference edge"
    return "up, with the worse faces out of sight"


def crown_side(stick: Stick) -> Face | None:
    """The long face that the crown goes to; None for a post, whose crown goes outwards."""
    if stick.pose.rakes:
        return reference_for(plumb_axis(stick.pose))
    if stick.pose.reference_end in (Direction.UP, Direction.DOWN):
        return None
    return stick.pose.face(Direction.UP)


_READ_BACK = (
    "Read every mark again from the other end: a slip along the way shows here. Best done by "
    "somebody else, who takes it that mistakes are there."
)


def _back_check(stick: Stick, features: tuple[Feature, ...]) -> Task:
    end, start = stick.pose.words(Face.FAR_END), stick.pose.words(Face.REFERENCE_END)
    overall = Reading(
        value=stick.overall,
        hook=f"overall line at the {end}",
        way=f"back to the squared {start}",
    )
    return Task(
        id="back-check",
        stage=Stage.BACK_CHECK,
        title=f"Back-check from the {end}",
        readings=(overall, *_marks_back(stick, features)),
        why=_READ_BACK,
    )


def _marks_back(stick: Stick, features: tuple[Feature, ...]) -> tuple[Reading, ...]:
    """Every mark along the stick as it reads from the far end."""
    return tuple(
        Reading(
            value=stick.finish - line.at,
            hook=f"overall line to the {lower_first(feature.title)}, {lower_first(line.title)}",
            way="",
            key=f"{feature.id}/{line.id}",
        )
        for feature, line in _marks_along(stick, features)
    )


def _marks_along(stick: Stick, features: tuple[Feature, ...]) -> Iterable[tuple[Feature, Line]]:
    return (
        (feature, line)
        for feature in features
        for line in feature.lines
        if line.axis is Axis.ALONG and _read_back(line) and is_mark(stick, feature, line)
    )


def _read_back(line: Line) -> bool:
    """Whether a line along the stick is one to cut to; a guide block's mark is not."""
    return line.stage is Stage.MARK or (line.stage is Stage.CHAMFER and not line.faces)


def _label(stick: Stick) -> Task:
    return Task(
        id="label",
        stage=Stage.LABEL,
        title="Label the timber",
        faces=(Face.FIRST, Face.REFERENCE_END),
        why=(
            f"{stick.name}; {stick.pose.words(Face.FIRST)} first, {stick.pose.words(Face.SECOND)} "
            f"second, {stick.pose.words(Face.REFERENCE_END)} as reference end. Where it stays in "
            "sight until the raising."
        ),
    )
