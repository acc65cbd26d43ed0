"""Every finding of a joist's tenon: just triggered, and just not (law 7: never clamp)."""

import pytest

from benchmate.joinery.joist_tenon.findings import END_CHECKS, HOLE_CHECKS
from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon
from benchmate.model.findings import Severity
from tests.builders import codes, real
from tests.floor import Floor, over
from tests.joinery.joist_tenon.floors import jointed
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon

TUSK = {"set_back": "2", "thickness": "1-1/2", "length": "4", "tusk": "1", "tusk_height": "2"}
LOW = Floor(lower="1")


def found(joint: SoffitTenon | TuskTenon, floor: Floor = LOW) -> list[tuple[str, ...]]:
    """The codes on the joist's side and on the mortise's."""
    return [codes(side.findings) for side in jointed(joint, floor).sides]


def both(*said: str) -> list[tuple[str, ...]]:
    """The same on both sides."""
    return [said, said]


def measured(**sizes: str) -> Floor:
    """The joist as it measures at its end."""
    return LOW.with_(real={"joist": real({"south-end-tenon": sizes})})


@pytest.mark.parametrize("rule", ["mill", "square"])
@pytest.mark.parametrize("near", [True, False])
def test_a_sound_joint_has_no_finding(rule: str, near: bool) -> None:
    """Either kind, by either rule, in either face."""
    floor = over(LOW.with_(near=near), (16, 16, 16, 16), rule)
    assert found(soffit_tenon(), floor) == [(), ()]
    assert found(tusk_tenon(**TUSK), floor) == [(), ()]


@pytest.mark.parametrize(
    ("thickness", "said"), [("6-63/64", ()), ("7", ("joist-tenon-at-the-top",))]
)
def test_a_tenon_that_leaves_its_haunch_no_room(thickness: str, said: tuple[str, ...]) -> None:
    """On a 7" joist a flush tenon 7" deep comes to the top."""
    assert found(soffit_tenon(thickness=thickness, length="9/2 in"), LOW) == both(*said)


def test_a_tusk_tenon_may_come_to_the_top_only_without_a_horn() -> None:
    """Then it is a plain shoulder; above the top there is no tenon at all."""
    flush = TUSK | {"set_back": "0"}
    assert found(tusk_tenon(**flush)) == both("joist-tenon-at-the-top")
    assert found(tusk_tenon(**flush, horn="0")) == [(), ()]
    shallow = Floor(beam="9 x 8", joist="9 x 4", lower="3-1/16")
    assert found(tusk_tenon(), shallow)[0] == ("joist-tenon-at-the-top",)


@pytest.mark.parametrize(("actual", "said"), [("5-1/64", ()), ("5", ("joist-tenon-none",))])
def test_a_joist_too_small_for_a_flush_tenon(actual: str, said: tuple[str, ...]) -> None:
    """Its upper cheek lies 5" down: a stick of 5" has nothing below it."""
    assert found(soffit_tenon(), measured(first=actual)) == both(*said)


@pytest.mark.parametrize(
    ("actual", "said"), [("6-1/2", ()), ("6-31/64", ("joist-tenon-below-the-joist",))]
)
def test_a_raised_tenon_in_the_air(actual: str, said: tuple[str, ...]) -> None:
    """1/2" above the underside of a 7" joist, it is struck 6-1/2" down whatever the stick."""
    joint = soffit_tenon(above_soffit="1/2")
    assert found(joint, measured(first=actual)) == both(*said)


@pytest.mark.parametrize(
    ("height", "said"), [("3-1/2", ()), ("3-33/64", ("joist-tenon-below-the-joist",))]
)
def test_a_tusk_below_the_underside(height: str, said: tuple[str, ...]) -> None:
    """The tenon ends 3-1/2" down a 7" joist."""
    joint = tusk_tenon(**(TUSK | {"tusk_height": height}))
    assert found(joint) == both(*said)
    wide = over(LOW, (0, 0, 32, 0), "square")
    assert found(joint, wide) == both(*said), "by square rule the inner timber counts"


@pytest.mark.parametrize(("haunch", "said"), [("3-63/64", ()), ("4", ("joist-haunch-past-tenon",))])
def test_a_haunch_deeper_than_the_tenon_is_long(haunch: str, said: tuple[str, ...]) -> None:
    """Then there is no tenon."""
    assert found(soffit_tenon(haunch=haunch)) == both(*said)
    horned = tusk_tenon(**TUSK, horn=haunch)
    assert found(horned) == both(*said)


