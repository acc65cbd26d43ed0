"""Floors that other joints leave where a mortise opens."""

import pytest

from benchmate.model.directions import Face
from benchmate.model.floors import Floor, floor_at
from tests.builders import length


def _floor(at: str, *, face: Face = Face.FIRST, timber: str = "sill", under: str = "hole") -> Floor:
    return Floor(
        timber=timber, under=under, over="notch", face=face, at=length(at), name="notch for Tie"
    )


def test_a_floor_is_named_after_the_work_that_leaves_it() -> None:
    """As something to hook on."""
    assert _floor("1").words == "floor of the notch for Tie"


def test_only_the_mouth_s_own_floor_counts() -> None:
    """On its timber, for its feature and at its face."""
    others = (
        _floor("1", face=Face.FAR_FIRST),
        _floor("1", timber="plate"),
        _floor("1", under="other-hole"),
    )
    assert floor_at(others, "sill", "hole", Face.FIRST) is None
    own = _floor("1")
    assert floor_at((*others, own), "sill", "hole", Face.FIRST) is own


@pytest.mark.parametrize(("face", "deepest"), [(Face.FIRST, "2"), (Face.FAR_FIRST, "1")])
def test_of_two_floors_the_deeper_is_left(face: Face, deepest: str) -> None:
    """The further from its face: a smaller reading, where that is the far one."""
    floors = (_floor("1", face=face), _floor("2", face=face))
    found = floor_at(floors, "sill", "hole", face)
    assert found is not None
    assert found.at == length(deepest)
