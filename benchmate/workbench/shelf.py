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
                return tuple(_to_open(folder, environ) for folder in found)
    except KeepError as error:
        raise NoProjectError(str(error)) from error
    raise NoProjectError(
        f"{visible(str(places[0]))} holds no project; name a folder with a project.toml"
    )


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


def _to_open(folder: Path, environ: Mapping[str, str]) -> Path:
    """The folder to open for a project; one that cannot be read says so when it is opened."""
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
