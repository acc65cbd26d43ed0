"""Where a sloping shoulder lies on the real stick, by hand-reckoned figures."""

from typing import Any

import pytest

from benchmate.frame.flats import along_at
from benchmate.joinery.diminished.shape import feature_id
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from tests.builders import length, real
from tests.joinery.diminished.ledges import SQUARE, SQUARE_BEAM, diminished, end_of, ledge


def test_it_is_called_after_its_end() -> None:
    """As every tenon is."""
    assert feature_id(diminished()) == "west-end-tenon"


@pytest.mark.parametrize("reference", [False, True])
@pytest.mark.parametrize("first", ["up", "down"])
def test_the_shoulder_goes_further_out_at_the_underside(first: str, *, reference: bool) -> None:
    """Nothing at the top, 1" at the underside, 1/2" half-way, towards its own end."""
    shape = end_of(ledge(first=first, reference=reference))
    assert shape.top_is_reference is (first == "up")
    near, out = (length("0"), -1) if reference else (length("120"), 1)
    for down, further in (("0", "0"), ("4", "1/2"), ("8", "1")):
        deep = length(down) if first == "up" else length("8") - length(down)
        assert along_at(shape.slope, Axis.FIRST, deep) == near + out * length(further)
    beyond = near + out * length("2")
    assert shape.slope.holds(beyond.nm, 0, 0)
    assert not shape.slope.holds((near - out * length("2")).nm, 0, 0)


@pytest.mark.parametrize(
    ("words", "deep", "over", "recess"),
    [
        ({}, "8", "0", "1"),
        ({"real": {"girt": real({"all": {"first": "8-1/4"}})}}, "8-1/4", "0", "1"),
        ({"own": SQUARE}, "7-1/2", "0", "1"),
        ({"own": SQUARE, "into_first": "west"}, "7-1/2", "1/2", "1-1/2"),
        (
            {
                "own": SQUARE,
                "into_first": "west",
                "real": {"post": real({"girt-end-mortise": {"first": "7-5/8"}})},
            },
            "7-1/2",
            "1/8",
            "1-1/8",
        ),
    ],
)
def test_what_goes_in(words: dict[str, Any], deep: str, over: str, recess: str) -> None:
    """The end as the frame counts on it, so deep at the underside through the real face."""
    shape = end_of(ledge(**words))
    assert (shape.deep, shape.over, shape.recess) == tuple(map(length, (deep, over, recess)))


def test_its_cheeks_lie_with_the_grain_that_receives_it() -> None:
    """In a post they are set back from its side, in a beam from its top."""
    post, beam = end_of(ledge()), end_of(ledge(lying=True))
    assert (post.cheeks.axis, post.edges, post.plumb) == (Axis.SECOND, Axis.FIRST, Axis.FIRST)
    assert (beam.cheeks.axis, beam.edges, beam.plumb) == (Axis.FIRST, Axis.SECOND, Axis.FIRST)
    for shape in (post, beam):
        assert (shape.cheeks.near, shape.cheeks.far) == (length("2"), length("4"))


@pytest.mark.parametrize(
    ("words", "edge", "far", "struck"),
    [
        ({}, "0", "8", False),
        ({"relief_reference": "1", "relief_far": "1/2"}, "1", "7-1/2", True),
        ({"real": {"girt": real({"all": {"first": "8-1/4"}})}}, "0", "8-1/4", False),
        (
            {"relief_far": "1", "real": {"girt": real({"all": {"first": "8-1/4"}})}},
            "0",
            "7",
            True,
        ),
        ({"own": SQUARE}, "0", "7-1/2", True),
        ({"lying": True}, "0", "6", False),
    ],
)
def test_its_narrow_edges(words: dict[str, Any], edge: str, far: str, *, struck: bool) -> None:
    """Out to the stick's own face, or struck from the reference side where that would not hold."""
    shape = end_of(ledge(**words))
    assert (shape.edge, shape.far_edge) == (length(edge), length(far))
    assert shape.far_edge_struck is struck
    assert shape.width == length(far) - length(edge)


@pytest.mark.parametrize(
    ("words", "back", "to", "struck"),
    [
        ({}, "0", {}, {}),
        (
            {"own": SQUARE},
            "0",
            {Axis.FIRST: "7-1/2", Axis.SECOND: "5-1/2"},
            {Axis.FIRST: "far-edge"},
        ),
        (
            {"own": SQUARE, "into_first": "west", "relief_far": "1"},
            "1/2",
            {Axis.FIRST: "7-1/2", Axis.SECOND: "5-1/2"},
            {},
        ),
        (
            {"own": SQUARE_BEAM, "lying": True, "thickness": "5-1/2"},
            "0",
            {Axis.FIRST: "7-1/2", Axis.SECOND: "5-1/2"},
            {Axis.FIRST: "far-cheek", Axis.SECOND: "far-edge"},
        ),
    ],
)
def test_it_is_reduced_from_the_other_s_real_face_on(
    words: dict[str, Any], back: str, to: dict[Axis, str], struck: dict[Axis, str]
) -> None:
    """So far back from the top of its shoulder, to lines the tenon has anyway where they meet."""
    reduced = end_of(ledge(**words)).reduction
    assert reduced.length == length(back)
    assert reduced.to == {axis: length(at) for axis, at in to.items()}
    assert reduced.struck == struck


def test_real_sizes_as_cut_or_as_laid_out() -> None:
    """The length counts from the shoulder at the underside."""
    assert [end_of(ledge()).real(size) for size in ("thickness", "width", "length")] == [
        length(each) for each in ("2", "8", "3")
    ]
    sizes = {"thickness": "1-15/16", "width": "7-7/8", "length": "2-7/8"}
    cut = end_of(ledge(real={"girt": real(as_cut={"west-end-tenon": sizes})}))
    assert [cut.real(size) for size in sizes] == [length(each) for each in sizes.values()]


def test_readings_go_towards_its_own_end() -> None:
    """Below nothing at a reference end, past the body at a far one."""
    near, far = end_of(ledge(reference=True)), end_of(ledge())
    assert near.end is Face.REFERENCE_END
    assert near.along(length("1")) == length("-1")
    assert far.along(length("1")) == length("121")
