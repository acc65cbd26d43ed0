from itertools import count

import pytest

from benchmate.store.nearest import nearest


@pytest.mark.parametrize(
    ("word", "known", "remedy"),
    [
        ("flor top", ("joist depth", "floor top"), 'did you mean "floor top"?'),
        ("owl", ("post", "sill"), 'write one of "post", "sill"'),
        (7, ("post",), 'write one of "post"'),
        (None, ("post", "post"), 'write one of "post"'),
        ("owl", (), "there are none yet"),
    ],
)
def test_the_remedy_for_an_unknown_word(word: object, known: tuple[str, ...], remedy: str) -> None:
    """The nearest word, else the words there are, else that there are none."""
    assert nearest(word, known) == remedy


def test_a_long_list_is_cut() -> None:
    """Twelve words are listed, and that there are more."""
    posts = tuple(f"post-{n}" for n in range(13))
    assert nearest("owl", posts).endswith('"post-11", ...')
    assert nearest("owl", posts[:12]).endswith('"post-11"')


def test_only_so_many_words_are_looked_through() -> None:
    """A list without end does not hold the program up."""
    assert nearest("post 7", map("post {}".format, count())) == 'did you mean "post 7"?'


def test_without_words_the_caller_knows_what_to_do() -> None:
    """Where there is nothing to choose from, the remedy is the caller's."""
    assert nearest("deck", (), none="give it under [lengths]") == "give it under [lengths]"
