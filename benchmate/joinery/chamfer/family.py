"""The stopped chamfer as the catalogue knows it: gauge lines, stops, guide-block marks.

The block stands outside the stop, nearer the shoulder, by the shop's own offset, so that the tool
it turns back ends its cut at the stop.
"""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import CHISEL, SAW
from benchmate.joinery.chamfer.findings import CHECKS
from benchmate.joinery.chamfer.record import Arris, Chamfer
from benchmate.joinery.chamfer.shape import ChamferShape, shape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Feature, Line, Reading, Stage, Task
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import Stick

_ENDS = (Face.REFERENCE_END, Face.FAR_END)


def features(chamfer: Chamfer, frame: Frame) -> tuple[Feature, ...]:
    """The chamfer on each of its timbers."""
    return tuple(_feature(shape(chamfer, frame, timber), frame) for timber in chamfer.on)


def _feature(cut: ChamferShape, frame: Frame) -> Feature:
    found = (check(cut, frame.tape) for check in CHECKS)
    return Feature(
        id=cut.feature,
        timber=cut.stick.id,
        title=f"Chamfer, {_arris_words(cut)}",
        at=cut.near,
        place=cut.places,
        cuts=tuple(_cut(cut, arris) for arris in cut.arrises),
        lines=(*(line for end in _ENDS for line in _stop(cut, end)), _gauge(cut)),
        tasks=_tasks(cut),
        findings=tuple(finding for finding in found if finding),
    )


def _cut(cut: ChamferShape, arris: Arris) -> Cut:
    return Cut(
        (
            _slope(cut.stick, arris, cut),
            above(Axis.ALONG, cut.near, _stop_id(cut, Face.REFERENCE_END)),
            below(Axis.ALONG, cut.far, _stop_id(cut, Face.FAR_END)),
        )
    )


def _slope(stick: Stick, arris: Arris, cut: ChamferShape) -> Plane:
    """The plane of the chamfer: the two depths in from its arris's faces come to one leg."""
    normal, offset = [0, 0], cut.leg.nm
    for place, (face, axis) in enumerate(zip(arris, (Axis.FIRST, Axis.SECOND), strict=True)):
        normal[place] = 1 if face.is_reference else -1
        if not face.is_reference:
            offset -= stick.depth(axis, *cut.places).nm
    return Plane((0, normal[0], normal[1]), offset, "line")


def _gauge(cut: ChamferShape) -> Line:
    count = len(cut.arrises)
    return Line(
        id="line",
        title="Chamfer lines",
        axis=None,
        at=cut.leg,
        readings=(
            Reading(
                value=cut.leg,
                hook=_arris_words(cut),
                way="in on both faces of the arris, between the stops",
            ),
        ),
        waste="Towards the arris, between the stops only.",
        why="Gauge from the arris itself." if count == 1 else "Gauge from each arris itself.",
        stage=Stage.CHAMFER,
    )


def _stop(cut: ChamferShape, end: Face) -> tuple[Line, Line]:
    words, at, block = cut.stick.pose.words(end), cut.at(end), cut.block_at(end)
    shoulder = f"from the {words} shoulder"
    return (
        Line(
            id=_stop_id(cut, end),
            title=f"Chamfer stop, {words}",
            axis=Axis.ALONG,
            at=at,
            beside=() if end is _ENDS[0] else (Beside(cut.from_shoulder(end, at), shoulder),),
            why=f"The chamfer ends here, clear of the joint at the {words}.",
            caution="Stop the chamfer here: past this line the joint would show a gap.",
            stage=Stage.CHAMFER,
        ),
        Line(
            id=f"{cut.stick.place_at(end)}-block",
            title=f"Guide block mark, {words}",
            axis=Axis.ALONG,
            at=block,
            faces=cut.faces,
            beside=(
                *(() if end is _ENDS[0] else (Beside(cut.from_shoulder(end, block), shoulder),)),
                Beside(cut.block, "outside the stop"),
            ),
            waste="None: nothing is cut at this mark.",
            why="Clamp the block that turns the tool back here, so that it ends at the stop.",
            stage=Stage.CHAMFER,
        ),
    )


def _tasks(cut: ChamferShape) -> tuple[Task, ...]:
    return (
        Task(
            id="cut",
            stage=Stage.FINISH,
            title="Cut the chamfer",
            faces=cut.faces,
            readings=(
                Reading(value=cut.leg, hook=_arris_words(cut), way="in on both faces of the arris"),
            ),
            waste="Towards the arris, between the stops only.",
            why="After the joints: saw the stops, then plane between them.",
            caution=f"{SAW} {CHISEL}",
        ),
    )


def _stop_id(cut: ChamferShape, end: Face) -> str:
    return f"{cut.stick.place_at(end)}-stop"


def _arris_words(cut: ChamferShape) -> str:
    names = [cut.stick.pose.arris_words(*arris) for arris in cut.arrises]
    return f"{names[0]} arris" if len(names) == 1 else f"{', '.join(names)} arrises"


FAMILY = Family(name="chamfer", table="chamfer", record=Chamfer, features=features)
