import pytest

from benchmate.joinery import FAMILIES, family_of
from benchmate.model.project import Timber
from benchmate.store.reading import parse_project
from benchmate.store.tables import TIMBER_TABLE, WORK_TABLES, families_in, table_of
from tests.store.samples import STORE


def test_every_family_has_a_table() -> None:
    """The catalogue's families stand either among the timbers or in a table of work."""
    placed = [family for table in WORK_TABLES for family in families_in(table)]
    assert {family.name for family in placed} == {
        family.name for family in FAMILIES if family.record is not Timber
    }
    assert TIMBER_TABLE not in WORK_TABLES


def test_a_record_knows_its_family_and_table() -> None:
    """As it was read, so it is written."""
    project = parse_project(STORE.encode())
    assert [table_of(work) for work in project.works] == ["joint", "chamfer"]
    assert family_of(project.timbers[0]).table == TIMBER_TABLE


def test_a_stranger_has_no_family() -> None:
    """A record that the catalogue does not know is a mistake in the program."""
    project = parse_project(STORE.encode())
    with pytest.raises(KeyError, match="Project"):
        family_of(project)
