"""The tail of a dovetail lap: full at the far face of the other timber, narrower inside."""

import pytest

from benchmate.frame.flats import along_at, deep_at
from benchmate.joinery.lap.lie import lies
from benchmate.joinery.lap.tail import FAR, NEAR, Tail, tail
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from tests.builders import length
from tests.joinery.lap.crossings import DOVETAIL, Scene, sizes_of


def _tail(wide: str = "6", **words: object) -> Tail:
    scene = Scene(**(DOVETAIL | words))
    built = scene.frame(sizes_of(plate=("8", "8")))
    found = tail(scene.record(), built, lies(scene.record(), built)[0], length(wide))
    assert found is not None
    return found


def test_it_narrows_towards_its_own_timber() -> None:
    """1" off each side of 6" over an 8" plate: 4" at the shoulder, 6" at the far face."""
    made = _tail()
    assert (made.root, made.mouth, made.long) == tuple(map(length, ("96", "104", "8")))
    assert (made.wide, made.narrow) == (length("6"), length("4"))


def test_from_the_reference_end_it_widens_towards_it() -> None:
    """Its readings fall below nothing there."""
    made = _tail(from_the_lap=True)
    assert (made.root, made.mouth) == (ZERO, length("-8"))
    for plane, deep in ((made.flanks[Face.SECOND], "1"), (made.flanks[Face.FAR_SECOND], "5")):
        assert deep_at(plane, Axis.SECOND, ZERO) == length(deep)


@pytest.mark.parametrize("end", [False, True])
def test_its_flanks_run_from_the_flare_to_the_corner(end: bool) -> None:
    """Straight from so far in at the shoulder to the face itself at the mouth."""
    made = _tail(from_the_lap=end)
    near, far = made.flanks[Face.SECOND], made.flanks[Face.FAR_SECOND]
    half = made.root + length("4" if made.mouth > made.root else "-4")
    for plane, depths in ((near, ("1", "1/2", "0")), (far, ("5", "5-1/2", "6"))):
        for along, deep in zip((made.root, half, made.mouth), depths, strict=True):
            assert deep_at(plane, Axis.SECOND, along) == length(deep)
    assert along_at(near, Axis.SECOND, ZERO) == made.mouth
    assert (near.line, far.line) == (NEAR, FAR)


def test_the_waste_lies_outside_the_flanks() -> None:
    """A point in the tail is kept, one beside it is not."""
    made = _tail()
    x = made.root.nm + 1
    assert not any(plane.holds(x, 0, length("3").nm) for plane in made.flanks.values())
    assert made.flanks[Face.SECOND].holds(x, 0, length("7/8").nm)
    assert made.flanks[Face.FAR_SECOND].holds(x, 0, length("5-1/8").nm)


def test_a_half_dovetail_has_one_flank() -> None:
    """The other side is the timber's own."""
    assert list(_tail(joint={"share": "2", "flare_far": "1"}).flanks) == [Face.FAR_SECOND]
    assert list(_tail(joint={"share": "2", "flare_reference": "1"}).flanks) == [Face.SECOND]


def test_only_an_end_with_a_flare_has_a_tail() -> None:
    """Neither a plain lap nor a crossing."""
    for scene in (Scene(), Scene(ends=False)):
        built = scene.frame()
        first, _ = lies(scene.record(), built)
        assert tail(scene.record(), built, first, length("6")) is None


def test_it_widens_over_the_plate_as_it_really_is() -> None:
    """Over a plate that measures 8-1/2" it takes 8-1/2" to widen."""
    scene = Scene(**DOVETAIL)
    built = scene.frame(sizes_of(plate=("8", "8-1/2")))
    made = tail(scene.record(), built, lies(scene.record(), built)[0], length("6"))
    assert made is not None
    assert made.long == length("8-1/2")
