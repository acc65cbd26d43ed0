"""A frame being set out."""

import pytest

from benchmate.model.findings import Severity
from benchmate.store.problem import Problem, ProjectError
from benchmate.workbench import drafting
from benchmate.workbench.drafting import counts, draft, findings, totals

SMALL = {"bays": "1", "length": "10'", "roof": "none", "braces": "none"}


def test_answers_make_a_frame_that_is_counted_and_checked() -> None:
    """Members by kind, in the order of the file."""
    made = draft(SMALL)
    assert made.frame is not None
    assert counts(made.frame) == "4 sills, 4 posts, 2 plates, 2 ties"
    assert totals(made.frame) == "12 timbers, 16 joints"
    assert findings(made.frame) == ()


def test_an_answer_that_cannot_be_makes_none() -> None:
    """Nor any text to be written."""
    made = draft(SMALL | {"bays": "0"})
    assert (made.frame, made.text, made.problem) == (None, "", "")


def test_what_the_checks_find_is_told_before_anything_is_made() -> None:
    """A tie's tenon that comes near the brace's beside it; the worst first, each sentence once."""
    made = draft({"tie drop": "26", "tie tenon": "5", "bays": "1", "length": "10'"})
    assert made.frame is not None
    found = findings(made.frame)
    assert any(each.code in ("little-wood-between", "cuts-meet") for each in found)
    assert len({each.message for each in found}) == len(found)
    assert sorted(found, key=lambda each: -each.severity) == list(found)
    assert all(each.severity is Severity.LOOK for each in found)


def test_a_text_that_is_refused_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    """A fault of the program's own must not come up as a traceback."""

    def refuse(_data: bytes) -> None:
        told = Problem(
            file="project.toml", line=3, key="a", excerpt="", message="is bad", remedy="mend it"
        )
        raise ProjectError((told,))

    monkeypatch.setattr(drafting, "parse_project", refuse)
    made = draft(SMALL)
    assert made.frame is None
    assert "project.toml:3: a: is bad" in made.problem
