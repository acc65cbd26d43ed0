"""The tail from its record."""

from benchmate.joinery import FAMILIES
from benchmate.joinery.rafter.tail.family import FAMILY, features
from benchmate.layout.walk import lay_out
from tests.builders import length
from tests.joinery.rafter.roofs import Roof, built, seat, shed, tail


def test_it_is_in_the_catalogue() -> None:
    """Under the word of the project file."""
    assert FAMILY in FAMILIES
    assert FAMILY.name == "rafter tail"


def test_the_tail_is_one_feature_of_its_rafter() -> None:
    """Named after its end, at the foot's shoulder."""
    (found,) = features(tail(), built(Roof(), seat(), tail()))
    assert (found.timber, found.id, found.title) == ("rafter", "foot-tail", "Foot tail")
    assert found.place == ("foot-tail", "foot")


def test_it_projects_from_the_nearest_seat() -> None:
    """A shed roof's upper tail from its upper plate, the lower from the lower."""
    low, high = tail(), tail(id="high", end="head")
    frame = shed(Roof(run="12'"), seat(), seat(id="top", into="upper"), low, high)
    told = [features(each, frame)[0].lines[0].beside[0] for each in (low, high)]
    assert [beside.value for beside in told] == [length("12"), length("18")]
    assert told[1].words.endswith("from the heel line on Upper")


def test_its_line_is_the_datum_of_the_stick() -> None:
    """Marks along the rafter are measured from the tail line once it is struck."""
    layout = lay_out(built(Roof(), seat(), tail()), "rafter")
    assert layout.shoulder == "foot-tail/shoulder"
