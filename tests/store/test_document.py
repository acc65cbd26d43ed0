import pytest

from benchmate.store.document import Document, key_text
from benchmate.store.problem import MOST_SHOWN, ProjectError
from benchmate.store.syntax import read_document
from benchmate.store.toml_lines import Path

TEXT = b"""\
name = "Apple store"

[lengths]
"joist depth" = "6\\"x"
"""


@pytest.fixture
def document() -> Document:
    """A small document without problems."""
    return read_document("project.toml", TEXT)


@pytest.mark.parametrize(
    ("path", "text"),
    [
        ((), ""),
        (("timber", 1, "length"), "timber[2].length"),
        (("lengths", "joist depth"), 'lengths."joist depth"'),
        (("a b", 0, 2), '"a b"[1][3]'),
        (("",), '""'),
    ],
)
def test_a_path_is_written_as_the_framer_counts(path: Path, text: str) -> None:
    """From one, and in quotes where the file has quotes."""
    assert key_text(path) == text


def test_a_problem_is_noted_with_its_place(document: Document) -> None:
    """The line, the key, the line as written and the caret inside the value are filled in."""
    document.add(("lengths", "joist depth"), "odd", "mend it", 2)
    (problem,) = document.problems
    assert problem.text() == (
        'project.toml:4: lengths."joist depth": odd\n'
        '  "joist depth" = "6\\"x"\n'
        "                      ^\n"
        "  mend it"
    )


def test_a_problem_makes_what_holds_it_unsound(document: Document) -> None:
    """The value, its table and the whole document; not its neighbours."""
    document.add(("lengths", "joist depth"), "odd", "mend it")
    assert not document.sound(("lengths", "joist depth"))
    assert not document.sound(("lengths",))
    assert not document.sound(())
    assert document.sound(("name",))


def test_a_table_is_given_if_it_is_one(document: Document) -> None:
    """What is no table, or is not there, has no entries."""
    assert document.table("lengths") == {"joist depth": '6"x'}
    assert document.table("name") == {}
    assert document.table("levels") == {}


def test_a_sound_document_gives_what_was_read(document: Document) -> None:
    """Without problems, finishing hands the result on."""
    assert document.finish("read") == "read"


def test_problems_come_in_the_order_of_the_file(document: Document) -> None:
    """However they were found, they are told from the top down."""
    document.add(("lengths",), "second", "mend it")
    document.add(("name",), "first", "mend it")
    with pytest.raises(ProjectError) as caught:
        document.finish("read")
    assert [problem.message for problem in caught.value.problems] == ["first", "second"]


def test_the_nearest_word_is_looked_for_while_problems_are_few(document: Document) -> None:
    """A file with thousands of mistakes is told of them without a long wait."""
    assert document.nearest("deckk", ["deck"]) == 'did you mean "deck"?'
    for _ in range(4 * MOST_SHOWN):
        document.add(("name",), "odd", "mend it")
    assert document.nearest("deckk", ["deck"]) == 'write one of "deck"'
