"""Forms for a timber, joint, chamfer or the head of the project, fed by the records themselves."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from functools import cached_property
from typing import Any

from pydantic import ValidationError

from benchmate.frame.family import Family
from benchmate.joinery import family_of
from benchmate.model.fields import ENDS, FACES
from benchmate.model.project import Project, Timber
from benchmate.model.record import Record
from benchmate.model.work import Work
from benchmate.store.tables import TIMBER_TABLE
from benchmate.store.toml_lines import Path
from benchmate.workbench.bench import Bench
from benchmate.workbench.field_words import GROUPS, PROJECT, TIMBER, words_for
from benchmate.workbench.forms.form import Blank, Form, OpenEnd, Texts
from benchmate.workbench.forms.naming import counted_on, slug, unused
from benchmate.workbench.project_edits import (
    Edit,
    changed,
    path_of,
    settled_by,
    with_head,
    with_timber,
    with_work,
)
from benchmate.workbench.record_fields import MANY, NO, YES, Kind, fields_of, stored_from, texts_of
from benchmate.workbench.touching import touching
from benchmate.workbench.usual import Asked, Usual, usual

_END_WORDS = {direction: word for word, direction in ENDS.items()}


class RecordForm(Form):
    """The fields of a record of one family, as they stand in the file or are to begin with."""

    def __init__(
        self,
        bench: Bench,
        family: str,
        record: type[Record],
        stored: Mapping[str, Any],
        base: str = "",
    ) -> None:
        super().__init__(bench, base)
        self.family = family
        self.record = record
        texts = texts_of(record, stored)
        fields = fields_of(record)
        if record.__name__ != "Chamfer":
            self._fields = {field.key: field for field in fields}
        else:
            self._fields = {field.key: field for field in fields if field.key != "meets"}
        self.blanks = tuple(self._blanks(texts))

    def _blanks(self, texts: Texts) -> Iterator[Blank]:
        group = ""
        for field in self._fields.values():
            words = words_for(self.family, field.key)
            top = field.group.partition(".")[0]
            yield Blank(
                key=field.key,
                label=words.label,
                help=words.help,
                text=texts.get(field.key, ""),
                heading=GROUPS.get(top, "") if top != group else "",
                required=field.required and not field.group,
                sum=field.kind is Kind.POSITION,
                many=field.kind in MANY,
            )
            group = top

    def stored(self, texts: Texts) -> dict[str, Any]:
        """What the file is to say."""
        return stored_from(self.record, texts)

    @cached_property
    def timbers(self) -> dict[str, Timber]:
        """The timbers there are, by id; those still to be kept with the rest of the edit too."""
        found = {timber.id: timber for timber in self.bench.timbers}
        for entry in self.draft.data.get(TIMBER_TABLE, []):
            if entry.get("id") not in found:
                record = self._sound_timber(entry)
                found |= {record.id: record} if record else {}
        return found

    def _sound_timber(self, stored: Mapping[str, Any]) -> Timber | None:
        try:
            return Timber.model_validate(stored, context={"bare": self.bench.project.bare})
        except ValidationError:
            return None

    def usual(self, key: str, texts: Texts) -> Usual | None:
        """What is usual in the trade for a field."""
        project = self.bench.project
        asked = Asked(
            timbers=self.timbers,
            sections=project.sections,
            texts=texts,
            bare=project.bare,
            own=self.bench.preferences.own,
        )
        return usual(self.family, key, asked)

    def choices(self, key: str, texts: Texts) -> tuple[str, ...]:
        """What can be picked for a field."""
        field = self._fields[key]
        found: dict[Kind, Callable[[], tuple[str, ...]]] = {
            Kind.CHOICE: lambda: field.words,
            Kind.CHOICES: lambda: field.words,
            Kind.FLAG: lambda: (YES, NO),
            Kind.FACE: lambda: tuple(FACES),
            Kind.END: lambda: self._ends(texts),
            Kind.TIMBER: lambda: self._timbers_for(key, texts),
            Kind.TIMBERS: lambda: tuple(self.timbers),
            Kind.JOINTS: lambda: self._joints(texts),
            Kind.SECTION_OR_NAME: lambda: tuple(self.bench.project.sections),
            Kind.POSITION: lambda: self._names(key),
            Kind.WORDS: lambda: self._words(key),
            Kind.NOTE: lambda: self._words(key),
        }
        return found[field.kind]() if field.kind in found else ()

    def _ends(self, texts: Texts) -> tuple[str, ...]:
        timber = self.timbers.get(texts.get("timber", "").strip())
        if timber is None:
            return tuple(ENDS)
        return tuple(ends_of(timber))

    def _timbers_for(self, key: str, texts: Texts) -> tuple[str, ...]:
        """All timbers, for the mate of one those that it touches first."""
        timber = self.timbers.get(texts.get("timber", "").strip())
        if key == "timber" or timber is None:
            return tuple(self.timbers)
        near = touching(self.bench.frame, timber)
        end = ENDS.get(texts.get("end", "").strip())
        if end is not None and end is not timber.reference_end:
            near = near[::-1]
        others = (each for each in self.timbers if each != timber.id)
        return tuple(dict.fromkeys((*near, *others)))

    def _joints(self, texts: Texts) -> tuple[str, ...]:
        own = {texts.get(key, "").strip() for key in ("timber", "into", "beyond")}
        return tuple(
            work.id
            for work in self.bench.project.works
            if work.joins() and work.id != texts.get("id") and own & {*work.timbers().values()}
        )

    def _names(self, key: str) -> tuple[str, ...]:
        project = self.bench.project
        level = key.rpartition(".")[2] in ("up", "level", "shoulder_level")
        first, then = (project.levels, project.lines)[:: 1 if level else -1]
        given = (f"{name} {side}" for name in project.sections for side in ("depth", "width"))
        return (*first, *project.lengths, *given, *then)

    def _words(self, key: str) -> tuple[str, ...]:
        """What others of its kind are called, for words that recur."""
        if self.record is not Timber or key not in ("kind", "species"):
            return ()
        return tuple(dict.fromkeys(filter(None, (getattr(t, key) for t in self.bench.timbers))))

    def _sound_work(self, stored: Mapping[str, Any]) -> Work | None:
        given = {"family": self.family} if "family" in self.record.model_fields else {}
        try:
            work = self.record.model_validate(
                given | dict(stored), context={"bare": self.bench.project.bare}
            )
        except ValidationError:
            return None
        return work if isinstance(work, Work) else None


def ends_of(timber: Timber) -> Iterator[str]:
    """The words for the two ends of a timber, the reference end's first."""
    return (_END_WORDS[end] for end in (timber.reference_end, timber.reference_end.opposite))


