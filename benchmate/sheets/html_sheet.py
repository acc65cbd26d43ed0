"""A timber's sheet as a printable page: the faces unrolled, then every step with its tick box.

The title and the foot are the head and the foot of a table, which browsers print anew on each page
that a long timber runs on to.
"""

from collections.abc import Iterator
from dataclasses import replace

from benchmate.sheets.ends import ends
from benchmate.sheets.groups import NoteList, Notes, notes
from benchmate.sheets.head import head_lines, lengths, title
from benchmate.sheets.net import NOTE, net
from benchmate.sheets.page import foot, page, said
from benchmate.sheets.rows import Row, Section, sections
from benchmate.sheets.sheet import TimberSheet
from benchmate.sheets.words import HOW_TO_READ

_TICKS = {"ticked": "x", "look again": "!", "stop": "-"}
"""What stands in a box; an open one, waiting or not, is empty and can be ticked."""

_FEW = 2
"""So many things to do run on after those of the section before."""


def timber_page(sheet: TimberSheet, paper: str = "") -> str:
    """The whole page. Raises KeyError for a paper there is no page for."""
    return page(f"{sheet.timber.name}, {sheet.issue.project}", timber_body(sheet), paper)


def timber_body(sheet: TimberSheet) -> str:
    """The sheet without the page round it, to stand after others in one file."""
    return (
        '<table class="sheet">\n'
        f"<thead><tr><th>{_title(sheet)}</th></tr></thead>\n"
        f"<tfoot><tr><td>{foot(sheet.issue)}</td></tr></tfoot>\n"
        f"<tbody><tr><td>\n{_main(sheet)}</td></tr></tbody>\n</table>\n"
    )


def _title(sheet: TimberSheet) -> str:
    name = sheet.timber.name
    rest = title(sheet).removeprefix(f"{name} ")
    done = f"{sheet.done} of {len(sheet.items)} ticked"
    return (
        f'<div class="title"><span><b>{said(name)}</b> {said(rest)}</span>'
        f"<span>{said(sheet.issue.project)}, {done}</span></div>"
    )


def _main(sheet: TimberSheet) -> str:
    told = notes(sheet)
    drawn = net(sheet)
    note = f"{NOTE} " if drawn else ""
    return f"{_head(sheet, note + HOW_TO_READ)}{drawn}\n{_lists(sheet, told)}"


def _lists(sheet: TimberSheet, told: Notes) -> str:
    """All there is to do in columns: as far as the last line to strike, and from there on.

    One block alone goes to the next page whole where it fits there, and leaves this one bare.
    """
    found = sections(sheet, told)
    struck = max((place for place, each in enumerate(found, 1) if each.strikes), default=0)
    laying, cutting = "".join(_sections(found[:struck])), "".join(_sections(found[struck:]))
    blocks = (laying, cutting + _notes(told))
    return "".join(f'<div class="cols">\n{each}</div>\n' for each in blocks if each)


def _head(sheet: TimberSheet, note: str) -> str:
    """The lines under the title, the lengths large, alarms in a frame; the ends beside them."""
    large = lengths(sheet)
    lines = (*head_lines(sheet), note)
    told = "".join(f"<p{_kind(each, large)}>{said(each)}</p>\n" for each in lines)
    return (
        f'<div class="head"><div>\n{told}</div><div class="ends">{"".join(ends(sheet))}</div>'
        "</div>\n"
    )


def _kind(line: str, large: str) -> str:
    if line == large:
        return ' class="long"'
    alarm = line.startswith(("STOP:", "LOOK:", "FIGURES WITHHELD:"))
    return ' class="alarm"' if alarm else ""


def _sections(found: tuple[Section, ...]) -> Iterator[str]:
    """Sections of marks as lists; those of things to do as paragraphs, the short ones run on."""
    doing: list[str] = []
    for section in found:
        if doing and (section.strikes or len(section.rows) > _FEW):
            yield _paragraph(doing)
            doing = []
        if section.strikes:
            yield _marks(section)
        else:
            doing.append(_tasks(section))
    if doing:
        yield _paragraph(doing)


def _paragraph(parts: list[str]) -> str:
    return f"<p>{' '.join(parts)}</p>\n"


