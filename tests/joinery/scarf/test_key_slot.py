"""Half the slot for folding wedges, in either stick."""

import pytest

from benchmate.joinery.scarf.key_slot import key_cuts, key_lines, key_tasks
from benchmate.layout.walk import lay_out
from tests.builders import length, lengths, read
from tests.joinery.scarf.plates import KINDS, both, plate

KEY = {"key": "1-1/2"}


@pytest.mark.parametrize("kind", KINDS)
def test_no_key_no_slot(kind: str) -> None:
    """It is cut only where the joint asks for it."""
    for half in both(plate(kind)):
        assert (key_cuts(half), key_lines(half), key_tasks(half)) == ((), (), ())


def test_the_notch_goes_from_the_splay_to_its_floor() -> None:
    """3/4" into either stick at the middle, 1-1/2" along; the wood beyond the floor stays."""
    one, other = both(plate("stop-splayed", joint=KEY))
    spots = {"3": False, "3-1/2": True, "4-1/2": True, "5": True}
    for deep, gone in spots.items():
        (cut,) = key_cuts(one)
        assert cut.takes(length("14'").nm, length(deep).nm, 1) is gone
        assert not cut.takes(length("14' 1").nm, length(deep).nm, 1)
    (cut,) = key_cuts(other)
    assert cut.takes(length("-18").nm, length("4-1/2").nm, 1)
    assert not cut.takes(length("-18").nm, length("5").nm, 1)


@pytest.mark.parametrize(
    ("timber", "end", "along", "floor", "side"),
    [
        ("one", "east", ("13' 11-1/4", "14' 3/4"), "3-1/4", "underside"),
        ("other", "west", ("1' 5-1/4", "1' 6-3/4"), "4-3/4", "top face"),
    ],
)
def test_its_lines(timber: str, end: str, along: tuple[str, str], floor: str, side: str) -> None:
    """Struck beside the lap; the two halves lie opposite one another about 14'."""
    layout = lay_out(plate("under-squinted", joint=KEY), timber)
    steps = {name: layout.step(f"{end}-end-scarf/key-{name}") for name in ("start", "finish")}
    assert [each.readings[-1].value for each in steps.values()] == list(lengths(*along))
    found = layout.step(f"{end}-end-scarf/key-floor")
    assert (read(found), found.waste_side) == (lengths(floor), side)
    assert [each.value for each in found.beside] == [length("3/4")]
    assert "North face" in found.on
    assert "South face" in found.on
    assert "face" not in found.on.replace("South face", "").replace("North face", "")
    assert steps["start"].on == steps["finish"].on == found.on
    for each in steps.values():
        assert [beside.value for beside in each.beside] == [length("1-1/2")]


def test_the_notch_is_cut_on_the_finished_splay() -> None:
    """Its depth is measured at its middle, and nothing of it is a guess at strength."""
    (half, _) = both(plate("stop-splayed", joint=KEY))
    (task,) = key_tasks(half)
    assert [each.value for each in task.readings] == [length("3/4")]
    assert "last" in task.why
