"""Reading what a framer typed: every answer with its value, or with what is wrong with it.

1. Questions are gone through in order. One that is not asked is passed over.
2. A question with nothing typed takes what it suggests, from the answers before it.
3. An answer that cannot be keeps its text and its problem, and what follows is suggested as if the
   question had been left alone.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from benchmate.measure.length import Length
from benchmate.measure.reading import LengthError, Unit, read_length
from benchmate.measure.section import read_section
from benchmate.outset.answers import Answers, Value
from benchmate.outset.own import NOTHING, Own
from benchmate.outset.plan_questions import graduations
from benchmate.outset.question import Cannot, Kind, Question
from benchmate.outset.questions import QUESTIONS, WHOLE
from benchmate.outset.written import MM


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """One question as it stands: the text, whether the framer typed it, what is wrong with it.

    `own` says that it stands as his settings suggest it.
    """

    question: Question
    text: str
    typed: bool
    choices: tuple[str, ...]
    cannot: Cannot | None = None
    own: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Filled:
    """All questions that are asked, in order. `answers` holds good where there are no problems."""

    rows: tuple[Answer, ...]
    answers: Answers

    @property
    def faults(self) -> tuple[Answer, ...]:
        """The answers that cannot be."""
        return tuple(row for row in self.rows if row.cannot)


def fill(typed: Mapping[str, str], own: Own = NOTHING) -> Filled:
    """Every question asked, with what was typed for it by its id, or what it suggests.

    What the framer's `own` settings suggest goes first, where this frame has room for it.
    """
    values: dict[str, Value] = own.shop()
    answers = Answers(values)
    rows = [_answer(each, typed, values, own) for each in QUESTIONS if each.asked(answers)]
    if not any(row.cannot for row in rows):
        rows = [_with_whole(row, answers) for row in rows]
    return Filled(rows=tuple(rows), answers=answers)


def _with_whole(row: Answer, answers: Answers) -> Answer:
    found = [refuse(answers) for question, refuse in WHOLE if question == row.question.id]
    cannot = next(filter(None, found), None)
    return replace(row, cannot=cannot) if cannot else row


def _answer(
    question: Question, typed: Mapping[str, str], values: dict[str, Value], own: Own
) -> Answer:
    """One answer; its value, or that of the suggestion, comes into `values`."""
    answers = Answers(values)
    suggestion, choices = question.suggest(answers), _choices(question, answers)
    preferred = own.text(question.id, answers)
    if preferred and _fits(question, preferred, choices, values):
        suggestion = preferred
    text = typed.get(question.id, suggestion)
    if choices and text not in choices:
        text = suggestion
    cannot = _taken(question, text, values)
    if cannot and text != suggestion:
        _taken(question, suggestion, values)
    return Answer(
        question=question,
        text=text,
        typed=text != suggestion,
        choices=choices,
        cannot=cannot,
        own=bool(preferred) and text == suggestion == preferred,
    )


def _fits(
    question: Question, text: str, choices: tuple[str, ...], values: Mapping[str, Value]
) -> bool:
    """Whether a text could be the answer, given those before it."""
    return text in choices if choices else _taken(question, text, dict(values)) is None


def _choices(question: Question, answers: Answers) -> tuple[str, ...]:
    return graduations(answers) if question.id == "graduation" else question.choices


def _taken(question: Question, text: str, values: dict[str, Value]) -> Cannot | None:
    """Put the value of a text with the others, and say what is wrong with it."""
    try:
        values[question.id] = _read(question, text.strip(), values)
    except LengthError as error:
        return Cannot(error.problem, error.remedy)
    except ValueError as error:
        problem, _, remedy = str(error).partition("; ")
        return Cannot(problem, remedy)
    return question.refuse(Answers(values))


def _read(question: Question, text: str, values: Mapping[str, Value]) -> Value:
    """The value of a text. Raises ValueError, or LengthError, for one that is none."""
    bare = Unit.MM if values.get("units") == MM else Unit.INCH
    if question.may_be_empty and not text:
        return ""
    match question.kind:
        case Kind.LENGTH:
            return _length(question, text, bare)
        case Kind.SECTION:
            return read_section(text, bare=bare)
        case Kind.COUNT:
            return _count(text)
        case Kind.PITCH:
            return _pitch(text)
    return text


def _length(question: Question, text: str, bare: Unit) -> Length:
    found = read_length(text, bare=bare)
    if not found and not question.may_be_zero:
        raise ValueError("this is more than nothing; write a length")
    return found


def _count(text: str) -> int:
    if not (text.isascii() and text.isdigit() and len(text) < len("100000")):
        raise ValueError("this is no whole number; write one, as 3")
    return int(text)


def _pitch(text: str) -> Fraction:
    """A rise in 12 of run: `9`, `8-1/2`, `8.5`, `9/12`, `9 in 12`."""
    number = text.replace("in 12", "").strip()
    number = number.removesuffix("/12").strip() if number.endswith("/12") else number
    whole, _, part = number.replace("-", " ").partition(" ")
    try:
        return sum(map(Fraction, (whole, part) if part else (whole,)), start=Fraction(0))
    except (ValueError, ZeroDivisionError) as error:
        raise ValueError("this is no pitch; write the rise in 12 of run, as 9") from error
