"""Braces in walls and bents."""

import pytest

from benchmate.outset.braces import braces
from tests.outset.frames import answers


@pytest.mark.parametrize(
    ("how", "count"), [("post to plate", 8), ("post to tie", 6), ("both", 14), ("none", 0)]
)
def test_a_middle_post_has_one_on_either_side(how: str, count: int) -> None:
    """A corner post one in its wall; every post one to its tie."""
    text = "\n".join(braces(answers(braces=how)))
    assert text.count("[[timber]]") == count
    assert text.count("[[joint]]") == 2 * count


def test_a_brace_closes_its_corner() -> None:
    """On the inner side of the last post too, into the stick of the plate over its head."""
    text = "\n".join(braces(answers(length="50'", bays="4", longest="28'")))
    assert 'east = "line 5 - post width"' in text
    assert 'into = "plate-north-2"' in text
    assert 'legs = { down = "brace leg", west = "brace leg" }' in text
