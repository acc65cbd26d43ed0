"""The tasks and cautions every family shares."""

import pytest

from benchmate.frame import practice
from benchmate.model.feature import Asks, Stage
from tests.builders import corners, length, real


def test_measuring_a_stick_reads_both_ways_across_it() -> None:
    """Each reading hooks on a reference face and goes to the face across."""
    task = practice.measure_task(corners().stick("post-se"), "foot-tenon")
    assert [reading.hook for reading in task.readings] == ["South face", "East face"]
    assert ["North face" in task.readings[0].way, "West face" in task.readings[1].way] == [True] * 2
    assert [reading.value for reading in task.readings] == [length("6")] * 2
    assert (task.stage, task.asks, task.lasting) == (Stage.MEASURE, Asks.SECTION, False)


def test_measuring_shows_what_was_measured_at_the_nearest_place() -> None:
    """The real section at the joint, then at the end, then of the whole stick."""
    typed = real({"foot": {"first": "6-1/8", "second": "6-1/8"}, "foot-tenon": {"first": "6-1/16"}})
    stick = corners({"post-se": typed}).stick("post-se")
    task = practice.measure_task(stick, "foot-tenon", "foot")
    assert [reading.value for reading in task.readings] == [length("6-1/16"), length("6-1/8")]


@pytest.mark.parametrize("name", ["SAW", "CHAINSAW", "CHISEL", "DRILL", "LIFT"])
def test_cautions_are_one_short_line(name: str) -> None:
    """A caution that cannot be read at a glance is not read."""
    caution = getattr(practice, name)
    assert caution.endswith(".")
    assert "\n" not in caution
    assert len(caution) <= 120
