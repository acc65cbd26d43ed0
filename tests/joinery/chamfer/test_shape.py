"""Where a chamfer's stops and guide blocks lie on the real stick."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.chamfer.record import Chamfer
from benchmate.joinery.chamfer.shape import ChamferShape, shape
from benchmate.model.directions import Face
from tests.builders import chamfer, corners, frame, length, real, tenon, timber

NEAR, FAR = Face.REFERENCE_END, Face.FAR_END


def _shape(built: Frame, on: str = "post") -> ChamferShape:
    (found,) = (work for work in built.project.works if isinstance(work, Chamfer))
    return shape(found, built, on)


@pytest.mark.parametrize("post", ["post-sw", "post-se"])
def test_the_stops_of_the_check_post(post: str) -> None:
    """Common practice, no source: 6" joist + 1-1/2" deck + 8" reveal, and 6" below the head."""
    found = _shape(corners(), post)
    assert found.from_shoulder(NEAR, found.at(NEAR)) == length("15-1/2")
    assert found.from_shoulder(FAR, found.at(FAR)) == length("6")
    assert found.from_shoulder(NEAR, found.block_at(NEAR)) == length("13-1/2")
    assert found.from_shoulder(FAR, found.block_at(FAR)) == length("4")
    assert found.at(FAR) == length("7' 5")


def test_a_typed_stop_has_its_block_outside_it() -> None:
    """Common practice, no source: an outside stop at 45-1/2" gives a block mark at 43-1/2"."""
    stop = {"shoulder": "foot", "distance": "45-1/2"}
    found = _shape(frame(timber("post"), chamfer(near_stop=stop)))
    assert (found.near, found.block_at(NEAR)) == (length("45-1/2"), length("43-1/2"))


def test_the_block_stands_off_by_the_shop_s_own_offset() -> None:
    """The offset is the shop's practice, so it can be changed."""
    found = _shape(frame(timber("post"), chamfer(), shop={"guide_block": "3"}))
    assert (found.block_at(NEAR), found.block_at(FAR)) == (length("9"), length("7' 8"))


@pytest.mark.parametrize(("end", "near", "far"), [("foot", "1' 4", "7' 5"), ("head", "6", "6' 7")])
def test_a_level_crosses_the_post_where_it_stands(end: str, near: str, far: str) -> None:
    """The same level lies above a foot shoulder and below a head shoulder."""
    shoulders = {"foot": "sill top", "head": "sill top + 7' 11"}
    level, head = {"level": "floor top + 8"}, {"shoulder": "head", "distance": "6"}
    stops = (level, head) if end == "foot" else (head, level)
    built = frame(
        timber("post", reference_end=end, shoulder_level=shoulders[end]),
        tenon(),
        tenon(id="post-head", end="head", length="4"),
        chamfer(near_stop=stops[0], far_stop=stops[1]),
        levels={"sill top": "2'", "floor top": "sill top + 8"},
    )
    found = _shape(built)
    assert (found.near, found.far) == (length(near), length(far))


def test_an_odd_section_does_not_move_a_stop() -> None:
    """Stops are measured along the stick, so its section leaves them where they are (law 2)."""
    odd = real({"all": {"first": "6-1/4", "second": "5-3/4"}})
    found = _shape(frame(timber("post"), chamfer(), real={"post": odd}))
    assert (found.near, found.far) == (length("12"), length("7' 5"))


def test_the_faces_are_those_of_its_arrises_in_rolling_order() -> None:
    """Each face comes once, in the order it comes up as the timber is rolled."""
    two = chamfer(arrises=["far-far", "first-far"])
    assert _shape(frame(timber("post"), two)).faces == (
        Face.FIRST,
        Face.FAR_FIRST,
        Face.FAR_SECOND,
    )


def test_a_stop_that_says_nothing_is_a_misuse() -> None:
    """A record built around its own checks is refused, not guessed at."""
    built = frame(timber("post"), chamfer())
    (found,) = (work for work in built.project.works if isinstance(work, Chamfer))
    empty = found.near_stop.model_copy(update={"distance": None})
    with pytest.raises(ValueError, match="needs a level"):
        shape(found.model_copy(update={"near_stop": empty}), built, "post")


def test_a_level_on_a_post_at_no_known_level_is_a_misuse() -> None:
    """The project is checked before it is laid out."""
    built = frame(timber("post"), chamfer(near_stop={"level": "3'"}))
    with pytest.raises(ValueError, match="shoulder stands"):
        _shape(built)


@pytest.mark.parametrize("end", ["foot", "head"])
def test_a_raking_timber_has_its_stops_from_its_foot_and_its_head(end: str) -> None:
    """A 5' brace, 12" from its foot and 6" from its head, whichever end it is measured from."""
    zero = {"east": "0", "north": "0", "up": "0"}
    incline = {"foot": zero, "towards": "east", "run": "4'", "rise": "3'"}
    faces = {"first_face": "up", "second_face": "south", "reference_end": end}
    near, far = {"shoulder": "foot", "distance": "12"}, {"shoulder": "head", "distance": "6"}
    stops = (near, far) if end == "foot" else (far, near)
    cut = chamfer(on=["brace"], near_stop=stops[0], far_stop=stops[1])
    built = frame(timber("brace", length=None, incline=incline, **faces), cut)
    found = shape(cut, built, "brace")
    expected = ("12", "4' 6") if end == "foot" else ("6", "4'")
    assert (found.near, found.far) == tuple(map(length, expected))
