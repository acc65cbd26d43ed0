"""The tables of a project file as text."""

import tomllib

from benchmate.outset.tables import Cell, cell, comment, entry, joint, key, names, timber


def test_what_is_written_reads_back() -> None:
    """Quotes and backslashes in a text, a table in a table, and nothing for what is None."""
    cells: dict[str, Cell | None] = {
        "name": 'a "b" \\',
        "count": 2,
        "at": {"east": "line 1", "rest": None},
        "gone": None,
    }
    text = "\n".join(entry("timber", cells))
    read = tomllib.loads(text)["timber"][0]
    assert read == {"name": 'a "b" \\', "count": 2, "at": {"east": "line 1"}}


def test_keys_are_quoted_only_where_they_must_be() -> None:
    """A name of two words is."""
    assert (key("bay"), key("line 1")) == ("bay", '"line 1"')


def test_comments_stand_in_a_column() -> None:
    """Behind every name, never run into its value."""
    heading, short, long, blank = names(
        "lengths", (("bay", "10'", "line to line"), ("a name " * 8, "1", "far out"))
    )
    assert (heading, blank) == ("[lengths]", "")
    assert short.index("#") == 49
    assert '"  # far out' in long
    assert list(comment("one", "two")) == ["# one", "# two", ""]


def test_a_timber_has_the_section_of_its_kind() -> None:
    """Unless another is given."""
    lines = list(timber("post-sw", "SW post", "post", faces=("south", "west"), end="foot"))
    assert 'section = "post"' in lines
    assert not any(line.startswith("species") for line in lines)
    assert list(joint("a", "lap", timber="b"))[:3] == ["[[joint]]", 'id = "a"', 'family = "lap"']
    assert cell("x" * 3) == '"xxx"'
