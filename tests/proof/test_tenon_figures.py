"""The figures to saw, chop and bore a tenon and its mortise to agree with what is struck."""

from collections.abc import Iterator

import pytest

from benchmate.layout.step import Step
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Feature, Stage
from tests.proof.framings import FRAMINGS, OTHER, Sticks
from tests.proof.hooked import set_off
from tests.proof.tenons import ANY_FRAMING, ANY_TURN, OFF, OVERSIZE, VARIANTS, of
from tests.proof.textbook.tenon import tenon
from tests.proof.wood import Log, logs

CUTTING = (Stage.CUT, Stage.PARE, Stage.FINISH)
HALVES = ("bore", "bore-far")
"""Boring from both faces: the one goes to where the other comes, and there is no line inside."""


RIGHT_THROUGH = [variant for variant, words in VARIANTS.items() if "through" in words]


def _lines(feature: Feature) -> set[tuple[int, float]]:
    """Where the lines of a feature lie: on which axis, and how far in."""
    return {(line.axis.value.index(1), line.at.nm) for line in feature.lines if line.axis}


def _cutting(log: Log) -> Iterator[tuple[Feature, Step]]:
    """The tasks of a timber's joints at which wood goes."""
    for step in log.layout.steps:
        feature = log.layout.feature(step.feature)
        if feature is not None and feature.cuts and step.stage in CUTTING and step.line is None:
            yield feature, step


def _off_the_line(log: Log) -> Iterator[str]:
    """The figures hooked on a face that come to no line of their joint."""
    faces = {log.layout.stick.pose.words(face) for face in LONG_FACES}
    for feature, step in _cutting(log):
        through = step.id.endswith(HALVES) and "depth" not in {line.id for line in feature.lines}
        for reading in () if through else step.readings:
            if reading.hook in faces and set_off(log.at(feature), reading) not in _lines(feature):
                yield f"{step.id}: {reading.value} {reading.words}"


@pytest.mark.parametrize("sticks", [OFF, OVERSIZE], ids=["mill", "square"])
@pytest.mark.parametrize("variant", VARIANTS)
def test_every_cut_goes_to_a_line(variant: str, sticks: Sticks) -> None:
    """So deep from a face is as far as the line that was struck, whatever the stick measures."""
    _, frame = of(ANY_FRAMING[variant], VARIANTS[variant], sticks, turn=ANY_TURN[variant])
    found = logs(frame)
    assert [words for log in found.values() for words in _off_the_line(log)] == []
    assert any(step.readings for log in found.values() for _, step in _cutting(log))


@pytest.mark.parametrize("sticks", [OFF, OVERSIZE], ids=["mill", "square"])
@pytest.mark.parametrize(
    "variant", [each for each, words in VARIANTS.items() if "through" in words]
)
def test_the_halves_of_a_mortise_right_through_meet(variant: str, sticks: Sticks) -> None:
    """From where the shoulder bears, and from the face across: together all the wood there is."""
    for name in FRAMINGS:
        joint, frame = of(name, VARIANTS[variant], sticks)
        found = logs(frame)
        steps = [found[OTHER].layout.step(f"joint-mortise/{half}") for half in HALVES]
        deep = [reading.value.nm for step in steps for reading in step.readings]
        made = tenon(joint, found)
        assert sum(deep) == made.met.beyond - made.shoulder
        assert max(deep) - min(deep) <= 1
