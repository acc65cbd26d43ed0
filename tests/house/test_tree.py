"""The tree holds what a reader needs and nothing that was left lying about."""

import re
from pathlib import Path

from tests.house.tree import ROOT, files, ignored, matches, python

TOP_LEVEL = {"README.md", "DEVELOPERS.md", "pyproject.toml", "benchmate", "tests", "projects"}

ARTEFACTS = (".coverage*", "*.py[co]", "*.orig", "*.rej", "*.swp", "*~", ".DS_Store", "*.whl")

UNFINISHED = re.compile(
    r"\b(?:TODO|FIXME|XXX|NotImplementedError|xfail|importorskip|assert True)\b"
    r"|\b(?:pytest|unittest|mark)\.skip"
)


def test_only_the_agreed_names_stand_at_the_top() -> None:
    """Beside dotfiles, a newcomer meets two documents, one configuration and three folders."""
    top = {path.parts[0] for path in files()}
    assert {name for name in top if not name.startswith(".")} == TOP_LEVEL


def test_nothing_generated_is_kept() -> None:
    """No cache, build, coverage record or editor's leaving is part of the tree."""
    patterns = (*ignored(), *ARTEFACTS)
    strays = [str(path) for path in files() if matches(path, patterns)]
    assert not strays, "\n".join(strays)


def test_nothing_is_left_unfinished() -> None:
    """No module puts work off, and no test is let off."""
    left = [
        f"{path}:{number}: {line.strip()}"
        for path in python()
        if not (ROOT / path).samefile(__file__)
        for number, line in enumerate((ROOT / path).read_text("utf-8").splitlines(), 1)
        if UNFINISHED.search(line)
    ]
    assert not left, "\n".join(left)


def test_unfinished_work_is_recognised() -> None:
    """The marks of unfinished work are told from the trade's own words."""
    assert UNFINISHED.search("    # TODO: cheeks")
    assert UNFINISHED.search("@pytest.mark.skip(reason='later')")
    assert not UNFINISHED.search("return NotImplemented  # the framer may skip a step")


def test_without_git_the_ignored_names_are_left_out(tmp_path: Path) -> None:
    """An unpacked archive is listed as git would list it: by the names in `.gitignore`."""
    (tmp_path / ".gitignore").write_text("# built\n\ndist/\n*.egg-info/\n", "utf-8")
    for name in ("kept/post.py", "dist/post.whl", "benchmate.egg-info/PKG-INFO"):
        (tmp_path / name).parent.mkdir()
        (tmp_path / name).touch()
    assert [str(path) for path in files(tmp_path)] == [".gitignore", "kept/post.py"]
