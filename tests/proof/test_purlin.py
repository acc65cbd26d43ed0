"""A purlin in a roof: cut as it would be in a flat roof, and a fit in the slope."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from tests.builders import codes, real
from tests.joinery.roofs import dropped, roof, tenoned
from tests.proof.fits import overlaps
from tests.proof.told import untrue
from tests.proof.wood import logs

JOINTS = {"tenoned": tenoned(), "barefaced": tenoned(set_back="0"), "dropped in": dropped()}


def _steps(frame: Frame, timber: str, feature: str) -> list[tuple[object, ...]]:
    """What one joint's steps say, wherever along its timber it lies."""
    return [_said(step) for step in lay_out(frame, timber).steps if feature in step.feature]


def _said(step: Step) -> tuple[object, ...]:
    along = {"start", "finish", "housing-start", "housing-finish", "back-check", "strike-floor"}
    figures = () if step.id.rpartition("/")[2] in along else tuple(r.value for r in step.readings)
    return (step.id, step.faces, step.waste_side, figures)


@pytest.mark.parametrize("name", JOINTS)
def test_a_roof_is_a_floor_that_was_turned_up(name: str) -> None:
    """Turned up with its rafters, a purlin keeps every figure across them and of its own ends."""
    flat, steep = roof(*JOINTS[name], rise="0'"), roof(*JOINTS[name])
    for timber in ("purlin", "rafter-west", "rafter-east"):
        assert _steps(flat, timber, "purlin") == _steps(steep, timber, "purlin")
    walks = [[step.readings for step in lay_out(each, "purlin").steps] for each in (flat, steep)]
    assert walks[0] == walks[1]


@pytest.mark.parametrize("name", JOINTS)
@pytest.mark.parametrize("rise", ["0'", "4'", "8'", "12'"])
def test_it_fits_in_the_slope(name: str, rise: str) -> None:
    """The purlin bears in both rafters and shares no wood with them."""
    found = logs(roof(*JOINTS[name], rise=rise))
    assert list(overlaps(found.values())) == []
    assert [words for log in found.values() for words in untrue(log)] == []
    purlin = found["purlin"].wood
    for side, way in (("west", (-1000, 0, 0)), ("east", (1000, 0, 0))):
        pushed = purlin.moved(way).within(found[f"rafter-{side}"].wood).volume
        assert (pushed > 1000 * 1e14) is (name != "dropped in")


def test_a_joint_lies_as_far_up_as_the_roof_is_long() -> None:
    """Half of a rafter 14.422 ft long (8 in 12, trade notes 7.2: 14.42 in a foot of run)."""
    frame = roof(*tenoned())
    step = lay_out(frame, "rafter-west").step("purlin-west-mortise/housing-start")
    (reading,) = step.readings
    assert abs(reading.value.nm / 25.4e6 - 6 * 14.4222) < 0.001


def test_a_stick_that_is_over_follows_by_mill_rule() -> None:
    """The rafter's far side is where it was measured, so the purlin comes a quarter shorter."""
    plain, over = (
        roof(*tenoned(), real=sizes)
        for sizes in ({}, {"rafter-west": real({"all": {"second": "6-1/4"}})})
    )
    less = plain.stick("purlin").body - over.stick("purlin").body
    assert less.nm == 25_400_000 // 4


def test_another_slope_is_stopped() -> None:
    """9 in 12 between rafters of 8 in 12 would stand askew; a hair of difference does not."""
    works = tenoned()
    end = lay_out(roof(*works, rolled="9'"), "purlin").feature("end")
    assert end is not None
    assert codes(end.findings) == ("roll-off-slope",)
    near = lay_out(roof(*works, rolled="8' 1/16"), "purlin").feature("end")
    assert near is not None
    assert codes(near.findings) == ()
