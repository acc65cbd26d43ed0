"""Every finding of a joist in its pocket: just triggered, and just not (law 7: never clamp)."""

import pytest

from benchmate.joinery.joist.family import features
from benchmate.joinery.joist.findings import END_CHECKS, POCKET_CHECKS, TAIL_CHECKS
from benchmate.model.findings import Severity
from tests.builders import codes, frame, joist, length, line, pocket, sill, tenon
from tests.floor import over
from tests.joinery.joist.floors import SQUARE, SQUARE_JOIST, SQUARE_SILL, Floor
from tests.joinery.joist.tails import LOW, as_cut, dropped, measured, tailed

OTHERS = {"no_pocket", "slope_too_long"}
"""Checks that cannot fire together with the rest: a bearing in the air, an end that slopes."""


def _found(floor: Floor, **words: str) -> list[tuple[str, ...]]:
    """The codes on the joist's side and on the pocket's."""
    return [codes(side.findings) for side in floor.sides(**words)]


def _both(*found: str) -> list[tuple[str, ...]]:
    return [found, found]


def test_a_sound_joint_has_no_finding() -> None:
    """The check joist is fine by either rule, in either face."""
    for floor in (Floor(), SQUARE):
        for end in ("south", "north"):
            assert _found(floor, end=end) == [(), ()]


@pytest.mark.parametrize(("actual", "found"), [("5-1/2", ()), ("5-31/64", ("joist-end-too-deep",))])
def test_an_end_deeper_than_its_joist(actual: str, found: tuple[str, ...]) -> None:
    """An end of 5-1/2" needs a joist of 5-1/2" there; 1/64" less is a finding on both sides."""
    floor = Floor(joist_measures={"first": actual})
    assert _found(floor, end_depth="5-1/2") == _both(*found)
    assert _found(floor) == [(), ()], "without its own depth it is as deep as it measures"


@pytest.mark.parametrize(("deep", "found"), [("5-1/4", ()), ("5-17/64", ("joist-end-too-deep",))])
def test_by_square_rule_too_an_end_may_be_no_deeper_than_the_stick(
    deep: str, found: tuple[str, ...]
) -> None:
    """It would lie in the air below the joist, and the joist low in its pocket."""
    floor = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL, joist_measures={"first": "5-1/4"})
    assert _found(floor, end_depth=deep) == _both(*found)


@pytest.mark.parametrize(
    ("joist_measures", "sill_measures", "count"),
    [
        ({"first": "5", "second": "3"}, {"first": "8", "second": "8"}, 0),
        ({"first": "4-63/64"}, {}, 1),
        ({"second": "2-63/64"}, {}, 1),
        ({}, {"first": "7-63/64"}, 1),
        ({}, {"second": "7-63/64"}, 1),
        ({"first": "4"}, {"second": "7"}, 2),
    ],
)
def test_a_stick_smaller_than_its_inner_timber(
    joist_measures: dict[str, str], sill_measures: dict[str, str], count: int
) -> None:
    """Trade.md 1.3: a negative reduction is told, never cut as nothing."""
    floor = Floor(
        joist=SQUARE_JOIST,
        sill=SQUARE_SILL,
        joist_measures=joist_measures,
        sill_measures=sill_measures,
    )
    assert _found(floor) == _both(*["stick-under-inner"] * count)


@pytest.mark.parametrize(
    ("drop", "found"), [("-5-31/64", ()), ("-5-1/2", ("pocket-none",)), ("-8", ("pocket-none",))]
)
def test_a_bearing_at_the_top_or_above_it(drop: str, found: tuple[str, ...]) -> None:
    """A joist whose underside lies on the sill, or in the air over it, has no pocket."""
    assert _found(Floor(), drop=drop) == _both(*found)


@pytest.mark.parametrize(("drop", "found"), [("2-31/64", ()), ("2-1/2", ("pocket-through-below",))])
def test_a_pocket_through_the_underside(drop: str, found: tuple[str, ...]) -> None:
    """5-1/2" of joist 2-1/2" down leaves nothing of 8"."""
    assert _found(Floor(), drop=drop) == _both(*found)


@pytest.mark.parametrize("end", ["south", "north"])
@pytest.mark.parametrize(
    ("bearing", "found"), [("7-55/64", ()), ("7-7/8", ("pocket-through-behind",))]
)
def test_a_pocket_through_the_face_behind(end: str, bearing: str, found: tuple[str, ...]) -> None:
    """With 1/8" to spare behind it, 7-7/8" of bearing comes out of an 8" sill."""
    assert _found(Floor(), end=end, bearing=bearing) == _both(*found)


@pytest.mark.parametrize(
    ("at", "found"),
    [
        ("0", ()),
        ("-1/64", ("pocket-past-shoulder",)),
        ("15' 8-1/2", ()),
        ("15' 8-1/2 + 1/64", ("pocket-past-shoulder",)),
    ],
)
def test_a_pocket_past_a_shoulder(at: str, found: tuple[str, ...]) -> None:
    """3-1/2" of joist fits from the one shoulder to the other of a 16' sill, tenoned or not."""
    assert _found(Floor(), at=at) == _both(*found)
    joint = pocket(at=at)
    ends = [tenon(id=f"sill-{end}", timber="sill", end=end) for end in ("west", "east")]
    built = frame(joist(), sill(), *ends, joint)
    assert [codes(side.findings) for side in features(joint, built)] == _both(*found)


