"""Every finding of a diminished tenon: just triggered, and just not (law 7: never clamp)."""

from typing import Any

import pytest

from benchmate.joinery.diminished.findings import told
from benchmate.model.findings import Finding, Severity
from tests.builders import codes, real
from tests.joinery.diminished.ledges import SQUARE, end_of, ledge, mortise_of, sides_of

BEAM = {"lying": True}


def _found(words: dict[str, Any]) -> tuple[Finding, ...]:
    built = ledge(**words)
    return told(end_of(built), mortise_of(built), built.project.tape)


def test_a_sound_joint_has_no_finding() -> None:
    """In a post or a beam, by either rule, level with its top or lower."""
    for words in ({}, {"own": SQUARE}, BEAM, BEAM | {"drop": "1"}):
        assert [codes(side.findings) for side in sides_of(ledge(**words))] == [(), ()]


@pytest.mark.parametrize(
    ("just", "over", "code"),
    [
        ({"thickness": "4"}, {"thickness": "4-1/64"}, "cheek-outside"),
        (
            {"relief_reference": "4", "relief_far": "3-63/64"},
            {"relief_reference": "4", "relief_far": "4"},
            "relief-too-wide",
        ),
        (
            {"relief_far": "1", "real": {"girt": real({"all": {"first": "7"}})}},
            {"relief_far": "1", "real": {"girt": real({"all": {"first": "6-63/64"}})}},
            "edge-outside",
        ),
        ({"length": "6-55/64"}, {"length": "6-7/8"}, "mortise-through"),
        ({"housing": "4-55/64"}, {"housing": "4-7/8"}, "mortise-through"),
        ({"drop": "88"}, {"drop": "88-1/64"}, "past-shoulder"),
        ({"lift": "48"}, {"lift": "48-1/64"}, "past-shoulder"),
        (BEAM | {"drop": "1-63/64"}, BEAM | {"drop": "2"}, "no-ledge"),
        (BEAM | {"drop": "0"}, BEAM | {"lift": "1/64"}, "top-in-the-air"),
        ({"set_back": "1/64"}, {"set_back": "0"}, "mortise-open"),
        ({"inset": "0"}, {"inset": "-1/64"}, "end-past-side"),
        ({"inset": "2"}, {"inset": "2-1/64"}, "end-past-side"),
        ({"inset": "-2 + 1/64"}, {"inset": "-2 - 1/64"}, "mortise-outside"),
        (
            {"own": SQUARE, "real": {"post": real({"all": {"first": "7-1/2"}})}},
            {"own": SQUARE, "real": {"post": real({"all": {"first": "7-31/64"}})}},
            "stick-under-inner",
        ),
        (
            {"own": SQUARE, "real": {"girt": real({"all": {"second": "5-1/2"}})}},
            {"own": SQUARE, "real": {"girt": real({"all": {"second": "5-31/64"}})}},
            "stick-under-inner",
        ),
    ],
)
def test_each_fires_and_just_does_not(
    just: dict[str, Any], over: dict[str, Any], code: str
) -> None:
    """A sixty-fourth more or less decides."""
    code = code if code == "stick-under-inner" else f"diminished-{code}"
    assert code not in codes(_found(just))
    assert code in codes(_found(over))


def test_a_beam_s_edges_have_checks_of_their_own() -> None:
    """A joist that stands over or under its beam is told of once."""
    for words in (BEAM | {"drop": "4"}, BEAM | {"lift": "1"}):
        assert "diminished-end-past-side" not in codes(_found(words))


def test_a_girt_in_a_post_needs_no_wood_under_its_ledge() -> None:
    """Its housing may run as low as the post does; only past it is it told."""
    assert codes(_found({"drop": "88"})) == ()


def test_what_stops_one_side_stops_the_other() -> None:
    """A look stays on its own timber."""
    stopped = sides_of(ledge(length="7"))
    assert [codes(side.findings) for side in stopped] == [("diminished-mortise-through",)] * 2
    assert [side.findings[0].timber for side in stopped] == ["girt", "post"]
    looked = sides_of(ledge(set_back="0"))
    assert [codes(side.findings) for side in looked] == [(), ("diminished-mortise-open",)]
    assert looked[1].findings[0].severity is Severity.LOOK


def test_the_ledge_s_wood_is_a_figure() -> None:
    """A joist as deep as its beam has none."""
    (finding,) = _found(BEAM | {"drop": "2-1/2"})
    assert finding.severity is Severity.STOP
    assert 'Under the ledge -1/2" of Post is left' in finding.message
    (proud,) = _found(BEAM | {"lift": "1/2"})
    assert 'lies 1/2" above that of Post' in proud.message
