"""The stored parameters of a tail."""

import pytest
from pydantic import ValidationError

from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.work import Extension
from tests.builders import length
from tests.joinery.rafter.roofs import Roof, tail


def test_a_tail_is_at_the_foot_if_nothing_else_is_said() -> None:
    """And is named after its end."""
    assert (tail().end, tail().tail) == (Direction.DOWN, "foot-tail")
    assert tail(end="head").tail == "head-tail"


def test_the_tip_reaches_beyond_the_end_of_its_incline() -> None:
    """A plumb cut on the underside; a level one off its corner; a level tail not at all."""
    both = tail(cut="plumb and level", level="3")
    place = "foot-tail"
    down = Direction.DOWN
    assert tail().extensions() == (Extension("rafter", down, ZERO, shape="plumb", place=place),)
    assert both.extensions() == (
        Extension("rafter", down, ZERO, shape="plumb", place=place, level=length("3")),
    )
    assert tail(cut="level").extensions()[0].shape == "level"


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ({"cut": "plumb and level"}, "how long its level cut is"),
        ({"cut": "plumb", "level": "3"}, "says nothing"),
        ({"cut": "level", "level": "3"}, "says nothing"),
        ({"cut": "square"}, "Input should be"),
    ],
)
def test_the_level_cut_is_said_once(words: dict[str, str], said: str) -> None:
    """How long it is where there is one beside a plumb cut, and only there."""
    with pytest.raises(ValidationError, match=said):
        tail(**words)


def test_what_cannot_be_is_told() -> None:
    """A post has no tail, a rafter no west end, and a head no level cut."""
    roof = Roof()
    rafter = {"rafter": roof.raking()}
    assert tail().faults(rafter) == ()
    assert tail(end="head").faults(rafter) == ()
    assert [fault.key for fault in tail().faults({"rafter": roof.on_plate()})] == ["timber"]
    assert [fault.key for fault in tail(end="west").faults(rafter)] == ["end"]
    level = tail(end="head", cut="plumb and level", level="2")
    assert [fault.key for fault in level.faults(rafter)] == ["cut"]
    assert tail().timbers() == {"timber": "rafter"}
