from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.model.project import Project
from benchmate.store.editing import Draft
from benchmate.store.reading import parse_project
from benchmate.store.renaming import paths_of, sums_of, users_of, with_ids, with_name
from tests.store.samples import PROJECTS

FOLDERS = sorted(path.parent.name for path in PROJECTS.glob("*/project.toml"))
TABLES = ("lines", "levels", "lengths", "sections")


@cache
def shipped(name: str) -> tuple[Draft, Project]:
    """A project that ships, as text and as read."""
    data = (PROJECTS / name / "project.toml").read_bytes()
    return Draft.of(data), parse_project(data)


@pytest.mark.parametrize("name", FOLDERS)
def test_every_entry_has_its_path(name: str) -> None:
    """The n-th of its table."""
    draft, project = shipped(name)
    found = tuple(paths_of(project))
    assert len(found) == len(project.timbers) + len(project.works)
    assert all(draft.value((*path, "id")) == record.id for path, record in found)


@pytest.mark.parametrize("name", FOLDERS)
def test_all_ids_can_be_changed_and_changed_back(name: str) -> None:
    """Wherever they are named: the project is the same but for them."""
    draft, project = shipped(name)
    timbers = {timber.id: f"{timber.id}-x" for timber in project.timbers}
    works = {work.id: f"{work.id}-y" for work in project.works}
    there = with_ids(draft, project, timbers, works)
    after = parse_project(there.text.encode())
    assert [timber.id for timber in after.timbers] == list(timbers.values())
    named = [set(work.timbers().values()) for work in after.works]
    assert named == [{timbers[each] for each in work.timbers().values()} for work in project.works]
    assert [work.meets for work in after.works] == [
        tuple(works[each] for each in work.meets) for work in project.works
    ]
    back = with_ids(
        there, after, {new: old for old, new in timbers.items()}, {n: o for o, n in works.items()}
    )
    assert back.text == draft.text


@settings(max_examples=12)
@given(st.sampled_from(FOLDERS), st.data())
def test_a_name_renamed_and_renamed_back_leaves_no_trace(name: str, data: st.DataObject) -> None:
    """Sums and timbers that use it follow, and come to what they came to."""
    draft, project = shipped(name)
    names = [(table, each) for table in TABLES for each in getattr(project, table)]
    table, old = data.draw(st.sampled_from(names))
    there = with_name(draft, project, table, old, "quite another")
    after = parse_project(there.text.encode())
    assert old not in getattr(after, table)
    assert users_of(after, table, "quite another") == tuple(
        ("inner", "quite another") if path == ("inner", old) else path
        for path in users_of(project, table, old)
    )
    assert with_name(there, after, table, "quite another", old).text == draft.text


def test_what_uses_a_name_is_known() -> None:
    """Sums, timbers of a section, and the inner section of one."""
    _, shed = shipped("orchard-tool-shed")
    assert users_of(shed, "lengths", "bench top") == (("chamfer", 1, "near_stop", "distance"),)
    assert users_of(shed, "levels", "joist top")[0] == ("levels", "floor top")
    assert ("timber", 5, "section") in users_of(shed, "sections", "post")
    assert ("lines", "line 3") in users_of(shed, "sections", "post")
    _, store = shipped("hillside-wood-store")
    assert ("inner", "post") in users_of(store, "sections", "post")
    assert users_of(store, "inner", "post")
    assert dict(sums_of(shed))["lines", "line 2"].names() == ("line 1", "bay")
