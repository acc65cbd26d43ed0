"""Taking a timber or joint out: what goes with it, and where ends come that nothing settles."""

from benchmate.frame.frame import Frame
from benchmate.model.directions import end_words
from benchmate.model.progress import Progress
from benchmate.model.project import Timber
from benchmate.model.work import Work
from benchmate.store.files import progress_name
from benchmate.store.problem import Problem
from benchmate.store.tables import TIMBER_TABLE
from benchmate.store.toml_lines import Path
from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.form import Blank, Form, Texts
from benchmate.workbench.project_edits import Edit, Loose, loosened, without

HELP = "Nothing settles that end any more. This is where it is now; say if it is to come elsewhere."


class Removal(Form):
    """Something to be taken out, with a field for every end that it leaves open elsewhere."""

    def __init__(self, bench: Bench, works: tuple[str, ...] = (), timber: str = "") -> None:
        super().__init__(bench)
        self._timber = timber
        self._draft, self.gone = without(self.draft, bench.project, works, timber)
        self._loose = loosened(bench.frame, self.gone, timber)
        self.blanks = tuple(map(_blank, self._loose))
        what = bench.frame.timber(timber).name if timber else ", ".join(works)
        self.title = f"Remove {what}"
        self._words = f"{what} removed"

    def edit(self, texts: Texts) -> Edit:
        """The file without it, and with what settles those ends now."""
        draft = self._draft
        for loose in self._loose:
            text = texts.get(_key(loose), "").strip()
            if text:
                draft = draft.put((*self._path(loose.timber.id), loose.key), text, _ORDER)
        first = next((each.id for each in self.bench.timbers if each.id != self._timber), "")
        return Edit(words=self._words, text=draft.text, timber=first if self._timber else "")

    def _path(self, timber: str) -> Path:
        entries = self._draft.data.get(TIMBER_TABLE, [])
        return TIMBER_TABLE, next(at for at, each in enumerate(entries) if each["id"] == timber)

    def says(self, texts: Texts) -> tuple[str, ...]:  # noqa: ARG002 - the same whatever is typed
        """Which joints go with it, and that its ticks are kept."""
        return tuple(filter(None, (self._joints(), self._ticks())))

    def _joints(self) -> str:
        if not self._timber or not self.gone:
            return ""
        works = {work.id: work for work in self.bench.project.works}
        told = (
            f"{id_} ({_others(self.bench.frame, works[id_], self._timber)})" for id_ in self.gone
        )
        return f"With it go {', '.join(told)}."

    def _ticks(self) -> str:
        if not self._timber:
            return ""
        progress = self.bench.walk(self._timber).progress
        if progress == Progress(timber=progress.timber):
            return "Nothing is ticked, measured or noted on it."
        count = len(progress.ticks)
        return (
            f"Its {count} tick{'' if count == 1 else 's'} and its sizes and notes stay in "
            f"{progress_name(self._timber)}: it is kept, and told of as one of a timber that "
            "the project has not."
        )

    def field_of(self, problem: Problem, path: Path) -> str:  # noqa: ARG002 - several timbers' own
        """The field of the end that a problem is about."""
        for loose in self._loose:
            _, place = self._path(loose.timber.id)
            if problem.key == f"{TIMBER_TABLE}[{int(place) + 1}].{loose.key}":
                return _key(loose)
        return ""


_ORDER = tuple(Timber.model_fields)


def _key(loose: Loose) -> str:
    return f"{loose.timber.id}.{loose.key}"


def _blank(loose: Loose) -> Blank:
    label = f"{loose.timber.name}, {end_words(loose.end)} at"
    return Blank(key=_key(loose), label=label, help=HELP, text=loose.text, sum=True, required=True)


def _others(frame: Frame, work: Work, timber: str) -> str:
    names = (frame.timber(each).name for each in work.timbers().values() if each != timber)
    return " and ".join(dict.fromkeys(names)) or "on it alone"
