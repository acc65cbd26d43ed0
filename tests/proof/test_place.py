"""A timber stands where the project file says, whichever its hand."""

import pytest

from benchmate.frame.frame import Frame
from tests.builders import frame, length, timber
from tests.proof.demos import SHED, demo
from tests.proof.place import placed

INCH = length("1").nm


def test_a_post_stands_on_its_arris_with_its_foot_below_the_sill_s_top() -> None:
    """The SE post, on line 3 and line a: read up, north and west from its squared foot."""
    built = Frame(demo(SHED, "mill"), {})
    post = placed(built, built.timber("post-se"), length("3-1/2").nm)
    east = built.value(built.project.lines["line 3"]).nm
    assert post.box(((0, INCH), (0, INCH), (0, 2 * INCH))) == (
        (east - 2 * INCH, east),
        (0, INCH),
        (-length("3-1/2").nm, -length("2-1/2").nm),
    )


def test_a_timber_without_a_place_is_refused() -> None:
    """A post that stands alone is nowhere in a building."""
    alone = timber("post")
    with pytest.raises(ValueError, match="nowhere"):
        placed(frame(alone), alone, 0)
