from benchmate.store.toml_layout import MARK, Layout, plain

TEXT = """\
# the head
format = 1
# beside the head

# Posts.

# the first
# post
[[timber]]
id = "a"
# said of a

[[timber]]
id = "b"
# runs on
[timber.at]
up = "0"


[[timber]]
id = "c"
"""


def lines(span: tuple[int, int]) -> str:
    """The text of a span."""
    return TEXT[slice(*span)]


def test_a_table_has_the_comments_right_beside_it() -> None:
    """Those above it and below it, and the blank lines before; what stands apart stays."""
    layout = Layout(TEXT)
    first, second, at, third = layout.headers
    assert lines(layout.section(first)) == (
        '\n# the first\n# post\n[[timber]]\nid = "a"\n# said of a\n'
    )
    assert lines(layout.section(second)) == '\n[[timber]]\nid = "b"\n'
    assert lines(layout.section(at)) == '# runs on\n[timber.at]\nup = "0"\n'
    assert lines(layout.section(third)) == '\n\n[[timber]]\nid = "c"\n'


def test_an_entry_ends_with_the_tables_in_it() -> None:
    """And the head of the file with its last key and the comment below that."""
    layout = Layout(TEXT)
    assert TEXT[: layout.entry_finish(("timber", 1))].endswith('[timber.at]\nup = "0"\n')
    assert TEXT[: layout.finish(())] == "# the head\nformat = 1\n# beside the head\n"


def test_places_are_those_of_the_text_itself() -> None:
    """Whatever its lines end in, and with a mark at its head."""
    text = MARK + TEXT.replace("\n", "\r\n")
    assert len(plain(text)) == len(text)
    layout = Layout(text)
    pair = layout.pairs["timber", 1, "at", "up"]
    assert text[pair.start : pair.end] == 'up = "0"'
    assert layout.header(("timber", 2)) is not None
    assert layout.header(("joint", 0)) is None
