"""The source tree as the house tests see it: its files, its modules, and commands run in it."""

import fnmatch
import functools
import subprocess
from pathlib import Path, PurePosixPath

ROOT = Path(__file__).parents[2]

ENGINE = ("measure", "model", "frame", "joinery", "layout", "checks", "sheets", "outset")
"""The rooms that take values and give values back, from the bottom up; two beside the store."""

ROOMS = (*ENGINE, "store", "workbench", "tui")


def run(*command: str, cwd: Path = ROOT) -> subprocess.CompletedProcess[str]:
    """The command's outcome, with whatever it printed on either stream in `stdout`."""
    return subprocess.run(
        command,
        cwd=cwd,
        check=False,
        text=True,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
    )


@functools.cache
def files(root: Path = ROOT) -> tuple[PurePosixPath, ...]:
    """The files that git tracks or would; without git, those that `.gitignore` lets through."""
    if not (root / ".git").exists():
        return _walked(root)
    listed = run("git", "ls-files", "-z", "--cached", "--others", "--exclude-standard", cwd=root)
    listed.check_returncode()
    names = sorted(name for name in listed.stdout.split("\0") if (root / name).is_file())
    return tuple(map(PurePosixPath, names))


def python(*tops: str) -> tuple[PurePosixPath, ...]:
    """The Python files under the named folders, or all of them where none is named."""
    found = (path for path in files() if path.suffix == ".py")
    return tuple(path for path in found if not tops or any(map(path.is_relative_to, tops)))


def rooms(*names: str) -> tuple[PurePosixPath, ...]:
    """The Python files of the named rooms."""
    return python(*(f"benchmate/{name}" for name in names))


def ignored(root: Path = ROOT) -> tuple[str, ...]:
    """The names that `.gitignore` keeps out, as shell patterns."""
    lines = (root / ".gitignore").read_text("utf-8").splitlines()
    return tuple(line.rstrip("/") for line in lines if line and not line.startswith("#"))


def matches(path: PurePosixPath, patterns: tuple[str, ...]) -> bool:
    """Whether any part of the path is named by a pattern."""
    return any(fnmatch.fnmatch(part, pattern) for part in path.parts for pattern in patterns)


def _walked(root: Path) -> tuple[PurePosixPath, ...]:
    patterns = (".git", *ignored(root))
    found = (PurePosixPath(path.relative_to(root)) for path in root.rglob("*") if path.is_file())
    return tuple(sorted(path for path in found if not matches(path, patterns)))
