"""The rafter seat as the catalogue knows it: both sides of one crossing from one record."""

from dataclasses import replace

from benchmate.frame.family import Family
from benchmate.frame.flats import along_at
from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.recess import lying_side
from benchmate.joinery.rafter.seat import cutting, findings, notch, plate
from benchmate.joinery.rafter.seat.record import RafterSeat
from benchmate.joinery.rafter.seat.shape import SeatShape, seat_shape
from benchmate.joinery.rafter.seat.stretch import step_off_task
from benchmate.measure.length import ZERO, Length
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding, told_on


def features(joint: RafterSeat, frame: Frame) -> tuple[Feature, ...]:
    """The rafter's notch and the plate's seat. What stops one side stops the other."""
    tape = frame.tape
    shape = seat_shape(joint, frame)
    told = findings.told(shape, tape)
    steps = step_off_task(shape, frame)
    return (
        Feature(
            id=shape.feature,
            timber=shape.rafter.stick.id,
            title=f"Seat on {shape.plate.stick.name}",
            at=_at(shape),
            place=shape.places,
            cuts=notch.notch_cuts(shape),
            lines=notch.notch_lines(shape, tape),
            tasks=cutting.notch_tasks(shape, tape, steps),
            meets=(shape.tail,) if shape.tail and not shape.heeled else (),
            awaits=shape.plate.awaited(shape.plate.near_face, shape.plate.top_face),
            findings=told_on(shape.rafter.stick.id, shape.feature, told),
        ),
        _plate(shape, told),
    )


def _at(shape: SeatShape) -> Length:
    """Where on the top edge the notch comes, to order the rafter's joints by."""
    rafter = shape.rafter
    return along_at(rafter.carried(rafter.downhill(shape.outer)), rafter.plumb, ZERO)


def _plate(shape: SeatShape, told: tuple[Finding, ...]) -> Feature:
    return replace(
        lying_side(shape.plate, shape.rafter, shape.feature, "Seat", told),
        cuts=plate.plate_cuts(shape),
        lines=plate.plate_lines(shape),
        tasks=plate.plate_tasks(shape),
    )


FAMILY = Family(name="rafter seat", table="joint", record=RafterSeat, features=features)
"""A rafter's seat is a joint."""
