"""Where projects are kept, and which one a framer means."""

from collections.abc import Mapping
from pathlib import Path

from benchmate.model.words import visible
from benchmate.store import shelf
from benchmate.store.problem import KeepError, ProjectError

FOLDER = "projects"
"""The folder looked for beside wherever the program is started."""


class NoProjectError(Exception):
    """There is no project where one was asked for."""


def choices(named: str, here: Path, environ: Mapping[str, str]) -> tuple[Path, ...]:
    """The projects a framer may mean: in the folder named, else in ./projects, else the demo.

    Shipped demos come as working copies, so trying the program never changes a clone. Raises
    NoProjectError if a folder is named that holds none.
    """
    places = (
        (locate(named, here, environ),)
        if named
        else (here / FOLDER, shelf.own_projects(environ), shelf.shipped_demos())
    )
    try:
        for place in places:
            found = shelf.projects_in(place) if shelf.is_folder(place) else ()
            if found:
                return tuple(to_open(folder, environ) for folder in found)
    except KeepError as error:
        raise NoProjectError(str(error)) from error
    raise NoProjectError(
        f"{visible(str(places[0]))} holds no project; name a folder with a project.toml"
    )


def every_project(here: Path, environ: Mapping[str, str]) -> tuple[Path, ...]:
    """Every project that can be opened from here: in ./projects, the framer's own, the demos.

    A demo that he has a copy of is that copy. No copy is made: `to_open` does when one is chosen.
    Folders that cannot be looked into are passed over.
    """
    places = (here / FOLDER, shelf.own_projects(environ), shelf.shipped_demos())
    found: dict[Path, Path] = {}
    for place in places:
        for project in _in(place):
            copy = to_read(str(project), here, environ)
            found.setdefault(copy.resolve(), copy)
    return tuple(found.values())


def _in(place: Path) -> tuple[Path, ...]:
    try:
        return shelf.projects_in(place) if shelf.is_folder(place) else ()
    except KeepError:
        return ()


def place_of(project: Path, here: Path, environ: Mapping[str, str]) -> str:
    """Where a project lies, in words: here, among the framer's own, or with the demos."""
    parent = project.resolve().parent
    named = (
        (shelf.own_projects(environ), "your own"),
        (here / FOLDER, f"./{FOLDER}"),
        (shelf.shipped_demos(), "demo"),
    )
    words = (words for place, words in named if place.resolve() == parent)
    return next(words, str(project.parent))


def to_read(named: str, here: Path, environ: Mapping[str, str]) -> Path:
    """The folder that the plain commands read: what the screen would open, and no copy is made.

    Raises NoProjectError.
    """
    found = locate(named, here, environ)
    try:
        return shelf.copy_made(found, environ)
    except (ProjectError, KeepError):
        # What is wrong with it is told when it is read.
        return found


def is_own(folder: Path, environ: Mapping[str, str]) -> bool:
    """Whether a project lies among the framer's own, where his copies of the demos are."""
    return folder.resolve().parent == shelf.own_projects(environ).resolve()


def to_open(folder: Path, environ: Mapping[str, str]) -> Path:
    """The folder to open for a project: of a shipped demo, the framer's own copy, made if need be.

    One that cannot be read says so when it is opened. Raises KeepError if no copy can be made.
    """
    try:
        return shelf.working_copy(folder, environ)
    except ProjectError:
        return folder


def locate(named: str, here: Path, environ: Mapping[str, str]) -> Path:
    """The folder a name or path means. Raises NoProjectError if there is none.

    A bare name is also looked for in ./projects, among the framer's own and among the demos.
    """
    path = here / named
    own = shelf.own_projects(environ) / named
    tries = (path, here / FOLDER / named, own, shelf.shipped_demos() / named)
    for found in tries:
        if shelf.is_folder(found):
            return found
        if shelf.is_project_file(found):
            return found.parent
    raise NoProjectError(f"there is no project {visible(named)}; name a folder with a project.toml")
