"""A leaning floor told wrong is found out, whichever of its two points is off."""

from dataclasses import replace

import pytest

from benchmate.measure.length import Length
from benchmate.model.feature import Feature, Line
from benchmate.model.solids import Cut, Plane
from tests.builders import length
from tests.floor import Floor, over
from tests.joinery.joist_tenon.joints import soffit_tenon
from tests.proof.leaning import LEANING, off_leaning
from tests.proof.told import NEAR_ENOUGH, untrue
from tests.proof.wood import Log, logs

(FLOOR,) = LEANING
MM = 1_000_000

FLOORS = {
    "level with its beam": Floor(),
    "lower": Floor(lower="1"),
    "proud": Floor(lower="-1"),
    "in a housing": over(Floor(near=False, lower="1"), (0, 16, 0, 0), "square"),
    "level, in a housing": over(Floor(near=False), (0, 16, 0, 0), "square"),
    "measured from below": Floor(lower="1", from_top=False),
}


def beam(floor: Floor) -> Log:
    """The beam of a soffit tenon."""
    return logs(floor.frame(soffit_tenon(floor.end)))["beam"]


def off(log: Log, feature: Feature | None = None) -> float:
    """How far the haunch's floor lies from where it is told."""
    found = feature or log.feature("joist-end-mortise")
    (plane,) = {each for cut in found.cuts for each in cut.planes if each.line == FLOOR}
    line = next(each for each in found.lines if each.id == FLOOR)
    step = log.layout.step(f"joist-end-mortise/{FLOOR}")
    return off_leaning(log.layout.stick, found, line, step, plane)


def moved(feature: Feature, name: str, by: int) -> Feature:
    """A feature with one of its lines told so far off."""

    def told(line: Line) -> Line:
        return replace(line, at=Length(line.at.nm + by)) if line.id == name else line

    return replace(feature, lines=tuple(map(told, feature.lines)))


@pytest.mark.parametrize("name", FLOORS)
def test_a_floor_told_right_is_where_it_is_told(name: str) -> None:
    """From the face or a housing's floor, to the line, the wall or the arris where it ends."""
    assert off(beam(FLOORS[name])) <= NEAR_ENOUGH


@pytest.mark.parametrize(
    ("name", "line"),
    [
        ("lower", "upper-side"),
        ("lower", "haunch-top"),
        ("proud", "haunch-top"),
        ("in a housing", "housing-near"),
        ("in a housing", "housing-floor"),
    ],
)
def test_a_line_it_counts_from_that_is_off_is_noticed(name: str, line: str) -> None:
    """A millimetre either way."""
    log = beam(FLOORS[name])
    feature = log.feature("joist-end-mortise")
    assert all(off(log, moved(feature, line, by)) > NEAR_ENOUGH for by in (MM, -MM))


def test_a_floor_cut_otherwise_is_noticed() -> None:
    """Its plane a millimetre deeper than its step says."""
    log = beam(FLOORS["lower"])
    feature = log.feature("joist-end-mortise")

    def deeper(plane: Plane) -> Plane:
        steep = round(sum(part * part for part in plane.normal) ** 0.5)
        return replace(plane, offset=plane.offset + MM * steep)

    cuts = tuple(
        Cut(tuple(deeper(plane) if plane.line == FLOOR else plane for plane in cut.planes))
        for cut in feature.cuts
    )
    wrong = replace(feature, cuts=cuts)
    assert off(log, wrong) == pytest.approx(MM, rel=0.1)
    features = tuple(wrong if each is feature else each for each in log.layout.features)
    told = [*untrue(replace(log, layout=replace(log.layout, features=features)))]
    assert any(FLOOR in words for words in told)


def test_a_step_that_says_another_depth_is_noticed() -> None:
    """The figure a framer reads, not the line's own place, is what is held against the plane."""
    log = beam(FLOORS["lower"])
    feature = log.feature("joist-end-mortise")
    (plane,) = {each for cut in feature.cuts for each in cut.planes if each.line == FLOOR}
    line = next(each for each in feature.lines if each.id == FLOOR)
    step = log.layout.step(f"joist-end-mortise/{FLOOR}")
    reading = replace(step.readings[0], value=step.readings[0].value + length("1/8"))
    wrong = replace(step, readings=(reading,))
    assert off_leaning(log.layout.stick, feature, line, wrong, plane) > MM
