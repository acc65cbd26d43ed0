"""Both sides of a joist's tenon on a floor, by id of line and task."""

from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.joist_tenon.family import features
from benchmate.joinery.joist_tenon.hole_shape import HoleShape, hole_shape
from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon
from benchmate.joinery.joist_tenon.shape import EndShape, end_shape
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Feature, Line, Task
from tests.floor import Floor


@dataclass(frozen=True, slots=True)
class Jointed:
    """A floor with its joint."""

    joint: SoffitTenon | TuskTenon
    frame: Frame

    @property
    def shapes(self) -> tuple[EndShape, HoleShape]:
        """Where both sides lie."""
        settled = self.joint.proportioned(self.frame.wood, self.frame.project.bare)
        end = end_shape(settled, self.frame)
        return end, hole_shape(settled, end, self.frame)

    @property
    def sides(self) -> tuple[Feature, Feature]:
        """The joist's end and the mortise."""
        end, hole = features(self.joint, self.frame)
        return end, hole

    def steps(self, timber: str) -> dict[str, Step]:
        """A timber's steps at this joint, by what is done, in order."""
        (own,) = (side for side in self.sides if side.timber == timber)
        steps = lay_out(self.frame, timber).steps
        return {step.id.partition("/")[2]: step for step in steps if step.feature == own.id}


def jointed(joint: SoffitTenon | TuskTenon, floor: Floor | None = None) -> Jointed:
    """A joint on a floor, by default a joist whose top lies 1" below its beam's."""
    return Jointed(joint, (floor or Floor(lower="1")).frame(joint))


def lines(feature: Feature) -> dict[str, Line]:
    """A feature's lines by id."""
    return {line.id: line for line in feature.lines}


def tasks(feature: Feature) -> dict[str, Task]:
    """A feature's tasks by id."""
    return {task.id: task for task in feature.tasks}
