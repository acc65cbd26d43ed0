"""What goes on the sheets of an open project: one for each timber, and the frame's schedules.

Figures that the screen would withhold never get into a sheet: they are left out here.
"""

from collections.abc import Iterator
from datetime import UTC, datetime

from benchmate.checks.design import TICK_OUT_OF_DATE
from benchmate.layout.likeness import alike, hand
from benchmate.layout.noted import about_words, blemish_words, one_line
from benchmate.layout.roster import entry, looks
from benchmate.layout.standing import Standing
from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.measure.section import section_text
from benchmate.model.findings import Finding, Severity
from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.sheets.schedule import FrameRow, Schedule
from benchmate.sheets.sheet import Issue, Item, TimberSheet
from benchmate.store.files import PROJECT_FILE, progress_name, stamp
from benchmate.store.problem import KeepError
from benchmate.workbench.bench import Bench
from benchmate.workbench.frame_form import alike_line, meets_words, place_words
from benchmate.workbench.jobs import Wait, waits_in_words, waits_on
from benchmate.workbench.joint_rows import joint_rows
from benchmate.workbench.walk import Walk


def timber_sheet(bench: Bench, timber: str, made: datetime) -> TimberSheet:
    """One timber's sheet. Raises KeyError for an unknown id."""
    walk = bench.walk(timber)
    waits = waits_on(walk, bench.walk)
    return TimberSheet(
        issue=issue(bench, made, bench.frame.neighbours(timber)),
        timber=walk.timber,
        layout=walk.layout,
        tape=walk.tape,
        hand=hand(bench.frame, timber),
        rule="mill" if walk.layout.stick.inner is None else "square",
        items=tuple(
            _item(walk, step, standing, waits.get(step.id, ()))
            for step, standing in zip(walk.steps, walk.standings, strict=True)
        ),
        stops=_told(walk.stops),
        looks=_told(
            found
            for found in walk.findings
            if found.severity is not Severity.STOP and found.code != TICK_OUT_OF_DATE
        ),
        used=tuple(_used(bench, walk)),
        noted=tuple(_noted(walk)),
        trouble=walk.trouble,
    )


def issue(bench: Bench, made: datetime, timbers: tuple[str, ...]) -> Issue:
    """When sheets are made, and when what they go by was last changed, in local time."""
    return Issue(
        project=bench.project.name, made=_when(made), as_of=_when(_changed(bench, timbers, made))
    )


def frame_schedule(bench: Bench, made: datetime) -> Schedule:
    """Every timber of the frame, and the counts of like members."""
    names = {timber.id: timber.name for timber in bench.timbers}
    return Schedule(
        issue=issue(bench, made, tuple(names)),
        tape=bench.tape,
        frame=tuple(_frame_row(bench, timber) for timber in names),
        alike=tuple(alike_line(group, names) for group in alike(bench.frame)),
    )


def joint_schedule(bench: Bench, made: datetime) -> Schedule:
    """Every joint of the frame."""
    ids = tuple(timber.id for timber in bench.timbers)
    return Schedule(
        issue=issue(bench, made, ids),
        tape=bench.tape,
        of_joints=True,
        joints=tuple(joint_rows(bench)),
    )


def _item(walk: Walk, step: Step, standing: Standing, waits: tuple[Wait, ...]) -> Item:
    withheld = walk.withheld(step)
    return Item(
        step=step,
        standing=standing,
        readings=() if withheld else walk.readings(step),
        beside=() if withheld else step.beside,
        withheld=withheld,
        waits_for=waits_in_words(waits),
    )


def _told(findings: "Iterator[Finding] | tuple[Finding, ...]") -> tuple[str, ...]:
    """Findings in words with their remedies, each once."""
    told = (f"{found.message}. To mend it: {found.remedy}." for found in findings)
    return tuple(dict.fromkeys(told))


def _frame_row(bench: Bench, timber: str) -> FrameRow:
    walk, found, tape = bench.walk(timber), entry(bench.frame, timber), bench.tape
    trouble = (" ".join(walk.trouble.split()),) if walk.trouble else ()
    stops = (*trouble, *_told(walk.stops))
    return FrameRow(
        id=timber,
        name=found.timber.name,
        kind=found.timber.kind,
        section=section_text(found.stick.nominal, tape),
        species=found.timber.species,
        hand=found.hand,
        body=None if stops else found.stick.body,
        overall=None if stops else found.stick.overall,
        faces=looks(found),
        place="" if stops else place_words(found, tape),
        meets=() if stops else tuple(meets_words(each, tape) for each in found.meets),
        stops=stops,
    )


def _noted(walk: Walk) -> Iterator[str]:
    """The notes of a timber, each with what it is about, and its blemishes."""
    for note in walk.progress.notes:
        lead = f"{about_words(walk.layout, note.about)}: " if note.about else ""
        yield f"{lead}{one_line(note.text)}"
    for blemish in walk.progress.blemishes:
        yield blemish_words(walk.layout.stick, blemish, walk.tape)


def _used(bench: Bench, walk: Walk) -> Iterator[str]:
    """The real sizes that a timber's figures go by: its own, then those of what it is joined to."""
    tape = walk.tape
    yield from _sizes(walk.progress, tape)
    joints = {feature.joint for feature in walk.layout.features if feature.joint}
    for other in bench.frame.neighbours(walk.timber.id)[1:]:
        theirs = bench.walk(other)
        places = {
            place
            for feature in theirs.layout.features
            if feature.joint in joints
            for place in feature.place
        }
        lead = f"{theirs.timber.name}'s "
        yield from (f"{lead}{each}" for each in _sizes(theirs.progress, tape, places))


def _sizes(progress: Progress, tape: Tape, places: "set[str] | None" = None) -> Iterator[str]:
    """Measured and as-cut sizes in words, at some places or at all."""
    for place, measured in progress.measured.items():
        if places is None or place in places:
            yield f"{_place_words(place)} measured {_section_words(measured, tape)}"
    for place, as_cut in progress.as_cut.items():
        if places is None or place in places:
            yield f"{_place_words(place)} as cut {_as_cut_words(as_cut, tape)}"


def _place_words(place: str) -> str:
    return "whole stick" if place == "all" else place.replace("-", " ")


def _section_words(measured: Measured, tape: Tape) -> str:
    return _listed((("first", measured.first), ("second", measured.second)), tape)


def _as_cut_words(as_cut: AsCut, tape: Tape) -> str:
    return _listed(tuple((name, as_cut.get(name)) for name in AsCut.model_fields), tape)


def _listed(sizes: tuple[tuple[str, Length | None], ...], tape: Tape) -> str:
    return ", ".join(f"{name} {tape.text(size)}" for name, size in sizes if size is not None)


def _changed(bench: Bench, timbers: tuple[str, ...], made: datetime) -> datetime:
    """When the project or what is kept for some of its timbers was last written."""
    times = []
    for name in (PROJECT_FILE, *map(progress_name, timbers)):
        try:
            found = stamp(bench.folder, name)
        except KeepError:
            continue
        if found is not None:
            times.append(found.mtime_ns // 1_000_000_000)
    return datetime.fromtimestamp(max(times), UTC) if times else made


def _when(at: datetime) -> str:
    return f"{at.astimezone():%Y-%m-%d %H:%M}"
