"""How steps are grouped in the step list."""

from benchmate.layout.walk import lay_out
from benchmate.measure.printing import Tape
from benchmate.model.feature import Stage
from benchmate.model.progress import Progress
from benchmate.tui.stages import STAGE_WORDS, Group, group_of
from benchmate.workbench.walk import walk_of
from tests.joinery.tenon.girts import girt_through


def test_every_stage_has_a_heading() -> None:
    """A step of a stage without words could not be listed."""
    assert set(STAGE_WORDS) == set(Stage)
    assert len(set(STAGE_WORDS.values())) == len(Stage)


def test_where_the_pegs_of_a_tenon_are_listed() -> None:
    """Pricked as the joint is fitted, their shifted marks together, bored among the last things."""
    frame = girt_through()
    layout = lay_out(frame, "girt")
    walk = walk_of(frame.timber("girt"), layout, Progress(timber="girt"), Tape())
    groups = {
        step.id.partition("/")[2]: group_of(walk, step)
        for step in layout.steps
        if step.feature == "west-end-tenon-pegs"
    }
    assert groups == {
        "prick-pegs": Group("Fit", "West end tenon pegs"),
        "peg-line": Group("West end tenon pegs", "Peg line, drawn"),
        "peg-1": Group("West end tenon pegs", "Peg 1 centre"),
        "peg-2": Group("West end tenon pegs", "Peg 2 centre"),
        "bore-pegs": Group("Finish", "West end tenon pegs: bore the 2 peg holes in the tenon"),
    }
