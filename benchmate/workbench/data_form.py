"""Walks, look-ups and findings as plain data, for `--json`.

Every length is `{"nm": whole nanometres, "shown": as on the tape}`.
"""

from typing import Any

from benchmate.layout.noted import arris_of
from benchmate.layout.standing import Standing
from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding
from benchmate.model.progress import Blemish, WrittenNote
from benchmate.workbench.find_entries import Hit
from benchmate.workbench.jobs import Wait, Waits
from benchmate.workbench.walk import Walk


def length_data(length: Length, tape: Tape) -> dict[str, Any]:
    """A length, exact and as shown."""
    return {"nm": length.nm, "shown": tape.text(length)}


def walk_data(walk: Walk, waits: Waits) -> dict[str, Any]:
    """One timber and all its steps; figures are left out where they cannot be trusted.

    `waits` is what waits on it for other timbers.
    """
    stick, timber, tape = walk.layout.stick, walk.timber, walk.tape
    return {
        "id": timber.id,
        "name": timber.name,
        "kind": timber.kind,
        "species": timber.species,
        "note": timber.note,
        "section": {
            "first": length_data(stick.nominal.first, tape),
            "second": length_data(stick.nominal.second, tape),
        },
        "shoulder_to_shoulder": length_data(stick.body, tape),
        "overall": length_data(stick.overall, tape),
        "done": walk.done,
        "trouble": walk.trouble,
        "steps": [
            _step_data(walk, step, standing, waits.get(step.id, ()))
            for step, standing in zip(walk.steps, walk.standings, strict=True)
        ],
        "notes": [note_data(note) for note in walk.progress.notes],
        "blemishes": [blemish_data(walk, each) for each in walk.progress.blemishes],
        "findings": [finding_data(finding) for finding in walk.findings],
    }


def _step_data(
    walk: Walk, step: Step, standing: Standing, waits: tuple[Wait, ...]
) -> dict[str, Any]:
    tape = walk.tape
    fit = not walk.withheld(step)
    return {
        "id": step.id,
        "title": step.title,
        "state": standing.state.value,
        "changed": standing.changed,
        "waits_for": [
            {"timber": wait.timber, "step": wait.step, "words": wait.words} for wait in waits
        ],
        "on": [walk.layout.stick.pose.words(face) for face in step.faces],
        "readings": [
            length_data(reading.value, tape) | {"from": reading.hook, "way": reading.way}
            for reading in (walk.readings(step) if fit else ())
        ],
        "beside": [
            length_data(beside.value, tape) | {"words": beside.words}
            for beside in (step.beside if fit else ())
        ],
        "square": step.setting.words(tape) if fit and step.setting else "",
        "waste": step.waste,
        "why": step.why,
        "caution": step.caution,
    }


def hit_data(hit: Hit, tape: Tape) -> dict[str, Any]:
    """One answer."""
    return {
        "title": hit.title,
        "detail": hit.detail,
        "value": length_data(hit.value, tape) if hit.value is not None else None,
        "timber": hit.timber,
        "step": hit.step,
    }


def note_data(note: WrittenNote) -> dict[str, Any]:
    """One note, and when it was written."""
    return {
        "id": note.id,
        "about": note.about,
        "text": note.text,
        "at": note.at.isoformat(),
    }


def blemish_data(walk: Walk, blemish: Blemish) -> dict[str, Any]:
    """One blemish; its depth is null where nobody knows."""
    stick, tape = walk.layout.stick, walk.tape
    lengths = ("from_end", "long", "from_arris", "wide")
    return {
        "id": blemish.id,
        "kind": blemish.kind,
        "face": stick.pose.words(blemish.side),
        "arris": arris_of(stick, blemish.side),
        **{name: length_data(getattr(blemish, name), tape) for name in lengths},
        "deep": None if blemish.deep is None else length_data(blemish.deep, tape),
        "text": blemish.text,
        "at": blemish.at.isoformat(),
    }


def finding_data(finding: Finding) -> dict[str, Any]:
    """One finding."""
    return {
        "code": finding.code,
        "severity": finding.severity.word,
        "timber": finding.timber,
        "feature": finding.feature,
        "also": finding.also,
        "message": finding.message,
        "remedy": finding.remedy,
    }
