"""Rooms import downward only, and only the tui knows the screen: as written and as run."""

import re
import shutil
import sys
from pathlib import Path, PurePosixPath

import pytest

from tests.house.tree import ENGINE, ROOT, python, rooms, run

LINT = "from importlinter.cli import lint_imports_command as lint; lint()"

DOWNWARD = "Rooms import downward only"
FAMILIES = "Joint families do not know each other"
PURE = "The engine touches no file, clock or log"
SCREEN = "Only the tui touches Textual and Rich"
READING = "Reading a file does not compute"
NUMBERS = "A frame is set out from numbers alone"
SAVING = "The tui saves and prints only through the workbench"

LOAD = """
import importlib, sys
for name in sys.argv[1:]:
    importlib.import_module(name)
print(*sorted({"rich", "textual"} & set(sys.modules)))
"""


def test_every_wall_stands() -> None:
    """Every contract is kept, and each of them is one that the plants below can break."""
    status, verdicts = _lint(ROOT)
    assert verdicts == dict.fromkeys(
        (DOWNWARD, FAMILIES, PURE, SCREEN, READING, NUMBERS, SAVING), "KEPT"
    )
    assert status == 0


@pytest.mark.parametrize(
    ("module", "imported", "wall"),
    [
        ("measure/planted.py", "benchmate.model", DOWNWARD),
        ("cellar/__init__.py", "benchmate.measure", DOWNWARD),
        ("joinery/planted.py", "benchmate.joinery.other", FAMILIES),
        ("layout/planted.py", "pathlib", PURE),
        ("checks/planted.py", "rich", SCREEN),
        ("workbench/planted.py", "textual.app", SCREEN),
        ("sheets/planted.py", "benchmate.store", DOWNWARD),
        ("sheets/planted.py", "benchmate.workbench", DOWNWARD),
        ("sheets/planted.py", "pathlib", PURE),
        ("sheets/planted.py", "rich", SCREEN),
        ("store/planted.py", "benchmate.layout", READING),
        ("store/planted.py", "benchmate.sheets.exact", DOWNWARD),
        ("outset/planted.py", "benchmate.checks", NUMBERS),
        ("tui/planted.py", "benchmate.store", SAVING),
        ("tui/planted.py", "benchmate.sheets.sheet", SAVING),
    ],
)
def test_a_breach_is_noticed(tmp_path: Path, module: str, imported: str, wall: str) -> None:
    """One forbidden import breaks the wall it crosses and no other."""
    shutil.copy(ROOT / "pyproject.toml", tmp_path)
    for path in python("benchmate"):
        _plant(tmp_path / path, (ROOT / path).read_text("utf-8"))
    _plant(tmp_path / "benchmate/joinery/other.py", '"""A family that minds its own business."""')
    _plant(tmp_path / "benchmate" / module, f"import {imported}")
    status, verdicts = _lint(tmp_path)
    assert [name for name, verdict in verdicts.items() if verdict == "BROKEN"] == [wall]
    assert status == 1


def test_the_screen_is_not_loaded_below_the_tui() -> None:
    """Importing every other room at run time brings in neither Textual nor Rich."""
    below = [_name(path) for path in rooms(*ENGINE, "store", "workbench")]
    outcome = run(sys.executable, "-c", LOAD, *below)
    assert outcome.returncode == 0, outcome.stdout
    assert outcome.stdout.strip() == ""


def test_the_loading_check_sees_the_screen() -> None:
    """The check above would notice a room that reached for the screen."""
    assert run(sys.executable, "-c", LOAD, "textual").stdout.split() == ["rich", "textual"]


@pytest.mark.parametrize("flag", ["--version", "--help"])
def test_a_plain_answer_loads_nothing_heavy(flag: str) -> None:
    """The version and the help come without waiting for Textual, Rich or pydantic."""
    outcome = run(sys.executable, "-X", "importtime", "-m", "benchmate", flag)
    loaded = {line.split("|")[-1].strip() for line in outcome.stdout.splitlines() if "|" in line}
    assert outcome.returncode == 0, outcome.stdout
    assert "benchmate" in loaded
    assert not loaded & {"textual", "rich", "pydantic"}


def _lint(root: Path) -> tuple[int, dict[str, str]]:
    """The linter's exit code, and its verdict on each contract by name."""
    outcome = run(sys.executable, "-c", LINT, "--no-logo", "--no-cache", cwd=root)
    verdicts = re.findall(r"^(.+) (KEPT|BROKEN)$", outcome.stdout, re.MULTILINE)
    assert verdicts, outcome.stdout
    return outcome.returncode, dict(verdicts)


def _plant(path: Path, text: str) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, "utf-8")


def _name(path: PurePosixPath) -> str:
    return ".".join(path.with_suffix("").parts).removesuffix(".__init__")
