"""What every piece of work answers for."""

import pytest

from benchmate.model.directions import Direction
from benchmate.model.work import Work, end_fault
from tests.builders import sill, timber


class Bare(Work):
    """Work that says no more than it must."""

    def timbers(self) -> dict[str, str]:
        """One timber."""
        return {"timber": "post"}


def test_work_that_names_no_timbers_is_a_misuse() -> None:
    """A family has to say which timbers its record touches."""
    with pytest.raises(TypeError, match="timbers"):
        type("Nameless", (Work,), {})(id="joint")


def test_work_is_harmless_until_a_family_says_otherwise() -> None:
    """It joins its timbers, and has no sums, tenons or faults."""
    work = Bare(id="joint")
    assert work.joins()
    assert (work.sums(), work.extensions(), work.faults({})) == ({}, (), ())


@pytest.mark.parametrize("direction", Direction)
def test_only_a_timber_s_own_ends_can_be_named(direction: Direction) -> None:
    """A post has a foot and a head; a sill running east has neither."""
    upright = direction in (Direction.UP, Direction.DOWN)
    along = direction in (Direction.EAST, Direction.WEST)
    assert (end_fault("end", direction, timber("post")) is None) is upright
    assert (end_fault("end", direction, sill()) is None) is along


def test_an_end_fault_names_the_ends_there_are() -> None:
    """The framer learns which words would do."""
    fault = end_fault("near_stop.shoulder", Direction.WEST, timber("post"))
    assert fault
    assert fault.key == "near_stop.shoulder"
    for word in ("west end", "foot", "head"):
        assert word in fault.problem
    assert fault.remedy
