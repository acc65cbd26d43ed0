import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.store.toml_layout import Layout
from benchmate.store.toml_lists import reworded, without

TALL = """\
on = [
  "a",  # south
  "b",
  # north
  "c",
]
"""

ITEMS = st.lists(st.sampled_from("abcdef"), min_size=1, max_size=5, unique=True)


def put(text: str, new: list[str]) -> str:
    """The text with another list."""
    return reworded(text, Layout(text), ("on",), tomllib.loads(text)["on"], new)


@given(ITEMS, ITEMS, st.sampled_from(["on = [{}]\n", "on = [ {} ] # why\n", "on = [\n  {},\n]\n"]))
def test_any_list_can_become_any_other(old: list[str], new: list[str], shape: str) -> None:
    """And it reads as it should, with what stands behind it."""
    tall = "\n" in shape.strip()
    text = shape.format((",\n  " if tall else ", ").join(f'"{each}"' for each in old))
    after = put(text, new)
    assert tomllib.loads(after)["on"] == new
    assert after.endswith(text[text.index("]") :])


@given(ITEMS, st.integers(0, 5))
def test_an_item_put_in_and_taken_out_leaves_no_trace(items: list[str], at: int) -> None:
    """On one line, or each on its own."""
    more = [*items[:at], "new", *items[at:]]
    for gap, open_, close in ((", ", "[", "]"), (",\n  ", "[\n  ", "\n]")):
        text = f"on = {open_}{gap.join(f'{chr(34)}{each}{chr(34)}' for each in items)}{close}\n"
        assert put(put(text, more), items) == text


@pytest.mark.parametrize(
    ("new", "kept"),
    [
        (["b", "c"], ["# south", "# north"]),
        (["a", "c"], ["# south", "# north"]),
        (["a", "b", "x"], ["# south", "# north"]),
    ],
)
def test_comments_stay_with_what_they_stand_beside(new: list[str], kept: list[str]) -> None:
    """The items that differ are touched, and no other."""
    after = put(TALL, new)
    assert tomllib.loads(after)["on"] == new
    assert all(comment in after for comment in kept)


def test_one_item_is_taken_out() -> None:
    """With one comma beside it."""
    text = 'on = ["a", "b", "c"]\n'
    found = [without(text, Layout(text), ("on", place)) for place in range(3)]
    assert found == ['on = ["b", "c"]\n', 'on = ["a", "c"]\n', 'on = ["a", "b"]\n']
