"""Every finding of a peak: just triggered, and just not (law 7: never clamp)."""

import pytest

from benchmate.joinery.rafter.peak import findings
from benchmate.joinery.rafter.peak.shape import head_shapes
from benchmate.measure.printing import Style, Tape
from tests.builders import codes, frame, length, real
from tests.joinery.rafter.peak.pairs import RULED, heads
from tests.joinery.rafter.roofs import Roof, peak

TAPE = Tape(style=Style.INCHES)


def found(**words: object) -> tuple[str, ...]:
    """The codes told of a pair."""
    return codes(findings.told(*heads(**words), TAPE))  # type: ignore[arg-type]


def test_a_sound_pair_has_no_finding() -> None:
    """Butted, lapped or bridled, at whatever pitches."""
    for rises in (("12", "12"), ("7", "13")):
        assert found(rises=rises, cut="butt") == ()
        assert found(rises=rises) == ()
        assert found(rises=rises, cut="bridle", thickness="1-1/2") == ()


@pytest.mark.parametrize(("over", "told"), [("5", ()), ("5-1/64", ("peak-apart",))])
def test_peaks_that_lie_apart(over: str, told: tuple[str, ...]) -> None:
    """Two inclines that end at one point, and two that end 1/64" apart."""
    joint, run, other = peak(), length("8'"), Roof(heading="west", over=over)
    mate = other.towards_peak("mate", run, other.up_at(run))
    made = head_shapes(joint, frame(Roof().raking(), mate, joint))
    assert codes(findings.told(*made, TAPE)) == told


@pytest.mark.parametrize(("back", "told"), [("2-31/64", False), ("2-1/2", True)])
def test_a_cheek_in_the_air(back: str, *, told: bool) -> None:
    """A tongue of 1-1/2" set back 2-1/2" leaves nothing of 4" beside it, on either rafter."""
    codes_told = found(cut="bridle", thickness="1-1/2", set_back=back)
    assert codes_told == (("peak-cheek-outside",) * 2 if told else ())


def test_a_tongue_without_set_back_is_no_bridle() -> None:
    """Its near cheek would lie in the reference side, and the fork have one prong."""
    assert found(cut="bridle", thickness="1-1/2", set_back="0") == ("peak-cheek-outside",) * 2


def test_a_mate_too_thin_or_too_far_aside() -> None:
    """A lap at 2" in a mate 2" thick, or in one that stands 2" further on."""
    thin = {"mate": real({"all": {"second": "2"}})}
    assert found(sticks=thin) == ("peak-cheek-outside",)
    assert found(mate={"across": "2"}) == ("peak-cheek-outside",)
    assert found(mate={"across": "1-63/64"}) == ()


@pytest.mark.parametrize(("across", "told"), [("3-63/64", ()), ("4", ("peak-beside",))])
def test_butted_heads_side_by_side(across: str, told: tuple[str, ...]) -> None:
    """4" over, two rafters 4" wide do not meet at all."""
    assert found(cut="butt", mate={"across": across}) == told


def test_a_stick_under_its_inner_timber() -> None:
    """By square rule neither may be smaller than the timber inside it."""
    small = real({"all": {"first": "5-63/64"}})
    assert found(own=RULED) == ()
    assert found(own=RULED, sticks={"rafter": small}) == ("stick-under-inner",)
    assert found(own=RULED, sticks={"mate": small}) == ("stick-under-inner",)


def test_every_check_says_what_and_why() -> None:
    """Each is explained, and gives a remedy."""
    assert all(check.__doc__ and "Remedy" in check.__doc__ for check in findings.CHECKS)
