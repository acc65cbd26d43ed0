"""The tasks at a mortise, whatever it is cut for."""

import pytest

from benchmate.frame.chopping import (
    BORE,
    TRY_DEPTH,
    Depth,
    Mouth,
    bore,
    never_bottom,
    pare_ends,
    pare_sides,
    try_depth,
)
from benchmate.frame.practice import CHISEL, DRILL
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Reading, Stage, Task
from tests.builders import length

MOUTH = Mouth(faces=(Face.FIRST,), waste="Inside the four lines only.")
DOWN = Reading(value=length("4-1/4"), hook="top face", way="down")
DEPTH = Depth(down=DOWN, draws="depth", beside=(Beside(length("3-3/4"), "left to the underside"),))

EVERY = (
    bore(MOUTH, DEPTH),
    pare_sides(MOUTH, length("2")),
    pare_ends(MOUTH, length("8")),
    try_depth(MOUTH, DEPTH, bears="the shoulder bears"),
)


@pytest.mark.parametrize("task", EVERY, ids=[task.id for task in EVERY])
def test_each_shows_its_mouth_and_one_figure(task: Task) -> None:
    """The faces it opens on, what may go there, and never two figures at once."""
    assert (task.faces, task.waste) == (MOUTH.faces, MOUTH.waste)
    assert len(task.readings) == 1


def test_it_is_roughed_out_before_it_is_pared() -> None:
    """Boring is rough work; walls and depth are tried with the chisel in hand."""
    assert [task.id for task in EVERY] == [BORE, "pare-sides", "pare-ends", TRY_DEPTH]
    assert [task.stage for task in EVERY] == [Stage.CUT, Stage.PARE, Stage.PARE, Stage.PARE]


def test_it_is_tried_to_the_depth_it_was_bored_to() -> None:
    """Both tell the same figure, work to the same line and tell the same beside it."""
    bored, *_, tried = EVERY
    assert bored.readings == tried.readings == (DOWN,)
    assert bored.draws == tried.draws == "depth"
    assert bored.beside == tried.beside == DEPTH.beside


def test_walls_are_pared_from_one_to_the_other() -> None:
    """The sides so far apart, and the ends."""
    _, sides, ends, _ = EVERY
    assert sides.readings[0] == Reading(value=length("2"), hook="near side", way="to the far side")
    assert ends.readings[0] == Reading(value=length("8"), hook="start", way="to the finish")


def test_what_can_hurt_is_told_where_it_can() -> None:
    """The drill's caution at the boring, the chisel's at the paring, after a joint's own."""
    assert [task.caution for task in EVERY] == [DRILL, CHISEL, CHISEL, ""]
    assert bore(MOUTH, DEPTH, beware="Ease the bit through. ").caution.endswith(f". {DRILL}")
    assert try_depth(MOUTH, DEPTH, bears="", beware="Lay a straightedge.").caution == (
        "Lay a straightedge."
    )


def test_a_joint_says_in_its_own_words_what_differs() -> None:
    """Why it is bored so, which way its sides run, where its ends come out short, what bears."""
    assert bore(MOUTH, DEPTH, why="First of all.").why == "First of all."
    assert pare_sides(MOUTH, length("2"), how="Right through").why.startswith("Right through: ")
    assert pare_ends(MOUTH, length("8"), where="inside").why.endswith("no shorter inside.")
    assert EVERY[-1].why == never_bottom("the shoulder bears")
    assert never_bottom("the nose bears") == "The tenon must never bottom out: the nose bears."
