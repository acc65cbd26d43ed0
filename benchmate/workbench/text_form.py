"""Walks, look-ups and findings as plain text, for a terminal or a pipe."""

from collections.abc import Iterator

from benchmate.layout.standing import Standing, State
from benchmate.layout.step import Step
from benchmate.measure.printing import Tape
from benchmate.measure.section import section_text
from benchmate.model.findings import Finding
from benchmate.workbench.find import Hit
from benchmate.workbench.walk import Walk

_BOX = {State.OPEN: "[ ]", State.TICKED: "[x]", State.LOOK_AGAIN: "[!]"}


def heading(walk: Walk) -> str:
    """One line on a timber: name, kind, section, lengths, progress."""
    stick, timber, tape = walk.layout.stick, walk.timber, walk.tape
    return (
        f"{timber.name} ({timber.id}): {timber.what}, {section_text(stick.nominal, tape)}, "
        f"shoulder to shoulder {tape.text(stick.body)}, overall {tape.text(stick.overall)}, "
        f"{walk.done} of {len(walk.steps)} done"
    )


def marks_text(walk: Walk) -> str:
    """Every step of one timber, a few lines each."""
    lines = [heading(walk), *(f"  note: {line}" for line in walk.timber.note.splitlines())]
    if walk.trouble:
        return "\n".join([*lines, f"  ! figures withheld: {walk.trouble}"])
    for step, standing in zip(walk.steps, walk.standings, strict=True):
        lines += _step_lines(walk, step, standing)
    return "\n".join(lines)


def _step_lines(walk: Walk, step: Step, standing: Standing) -> Iterator[str]:
    yield f"  {_BOX[standing.state]} {step.title}"
    withheld = walk.withheld(step)
    if withheld:
        yield f"        ! stop: {withheld}"
        return
    if standing.changed:
        yield f"        ! {standing.changed}: look again"
    for reading in walk.readings(step):
        yield f"        {walk.tape.text(reading.value)} {reading.words}"
    for beside in step.beside:
        yield f"        {walk.tape.text(beside.value)} {beside.words}"
    labelled = (("on", step.on), ("waste", step.waste), ("why", step.why), ("!", step.caution))
    for label, words in labelled:
        if words:
            yield f"        {label}: {words}"


def hit_text(hit: Hit, tape: Tape) -> str:
    """One answer on one line."""
    figure = f"{tape.text(hit.value)}  " if hit.value is not None else ""
    return f"{hit.title}: {figure}{hit.detail}"


def finding_text(finding: Finding) -> str:
    """One finding on one line."""
    where = f"{finding.timber}/{finding.feature}" if finding.feature else finding.timber
    return f"{finding.severity.word} {finding.code} {where}: {finding.message}; {finding.remedy}."
