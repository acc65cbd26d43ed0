"""The plain commands: each gives text to print and an exit code; all but one read a project."""

import json
from dataclasses import dataclass
from difflib import get_close_matches
from enum import IntEnum
from itertools import chain
from pathlib import Path
from typing import Any

from benchmate.layout.likeness import alike
from benchmate.layout.roster import roster
from benchmate.measure.tokens import LengthError
from benchmate.model.project import bare_unit, fitting_marks, tape_of
from benchmate.model.words import LAYOUT_ONLY, visible
from benchmate.workbench.bench import Bench
from benchmate.workbench.data_form import hit_data, walk_data
from benchmate.workbench.find import Index
from benchmate.workbench.frame_form import (
    alike_data,
    alike_line,
    entry_data,
    entry_lines,
    inner_data,
    inner_lines,
    name_lines,
    names_data,
)
from benchmate.workbench.history_form import event_data, history_lines
from benchmate.workbench.jobs import waits_on
from benchmate.workbench.members import kind_lines
from benchmate.workbench.opening import read_bench
from benchmate.workbench.print_out import print_frame, print_timber
from benchmate.workbench.reckoning import plain_text
from benchmate.workbench.reckoning import reckon as reckoned
from benchmate.workbench.text_form import finding_text, hit_text, marks_text
from benchmate.workbench.timber_state import signs_data, state_line
from benchmate.workbench.walk import Walk


class Code(IntEnum):
    """What an exit status means."""

    FINE = 0
    FINDINGS = 1
    BAD_INPUT = 2


@dataclass(frozen=True, slots=True)
class Output:
    """What a command prints and how it exits."""

    text: str
    code: Code = Code.FINE


class UsageError(Exception):
    """The command was called in a way it cannot answer."""


def marks(folder: Path, timber: str = "", *, as_json: bool = False) -> Output:
    """Every mark of one timber, or of all. Raises UsageError, CannotOpenError."""
    bench = read_bench(folder)
    wanted = (_timber_id(bench, timber),) if timber else tuple(t.id for t in bench.timbers)
    walks = [bench.walk(each) for each in wanted]
    troubled = any(walk.trouble for walk in walks)
    code = Code.BAD_INPUT if troubled else Code.FINE
    waits = [waits_on(walk, bench.walk) for walk in walks]
    if as_json:
        timbers = list(map(walk_data, walks, waits))
        return Output(_json({"project": bench.project.name, "timbers": timbers}), code)
    head = "\n".join(filter(None, (bench.project.name, bench.project.note)))
    parts = [head, *map(marks_text, walks, waits), LAYOUT_ONLY]
    return Output("\n\n".join(parts), code)


def find(folder: Path, words: str, *, as_json: bool = False) -> Output:
    """Look words up. Exits 1 where nothing is found. Raises CannotOpenError."""
    bench = read_bench(folder)
    hits, tape = Index(bench).find(words), bench.tape
    code = Code.FINE if hits else Code.FINDINGS
    if as_json:
        return Output(_json({"hits": [hit_data(hit, tape) for hit in hits]}), code)
    if not hits:
        return Output(
            f'nothing holds all of "{visible(words)}"; try fewer words, or the start of one', code
        )
    return Output("\n".join(hit_text(hit, tape) for hit in hits), code)


def history(folder: Path, timber: str = "", *, as_json: bool = False) -> Output:
    """What was done, newest first. Exits 1 for nothing. Raises UsageError, CannotOpenError."""
    bench = read_bench(folder)
    wanted = (_timber_id(bench, timber),) if timber else tuple(t.id for t in bench.timbers)
    # What was done to the whole frame stands in the history of every timber.
    found = dict.fromkeys(chain.from_iterable(map(bench.history, wanted)))
    events = sorted(found, key=lambda event: event.at, reverse=True)
    trouble = bench.journal_trouble()
    code = Code.FINDINGS if trouble or not events else Code.FINE
    if as_json:
        data = {"project": bench.project.name, "trouble": trouble}
        return Output(_json(data | {"events": list(map(event_data, events))}), code)
    names = {each.id: each.name for each in bench.timbers}
    told = history_lines(events, names) if events else ("nothing done yet",)
    return Output("\n".join((*filter(None, (trouble,)), *told)), code)


