"""What a question is: its words, what kind of answer it takes, what it suggests and refuses."""

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum
from typing import NamedTuple

from benchmate.outset.answers import Answers


class Kind(Enum):
    """What kind of answer a question takes."""

    TEXT = "text"
    CHOICE = "choice"
    LENGTH = "length"
    SECTION = "section"
    COUNT = "count"
    PITCH = "pitch"


class Cannot(NamedTuple):
    """Why an answer cannot be: what is wrong, and what to do."""

    problem: str
    remedy: str


def always(_answers: Answers) -> bool:
    """A question that is always asked."""
    return True


def nothing_wrong(_answers: Answers) -> Cannot | None:
    """A question whose answer, once read, is as good as any."""
    return None


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """One driving dimension, or one choice.

    `suggest` gives the text it starts with, from the answers to the questions before it; `source`
    says where that comes from. `refuse` says why an answer cannot be, given those before it.
    `asked` says whether the frame has any use for it. `shows` is the timber to look at meanwhile.
    An empty answer stands for none where `may_be_empty`, and for nothing where `may_be_zero`.
    """

    id: str
    label: str
    kind: Kind
    suggest: Callable[[Answers], str]
    about: str
    source: str = ""
    choices: tuple[str, ...] = ()
    asked: Callable[[Answers], bool] = always
    refuse: Callable[[Answers], Cannot | None] = nothing_wrong
    shows: str = ""
    may_be_empty: bool = False
    may_be_zero: bool = False


class Group(NamedTuple):
    """Questions under one heading."""

    title: str
    questions: tuple[Question, ...]
