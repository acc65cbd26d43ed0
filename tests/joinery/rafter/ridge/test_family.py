"""Both sides of a head at a ridge from one record."""

from benchmate.joinery import FAMILIES
from benchmate.joinery.rafter.ridge.family import FAMILY, features
from benchmate.layout.roster import entry
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from tests.builders import codes, length
from tests.joinery.rafter.ridge.test_shape import ROOF
from tests.joinery.rafter.roofs import Roof, built, ridge


def test_it_is_in_the_catalogue() -> None:
    """Under the word of the project file."""
    assert FAMILY in FAMILIES
    assert FAMILY.name == "rafter ridge"


def test_both_sides_are_made_at_once() -> None:
    """The head on the rafter, its place or its housing on the ridge."""
    head, place = features(ridge(), built(ROOF, ridge()))
    assert (head.timber, head.id, head.title) == ("rafter", "head-cut", "Head cut")
    assert (place.timber, place.id, place.title) == ("ridge", "top-housing", "Place for Rafter")
    housed = ridge(let_in="3/4")
    assert features(housed, built(ROOF, housed))[1].title == "Housing for Rafter"


def test_what_stops_one_side_stops_the_other() -> None:
    """A ridge that is missed is told on both."""
    roof = Roof(rise="9", own={"ridge": {"at": {"east": "8' 1", "up": "10'"}}})
    both = features(ridge(), built(roof, ridge()))
    assert [codes(side.findings) for side in both] == [("ridge-missed",)] * 2


def test_by_mill_rule_it_waits_for_the_ridge_and_the_ridge_for_its_width() -> None:
    """The length goes by the ridge's real far face, the place by the rafter's real width."""
    frame = built(ROOF, ridge())
    rafter, beam = lay_out(frame, "rafter"), lay_out(frame, "ridge")
    assert awaited(rafter, rafter.step("head-cut/shoulder")) == (("ridge", "top-housing/section"),)
    assert awaited(beam, beam.step("top-housing/start")) == (("rafter", "head-cut/section"),)


def test_the_frame_tells_what_meets_where() -> None:
    """The rafter's head bears in the ridge, and the ridge takes it 4 ft along."""
    frame = built(ROOF, ridge())
    assert [each.words for each in entry(frame, "rafter").meets] == ["head bears in Ridge"]
    (taken,) = entry(frame, "ridge").meets
    assert (taken.words, taken.at) == ("takes Rafter's head", length("48"))
