import tomllib
from typing import NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.model.words import bad_character
from benchmate.store.problem import KeepError
from benchmate.store.rewording import reword, tables_of_texts

FILE = b"""\
# levels first
levels . "floor top"  =  'joist top + deck'   # by hand

[lengths] # sums
deck="1-1/4"\t# oak
"shed length" = "12' 4\\""
wide = \"\"\"
1\"\"\"
count = 3

[sections]
post = '7" x 7"'
"""


@pytest.mark.parametrize(
    ("table", "key", "new", "old", "written"),
    [
        ("lengths", "deck", "1-1/2", "1-1/4", b'deck="1-1/2"\t# oak'),
        ("lengths", "shed length", "13'\"", "12' 4\"", b'"shed length" = "13\'\\""\n'),
        ("levels", "floor top", "0", "joist top + deck", b"=  '0'   # by hand"),
        ("sections", "post", '8" x 8"', '7" x 7"', b"post = '8\" x 8\"'\n"),
        ("sections", "post", "1' x 8\"", '7" x 7"', b'post = "1\' x 8\\""\n'),
        ("lengths", "deck", "a\\b", "1-1/4", b'deck="a\\\\b"\t# oak'),
    ],
)
def test_only_the_value_is_reworded(
    table: str, key: str, new: str, old: str, written: bytes
) -> None:
    """Its quotes stay if they can hold the new text; comments, spacing and order do not move."""
    reworded = reword(FILE, table, key, new)
    assert reworded.old == old
    assert written in reworded.data
    assert tomllib.loads(reworded.data.decode())[table][key] == new
    differing = [
        (before, after)
        for before, after in zip(FILE.splitlines(), reworded.data.splitlines(), strict=True)
        if before != after
    ]
    assert len(differing) == 1


def test_rewording_back_gives_the_same_bytes() -> None:
    """What is undone leaves no trace."""
    there = reword(FILE, "levels", "floor top", "4-3/4")
    assert reword(there.data, "levels", "floor top", there.old).data == FILE


@pytest.mark.parametrize(
    ("data", "told"),
    [
        (b"[levels]\n", "is not there"),
        (b"levels = 3\n", "is not there"),
        (b"[levels]\ntop = 3\n", "not written as one text"),
        (b'[levels]\ntop = """1"""\n', "not written as one text"),
        (b"[levels]\ntop = '''\n1'''\n", "not written as one text"),
        (b"[levels]\ntop.up = '1'\n", "not written as one text"),
        (b'[[levels]]\ntop = "1"\n', "is not there"),
    ],
)
def test_what_cannot_be_reworded_is_left_to_the_framer(data: bytes, told: str) -> None:
    """One clear refusal that says where, and to use an editor."""
    with pytest.raises(KeepError, match=told) as caught:
        reword(data, "levels", "top", "2")
    assert "levels.top" in str(caught.value)
    assert "in your editor" in caught.value.remedy


def test_a_control_character_is_refused() -> None:
    """No file of a framer's gets a byte that his editor cannot show."""
    with pytest.raises(KeepError, match="control character"):
        reword(FILE, "lengths", "deck", "1\x07")


def test_a_change_that_would_reach_further_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    """Should the wrong place ever be found, the file as read again tells, and nothing comes out."""
    monkeypatch.setattr("benchmate.store.rewording.Places.inside", lambda *_: (5, 6))
    with pytest.raises(KeepError, match="in your editor"):
        reword(FILE, "lengths", "shed length", "13'")


def test_a_place_that_is_no_text_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    """As above, where there are no quotes at the place found."""
    monkeypatch.setattr("benchmate.store.rewording.Places.inside", lambda *_: (5, 3))
    with pytest.raises(KeepError, match="in your editor"):
        reword(FILE, "lengths", "deck", "2")


def test_texts_are_told_as_written() -> None:
    """By table and key, what is no text left out."""
    assert tables_of_texts(b"\xef\xbb\xbf" + FILE.replace(b"\n", b"\r\n")) == {
        "levels": {"floor top": "joist top + deck"},
        "lengths": {"deck": "1-1/4", "shed length": "12' 4\"", "wide": "1"},
        "sections": {"post": '7" x 7"'},
    }


class Pieces(NamedTuple):
    """A file in three pieces, the middle one the token of `levels."floor top"`."""

    before: str
    token: str
    after: str


