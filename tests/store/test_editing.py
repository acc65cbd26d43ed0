import tomllib
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.store.editing import Draft
from benchmate.store.problem import KeepError
from benchmate.store.reading import parse_project
from benchmate.store.renaming import paths_of
from benchmate.store.toml_lines import Path
from tests.store.samples import PROJECTS

FOLDERS = sorted(path.parent.name for path in PROJECTS.glob("*/project.toml"))

TEXT = """\
format = 1            # of the file
name = 'Shed'

shop . trim = "1"     # dotted

# Names.
[lengths]
deck="1-1/4"\t# oak

[[timber]]
id = "a"
at = {east="0", up = "sill top"}  # its place

# the joint of a
[[joint]]
id = "j"
timber = "a"

  [joint.pegs]   # oak pegs
  count = 2

# the end
"""


@cache
def entries(name: str) -> tuple[Draft, tuple[Path, ...]]:
    """A project that ships, and the paths of its entries."""
    data = (PROJECTS / name / "project.toml").read_bytes()
    return Draft.of(data), tuple(path for path, _ in paths_of(parse_project(data)))


@st.composite
def entry(draw: st.DrawFn) -> tuple[Draft, Path, dict[str, Any]]:
    """Any entry of any project that ships, and what it says."""
    draft, paths = entries(draw(st.sampled_from(FOLDERS)))
    path = draw(st.sampled_from(paths))
    return draft, path, draft.value(path)


def differing(before: str, after: str) -> list[str]:
    """The lines that are not in both."""
    was, now = before.splitlines(), after.splitlines()
    return [line for line in now if line not in was] + [line for line in was if line not in now]


@given(entry(), st.data())
def test_a_value_changed_and_changed_back_leaves_no_trace(
    found: tuple[Draft, Path, dict[str, Any]], data: st.DataObject
) -> None:
    """And in between only its own line differs."""
    draft, path, stored = found
    key = data.draw(st.sampled_from([key for key, each in stored.items() if isinstance(each, str)]))
    there = draft.put((*path, key), "something else")
    assert there.put((*path, key), stored[key]).text == draft.text
    assert len(there.text.splitlines()) == len(draft.text.splitlines())
    pairs = zip(draft.text.splitlines(), there.text.splitlines(), strict=True)
    assert sum(one != other for one, other in pairs) == 1


@given(entry(), st.booleans())
def test_an_entry_added_and_dropped_leaves_no_trace(
    found: tuple[Draft, Path, dict[str, Any]], last: bool
) -> None:
    """Behind any other, or at the end of the file."""
    draft, path, stored = found
    there = draft.add(str(path[0]), stored | {"id": "new"}, None if last else path)
    assert there.value(there.added) == stored | {"id": "new"}
    assert there.drop(there.added).text == draft.text


@given(entry(), st.sampled_from(["housing", "zz"]))
def test_a_key_added_and_dropped_leaves_no_trace(
    found: tuple[Draft, Path, dict[str, Any]], key: str
) -> None:
    """In an entry, and within its braces."""
    draft, path, stored = found
    order = ("id", "family", "timber", "housing")
    if key not in stored:
        there = draft.put((*path, key), "1", order)
        assert there.drop((*path, key)).text == draft.text
    for name in (name for name, each in stored.items() if isinstance(each, dict)):
        there = draft.put((*path, name, "zz"), "1")
        assert there.drop((*path, name, "zz")).text == draft.text


@settings(max_examples=15)
@given(entry())
def test_a_dropped_entry_takes_nothing_else_along(
    found: tuple[Draft, Path, dict[str, Any]],
) -> None:
    """Every other entry says what it said, and no comment apart from it goes."""
    draft, path, _ = found
    after = draft.drop(path)
    rest = [each for place, each in enumerate(draft.data[str(path[0])]) if place != path[1]]
    assert after.data == draft.data | {str(path[0]): rest}
    gone = [line for line in draft.text.splitlines() if line not in after.text.splitlines()]
    assert sum(line.startswith("#") for line in gone) <= 2


