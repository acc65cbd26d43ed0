import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest
import tomli_w
from hypothesis import given
from hypothesis import strategies as st

from benchmate.store import toml_lines
from benchmate.store.toml_lines import Places

VALID = sorted((Path(__file__).parent / "toml_cases/valid").rglob("*.toml"))

TEXT = r'''name = "shed" # the name
shop . trim = "1"
"joist depth" = '6'
'\' = "back\\slash \"and\" \u00e9t\U0001f332!"

[[timber]]
id = "a"
marks = [ # several
  "1", ["2", """3
  ]"""],
]

[timber.extra]
why = """
tall"""

[[timber]]
id = "b"
stop = { end = "foot", at = { far = "9" }, none = {} }
on = 2026-05-04 09:30:00
'''


def leaves(value: object, path: toml_lines.Path = ()) -> Iterator[tuple[toml_lines.Path, object]]:
    """Everything in a parsed document with its path."""
    if isinstance(value, dict):
        for key, each in value.items():
            yield (*path, key), each
            yield from leaves(each, (*path, key))
    elif isinstance(value, list):
        for place, each in enumerate(value):
            yield (*path, place), each
            yield from leaves(each, (*path, place))


@pytest.mark.parametrize(
    ("path", "line"),
    [
        (("name",), 1),
        (("shop",), 2),
        (("shop", "trim"), 2),
        (("joist depth",), 3),
        (("\\",), 4),
        (("timber",), 6),
        (("timber", 0), 6),
        (("timber", 0, "id"), 7),
        (("timber", 0, "marks"), 8),
        (("timber", 0, "marks", 1), 9),
        (("timber", 0, "marks", 1, 1), 9),
        (("timber", 0, "extra"), 13),
        (("timber", 0, "extra", "why"), 14),
        (("timber", 1), 17),
        (("timber", 1, "stop", "at", "far"), 19),
        (("timber", 1, "on"), 20),
    ],
)
def test_each_key_has_its_line(path: toml_lines.Path, line: int) -> None:
    """Tables, lists of tables, dotted and quoted keys, values over several lines: all are found."""
    assert Places(TEXT).line(path) == line


@pytest.mark.parametrize(
    ("path", "line"), [(("timber", 1, "length"), 17), (("shop", "x", 3), 2), (("z",), 1)]
)
def test_what_is_missing_belongs_where_it_would_stand(path: toml_lines.Path, line: int) -> None:
    """A key that is not written has the line of what it is missing from."""
    assert Places(TEXT).line(path) == line


def test_a_line_is_given_as_written() -> None:
    """Comments and all, first and last, without the end of the line."""
    places = Places(TEXT)
    assert places.line_text(1) == 'name = "shed" # the name'
    assert places.line_text(20) == "on = 2026-05-04 09:30:00"
    assert places.line_text(21) == ""


@pytest.mark.parametrize(
    ("path", "character", "shown"),
    [
        (("name",), 0, "s"),
        (("name",), 4, '"'),
        (("joist depth",), 0, "6"),
        (("\\",), 4, "\\"),
        (("\\",), 5, "s"),
        (("\\",), 11, "\\"),
        (("\\",), 12, "a"),
        (("\\",), 18, "t"),
        (("\\",), 20, "!"),
        (("timber", 1, "stop", "at", "far"), 0, "9"),
    ],
)
def test_a_character_of_a_text_is_found(path: toml_lines.Path, character: int, shown: str) -> None:
    """Escapes count as the one character they stand for, and the end is the closing quote."""
    places = Places(TEXT)
    found = places.inside(path, character)
    assert found is not None
    line, column = found
    assert places.line_text(line)[column] == shown


@pytest.mark.parametrize(
    "path", [("timber", 0, "extra", "why"), ("timber", 1, "on"), ("timber",), ("z",)]
)
def test_other_values_have_no_column(path: toml_lines.Path) -> None:
    """A text over several lines, a date, a table and what is missing get no caret."""
    assert Places(TEXT).inside(path, 1) is None


@pytest.mark.parametrize("case", VALID, ids=lambda case: f"{case.parent.name}-{case.stem}")
def test_it_finds_what_the_standard_reader_finds(case: Path) -> None:
    """For every well-formed document the paths are those of the data, and no others."""
    text = case.read_bytes().decode("utf-8-sig").replace("\r\n", "\n")
    found = {path for path, _ in leaves(tomllib.loads(text))}
    assert set(Places(text)._keys) == found


WORDS = st.text(st.characters(exclude_categories=["Cs"]), max_size=8)
DATA = st.dictionaries(
    WORDS,
    st.recursive(
        st.one_of(WORDS, st.integers(-9, 9), st.booleans()),
        lambda inner: st.one_of(
            st.lists(inner, max_size=3), st.dictionaries(WORDS, inner, max_size=3)
        ),
        max_leaves=12,
    ),
    max_size=4,
)


@given(DATA)
def test_every_text_starts_where_it_is_said_to(data: dict[str, object]) -> None:
    """Law: the first character of a text value, unescaped, is the value's own first character."""
    text = tomli_w.dumps(data)
    places = Places(text)
    for path, value in leaves(tomllib.loads(text)):
        if isinstance(value, str) and value[:1].isalpha():
            found = places.inside(path, 0)
            assert found is not None
            assert places.line_text(found[0])[found[1]] == value[0]


def test_headers_and_pairs_are_told_in_order() -> None:
    """Each with the path that it stands for, and a pair with where its value ends."""
    found = toml_lines.written(TEXT)
    assert [header.path for header in found.headers] == [
        ("timber", 0),
        ("timber", 0, "extra"),
        ("timber", 1),
    ]
    pairs = {pair.path: pair for pair in found.pairs}
    trim = pairs["shop", "trim"]
    assert trim.base == ()
    assert TEXT[trim.start : trim.end] == 'shop . trim = "1"'
    assert slice(*toml_lines.last_key(TEXT, trim)) == slice(trim.start + 7, trim.start + 11)
    assert pairs["timber", 1, "stop", "at", "far"].base == ("timber", 1, "stop", "at")
    on = pairs["timber", 1, "on"]
    assert TEXT[on.value : on.end] == "2026-05-04 09:30:00"
    start, end = found.items["timber", 0, "marks", 1]
    assert TEXT[start:end] == '["2", """3\n  ]"""]'