def _marks(section: Section) -> str:
    """The lines of one joint under its heading, and what is told beside them."""
    on = f", on {said(section.on)}" if section.on else ""
    stop = f'<p class="alarm">STOP: {said(section.stop)}</p>\n' if section.stop else ""
    rows = "".join(_mark(_bare(section, row)) for row in section.rows)
    return f"<h2>{said(section.title)}{on}{_waits(section)}</h2>\n{stop}{rows}{_details(section)}"


def _tasks(section: Section) -> str:
    """The things to do at one joint, run on after its name."""
    stop = f' <b class="again">STOP: {said(section.stop)}</b>' if section.stop else ""
    shared = "".join(f" {said(each)}." for each in section.details)
    rows = "\n".join(map(_task, _run_on(section.rows)))
    return f"<b>{said(section.title)}{_waits(section)}.</b>{stop}{shared} {rows}"


def _waits(section: Section) -> str:
    return f", waits<sup> {section.waits}</sup>" if section.waits else ""


def _run_on(rows: tuple[Row, ...]) -> Iterator[Row]:
    """Things to do face by face: named in full once, then by their faces."""
    before = ""
    for row in rows:
        lead, comma, face = row.name.partition(", ")
        known = bool(comma) and lead == before
        before = lead if comma else ""
        yield replace(row, name=face) if known else row


def _bare(section: Section, row: Row) -> Row:
    """A mark without what stands over or under its section: faces, and what is told beside it."""
    return replace(
        row,
        on="" if section.on else row.on,
        further=row.further[:1] if row.leads else (),
        back="",
    )


def _details(section: Section) -> str:
    """What is told beside the marks of a section, by their names, and how they read back."""
    told = [*section.details]
    for row in section.rows:
        beside = row.further[row.leads :]
        if beside:
            told.append(f"{row.name}: {', '.join(beside)}")
    back: dict[str, list[str]] = {}
    for row in section.rows:
        if row.back:
            back.setdefault(row.back, []).append(row.name)
    if back:
        listed = (f"{' and '.join(names)} {figure}" for figure, names in back.items())
        told.append(f"Back: {', '.join(listed)}")
    return f'<p class="details">{said("; ".join(told))}.</p>\n' if told else ""


def _mark(row: Row) -> str:
    """A line to strike: box, figure, and all that keeps it right."""
    words = "; ".join(_said(row))
    return (
        f'<div class="row"><span>{_box(row)}</span><b>{said(row.figure)}</b>'
        f"<span><b>{said(row.name)}</b>{_refs(row)} {words}</span></div>\n"
    )


def _said(row: Row) -> Iterator[str]:
    if row.warning:
        yield f'<b class="again">{said(row.warning)}</b>'
    if row.hook:
        yield said(row.hook)
    if row.on:
        yield f"on {said(row.on)}"
    if row.waste or row.waste_mark:
        yield f"waste <u>{said(row.waste or row.waste_mark)}</u>"
    if row.square:
        yield f"square {said(row.square)}"
    if row.also:
        yield said(row.also)
    yield from map(said, row.further)
    if row.back:
        yield f"back {said(row.back)}"


def _task(row: Row) -> str:
    """A thing to do: box and words run on; sizes to measure have a line to write on."""
    figure = f" <b>{said(row.figure)}</b>" if row.figure else ""
    words = "; ".join(_said(row))
    blanks = ", ".join(f"{said(each)} <s></s>" for each in row.blanks)
    further = ", ".join(filter(None, (words, blanks)))
    first, space, rest = row.name.partition(" ")
    return (
        f'<span class="do"><span class="k">{_box(row)}{said(first)}</span>{space}{said(rest)}'
        f"{_refs(row)}{figure}{' ' if further else ''}{further}</span>"
    )


def _box(row: Row) -> str:
    return f"<i>{_TICKS.get(row.state, '')}</i>"


def _refs(row: Row) -> str:
    marks = ", ".join(filter(None, (row.caution, row.waits)))
    return f"<sup>{marks}</sup>" if marks else ""


def _notes(told: Notes) -> str:
    """Each caution, each waste, each setting and each wait once, by its mark."""
    return "".join(
        f'<p class="notes"><b>{each.lead}.</b> {_listed(each)}</p>\n' for each in told.lists()
    )


def _listed(found: NoteList) -> str:
    return " ".join(f"<b>{found.mark(text)}</b> {said(text)}" for text in found.texts)
