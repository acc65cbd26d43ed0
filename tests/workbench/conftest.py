"""A bench on a working copy of the demo, with a clock that goes by minutes."""

import shutil
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from benchmate.store.keeper import Keeper
from benchmate.workbench.bench import Bench

DEMO = Path(__file__).parents[1] / "projects" / "four-posts"
SHED = Path(__file__).parents[2] / "projects" / "orchard-tool-shed"


@pytest.fixture
def demo(tmp_path: Path) -> Path:
    """A copy of the demo project, free to change."""
    return Path(shutil.copytree(DEMO, tmp_path / "four-posts"))


@pytest.fixture
def clock() -> Callable[[], datetime]:
    """A clock that moves on a minute each time it is read."""
    times = iter(datetime(2026, 3, 2, 8, tzinfo=UTC) + timedelta(minutes=n) for n in range(10_000))
    return lambda: next(times)


@pytest.fixture
def bench(demo: Path, clock: Callable[[], datetime]) -> Iterator[Bench]:
    """The demo open for work."""
    opened = Bench(Keeper.open(demo), clock)
    yield opened
    opened.close()


@pytest.fixture
def shed(tmp_path: Path) -> Iterator[Bench]:
    """The tool shed that ships, a working copy open for work."""
    opened = Bench(Keeper.open(Path(shutil.copytree(SHED, tmp_path / "shed"))))
    yield opened
    opened.close()
