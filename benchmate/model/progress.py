"""What is kept for one timber: ticks, real sizes, notes, blemishes and what is signed of it."""

from datetime import datetime
from typing import Annotated, Literal, get_args

from pydantic import AfterValidator, Field

from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.fields import (
    Distance,
    ExactLength,
    Hook,
    Id,
    Note,
    PositiveRun,
    PositiveSize,
    Size,
    Words,
)
from benchmate.model.record import Record

FIRST_YEAR, LAST_YEAR = 1970, 9998
"""The years of a tick: those that every system can turn to local time."""


def _in_our_time(at: datetime) -> datetime:
    if at.tzinfo is None or not FIRST_YEAR <= at.year <= LAST_YEAR:
        raise ValueError(
            f"is not a time from {FIRST_YEAR} to {LAST_YEAR} with its zone; write it as "
            "2026-11-25T08:30:00Z"
        )
    return at


Moment = Annotated[datetime, AfterValidator(_in_our_time)]
"""When something was done, with its zone."""


class Tick(Record):
    """A step done: what it read when it was ticked, so that a later change can be seen.

    `marked` holds each figure by what it was measured from, `on` the faces it was struck on and
    `waste` the face the waste of a struck line lies towards.
    """

    step: Note
    marked: dict[Hook, ExactLength] = Field(default_factory=dict)
    on: Note = ""
    waste: Note = ""
    at: Moment


class Measured(Record):
    """A real section measured at one place; a depth not measured stays as drawn."""

    first: PositiveSize | None = None
    second: PositiveSize | None = None


class AsCut(Record):
    """The real sizes of a finished tenon; a size not typed stays as drawn."""

    thickness: PositiveSize | None = None
    width: PositiveSize | None = None
    length: PositiveSize | None = None

    def get(self, size: str) -> Length | None:
        """One of the three sizes by name."""
        return {"thickness": self.thickness, "width": self.width, "length": self.length}[size]


SignWord = Literal["checked", "fitted", "assembled"]
"""What no tick can tell of a whole timber: marks checked by a second person, fitted, assembled."""

SIGN_WORDS: tuple[SignWord, ...] = get_args(SignWord)
"""The same in the order they come on a timber."""


class Signed(Record):
    """Something said of a whole timber, and when."""

    what: SignWord
    at: Moment


class WrittenNote(Record):
    """A note in words: `about` a step or a joint of the timber by its id, or the whole of it."""

    id: Id
    about: Note = ""
    text: Words
    at: Moment


BlemishKind = Literal["knot", "check", "wane", "other"]

BlemishFace = Literal["first", "second", "far first", "far second"]
"""A long face by its place on the stick: what is in the wood stays, whatever the face is called."""


class Blemish(Record):
    """A fault in the wood, as the box it fills from a long face inwards.

    It starts `from_end` along from the squared reference end and `from_arris` in from the arris
    that its face makes with the reference face beside it. `deep` is None where nobody knows.
    """

    id: Id
    kind: BlemishKind
    face: BlemishFace
    from_end: Distance
    long: PositiveRun
    from_arris: Size
    wide: PositiveSize
    deep: PositiveSize | None = None
    text: Note = ""
    at: Moment

    @property
    def side(self) -> Face:
        """The face it lies on."""
        return Face(self.face)

    @property
    def depth(self) -> Length:
        """How deep it is counted: as deep as it is wide where nobody knows.

        Common practice, no source: a knot runs in towards the pith and is mostly deeper still.
        """
        return self.wide if self.deep is None else self.deep


class Progress(Record):
    """Everything kept for one timber, in `progress/<timber>.toml`."""

    format: Literal[1] = 1
    timber: Id
    measured: dict[Id, Measured] = Field(default_factory=dict)
    as_cut: dict[Id, AsCut] = Field(default_factory=dict)
    ticks: tuple[Tick, ...] = Field(default=(), strict=False)
    signed: tuple[Signed, ...] = Field(default=(), strict=False)
    notes: tuple[WrittenNote, ...] = Field(default=(), strict=False)
    blemishes: tuple[Blemish, ...] = Field(default=(), strict=False)

    def tick(self, step: str) -> Tick | None:
        """The tick on a step, if it has one."""
        return next((tick for tick in self.ticks if tick.step == step), None)

    def sign(self, what: SignWord) -> Signed | None:
        """What is signed of the timber under a word, if it is."""
        return next((signed for signed in self.signed if signed.what == what), None)