def frame(folder: Path, *, as_json: bool = False) -> Output:
    """Every timber with its place, lengths and what meets it. Raises CannotOpenError."""
    bench = read_bench(folder)
    tape, entries = bench.tape, roster(bench.frame)
    groups = alike(bench.frame)
    walks = [bench.walk(timber.id) for timber in bench.timbers]
    troubles = _troubles(walks)
    code = Code.BAD_INPUT if troubles else Code.FINE
    if as_json:
        data = {
            "project": bench.project.name,
            "rule": bench.project.rule,
            "trouble": list(troubles),
            "names": names_data(bench.frame),
            "timbers": [
                entry_data(each, tape) | {"stopped": walk.stopped} | signs_data(walk)
                for each, walk in zip(entries, walks, strict=True)
            ],
            "alike": [alike_data(group) for group in groups],
            "inner": inner_data(bench.frame, tape),
        }
        return Output(_json(data), code)
    names = {timber.id: timber.name for timber in bench.timbers}
    parts = [
        "\n".join(
            (f"{bench.project.name}: {len(entries)} timbers, {bench.project.rule} rule", *troubles)
        ),
        *(
            "\n".join((*entry_lines(each, tape), f"  {state_line(walk)}", *_stops(walk)))
            for each, walk in zip(entries, walks, strict=True)
        ),
        "\n".join(("By kind", *(f"  {line}" for line in kind_lines(bench)))),
        "\n".join(("Like members", *(f"  {alike_line(group, names)}" for group in groups))),
        "\n".join(("Square rule", *(f"  {line}" for line in inner_lines(bench.frame, tape))))
        if bench.project.inner
        else "",
        "\n".join(("Lines, levels and lengths", *name_lines(bench.frame))),
        LAYOUT_ONLY,
    ]
    return Output("\n\n".join(filter(None, parts)), code)


def _stops(walk: Walk) -> tuple[str, ...]:
    """What stops a timber, so that its lengths are not fit to cut to."""
    told = (f"  ! stop: {found.message}; {found.remedy}." for found in walk.stops)
    return tuple(dict.fromkeys(told))


def _troubles(walks: list[Walk]) -> tuple[str, ...]:
    """What cannot be read, each once."""
    return tuple(dict.fromkeys(walk.trouble for walk in walks if walk.trouble))


def validate(folder: Path) -> Output:
    """Read everything and tell what is wrong. Raises CannotOpenError."""
    bench = read_bench(folder)
    walks = [bench.walk(timber.id) for timber in bench.timbers]
    troubles = _troubles(walks)
    findings = [*bench.strays(), *(finding for walk in walks for finding in walk.findings)]
    count = sum(len(walk.steps) for walk in walks)
    head = f"{bench.project.name}: {len(walks)} timbers, {count} steps"
    told = f"{len(findings)} to look at" if findings else "no findings"
    if troubles:
        told = f"{told} but for what cannot be read"
    listed = (finding_text(finding) for finding in findings)
    code = Code.BAD_INPUT if troubles else Code.FINDINGS if findings else Code.FINE
    return Output("\n".join([*troubles, f"{head}, {told}", *listed]), code)


def reckon(line: str, units: str, graduation: str = "") -> Output:
    """What a line for the calculator comes to, on a tape in these units.

    Raises UsageError for a graduation of other units and for a line that cannot be reckoned.
    """
    marks_of = fitting_marks(units)
    if graduation and graduation not in marks_of:
        problem = f"a tape in {units} has no graduation {graduation}"
        raise UsageError(f"{problem}; give one of {', '.join(marks_of)}")
    tape = tape_of(units, graduation)
    try:
        answer = reckoned(line, tape=tape, bare=bare_unit(units), sizes={})
    except LengthError as error:
        raise UsageError(f"{error}\n{error.excerpt()}") from error
    return Output(plain_text(answer, tape))


def sheets(folder: Path, timber: str, out: Path, paper: str) -> Output:
    """Write the sheets of one timber, or of the whole frame, and tell where.

    Raises UsageError, CannotOpenError, NotPrintedError.
    """
    bench = read_bench(folder)
    wanted = _timber_id(bench, timber) if timber else ""
    done = print_timber(bench, wanted, out, paper) if timber else print_frame(bench, out, paper)
    ids = (wanted,) if timber else tuple(each.id for each in bench.timbers)
    troubles = _troubles([bench.walk(each) for each in ids])
    lead = f"Wrote {len(done.files)} files into {done.folder}"
    lines = [*troubles, lead, *(f"  {name}" for name in done.files)]
    lines.append(f"Open {done.first} in a browser and print it.")
    if done.older:
        lines.append(f"Older sheets there, not written now: {', '.join(done.older)}")
    return Output("\n".join([*lines, LAYOUT_ONLY]), Code.BAD_INPUT if troubles else Code.FINE)


def _timber_id(bench: Bench, timber: str) -> str:
    names = {each.name.casefold(): each.id for each in bench.timbers}
    names |= {each.id: each.id for each in bench.timbers}
    found = names.get(timber.casefold())
    if found:
        return found
    near = get_close_matches(timber.casefold(), names, n=1)
    hint = f"; did you mean {names[near[0]]}?" if near else ""
    known = ", ".join(each.id for each in bench.timbers) or "none"
    raise UsageError(f'no timber "{visible(timber)}"{hint} (timbers: {known})')


def _json(data: dict[str, Any]) -> str:
    return json.dumps(data, ensure_ascii=False, indent=2)
