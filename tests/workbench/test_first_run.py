"""The first start."""

from pathlib import Path

from benchmate.workbench.first_run import tour_due


def test_the_cards_are_due_once(tmp_path: Path) -> None:
    """Never shown twice."""
    environ = {"XDG_STATE_HOME": str(tmp_path)}
    assert [tour_due(environ) for _ in range(3)] == [True, False, False]


def test_where_nothing_can_be_remembered_they_are_not_shown(tmp_path: Path) -> None:
    """Or they would come at every start."""
    (tmp_path / "benchmate").write_text("in the way")
    assert not tour_due({"XDG_STATE_HOME": str(tmp_path)})
