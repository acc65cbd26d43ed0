"""The page that every printed sheet stands on."""

from html.parser import HTMLParser

import pytest

from benchmate.sheets.names import MARK
from benchmate.sheets.page import PAPERS, foot, page, said
from benchmate.sheets.sheet import CAUTION, Issue
from tests.tui.nasty import NASTY

ISSUE = Issue(project="Shed <1>", made="2026-03-02 17:30", as_of="2026-03-02 08:15")


class Reader(HTMLParser):
    """Gathers the tags and the text of a page."""

    def __init__(self) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.text = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Remember a tag and what it would fetch."""
        self.tags.append(tag)
        assert not {"src", "href", "onload", "onclick"} & {name for name, _ in attrs}

    def handle_data(self, data: str) -> None:
        """Remember a text."""
        self.text += data


@pytest.mark.parametrize("text", NASTY)
def test_a_name_is_never_markup(text: str) -> None:
    """It is read back as the text it was, in a page that fetches and runs nothing."""
    reader = Reader()
    reader.feed(f"<p>{said(text)}</p>")
    assert set(reader.tags) <= {"p", "var"}
    assert reader.text.split() == text.split()


def test_a_script_is_only_words() -> None:
    """What looks like a tag is told as it is written."""
    assert said("<script>alert(1)</script>") == "&lt;script&gt;alert(1)&lt;/script&gt;"


def test_a_figure_is_kept_whole() -> None:
    """Half a figure is a wrong figure."""
    assert said("at 7' 11-1/2\" from") == "at <var>7' 11-1/2\"</var> from"


@pytest.mark.parametrize(
    ("paper", "size"), [("", ""), ("a4", "size:A4;"), ("letter", "size:letter;")]
)
def test_one_style_serves_both_papers(paper: str, size: str) -> None:
    """With no paper named the page takes what the printer holds."""
    made = page("Post", "<p>x</p>\n", paper)
    assert f"@page{{{size}margin:" in made
    assert made.startswith(f"<!DOCTYPE html><!-- {MARK} -->\n")
    for outside in ("http:", "https:", "url(", "@import", "<script", "<link"):
        assert outside not in made
    assert paper in PAPERS


def test_an_unknown_paper_is_refused() -> None:
    """Never a page of some other size."""
    with pytest.raises(KeyError):
        page("Post", "", "foolscap")


def test_the_foot_says_how_old_and_what_for() -> None:
    """Escaped like all else."""
    made = foot(ISSUE)
    assert "Shed &lt;1&gt;" in made
    assert "figures as of 2026-03-02 08:15: look again if a size was typed since." in made
    assert CAUTION in made
