"""A frame being set out: from what is typed to a whole project, read and checked, not yet kept."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.checks.design import findings_of
from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.model.findings import Finding
from benchmate.outset.answering import fill
from benchmate.outset.own import NOTHING, Own
from benchmate.outset.project_text import frame_text
from benchmate.store.problem import ProjectError
from benchmate.store.reading import parse_project


@dataclass(frozen=True, slots=True, kw_only=True)
class Draft:
    """What was typed, the text of the project it makes, and its frame.

    Without a frame where an answer cannot be; `problem` says what the reader of project files
    refuses in the text, which no answer should bring about.
    """

    typed: Mapping[str, str]
    text: str = ""
    frame: Frame | None = None
    problem: str = ""


def draft(typed: Mapping[str, str], own: Own = NOTHING) -> Draft:
    """What the answers typed so far make; the rest are as suggested."""
    filled = fill(typed, own)
    if filled.faults:
        return Draft(typed=typed)
    text = frame_text(filled.answers)
    try:
        project = parse_project(text.encode())
    except ProjectError as error:
        return Draft(typed=typed, text=text, problem=error.problems[0].text())
    return Draft(typed=typed, text=text, frame=Frame(project, {}))


def findings(frame: Frame) -> tuple[Finding, ...]:
    """Everything that the checks find in a frame as drawn, the worst first, each sentence once."""
    told: dict[str, Finding] = {}
    for timber in frame.project.timbers:
        for found in findings_of(lay_out(frame, timber.id), frame.tape):
            told.setdefault(found.message, found)
    return tuple(sorted(told.values(), key=lambda each: -each.severity))


def counts(frame: Frame) -> str:
    """The members by kind, in file order: `4 sills, 6 posts, 2 plates`."""
    kinds = Counter(timber.kind for timber in frame.project.timbers)
    return ", ".join(f"{count} {kind}{'' if count == 1 else 's'}" for kind, count in kinds.items())


def totals(frame: Frame) -> str:
    """How many timbers and joints there are."""
    return f"{len(frame.project.timbers)} timbers, {len(frame.project.works)} joints"
