"""Joists and rafters."""

import pytest

from benchmate.outset.spans import PEAKS, floor, roof
from tests.outset.frames import JOISTED, answers


def test_joists_lie_in_pockets_at_both_ends() -> None:
    """Three to a bay; none without a floor."""
    text = "\n".join(floor(answers(JOISTED)))
    assert text.count("[[timber]]") == 6
    assert text.count('family = "joist pocket"') == 12
    assert list(floor(answers())) == []


@pytest.mark.parametrize(("answer", "cut"), PEAKS.items())
def test_pairs_meet_as_asked(answer: str, cut: str) -> None:
    """Nine pairs, each with seats, tails and its peak."""
    text = "\n".join(roof(answers(roof=answer)))
    assert text.count("[[timber]]") == 18
    assert text.count(f'cut = "{cut}"') == 9
    assert text.count('family = "rafter seat"') == 18


def test_or_on_a_ridge_or_not_at_all() -> None:
    """A ridge lies on the centre line, past the gables as the plates do."""
    text = "\n".join(roof(answers(roof="on a ridge")))
    assert text.count('family = "rafter ridge"') == 18
    assert 'at = { north = "centre line - half ridge", up = "ridge line" }' in text
    assert list(roof(answers(roof="none"))) == []
