"""The notch an end abuts in, and its mortise."""

import pytest

from benchmate.joinery.joggle.hole import hole_cuts, hole_lines, relish
from benchmate.joinery.joggle.words import ENGINEER
from benchmate.model.directions import Face
from benchmate.model.feature import Line
from tests.builders import length, line
from tests.joinery.joggle.test_shape import FEET, hole, near
from tests.joinery.joggle.trusses import truss


def lines(name: str = "heel", /, **words: object) -> tuple[Line, ...]:
    """The lines of one notch of a truss."""
    frame = truss(**words)  # type: ignore[arg-type]
    return hole_lines(hole(frame, name), frame.project.tape)


def test_the_order_they_are_struck_in() -> None:
    """The notch, its walls, then the mortise; flush with the south face, it is open there."""
    assert [each.id for each in lines()] == [
        "abutment",
        "sole",
        "housing-far",
        "back-end",
        "near-side",
        "far-side",
        "depth",
    ]


def test_notch_and_mortise_have_one_front() -> None:
    """The abutment bounds both; the sole only the notch."""
    notch, mortise = ({plane.line for plane in cut.planes} for cut in hole_cuts(hole(truss())))
    assert notch == {"abutment", "sole", "housing-far"}
    assert mortise == {"abutment", "back-end", "near-side", "far-side", "depth"}


def test_the_abutment_says_how_deep_how_long_and_what_is_left() -> None:
    """Beside where it comes on the top: 24" from the tie's end, its bottom 1/2" on."""
    found = line(lines(), "abutment")
    assert found.slant is not None
    assert found.slant.where == ("top face", "sole line")
    assert near(found.at, 24)
    assert near(found.slant.finish.along, 24.5)
    deep, down, left = found.beside
    assert deep.value == length("1-1/2")
    assert near(down.value, 1.5811388300841898)
    assert near(left.value, 24)
    assert found.caution == ENGINEER


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("heel", "of relish left along the grain, to the squared west end"),
        ("crown", "of relish left along the grain, to the squared head"),
        ("strut-head", "of relish left along the grain, to the foot shoulder"),
    ],
)
def test_relish_says_what_it_is_measured_to(name: str, words: str) -> None:
    """To a shoulder where the end is tenoned, as beyond it there is only the tenon."""
    assert relish(hole(truss(), name)).words == words


def test_the_sole_runs_out_at_the_heel() -> None:
    """Nothing deep there, 1-1/2" at the abutment, 13-1/3" on."""
    found = line(lines(), "sole")
    assert found.slant is not None
    assert near(found.at, 24 + FEET["heel"])
    assert (found.slant.start.deep.nm, found.slant.finish.deep) == (0, length("1-1/2"))
    assert near(found.beside[1].value, FEET["heel"])


def test_the_back_end_lets_rough_stock_in() -> None:
    """1/4" past the heel; struck on the face it enters even where nothing is to spare."""
    assert line(lines(), "back-end").beside[0].value == length("1/4")
    tight = line(lines(joint={"ease": "0"}), "back-end")
    assert (tight.beside, tight.faces) == ((), (Face.FIRST,))


def test_the_depth_counts_from_the_face() -> None:
    """3-5/8" in all, 6-3/8" left under it."""
    found = line(lines(), "depth")
    assert [(each.value, each.hook) for each in found.readings] == [(length("3-5/8"), "top face")]
    assert [beside.value for beside in found.beside] == [length("1/8"), length("6-3/8")]


def test_a_notch_that_comes_out_on_no_side_is_cut_with_a_bevel() -> None:
    """The strut is narrower than the post and stands inside it; square, nothing is to be set."""
    assert "leans to the bevel" in line(lines("strut-foot"), "abutment").why
    assert "leans to the bevel" not in line(lines("heel"), "abutment").why
    square = {"joint": {"abutment": "square to the face"}}
    assert "leans to the bevel" not in line(lines("strut-foot", **square), "abutment").why


def test_by_square_rule_a_far_face_has_to_be_measured() -> None:
    """As the notch is as much deeper as the stick is over; by mill rule it is not."""
    own = {"post": {"rule": "square", "inner": "8 x 8", "section": "8-1/2 x 8-1/2"}}
    found = lines("crown", edges={"post": "east"}, own=own)
    assert "Not measured here yet" in line(found, "abutment").why
    assert line(found, "abutment").beside[0].value == length("2")
    mill = lines("crown", edges={"post": "east"})
    assert "Not measured here yet" not in line(mill, "abutment").why
