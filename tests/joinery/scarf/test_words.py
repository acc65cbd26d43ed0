"""What several lines of a scarf say alike, beside the published rules of thumb."""

import pytest

from benchmate.joinery.scarf.words import (
    RULE,
    beam_depth,
    far_words,
    follows,
    kept_words,
    lap_beside,
    times_deep,
    words,
)
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from tests.builders import length, real
from tests.joinery.scarf.plates import both, plate, turned_plate


@pytest.mark.parametrize(
    ("lap", "times"),
    [
        ("48", "6"),
        ("24", "3"),
        ("16", "2"),
        ("96", "12"),
        ("32", "4"),
        ("30", "3.8"),
        ("36", "4.5"),
    ],
)
def test_a_lap_is_told_in_times_the_depth(lap: str, times: str) -> None:
    """Tredgold's scarf, 8" deep (trade notes 7.5): oak 48, 24, 16 and fir 96, 48, 32."""
    (half, _) = both(plate(joint={"length": lap}))
    assert times_deep(half) == times


def test_the_published_rule_is_quoted_whole() -> None:
    """6 and 12 plain, 3 and 6 with bolts, 2 and 4 with indents (trade notes 2.6, Rivington)."""
    assert "6 times the depth in oak, ash and elm and 12 in fir, without bolts" in RULE
    assert "half of that with bolts, a third with bolts and indents" in RULE


@pytest.mark.parametrize(("keeps", "deep"), [("up", "10"), ("south", "10")])
def test_the_depth_of_a_beam_is_plumb_however_it_is_halved(keeps: str, deep: str) -> None:
    """A plate 10" deep and 8" wide is 10" deep."""
    section = {"section": "10 x 8"}
    made = plate(joint={"keeps": keeps}, one=section, other=section)
    assert beam_depth(both(made)[0]) == length(deep)
    beside = lap_beside(both(made)[0], made.project.tape)
    assert beside.value == length("36")
    assert beside.words == 'of lap from tip to tip, 3.6 times the 10" depth'


@pytest.mark.parametrize(("keeps", "deep"), [("south", "10"), ("west", "8")])
def test_an_upright_has_the_depth_it_is_halved_in(keeps: str, deep: str) -> None:
    """A post has no plumb depth."""
    made = turned_plate(
        "half lap",
        end="up",
        keeps=keeps,
        faces=("south", "west"),
        ends=("down", "down"),
        own={"section": "10 x 8"},
    )
    assert beam_depth(both(made)[0]) == length(deep)


def test_what_a_lap_follows() -> None:
    """The leading one nothing; the other the leading one, as drawn or as cut."""
    made = plate()
    one, other = both(made)
    assert follows(one, made.project.tape) == (
        "Other is laid out to this lap as it comes out, so cut it first."
    )
    assert "has not been measured as cut" in follows(other, made.project.tape)
    cut = {"one": real(as_cut={"east-end-scarf": {"thickness": "3-7/8"}})}
    _, other = both(plate(real=cut))
    assert follows(other, made.project.tape) == "Follows One's lap as cut: 3-7/8\"."


def test_faces_in_words() -> None:
    """By where they look; a kept face that is brought down says so."""
    square = {"rule": "square", "inner": "7-1/2 x 7-1/2"}
    one, other = both(plate(one=square, other=square))
    assert (words(one, Face.FIRST), far_words(one, Axis.FIRST)) == ("top face", "underside")
    assert far_words(one, Axis.SECOND) == "North face"
    assert (kept_words(one), kept_words(other)) == ("top face", "reduced underside")
    assert kept_words(both(plate())[1]) == "underside"
