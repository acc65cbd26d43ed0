"""The names of a project."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.measure.length import Length
from benchmate.measure.section import read_section
from benchmate.measure.sums import Sum
from benchmate.model.project import Project
from benchmate.workbench.bench import Bench
from benchmate.workbench.names import NAME_TABLES, names_moved
from tests.builders import length


def test_every_name_is_told_as_written_and_as_it_comes_out(bench: Bench) -> None:
    """Table by table, in the order of the file, spelt as the framer spelt it."""
    names = {(each.table.table, each.name): each for each in bench.names()}
    assert [name for table, name in names if table == "levels"] == [
        "sill top",
        "joist bearing",
        "floor top",
    ]
    floor = names["levels", "floor top"]
    assert floor.written == "joist bearing + joist depth + deck"
    assert floor.worth == length("4-3/4")
    assert names["lengths", "shed length"].written == "12' 4"
    assert names["sections", "joist"].written == "5-1/2 x 3-1/2"
    assert names["sections", "joist"].worth == read_section("5-1/2 x 3-1/2")


def test_every_table_of_names_is_among_them() -> None:
    """A table of sums or sections that the project knows and a framer could not change is a gap."""
    known = {table.table for table in NAME_TABLES}
    assert known <= set(Project.model_fields)
    others = {"timbers", "works"}
    tables = {
        name
        for name, field in Project.model_fields.items()
        if "dict" in str(field.annotation) and name not in others
    }
    assert tables == known


def frame(**changes: dict[str, str]) -> Frame:
    """A project of names alone."""
    tables: dict[str, dict[str, str]] = {
        "lengths": {"deck": "1-1/4", "reveal": "7"},
        "levels": {"floor top": "6 + deck"},
        "sections": {"joist": "6 x 3"},
    }
    tables |= {table: {**tables[table], **texts} for table, texts in changes.items()}
    return Frame(Project.model_validate({"name": "Names", **tables}), {})


def test_what_follows_from_a_name_moves_with_it() -> None:
    """The name itself and those that follow, from what to what; the rest is not told."""
    moved = names_moved(frame(), frame(lengths={"deck": "2"}))
    assert [(each.table, each.name, each.before, each.after) for each in moved] == [
        ("levels", "floor top", length("7-1/4"), length("8")),
        ("lengths", "deck", length("1-1/4"), length("2")),
    ]


@pytest.mark.parametrize("text", ["1-1/4", "1 1/4", "reveal - 5-3/4"])
def test_a_name_written_otherwise_may_come_to_the_same(text: str) -> None:
    """Then nothing has moved."""
    assert names_moved(frame(), frame(lengths={"deck": text})) == ()


def test_a_section_moves_as_a_whole() -> None:
    """Both of its sides are told together."""
    (moved,) = names_moved(frame(), frame(sections={"joist": "6 x 3-1/2"}))
    assert (moved.before, moved.after) == (read_section("6 x 3"), read_section("6 x 3-1/2"))


def test_a_name_given_or_taken_away_is_no_move() -> None:
    """It has nothing to move from, or to."""
    more = frame(lengths={"rail": "3'"})
    assert names_moved(frame(), more) == names_moved(more, frame()) == ()


def test_one_project_is_not_compared_with_itself(monkeypatch: pytest.MonkeyPatch) -> None:
    """Real sizes move no name, so none is looked up."""
    project = frame().project

    def refuse(_frame: Frame, total: Sum) -> Length:
        pytest.fail(f"{total} was worked out")

    monkeypatch.setattr(Frame, "value", refuse)
    assert names_moved(Frame(project, {}), Frame(project, {})) == ()
