"""What differs between two texts, and turning it back."""

from hypothesis import given
from hypothesis import strategies as st

from benchmate.store.pieces import pieces_between, turned_text
from tests.store.samples import CHAMFER, POST, STORE

ADDED = """
[[timber]]
id = "girt"
name = "Girt"
"""


def test_an_added_timber_is_one_piece() -> None:
    """Only its own lines and three beside them are kept."""
    before, after = STORE, STORE.replace(POST, POST + ADDED)
    (piece,) = pieces_between(before, after)
    assert piece.was == ()
    assert len(piece.now) == ADDED.count("\n")
    assert len(piece.above) == len(piece.below) == 3
    assert turned_text(after, (piece,), back=True) == before
    assert turned_text(before, (piece,), back=False) == after


def test_a_change_elsewhere_stays() -> None:
    """Lines that others added above or below are not in the way."""
    pieces = pieces_between(STORE, STORE.replace(POST, POST + ADDED))
    others = "# by hand\n\n" + STORE + "# and here\n"
    after = others.replace(POST, POST + ADDED)
    assert turned_text(after, pieces, back=True) == others


def test_a_change_in_the_very_place_is_in_the_way() -> None:
    """Neither as it was nor as it became: it is left."""
    after = STORE.replace('length = "4"', 'length = "5"')
    pieces = pieces_between(STORE, after)
    assert turned_text(STORE.replace('length = "4"', 'length = "6"'), pieces, back=True) is None


def test_what_is_turned_already_stays() -> None:
    """The text itself comes back."""
    after = STORE.replace('length = "4"', 'length = "5"')
    pieces = pieces_between(STORE, after)
    assert turned_text(STORE, pieces, back=True) == STORE
    assert turned_text(after, pieces, back=False) == after


def test_lines_added_at_the_end_are_not_taken_for_gone() -> None:
    """Changed by others since, they neither count as undone nor are put in a second time."""
    after = STORE + ADDED
    pieces = pieces_between(STORE, after)
    other = after.replace('"Girt"', '"Long girt"')
    assert turned_text(other, pieces, back=True) is None
    assert turned_text(other, pieces, back=False) is None
    assert turned_text(after + "# more\n", pieces, back=True) == STORE + "# more\n"
    assert turned_text("", pieces, back=False) is None


def test_of_like_places_the_one_it_stood_at_will_do() -> None:
    """Where lines were added above like places, nobody can tell, and nothing is changed."""
    same = "a\nb\nc\nx\nd\ne\nf\n"
    before = same * 3
    after = same + same.replace("x\n", "y\n") + same
    pieces = pieces_between(before, after)
    assert turned_text(before, pieces, back=False) == after
    assert turned_text("new\n" + before, pieces, back=False) is None


def test_several_pieces_far_apart() -> None:
    """A name that is said in several places: each is kept by itself."""
    after = STORE.replace("south-sill", "sill-s")
    pieces = pieces_between(STORE, after)
    assert len(pieces) == 2
    assert turned_text(after.replace(CHAMFER, ""), pieces, back=True) == STORE.replace(CHAMFER, "")
    other = after.replace('into = "sill-s"', 'into = "sill-n"')
    assert turned_text(other, pieces, back=True) is None


def test_ends_of_lines_come_back_as_they_were() -> None:
    """Carriage returns, a byte order mark, no new line at the end: every byte is kept."""
    before = "\ufeffa\r\nb\r\nc"
    after = "\ufeffa\r\nb2\u2028\r\nc\r\n"
    pieces = pieces_between(before, after)
    assert turned_text(after, pieces, back=True) == before
    assert turned_text(before, pieces, back=False) == after


def test_big_texts_are_one_piece_and_quick() -> None:
    """Beyond some thousands of lines nobody waits for the shortest account."""
    before = "\n".join(f"a {n % 7}" for n in range(6_000))
    after = "\n".join(f"a {n % 5}" for n in range(6_000))
    pieces = pieces_between(before, after)
    assert len(pieces) == 1
    assert turned_text(after, pieces, back=True) == before


TEXTS = st.lists(st.sampled_from(["a", "b", "", "c"]), max_size=30).map("\n".join)


@given(TEXTS, TEXTS)
def test_any_edit_goes_back_and_forth(before: str, after: str) -> None:
    """Law: what was rewritten is the same bytes after undoing it, and after doing it again."""
    pieces = pieces_between(before, after)
    assert bool(pieces) is (before != after)
    assert turned_text(after, pieces, back=True) == before
    assert turned_text(before, pieces, back=False) == after
