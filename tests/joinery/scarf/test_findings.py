"""Every finding of a scarf: just triggered, and just not (law 7: never clamp)."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.scarf.findings import HALF_CHECKS
from benchmate.model.findings import Severity
from tests.builders import codes, real
from tests.joinery.scarf.plates import KINDS, both, plate, sides

SQUARE = {"rule": "square", "inner": "7-1/2 x 7-1/2"}


def found(made: Frame) -> list[tuple[str, ...]]:
    """The codes on either stick."""
    return [codes(side.findings) for side in sides(made)]


def _both(*codes: str) -> list[tuple[str, ...]]:
    return [codes, codes]


@pytest.mark.parametrize("kind", KINDS)
def test_a_sound_scarf_has_no_finding(kind: str) -> None:
    """By either rule; and a lap shorter than a rule of thumb is no fault."""
    assert found(plate(kind)) == _both()
    assert found(plate(kind, one=SQUARE, other=SQUARE)) == _both()
    assert found(plate(kind, joint={"length": "16"})) == _both()


@pytest.mark.parametrize(
    ("place", "codes"),
    [
        ({"north": "0", "up": "9'"}, ()),
        ({"north": "0", "up": "9' 1/64"}, ("scarf-not-in-line",)),
        ({"north": "-1", "up": "9'"}, ("scarf-not-in-line",)),
    ],
)
def test_sticks_that_are_not_in_line(place: dict[str, str], codes: tuple[str, ...]) -> None:
    """One sixty-fourth up or an inch aside is a finding on both."""
    made = plate(other={"at": place})
    assert found(made) == _both(*codes)
    if codes:
        assert sides(made)[0].findings[0].message.startswith("The reference arris of Other lies")


@pytest.mark.parametrize(
    ("one", "other", "codes"),
    [
        ({}, {"section": "8 x 8"}, ()),
        ({}, {"section": "8 x 7-63/64"}, ("scarf-sections-differ",)),
        ({}, {"section": "8-1/64 x 8"}, ("scarf-sections-differ",)),
        (
            {"section": "8 x 10"},
            {"section": "10 x 8", "first_face": "south", "second_face": "up"},
            (),
        ),
        (
            {"section": "8 x 10"},
            {"section": "8 x 10", "first_face": "south", "second_face": "up"},
            ("scarf-sections-differ",),
        ),
        (SQUARE, SQUARE | {"section": "8-1/2 x 8"}, ()),
        (SQUARE, {}, ("scarf-sections-differ",)),
        (SQUARE, {"rule": "square", "inner": "7-1/2 x 7"}, ("scarf-sections-differ",)),
    ],
)
def test_sections_that_do_not_match(
    one: dict[str, object], other: dict[str, object], codes: tuple[str, ...]
) -> None:
    """As drawn, or inner by square rule, whichever face each is measured from first."""
    assert found(plate(one=one, other=other)) == _both(*codes)


@pytest.mark.parametrize(("butt", "codes"), [("3-63/64", ()), ("4", ("scarf-no-splay",))])
@pytest.mark.parametrize("keeps", ["up", "down"])
def test_butts_that_leave_nothing_between(butt: str, codes: tuple[str, ...], keeps: str) -> None:
    """Two of 4" take all of 8"."""
    assert found(plate("stop-splayed", joint={"butt": butt, "keeps": keeps})) == _both(*codes)


def test_butts_as_cut_may_leave_nothing_between() -> None:
    """A lap that came out as thick at its tip as at its shoulder has no slope to follow."""
    made = {"one": real(as_cut={"east-end-scarf": {"thickness": "6"}})}
    assert found(plate("stop-splayed", real=made)) == _both("scarf-no-splay")


@pytest.mark.parametrize(
    ("kind", "joint", "codes"),
    [
        ("bridled", {"tongue_length": "8", "length": "16-1/64"}, ()),
        ("bridled", {"tongue_length": "8", "length": "16"}, ("scarf-ends-meet",)),
        ("under-squinted", {"squint": "6", "length": "12-1/64"}, ()),
        ("under-squinted", {"squint": "6", "length": "12"}, ("scarf-ends-meet",)),
    ],
)
def test_ends_that_take_the_whole_lap(
    kind: str, joint: dict[str, object], codes: tuple[str, ...]
) -> None:
    """Two tongues, or two squints, need less than the lap."""
    assert found(plate(kind, joint=joint)) == _both(*codes)


@pytest.mark.parametrize(
    ("kind", "start", "codes"),
    [
        ("half lap", "12' 5-63/64", ()),
        ("half lap", "12' 6", ("scarf-longer-than-stick",)),
        ("bridled", "12' 5-55/64", ()),
        ("bridled", "12' 5-7/8", ("scarf-longer-than-stick",)),
    ],
)
def test_a_lap_longer_than_its_stick(kind: str, start: str, codes: tuple[str, ...]) -> None:
    """A half lap leaves a little body before 12' 6"; a bridled one needs its slot there too."""
    assert found(plate(kind, one={"reference_end_at": start})) == _both(*codes)


