"""The hole in the tenon that another goes through, as work on that tenon's own timber.

It is cut after both mortises, as it is tried in the corner put together.
"""

from collections.abc import Iterator

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.crossing import Crossing
from benchmate.joinery.tenon.findings import TENON_CHECKS
from benchmate.joinery.tenon.hole import Hole, hole, hole_id
from benchmate.joinery.tenon.hole_findings import crossing_findings, takes_all
from benchmate.joinery.tenon.hole_lines import hole_lines, what
from benchmate.joinery.tenon.hole_tasks import hole_tasks
from benchmate.joinery.tenon.mortise import tried
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.scribed import scribed_hole_tasks
from benchmate.measure.printing import Tape
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, Severity, told_on


def holes(crossings: tuple[Crossing, ...], frame: Frame) -> tuple[Hole, ...]:
    """The holes that can be laid out: where two placed tenons cross, and one alone stays whole."""
    return tuple(
        hole(each, frame)
        for each in crossings
        if each.reaches and each.placed and not (each.mutual or each.scribed)
    )


def hole_findings(
    crossings: tuple[Crossing, ...], found: tuple[Hole, ...], frame: Frame
) -> tuple[Finding, ...]:
    """What is wrong with the crossings, and with the holes they make."""
    tape, least_wood = frame.tape, frame.project.practice.least_wood
    told = (takes_all(each, tape) for each in found)
    return (
        *(each for crossing in crossings for each in crossing_findings(crossing, least_wood, tape)),
        *(each for each in told if each),
    )


def hole_features(
    found: tuple[Hole, ...], told: tuple[Finding, ...], tape: Tape
) -> Iterator[Feature]:
    """Each hole on the timber it is cut in; what stops either tenon stops it too."""
    for shape in found:
        tenon = shape.tenon
        wrong = (check(tenon, tape) for check in TENON_CHECKS)
        stops = tuple(each for each in wrong if each and each.severity is Severity.STOP)
        yield Feature(
            id=shape.feature,
            timber=tenon.stick.id,
            title=_title(shape),
            at=tenon.shoulder,
            place=tenon.places,
            cuts=(shape.cut,),
            lines=hole_lines(shape, tape),
            tasks=hole_tasks(shape),
            awaits=tuple(_tried(each) for each in (shape.crossed, shape.stub)),
            mated=True,
            findings=told_on(tenon.stick.id, shape.feature, (*told, *stops)),
        )


def scribed_holes(crossings: tuple[Crossing, ...]) -> Iterator[Feature]:
    """The holes of tenons of which one is scribed: marked from the corner, without figures."""
    for each in crossings:
        if each.scribed and not each.mutual:
            tenon = each.crossed.tenon
            yield Feature(
                id=hole_id(each),
                timber=tenon.stick.id,
                title=f"Hole for {each.stub.tenon.stick.name}, scribed",
                at=tenon.shoulder,
                place=tenon.places,
                tasks=scribed_hole_tasks(each.stub, tenon),
                scribed=True,
            )


def _title(shape: Hole) -> str:
    tenon = shape.tenon
    end = tenon.stick.pose.words(tenon.end)
    return f"{what(shape)} for {shape.stub.tenon.stick.name} in the {end} tenon"


def _tried(mortise: MortiseShape) -> Awaits:
    """The last thing done to a mortise: it then takes its tenon."""
    return Awaits(mortise.stick.id, f"{mortise.feature}/{tried(mortise)}")
