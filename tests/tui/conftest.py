"""A desk on a working copy of the demo."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from benchmate.store.keeper import Keeper
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.workbench.bench import Bench

DEMO = Path(__file__).parents[1] / "projects" / "four-posts"


@pytest.fixture
def demo(tmp_path: Path) -> Path:
    """A copy of the demo project, free to change."""
    return Path(shutil.copytree(DEMO, tmp_path / "shed"))


@pytest.fixture
def desk(demo: Path) -> Iterator[Desk]:
    """The demo laid on a desk."""
    bench = Bench(Keeper.open(demo))
    yield Desk(bench, UNICODE)
    bench.close()
