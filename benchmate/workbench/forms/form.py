"""What a form is: its fields, what can be picked for each, what is usual, and the edit it makes."""

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, NamedTuple

from benchmate.model.fields import ENDS
from benchmate.store.document import key_text
from benchmate.store.editing import Draft
from benchmate.store.problem import Problem
from benchmate.store.tables import TIMBER_TABLE
from benchmate.store.toml_lines import Path
from benchmate.workbench.bench import Bench
from benchmate.workbench.keeping import NotKeptError
from benchmate.workbench.project_edits import ENDS_AT, Edit
from benchmate.workbench.usual import Usual

Texts = Mapping[str, str]
"""What stands in each field of a form, by its key."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Blank:
    """One field: its key, what it is called, a line of help, and what stands in it at first.

    `heading` stands over the first of several that belong together. A `sum` is built up of names
    with signs between, `many` of words with commas between.
    """

    key: str
    label: str
    help: str
    text: str = ""
    heading: str = ""
    required: bool = False
    sum: bool = False
    many: bool = False


class FormError(NotKeptError):
    """What is typed in a form makes no edit: the field it is about, if it is about one."""

    def __init__(self, key: str, message: str) -> None:
        super().__init__(message)
        self.key = key


class OpenEnd(NamedTuple):
    """An end that no joint and no figure settles yet: the timber, and the word for the end."""

    timber: str
    end: str

    @property
    def words(self) -> str:
        """What a framer calls the end."""
        return self.end if self.end in ("foot", "head") else f"{self.end} end"


_OPEN = "is missing: nothing says where"
"""How the problem of such an end begins."""


def open_ends(edit: Edit, problems: tuple[Problem, ...]) -> tuple[OpenEnd, ...]:
    """The ends that are still open, if that is all that is wrong with an edit."""
    if not all(each.message.startswith(_OPEN) for each in problems):
        return ()
    entries = Draft(edit.text).data[TIMBER_TABLE]
    return tuple(_open_end(entries, each.key) for each in problems)


def _open_end(entries: list[dict[str, Any]], key: str) -> OpenEnd:
    place, _, last = key.partition(".")
    stored = entries[int(place.removeprefix(f"{TIMBER_TABLE}[").removesuffix("]")) - 1]
    near = ENDS[stored["reference_end"]]
    end = near if last == ENDS_AT[0] else near.opposite
    return OpenEnd(stored["id"], next(word for word, each in ENDS.items() if each is end))


class Form(ABC):
    """A form over an open project. Nothing is kept by it: it gives an edit to try and to keep.

    `base` is the text to start from, where others than the file's own are still to be kept with it.
    """

    title = ""
    blanks: tuple[Blank, ...] = ()
    first = ""
    """The field to start in, if it is not the first."""

    joints_follow = False
    """Whether ends that are still open can be given their joints next, before anything is kept."""

    def __init__(self, bench: Bench, base: str = "") -> None:
        self.bench = bench
        self.base = base or bench.project_text()
        self.draft = Draft(self.base)
        self.pending = self.base != bench.project_text()

    @abstractmethod
    def edit(self, texts: Texts) -> Edit:
        """The edit that what was typed makes. Raises NotKeptError, as FormError or otherwise."""

    def choices(self, key: str, texts: Texts) -> tuple[str, ...]:  # noqa: ARG002 - each form's own
        """What can be picked for a field, the likeliest first."""
        return ()

    def usual(self, key: str, texts: Texts) -> Usual | None:  # noqa: ARG002 - each form's own
        """What is usual in the trade for a field."""
        return None

    def says(self, texts: Texts) -> tuple[str, ...]:  # noqa: ARG002 - each form's own
        """What to tell in any case, before the effect on marks."""
        return ()

    def field_of(self, problem: Problem, path: Path) -> str:
        """The field that a problem of the file to come is about; empty for none of this form's."""
        lead = key_text(path)
        key = problem.key.removeprefix(f"{lead}.") if lead else problem.key
        if lead and key == problem.key:
            return ""
        key = key.partition("[")[0]
        known = {blank.key for blank in self.blanks}
        return key if key in known else next((k for k in known if k.startswith(f"{key}.")), "")

    @property
    def blocked(self) -> str:
        """Why nothing can be typed here, or empty."""
        if self.bench.read_only:
            return f"READ ONLY: {self.bench.read_only}. The project can be looked at, not changed."
        if self.bench.broken:
            return f"READ ONLY for now: put right first {self.bench.broken}."
        return ""

    def texts(self) -> dict[str, str]:
        """What stands in the fields at first."""
        return {blank.key: blank.text for blank in self.blanks}