NAMES = ("deck", "floor top", "sill top", "9 x", 'say "top"', "back\\slash", "ünder")
SPACE = st.text(" \t", max_size=3)
WORDS = st.text(st.characters(exclude_categories=["Cc", "Cs", "Zl", "Zp"]), max_size=12)
PLAIN = WORDS.filter(lambda text: bad_character(text) is None)
COMMENT = PLAIN.map(lambda text: f"#{text}")
BLANK = st.one_of(SPACE, COMMENT, st.builds(lambda a, b: a + b, SPACE, COMMENT))


def basic(text: str) -> str:
    """A text as a TOML basic string."""
    escaped = text.replace("\\", "\\\\").replace('"', '\\"')
    return f'"{escaped}"'


def coded(text: str) -> str:
    """A text as a TOML basic string in which every character is an escape."""
    return '"' + "".join(f"\\U{ord(character):08x}" for character in text) + '"'


TOKEN = st.one_of(
    PLAIN.map(basic),
    st.text("top +1/4\"'", max_size=9).map(coded),
    PLAIN.filter(lambda text: "'" not in text).map(lambda text: f"'{text}'"),
)
KEY = st.sampled_from(['"floor top"', "'floor top'", '"floor\\u0020top"'])
TABLE = st.sampled_from(["levels", '"levels"', "'levels'"])


@st.composite
def others(draw: st.DrawFn) -> list[str]:
    """Lines of other keys, each once, among comments and blank lines."""
    names = draw(st.lists(st.sampled_from([n for n in NAMES if n != "floor top"]), unique=True))
    lines = []
    for name in names:
        lines.append(draw(BLANK))
        key, gap, token, tail = basic(name), draw(SPACE), draw(TOKEN), draw(SPACE)
        lines.append(f"{gap}{key}{tail}={gap}{token}{tail}{draw(st.just('') | COMMENT)}")
    return lines


@st.composite
def files(draw: st.DrawFn) -> Pieces:
    """A file with the table as a head and lines, as dotted keys, or written in one line."""
    style = draw(st.sampled_from(["head", "dotted", "inline"]))
    table, key, token, gap = draw(TABLE), draw(KEY), draw(TOKEN), draw(SPACE)
    top = [draw(BLANK), f"name{gap}={gap}{draw(TOKEN)}", draw(BLANK)]
    tail = [f"{gap}[lengths]", *draw(others()), draw(BLANK)]
    lines = draw(others())
    if style == "head":
        start = [*top, f"[{gap}{table}{gap}]", *lines, f"{gap}{key}{gap}={gap}"]
        after = [f"{gap}{draw(st.just('') | COMMENT)}", *tail]
    elif style == "dotted":
        start = [*top, f"{table}{gap}.{gap}{key}{gap}={gap}"]
        after = [f"{gap}{draw(st.just('') | COMMENT)}", *tail]
    else:
        pairs = "".join(f"{basic(name)} = '1', " for name in draw(st.sets(st.just("deck"))))
        start = [*top, f"{table}{gap}={gap}{{{gap}{pairs}{key}{gap}={gap}"]
        after = [f"{gap}}}{draw(st.just('') | COMMENT)}", *tail]
    end = draw(st.sampled_from(["\n", "\r\n"]))
    return Pieces(end.join(start), token, end.join(after))


@given(files(), PLAIN, st.sampled_from(["", "\ufeff"]))
def test_every_other_byte_stays(file: Pieces, new: str, mark: str) -> None:
    """Law: whatever the file looks like, only the bytes of that value change, and back again."""
    data = (mark + file.before + file.token + file.after).encode()
    reworded = reword(data, "levels", "floor top", new)
    text = reworded.data.decode()
    assert text.startswith(mark + file.before)
    assert text.endswith(file.after)
    token = text[len(mark + file.before) : len(text) - len(file.after)]
    assert tomllib.loads(f"x = {token}")["x"] == new
    assert token[0] == file.token[0] or "'" in new
    back = reword(reworded.data, "levels", "floor top", reworded.old).data
    assert tomllib.loads(back.decode("utf-8-sig").replace("\r\n", "\n")) == tomllib.loads(
        data.decode("utf-8-sig").replace("\r\n", "\n")
    )
