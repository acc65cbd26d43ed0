"""What is kept for one timber: its ticks, its measured sections and its as-cut sizes."""

from datetime import datetime
from typing import Literal

from pydantic import Field

from benchmate.measure.length import Length
from benchmate.model.fields import ExactLength, Id, Note, PositiveSize
from benchmate.model.record import Record


class Tick(Record):
    """A step done: what it read when it was ticked, so that a later change can be seen.

    `marked` holds each figure by what it was measured from, `on` the faces it was struck on and
    `waste` the side that goes, all in words.
    """

    step: Note
    marked: dict[str, ExactLength] = Field(default_factory=dict)
    on: Note = ""
    waste: Note = ""
    at: datetime


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


class Progress(Record):
    """Everything kept for one timber, in `progress/<timber>.toml`."""

    format: Literal[1] = 1
    timber: Id
    measured: dict[str, Measured] = Field(default_factory=dict)
    as_cut: dict[str, AsCut] = Field(default_factory=dict)
    ticks: tuple[Tick, ...] = Field(default=(), strict=False)

    def tick(self, step: str) -> Tick | None:
        """The tick on a step, if it has one."""
        return next((tick for tick in self.ticks if tick.step == step), None)
