"""Giving, changing and taking out names: lines, levels, lengths, sections and inner sections."""

from benchmate.model.project import Project
from benchmate.store.problem import Problem
from benchmate.store.renaming import paths_of, users_of, with_name
from benchmate.store.toml_lines import Path
from benchmate.workbench.forms.form import Blank, Form, FormError, Texts
from benchmate.workbench.names import NAME_TABLES
from benchmate.workbench.project_edits import Edit

TABLES = tuple(table.table for table in NAME_TABLES)

INNER = " (inner)"
"""What stands behind the name of an inner section, which is that of its section."""

MOST_TOLD = 6
"""What uses a name is told one by one so far, and then only counted."""


def _blank(key: str, label: str, help_: str, text: str = "", *, total: bool = False) -> Blank:
    return Blank(key=key, label=label, help=help_, text=text, required=True, sum=total)


class NewName(Form):
    """A line, level, length or section that is not there yet."""

    title = "A new line, level, length or section"
    blanks = (
        _blank("table", "What", "lines and levels are places, lengths and sections are sizes."),
        _blank("name", "Name", "Lower-case words of letters and digits: floor top, line 2."),
        _blank("text", "Is", "A figure or a sum; a section as 7 x 8.", total=True),
    )

    def choices(self, key: str, texts: Texts) -> tuple[str, ...]:
        """The tables, the sections for an inner one, the names for a sum."""
        project = self.bench.project
        if key == "table":
            return TABLES
        if key == "name":
            return tuple(project.sections) if texts.get("table") == "inner" else ()
        return (*project.levels, *project.lines, *project.lengths)

    def edit(self, texts: Texts) -> Edit:
        """The name with what it is to be. Raises FormError."""
        table, name = texts.get("table", "").strip(), texts.get("name", "").strip()
        if table not in TABLES:
            raise FormError("table", f"is not one of {', '.join(TABLES)}; pick one with tab")
        if not name:
            raise FormError("name", "is missing; type it here")
        if name in getattr(self.bench.project, table):
            raise FormError("name", "is given already; l changes what it is")
        draft = self.draft.put((table, name), texts.get("text", "").strip())
        return Edit(words=f"{name} added", text=draft.text, path=(table,))

    def field_of(self, problem: Problem, path: Path) -> str:  # noqa: ARG002 - as the one name
        """Whatever is wrong with the one name is in the word itself, or else in what it is."""
        return "name" if "name" in problem.message and "called" not in problem.message else "text"


class _OfName(Form):
    def choices(self, key: str, texts: Texts) -> tuple[str, ...]:  # noqa: ARG002 - one list for all
        """Every name there is."""
        return tuple(labels(self.bench.project)) if key == "name" else ()

    def _named(self, texts: Texts) -> tuple[str, str]:
        """The table and the name that is meant. Raises FormError."""
        known = labels(self.bench.project)
        name = texts.get("name", "").strip()
        if name not in known:
            raise FormError("name", "is no name of this project; pick one with tab")
        return known[name]


class RenameName(_OfName):
    """Another word for a line, level, length or section; all that uses it follows."""

    title = "Rename a line, level, length or section"
    blanks = (
        _blank("name", "Name", "The one to be called otherwise."),
        _blank("to", "To", "What it is to be called, wherever it is used."),
    )

    def edit(self, texts: Texts) -> Edit:
        """The file with the other word. Raises FormError."""
        table, name = self._named(texts)
        to = texts.get("to", "").strip()
        if table == "inner":
            raise FormError("name", "is called after its section; rename that")
        if not to or to == name:
            raise FormError("to", "is missing; type what it is to be called")
        draft = with_name(self.draft, self.bench.project, table, name, to)
        return Edit(words=f"{name} renamed {to}", text=draft.text, path=(table,))

    def says(self, texts: Texts) -> tuple[str, ...]:
        """How many places follow."""
        known = labels(self.bench.project)
        found = known.get(texts.get("name", "").strip())
        if found is None:
            return ()
        users = users_of(self.bench.project, *found)
        return (f"{len(users)} place{'' if len(users) == 1 else 's'} that use it follow.",)

    def field_of(self, problem: Problem, path: Path) -> str:  # noqa: ARG002 - as the word alone
        """Only the new word can be wrong."""
        return "to"


class DropName(_OfName):
    """A line, level, length or section to be taken out; one that is used stays."""

    title = "Take out a line, level, length or section"
    blanks = (_blank("name", "Name", "The one to be taken out. One that is used cannot be."),)

    def edit(self, texts: Texts) -> Edit:
        """The file without it. Raises FormError, by what uses it."""
        table, name = self._named(texts)
        users = users_of(self.bench.project, table, name)
        if users:
            told = [user_words(self.bench.project, path) for path in users[:MOST_TOLD]]
            more = len(users) - len(told)
            told += [f"{more} more"] if more else []
            raise FormError("name", f"is used by {', '.join(told)}; change those first")
        return Edit(words=f"{name} taken out", text=self.draft.drop((table, name)).text)


def labels(project: Project) -> dict[str, tuple[str, str]]:
    """Every name as it is picked, with its table and itself."""
    return {
        f"{name}{INNER if table == 'inner' else ''}": (table, name)
        for table in TABLES
        for name in getattr(project, table)
    }


def user_words(project: Project, path: Path) -> str:
    """What uses a name, as a framer calls it: `West sill (at.east)`, `floor top`."""
    records = dict(paths_of(project))
    record = records.get(path[:2])
    if record is None:
        return str(path[-1])
    key = ".".join(map(str, path[2:]))
    return f"{getattr(record, 'name', record.id)} ({key})"
