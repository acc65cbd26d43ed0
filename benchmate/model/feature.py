"""What a joint or chamfer puts on one timber: cuts, the lines to strike, the tasks to do.

A family writes its features in its own terms; `layout` turns them into ordered steps. Where a line
bounds a cut, the faces it is struck on and its waste side are read off the cut, never stated.
"""

from dataclasses import dataclass
from enum import IntEnum
from typing import NamedTuple

from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.findings import Finding
from benchmate.model.floors import Floors
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Cut


class Stage(IntEnum):
    """The order of work on one timber, from the rough stick to the label.

    Order: trade notes 5.1 (choose, reference faces, wind and square, datum end, all joints laid
    out before any cut, knife and waste, shoulder before cheeks), the rest common practice.
    """

    CHOOSE = 1
    MEASURE = 2
    END = 3
    MARK = 4
    CHAMFER = 5
    BACK_CHECK = 6
    KNIFE = 7
    CUT = 8
    PARE = 9
    AS_CUT = 10
    FIT = 11
    FINISH = 12
    LABEL = 13


class Asks(IntEnum):
    """What real sizes a step asks the framer to type."""

    NOTHING = 0
    SECTION = 1
    AS_CUT = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """A figure to set or read: how much, what to hook on, and which way to go from there.

    A tick remembers it by its hook, or by `key` where the words of the hook may change.
    """

    value: Length
    hook: str
    way: str
    key: str = ""

    @property
    def words(self) -> str:
        """What to hook on and which way to go: `from the South face, in towards the North face`."""
        return ", ".join(filter(None, (f"from the {self.hook}", self.way)))

    @property
    def name(self) -> str:
        """What a tick remembers the figure by."""
        return self.key or self.hook


@dataclass(frozen=True, slots=True)
class Beside:
    """A further figure shown with a step: `2-1/16" deep from the North face`."""

    value: Length
    words: str


class Spot(NamedTuple):
    """A point on a face: how far along the timber, and how deep in from a reference face."""

    along: Length
    deep: Length


@dataclass(frozen=True, slots=True, kw_only=True)
class Slant:
    """How a line slants across the faces beside its `axis`, from its start to its finish.

    `where` says in words what each of the two is found on: `South arris`, `shoulder line`.
    `setting` is how to set a square and a saw for it, if there is a way.
    """

    axis: Axis
    start: Spot
    finish: Spot
    where: tuple[str, str]
    setting: Setting | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A line to strike.

    `axis` and `at` say where it lies, in the stick's own readings; a line without an axis is
    gauged `at` from each arris it belongs to. A line with a `slant` is set off at its start, which
    lies `at` on `axis`; without an axis it is set off as its readings say. `readings` are stated
    only where a line is not measured from a reference face or the reference shoulder, and `faces`
    only where it bounds no cut or lies inside the wood. `waste` is words for what the cuts cannot
    tell.
    """

    id: str
    title: str
    axis: Axis | None
    at: Length
    faces: tuple[Face, ...] = ()
    readings: tuple[Reading, ...] = ()
    beside: tuple[Beside, ...] = ()
    waste: str = ""
    why: str
    caution: str = ""
    stage: Stage = Stage.MARK
    lasting: bool = True
    slant: Slant | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Task:
    """Something to do that strikes no line: measure, knife, saw, pare, label.

    `draws` is the line the task works to, so that a drawing shows the waste of that alone.
    `setting` is how to set a square and a saw for it, where it slants.
    """

    id: str
    stage: Stage
    title: str
    faces: tuple[Face, ...] = ()
    readings: tuple[Reading, ...] = ()
    beside: tuple[Beside, ...] = ()
    waste: str = ""
    why: str
    caution: str = ""
    asks: Asks = Asks.NOTHING
    lasting: bool = True
    draws: str = ""
    setting: Setting | None = None


class Size(NamedTuple):
    """A size of a finished part that can be typed as cut; `how` says what to measure."""

    name: str
    laid_out: Length
    how: str


class Made(NamedTuple):
    """Where a line came out `at` once it was cut, as measured."""

    line: str
    at: Length


class Awaits(NamedTuple):
    """A step that comes first, mostly on another timber: a mortise is cut to a finished tenon."""

    timber: str
    step: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Feature:
    """The work of one joint or chamfer on one timber.

    `at` orders features from the reference end; `place` names where its section is measured.
    `awaits` is what its marks, all but measuring the stick, had better wait for. A `mated` one is
    marked for a finished part of another timber, so it comes after all else on its own. A `scribed`
    one is marked by hand from its mate, so it has neither cuts nor lines. `made` is where lines of
    it came out, and `floors` are those of other joints that its figures follow.

    `joint` is the id of the joint it is a side of, empty for a timber's ends and for chamfers;
    `meets` are the joints that one is meant to run into. The layout fills in the one, and adds
    to the other what the record says.
    """

    id: str
    timber: str
    title: str
    at: Length
    place: tuple[str, ...] = ()
    cuts: tuple[Cut, ...] = ()
    lines: tuple[Line, ...] = ()
    tasks: tuple[Task, ...] = ()
    sizes: tuple[Size, ...] = ()
    findings: tuple[Finding, ...] = ()
    awaits: tuple[Awaits, ...] = ()
    mated: bool = False
    scribed: bool = False
    made: tuple[Made, ...] = ()
    floors: Floors = ()
    joint: str = ""
    meets: tuple[str, ...] = ()
