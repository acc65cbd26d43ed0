"""Like members and their hands."""

import pytest

from benchmate.layout.likeness import LEFT, NEITHER, RIGHT, alike, hand, shape
from benchmate.model.work import Work
from tests.builders import corners, frame, real, sill, tenon, timber

CORNERS = {
    "sw": ("south", "west"),
    "se": ("south", "east"),
    "ne": ("north", "east"),
    "nw": ("north", "west"),
}


def _corner_posts() -> list[object]:
    parts: list[object] = []
    for name, (first, second) in CORNERS.items():
        parts.append(timber(name, first_face=first, second_face=second))
        sizes = {"set_back": "1-1/2", "relief_reference": "1-1/4"}
        parts.append(tenon(id=f"{name}-foot", timber=name, **sizes))
    return parts


def test_four_corner_posts_are_two_mirrored_pairs() -> None:
    """Only their faces are typed; across the diagonal they are interchangeable."""
    (posts,) = alike(frame(*_corner_posts()))  # type: ignore[arg-type]
    assert posts.timbers == ("sw", "se", "ne", "nw")
    assert (posts.right, posts.left, posts.either) == (("se", "nw"), ("sw", "ne"), ())


def test_right_is_where_the_second_face_is_seen() -> None:
    """On the south face of a post on its foot, east is on the right."""
    made = frame(*_corner_posts())  # type: ignore[arg-type]
    assert (hand(made, "se"), hand(made, "sw")) == (RIGHT, LEFT)


@pytest.mark.parametrize(
    "works",
    [
        (),
        (tenon(length="4"), tenon(id="post-head", end="head", length="4")),
        (tenon(length="4", set_back="2", thickness="2"),),
    ],
)
def test_a_timber_that_is_its_own_mirror_image_has_no_hand(works: tuple[Work, ...]) -> None:
    """Bare, alike at both ends, or with a tenon in the middle of its thickness."""
    made = frame(timber("post"), *works)
    assert hand(made, "post") == NEITHER
    assert alike(made)[0].either == ("post",)


def test_one_more_cut_makes_another_shape() -> None:
    """A post with a longer tenon is not like the others, nor is one of another kind."""
    made = corners()
    assert shape(made, "post-sw") == shape(made, "post-se")
    one = frame(timber("post"), tenon(length="4"))
    other = frame(timber("post"), tenon(length="5"))
    named = frame(timber("post", kind="prop"), tenon(length="4"))
    assert len({shape(each, "post") for each in (one, other, named)}) == 3


def test_a_scribed_timber_is_like_no_other() -> None:
    """It fits only its own mate, so it keeps its hand and its place."""
    parts = (
        sill(),
        timber("one"),
        timber("two"),
        tenon(id="a", timber="one", into="sill", at="1'", scribed=True),
        tenon(id="b", timber="two", into="sill", at="8'", scribed=True),
    )
    groups = alike(frame(*parts))
    assert [group.timbers for group in groups] == [("sill",), ("one",), ("two",)]
    assert all(not group.either for group in groups)


def test_a_hand_is_as_drawn() -> None:
    """What a stick measures at one end does not make a left out of neither."""
    joints = (tenon(length="4"), tenon(id="post-head", end="head", length="4"))
    odd = {"post": real({"foot-tenon": {"first": "6-1/4", "second": "6-1/8"}})}
    made = frame(timber("post"), *joints, real=odd)
    assert hand(made, "post") == NEITHER
    assert alike(made)[0].hand("post") == NEITHER
