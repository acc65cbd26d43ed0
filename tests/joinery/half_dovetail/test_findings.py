"""Every finding of a wedged half-dovetail: just triggered, and just not (law 7: never clamp)."""

from typing import Any

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.half_dovetail.findings import LEFT_BELOW_PLATE, told
from benchmate.measure.length import Length
from benchmate.model.findings import Finding, Severity
from tests.builders import codes, length, real
from tests.joinery.half_dovetail.bents import SQUARE, bent, mortise_of, sides_of, tail_of

CUT_FLAT = {"tie": real(as_cut={"west-end-tenon": {"width": "7", "length": "7"}})}
CUT_BARELY = {"tie": real(as_cut={"west-end-tenon": {"width": "7", "length": "7-1/64"}})}


def _found(built: Frame) -> tuple[Finding, ...]:
    return told(tail_of(built), mortise_of(built), built.project.tape)


def test_a_sound_joint_has_no_finding() -> None:
    """By either rule, housed or not, wedged above or below."""
    for words in ({}, {"own": SQUARE}, {"wedged": "underside"}, {"past": "2"}):
        built = bent(**words, wedge_thin="1-1/4")
        assert [codes(side.findings) for side in sides_of(built)] == [(), ()]


@pytest.mark.parametrize(
    ("just", "over", "code"),
    [
        ({"flare": "7-63/64", "wedge_thin": "8"}, {"flare": "8", "wedge_thin": "8"}, "no-root"),
        ({"depth": "7"}, {"depth": "7-1/64"}, "out-of-tie"),
        (
            {"depth": "6-1/2", "own": SQUARE},
            {"depth": "6-33/64", "own": SQUARE},
            "out-of-tie",
        ),
        (
            {"depth": "6-1/2", "real": {"tie": real({"all": {"first": "7-1/2"}})}},
            {"depth": "6-1/2", "real": {"tie": real({"all": {"first": "7-31/64"}})}},
            "out-of-tie",
        ),
        ({"wedge_thin": "1"}, {"wedge_thin": "63/64"}, "cannot-enter"),
        (
            {"housing": "1/2", "wedge_thin": "1-5/64"},
            {"housing": "1/2", "wedge_thin": "1-1/16"},
            "cannot-enter",
        ),
        ({"real": CUT_BARELY}, {"real": CUT_FLAT}, "no-flare"),
        ({"thickness": "4"}, {"thickness": "4-1/64"}, "cheek-outside"),
        ({"set_back": "1/64"}, {"set_back": "0"}, "mortise-open"),
        (
            {"own": {"tie": {"at": {"north": "-2 + 1/64", "up": "8 ft"}}}},
            {"own": {"tie": {"at": {"north": "-2 - 1/64", "up": "8 ft"}}}},
            "mortise-outside",
        ),
        (
            {"own": {"tie": {"at": {"north": "2", "up": "8 ft"}}}},
            {"own": {"tie": {"at": {"north": "2-1/64", "up": "8 ft"}}}},
            "end-past-side",
        ),
        ({"tie_drop": "8"}, {"tie_drop": "7-63/64"}, "near-head"),
        ({"tie_drop": "2-1/8"}, {"tie_drop": "2-7/64"}, "past-shoulder"),
        (
            {"own": SQUARE, "real": {"post": real({"all": {"first": "7-1/2"}})}},
            {"own": SQUARE, "real": {"post": real({"all": {"first": "7-31/64"}})}},
            "stick-under-inner",
        ),
        (
            {"own": SQUARE, "real": {"tie": real({"all": {"second": "5-1/2"}})}},
            {"own": SQUARE, "real": {"tie": real({"all": {"second": "5-31/64"}})}},
            "stick-under-inner",
        ),
    ],
)
def test_each_fires_and_just_does_not(
    just: dict[str, Any], over: dict[str, Any], code: str
) -> None:
    """A sixty-fourth more or less decides."""
    code = code if code == "stick-under-inner" else f"half-dovetail-{code}"
    assert code not in codes(_found(bent(**just)))
    assert code in codes(_found(bent(**over)))


def test_a_tenon_without_length_is_told_before_anything_is_laid_out() -> None:
    """A housing as deep as the post, or held short by all of it; a sixty-fourth is a tenon."""
    for words in ({"housing": "8"}, {"held_short": "8"}, {"held_short": "9"}):
        for side in sides_of(bent(**words)):  # type: ignore[arg-type]
            assert codes(side.findings) == ("half-dovetail-no-length",)
    sound = sides_of(bent(held_short="7-63/64"))
    assert "half-dovetail-no-length" not in codes(sound[0].findings)


def test_the_remedy_for_a_thin_wedge_is_a_figure() -> None:
    """The least that lets the tail in: in a 1/2" housing a little over 1-1/16"."""
    (finding,) = _found(bent(housing="1/2", wedge_thin="1"))
    assert finding.severity is Severity.STOP
    assert "cannot come in from the East face" in finding.message
    assert "make wedge_thin at least 1-1/16" in finding.remedy


def test_eight_inches_are_one_framer_s_rule() -> None:
    """Trade notes 2.5, Rogers-8in: so less is only looked at, and the engineer decides."""
    assert Length.inches(8) == LEFT_BELOW_PLATE
    (finding,) = _found(bent(tie_drop="7-1/2"))
    assert (finding.severity, finding.timber) == (Severity.LOOK, "post")
    assert finding.message == (
        'Post has 7-1/2" left above the top of Tie, to its head shoulder: a framer\'s rule asks 8"'
    )
    assert "engineer" in finding.remedy


def test_a_head_in_a_housing_is_counted_from_the_plate_s_underside() -> None:
    """The post's own shoulder then lies inside the plate."""
    built = bent(tie_drop="8")
    (plate,) = (work for work in built.project.works if work.id == "post-head")
    housed = plate.model_copy(update={"housing": length("1")})
    works = tuple(housed if work.id == "post-head" else work for work in built.project.works)
    deeper = Frame(built.project.model_copy(update={"works": works}), {})
    assert mortise_of(deeper).below_head == length("8")
    assert mortise_of(deeper).stick.body == mortise_of(built).stick.body + length("1")


def test_what_stops_one_side_stops_the_other() -> None:
    """A look stays on its own timber."""
    stopped = sides_of(bent(wedge_thin="1/2"))
    assert [codes(side.findings) for side in stopped] == [("half-dovetail-cannot-enter",)] * 2
    assert [side.findings[0].timber for side in stopped] == ["tie", "post"]
    looked = sides_of(bent(tie_drop="7"))
    assert [codes(side.findings) for side in looked] == [(), ("half-dovetail-near-head",)]
