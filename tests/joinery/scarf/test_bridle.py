"""The tongue on a lap's tip, and the open slot for the other's."""

from functools import partial

import pytest

from benchmate.joinery.scarf.bridle import bridle_cuts, bridle_lines, bridle_tasks
from benchmate.joinery.scarf.shape import Half
from benchmate.layout.walk import lay_out
from tests.builders import length, lengths, line, read, real
from tests.joinery.scarf.plates import KINDS, both, plate

bridled = partial(plate, "bridled")


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind != "bridled"])
def test_other_kinds_have_neither(kind: str) -> None:
    """No cut, no line, no task."""
    made = plate(kind)
    for half in both(made):
        lines = bridle_lines(half, made.project.tape)
        assert (bridle_cuts(half), lines, bridle_tasks(half)) == ((), (), ())


def taken(half: Half, x: str, u: str, v: str) -> bool:
    """Whether the tongue's or the slot's cuts take the wood at a spot."""
    return any(cut.takes(*(length(each).nm for each in (x, u, v))) for cut in bridle_cuts(half))


def test_the_tongue_stays_and_the_slot_goes() -> None:
    """Worked by hand on the leading stick: its tongue lies 3" to 4-1/2" in from the south."""
    (half, _) = both(bridled())
    assert not taken(half, "15' 4", "1", "4")
    assert taken(half, "15' 4", "1", "2")
    assert taken(half, "15' 4", "1", "5")
    assert not taken(half, "15' 2", "1", "2")
    assert taken(half, "12' 6", "5", "4")
    assert not taken(half, "12' 5", "5", "4")
    assert not taken(half, "12' 6", "3", "4")
    assert not taken(half, "12' 6", "5", "2")


def test_its_lines_are_struck_where_the_wood_stays() -> None:
    """The tongue's on the kept face and the end, the slot's on the face it is open to."""
    layout = lay_out(bridled(), "one")
    on = {
        "tongue-shoulder": "top face, South face and North face",
        "tongue-near": "top face and end grain of the east end",
        "tongue-far": "top face and end grain of the east end",
        "slot-end": "underside",
        "slot-near": "underside",
        "slot-far": "underside",
    }
    for name, faces in on.items():
        assert set(layout.step(f"east-end-scarf/{name}").on.split(", ")) == set(faces.split(", "))
    assert layout.step("east-end-scarf/tongue-near").waste_side == "South face"
    assert layout.step("east-end-scarf/slot-near").waste_side == "North face"
    assert layout.step("east-end-scarf/slot-end").waste_side == "east end"
    told = {
        "tongue-near": ("1-1/2",),
        "tongue-far": ("1-1/2", "3-1/2"),
        "slot-near": ("1-1/2",),
        "slot-far": ("1-1/2",),
    }
    for name, figures in told.items():
        beside = layout.step(f"east-end-scarf/{name}").beside
        assert tuple(each.value for each in beside) == lengths(*figures)


def test_figures_of_tongue_and_slot() -> None:
    """Set-back 3", tongue 1-1/2", 3" long, the slot 1/8" longer; what is over comes off the north.

    A 1-1/2" blade is usual (trade notes 2.6, Cadley).
    """
    made = bridled(real={"one": real({"all": {"second": "8-1/4"}})})
    one, other = both(made)
    lines = bridle_lines(one, made.project.tape)
    assert [line(lines, f"tongue-{side}").at for side in ("near", "far")] == list(
        lengths("3", "4-1/2")
    )
    assert line(lines, "tongue-far").beside[1].value == length("3-3/4")
    assert line(lines, "tongue-shoulder").at == length("15' 3")
    end = line(lines, "slot-end")
    assert (end.at, *(each.value for each in end.beside)) == lengths("12' 5-7/8", "3-1/8", "1/8")
    assert "pared to this slot" in end.why
    assert "as drawn" in line(bridle_lines(other, made.project.tape), "slot-end").why


def test_the_second_slot_follows_the_first_tongue() -> None:
    """As it was measured once cut."""
    made = {"one": real(as_cut={"east-end-scarf": {"thickness": "1-5/8", "length": "2-7/8"}})}
    found = bridled(real=made)
    lines = bridle_lines(both(found)[1], found.project.tape)
    assert line(lines, "slot-far").at == length("4-5/8")
    assert line(lines, "slot-end").at == length("3")
    assert (
        line(lines, "slot-far").why == 'Follows One\'s tongue as cut: 1-5/8" thick and 2-7/8" long.'
    )


def test_one_figure_to_one_task() -> None:
    """The tongue is sawn free face by face, then the slot is sawn, chopped and pared."""
    made = bridled(real={"one": real({"all": {"first": "8-1/4"}})})
    tasks = {task.id: task for task in bridle_tasks(both(made)[0])}
    figures = {
        "cut-tongue-near": "3",
        "cut-tongue-far": "3-1/2",
        "saw-slot": "4-1/4",
        "chop-slot": "3-1/8",
        "pare-slot": "1-1/2",
        "pare-tongue": "1-1/2",
    }
    found = {name: [each.value for each in task.readings] for name, task in tasks.items()}
    assert found == {name: [length(figure)] for name, figure in figures.items()}
    assert "Not measured here yet" in tasks["cut-tongue-far"].caution
    assert "Not measured here yet" not in tasks["saw-slot"].caution


def test_the_slot_of_the_second_stick_is_sawn_from_the_top() -> None:
    """As deep as the lap lies from the face both share, whatever the stick."""
    layout = lay_out(bridled(), "other")
    sawn = layout.step("west-end-scarf/saw-slot")
    assert (read(sawn), sawn.readings[0].hook) == (lengths("4"), "top face")
    assert "Not measured" not in sawn.caution
    assert "Not measured" in lay_out(bridled(), "one").step("east-end-scarf/saw-slot").caution