def test_every_stop_is_told_on_both_timbers_with_a_remedy() -> None:
    """Neither side may be cut to figures that cannot be, and each is told under its own name."""
    floor = Floor(joist_measures={"first": "5"})
    sides = floor.sides(end_depth="9", bearing="9", at="-1'", drop="4")
    everything = {check.__name__ for check in (*END_CHECKS, *POCKET_CHECKS)} - OTHERS
    for side in sides:
        assert len(side.findings) == len(everything)
        assert len(set(codes(side.findings))) == len(everything)
        for finding in side.findings:
            assert finding.severity is Severity.STOP
            assert (finding.timber, finding.feature) == (side.timber, side.id)
            assert finding.message
            assert finding.remedy


def test_what_cannot_be_keeps_its_true_figures() -> None:
    """Law 7: the floor of a pocket through the underside is not held at the underside."""
    _, received = Floor().sides(drop="4")
    assert line(received.lines, "floor").at == length("9-1/2")
    assert line(received.lines, "floor").beside[-1].value == length("-1-1/2")


def test_findings_speak_the_project_s_tape() -> None:
    """In a millimetre project a finding's figures are millimetres."""
    joint = pocket(drop="2-1/2")
    built = frame(joist(), sill(), joint, units="mm", graduation="1 mm")
    (finding,) = features(joint, built)[1].findings
    assert "203 mm" in finding.message


def _slope(back: str) -> list[tuple[str, ...]]:
    floor = LOW.with_(own={"joist": {"far_end_at": "12 in"}})
    found = dropped(floor, end_depth="5", diminished=back)
    return [codes(side.findings) for side in found.sides]


def test_a_slope_longer_than_its_joist() -> None:
    """14" of joist with 2" of it in the beam has room for 12" of slope."""
    assert _slope("12") == [(), ()]
    assert _slope("12-1/64") == _both("joist-slope-too-long")
    floor = LOW.with_(own={"joist": {"far_end_at": "12 in"}}, real=measured(first="5"))
    level = dropped(floor, end_depth="5", diminished="20")
    assert codes(level.sides[0].findings) == (), "a joist no deeper than its end has no slope"


def _tail(**words: object) -> list[tuple[str, ...]]:
    return [codes(side.findings) for side in tailed(**words).sides]  # type: ignore[arg-type]


@pytest.mark.parametrize("rule", ["mill", "square"])
def test_a_sound_dovetail_has_no_finding(rule: str) -> None:
    """By either rule, in either face, wedged or not."""
    for near in (True, False):
        floor = over(LOW.with_(near=near), (16, 16, 16, 16), rule)
        assert _tail(floor=floor) == [(), ()]
        assert _tail(floor=floor, wedge="1/4", wedge_side="east") == [(), ()]


@pytest.mark.parametrize(("flare", "found"), [("1-63/64", ()), ("2", ("dovetail-no-neck",))])
def test_flares_that_leave_no_neck(flare: str, found: tuple[str, ...]) -> None:
    """Two of them off a 4" joist; one flank straight leaves room for twice as much."""
    assert _tail(flare=flare) == _both(*found)
    assert _tail(flare=flare, straight="west") == [(), ()]


@pytest.mark.parametrize(
    ("wedge", "found"), [("1-31/64", ()), ("1-1/2", ("dovetail-loose-without-wedge",))]
)
def test_a_wedge_as_wide_as_the_flare(wedge: str, found: tuple[str, ...]) -> None:
    """1-1/2" of flare in all; told on the beam, where the room is, and it stops nothing."""
    assert _tail(wedge=wedge, wedge_side="west") == [(), found]


@pytest.mark.parametrize(("actual", "found"), [("5", ()), ("4-63/64", ("joist-end-too-deep",))])
def test_a_tail_deeper_than_its_joist(actual: str, found: tuple[str, ...]) -> None:
    """Its underside would lie in the air."""
    assert _tail(floor=LOW.with_(real=measured(first=actual)), end_depth="5") == _both(*found)


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ({"length": "7-55/64"}, ()),
        ({"length": "7-7/8"}, ("pocket-through-behind",)),
        ({"floor": LOW.with_(lower="2-63/64")}, ()),
        ({"floor": LOW.with_(lower="3")}, ("pocket-through-below",)),
        ({"floor": LOW.with_(lower="-6-63/64")}, ()),
        ({"floor": LOW.with_(lower="-7")}, ("pocket-none",)),
        ({"floor": LOW.with_(real=as_cut(thickness="9"))}, ("pocket-through-below",)),
    ],
)
def test_a_socket_is_checked_like_any_pocket(
    words: dict[str, object], found: tuple[str, ...]
) -> None:
    """And its findings call it a socket."""
    assert _tail(**words) == _both(*found)
    for finding in tailed(**words).sides[1].findings:  # type: ignore[arg-type]
        assert "socket" in finding.message


def test_a_socket_past_a_shoulder_counts_at_its_widest() -> None:
    """Its back is 1/32" wider each side than its tail."""
    for start, found in (("-1/32", ()), ("0", ("pocket-past-shoulder",))):
        floor = LOW.with_(end="north", own={"beam": {"reference_end_at": start}})
        assert _tail(floor=floor) == _both(*found)


def test_every_stop_of_a_dovetail_is_told_on_both_timbers_with_a_remedy() -> None:
    """Under its own name on each."""
    floor = LOW.with_(end="north", own={"beam": {"reference_end_at": "1"}}, lower="4")
    sides = tailed(floor, end_depth="9", length="9", flare="2").sides
    everything = {check.__name__ for check in (*TAIL_CHECKS, *POCKET_CHECKS)} - OTHERS
    for side in sides:
        assert len(set(codes(side.findings))) == len(side.findings) == len(everything)
        for finding in side.findings:
            assert finding.severity is Severity.STOP
            assert (finding.timber, finding.feature) == (side.timber, side.id)
            assert finding.remedy
