"""The marks on one timber, as a framer reads them: from what, how far, which side is waste.

Nothing is taken from the program but its steps, the list a framer works through. Words for faces
and ends come from where the project file says they look.

How it works
1. A place in a timber is (x, u, v) in nanometres: x along from the squared end, u in from the
   first reference face, v in from the second. A side is an axis and whether it is the far one.
2. A mark is set off from what its reading hooks on: the squared end, the reference shoulder, a
   face, or the floor of the housing that is cut first.
3. A mark with two readings has to come to the same place by both.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import NamedTuple

from benchmate.layout.step import Step
from benchmate.model.feature import Reading
from benchmate.model.project import Timber
from tests.proof.boxes import beyond
from tests.proof.stock import Stock
from tests.space import Box

FACE_WORDS = {
    "east": "East face",
    "west": "West face",
    "north": "North face",
    "south": "South face",
    "up": "top face",
    "down": "underside",
}
END_WORDS = {
    "east": "east end",
    "west": "west end",
    "north": "north end",
    "south": "south end",
    "up": "head",
    "down": "foot",
}
OPPOSITE = {"east": "west", "north": "south", "up": "down"}
OPPOSITE |= {there: here for here, there in OPPOSITE.items()}

ALONG = 0
"""The axis from the squared end to the far one; 1 and 2 go in from the reference faces."""

HOUSING_FLOOR = "housing floor"


class Side(NamedTuple):
    """One of the six sides of a timber: the axis it is square to, and whether it is the far one."""

    axis: int
    far: bool


class Place(NamedTuple):
    """Where a line lies: on which axis, and how far in."""

    axis: int
    at: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """A struck line: how to set it off, the sides it is struck on, the side its waste lies to."""

    readings: tuple[Reading, ...]
    sides: tuple[str, ...]
    waste: str


Marks = Mapping[str, Mapping[str, Mark]]
"""The marks of one timber by joint or chamfer, and there by line."""


def marks(steps: Iterable[Step]) -> Marks:
    """The lines to strike among the steps of a walk.

    A joint that needs none is there all the same, but for one that is scribed to its mate.
    """
    found: dict[str, dict[str, Mark]] = {}
    for step in steps:
        feature, _, line = step.id.partition("/")
        if "scribed" in step.title:
            continue
        struck = found.setdefault(feature, {})
        if step.line is not None:
            struck[line] = Mark(readings=step.readings, sides=step.sides, waste=step.waste_side)
    return found


def sides(timber: Timber) -> dict[str, Side]:
    """What a framer calls the sides of a timber."""
    looks = (
        (END_WORDS, timber.reference_end.word),
        (FACE_WORDS, timber.first_face.word),
        (FACE_WORDS, timber.second_face.word),
    )
    near = {words[word]: Side(axis, far=False) for axis, (words, word) in enumerate(looks)}
    far = {words[OPPOSITE[word]]: Side(axis, far=True) for axis, (words, word) in enumerate(looks)}
    return near | far


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule:
    """A tape and a square on one timber: where each of its marks lies.

    Its answers raise KeyError for a line that is not there, and ValueError for one that cannot be
    set off as it is written.
    """

    sides: dict[str, Side]
    stock: Stock
    marks: Marks

    @property
    def ends(self) -> tuple[str, str]:
        """The words for the squared end and for the far one."""
        near, far = sorted((side.far, word) for word, side in self.sides.items() if not side.axis)
        return near[1], far[1]

    @property
    def overall(self) -> int:
        """From squared end to squared end."""
        return self.place("end", "overall").at

    @property
    def shoulder(self) -> int:
        """Where the reference shoulder lies: at the squared end where there is no tenon."""
        tenon = f"{self.ends[0].replace(' ', '-')}-tenon"
        return self.place(tenon, "shoulder").at if tenon in self.marks else 0

    def has(self, feature: str, line: str) -> bool:
        """Whether a joint has a line to strike."""
        return line in self.marks[feature]

    def place(self, feature: str, line: str) -> Place:
        """Where a line lies: at the same place by every reading it has."""
        mark = self.marks[feature][line]
        found = {self.set_off(feature, reading, mark.waste) for reading in mark.readings}
        if len(found) != 1:
            raise ValueError(f"{feature}/{line} comes to {sorted(found)} by {mark.readings}")
        return found.pop()

    def set_off(self, feature: str, reading: Reading, waste: str = "") -> Place:
        """Where a reading comes to; one from a housing's floor goes away from the waste side."""
        if reading.hook in self.sides:
            return self._in_from(feature, self.sides[reading.hook], reading.value.nm)
        if reading.hook == HOUSING_FLOOR:
            axis, far = self.sides[waste]
            floor = self._in_from(feature, self.sides[waste], 0).at
            if self.has(feature, "housing-floor"):
                floor = self.place(feature, "housing-floor").at
            return Place(axis, floor - reading.value.nm if far else floor + reading.value.nm)
        return Place(ALONG, self._along(reading))

    def waste(self, feature: str, line: str) -> Box:
        """All that lies on the waste side of a line."""
        axis, at = self.place(feature, line)
        side = self.sides[self.marks[feature][line].waste]
        if side.axis != axis:
            raise ValueError(f"{feature}/{line} has its waste towards another side")
        return beyond(axis, at, far=side.far)

    def _in_from(self, feature: str, face: Side, depth: int) -> Place:
        real = self.stock.depth(face.axis, feature)
        return Place(face.axis, real - depth if face.far else depth)

    def _along(self, reading: Reading) -> int:
        near, far = self.ends
        if reading.hook == f"squared {near}":
            return reading.value.nm
        sense = {f"towards the {far}": 1, f"towards the {near}": -1}.get(reading.way)
        if reading.hook != f"{near} shoulder line" or sense is None:
            raise ValueError(f"nothing to hook on: {reading}")
        return self.shoulder + sense * reading.value.nm
