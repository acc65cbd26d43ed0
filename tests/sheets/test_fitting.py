"""Figures beside their lines."""

from benchmate.sheets.fitting import Box, Placed, placed

FACE = Box(0, 0, 100, 9)


def test_a_figure_stands_beside_its_line() -> None:
    """To the right where that is free, in the row nearest to the line."""
    found = placed(((10, 2), (30, 2)), 8, FACE, (), ())
    assert found is not None
    assert found.spot == (30, 2)
    assert 30 < found.box.left < 32
    assert found.box.top < 2 < found.box.bottom


def test_a_figure_at_the_end_of_the_timber_goes_to_the_other_side() -> None:
    """Nothing is written past the end of a face."""
    found = placed(((80, 5), (100, 5)), 8, FACE, (), ())
    assert found is not None
    assert found.box.right < 80
    assert found.lead[0] == (80, 5)


def test_nothing_is_written_over() -> None:
    """Neither waste nor another figure; a lead runs through no figure."""
    waste = Box(31, 0, 45, 9)
    first = placed(((10, 2), (30, 2)), 8, FACE, (waste,), ())
    assert first is not None
    second = placed(((10, 2), (30, 2)), 8, FACE, (waste,), (first,))
    assert second is not None
    assert not second.box.meets(first.box)
    assert not second.box.meets(waste)
    assert not first.box.covers(second.path)
    assert not second.box.covers(first.path)


def test_a_figure_without_room_is_left_to_the_table() -> None:
    """A face that is waste from end to end has room for none."""
    assert placed(((10, 2), (30, 2)), 8, FACE, (FACE,), ()) is None


def test_boxes_that_only_touch_do_not_meet() -> None:
    """An edge in common is no overlap."""
    assert not Box(0, 0, 1, 1).meets(Box(1, 0, 2, 1))
    assert Box(0, 0, 2, 2).meets(Box(1, 1, 3, 3))
    assert Box(0, 0, 2, 2).holds(Box(0, 0, 1, 1))
    assert Placed(Box(4, 0, 6, 2), (1, 1)).lead == ((1, 1), (4, 1))
