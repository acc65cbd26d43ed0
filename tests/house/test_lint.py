"""The code is held to every rule of the linter, the formatter and the type checker."""

import sys

import pytest

from tests.house.tree import run


@pytest.mark.parametrize(
    "check",
    [
        pytest.param(("mypy",), id="types"),
        pytest.param(("ruff", "check", "benchmate", "tests"), id="lint"),
        pytest.param(("ruff", "format", "--diff", "benchmate", "tests"), id="format"),
    ],
)
def test_the_code_is_clean(check: tuple[str, ...]) -> None:
    """No tool has anything to say about the package or its tests."""
    outcome = run(sys.executable, "-m", *check)
    if outcome.returncode:
        pytest.fail(outcome.stdout, pytrace=False)
