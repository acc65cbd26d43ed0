"""The README tells the truth: its commands, its keys, its links and its newest heading."""

import re
import shutil
from pathlib import Path
from subprocess import CompletedProcess

import pytest

import benchmate
from benchmate.tui.keys import KEYS
from tests.house.tree import ROOT, run

README = (ROOT / "README.md").read_text("utf-8")

TESTING = (
    "python3 -m venv .venv-test && .venv-test/bin/pip install -q -e '.[test]'"
    " && .venv-test/bin/pytest"
)


def test_the_job_comes_first() -> None:
    """Right under the title stands a paragraph that says what the program is for."""
    title, blank, job = README.split("\n")[:3]
    assert title == "# benchmate"
    assert blank == ""
    assert re.match(r"\w.{80}", job)


def test_one_command_opens_the_demo() -> None:
    """Under "Try it" stands one line that sets everything up and starts the program."""
    command = _command("Try it")
    assert "pip install" in command
    assert re.search(r"&& \S*benchmate\b", command)
    assert run("bash", "-n", "-c", command).returncode == 0


def test_one_command_runs_the_tests() -> None:
    """Under "Run the tests" stands one line that sets everything up and runs every test."""
    assert _command("Run the tests") == TESTING


def test_ci_runs_the_test_command_of_the_readme(tmp_path: Path) -> None:
    """The gate clears the old environment and runs what the README says, from the root."""
    outcome = _gate(tmp_path, README.replace(TESTING, "ls -a && false"))
    assert outcome.stdout.split() == ["ls", "-a", "&&", "false", ".", "..", ".ci", "README.md"]
    assert outcome.returncode == 1


def test_ci_fails_where_the_readme_has_no_test_command(tmp_path: Path) -> None:
    """A gate that finds nothing to run is closed."""
    assert _gate(tmp_path, README.replace("## Run the tests", "## Prove it")).returncode == 1


def test_the_gate_can_be_started_by_name() -> None:
    """`.ci/run` is executable."""
    assert (ROOT / ".ci/run").stat().st_mode & 0o111 == 0o111


def test_the_keys_are_those_of_the_program() -> None:
    """The table of keys is the program's own, in its order."""
    head, rule, *rows = [line for line in _section("Keys") if line.startswith("|")]
    assert _cells(head) == ("Key", "What it does")
    assert set(rule) <= set("| -")
    assert [_cells(row) for row in rows] == [(key.shown, key.help) for key in KEYS]


def test_the_newest_change_is_this_version() -> None:
    """The first heading under "What changed" is the version of the package."""
    headings = [line for line in _section("What changed") if line.startswith("### ")]
    assert headings[0] == f"### {benchmate.__version__}"


def test_every_link_leads_somewhere() -> None:
    """Each picture and file that the README points at is in the tree."""
    targets = re.findall(r"\]\((?!https?:)([^)#]+)", README)
    missing = [target for target in targets if not (ROOT / target).exists()]
    assert not missing, "\n".join(missing)


@pytest.mark.parametrize(
    ("line", "cells"), [("| `a` | use `a` |", ("a", "use `a`")), (r"| \| | bar |", ("|", "bar"))]
)
def test_a_row_is_read_as_it_is_seen(line: str, cells: tuple[str, ...]) -> None:
    """A cell all in code is its text, and a bar with a backslash is a bar."""
    assert _cells(line) == cells


def _section(heading: str) -> list[str]:
    """The lines between a heading of the second rank and the next."""
    lines = README.splitlines()
    start = lines.index(f"## {heading}") + 1
    ends = (place for place, line in enumerate(lines) if place >= start and line.startswith("## "))
    return lines[start : next(ends, len(lines))]


def _command(heading: str) -> str:
    """The one line in the one fenced block of a section."""
    blocks = re.findall(r"^```(.*?)^```$", "\n".join(_section(heading)), re.MULTILINE | re.DOTALL)
    (block,) = blocks
    language, command, end = block.split("\n")
    assert (language, end) == ("sh", "")
    return str(command)


def _cells(row: str) -> tuple[str, ...]:
    """The cells of a row of a table, as a reader sees them."""
    cells = re.split(r"(?<!\\)\|", row.strip())[1:-1]
    bare = (re.sub(r"^`(.+)`$", r"\1", cell.strip()) for cell in cells)
    return tuple(cell.replace(r"\|", "|") for cell in bare)


def _gate(root: Path, readme: str) -> CompletedProcess[str]:
    """What the gate does, started from elsewhere, in a tree with a README and a stale environment.

    From elsewhere, so that a gate which forgot where it stands cannot run this very suite.
    """
    (root / ".ci").mkdir()
    (root / ".venv-test").mkdir()
    shutil.copy(ROOT / ".ci/run", root / ".ci/run")
    (root / "README.md").write_text(readme, "utf-8")
    return run("bash", str(root / ".ci/run"), cwd=Path("/"))
