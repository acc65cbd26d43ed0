"""What the records of soffit and tusk tenons accept, and what they answer."""

import pytest
from pydantic import ValidationError

from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon
from benchmate.measure.length import ZERO
from benchmate.measure.reading import Unit
from benchmate.model.directions import Direction
from benchmate.model.work import Bearing, Extension
from tests.builders import length
from tests.floor import Floor
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon


def settled(floor: Floor, bare: Unit = Unit.INCH, **words: object) -> TuskTenon:
    """A tusk tenon with what it leaves open worked out."""
    joint = tusk_tenon(**words)  # type: ignore[arg-type]
    return joint.proportioned(floor.frame(joint).wood, bare)


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"haunch": "0"}, "more than nothing"),
        ({"thickness": "0"}, "more than nothing"),
        ({"above_soffit": "-1"}, "not below zero"),
        ({"into": "joist"}, "its own timber"),
        ({"family": "tusk tenon"}, "soffit tenon"),
        ({"tusk": "1"}, "Extra inputs"),
    ],
)
def test_what_a_soffit_tenon_refuses(words: dict[str, object], says: str) -> None:
    """A record that could not be cut is refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        soffit_tenon(**words)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"tusk_height": "0"}, "more than nothing"),
        ({"tusk": "0"}, "more than nothing"),
        ({"horn": "-1"}, "not below zero"),
        ({"haunch": "1"}, "Extra inputs"),
    ],
)
def test_what_a_tusk_tenon_refuses(words: dict[str, object], says: str) -> None:
    """How high the tusk is has no published rule, so it is always given."""
    with pytest.raises(ValidationError, match=says):
        tusk_tenon(**words)  # type: ignore[arg-type]


@pytest.mark.parametrize("joint", [soffit_tenon(), tusk_tenon(length="4")])
def test_its_shoulder_is_on_the_beam_and_its_tenon_beyond(joint: SoffitTenon | TuskTenon) -> None:
    """Measured at the mortise; the stick is longer by the tenon."""
    south = Direction.SOUTH
    assert joint.bearings() == (Bearing("joist", south, "beam", ZERO, "joist-end-mortise"),)
    assert joint.extensions() == (Extension("joist", south, length("4")),)
    assert joint.mortise == "joist-end-mortise"


def test_a_tusk_tenon_as_published() -> None:
    """Tenon 1/6 of the beam, tusk and horn 1/6 of the joist, penetration twice the tenon.

    A 9" joist in a 9" beam: tenon 1-1/2", tusk let in 1-1/2" (trade.md 7.5 [CALC], after
    Rivington-tusk, 2.4).
    """
    made = settled(Floor(beam="9 x 8", joist="9 x 4"))
    assert (made.thickness, made.tusk, made.horn) == (length("1-1/2"),) * 3
    assert made.length == length("3")
    assert made.set_back is None, "where the two meet says how deep it lies"


def test_what_is_given_holds() -> None:
    """The penetration then follows the tenon that is given, and the horn the tusk."""
    floor = Floor(beam="9 x 8", joist="9 x 4")
    made = settled(floor, thickness="2", tusk="1")
    assert (made.thickness, made.length) == (length("2"), length("4"))
    assert (made.tusk, made.horn) == (length("1"),) * 2
    plain = settled(floor, horn="0", length="5", set_back="0")
    assert (plain.horn, plain.length, plain.set_back) == (ZERO, length("5"), ZERO)


def test_settled_work_settles_to_itself() -> None:
    """So it does not matter who settles it, or how often."""
    floor = Floor()
    made = settled(floor)
    assert made.proportioned(floor.frame(made).wood, Unit.INCH) == made
    assert soffit_tenon().proportioned(floor.frame().wood, Unit.INCH) == soffit_tenon()


def test_an_open_length_cannot_be_asked_for() -> None:
    """A stick must not come out short without a word."""
    with pytest.raises(ValueError, match="joist-end has no length"):
        tusk_tenon().extensions()


@pytest.mark.parametrize("joint", [soffit_tenon(drop="1", at="4'"), tusk_tenon(horn="0")])
def test_a_record_says_itself_again(joint: SoffitTenon | TuskTenon) -> None:
    """What is written to the file reads back equal, and what was left open stays so."""
    assert type(joint).model_validate(joint.model_dump()) == joint
