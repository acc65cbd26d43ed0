"""What is kept for one timber: its ticks, its real sizes, what is signed of it."""

from datetime import datetime
from typing import Annotated, Literal, get_args

from pydantic import AfterValidator, Field

from benchmate.measure.length import Length
from benchmate.model.fields import ExactLength, Hook, Id, Note, PositiveSize
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


class Progress(Record):
    """Everything kept for one timber, in `progress/<timber>.toml`."""

    format: Literal[1] = 1
    timber: Id
    measured: dict[Id, Measured] = Field(default_factory=dict)
    as_cut: dict[Id, AsCut] = Field(default_factory=dict)
    ticks: tuple[Tick, ...] = Field(default=(), strict=False)
    signed: tuple[Signed, ...] = Field(default=(), strict=False)

    def tick(self, step: str) -> Tick | None:
        """The tick on a step, if it has one."""
        return next((tick for tick in self.ticks if tick.step == step), None)

    def sign(self, what: SignWord) -> Signed | None:
        """What is signed of the timber under a word, if it is."""
        return next((signed for signed in self.signed if signed.what == what), None)
