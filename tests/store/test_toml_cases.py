"""A sample of the public corpus of TOML files, fed to both readers; see its README."""

from collections.abc import Callable
from pathlib import Path

import pytest

from benchmate.measure.reading import Unit
from benchmate.store.problem import ProjectError
from benchmate.store.reading import parse_progress, parse_project

CORPUS = Path(__file__).parent / "toml_cases"
CASES = sorted(path.relative_to(CORPUS).as_posix() for path in CORPUS.rglob("*.toml"))


def parse_post(data: bytes) -> object:
    """The bytes as the progress of a post."""
    return parse_progress(data, "post-sw", Unit.INCH)


@pytest.mark.parametrize("parse", [parse_project, parse_post])
@pytest.mark.parametrize("case", CASES)
def test_no_file_stops_the_program(case: str, parse: Callable[[bytes], object]) -> None:
    """TOML or not, a file that is no project is refused, and what is said of it can be shown."""
    with pytest.raises(ProjectError) as caught:
        parse((CORPUS / case).read_bytes())
    assert all(line.isprintable() for line in str(caught.value).split("\n"))
    assert all(problem.message for problem in caught.value.problems)


def test_both_kinds_are_there() -> None:
    """The sample holds files that are TOML and files that are not."""
    assert {case.split("/")[0] for case in CASES} == {"valid", "invalid"}
