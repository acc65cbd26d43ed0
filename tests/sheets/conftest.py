"""Sheets of a small frame, with a fixed clock and files of a fixed age."""

import os
import shutil
import time
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from benchmate.sheets.sheet import TimberSheet
from benchmate.workbench.bench import Bench
from benchmate.workbench.opening import read_bench
from benchmate.workbench.sheets import timber_sheet

DEMO = Path(__file__).parents[1] / "projects" / "four-posts"

MADE = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)
"""When the sheets are made."""

CHANGED = datetime(2026, 3, 2, 8, 15, tzinfo=UTC).timestamp()
"""When every file of the project was last written."""


@pytest.fixture(autouse=True)
def _in_one_zone(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Local time is that of Greenwich."""
    monkeypatch.setenv("TZ", "UTC")
    time.tzset()
    yield
    monkeypatch.undo()
    time.tzset()


@pytest.fixture
def demo(tmp_path: Path) -> Path:
    """A copy of the project, free to change, every file of a fixed age."""
    copy = Path(shutil.copytree(DEMO, tmp_path / "four-posts"))
    for path in copy.rglob("*.toml"):
        os.utime(path, (CHANGED, CHANGED))
    return copy


@pytest.fixture
def bench(demo: Path) -> Bench:
    """The project open to be read."""
    return read_bench(demo)


@pytest.fixture
def sheet_of(demo: Path) -> Callable[[str], TimberSheet]:
    """Gives a timber's sheet, from the files as they are when it is asked for."""
    return lambda timber: timber_sheet(read_bench(demo), timber, MADE)


@pytest.fixture
def spoilt(demo: Path) -> Path:
    """The project with a stick of the SE post sawn so thin that its foot tenon lies in the air."""
    path = demo / "progress" / "post-se.toml"
    path.write_text(
        'format = 1\ntimber = "post-se"\n\n[measured.foot-tenon]\nfirst = "3"\n', "utf-8"
    )
    return demo