@pytest.mark.parametrize("ends", ["\n", "\r\n"])
@pytest.mark.parametrize("mark", ["", "\ufeff"])
def test_all_ways_to_write_a_table_can_be_edited(ends: str, mark: str) -> None:
    """Under a header, in braces, dotted; with the line ends and the mark that the file has."""
    draft = Draft(mark + TEXT.replace("\n", ends))
    after = (
        draft.put(("shop", "least_wood"), "1/2")
        .put(("lengths", "bay"), "6'")
        .put(("timber", 0, "at", "north"), "line a", ("east", "north", "up"))
        .put(("joint", 0, "pegs", "size"), "1")
        .put(("note",), "two\nlines", ("format", "name", "note"))
    )
    assert after.text.startswith(f"{mark}format")
    assert after.text.count("\n") == after.text.count(ends)
    plain = after.text.replace(ends, "\n")
    assert 'shop.least_wood = "1/2"' in plain
    assert 'deck="1-1/4"\t# oak\nbay = "6\'"\n' in plain
    assert '{east="0", north = "line a", up = "sill top"}  # its place' in plain
    assert '  count = 2\n  size = "1"\n' in plain
    assert 'name = \'Shed\'\nnote = """\ntwo\nlines"""\n' in plain
    back = (
        after.drop(("shop", "least_wood"))
        .drop(("lengths", "bay"))
        .drop(("timber", 0, "at", "north"))
        .drop(("joint", 0, "pegs", "size"))
        .drop(("note",))
    )
    assert back.text == draft.text


def test_a_table_goes_with_its_own_comments() -> None:
    """And with the tables in it; the comment that stands apart stays."""
    after = Draft(TEXT).drop(("joint", 0))
    assert "the joint of a" not in after.text
    assert "oak pegs" not in after.text
    assert after.text.endswith("# its place\n\n# the end\n")
    pegs = Draft(TEXT).drop(("joint", 0, "pegs"))
    assert pegs.text.endswith('timber = "a"\n\n# the end\n')


def test_a_new_table_takes_its_place_among_those_of_the_head() -> None:
    """Behind those that come before it."""
    draft = Draft('format = 1\n\n[levels]\ntop = "0"\n\n[[timber]]\nid = "a"\n')
    after = draft.put(("lines", "line 1"), "0").put(("sections",), {"post": "7 x 7"})
    assert after.text == (
        'format = 1\n\n[lines]\n"line 1" = "0"\n\n[levels]\ntop = "0"\n\n'
        '[sections]\npost = "7 x 7"\n\n[[timber]]\nid = "a"\n'
    )


def test_a_last_line_that_does_not_end_stays_so() -> None:
    """Whatever is added behind it and taken out again."""
    draft = Draft('format = 1\n[[timber]]\nid = "a"')
    added = draft.add("timber", {"id": "b"}, ("timber", 0))
    assert added.drop(("timber", 1)).text == draft.text
    put = draft.put(("timber", 0, "name"), "A")
    assert put.drop(("timber", 0, "name")).text == draft.text
    assert Draft("").add("timber", {"id": "a"}, None).text == '[[timber]]\nid = "a"\n'


def test_a_key_is_renamed_in_its_place() -> None:
    """With its value, its comment and its spacing."""
    after = Draft(TEXT).rename(("lengths", "deck"), "deck board")
    assert '"deck board"="1-1/4"\t# oak\n' in after.text
    assert Draft(TEXT).rename(("shop", "trim"), "most").value(("shop", "most")) == "1"
    with pytest.raises(KeepError, match="in your editor"):
        Draft(TEXT).rename(("lengths", "bay"), "bent")


def test_many_values_change_at_once() -> None:
    """Each in its own quotes; one that is not there is refused."""
    draft = Draft(TEXT)
    after = draft.put_all(
        {("name",): "Barn", ("timber", 0, "at", "up"): "0", ("joint", 0, "id"): "k"}
    )
    assert differing(draft.text, after.text) == [
        "name = 'Barn'",
        'at = {east="0", up = "0"}  # its place',
        'id = "k"',
        "name = 'Shed'",
        'at = {east="0", up = "sill top"}  # its place',
        'id = "j"',
    ]
    with pytest.raises(KeepError):
        draft.put_all({("nothing",): "1"})


def test_only_what_differs_of_a_table_is_touched() -> None:
    """Keys that go, keys that come, keys that stay."""
    new = {"id": "a", "at": {"east": "0", "north": "0"}}
    after = Draft(TEXT).put(("timber", 0), new)
    assert 'at = {east="0", north = "0"}  # its place' in after.text
    assert Draft(TEXT).put(("timber", 0), Draft(TEXT).value(("timber", 0))).text == TEXT
    assert Draft(TEXT).value(("timber", 9)) is None


def test_what_cannot_be_edited_is_left_for_the_editor() -> None:
    """A list of tables in braces, and a table in place of which a text is to stand."""
    inline = Draft('format = 1\ntimber = [{ id = "a" }]\n')
    with pytest.raises(KeepError, match="cannot be changed from here; change it in your editor"):
        inline.add("timber", {"id": "b"}, None)
    with pytest.raises(KeepError):
        Draft(TEXT).put(("joint", 0, "pegs"), "none")
    assert inline.put(("timber", 0, "id"), "c").data == tomllib.loads(
        'format = 1\ntimber = [{ id = "c" }]\n'
    )
    assert Draft(TEXT).drop(("timber", 0, "nothing")).text == TEXT
