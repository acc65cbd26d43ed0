"""Boxes meet as boxes do."""

from tests.proof.boxes import EVERYWHERE, OPEN, between, beyond, empty, grown, meet

CUBE = ((0, 10), (0, 10), (0, 10))


def test_what_boxes_have_in_common_is_inside_them_all() -> None:
    """Everywhere takes nothing away, and a plane cuts one side off."""
    assert meet(CUBE, EVERYWHERE) == CUBE
    assert meet(CUBE, beyond(1, 4, far=True)) == ((0, 10), (4, 10), (0, 10))
    assert meet(CUBE, beyond(1, 4, far=False)) == ((0, 10), (0, 4), (0, 10))
    assert meet(CUBE, between(2, 3, 5), between(2, 4, 9)) == ((0, 10), (0, 10), (4, 5))


def test_boxes_that_are_apart_or_only_touch_have_nothing_in_common() -> None:
    """A face has no inside."""
    assert empty(meet(CUBE, beyond(0, 10, far=True)))
    assert empty(meet(CUBE, beyond(0, 11, far=True)))
    assert not empty(meet(CUBE, beyond(0, 9, far=True)))


def test_a_box_grows_on_every_side() -> None:
    """Only where it is bounded does that make a difference to what it meets."""
    assert grown(CUBE, 2) == ((-2, 12), (-2, 12), (-2, 12))
    assert meet(grown(CUBE, 2), (OPEN, OPEN, (0, 1))) == ((-2, 12), (-2, 12), (0, 1))
