"""One step of the walk round a timber, and the walk as a whole."""

from dataclasses import dataclass

from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Beside, Feature, Reading, Stage
from benchmate.model.floors import Floors
from benchmate.model.setting import Setting
from benchmate.model.stick import Stick

LINE = " (line)"
"""What the name of a line that a cut was made to ends with, in a tick's memory."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One thing done to one timber.

    `id` is `<feature>/<what>` and never changes with the numbers. `title` names the joint and the
    thing done, `short` the thing done alone. `readings` are the ways to measure the same mark, or
    the sizes a task works to. `on` and `waste` are in words; `sides` names the faces one by one,
    and `waste_side` the face that the waste of a struck line lies towards. `line` names the line it
    strikes, within its feature. A step that is not `lasting` asks for a fresh look at the stick, so
    its tick never goes out of date. `draws` is the line a drawing shows: the one struck, or the one
    that a task works to. `rests` are the places of the lines that a cut was made to, or where the
    other end of a slanting line lies. `setting` is how to set a square and a saw.
    A slanting line `leads_on` to the first figure beside it: where its other end comes.
    """

    id: str
    feature: str
    stage: Stage
    title: str
    short: str
    faces: tuple[Face, ...]
    sides: tuple[str, ...]
    on: str
    readings: tuple[Reading, ...]
    beside: tuple[Beside, ...]
    waste: str
    waste_side: str
    why: str
    caution: str
    asks: Asks
    lasting: bool
    line: str | None
    draws: str | None
    rests: tuple[Reading, ...] = ()
    setting: Setting | None = None
    leads_on: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Layout:
    """All steps of one timber in order; `shoulder` is the step that strikes the reference shoulder.

    `shoulder` is None where the reference end has no tenon: there the squared end is the datum.
    `least_wood` is what the shop keeps between two joints. `floors` are those that joints of the
    timber leave where others open.
    """

    stick: Stick
    features: tuple[Feature, ...]
    steps: tuple[Step, ...]
    shoulder: str | None
    least_wood: Length
    floors: Floors = ()

    def over(self, feature: str) -> tuple[str, ...]:
        """The features whose cuts take away faces that one opens on."""
        return tuple(dict.fromkeys(each.over for each in self.floors if each.under == feature))

    def step(self, step: str) -> Step:
        """A step by id. Raises KeyError for an unknown one."""
        for found in self.steps:
            if found.id == step:
                return found
        raise KeyError(step)

    def feature(self, feature: str) -> Feature | None:
        """A feature by id; None for the stick's own steps."""
        return next((found for found in self.features if found.id == feature), None)


def shown_readings(step: Step, *, shoulder_struck: bool, swapped: bool) -> tuple[Reading, ...]:
    """A step's readings with the one to work from first.

    A mark along the timber reads from the squared end until the reference shoulder is struck and
    from that shoulder afterwards; `swapped` turns the two round.
    """
    if len(step.readings) == 2 and step.line and shoulder_struck == swapped:  # noqa: PLR2004
        return step.readings[::-1]
    return step.readings
