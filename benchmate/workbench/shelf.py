"""Where projects are kept, and which one a framer means."""

from collections.abc import Mapping
from pathlib import Path

from benchmate.store import shelf

FOLDER = "projects"
"""The folder looked for beside wherever the program is started."""


class NoProjectError(Exception):
    """There is no project where one was asked for."""


def choices(named: str, here: Path, environ: Mapping[str, str]) -> tuple[Path, ...]:
    """The projects a framer may mean: in the folder named, else in ./projects, else the demo.

    Shipped demos come as working copies, so trying the program never changes a clone. Raises
    NoProjectError if a folder is named that holds none.
    """
    if named:
        found = shelf.projects_in(locate(named, here, environ))
    else:
        found = shelf.projects_in(here / FOLDER) or shelf.projects_in(
            shelf.data_folder(environ) / FOLDER
        )
        found = found or shelf.projects_in(shelf.shipped_demos())
    if not found:
        raise NoProjectError(
            f"{locate(named, here, environ)} holds no project; name a folder with a project.toml"
        )
    return tuple(shelf.working_copy(folder, environ) for folder in found)


def locate(named: str, here: Path, environ: Mapping[str, str]) -> Path:
    """The folder a name or path means. Raises NoProjectError if there is none.

    A bare name is also looked for in ./projects and among the framer's own.
    """
    path = here / named
    tries = (path, here / FOLDER / named, shelf.data_folder(environ) / FOLDER / named)
    for found in tries:
        if found.is_dir():
            return found
        if found.name == "project.toml" and found.is_file():
            return found.parent
    raise NoProjectError(f"there is no project {named}; name a folder with a project.toml")
