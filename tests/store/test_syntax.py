import pytest

from benchmate.store.problem import ProjectError
from benchmate.store.syntax import read_document


def said_of(data: bytes) -> str:
    """What is said of bytes that are no TOML."""
    with pytest.raises(ProjectError) as caught:
        read_document("project.toml", data)
    return str(caught.value)


def test_a_well_formed_file_is_its_data() -> None:
    """A byte order mark and Windows line ends are no trouble."""
    document = read_document("project.toml", b'\xef\xbb\xbfname = "shed"\r\nformat = 1\r\n')
    assert document.data == {"name": "shed", "format": 1}
    assert document.places.line(("format",)) == 2


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("name\n", "project.toml:1: a key without a value\n  name\n      ^\n"),
        ("a = 1\n\nb = 'x", "project.toml:3: a text that does not end\n  b = 'x\n        ^\n"),
        ('a = """x\n', 'project.toml:1: a text that does not end\n  a = """x\n          ^\n'),
        ('a = "4-3/4""', "project.toml:1: something after the end of a value\n"),
        ("a = 4-3/4", "project.toml:1: something after the end of a value\n"),
        ("a = post", "project.toml:1: a value that cannot be read\n"),
        ('a = "\\q"', "project.toml:1: a backslash that stands for nothing\n"),
        ('a = "\\uzzzz"', "project.toml:1: a backslash that stands for nothing\n"),
        ("a = [1\n\n", "project.toml:1: a list that does not end\n  a = [1\n        ^\n"),
        ("a = {b=1", "project.toml:1: a table that does not end\n"),
        ("a = {b=1,b=2}", "project.toml:1: a key that is given twice\n"),
        ("a = 1\na = 2", "project.toml:2: a key that is given twice\n"),
        ("[a]\n[a]", "project.toml:2: a table that is given twice\n"),
        ("[a", "project.toml:1: a heading that does not end\n"),
        ("= 1", "project.toml:1: something that is not TOML\n"),
        ("a = '\x00'", "project.toml:1: a character that may not stand here\n"),
        ("a = 2026-02-30", "project.toml:1: a day or time that is not in the calendar\n"),
    ],
)
def test_a_slip_in_writing_is_told_in_plain_words(text: str, said: str) -> None:
    """The place of the slip and its kind, in words for people who do not know TOML."""
    assert said_of(text.encode()).startswith(said)


def test_text_in_another_encoding_is_told_with_its_place() -> None:
    """The line is shown up to the first character that cannot be read."""
    assert said_of(b"a = 1\nb = 'caf\xe9'") == (
        "project.toml:2: is not UTF-8 text from here on\n"
        "  b = 'caf\N{REPLACEMENT CHARACTER}\n"
        "          ^\n"
        "  save it as UTF-8 in your editor"
    )


@pytest.mark.parametrize("text", ["a = " + "[" * 20_000, "a = " + "[" * 480 + "]" * 480])
def test_lists_within_lists_do_not_stop_the_program(text: str) -> None:
    """However deep, the file is refused or read."""
    try:
        read_document("project.toml", text.encode())
    except ProjectError as error:
        assert "too deep" in str(error)  # noqa: PT017 - being read is as good


def test_a_number_too_long_is_told() -> None:
    """A number of thousands of digits is refused as such."""
    assert said_of(b"a = " + b"9" * 5000) == (
        "project.toml: holds a number too long to be read\n  take it out"
    )
