"""Counts of timbers in words."""

import pytest

from benchmate.workbench.bench import Bench
from benchmate.workbench.member_counts import counted, hands, kinds, progress, tally
from benchmate.workbench.members import Members


@pytest.mark.parametrize(
    ("count", "kind", "told"),
    [
        (1, "post", "1 post"),
        (4, "post", "4 posts"),
        (2, "truss", "2 trusses"),
        (3, "lintel tray", "3 lintel trays"),
        (3, "collar body", "3 collar bodies"),
    ],
)
def test_kinds_are_counted_in_plain_words(count: int, kind: str, told: str) -> None:
    """One is one, several are several."""
    assert counted(count, kind) == told


def test_hands_are_counted_once_all_are_known(shed: Bench) -> None:
    """Half a count would be a wrong count."""
    members = Members(shed)
    posts = [each.timber.id for each in members.all if each.timber.kind == "post"]
    members.grow(posts[:1])
    assert hands([members.member(each) for each in posts]) == ""
    for _ in posts:
        members.grow(posts)
    assert hands([members.member(each) for each in posts]) == "3 right, 3 left"


def test_progress_is_counted_from_the_furthest(shed: Bench) -> None:
    """What is not begun is the rest, and void checks stand beside."""
    shed.sign("tie-west", "checked")
    members = Members(shed)
    assert kinds(members.all[:6]) == "4 sills, 1 girder, 1 post"
    assert progress(members.all) == "1 cut, 4 begun"
    assert tally(members.all[:1], states=True) == "1 begun"
    assert tally(members.all[:1], states=False) == ""
