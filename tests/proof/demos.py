"""The demo frames, each by either rule."""

from functools import cache

from benchmate.frame.frame import Real, real_of
from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.model.project import Project
from benchmate.store.reading import progress_files, read_progress, read_project
from tests.store.samples import PROJECTS

SHED, STORE = "orchard-tool-shed", "hillside-wood-store"

RULES = ((SHED, "mill"), (SHED, "square"), (STORE, "mill"), (STORE, "square"))
"""Every demo by its own rule and by the other one."""

LESS = Length.inches(0, 1, 2)
"""How much smaller than drawn an inner timber is, where a demo names none."""


@cache
def demo(name: str, rule: str) -> Project:
    """A demo's frame by one of the two rules."""
    project = read_project(PROJECTS / name)
    inner = project.inner or {
        words: Section(section.first - LESS, section.second - LESS)
        for words, section in project.sections.items()
    }
    return project.model_copy(update={"rule": rule, "inner": inner})


def kept(name: str) -> dict[str, Real]:
    """The real sizes that ship with a demo."""
    folder = PROJECTS / name
    bare = read_project(folder).bare
    return {
        timber: real_of(read_progress(folder, timber, bare)) for timber in progress_files(folder)
    }
