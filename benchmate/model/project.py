"""The stored project: the shop's practice, names for lengths, timbers and the work on them."""

from typing import Literal, NamedTuple, Self

from pydantic import Field, SerializeAsAny, ValidationInfo, field_validator, model_validator

from benchmate.measure.length import Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.measure.reading import Unit
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction, Pose
from benchmate.model.fields import (
    EndDirection,
    FaceDirection,
    Id,
    Name,
    Note,
    Position,
    SectionOrName,
    SectionSize,
    Size,
)
from benchmate.model.place import Incline, Line, Roll
from benchmate.model.record import Record
from benchmate.model.work import Work

FORMAT = 1
"""The number of the file format this program writes and reads."""

STYLES = {style.name.lower().replace("_", " and "): style for style in Style}
"""The words a project file uses for how lengths are shown."""

GRADUATIONS = {
    "1/8": Graduation.EIGHTH,
    "1/16": Graduation.SIXTEENTH,
    "1/32": Graduation.THIRTY_SECOND,
    "1/64": Graduation.SIXTY_FOURTH,
    "1 mm": Graduation.MM,
    "0.5 mm": Graduation.HALF_MM,
}
"""The words a project file uses for the finest mark on the framer's tape."""

StyleWord = Literal["feet and inches", "inches", "mm"]
GraduationWord = Literal["1/8", "1/16", "1/32", "1/64", "1 mm", "0.5 mm"]
LengthMeaning = Literal["shoulder to shoulder", "overall"]
RuleWord = Literal["mill", "square"]


class Shop(Record):
    """The shop's practice: house rules that differ between good framers, so all can be changed.

    What is not given is as usual: see `USUAL`.
    """

    trim: Size | None = None
    """Wood to spare at each end of a stick before it is squared and cut to length."""

    guide_block: Size | None = None
    """From a chamfer stop to where the block that stops the tool is clamped."""

    bottom_clearance: Size | None = None
    """How much deeper a mortise is than its tenon is long."""

    least_wood: Size | None = None
    """The wood to leave between two joints on one timber; less is told. It is no measure of
    strength: how much is needed there is for the engineer to say."""


class Practice(NamedTuple):
    """The shop's practice with every house rule settled."""

    trim: Length
    guide_block: Length
    bottom_clearance: Length
    least_wood: Length


USUAL = {
    Unit.INCH: Practice(
        trim=Length.inches(1),
        guide_block=Length.inches(2),
        bottom_clearance=Length.inches(0, 1, 8),
        least_wood=Length.inches(0, 1, 2),
    ),
    Unit.MM: Practice(
        trim=Length.mm(25),
        guide_block=Length.mm(50),
        bottom_clearance=Length.mm(3),
        least_wood=Length.mm(12),
    ),
}
"""What counts where the shop says nothing, round in the unit of its tape.

Common practice, no source, but for the 1/8" of bottom clearance, by which a stub tenon is trimmed
in a published shop note (trade notes, TFHQ-stub); the metric figures are the same rules rounded.
"""


class Timber(Record):
    """One timber of the frame.

    `section` is the depth in from the first reference face by the depth in from the second.

    A timber with a place stands where its reference arris runs: on the line `at`, or on the line
    `incline` says. What an end meets gives its shoulder; where an end meets nothing, its shoulder
    (its squared end, without a tenon) comes where `reference_end_at` or `far_end_at` says, or
    `length` after the other. A level timber that lies in a roof, as a purlin does, has a `roll`
    beside its line. A timber without a place has a `length`: from shoulder to shoulder (or to the
    squared end where there is no tenon), or overall, as `length_is` says. Its `shoulder_level` is
    the level of an upright timber's reference shoulder, needed only where a chamfer stop is taken
    from a level.

    `rule` and `inner` stand in for the project's rule and its inner section of this class.
    """

    id: Id
    name: Name
    kind: Name
    species: Note = ""
    section: SectionOrName
    first_face: FaceDirection
    second_face: FaceDirection
    reference_end: EndDirection
    at: Line | None = None
    reference_end_at: Position | None = None
    far_end_at: Position | None = None
    incline: Incline | None = None
    roll: Roll | None = None
    length: Position | None = None
    length_is: LengthMeaning = "shoulder to shoulder"
    shoulder_level: Position | None = None
    rule: RuleWord | None = None
    inner: SectionSize | None = None
    note: Note = ""

    @model_validator(mode="after")
    def _stands_square(self) -> Self:
        _ = self.pose
        return self

    @property
    def pose(self) -> Pose:
        """How the timber stands; one that rakes or is rolled, how it would if laid level."""
        if self.incline is None:
            head = self.roll.towards if self.roll is not None else None
            return Pose(self.first_face, self.second_face, self.reference_end, head=head)
        head = self.incline.heading
        low = {Direction.DOWN: head.opposite, Direction.UP: head}.get(self.reference_end)
        if low is None:
            raise ValueError(
                'rakes, so its reference end is no compass end; write "foot" or "head" for it'
            )
        if not (self.first_face.square_to(head) and self.second_face.square_to(head)):
            raise ValueError(
                f"has a reference face that looks along it, for it rises towards the {head.word}; "
                "say where each would look if the timber lay level"
            )
        return Pose(self.first_face, self.second_face, low, head=head)

    @property
    def what(self) -> str:
        """Its kind, and its species where that is known: `post, white pine`."""
        return f"{self.kind}, {self.species}" if self.species else self.kind

    @property
    def upright(self) -> bool:
        """Whether the timber stands on end."""
        return self.incline is None and self.reference_end in (Direction.UP, Direction.DOWN)

    @property
    def placed(self) -> bool:
        """Whether it is said where the timber stands in the building."""
        return self.at is not None or self.incline is not None

    def square_ruled(self, rule: str) -> bool:
        """Whether its joints are reduced to a smaller perfect timber; `rule` is the project's."""
        return (self.rule or rule) == "square"

    def sums(self) -> dict[str, Sum]:
        """The figures that may hold names, under the keys of the file."""
        found = {
            "reference_end_at": self.reference_end_at,
            "far_end_at": self.far_end_at,
            "length": self.length,
            "shoulder_level": self.shoulder_level,
        }
        given = {name: total for name, total in found.items() if total is not None}
        places = (("at", self.at), ("incline", self.incline), ("roll", self.roll))
        for name, place in places:
            if place is not None:
                given |= {f"{name}.{key}": total for key, total in place.sums().items()}
        return given