class ChangeRecord(RecordForm):
    """A timber, joint or chamfer that is there, to be changed."""

    def __init__(self, bench: Bench, path: Path, record: Timber | Work, name: str) -> None:
        self.path = path
        family = family_of(record).name
        super().__init__(bench, family, type(record), {})
        stored = self.draft.value(path)
        texts = texts_of(self.record, stored)
        self.blanks = tuple(self._blanks(texts))
        self.title = name

    def edit(self, texts: Texts) -> Edit:
        """The record as typed in place of the one there."""
        project = self.bench.project
        return changed(self.draft, project, self.path, self.record, self.stored(texts))


def change_timber(bench: Bench, timber: str) -> ChangeRecord:
    """The form for a timber that is there."""
    record = bench.frame.timber(timber)
    path = path_of(bench.project, timber, timber=True)
    return ChangeRecord(bench, path, record, f"{record.name}, {record.kind}")


def change_work(bench: Bench, work: str) -> ChangeRecord:
    """The form for a joint or chamfer that is there."""
    record = next(each for each in bench.project.works if each.id == work)
    path = path_of(bench.project, work, timber=False)
    return ChangeRecord(bench, path, record, f"{work}, {family_of(record).name}")


class HeadForm(RecordForm):
    """The head of the project: its name, its tape, its rule, and the shop's practice."""

    title = "The project and the shop's practice"

    def __init__(self, bench: Bench) -> None:
        super().__init__(bench, PROJECT, Project, {})
        self.blanks = tuple(self._blanks(texts_of(Project, self.draft.data)))

    def edit(self, texts: Texts) -> Edit:
        """The head as typed."""
        return with_head(self.draft, Project, self.stored(texts))


