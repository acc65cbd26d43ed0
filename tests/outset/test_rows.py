"""Where rafters and joists lie along the frame."""

from benchmate.measure.length import Length
from benchmate.outset.rows import joists, rafters
from tests.outset.frames import JOISTED, LAPPED, SQUARE, answers


def test_a_pair_stands_at_every_bent_and_the_rest_between() -> None:
    """The first and last are flush with the gables, each line so far past the one before."""
    pairs = rafters(answers())
    assert [pair.line for pair in pairs] == [f"pair {number}" for number in range(1, 10)]
    texts = [pair.text for pair in pairs]
    assert texts[:3] == ["line 1", "line 1 + rafter spacing", "pair 2 + rafter spacing"]
    assert (texts[4], texts[-1], pairs[-1].side) == ("line 2", "line 3", "east")
    assert pairs[-1].west == Length.feet(20) - Length.inches(5)


def test_they_stand_beside_ties_that_lap_the_plates() -> None:
    """Clear of the whole stick, by square rule as well."""
    pairs = rafters(answers(LAPPED, SQUARE))
    assert pairs[0].text == "line 1 + tie width"
    assert pairs[-1].text == "line 3 - tie width"
    assert pairs[0].west == Length.inches(8)


def test_joists_lie_between_the_posts_of_a_bay() -> None:
    """None at a post."""
    frame = answers(JOISTED)
    found = joists(frame, frame.bents[1])
    assert [row.line for row in found] == [f"bay 2 joist {number}" for number in (1, 2, 3)]
    assert found[0].text == "line 2 + joist spacing"
