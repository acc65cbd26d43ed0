"""The order of work, and what features start with."""

import pytest

from benchmate.measure.length import Length
from benchmate.model.feature import Asks, Feature, Line, Reading, Stage, Task
from benchmate.model.solids import Axis


def test_work_runs_from_the_rough_stick_to_the_label() -> None:
    """All layout comes before any cutting (trade notes 5.1), the fit before the finish."""
    assert [stage.name for stage in sorted(Stage)] == [
        "CHOOSE",
        "MEASURE",
        "END",
        "MARK",
        "CHAMFER",
        "BACK_CHECK",
        "KNIFE",
        "CUT",
        "PARE",
        "AS_CUT",
        "FIT",
        "FINISH",
        "LABEL",
    ]


def test_asking_nothing_is_false() -> None:
    """A step that asks for no size can be told by truth alone."""
    assert [bool(asks) for asks in Asks] == [False, True, True]


def test_a_line_is_marked_and_a_task_lasts_unless_they_say_otherwise() -> None:
    """The common case needs no words."""
    line = Line(id="shoulder", title="Shoulder", axis=Axis.ALONG, at=Length(0), why="Bears.")
    task = Task(id="saw", stage=Stage.CUT, title="Saw", why="Cut.")
    assert line.stage is Stage.MARK
    assert (line.faces, line.readings, line.waste) == ((), (), "")
    assert (task.asks, task.lasting, task.faces) == (Asks.NOTHING, True, ())


def test_a_feature_is_frozen() -> None:
    """What the engine worked out is not changed under the screen."""
    feature = Feature(id="end", timber="post", title="Ends", at=Length(0))
    reading = Reading(value=Length(1), hook="South face", way="in")
    for thing, name in ((feature, "at"), (reading, "value")):
        with pytest.raises(AttributeError):
            setattr(thing, name, Length(2))
    assert feature.cuts == ()
