"""The geometry kernel does what the proof needs of it, at the scale and fineness it needs."""

import pytest

from tests.proof.areas import content
from tests.proof.boxes import box
from tests.proof.demos import RULES, SHED, demo
from tests.proof.kernel import NOTHING, block, hull, touching
from tests.proof.marks import ALONG
from tests.proof.raising import Piece, raised

SILL = ((0, 4_241_800_000), (0, 203_200_000), (-203_200_000, 0))
POST = ((0, 177_800_000), (0, 177_800_000), (0, 2_235_200_000))
FOOT = ((38_100_000, 177_800_000), (44_450_000, 88_900_000), (-88_900_000, 0))

FINEST = 1e-9
"""How far off a volume may be, as a share of it: half a nanometre of push in a thousand is 5e-4."""


def test_timbers_that_touch_share_nothing_at_all() -> None:
    """Faces that coincide have no volume, not even a sliver."""
    assert block(SILL).within(block(POST)).volume == 0
    assert block(SILL).without([block(FOOT)]).within(block(FOOT)).volume == 0


@pytest.mark.parametrize("by", [1, 1000, 2000])
def test_a_push_shares_the_face_times_how_far(by: int) -> None:
    """True to a billionth for a push as small as a nanometre, on a face with a mortise in it."""
    (east, far_east), (north, far_north), _ = FOOT
    face = 177_800_000**2 - (far_east - east) * (far_north - north)
    shared = block(POST).moved((0, 0, -by)).within(block(SILL).without([block(FOOT)])).volume
    assert shared == pytest.approx(by * face, rel=FINEST)


@pytest.mark.parametrize("way", [(1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0)])
def test_a_snug_tenon_meets_its_walls_at_once(way: tuple[int, int, int]) -> None:
    """Three of its sides stay flush with the mortise's, and only the fourth goes in."""
    sill = block(SILL).without([block(FOOT)])
    sides = [high - low for low, high in FOOT]
    wall = content([(0, side) for side, step in zip(sides, way, strict=True) if not step])
    east, north, up = (1000 * step for step in way)
    shared = block(FOOT).moved((east, north, up)).within(sill).volume
    assert shared == pytest.approx(1000 * wall, rel=FINEST)


def test_a_part_cut_off_flush_with_a_face_is_that_part_alone() -> None:
    """A tenon sawn off at its shoulder takes nothing of the shoulder with it.

    The kernel's versions 3.4 to 3.5.4 leave a fin there: it has no volume as it stands, but has
    some, out of nothing, as soon as the tenon is pushed. Versions 3.2 and 3.3 are sound.
    """
    girder = raised(demo(SHED, "mill"), {}).pieces["girder"]
    shoulder = girder.rule.place("south-end-tenon", "shoulder").at
    tenon = girder.part(girder.placed.box(box({ALONG: (0, shoulder)})))
    high, thick = 50_800_000, 50_800_000
    low_corner, high_corner = tenon.corners
    assert (low_corner[2], high_corner[2]) == (-high - thick, -high)


def test_a_wedge_is_the_hull_of_its_corners() -> None:
    """Half of the block it is cut from, and a block of no width is nothing."""
    corners = [(x, u, v) for x in (0, 90) for u, v in ((0, 0), (20, 0), (0, 20))]
    assert hull(corners).volume == pytest.approx(90 * 200)
    assert block(((0, 90), (5, 5), (0, 20))).volume == 0


def test_nothing_stays_nothing_and_takes_nothing_off() -> None:
    """A cut of which nothing is left may be bounded once more, and leaves a timber whole."""
    gone = block(SILL).behind((1, 0, 0), 0).behind((0, 1, 0), 100)
    assert gone.volume == 0
    assert block(SILL).without([gone]).volume == block(SILL).volume
    assert block(FOOT).without([NOTHING.joined([gone])]).volume == block(FOOT).volume


def test_a_body_that_cannot_be_made_is_told() -> None:
    """One that is no number wide would share nothing with anything, and pass for a fit."""
    with pytest.raises(ValueError, match="no solid"):
        block(SILL).turned(((1, 0, 0), (0, 1, 0), (0, 0, 1)), (float("nan"), 0, 0))


def test_only_timbers_whose_boxes_share_room_may_touch() -> None:
    """Neighbours that lie flush need no closer look."""
    assert not touching(block(SILL), block(POST))
    assert touching(block(SILL), block(POST).moved((0, 0, -1)))


def _pieces() -> list[Piece]:
    found = [piece for frame in RULES for piece in raised(demo(*frame), {}).pieces.values()]
    return [piece for piece in found if not piece.carving.wedges]


def test_every_timber_keeps_the_wood_that_counting_leaves() -> None:
    """The kernel's volume of each demo timber without chamfers is that of its boxes, counted."""
    found = _pieces()
    assert len(found) > 80
    for piece in found:
        carving = piece.carving
        taken = [*carving.missing, *(box for boxes in carving.cuts.values() for box in boxes)]
        assert piece.solid.volume == pytest.approx(content(carving.blank, taken), rel=FINEST)
