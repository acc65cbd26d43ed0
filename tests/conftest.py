"""What every test stands on: the user's own settings sealed off, and repeatable properties."""

import os

import pytest
from hypothesis import settings

from benchmate.store.seen import TOUR, note_seen

settings.register_profile("bench", max_examples=30, deadline=None)
settings.register_profile("ci", settings.get_profile("bench"), derandomize=True)
settings.load_profile("ci" if "CI" in os.environ else "bench")


@pytest.fixture(autouse=True)
def _sealed(monkeypatch: pytest.MonkeyPatch, tmp_path_factory: pytest.TempPathFactory) -> None:
    """Point the user's folders at an empty one, and let the test choose its colours.

    He has seen the cards of the first start.
    """
    home = tmp_path_factory.mktemp("user")
    monkeypatch.setenv("XDG_CONFIG_HOME", str(home / "config"))
    monkeypatch.setenv("XDG_DATA_HOME", str(home / "data"))
    monkeypatch.setenv("XDG_STATE_HOME", str(home / "state"))
    note_seen(TOUR, os.environ)
    monkeypatch.delenv("NO_COLOR", raising=False)


WORKERS_A_CORE = 2
"""Tests of the screen sleep for half of their time, until an app has nothing left to do."""


def pytest_xdist_auto_num_workers() -> int:
    """Enough workers to keep every core busy."""
    return WORKERS_A_CORE * len(os.sched_getaffinity(0))
