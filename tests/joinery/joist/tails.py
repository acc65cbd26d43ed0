"""Both sides of a dovetailed or a dropped-in joist on a floor, by id of line and task."""

from dataclasses import dataclass

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.joist.family import dovetail_features, features
from benchmate.joinery.joist.record import DovetailJoist, JoistPocket
from benchmate.joinery.joist.shape import EndShape, PocketShape, shapes
from benchmate.joinery.joist.tail_shape import SocketShape, TailShape, tail_shapes
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Feature
from tests.builders import real
from tests.floor import Floor, over
from tests.joinery.joist.joints import dovetail_joist, joist_pocket

TAIL, SOCKET = "south-end-dovetail", "joist-end-socket"
BEARING, POCKET = "south-end-bearing", "joist-end-pocket"
LOW = Floor(lower="1")
"""A 7 x 4 joist, its west side first, 1" below the top of a 10 x 8 beam's south face."""

HALF = over(Floor(lower="1", near=False), (16, 16, 16, 8), "square")
"""The same in a far face, by square rule: beam 1/2" over, joist 1/2" below and 1/4" aside."""


@dataclass(frozen=True, slots=True)
class Tailed:
    """A dovetailed joist in its beam."""

    joint: DovetailJoist
    frame: Frame

    @property
    def shapes(self) -> tuple[TailShape, SocketShape]:
        """Where both sides lie."""
        return tail_shapes(self.joint, self.frame)

    @property
    def sides(self) -> tuple[Feature, Feature]:
        """The tail and its socket."""
        tail, socket = dovetail_features(self.joint, self.frame)
        return tail, socket

    def steps(self, timber: str) -> dict[str, Step]:
        """A timber's steps at this joint, by what is done, in order."""
        return _steps(self.frame, timber, TAIL if timber == "joist" else SOCKET)


@dataclass(frozen=True, slots=True)
class Dropped:
    """A joist in a pocket."""

    joint: JoistPocket
    frame: Frame

    @property
    def shapes(self) -> tuple[EndShape, PocketShape]:
        """Where both sides lie."""
        return shapes(self.joint, self.frame)

    @property
    def sides(self) -> tuple[Feature, Feature]:
        """The joist's end and its pocket."""
        end, pocket = features(self.joint, self.frame)
        return end, pocket

    def steps(self, timber: str) -> dict[str, Step]:
        """A timber's steps at this joint, by what is done, in order."""
        return _steps(self.frame, timber, BEARING if timber == "joist" else POCKET)


def tailed(floor: Floor = LOW, **words: object) -> Tailed:
    """A dovetailed joist on a floor."""
    joint = dovetail_joist(floor.end, **words)
    return Tailed(joint, floor.frame(joint))


def dropped(floor: Floor = LOW, **words: object) -> Dropped:
    """A joist in a pocket on a floor."""
    joint = joist_pocket(floor.end, **words)
    return Dropped(joint, floor.frame(joint))


def as_cut(**sizes: str) -> dict[str, Real]:
    """What was measured of the finished tail."""
    return {"joist": real({}, {TAIL: sizes})}


def measured(**sizes: str) -> dict[str, Real]:
    """What the joist measures at either kind of end."""
    return {"joist": real({"south-end": sizes})}


def _steps(made: Frame, timber: str, feature: str) -> dict[str, Step]:
    steps = lay_out(made, timber).steps
    return {step.id.partition("/")[2]: step for step in steps if step.feature == feature}
