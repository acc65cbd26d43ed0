"""Where the heads of a pair lie."""

from typing import Any

import pytest

from benchmate.frame.flats import along_at
from benchmate.joinery.rafter.peak.shape import FAR, NEAR, head_shapes
from benchmate.measure.length import NM_PER_INCH, ZERO
from benchmate.model.solids import Axis
from tests.builders import frame, length, real
from tests.joinery.rafter.peak.pairs import RULED, heads
from tests.joinery.rafter.roofs import Roof, peak

BRIDLE: dict[str, Any] = {"cut": "bridle", "thickness": "1-1/2"}


def test_butted_heads_end_plumb_at_the_peak() -> None:
    """Nothing reaches beyond the end of the incline."""
    for head in heads(("9", "9"), cut="butt"):
        stick, axis = head.rafter.stick, head.rafter.plumb
        assert stick.far == ZERO
        assert abs((along_at(head.shoulder, axis, ZERO) - stick.body).nm) <= 1
        back = stick.body - along_at(head.shoulder, axis, length("6"))
        assert abs((back - length("4-1/2")).nm) <= 1, "at 3-4-5"
        assert (head.cheeks, head.lapped) == ((), False)


def test_at_45_degrees_a_lap_ends_square_at_the_stick() -> None:
    """The other's top is square to it, so the overall length is the end and no line is struck."""
    for head in heads():
        assert head.rafter.stick.far == ZERO
        assert head.ended
        assert head.root.normal == (-1, 0, 0)
        root = along_at(head.root, head.rafter.plumb, ZERO)
        assert abs((head.rafter.stick.finish - root - length("6")).nm) <= 1


def test_on_a_flat_pitch_it_reaches_beyond_the_peak() -> None:
    """At 9 in 12 the other's top crosses it 16.26 degrees off square: 1-3/4" on in 6" of depth."""
    for head in heads(("9", "9")):
        assert abs((head.rafter.stick.far - length("1-3/4")).nm) <= 2
        assert not head.ended
        axis = head.rafter.plumb
        assert along_at(head.shoulder, axis, ZERO) == head.rafter.stick.body
        root = along_at(head.shoulder, axis, ZERO) - along_at(head.root, axis, ZERO)
        assert root.nm / NM_PER_INCH == pytest.approx(6 / 0.96, abs=1e-6)


def test_on_a_steep_pitch_it_leans_back() -> None:
    """At 16 in 12 the tip lies on the top edge, so the stick needs nothing beyond it."""
    for head in heads(("16", "16")):
        assert head.rafter.stick.far == ZERO
        assert not head.ended


def test_pitches_may_differ() -> None:
    """Each root is parallel to the other rafter: the same angle on both, whatever their pitches."""
    first, second = heads(("8", "13"))
    leans = [abs(head.root.normal[1] / head.root.normal[0]) for head in (first, second)]
    assert leans[0] == pytest.approx(leans[1])
    assert first.apart == ZERO


def test_a_half_lap_takes_half_of_what_is_drawn() -> None:
    """2" of 4", from the reference side; what the stick is over stays on the other half."""
    thick = {"rafter": real({"all": {"second": "4-1/4"}})}
    first, second = heads(sticks=thick)
    assert first.span == (ZERO, length("2"))
    assert second.span == (ZERO, length("2"))
    assert [plane.line for plane in second.cheeks] == [FAR]


def test_a_mate_measured_from_the_other_side() -> None:
    """The same lap lies on its far side then."""
    _, second = heads(mate={"side": "north", "across": "4"})
    assert [plane.line for plane in second.cheeks] == [NEAR]
    assert second.span == (length("2"), length("4"))


def test_a_tongue_is_in_the_middle_if_nothing_else_is_said() -> None:
    """1-1/2" of 4": 1-1/4" in; or set back as said."""
    first, second = heads(**BRIDLE)
    assert first.span == second.span == (length("1-1/4"), length("2-3/4"))
    assert heads(**BRIDLE, set_back="1")[0].span == (length("1"), length("2-1/2"))
    assert first.cheek_depths == (length("1-1/4"), length("2-3/4"))


def test_the_mate_is_cut_to_what_was_made() -> None:
    """A tongue 1/16" thin makes its fork so; a lap likewise. The set-back holds."""
    made = {"rafter": real(None, {"head-tongue": {"thickness": "1-7/16"}})}
    first, second = heads(sticks=made, **BRIDLE)
    assert first.thickness == length("1-1/2")
    assert second.span == (length("1-1/4"), length("2-11/16"))
    lap = {"rafter": real(None, {"head-lap": {"thickness": "1-15/16"}})}
    assert heads(sticks=lap)[1].span == (ZERO, length("1-15/16"))


def test_by_square_rule_undersides_are_reduced_where_they_cross() -> None:
    """Down to the inner timber, from the other's real underside on."""
    deep = {each: real({"all": {"first": "6-1/2"}}) for each in ("rafter", "mate")}
    first, _ = heads(sticks=deep, own=RULED)
    assert first.reduction.to == {Axis.FIRST: length("6")}
    axis = first.rafter.plumb
    back = along_at(first.root, axis, ZERO) - along_at(first.stop, axis, ZERO)
    assert back == length("1/2")
    assert heads(own=RULED)[0].reduction.to == {}
    assert heads(sticks=deep)[0].stop == heads(sticks=deep)[0].root


def test_how_far_two_stand_beside_each_other() -> None:
    """In one plane they overlap by all of 4"; 4-1/2" over they stand 1/2" apart."""
    assert heads(cut="butt")[0].beside == -length("4")
    assert heads(cut="butt", mate={"across": "4-1/2"})[0].beside == length("1/2")


def test_how_far_two_peaks_lie_apart() -> None:
    """A mate whose incline ends 3" on and 4" higher ends 5" from the first's."""
    joint, roof = peak(), Roof(rise="9")
    high = Roof(rise="9", heading="west").towards_peak(
        "mate", length("8' 3"), roof.up_at(length("8'")) + length("4")
    )
    first, second = head_shapes(joint, frame(roof.raking(), high, joint))
    assert first.apart == second.apart == length("5")
    assert heads()[0].apart == ZERO
    assert first.mate_feature == "head-lap"