def test_either_stick_may_be_too_short() -> None:
    """The one that is, is named."""
    made = plate(other={"far_end_at": "15' 6"})
    assert found(made) == _both("scarf-longer-than-stick")
    assert "Other" in sides(made)[0].findings[0].message


@pytest.mark.parametrize(
    ("timber", "kind", "actual", "codes"),
    [
        ("one", "stop-splayed", "6-1/64", ()),
        ("one", "stop-splayed", "6", ("scarf-stick-too-thin",)),
        ("other", "stop-splayed", "6-1/64", ()),
        ("other", "stop-splayed", "6", ("scarf-stick-too-thin",)),
        ("other", "half lap", "4-1/64", ()),
        ("other", "half lap", "4", ("scarf-stick-too-thin",)),
    ],
)
def test_a_stick_too_thin_for_its_half(
    timber: str, kind: str, actual: str, codes: tuple[str, ...]
) -> None:
    """Of the one nothing is left to abut against, of the other nothing at its tip."""
    assert found(plate(kind, real={timber: real({"all": {"first": actual}})})) == _both(*codes)


@pytest.mark.parametrize(
    ("joint", "wide", "codes"),
    [
        ({"set_back": "6-31/64"}, "8", ()),
        ({"set_back": "6-1/2"}, "8", ("scarf-tongue-outside",) * 2),
        ({"set_back": "6-31/64"}, "7-63/64", ("scarf-tongue-outside",) * 2),
    ],
)
def test_a_tongue_without_wood_beside_it(
    joint: dict[str, object], wide: str, codes: tuple[str, ...]
) -> None:
    """1-1/2" set back 6-1/2" comes to the far face of 8"; told for either stick."""
    sticks = {name: real({"all": {"second": wide}}) for name in ("one", "other")}
    assert found(plate("bridled", joint=joint, real=sticks)) == _both(*codes)


@pytest.mark.parametrize(
    ("joint", "codes"),
    [
        ({"key": "2-21/32"}, ()),
        ({"key": "2-43/64"}, ("scarf-key-deep",)),
        ({"key": "7-63/64"}, ("scarf-key-deep",)),
        ({"key": "8"}, ("scarf-key-too-big", "scarf-key-too-big", "scarf-key-deep")),
        ({"key": "7", "length": "7-1/64"}, ("scarf-key-deep",)),
        (
            {"key": "7", "length": "7"},
            ("scarf-key-too-big", "scarf-key-deep", "scarf-key-too-big"),
        ),
    ],
)
def test_a_key_wider_than_its_wood(joint: dict[str, object], codes: tuple[str, ...]) -> None:
    """More than a third of the depth is to be looked at (Rivington), all of it cannot be."""
    for side in sides(plate("stop-splayed", joint=joint)):
        assert sorted(each.code for each in side.findings) == sorted(codes)


def test_a_third_of_the_depth_is_a_published_rule_and_no_law() -> None:
    """It is told to look at, with the engineer's word as the other way out."""
    (finding,) = sides(plate("stop-splayed", joint={"key": "3"}))[0].findings
    assert finding.severity is Severity.LOOK
    assert "published rule" in finding.message
    assert "engineer" in finding.remedy


@pytest.mark.parametrize(("actual", "count"), [("7-1/2", 0), ("7-31/64", 1)])
def test_a_stick_smaller_than_its_inner_timber(actual: str, count: int) -> None:
    """Trade notes 1.3: a negative reduction is told, never cut as nothing."""
    made = plate(one=SQUARE, other=SQUARE, real={"other": real({"all": {"first": actual}})})
    assert found(made) == _both(*["stick-under-inner"] * count)


def test_every_stop_is_told_on_both_sticks_with_a_remedy() -> None:
    """Neither may be cut to figures that cannot be, each told under its own name."""
    made = plate("bridled", other={"section": "10 x 10", "at": {"north": "1", "up": "9'"}})
    for side in sides(made):
        assert len(side.findings) == 2
        for finding in side.findings:
            assert finding.severity is Severity.STOP
            assert (finding.timber, finding.feature) == (side.timber, side.id)
            assert finding.message
            assert finding.remedy


def test_each_check_explains_itself() -> None:
    """What, why it matters on the timber, and the remedy."""
    assert len({check.__name__ for check in HALF_CHECKS}) == len(HALF_CHECKS)
    assert all(check.__doc__ and "Remedy" in check.__doc__ for check in HALF_CHECKS)


def test_findings_speak_the_project_s_tape() -> None:
    """In a millimetre project a finding's figures are millimetres."""
    made = plate("stop-splayed", joint={"butt": "4"}, units="mm", graduation="1 mm")
    assert "102 mm" in sides(made)[0].findings[0].message
    assert len(both(made)) == 2
