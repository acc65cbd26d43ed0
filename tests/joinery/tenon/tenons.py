"""Every way a tenon can run out flush to its stick, and what its cuts really take, by probing."""

from dataclasses import dataclass
from functools import cached_property
from itertools import product, takewhile

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import TenonShape, shape
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Feature, Task
from benchmate.model.solids import Axis
from benchmate.model.stick import axis_from
from tests.builders import frame, length, real, tenon, timber

EIGHTH, QUARTER = length("1/8").nm, length("1/4").nm


@dataclass(frozen=True)
class Case:
    """A tenon on a 6 x 6 post, and the post's real sizes there if they are not as drawn."""

    joint: TenonJoint
    first: str = "6"
    second: str = "6"

    @cached_property
    def frame(self) -> Frame:
        """The post alone, measured all along."""
        typed = real({"all": {"first": self.first, "second": self.second}})
        return frame(timber("post"), self.joint, real={"post": typed})

    @cached_property
    def shape(self) -> TenonShape:
        """The tenon on the real stick."""
        return shape(self.joint, self.frame)

    @cached_property
    def feature(self) -> Feature:
        """The tenon with its cuts, lines and tasks."""
        return features(self.joint, self.frame)[0]

    @cached_property
    def tasks(self) -> dict[str, Task]:
        """The tenon's tasks by id, in order."""
        return {task.id: task for task in self.feature.tasks}

    def layer(self, face: Face, deep: int) -> tuple[bool, ...]:
        """Whether the wood goes, at places right across a face, `deep` in, beyond the shoulder.

        The places lie in odd eighths of an inch, so that none falls on a line in quarters.
        """
        first = axis_from(face) is Axis.FIRST
        sizes = [length(self.first).nm, length(self.second).nm]
        own, whole = sizes if first else sizes[::-1]
        at = deep if face.is_reference else own - deep
        x = self.shape.along(Length(EIGHTH)).nm
        points = (
            (x, at, over) if first else (x, over, at) for over in range(EIGHTH, whole, QUARTER)
        )
        cuts = self.feature.cuts
        return tuple(any(cut.takes(*point) for cut in cuts) for point in points)

    def comes_off(self, face: Face) -> Length:
        """How deep the cuts take all the wood across a face, counted in layers of a quarter."""
        own = length(self.first if axis_from(face) is Axis.FIRST else self.second).nm
        layers = (self.layer(face, deep) for deep in range(EIGHTH, own, QUARTER))
        return Length(QUARTER) * sum(1 for _ in takewhile(all, layers))

    def is_flush(self, face: Face) -> bool:
        """Whether some of a face stays and some goes."""
        return set(self.layer(face, EIGHTH)) == {True, False}


_SIZES = {
    "end": ("foot", "head"),
    "cheeks_from": ("first", "second"),
    "set_back": ("0", "2"),
    "thickness": ("2", "4", "6"),
    "relief_reference": ("0", "1"),
    "relief_far": ("0", "3/4"),
}
_DRAWN = tuple(
    tenon(**dict(zip(_SIZES, values, strict=True))) for values in product(*_SIZES.values())
)
_ALL = (Case(*parts) for parts in product(_DRAWN, ("6", "6-1/4"), ("6", "5-3/4")))

SOUND = tuple(case for case in _ALL if not case.feature.findings)
"""Flush, relieved, barefaced, full: all of them at either end, on drawn and on odd sticks."""
