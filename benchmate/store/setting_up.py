"""Putting a new project folder in place: there whole, or not at all."""

import os
import secrets
import shutil
from collections.abc import Mapping
from pathlib import Path

from benchmate.store.files import PROGRESS_FOLDER, trouble
from benchmate.store.problem import KeepError
from benchmate.store.writing import make_folder, write_atomically


def is_taken(folder: Path) -> bool:
    """Whether anything lies where a folder is to be, a link that leads nowhere too."""
    return os.path.lexists(folder)


def put_whole(folder: Path, files: Mapping[str, bytes]) -> None:
    """Put a project folder with these files in place, on disk before this returns.

    It is made beside its place and moved there last. Raises KeepError if the system will not, or
    if anything lies there already: nothing is ever written over.
    """
    if is_taken(folder):
        raise KeepError(folder, "is there already", "take another name")
    try:
        folder.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise trouble(folder.parent, error) from error
    beside = folder.with_name(f".{folder.name}.{secrets.token_hex(4)}")
    make_folder(beside)
    try:
        make_folder(beside / PROGRESS_FOLDER)
        for name, data in files.items():
            write_atomically(beside / name, data)
        _move(beside, folder)
    finally:
        shutil.rmtree(beside, ignore_errors=True)


def _move(beside: Path, folder: Path) -> None:
    try:
        beside.rename(folder)
    except OSError as error:
        raise trouble(folder, error) from error
