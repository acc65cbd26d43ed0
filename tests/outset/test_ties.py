"""Ties across each bent."""

from benchmate.outset.ties import tie_name, ties
from tests.outset.frames import LAPPED, answers


def test_ties_are_tenoned_or_lapped_on_a_cog() -> None:
    """Two ends each, in posts or on plates."""
    tenoned, lapped = ("\n".join(ties(answers(how))) for how in ({}, LAPPED))
    assert tenoned.count('family = "tenon"') == 6
    assert 'into = "post-s2"' in tenoned
    assert lapped.count('cog = "2"') == 6
    assert 'into = "plate-south"' in lapped


def test_ties_are_named_by_their_gables() -> None:
    """Those between by number."""
    assert [tie_name(bent) for bent in answers().bents] == ["West tie", "Tie 2", "East tie"]


def test_no_housing_is_no_key() -> None:
    """A tie that is not housed says nothing of it."""
    assert "housing" not in "\n".join(ties(answers({"tie housing": "0"})))
