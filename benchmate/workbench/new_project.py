"""Making a project: where it goes, what its folder is called, and putting it there whole."""

from collections.abc import Mapping
from pathlib import Path

from benchmate.model.words import LONGEST_NAME, check_id, check_text, visible
from benchmate.outset.plan_questions import folder_name
from benchmate.store import shelf
from benchmate.store.copying import copy_project
from benchmate.store.files import PROJECT_FILE
from benchmate.store.problem import KeepError, ProjectError
from benchmate.store.reading import read_project
from benchmate.store.setting_up import is_taken, put_whole
from benchmate.workbench.shelf import FOLDER


class NotMadeError(Exception):
    """A project that could not be made: why, and what to do. Nothing was left behind."""


def home(here: Path, environ: Mapping[str, str]) -> Path:
    """Where new projects go: ./projects if there is one, else among the framer's own."""
    beside = here / FOLDER
    return beside if shelf.is_folder(beside) else shelf.own_projects(environ)


def free_folder(place: Path, name: str) -> str:
    """A folder name for a project that nothing in a place has yet: `north-shed`, `north-shed-2`."""
    wanted = folder_name(name)
    found, number = wanted, 2
    while why_not(place, found) and number < LONGEST_NAME:
        found, number = f"{wanted[: LONGEST_NAME - 3].rstrip('-')}-{number}", number + 1
    return found


def why_not(place: Path, folder: str) -> str:
    """Why no project can be made in a folder of that name, with what to do; empty where it can."""
    try:
        check_id(folder)
    except ValueError as error:
        return f"the folder's name {error}"
    if is_taken(place / folder):
        return f"{visible(folder)} is there already; take another name"
    return ""


def bad_name(name: str) -> str:
    """Why a project cannot be called so, with what to do; empty where it can."""
    try:
        check_text(name, longest=LONGEST_NAME)
    except ValueError as error:
        return f"the name {error}"
    return ""


def name_of(project: Path) -> str:
    """What a project is called; its folder's name where its file cannot be read."""
    try:
        return read_project(project).name
    except (KeepError, ProjectError):
        return project.name


def make(place: Path, folder: str, text: str) -> Path:
    """Put a new project in its folder, whole or not at all. Raises NotMadeError."""
    reason = why_not(place, folder)
    if reason:
        raise NotMadeError(reason)
    try:
        put_whole(place / folder, {PROJECT_FILE: text.encode()})
    except KeepError as error:
        raise NotMadeError(str(error)) from error
    return place / folder


def copy(project: Path, place: Path, folder: str, name: str, *, with_progress: bool) -> Path:
    """Copy a project under another name, whole or not at all. Raises NotMadeError."""
    reason = bad_name(name) or why_not(place, folder)
    if reason:
        raise NotMadeError(reason)
    try:
        copy_project(project, place / folder, name, with_progress=with_progress)
    except (KeepError, ProjectError) as error:
        raise NotMadeError(str(error)) from error
    return place / folder
