"""The trade's usual sizes, and how they give way to one another."""

import pytest

from tests.outset.frames import LAPPED, METRIC, PEGGED, SQUARE, suggestion


@pytest.mark.parametrize(
    ("question", "text"),
    [
        ("thickness", "2"),  # a quarter of 8 inches: trade notes 2.1, TFG-offset
        ("set back", "2"),  # as much: TFG-offset
        ("foot", "2"),  # a stub: TFHQ-stub
        ("head", "4"),  # common practice, no source
        ("leg", "3'"),  # 36 inches: Hart-rule
        ("brace thickness", "1-1/2"),  # Beemer-shed
        ("tie housing", "1/2"),  # common practice, no source
        ("rafter height", "6"),  # two thirds of 7 inches at 9 in 12, plumb: Newman-65
    ],
)
def test_a_frame_of_eight_inch_timber_gets_the_usual_sizes(question: str, text: str) -> None:
    """Each with its source beside it."""
    assert suggestion(question) == text


def test_pegs_are_as_published_where_tenons_are_long_enough() -> None:
    """1" and 3/4" holes (TimberHomes, TFG-bare), 1-1/2" from the shoulder (Wharton)."""
    found = [suggestion(each, PEGGED) for each in ("peg", "brace peg", "peg shoulder", "draw")]
    assert found == ["1", "3/4", "1-1/2", "1/8"]


def test_braces_share_a_middle_post() -> None:
    """Two tenons, two housings and the wood between them make up its width."""
    assert suggestion("brace tenon", post="8 x 6", tie="8 x 6") == "2"
    assert suggestion("brace tenon", post="8 x 8") == "3"


def test_a_tie_stops_short_of_a_brace_at_its_height() -> None:
    """Brought down beside the braces' feet it gets a shorter tenon."""
    assert suggestion("tie tenon", post="7 x 7", tie="8 x 7") == "3"
    low = {"tie drop": "24", "leg": "30"}
    assert suggestion("tie tenon", low, post="7 x 7", tie="8 x 7") == "2-1/2"


def test_a_leg_is_as_short_as_its_bay() -> None:
    """In whole inches, with wood left between two braces."""
    assert suggestion("leg", length="16'", bays="3") == "2' 1"


def test_square_rule_and_metric_follow_the_timber_inside() -> None:
    """A tenon is a quarter of what is inside, in whole 5 mm."""
    assert suggestion("thickness", METRIC) == "50"
    assert suggestion("thickness", METRIC, SQUARE, inner="30") == "45"
    assert suggestion("corner", SQUARE, inner="1") == "2"


def test_half_laps_leave_a_shorter_foot() -> None:
    """Half of a shallow sill, less what is kept under it."""
    assert suggestion("foot", sill="4 x 8", post="8 x 8", corners="half-lapped") == "1"


def test_a_tie_is_let_in_no_deeper_than_a_third() -> None:
    """Of the shallower of tie and plate."""
    assert suggestion("let in", LAPPED) == "2"
    assert suggestion("let in", LAPPED, plate="5 x 8") == "1-1/2"


def test_a_ridge_is_as_deep_as_the_plumb_cut() -> None:
    """7" at 9 in 12 is 8-3/4" plumb, with 1-1/2" of drop in half of the ridge: 11" is enough."""
    assert suggestion("ridge", roof="on a ridge") == "11 x 4"
