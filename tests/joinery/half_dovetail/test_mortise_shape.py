"""Where the mortise lies in the real post, by hand-reckoned figures."""

from typing import Any

import pytest

from benchmate.joinery.half_dovetail.mortise_shape import Ends
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from tests.builders import length, real
from tests.joinery.half_dovetail.bents import SQUARE, bent, mortise_of

HEAD_FIRST = {"reference_end": "head", "reference_end_at": None, "far_end_at": "0"}
"""A post that is measured from its head, which the plate settles."""


def _ends(tail: str, wedge: str) -> Ends:
    return Ends(length(tail), length(wedge))


def test_it_is_taller_than_the_tenon_on_both_faces() -> None:
    """The tie's top lies at 98": 7" under it to 1-1/8" over it where the tie comes in.

    On the far face it goes the flare lower, and up to the wedge's thick end, 2-1/8" over the top.
    """
    shape = mortise_of(bent())
    assert shape.entry is Face.FAR_FIRST
    assert shape.ends_on(shape.entry) == _ends("91", "99-1/8")
    assert shape.ends_on(Face.FIRST) == _ends("90", "100-1/8")
    assert shape.ends_on(shape.entry).height == length("8-1/8")
    assert shape.span == (length("90"), length("100-1/8"))


def test_wedged_below_it_is_the_other_way_up() -> None:
    """The tail bears upwards: its straight edge lies at 90", with the wedge under it."""
    shape = mortise_of(bent(wedged="underside"))
    assert shape.ends_on(shape.entry) == _ends("97", "88-7/8")
    assert shape.ends_on(shape.entry.opposite) == _ends("98", "87-7/8")


@pytest.mark.parametrize(
    ("words", "wedge"),
    [
        ({}, ("8", "1-1/8", "2-1/8", "2")),
        ({"past": "2"}, ("8", "1-1/8", "2-1/8", "2")),
        ({"housing": "1/2", "wedge_thin": "1-1/4"}, ("7-1/2", "1-1/4", "2-1/4", "2")),
        ({"held_short": "1/2"}, ("8", "1-1/8", None, "2")),
        (
            {"real": {"tie": real(as_cut={"west-end-tenon": {"thickness": "1-7/8"}})}},
            ("8", "1-1/8", "2-1/8", "1-7/8"),
        ),
    ],
)
def test_the_wedge_has_the_tail_s_taper(
    words: dict[str, Any], wedge: tuple[str | None, ...]
) -> None:
    """Common practice, no source: from the shoulder to the far face, as wide as the mortise.

    Of a tenon held short the taper counts over its own length: 1" in 7-1/2", so 1.0667" in 8".
    """
    found = mortise_of(bent(**words)).wedge
    exact = [each and length(each) for each in wedge]
    held = length("1-1/8") + Length(round(25_400_000 * 8 / 7.5))
    assert list(found) == [held if each is None else each for each in exact]


@pytest.mark.parametrize(
    ("words", "least"),
    [
        ({}, Length.inches(1)),
        ({"past": "2"}, Length.inches(1)),
        ({"housing": "1/2"}, Length(25_400_000 + -(-25_400_000 // 15))),
        ({"flare": "3/4"}, Length.inches(0, 3, 4)),
        ({"own": SQUARE, "post_first": "west"}, Length(25_400_000 + -(-25_400_000 // 15))),
        (
            {"real": {"tie": real(as_cut={"west-end-tenon": {"length": "8-1/16"}})}},
            Length.inches(1, 1, 16),
        ),
    ],
)
def test_the_thin_end_is_at_least_the_flare(words: dict[str, Any], least: Length) -> None:
    """From memory (trade notes 2.5), and by the way in: see the proof that raises it.

    In a housing 1/2" deep the mortise is lower at the face by 1/2 in 7-1/2 of the taper.
    """
    assert mortise_of(bent(**words)).least_thin == least


def test_it_follows_the_tail_as_it_came_out() -> None:
    """Pared to 6-15/16" and 7-7/8", the tie would stand low if the slope did not rise with it."""
    sizes = {"width": "6-15/16", "length": "7-7/8"}
    shape = mortise_of(bent(real={"tie": real(as_cut={"west-end-tenon": sizes})}))
    assert shape.ends_on(shape.entry) == _ends("91-1/16", "99-1/8")
    assert shape.ends_on(shape.entry.opposite) == _ends("90-1/8", "100-1/8")
    assert shape.flare == length("15/16")


def test_a_tail_without_flare_leaves_the_mortise_as_drawn() -> None:
    """It is a stop, so nobody cuts to it; and the figures come back with the next size."""
    sizes = {"width": "7-1/2", "length": "7-1/2"}
    shape = mortise_of(bent(real={"tie": real(as_cut={"west-end-tenon": sizes})}))
    assert shape.ends_on(shape.entry) == _ends("91", "99-1/8")
    assert shape.flare == length("0")


def test_a_housing_is_eased_on_the_wedge_s_side() -> None:
    """1/2" deep it is as tall as the tie and 1/15" more on top: 1" in 7-1/2", over 1/2"."""
    shape = mortise_of(bent(housing="1/2"))
    walls = {wall.line: wall for wall in shape.walls}
    assert set(walls) == {"housing-start", "housing-finish", "housing-far"}
    assert walls["housing-start"].offset == -length("90").nm
    assert walls["housing-finish"].offset == length("98").nm + -(-25_400_000 // 15)
    assert walls["housing-far"].offset == length("6").nm
    assert mortise_of(bent()).walls == ()


@pytest.mark.parametrize(
    ("words", "seat", "recess"),
    [
        ({}, "8", "0"),
        ({"housing": "1/2"}, "7-1/2", "1/2"),
        ({"housing": "1/2", "post_first": "east"}, "1/2", "1/2"),
        ({"own": SQUARE}, "7-1/2", "1/2"),
    ],
)
def test_the_shoulder_bears_on_its_seat(words: dict[str, Any], seat: str, recess: str) -> None:
    """From the post's reference face, and below the face the tie comes in by."""
    shape = mortise_of(bent(**words))
    assert (shape.seat, shape.recess) == (length(seat), length(recess))
    assert shape.into is Axis.FIRST
    assert shape.feature == "tie-post-mortise"


@pytest.mark.parametrize(
    ("words", "left"),
    [
        ({}, "10"),
        ({"tie_first": "down"}, "10"),
        ({"wedged": "underside"}, "10"),
        ({"tie_drop": "7"}, "7"),
        ({"own": {"post": HEAD_FIRST}}, "10"),
    ],
)
def test_what_is_left_of_the_post_above_the_tie(words: dict[str, Any], left: str) -> None:
    """From the tie's top to the underside of the plate, whichever end the post is measured from."""
    assert mortise_of(bent(**words)).below_head == length(left)
