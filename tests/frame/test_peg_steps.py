"""The steps of pegs: in which order, on which face, and which way they are drawn."""

import pytest

from benchmate.frame import peg_steps
from benchmate.frame.peg_steps import (
    BORE,
    ENGINEER,
    FINGERS,
    LIFT_THE_BIT,
    NOT_YET,
    PRICK,
    bore_received,
    bore_tenon,
    depth_line,
    holes_words,
    peg_id,
    peg_title,
    prick,
    relish_beyond,
    towards_shoulder,
    wood_left,
)
from benchmate.frame.practice import DRILL
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Stage
from benchmate.model.solids import Axis
from tests.builders import length
from tests.frame.test_pegs import holes, pegs

TAPE = Tape()


@pytest.mark.parametrize("name", ["LIFT_THE_BIT", "FINGERS", "NOT_YET"])
def test_cautions_are_one_short_line(name: str) -> None:
    """A caution that cannot be read at a glance is not read."""
    caution = getattr(peg_steps, name).strip()
    assert caution.endswith(".")
    assert len(caution) <= 120


def test_ids_and_titles() -> None:
    """Each centre keeps its id whatever the others do; a single one has no number."""
    assert [peg_id(place) for place in range(3)] == ["peg-1", "peg-2", "peg-3"]
    assert peg_title(pegs(), 1) == "Peg 2 centre"
    assert peg_title(pegs(count=1, spacing=None), 0) == "Peg centre"
    assert holes_words(pegs()) == "2 peg holes"
    assert holes_words(pegs(count=1, spacing=None)) == "peg hole"


def test_wood_left_is_a_number_and_diameters() -> None:
    """A 4" tenon, a 1" peg 1-1/2" from the shoulder: 2-1/2" on centre, 2.5 diameters, 2" clear.

    Reckoned in trade.md 3: Wharton calls it good, Rogers asks for 4 diameters. No law here.
    """
    assert wood_left(length("2-1/2"), pegs(), "the tenon's end", TAPE) == (
        Beside(
            length("2-1/2"), "from the centre to the tenon's end, 2.5 diameters of the 1\" hole"
        ),
        Beside(length("2"), "of wood from the hole to the tenon's end"),
    )
    assert "engineer decides" in ENGINEER


def test_relish_beyond_a_drawn_hole_counts_from_the_tenon_s_own() -> None:
    """The same tenon drawn 1/8" has its hole at 1-3/8": 2-5/8", 2.6 diameters, 2-1/8" clear.

    Undrawn both holes lie in one place, so it is told as any other wood.
    """
    assert relish_beyond(length("2-5/8"), pegs(), TAPE) == (
        Beside(
            length("2-5/8"),
            "from the tenon's own hole, drawn 1/8\" nearer the shoulder, to its end, "
            '2.6 diameters of the 1" hole',
        ),
        Beside(length("2-1/8"), "of wood from that hole to the tenon's end"),
    )
    undrawn = pegs(draw="0")
    assert relish_beyond(length("2-1/2"), undrawn, TAPE) == wood_left(
        length("2-1/2"), undrawn, "the tenon's end", TAPE
    )


def test_the_way_of_the_draw_is_said_in_so_many_words() -> None:
    """Towards the shoulder (trade.md 3, TFG-when), and away from the end it lies at."""
    said = towards_shoulder(pegs(), "west end", TAPE)
    assert said.startswith('Draw 1/8" towards the shoulder, away from the west end')
    assert towards_shoulder(pegs(draw="0"), "west end", TAPE) == ""


@pytest.mark.parametrize(("stop", "faces"), [(None, "both cheeks"), ("4", "Before Girt")])
def test_the_receiving_timber_is_bored_first(stop: str | None, faces: str) -> None:
    """Square through both cheeks before the tenon goes in, from the side that is said (FHB-peg)."""
    made = holes(
        Face.SECOND,
        None if stop is None else length(stop),
        blind_depth=stop,
    )
    task = bore_received(made, "Girt")
    assert (task.id, task.stage, task.faces) == (BORE, Stage.FINISH, (Face.SECOND,))
    assert task.title == "Bore the 2 peg holes from the West face"
    assert task.readings[0].value == length("1")
    assert faces in task.why
    assert "Before Girt goes in" in task.why
    assert "green holes close up" in task.why
    assert task.caution == (f"{LIFT_THE_BIT} {DRILL}" if stop is None else DRILL)
    assert [each.value for each in task.beside] == ([] if stop is None else [length("4")])


def test_the_tenon_is_pricked_through_from_the_fitted_joint() -> None:
    """With the bit turned backwards; where the marks should lie is shown as a check (FHB-peg)."""
    task = prick(holes(), Face.REFERENCE_END, "Sill")
    assert (task.id, task.stage, task.faces) == (PRICK, Stage.FIT, (Face.FIRST,))
    assert [(each.value, each.hook) for each in task.readings] == [
        (length("2"), "foot shoulder line")
    ]
    assert "turn the bit backwards in each hole of Sill" in task.why
    assert task.caution == f"{NOT_YET}{FINGERS}"
    assert prick(holes(draw="0"), Face.FAR_END, "Sill").caution == FINGERS
    assert task.readings[0].way.startswith("towards the foot")
    raking = prick(holes(), Face.REFERENCE_END, "Sill", rakes=True)
    assert raking.readings[0].way.startswith("square to it, towards the foot")


def test_the_tenon_is_bored_at_the_shifted_marks() -> None:
    """The caution says which way again: here the peg joins the timbers or parts them."""
    task = bore_tenon(holes(), towards_shoulder(pegs(), "head", TAPE))
    assert (task.id, task.stage) == (BORE, Stage.FINISH)
    assert "at the marks as shifted" in task.why
    assert task.caution.startswith('Draw 1/8" towards the shoulder, away from the head')
    assert task.caution.endswith(f"{LIFT_THE_BIT} {DRILL}")
    undrawn = bore_tenon(holes(draw="0"), "")
    assert "at the pricked marks" in undrawn.why
    assert undrawn.caution == f"{LIFT_THE_BIT} {DRILL}"


def test_fitting_comes_after_measuring_as_cut_and_before_the_holes() -> None:
    """The mortise is cut to the measured tenon, so there is nothing to fit before that."""
    assert Stage.AS_CUT < Stage.FIT < Stage.FINISH < Stage.LABEL


@pytest.mark.parametrize(
    ("face", "stop", "hook", "way"),
    [
        (Face.FIRST, "4", "South face", "North face"),
        (Face.FAR_FIRST, "2", "North face", "South face"),
    ],
)
def test_blind_holes_have_a_depth(face: Face, stop: str, hook: str, way: str) -> None:
    """Written beside them on the face they are bored from; holes right through have none."""
    beside = (Beside(length("1"), "past the tenon"),)
    line = depth_line(holes(face, length(stop)), length("4"), beside)
    assert (line.axis, line.at, line.faces) == (Axis.FIRST, length(stop), (face,))
    (reading,) = line.readings
    assert (reading.value, reading.hook) == (length("4"), hook)
    assert way in reading.way
    assert line.beside == beside
    with pytest.raises(ValueError, match="no depth"):
        depth_line(holes(), length("4"), ())
