import pytest

from benchmate.store.document import Document
from benchmate.store.project_names import DEEPEST, check_names, known_names, names_sound
from benchmate.store.project_parts import read_parts
from benchmate.store.syntax import read_document
from tests.store.samples import HEAD


def checked(text: str) -> Document:
    """A project file with this text below its head, its names checked."""
    document = read_document("project.toml", (HEAD + text).encode())
    check_names(document, read_parts(document))
    return document


def told(document: Document) -> list[tuple[str, str]]:
    """The keys and messages of the problems noted."""
    return [(problem.key, problem.message) for problem in document.problems]


def chain(names: list[int]) -> str:
    """Levels that each stand an inch above the next, the last at a figure."""
    last = max(names)
    rows = (f'l{n} = "{f"l{n + 1} + 1" if n < last else 8}"\n' for n in names)
    return "[levels]\n" + "".join(rows)


def test_names_may_be_made_of_one_another() -> None:
    """Lengths, levels and both sides of a section, in any order."""
    document = checked(
        '[levels]\n"floor top" = "bearing + joist depth + deck - joist width"\nbearing = "8"\n'
        '[lengths]\ndeck = "1-1/2"\n[sections]\njoist = "6 x 2"\n'
    )
    assert not document.problems
    assert names_sound(document)
    assert list(known_names(document)) == [
        "deck",
        "floor top",
        "bearing",
        "joist depth",
        "joist width",
    ]


def test_a_bad_value_does_not_make_its_name_unknown() -> None:
    """Only the value itself is noted, for lengths and sections alike."""
    document = checked(
        '[lengths]\ndeck = "7 x"\ngirt = "deck + joist depth"\n[sections]\njoist = "6"\n'
    )
    assert [key for key, _ in told(document)] == ["lengths.deck", "sections.joist"]


def test_an_unknown_name_is_told_once_for_each_sum() -> None:
    """However often it stands in it."""
    document = checked('[lengths]\ndeck = "plank + plank"\n')
    assert told(document) == [
        (
            "lengths.deck",
            'there is no line, length, level or section size called "plank" (deck → plank)',
        )
    ]
    assert not names_sound(document)


def test_an_unknown_name_is_told_with_all_that_leads_to_it() -> None:
    """So that a framer sees which level cannot be worked out for want of it."""
    names = 'joists = "sill + plank"\n"floor top" = "joists + 1"\nsill = "0"\n'
    ((where, message),) = told(checked(f"[levels]\n{names}"))
    assert where == "levels.joists"
    assert message.endswith('called "plank" (floor top → joists → plank)')


def test_a_circle_is_told_once_with_the_way_round() -> None:
    """Only the names that go round are shown, not those that lead there."""
    document = checked('[levels]\ntop = "a + 1"\na = "b + 1"\nb = "a + 1 + top"\n')
    assert [message for _, message in told(document)] == [
        "goes round in a circle: a → b → a",
        "goes round in a circle: top → a → b → top",
    ]


@pytest.mark.parametrize("order", [1, -1])
def test_a_chain_may_be_so_deep_and_no_deeper(order: int) -> None:
    """The most names in a row are read; one more is told, whichever way the file runs."""
    just = list(range(DEEPEST))[::order]
    assert not checked(chain(just)).problems
    deeper = list(range(DEEPEST + 1))[::order]
    (problem,) = checked(chain(deeper)).problems
    assert problem.key == "levels.l0"
    assert problem.message == f"leads through more than {DEEPEST} names"


@pytest.mark.parametrize("order", [1, -1])
def test_a_chain_of_any_length_does_not_stop_the_program(order: int) -> None:
    """Thousands of names in a row are told as too many."""
    assert "leads through more" in checked(chain(list(range(3000))[::order])).problems[0].message


def test_a_name_is_given_once_in_all_tables() -> None:
    """A length, a level and a side of a section share one set of names."""
    document = checked(
        '[lengths]\n"j depth" = "6"\n[levels]\n"j width" = "1"\n[sections]\nj = "6 x 2"\n'
    )
    assert told(document) == [
        ("sections.j", 'gives the name "j depth", which line 4 gives already'),
        ("sections.j", 'gives the name "j width", which line 6 gives already'),
    ]


@pytest.mark.parametrize("name", ["Deck", "2nd", "a  b", "a - b", "-", "déck", ""])
def test_a_name_that_no_sum_can_say_is_told(name: str) -> None:
    """Names are lower-case words of letters and digits, in each of the three tables."""
    document = checked(
        f'[lengths]\n"{name}" = "1"\n[levels]\n"{name} " = "1"\n[sections]\n" {name}" = "1 x 1"\n'
    )
    messages = [message for _, message in told(document)]
    assert messages.count("is not a name a sum can use") == 3


def test_lines_lengths_and_levels_share_one_set_of_names() -> None:
    """With both sides of inner sections: each may be made of any other."""
    document = checked(
        '[lines]\n"line 2" = "line 1 + bay + post inner width"\n"line 1" = "0"\n'
        '[lengths]\nbay = "rise + 8\'"\n[levels]\nrise = "line 1 + 1"\n'
        '[sections]\npost = "7 x 8"\n[inner]\npost = "6 x 7"\n'
    )
    assert not document.problems
    assert set(known_names(document)) == {
        *("line 1", "line 2", "bay", "rise"),
        *("post depth", "post width", "post inner depth", "post inner width"),
    }


@pytest.mark.parametrize("order", [("lines", "levels"), ("levels", "lines")])
def test_a_circle_through_lines_and_levels_is_told_with_the_way_round(
    order: tuple[str, str],
) -> None:
    """Whichever table stands first in the file."""
    tables = {
        "lines": '[lines]\n"line 1" = "floor top + 1"\n',
        "levels": '[levels]\n"floor top" = "bay - 1"\n',
    }
    text = "".join(tables[name] for name in order) + '[lengths]\nbay = "line 1 + 2"\n'
    ((key, message),) = told(checked(text))
    assert key == 'lines."line 1"'
    assert message == "goes round in a circle: line 1 → floor top → bay → line 1"


def test_an_unknown_name_in_a_line_is_told_with_the_nearest() -> None:
    """Inner sizes count as names."""
    document = checked(
        '[lines]\n"line 2" = "pst inner width"\n[sections]\npost = "7 x 8"\n'
        '[inner]\npost = "6 x 7"\n'
    )
    (problem,) = document.problems
    assert problem.key == 'lines."line 2"'
    assert problem.remedy == 'did you mean "post inner width"?'
    assert not names_sound(document)


def test_an_inner_section_is_that_of_a_section() -> None:
    """One of a class there is not is told, with the nearest or with what to do."""
    document = checked(
        '[sections]\npost = "7 x 8"\n[inner]\npsot = "6 x 7"\n[lengths]\nx = "psot inner depth"\n'
    )
    (problem,) = document.problems
    assert (problem.key, problem.message) == ("inner.psot", 'there is no section called "psot"')
    assert problem.remedy == 'did you mean "post"?'
    (alone,) = checked('[inner]\npost = "6 x 7"\n').problems
    assert alone.remedy == "give it under [sections] first"


def test_a_section_may_not_give_the_name_of_an_inner_size() -> None:
    """Two answers to one name."""
    document = checked(
        '[sections]\npost = "7 x 8"\n"post inner" = "5 x 5"\n[inner]\npost = "6 x 7"\n'
    )
    assert told(document) == [
        ("inner.post", 'gives the name "post inner depth", which line 5 gives already'),
        ("inner.post", 'gives the name "post inner width", which line 5 gives already'),
    ]