class Project(Record):
    """A frame: what is stored in `project.toml`.

    `rule` is how a stick that is not to size is taken: as it is (mill rule), or with joints reduced
    to a smaller perfect timber that shares its reference arris (square rule). `inner` gives that
    timber's section for each named section.
    `graduation` is the finest mark on the framer's tape; if not given, 1/16" or 1 mm.
    """

    format: Literal[1] = 1
    name: Name
    demo: bool = False
    note: Note = ""
    units: StyleWord = "feet and inches"
    graduation: GraduationWord | None = None
    shop: Shop = Field(default_factory=Shop)
    rule: RuleWord = "mill"
    lines: dict[str, Position] = Field(default_factory=dict)
    lengths: dict[str, Position] = Field(default_factory=dict)
    levels: dict[str, Position] = Field(default_factory=dict)
    sections: dict[str, SectionSize] = Field(default_factory=dict)
    inner: dict[str, SectionSize] = Field(default_factory=dict)
    timbers: tuple[Timber, ...] = Field(default=(), strict=False)
    works: tuple[SerializeAsAny[Work], ...] = Field(default=(), strict=False)

    @field_validator("graduation")
    @classmethod
    def _on_the_tape(cls, graduation: str | None, info: ValidationInfo) -> str | None:
        units = info.data.get("units")
        if units is None or graduation is None or graduation in fitting_marks(units):
            return graduation
        raise ValueError(
            f'is "{graduation}", which is no mark on a tape in {units}; write one of '
            f"{', '.join(fitting_marks(units))}"
        )

    @property
    def tape(self) -> Tape:
        """How lengths are shown in this project."""
        return tape_of(self.units, self.graduation)

    @property
    def practice(self) -> Practice:
        """The shop's practice, as usual where it says nothing."""
        given = (getattr(self.shop, rule) for rule in Practice._fields)
        pairs = zip(given, USUAL[self.bare], strict=True)
        return Practice(*(usual if own is None else own for own, usual in pairs))

    @property
    def names(self) -> dict[str, Sum]:
        """What lines, levels and lengths are called, and the sums they stand for."""
        return {**self.lines, **self.lengths, **self.levels}

    @property
    def bare(self) -> Unit:
        """The unit of a number written without one."""
        return bare_unit(self.units)


def bare_unit(units: str) -> Unit:
    """The unit of a bare number in a project shown in `units`."""
    return Unit.MM if units == "mm" else Unit.INCH


def fitting_marks(units: str) -> tuple[str, ...]:
    """The graduations of a tape in these units, in the words of a project file."""
    return tuple(word for word, mark in GRADUATIONS.items() if mark.metric is (units == "mm"))


def tape_of(units: str, graduation: str | None) -> Tape:
    """The tape that the words of a project file say; without a graduation, 1/16" or 1 mm.

    Raises KeyError for words that are none, ValueError for a graduation of other units.
    """
    usual = "1 mm" if units == "mm" else "1/16"
    return Tape(style=STYLES[units], graduation=GRADUATIONS[graduation or usual])
