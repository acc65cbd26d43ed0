"""The timbers of a frame as bars."""

from benchmate.frame.frame import Frame
from benchmate.measure.length import NM_PER_INCH
from benchmate.tui.desk import Desk
from benchmate.tui.desk_place import bars_of
from tests.builders import corners, frame, sill, tenon, timber


def placed() -> Frame:
    """A post 2' from the west end of a sill that starts 1' west of the frame's zero."""
    post = timber("post", at={"east": "1'", "north": "0"}, length="8'")
    ground = sill(
        at={"up": "0", "north": "0"}, reference_end_at="-12", far_end_at="15'", length=None
    )
    foot = tenon(into="sill", length="4")
    return frame(post, ground, timber("spare"), foot)


def test_a_bar_is_the_timber_from_end_to_end() -> None:
    """Tenon and all, in whole nanometres east, north and up; a timber without a place has none."""
    post, ground = bars_of(placed())
    assert (post.id, post.name, ground.id) == ("post", "Post", "sill")
    ups = {corner[2] for corner in post.corners}
    assert ups == {-4 * NM_PER_INCH, 96 * NM_PER_INCH}
    easts = {corner[0] for corner in ground.corners}
    assert easts == {-12 * NM_PER_INCH, 180 * NM_PER_INCH}
    assert {corner[0] for corner in post.corners} == {12 * NM_PER_INCH, 18 * NM_PER_INCH}


def test_a_frame_without_places_has_no_bars() -> None:
    """Timbers described alone are laid out all the same."""
    assert bars_of(corners()) == ()


def test_bars_are_laid_out_anew_when_the_frame_is(desk: Desk) -> None:
    """They are kept while nothing changes, as the key is shown again at every tick."""
    assert desk.bars is desk.bars
    desk.bench.frame = placed()
    assert [bar.id for bar in desk.bars] == ["post", "sill"]
