"""Walks, look-ups and findings as plain text, for a terminal or a pipe."""

from collections.abc import Iterator

from benchmate.layout.noted import blemish_words, notes_at, notes_on_stick, one_line
from benchmate.layout.standing import Standing, State
from benchmate.layout.step import Step
from benchmate.measure.printing import Tape
from benchmate.measure.section import section_text
from benchmate.model.findings import Finding
from benchmate.workbench.find_entries import Hit
from benchmate.workbench.jobs import Waits, waits_in_words
from benchmate.workbench.walk import Walk

BLEMISH = "blemish-"
"""What the codes of findings on blemishes begin with."""

_WAITING = "[w]"
_BOX = {State.OPEN: "[ ]", State.TICKED: "[x]", State.LOOK_AGAIN: "[!]"}


def heading(walk: Walk) -> str:
    """One line on a timber: name, kind, section, lengths, progress."""
    stick, timber, tape = walk.layout.stick, walk.timber, walk.tape
    return (
        f"{timber.name} ({timber.id}): {timber.what}, {section_text(stick.nominal, tape)}, "
        f"shoulder to shoulder {tape.text(stick.body)}, overall {tape.text(stick.overall)}, "
        f"{walk.done} of {len(walk.steps)} done"
    )


def marks_text(walk: Walk, waits: Waits) -> str:
    """Every step of one timber, a few lines each; `waits` is what waits on it for others."""
    lines = [heading(walk), *(f"  note: {line}" for line in walk.timber.note.splitlines())]
    lines += _noted(walk)
    if walk.trouble:
        return "\n".join([*lines, f"  ! figures withheld: {walk.trouble}"])
    for step, standing in zip(walk.steps, walk.standings, strict=True):
        lines += _step_lines(walk, step, standing, waits_in_words(waits.get(step.id, ())))
        lines += (
            f"        note: {one_line(note.text)}"
            for note in notes_at(walk.progress, step.feature, step.id)
        )
    return "\n".join(lines)


def _noted(walk: Walk) -> Iterator[str]:
    """What was noted of the whole timber and its wood, and what its blemishes do to joints."""
    for note in notes_on_stick(walk.progress):
        yield f"  note: {one_line(note.text)}"
    for blemish in walk.progress.blemishes:
        yield f"  wood: {blemish_words(walk.layout.stick, blemish, walk.tape)}"
    for finding in walk.findings:
        if finding.code.startswith(BLEMISH):
            yield f"  ! look: {finding.message}; {finding.remedy}."


def _step_lines(walk: Walk, step: Step, standing: Standing, waits_for: str) -> Iterator[str]:
    withheld = walk.withheld(step)
    waiting = waits_for and not withheld
    yield f"  {_WAITING if waiting else _BOX[standing.state]} {step.title}"
    if withheld:
        yield f"        ! stop: {withheld}"
        return
    if standing.changed:
        yield f"        ! {standing.changed}: look again"
    if waits_for:
        yield f"        waits for {waits_for}"
    for reading in walk.readings(step):
        yield f"        {walk.tape.text(reading.value)} {reading.words}"
    for beside in step.beside:
        yield f"        {walk.tape.text(beside.value)} {beside.words}"
    labelled = (
        ("square", step.setting.words(walk.tape) if step.setting else ""),
        ("on", step.on),
        ("waste", step.waste),
        ("why", step.why),
        ("!", step.caution),
    )
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
