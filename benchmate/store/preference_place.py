"""Where a user's own settings lie, and a first glance at one of them; nothing heavy is imported."""

import re
from collections.abc import Mapping
from pathlib import Path

_GLANCE = 20_000
"""Bytes looked at before the first paint: many times a file with every setting explained."""


def preference_path(environ: Mapping[str, str]) -> Path:
    """The settings file, as the XDG specification puts it. Raises RuntimeError without a home."""
    named = Path(environ.get("XDG_CONFIG_HOME", ""))
    home = environ.get("HOME")
    base = named if named.is_absolute() else (Path(home) if home else Path.home()) / ".config"
    return base / "benchmate" / "settings.toml"


def glance(key: str, environ: Mapping[str, str]) -> str:
    """The word that a plain line gives to a key; empty where there is none.

    Read without a parser, as colours are wanted before anything is painted. What is wrong with
    the file is told by the reading that comes after.
    """
    try:
        path = preference_path(environ)
        if not path.is_file():
            return ""
        with path.open(encoding="utf-8", errors="replace") as file:
            text = file.read(_GLANCE)
    except (OSError, RuntimeError):
        return ""
    found = re.search(rf"""^[ \t]*{key}[ \t]*=[ \t]*["']([a-z-]*)["']""", text, re.MULTILINE)
    return found[1] if found else ""
