"""Both heads of a pair from one record."""

from benchmate.joinery import FAMILIES
from benchmate.joinery.rafter.peak.family import FAMILY, features
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from tests.builders import codes, real
from tests.joinery.rafter.peak.test_shape import BRIDLE
from tests.joinery.rafter.roofs import Roof, pair, peak

ROOFS = (Roof(rise="9"), Roof(rise="9", heading="west"))


def test_it_is_in_the_catalogue() -> None:
    """Under the word of the project file."""
    assert FAMILY in FAMILIES
    assert FAMILY.name == "rafter peak"


def test_both_heads_are_made_at_once() -> None:
    """Each on its own rafter, called after what it is."""
    joint = peak(**BRIDLE)
    first, second = features(joint, pair(*ROOFS, joint))
    assert (first.timber, first.id, first.title) == ("rafter", "head-tongue", "Tongue")
    assert (second.timber, second.id, second.title) == ("mate", "head-fork", "Fork")
    assert [each.title for each in features(peak(), pair(*ROOFS, peak()))] == ["Half lap"] * 2
    butt = peak(cut="butt")
    assert [each.title for each in features(butt, pair(*ROOFS, butt))] == ["Head cut"] * 2


def test_a_fork_waits_for_its_tongue_as_cut() -> None:
    """And is marked after all else on its rafter; the tongue waits for the other's depth."""
    joint = peak(**BRIDLE)
    frame = pair(*ROOFS, joint)
    rafter, mate = lay_out(frame, "rafter"), lay_out(frame, "mate")
    assert awaited(mate, mate.step("head-fork/root")) == (("rafter", "head-tongue/as-cut"),)
    assert awaited(rafter, rafter.step("head-tongue/root")) == (("mate", "head-fork/section"),)
    fork = mate.feature("head-fork")
    assert fork is not None
    assert fork.mated


def test_a_measured_mate_is_not_waited_for() -> None:
    """Nor is anything, where both are butted."""
    joint = peak(**BRIDLE)
    sticks = {"mate": real({"head-fork": {"first": "6"}})}
    assert features(joint, pair(*ROOFS, joint, real=sticks))[0].awaits == ()
    butt = peak(cut="butt")
    assert [each.awaits for each in features(butt, pair(*ROOFS, butt))] == [(), ()]


def test_what_stops_one_stops_the_other() -> None:
    """A cheek in the air of the tongue withholds the fork's figures too."""
    joint = peak(cut="bridle", thickness="1-1/2", set_back="2-1/2")
    both = features(joint, pair(*ROOFS, joint))
    assert all("peak-cheek-outside" in codes(side.findings) for side in both)


def test_the_peak_line_is_the_datum_of_a_rafter_measured_from_its_head() -> None:
    """On a flat pitch its squared end lies beyond the peak."""
    roofs = tuple(Roof(rise="9", heading=each, reference_end="head") for each in ("east", "west"))
    layout = lay_out(pair(roofs[0], roofs[1], peak()), "rafter")
    assert layout.shoulder == "head-lap/shoulder"
