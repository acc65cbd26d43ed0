"""Where projects lie: in a folder, in the user's own data, and the demos that ship."""

import os
from collections.abc import Mapping
from pathlib import Path

import benchmate
from benchmate.store.files import PROJECT_FILE, progress_name, read_file, trouble
from benchmate.store.problem import KeepError
from benchmate.store.reading import progress_files, read_project
from benchmate.store.setting_up import put_whole


def projects_in(folder: Path) -> tuple[Path, ...]:
    """The project folders found: the folder itself, or those right in it, by name.

    Raises KeepError if the folder cannot be looked into.
    """
    if _is_project(folder):
        return (folder,)
    try:
        return tuple(sorted(each for each in folder.iterdir() if _is_project(each)))
    except OSError as error:
        raise trouble(folder, error) from error


def data_folder(environ: Mapping[str, str]) -> Path:
    """The folder for what a user makes, as the XDG base directory specification puts it."""
    named = Path(environ.get("XDG_DATA_HOME", ""))
    home = environ.get("HOME")
    base = Path(home) if home else Path.home()
    return (named if named.is_absolute() else base / ".local/share") / "benchmate"


def shipped_demos() -> Path:
    """The folder of the demos that came with the program, installed or in its source tree."""
    package = Path(benchmate.__file__).resolve().parent
    installed = package / "demo"
    return installed if installed.is_dir() else package.parent / "projects"


def own_projects(environ: Mapping[str, str]) -> Path:
    """The folder of the user's own projects, among them his working copies of the demos."""
    return data_folder(environ) / "projects"


def working_copy(project_folder: Path, environ: Mapping[str, str]) -> Path:
    """The folder to open in place of this one: for a shipped demo, the user's own copy of it.

    The copy is made once and never written over. Raises ProjectError, KeepError.
    """
    copy = copy_made(project_folder, environ)
    if copy == project_folder and _is_shipped_demo(project_folder):
        copy = own_projects(environ) / project_folder.resolve().name
        _copy(project_folder, copy)
    return copy


def copy_made(project_folder: Path, environ: Mapping[str, str]) -> Path:
    """The folder to read in place of this one: the user's copy of a shipped demo, if he has one.

    None is made. Raises ProjectError, KeepError.
    """
    copy = own_projects(environ) / project_folder.resolve().name
    if _is_project(copy) and _is_shipped_demo(project_folder):
        return copy
    return project_folder


def is_folder(path: Path) -> bool:
    """Whether a path is a folder that can be seen; never an error, whatever was typed."""
    return os.path.isdir(path)  # noqa: PTH112 - the pathlib one raises for names the system refuses


def is_project_file(path: Path) -> bool:
    """Whether a path is a project file that can be seen."""
    return path.name == PROJECT_FILE and os.path.isfile(path)  # noqa: PTH113 - as above


def _is_project(folder: Path) -> bool:
    return is_project_file(folder / PROJECT_FILE)


def _is_shipped_demo(folder: Path) -> bool:
    return _ships(folder) and read_project(folder).demo


def _ships(folder: Path) -> bool:
    shelves = (shipped_demos(), Path("projects"))
    return folder.resolve().parent in [shelf.resolve() for shelf in shelves]


def _copy(folder: Path, copy: Path) -> None:
    """Copy a project's own files, so that the copy is there whole or not at all."""
    names = (PROJECT_FILE, *map(progress_name, progress_files(folder)))
    try:
        put_whole(copy, {name: read_file(folder, name).data for name in names})
    except KeepError:
        # A program that was started at the same moment may have made the copy already.
        if not _is_project(copy):
            raise
