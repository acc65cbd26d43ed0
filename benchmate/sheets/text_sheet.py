"""A timber's sheet as plain text of 80 columns, with the running figures of each face."""

from collections.abc import Iterator
from textwrap import wrap

from benchmate.sheets.groups import NoteList, notes
from benchmate.sheets.head import head_lines, title
from benchmate.sheets.names import MARK
from benchmate.sheets.rows import Row, Section, sections
from benchmate.sheets.sheet import CAUTION, TimberSheet
from benchmate.sheets.unrolled import datum_hook, face_running, rolling_order
from benchmate.sheets.words import FIGURE, HOW_TO_READ

COLUMNS = 80
"""What a terminal, a typewriter and a narrow printer have in common."""

BOXES = {"open": "[ ]", "waits": "[ ]", "ticked": "[x]", "look again": "[!]", "stop": "[-]"}
"""A tick box by the state of its step."""

_FIGURE = 14
_HANG = " " * (_FIGURE + 5)
_BLANK = "________"
_HELD = "\x1f"
"""What stands for a space that no line is broken at: a character that no name may hold."""


def timber_text(sheet: TimberSheet) -> str:
    """The whole sheet, a new line at its end."""
    told = notes(sheet)
    lines = [*wrapped(f"{MARK}: {title(sheet)}")]
    lines.append(f"{sheet.done} of {len(sheet.items)} ticked")
    for line in (*head_lines(sheet), HOW_TO_READ):
        lines += wrapped(line)
    lines += _faces(sheet)
    for section in sections(sheet, told):
        lines += _section(section)
    for each in told.lists():
        lines += _notes(each)
    lines += ["", *wrapped(sheet.issue.words), *wrapped(CAUTION)]
    return "\n".join(lines) + "\n"


def wrapped(text: str, lead: str = "", hang: str | None = None) -> list[str]:
    """A text in lines of at most 80 columns behind a lead; further ones behind `hang`.

    A figure is never broken: half of one is a wrong figure.
    """
    further = " " * len(lead) if hang is None else hang
    whole = FIGURE.sub(lambda found: found.group().replace(" ", _HELD), text)
    lines = wrap(
        whole,
        COLUMNS,
        initial_indent=lead,
        subsequent_indent=further,
        break_on_hyphens=False,
    )
    return [line.replace(_HELD, " ") for line in lines] or [lead.rstrip()]


def _faces(sheet: TimberSheet) -> Iterator[str]:
    """Face by face, where marks along the timber come on it."""
    if not sheet.drawn:
        return
    words, hook = sheet.layout.stick.pose.words, datum_hook(sheet)
    yield ""
    yield f"RUNNING FIGURES FACE BY FACE, from the {hook}"
    for face in rolling_order(sheet.layout.stick.pose):
        marks = face_running(sheet, face, hook)
        figures = ", ".join(sheet.tape.text(mark.value) for mark in marks) or "none"
        yield from wrapped(figures, f"{words(face):<12}  ")


def _section(section: Section) -> Iterator[str]:
    on = f", on {section.on}" if section.on else ""
    waits = f" (waits {section.waits})" if section.waits else ""
    yield ""
    yield from wrapped(f"{section.title.upper()}{on}{waits}")
    if section.stop:
        yield from wrapped(f"STOP: {section.stop}", "    ")
    for detail in section.details:
        yield from wrapped(detail, "    ")
    for row in section.rows:
        yield from _row(row, faces=not section.on)


def _row(row: Row, *, faces: bool) -> Iterator[str]:
    """Box and figure, what it is and where it comes from; then what is told beside it."""
    refs = ", ".join(filter(None, (row.caution, row.waits and f"waits {row.waits}")))
    name = f"{row.name} ({refs})" if refs else row.name
    said = [name, row.hook, f"on {row.on}" if faces and row.on else ""]
    waste = row.waste or row.waste_mark
    said += [f"waste {waste}" if waste else "", f"square {row.square}" if row.square else ""]
    figure = f"{BOXES[row.state]} {row.figure:<{_FIGURE}} "
    yield from wrapped("; ".join(filter(None, said)), figure, _HANG)
    if row.warning:
        yield from wrapped(f"! {row.warning}", _HANG)
    beside = [row.also, *row.further, f"back {row.back}" if row.back else ""]
    told = "; ".join(filter(None, beside))
    if told:
        yield from wrapped(told, _HANG)
    for blank in row.blanks:
        yield from wrapped(f"{blank} {_BLANK}", _HANG)


def _notes(found: NoteList) -> Iterator[str]:
    yield ""
    yield found.lead.upper()
    for text in found.texts:
        yield from wrapped(text, f"{found.mark(text):>4}  ")
