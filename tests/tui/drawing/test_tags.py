"""Running figures: none covers another, none is lost in silence."""

from hypothesis import given
from hypothesis import strategies as st

from benchmate.tui.drawing.tags import Placed, Tag, staggered

WIDTH = 80
numbers = st.sampled_from(['7"', "4' 6-1/2\"", "12' 10-15/16\"+"])
sets = st.lists(st.tuples(st.integers(0, 64), numbers), max_size=40)


def cells(placed: Placed) -> set[tuple[int, int]]:
    """What a figure covers: its text, and its upright down to the edge."""
    text = {(placed.row, placed.column + at) for at in range(1, len(placed.text) + 1)}
    return text | {(row, placed.column) for row in range(placed.row + 1)}


@given(sets, st.integers(1, 5), st.integers(0, 39))
def test_no_figure_covers_another(marks: list[tuple[int, str]], rows: int, hand: int) -> None:
    """Two share a cell only where both have their upright in it; all stay in their rows."""
    tags = [
        (column, Tag(at=column, figure=figure, current=place == hand))
        for place, (column, figure) in enumerate(marks)
    ]
    placed, _ = staggered(tags, rows, WIDTH)
    for place, one in enumerate(placed):
        assert 0 <= one.row < rows
        assert one.end <= WIDTH
        for other in placed[place + 1 :]:
            shared = cells(one) & cells(other)
            assert all(column == one.column == other.column for _, column in shared)


@given(sets, st.integers(1, 5), st.integers(0, 39))
def test_the_one_in_hand_is_always_there(
    marks: list[tuple[int, str]], rows: int, hand: int
) -> None:
    """However crowded, and every other figure is shown or counted."""
    tags = [
        (column, Tag(at=column, figure=figure, current=place == hand))
        for place, (column, figure) in enumerate(marks)
    ]
    placed, left_out = staggered(tags, rows, WIDTH)
    assert any(each.current for each in placed) is (hand < len(marks))
    assert len(placed) + left_out >= len({(column, tag.figure) for column, tag in tags})


def test_only_the_one_in_hand_may_go_without_its_source() -> None:
    """A figure from elsewhere without its source would be a wrong figure."""
    source = "from the head shoulder line"
    near, far = (Tag(at=at, figure='8"', source=source, current=at == 0) for at in (0, 9))
    assert [each.text for each in staggered([(70, near)], 1, WIDTH)[0]] == ['8"']
    assert staggered([(70, far)], 1, WIDTH) == ((), 1)
    assert staggered([(10, far)], 1, WIDTH)[0][0].text == f'8" {source}'


def test_two_at_one_place_are_shown_once_each() -> None:
    """Marks of one figure at one place are one figure."""
    same = [(5, Tag(at=5, figure='7"', current=True)), (5, Tag(at=6, figure='7"'))]
    other = (5, Tag(at=5, figure='9"'))
    placed, left_out = staggered([*same, other], 2, WIDTH)
    assert [(each.row, each.text, each.current) for each in placed] == [
        (0, '7"', True),
        (1, '9"', False),
    ]
    assert left_out == 0
