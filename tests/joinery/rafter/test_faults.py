"""What keeps timbers from being rafters, plates and ridges."""

from benchmate.joinery.rafter.faults import crossed_faults, rafter_faults
from benchmate.model.project import Timber
from tests.builders import timber
from tests.joinery.rafter.roofs import Roof

ROOF = Roof()
RAFTER, PLATE = ROOF.raking(), ROOF.on_plate()


def keys(rafter: Timber, into: Timber) -> list[str]:
    """The keys of all that is told."""
    return [fault.key for fault in crossed_faults(rafter, into)]


def test_a_sound_pair_has_no_fault() -> None:
    """A rafter over a plate."""
    assert keys(RAFTER, PLATE) == []


def test_a_timber_that_does_not_rake() -> None:
    """Only a timber with an incline is a rafter."""
    (fault,) = rafter_faults("timber", PLATE)
    assert (fault.key, "does not rake" in fault.problem) == ("timber", True)
    assert keys(PLATE, PLATE) == ["timber"], "and nothing else is told of it"


def test_a_rafter_measured_from_its_underside() -> None:
    """The roof plane has to be a reference face."""
    (fault,) = rafter_faults("timber", ROOF.raking(first_face="down"))
    assert "not measured from its top" in fault.problem


def test_what_a_rafter_cannot_bear_on() -> None:
    """A post, another rafter, a timber without a place, one in its own plane."""
    post = timber("post", length="8'", at={"east": "0", "north": "0"}, reference_end_at="0")
    loose = timber("loose", first_face="up", second_face="west", reference_end="south")
    along = Roof(heading="north").on_plate()
    roll = {"towards": "east", "run": "12", "rise": "8"}
    rolled = Roof(own={"plate": {"roll": roll}}).on_plate()
    for into, words in (
        (rolled, "rolled to lie"),
        (post, "stands"),
        (Roof(heading="west").raking("other"), "rakes too"),
        (loose, "has none"),
        (along, "do not cross"),
    ):
        (fault,) = crossed_faults(RAFTER, into)
        assert (fault.key, words in fault.problem) == ("into", True), words
