"""Where the settings lie, and the glance before the first paint."""

import subprocess
import sys
from pathlib import Path

from benchmate.store.preference_place import glance, preference_path


def put(tmp_path: Path, text: str) -> dict[str, str]:
    """An environment whose settings file has a text."""
    environ = {"XDG_CONFIG_HOME": str(tmp_path)}
    path = preference_path(environ)
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, "utf-8")
    return environ


def test_the_file_lies_where_the_specification_says(tmp_path: Path) -> None:
    """XDG_CONFIG_HOME if it is absolute, else .config in the home folder."""
    place = "benchmate/settings.toml"
    assert preference_path({"XDG_CONFIG_HOME": str(tmp_path)}) == tmp_path / place
    home = {"HOME": str(tmp_path)}
    assert preference_path(home) == tmp_path / ".config" / place
    assert preference_path(home | {"XDG_CONFIG_HOME": "here"}) == tmp_path / ".config" / place


def test_a_glance_gives_the_word_of_a_plain_line(tmp_path: Path) -> None:
    """And nothing for what is no such line, or no such file."""
    assert glance("colours", {"XDG_CONFIG_HOME": str(tmp_path / "none")}) == ""
    assert glance("colours", put(tmp_path, "# mine\n colours = 'light' # day\n")) == "light"
    assert glance("colours", put(tmp_path, 'units = "mm"\ncolours="high-contrast"')) != ""
    assert glance("colours", put(tmp_path, '# colours = "light"\ncolours = 3\n')) == ""
    (tmp_path / "benchmate/settings.toml").unlink()
    (tmp_path / "benchmate/settings.toml").mkdir()
    assert glance("colours", {"XDG_CONFIG_HOME": str(tmp_path)}) == ""


def test_a_glance_loads_nothing_heavy() -> None:
    """It stands before the first paint: no parser, no records, no screen."""
    program = (
        "import sys, benchmate.workbench.first_glance;"
        "print([name for name in ('tomllib', 'pydantic', 'textual') if name in sys.modules])"
    )
    done = subprocess.run(
        [sys.executable, "-c", program], check=True, capture_output=True, text=True
    )
    assert done.stdout.strip() == "[]"