@pytest.mark.parametrize(("tusk", "said"), [("3-63/64", ()), ("4", ("joist-tusk-past-tenon",))])
def test_a_tusk_let_in_as_far_as_the_tenon(tusk: str, said: tuple[str, ...]) -> None:
    """4" of tenon."""
    joint = tusk_tenon(**(TUSK | {"tusk": tusk}), horn="1")
    assert found(joint) == both(*said)


@pytest.mark.parametrize("near", [True, False])
@pytest.mark.parametrize(
    ("length", "said"), [("7-55/64", ()), ("7-7/8", ("joist-mortise-through",))]
)
def test_a_mortise_through_the_beam(length: str, said: tuple[str, ...], near: bool) -> None:
    """With 1/8" to spare behind it, 7-7/8" of tenon comes out of an 8" beam."""
    joint = soffit_tenon(length=length)
    assert found(joint, LOW.with_(near=near)) == both(*said)


@pytest.mark.parametrize("from_top", [True, False])
@pytest.mark.parametrize(("lower", "said"), [("2-63/64", ()), ("3", ("joist-mortise-below",))])
def test_nothing_left_under_the_bearing(lower: str, said: tuple[str, ...], from_top: bool) -> None:
    """7" of joist 3" down leaves nothing of a 10" beam."""
    floor = Floor(lower=lower, from_top=from_top)
    assert found(soffit_tenon(), floor) == both(*said)


@pytest.mark.parametrize(("lower", "said"), [("-4-63/64", ()), ("-5", ("joist-mortise-above",))])
def test_a_mortise_above_the_beam(lower: str, said: tuple[str, ...]) -> None:
    """The upper cheek lies 5" down the joist."""
    assert found(soffit_tenon(), Floor(lower=lower)) == both(*said)


def test_a_mortise_past_a_shoulder() -> None:
    """4" of joist fits up to the end of a beam, and no further."""
    for start, said in (("0", ()), ("1/64", ("joist-mortise-past-shoulder",))):
        beam = {"reference_end_at": start}
        floor = Floor(end="north", lower="1", own={"beam": beam})
        assert found(soffit_tenon("north"), floor) == both(*said)


def test_a_joist_that_hangs_below_its_beam_is_told_on_the_beam_alone() -> None:
    """It may be meant, so it stops nothing."""
    deep = Floor(joist="10 x 4", lower="1/64")
    raised = soffit_tenon(above_soffit="1")
    assert found(raised, deep) == [(), ("joist-below-the-beam",)]
    assert found(raised, deep.with_(lower="0")) == [(), ()]
    assert found(raised, deep.with_(from_top=False)) == [(), ("joist-below-the-beam",)]
    (finding,) = jointed(raised, deep).sides[1].findings
    assert finding.severity is Severity.LOOK


@pytest.mark.parametrize(
    ("off", "count"), [((0, 0, 0, 0), 0), ((0, 0, -1, 0), 1), ((-1, -1, 0, 0), 2)]
)
def test_a_stick_smaller_than_its_inner_timber(off: tuple[int, ...], count: int) -> None:
    """Trade.md 1.3: a negative reduction is told, never cut as nothing."""
    assert found(soffit_tenon(), over(LOW, off, "square")) == both(*["stick-under-inner"] * count)


def test_every_stop_is_told_on_both_timbers_with_a_remedy() -> None:
    """Neither side may be cut to figures that cannot be, and each is told under its own name."""
    joint = tusk_tenon(set_back="6", thickness="2", length="9", tusk="9", horn="9", tusk_height="4")
    floor = Floor(lower="1", end="north", own={"beam": {"reference_end_at": "1"}})
    sides = jointed(joint.model_copy(update={"end": soffit_tenon("north").end}), floor).sides
    left_out = {"no_room_above", "no_tenon_left", "open_above", "end_past_the_beam"}
    everything = {check.__name__ for check in (*END_CHECKS, *HOLE_CHECKS)} - left_out
    for side in sides:
        assert len(set(codes(side.findings))) == len(side.findings) == len(everything)
        for finding in side.findings:
            assert finding.severity is Severity.STOP
            assert (finding.timber, finding.feature) == (side.timber, side.id)
            assert finding.message
            assert finding.remedy
