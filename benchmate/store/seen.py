"""What a user has been shown once and needs no more, kept in his own state folder."""

from collections.abc import Mapping
from pathlib import Path

TOUR = "tour"
"""The cards shown at the first start."""


def state_folder(environ: Mapping[str, str]) -> Path:
    """The folder for what the program remembers, as the XDG specification puts it."""
    named = Path(environ.get("XDG_STATE_HOME", ""))
    home = environ.get("HOME")
    base = Path(home) if home else Path.home()
    return (named if named.is_absolute() else base / ".local/state") / "benchmate"


def was_seen(what: str, environ: Mapping[str, str]) -> bool:
    """Whether a thing has been shown; a folder that cannot be looked into counts as yes.

    Where nothing can be remembered the same cards would come at every start.
    """
    try:
        return _mark(what, environ).exists()
    except (OSError, RuntimeError):  # the latter where there is no home folder
        return True


def note_seen(what: str, environ: Mapping[str, str]) -> bool:
    """Remember that a thing has been shown; False where that cannot be kept."""
    try:
        mark = _mark(what, environ)
        mark.parent.mkdir(parents=True, exist_ok=True)
        mark.touch()
    except (OSError, RuntimeError):
        return False
    return True


def _mark(what: str, environ: Mapping[str, str]) -> Path:
    return state_folder(environ) / f"{what}-seen"
