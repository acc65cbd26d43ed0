"""Copying a project: its file under another name, with what is done on it or without."""

import re
from pathlib import Path

from benchmate.store.files import PROJECT_FILE, progress_name, read_file
from benchmate.store.problem import KeepError
from benchmate.store.reading import parse_project, progress_files
from benchmate.store.rewording import reword_head
from benchmate.store.setting_up import put_whole

_DEMO = re.compile(rb"^[ \t]*demo[ \t]*=[ \t]*true[ \t]*(#.*)?\r?\n", re.MULTILINE)
"""The line that makes a project a demo, which its copy is not."""

_TABLE = re.compile(rb"^[ \t]*\[", re.MULTILINE)
"""The first table, where the head of a file ends."""


def copy_project(project: Path, folder: Path, name: str, *, with_progress: bool) -> None:
    """Copy a project into a new folder under another name, whole or not at all.

    Every other byte of its file stays as it is, but that a copy of a demo is no demo. Raises
    ProjectError if the project is not sound, KeepError if it cannot be read or the copy not made.
    """
    files = {PROJECT_FILE: renamed(read_file(project, PROJECT_FILE).data, name)}
    if with_progress:
        kept = map(progress_name, progress_files(project))
        files |= {each: read_file(project, each).data for each in kept}
    put_whole(folder, files)


def renamed(data: bytes, name: str) -> bytes:
    """A project file under another name, no demo any more. Raises ProjectError, KeepError."""
    before = parse_project(data)
    found = reword_head(_no_demo(data), "name", name)
    after = parse_project(found)
    if after != before.model_copy(update={"name": name, "demo": False}):
        raise KeepError(
            Path(PROJECT_FILE),
            "is written so that its name or demo cannot be changed from here",
            "copy the folder by hand, and change them in your editor",
        )
    return found


def _no_demo(data: bytes) -> bytes:
    table = _TABLE.search(data)
    end = table.start() if table else len(data)
    return _DEMO.sub(b"", data[:end], count=1) + data[end:]
