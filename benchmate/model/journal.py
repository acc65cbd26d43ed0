"""What a framer does to a project, as data: each action with what it changed, before and after.

An action is kept so that it can be taken back and done again after a restart, by a program that
finds nothing but the files. So it holds the value before and after of exactly what it changed, and
is done or undone only where the one it starts from is still there.
"""

from collections.abc import Mapping
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from benchmate.model.fields import Id, Note
from benchmate.model.progress import (
    AsCut,
    Blemish,
    Measured,
    Moment,
    Signed,
    SignWord,
    Tick,
    WrittenNote,
)
from benchmate.model.record import Record

Token = Annotated[str, Field(pattern="^[0-9a-f]{12}$")]
"""What names one action, or one line that cannot be read, among all others."""

_Place = Annotated[int, Field(ge=0)]
"""Where an entry stands among its like in a progress file, from 0, so that it can go back there."""


class TickPart(Record):
    """A step's tick before and after; None where there was none."""

    what: Literal["tick"]
    key: Note
    was: Tick | None = None
    was_at: _Place = 0
    now: Tick | None = None
    now_at: _Place = 0


class MeasuredPart(Record):
    """The section measured at a place before and after; None where it was as drawn."""

    what: Literal["measured"]
    key: Id
    was: Measured | None = None
    was_at: _Place = 0
    now: Measured | None = None
    now_at: _Place = 0


class AsCutPart(Record):
    """The sizes of a finished tenon before and after; None where they were as drawn."""

    what: Literal["as-cut"]
    key: Id
    was: AsCut | None = None
    was_at: _Place = 0
    now: AsCut | None = None
    now_at: _Place = 0


class SignedPart(Record):
    """What is signed of a whole timber before and after; None where it was not."""

    what: Literal["signed"]
    key: SignWord
    was: Signed | None = None
    was_at: _Place = 0
    now: Signed | None = None
    now_at: _Place = 0


class NotePart(Record):
    """A note before and after; None where there was none."""

    what: Literal["note"]
    key: Id
    was: WrittenNote | None = None
    was_at: _Place = 0
    now: WrittenNote | None = None
    now_at: _Place = 0


class BlemishPart(Record):
    """A blemish before and after; None where none was noted."""

    what: Literal["blemish"]
    key: Id
    was: Blemish | None = None
    was_at: _Place = 0
    now: Blemish | None = None
    now_at: _Place = 0


class NamePart(Record):
    """What one name of the project file was written as before and after."""

    what: Literal["name"]
    table: str
    name: str
    was: str
    now: str


class Piece(Record):
    """Lines of the project file before and after, and those just above and below, which stay.

    Each line holds its end. `line` counts from 1, in the file as it was before.
    """

    line: Annotated[int, Field(ge=1)]
    above: tuple[str, ...] = ()
    was: tuple[str, ...] = ()
    now: tuple[str, ...] = ()
    below: tuple[str, ...] = ()


class MovedPart(Record):
    """Progress that went to another id, or stayed under the same, and what on it did.

    `features` gives the new id of each joint's part on the timber that is called otherwise.
    """

    old: str
    new: str
    features: Mapping[str, str] = {}


class TextPart(Record):
    """The project file rewritten: the pieces that differ, from the top, and progress that moved."""

    what: Literal["text"]
    pieces: Annotated[tuple[Piece, ...], Field(min_length=1)]
    moves: tuple[MovedPart, ...] = ()


ProgressPart = TickPart | MeasuredPart | AsCutPart | SignedPart | NotePart | BlemishPart
"""What changes in a timber's progress file."""

ProjectPart = NamePart | TextPart
"""What changes in the project file."""

Part = Annotated[ProgressPart | ProjectPart, Field(discriminator="what")]


class Action(Record):
    """One thing done: when, what in words, and what changed by it.

    `timber` and `step` are where the framer stood, `name` what the timber was called then. The
    parts are all of that timber's progress, or one of the project file.
    """

    id: Token
    at: Moment
    words: Note
    timber: Id | Literal[""] = ""
    name: Note = ""
    step: Note = ""
    parts: Annotated[tuple[Part, ...], Field(min_length=1)]

    @model_validator(mode="after")
    def _of_one_file(self) -> Self:
        project = sum(isinstance(part, ProjectPart) for part in self.parts)
        if project and len(self.parts) > 1:
            raise ValueError("changes the project file and something else; they are two actions")
        if not project and not self.timber:
            raise ValueError("changes a timber's progress and does not say whose")
        return self

    @property
    def of_frame(self) -> bool:
        """Whether it changed the project file, and with it the whole frame."""
        return isinstance(self.parts[0], ProjectPart)


class Line(Record):
    """One line of the journal: an action, or what became of an earlier one.

    `did` may bring what became of it, where old lines were put together. `left` is an action that
    is not to be undone, or not to be done again, as what it changed was changed outside since.
    `told` names a line that cannot be read and that the framer has been told of.
    """

    did: Action | None = None
    became: Literal["", "spent", "left"] = ""
    undone: Token | Literal[""] = ""
    redone: Token | Literal[""] = ""
    left: Token | Literal[""] = ""
    told: Token | Literal[""] = ""

    @model_validator(mode="after")
    def _says_one_thing(self) -> Self:
        if sum(map(bool, (self.did, self.undone, self.redone, self.left, self.told))) != 1:
            raise ValueError("does not say one thing")
        if self.became and self.did is None:
            raise ValueError("says what became of nothing")
        return self
