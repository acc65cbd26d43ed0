"""The plumb cut at a rafter's head."""

import pytest

from benchmate.frame.frame import Real
from benchmate.frame.practice import CHISEL, SAW
from benchmate.joinery.rafter.plumb_cut import pare_plumb_cut, saw_plumb_cut
from benchmate.joinery.rafter.raking import Rafter, rafter
from benchmate.joinery.rafter.words import setting
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Stage
from tests.builders import frame, length, real
from tests.joinery.rafter.roofs import Roof

TAPE = Tape()
ROOF = Roof(rise="9", run="8'", over="5", out="12", rafter="8 x 4")


def head(sizes: Real | None = None) -> Rafter:
    """A 9 in 12 rafter at its head."""
    return rafter(frame(ROOF.raking(), real={"rafter": sizes or real()}), "rafter", "head-cut")


@pytest.mark.parametrize(("measured", "long"), [("8", "10"), ("8-1/4", "10-5/16")])
def test_it_is_sawn_as_long_as_the_stick_is_deep(measured: str, long: str) -> None:
    """At 3-4-5, 8" square to the edge are 10" plumb, and 8-1/4" are 10-5/16"."""
    found = head(real({"head-cut": {"first": measured}}))
    task = saw_plumb_cut(found, Face.FAR_END, "shoulder", TAPE)
    assert (task.id, task.stage, task.draws) == ("saw-end", Stage.CUT, "shoulder")
    (reading,) = task.readings
    assert (reading.value, reading.hook) == (length(long), "top edge")
    assert task.faces == (found.side, found.side.opposite)
    assert task.waste == "Towards the head, beyond the line."
    assert task.setting == setting(found, TAPE, plumb=True)
    assert task.caution == SAW


def test_it_waits_for_the_stick_to_be_measured() -> None:
    """The depth is not known before."""
    task = saw_plumb_cut(head(), Face.FAR_END, "shoulder", TAPE)
    assert task.caution.startswith("Not measured here yet: measure first")


def test_it_is_pared_as_wide_as_the_rafter() -> None:
    """4" across the cut, from the reference side."""
    found = head()
    task = pare_plumb_cut(found, "It bears.")
    assert (task.id, task.stage, task.why) == ("pare", Stage.PARE, "It bears.")
    (reading,) = task.readings
    assert (reading.value, reading.hook) == (length("4"), "South face")
    assert (task.faces, task.caution) == (found.both_sides, CHISEL)
