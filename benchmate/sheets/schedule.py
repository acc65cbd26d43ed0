"""A schedule of the whole frame: a table that is printed, told in plain text, or exported.

Each form comes row by row, so that no schedule is ever held whole as text.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.sheets.exact import exact_mm, record
from benchmate.sheets.names import FRAME_COLUMNS, JOINT_COLUMNS, MARK, heads
from benchmate.sheets.page import PAGE_TAIL, foot, page_head, said
from benchmate.sheets.sheet import CAUTION, Issue
from benchmate.sheets.text_sheet import wrapped


@dataclass(frozen=True, slots=True, kw_only=True)
class FrameRow:
    """One timber of the frame schedule; its lengths are None where it is stopped."""

    id: str
    name: str
    kind: str
    section: str
    species: str
    hand: str
    body: Length | None
    overall: Length | None
    faces: str
    place: str
    meets: tuple[str, ...]
    stops: tuple[str, ...]

    def lengths(self, tape: Tape) -> str:
        """Both lengths, each by its name; nothing for a timber that is stopped."""
        if self.body is None or self.overall is None:
            return ""
        return f"shoulder to shoulder {tape.text(self.body)}, overall {tape.text(self.overall)}"

    def cells(self, tape: Tape) -> tuple[str, ...]:
        """Its record in a table."""
        lengths = (
            ("", "") if each is None else (tape.text(each), exact_mm(each))
            for each in (self.body, self.overall)
        )
        return (
            *(self.id, self.name, self.kind, self.section, self.species, self.hand),
            *(cell for pair in lengths for cell in pair),
            *(self.faces, self.place, "; ".join(self.meets), "; ".join(self.stops)),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class JointRow:
    """One joint of the joint schedule; its places and sizes are empty where it is stopped."""

    id: str
    family: str
    timbers: tuple[str, ...]
    where: tuple[str, ...]
    sizes: tuple[str, ...]
    pegs: str
    stops: tuple[str, ...]

    def cells(self) -> tuple[str, ...]:
        """Its record in a table."""
        parts = (self.timbers, self.where, self.sizes)
        told = ("; ".join(each) for each in parts)
        return (self.id, self.family, *told, self.pegs, "; ".join(self.stops))


@dataclass(frozen=True, slots=True, kw_only=True)
class Schedule:
    """A whole schedule, of the frame's timbers or of its `joints`, with counts of like members."""

    issue: Issue
    tape: Tape
    of_joints: bool = False
    frame: tuple[FrameRow, ...] = ()
    joints: tuple[JointRow, ...] = ()
    alike: tuple[str, ...] = ()

    @property
    def title(self) -> str:
        """What it is of."""
        return "Joint schedule" if self.of_joints else "Frame schedule"

    @property
    def heading(self) -> str:
        """Its title with the project's name."""
        return f"{self.title}, {self.issue.project}"


def schedule_table(schedule: Schedule) -> Iterator[str]:
    """The schedule as a table for a spreadsheet, record by record."""
    yield heads(JOINT_COLUMNS if schedule.of_joints else FRAME_COLUMNS)
    yield from (record(row.cells(schedule.tape)) for row in schedule.frame)
    yield from (record(row.cells()) for row in schedule.joints)


def schedule_text(schedule: Schedule) -> Iterator[str]:
    """The schedule as plain text of 80 columns, row by row."""
    yield _lines(wrapped(f"{MARK}: {schedule.heading}"))
    for row in schedule.frame:
        told = (
            row.faces,
            row.lengths(schedule.tape),
            row.place,
            *row.meets,
            *(f"STOP: {each}" for each in row.stops),
        )
        yield _entry(f"[ ] {_timber(row)}", told)
    for joint in schedule.joints:
        told = (*joint.where, *joint.sizes, joint.pegs, *(f"STOP: {each}" for each in joint.stops))
        yield _entry(f"[ ] {_joint(joint)}", told)
    if schedule.alike:
        yield _entry("LIKE MEMBERS", schedule.alike)
    yield _lines(["", *wrapped(schedule.issue.words), *wrapped(CAUTION)])


def schedule_page(schedule: Schedule, paper: str = "") -> Iterator[str]:
    """The schedule as a page to print, row by row. Raises KeyError for an unknown paper."""
    yield page_head(schedule.heading, paper)
    yield (
        '<table class="sched">\n<thead>'
        f'<tr><th class="bare" colspan="4"><div class="title"><b>{said(schedule.title)}</b>'
        f"<span>{said(schedule.issue.project)}</span></div></th></tr>\n"
        f"<tr>{_cells(('', *_heads(schedule)), 'th')}</tr></thead>\n"
        f'<tfoot><tr><td colspan="4">{foot(schedule.issue)}</td></tr></tfoot>\n<tbody>\n'
    )
    for row in schedule.frame:
        lengths = row.lengths(schedule.tape)
        about = (row.faces, lengths[:1].upper() + lengths[1:], row.place)
        yield _row(_timber(row), about, row.meets, row.stops)
    for joint in schedule.joints:
        sizes = (*joint.sizes, *filter(None, (joint.pegs,)))
        yield _row(_joint(joint), joint.where, sizes, joint.stops)
    yield f"</tbody>\n</table>\n{_alike(schedule)}{PAGE_TAIL}"


def _heads(schedule: Schedule) -> tuple[str, str, str]:
    if schedule.of_joints:
        return "Joint", "Where along each timber", "Main sizes and pegs"
    return "Timber", "How it lies, and its lengths", "What meets it, and where"


def _timber(row: FrameRow) -> str:
    what = f"{row.kind}, {row.species}" if row.species else row.kind
    return f"{row.name} ({row.id}): {what}, {row.section}, {row.hand}"


def _joint(row: JointRow) -> str:
    return f"{row.id}: {row.family}, {' and '.join(row.timbers)}"


def _row(
    name: str, about: tuple[str, ...], further: tuple[str, ...], stops: tuple[str, ...]
) -> str:
    told = [*filter(None, about), *(f"STOP: {each}" for each in stops)]
    cells = (_paragraphs((name,)), _paragraphs(tuple(told)), _paragraphs(further))
    return f"<tr><td><i></i></td>{''.join(f'<td>{each}</td>' for each in cells)}</tr>\n"


def _paragraphs(texts: tuple[str, ...]) -> str:
    return "".join(f"<p>{said(text)}</p>" for text in texts)


def _cells(texts: tuple[str, ...], tag: str) -> str:
    return "".join(f"<{tag}>{said(text)}</{tag}>" for text in texts)


def _alike(schedule: Schedule) -> str:
    """Counts of like members, after the table."""
    alike = "".join(f"<p>{said(each)}</p>\n" for each in schedule.alike)
    return f'<div class="like">\n<h2>Like members</h2>\n{alike}</div>\n' if alike else ""


def _entry(head: str, told: tuple[str, ...]) -> str:
    lines = ["", *wrapped(head, "", "    ")]
    for each in told:
        if each:
            lines += wrapped(each, "    ", "      ")
    return _lines(lines)


def _lines(lines: list[str]) -> str:
    return "".join(f"{line}\n" for line in lines)
