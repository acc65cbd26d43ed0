"""The calculator as the screen shows it: a line read, its answer in words, the tape of results.

No widget is touched here: the pad screen shows what the pad says.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.measure.length import ZERO
from benchmate.measure.reading import Unit
from benchmate.measure.tokens import LengthError
from benchmate.tui.rows import Row
from benchmate.tui.words import Saying
from benchmate.workbench.reckoning import EXACT, Answer, for_a_field, reckon

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from benchmate.measure.length import Length
    from benchmate.measure.printing import Tape

MOST_KEPT = 12
"""Results on the tape: the last few are what a framer comes back to."""

HOW = (
    ("sum", "12' 6 - 2 x 7-1/2, or (14' 3 - 9) / 2, or half of 171"),
    ("units", "190 mm + 7-1/2, each in any unit"),
    ("names", "floor top - 2 x deck, with any name of the project"),
    ("spaces", "14' 3 in 5 spaces, or 14' 3 at most 16 for spaces no wider than that"),
    ("", "14' 3 in 5 spaces with 5-1/2 between, for timbers 5-1/2 wide"),
    ("square", "diagonal 14' 3 by 22'"),
    ("", "diagonal 14' 3 by 22', 26' 2-1/2 and 26' 3, when both were measured"),
    ("slope", "run 12' rise 8', or run 12' pitch 8 in 12, or pitch 8 in 12"),
)
"""What can be typed, by example."""


@dataclass(frozen=True, slots=True)
class Kept:
    """One result on the tape: the line as typed, and what it came to."""

    text: str
    answer: Answer


@dataclass(frozen=True, slots=True, kw_only=True)
class Worked:
    """What a line comes to: an answer, or what is wrong with it; neither for an empty line."""

    answer: Answer | None = None
    problem: str = ""
    excerpt: str = ""


class Pad:
    """The calculator of a project; `kept` is its tape, the newest result last, and is added to."""

    def __init__(
        self, tape: Tape, bare: Unit, sizes: Mapping[str, Length], kept: list[Kept]
    ) -> None:
        self.tape = tape
        self.bare = bare
        self._sizes = sizes
        self._kept = kept

    @property
    def about(self) -> str:
        """What a bare number is taken for."""
        return f"without a unit: {'mm' if self.bare is Unit.MM else 'inches'}"

    def work(self, text: str) -> Worked:
        """Work a line out."""
        if not text.strip():
            return Worked()
        try:
            answer = reckon(text, tape=self.tape, bare=self.bare, sizes=self._sizes)
        except LengthError as error:
            return Worked(problem=str(error), excerpt=error.excerpt())
        return Worked(answer=answer)

    def sayings(self, worked: Worked, field: str = "", *, same: bool = False) -> tuple[Saying, ...]:
        """An answer in words, what is wrong, or how to begin.

        `field` is what it is given to, `same` that the field says just that already.
        """
        if worked.problem:
            return (Saying(label="", text=f"{worked.problem}.", strong=True),)
        answer = worked.answer
        if answer is None:
            return tuple(Saying(label=label or " ", text=text) for label, text in HOW)
        told = (
            Saying(label=told.label, text=told.text, strong=told.strong)
            for told in answer.lines
            if not (field and told.label == EXACT and self.given(answer) == answer.result.length)
        )
        what = (Saying(label="is", text=answer.what, strong=True),) if answer.what else ()
        given = self._given(answer, field, same=same) if field else ()
        return (*given, *what, *told)

    def given(self, answer: Answer) -> Length:
        """What a field is given: the result, or the nearest length that a file can hold."""
        return for_a_field(answer.result.length, self.bare)

    def _given(self, answer: Answer, field: str, *, same: bool) -> Iterator[Saying]:
        """What the field is given, and what is lost by it."""
        if same:
            text = f"nothing new: {field} is written so already"
            yield Saying(label="gives", text=text, strong=True)
            return
        given = self.given(answer)
        yield Saying(label="gives", text=f"{given.exact_text()}, to {field}", strong=True)
        if given != answer.result.length:
            finest = "tenth of a mm" if self.bare is Unit.MM else "64th"
            told = f"rounded to the nearest {finest}, as it has no exact spelling in a field"
            yield Saying(label="round", text=told, strong=True)
        if answer.names:
            told = f"a plain figure: it will not follow {', '.join(answer.names)} any more"
            yield Saying(label="look", text=told, strong=True)

    def keep(self, text: str, answer: Answer) -> None:
        """Put a result on the tape, unless it is the last one there."""
        kept = Kept(text.strip(), answer)
        if self._kept[-1:] != [kept]:
            self._kept.append(kept)
            del self._kept[:-MOST_KEPT]

    def rows(self) -> tuple[Row, ...]:
        """The tape, the newest result first."""
        return tuple(
            Row(text=kept.text, tail=self.tape.text(kept.answer.result.length))
            for kept in reversed(self._kept)
        )

    def taken_up(self, row: int) -> str:
        """A result of the tape to go on with, exact: one that was rounded as its line in brackets.

        What is more than arithmetic can only be taken up as it was rounded.
        """
        kept = self._kept[-1 - row]
        result = kept.answer.result
        if not result.whole and not kept.answer.what:
            return f"({kept.text})"
        text = result.length.exact_text()
        return f"({text})" if result.length < ZERO else text
