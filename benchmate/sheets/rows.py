"""A sheet's rows: what stands beside each tick box, in the words that every form of it prints."""

from collections import Counter
from dataclasses import dataclass, replace

from benchmate.layout.standing import State
from benchmate.layout.step import Step
from benchmate.measure.printing import Tape
from benchmate.model.feature import Asks, Reading, Stage
from benchmate.model.stick import ENDS, STICK, Stick
from benchmate.sheets.groups import Group, Notes, back_figures, groups, own_readings
from benchmate.sheets.sheet import Item, TimberSheet
from benchmate.sheets.unrolled import end_hook, shoulder_hook
from benchmate.sheets.words import (
    beside_words,
    from_words,
    short_faces,
    short_hook,
    waste_words,
)

OVERALL = f"{ENDS}/overall"
"""The step whose further figures stand in the head of the sheet."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One step: its state, its figure, what it is, and what keeps it on the right side.

    `also` is the same mark from the other datum, `back` from the far end; `further` are figures
    told beside it, the first of them where the line goes if it `leads` on to its other end.
    `blanks` are sizes to measure, as they count now, with room to write them in. `caution`,
    `waste_mark` and `waits` are reference marks; `waste` is a plain side. `warning` says what is no
    longer so.
    """

    id: str
    state: str
    figure: str
    name: str
    hook: str = ""
    on: str = ""
    waste: str = ""
    square: str = ""
    also: str = ""
    further: tuple[str, ...] = ()
    leads: bool = False
    back: str = ""
    blanks: tuple[str, ...] = ()
    caution: str = ""
    waste_mark: str = ""
    waits: str = ""
    warning: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """The rows of one group under its title, with what stops it, or the mark of what it waits for.

    The rows of a section that `strikes` are marks; those of another are things to do. `on` are the
    faces that all of its lines are struck on, `details` the figures that several of its rows would
    have told beside their own.
    """

    title: str
    strikes: bool
    on: str
    stop: str
    waits: str
    details: tuple[str, ...]
    rows: tuple[Row, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Said:
    """What is said elsewhere than in a row: in notes, with the marks, or at the head of a section.

    `back` are the figures from the far end by step, `shared` the details of the section.
    """

    told: Notes
    back: dict[str, Reading]
    shared: tuple[str, ...] = ()


def sections(sheet: TimberSheet, told: Notes) -> tuple[Section, ...]:
    """The whole sheet, section by section. No reason is given twice where it holds for all."""
    said = _Said(told=told, back=back_figures(sheet))
    return tuple(_section(sheet, group, said) for group in groups(sheet))


def _section(sheet: TimberSheet, group: Group, said: _Said) -> Section:
    beside = Counter(
        beside_words(sheet.tape, each)
        for item in group.items
        for each in item.beside[item.step.leads_on :]
    )
    shared = tuple(words for words, count in beside.items() if count > 1)
    faces = {item.step.faces for item in group.items} if group.marks else set()
    on = short_faces(sheet.layout.stick.pose, faces.pop()) if len(faces) == 1 else ""
    said = replace(said, shared=shared)
    return Section(
        title=group.title,
        strikes=group.marks,
        on=on,
        stop="" if sheet.trouble else group.withheld,
        waits=said.told.wait_marks(group.waits_for),
        details=shared,
        rows=tuple(_row(sheet, group, item, said) for item in group.items),
    )


def _row(sheet: TimberSheet, group: Group, item: Item, said: _Said) -> Row:
    step, tape, stick, told = item.step, sheet.tape, sheet.layout.stick, said.told
    row = Row(id=step.id, state=item.state, figure="", name=_name(sheet, item))
    if item.withheld:
        return replace(row, warning=_stop(sheet, group, item))
    row = replace(
        row,
        on=short_faces(stick.pose, step.faces) if group.marks else "",
        waste=waste_words(stick, step),
        square=told.setting(step.setting.words(tape)) if step.setting else "",
        back=tape.text(said.back[step.id].value) if step.id in said.back else "",
        caution=told.caution_marks(step.caution),
        waste_mark=told.waste_mark(step.waste),
        waits=_waits(group, item, told),
        warning=_again(item),
    )
    return (
        replace(row, blanks=_blanks(sheet, item)) if step.asks else _figured(sheet, item, said, row)
    )


def _figured(sheet: TimberSheet, item: Item, said: _Said, row: Row) -> Row:
    """A row with its figures."""
    step, tape, stick = item.step, sheet.tape, sheet.layout.stick
    readings = own_readings(item, said.back)
    if not readings:
        return replace(row, further=_beside(tape, item, said))
    both = [each.hook for each in readings] in _both_ways(stick)
    if not both and _struck_before(sheet, item, readings):
        return replace(row, hook=AS_STRUCK)
    others = () if both else tuple(_told(tape, stick, each) for each in readings[1:])
    return replace(
        row,
        figure=tape.text(readings[0].value),
        hook=_hook(stick, step, readings[0]),
        also=_also(tape, stick, readings[1]) if both else "",
        leads=step.leads_on,
        further=() if step.id == OVERALL else (*others, *_beside(tape, item, said)),
    )


def _beside(tape: Tape, item: Item, said: _Said) -> tuple[str, ...]:
    """The figures told beside a step's own, but for those at the head of its section."""
    words = (beside_words(tape, each) for each in item.beside)
    return tuple(each for each in words if each not in said.shared)


def _blanks(sheet: TimberSheet, item: Item) -> tuple[str, ...]:
    """The sizes to measure as they count now: in from a face, or by the name of the size."""
    feature = sheet.layout.feature(item.step.feature)
    if item.step.asks is Asks.AS_CUT and feature:
        return tuple(f"{size.name} {sheet.tape.text(size.laid_out)}" for size in feature.sizes)
    return tuple(
        f"{short_hook(sheet.layout.stick, each.hook)} {sheet.tape.text(each.value)}"
        for each in item.readings
    )


def _name(sheet: TimberSheet, item: Item) -> str:
    """What the step is called under its heading."""
    step = item.step
    feature = sheet.layout.feature(step.feature)
    if step.stage is Stage.MEASURE and feature:
        return feature.title
    if step.stage is Stage.BACK_CHECK and step.feature != STICK:
        return step.title
    lead, _, rest = step.short.partition(" line")
    bare = step.line is not None and rest[:1] in ("", ",")
    return lead + rest if bare else step.short


def _told(tape: Tape, stick: Stick, reading: Reading) -> str:
    return f"{tape.text(reading.value)} {from_words(stick, reading)}"


def _both_ways(stick: Stick) -> tuple[list[str], list[str]]:
    """The hooks of a mark measured from the end and from the shoulder, either one first."""
    hooks = [end_hook(stick), shoulder_hook(stick)]
    return hooks, hooks[::-1]


AS_STRUCK = "as marked above"
"""What stands for the figures of a task that are all those of its joint's own marks."""


def _also(tape: Tape, stick: Stick, reading: Reading) -> str:
    """The same mark from the other datum: `5' 10" shoulder`, `6' 1-1/2" squared`."""
    datum = "shoulder" if reading.hook == shoulder_hook(stick) else "squared"
    return f"{tape.text(reading.value)} {datum}"


def _struck_before(sheet: TimberSheet, item: Item, readings: tuple[Reading, ...]) -> bool:
    """Whether a task only goes over several marks of its own joint again."""
    marks = {
        reading.value
        for each in sheet.items
        if each.step.feature == item.step.feature and each.step.line
        for reading in each.readings
    }
    return len(readings) > 1 and all(reading.value in marks for reading in readings)


def _hook(stick: Stick, step: Step, reading: Reading) -> str:
    """What to hook on; nothing where the step is called after the face that it goes in from."""
    named = reading.way == "straight in" and step.short.endswith(f", {reading.hook}")
    return "" if named else from_words(stick, reading)


def _waits(group: Group, item: Item, told: Notes) -> str:
    """The mark of what a step waits for, unless its section says it for all."""
    if item.state != "waits" or item.waits_for == group.waits_for:
        return ""
    return told.wait_marks(item.waits_for)


def _stop(sheet: TimberSheet, group: Group, item: Item) -> str:
    """Why a step has no figure, unless the head of the sheet or of its section says so."""
    return "" if sheet.trouble or group.withheld else f"STOP: {item.withheld}"


def _again(item: Item) -> str:
    again = item.standing.state is State.LOOK_AGAIN
    return f"{item.standing.changed}: look again" if again else ""
