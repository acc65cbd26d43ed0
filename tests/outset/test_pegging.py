"""The pegs of a joint."""

from benchmate.measure.length import Length
from benchmate.outset.pegging import brace_pegs, pegs
from tests.outset.frames import LAPPED, METRIC, PEGGED, answers


def test_none_are_set_unless_the_framer_says_so() -> None:
    """No pegs by default."""
    assert pegs(answers(), Length.inches(8)) is None
    assert brace_pegs(answers(), in_wall=True) is None


def test_two_to_a_tenon_a_quarter_from_either_edge() -> None:
    """Of what its relief leaves."""
    found = pegs(answers(PEGGED), Length.inches(8), Length.inches(2))
    assert found is not None
    assert (found["count"], found["from_edge"], found["spacing"]) == (2, "1-1/2", "3")
    metric = pegs(answers(PEGGED, METRIC), Length.mm(200))
    assert metric is not None
    assert (metric["from_edge"], metric["spacing"]) == ("50", "100")


def test_a_wall_braces_peg_stops_short_of_a_tie_brace_beside_it() -> None:
    """Bored blind there, right through elsewhere."""
    apart, beside = answers(PEGGED), answers(PEGGED, LAPPED)
    for frame, in_wall, blind in (
        (apart, True, None),
        (beside, False, None),
        (beside, True, "3-1/2"),
    ):
        found = brace_pegs(frame, in_wall=in_wall)
        assert found is not None
        assert found["blind_depth"] == blind