class NewTimber(RecordForm):
    """A timber that is not there yet, prefilled with what those of its kind have alike."""

    title = "A new timber"
    joints_follow = True

    def __init__(self, bench: Bench, like: str = "") -> None:
        stored: dict[str, Any] = {}
        if like:
            record = bench.frame.timber(like)
            stored = {
                key: getattr(record, key) for key in ("kind", "species") if getattr(record, key)
            }
            if isinstance(record.section, str):
                stored["section"] = record.section
        super().__init__(bench, TIMBER, Timber, stored)
        self.first = "name"

    def choices(self, key: str, texts: Texts) -> tuple[str, ...]:
        """As for any timber; an id after the name, and the next number of its kind."""
        if key == "name":
            kind = texts.get("kind", "").strip()
            last = [timber.name for timber in self.bench.timbers if timber.kind == kind]
            names = {timber.name for timber in self.bench.timbers}
            return (counted_on(last[-1], names),) if last else ()
        if key == "id":
            ids = {timber.id for timber in self.bench.timbers}
            name = slug(texts.get("name", ""))
            return (unused(name, ids),) if name else ()
        return super().choices(key, texts)

    def edit(self, texts: Texts) -> Edit:
        """The timber as typed, behind the others of its kind."""
        return with_timber(self.draft, self.stored(texts))


class NewWork(RecordForm):
    """A joint or chamfer that is not there yet."""

    joints_follow = True

    def __init__(self, bench: Bench, family: Family, at: OpenEnd, base: str = "") -> None:
        self._table = family.table
        stored: dict[str, Any] = {}
        keys = family.record.model_fields
        if "timber" in keys:
            stored["timber"] = at.timber
        elif at.timber:
            stored["on"] = [at.timber]
        if at.end and "end" in keys:
            stored["end"] = at.end
        super().__init__(bench, family.name, family.record, stored, base)
        stored["id"] = self._id(*at)
        self.blanks = tuple(self._blanks(texts_of(family.record, stored)))
        self.title = f"A new {family.name}"
        self.first = next((b.key for b in self.blanks if b.required and not b.text), "")

    def _id(self, timber: str, end: str) -> str:
        ids = {work.id for work in self.bench.project.works}
        ids |= {str(e.get("id")) for e in self.draft.data.get(self._table, [])}
        return unused(f"{timber}-{end}", ids) if timber and end else ""

    def choices(self, key: str, texts: Texts) -> tuple[str, ...]:
        """As for any joint; an id after its timber and end."""
        if key == "id":
            found = self._id(texts.get("timber", "").strip(), texts.get("end", "").strip())
            return (found,) if found else ()
        return super().choices(key, texts)

    def edit(self, texts: Texts) -> Edit:
        """The joint as typed, behind the others of its timber; no end is then said twice."""
        stored = self.stored(texts)
        given = {"family": self.family} if "family" in self.record.model_fields else {}
        written = {"id": stored["id"]} if "id" in stored else {}
        edit = with_work(self.draft, self._table, {**written, **given, **stored})
        if self.pending:
            id_ = str(stored.get("timber"))
            name = self.timbers[id_].name if id_ in self.timbers else id_
            edit = replace(edit, words=f"{name} added with its joints", timber=id_)
        work = self._sound_work(stored)
        if work is None:
            return edit
        for timber, record in self.timbers.items():
            ends = [each.end for each in work.settled() if each.timber == timber]
            if ends and record.at is not None:
                edit = settled_by(edit, record, ends)
        return edit
