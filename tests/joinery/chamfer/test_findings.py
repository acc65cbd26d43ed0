"""Every finding of a chamfer: just triggered, and just not (law 7: never clamp)."""

from collections.abc import Mapping

import pytest

from benchmate.joinery.chamfer.family import features
from benchmate.joinery.chamfer.record import Chamfer
from benchmate.model.findings import Severity
from tests.builders import chamfer, codes, frame, real, tenon, timber

Codes = tuple[str, ...]


def _found(cut: Chamfer, measured: Mapping[str, str] | None = None, block: str = "2") -> Codes:
    parts = (timber("post"), tenon(), tenon(id="post-head", end="head", length="4"), cut)
    typed = {"post": real({"inside-chamfer": measured or {}})}
    (feature,) = features(cut, frame(*parts, real=typed, shop={"guide_block": block}))
    for finding in feature.findings:
        assert (finding.timber, finding.feature) == ("post", "inside-chamfer")
        assert finding.remedy
    return codes(feature.findings)


def _stops(near: str, far: str) -> dict[str, dict[str, str]]:
    return {
        "near_stop": {"shoulder": "foot", "distance": near},
        "far_stop": {"shoulder": "head", "distance": far},
    }


def test_a_sound_chamfer_has_no_finding() -> None:
    """The check chamfer is fine."""
    assert _found(chamfer()) == ()


@pytest.mark.parametrize(
    ("near", "found"), [("7' 4-63/64", ()), ("7' 5", ("chamfer-stops-crossed",))]
)
def test_stops_on_or_past_one_another(near: str, found: tuple[str, ...]) -> None:
    """With the far stop at 7' 5" the near one must lie before it."""
    assert _found(chamfer(**_stops(near, "6"))) == found


@pytest.mark.parametrize(
    ("near", "far", "found"),
    [
        ("0", "0", ()),
        ("-1/64", "6", ("chamfer-past-shoulder",)),
        ("12", "-1/64", ("chamfer-past-shoulder",)),
    ],
)
def test_a_chamfer_past_a_shoulder(near: str, far: str, found: tuple[str, ...]) -> None:
    """It may run up to either shoulder and no further."""
    assert _found(chamfer(**_stops(near, far))) == found


@pytest.mark.parametrize(
    ("leg", "measured", "found"),
    [
        ("2-63/64", {}, ()),
        ("3", {}, ("chamfer-too-wide",)),
        ("2-63/64", {"second": "5-31/32"}, ("chamfer-too-wide",)),
        ("2-63/64", {"first": "5-31/32"}, ("chamfer-too-wide",)),
    ],
)
def test_a_chamfer_of_half_a_face(
    leg: str, measured: dict[str, str], found: tuple[str, ...]
) -> None:
    """A leg of half the smaller real depth or more is too wide."""
    assert _found(chamfer(leg=leg), measured) == found


@pytest.mark.parametrize(
    ("block", "found"), [("10", ()), ("10-1/64", ("chamfer-no-room-for-block",))]
)
@pytest.mark.parametrize(("near", "far"), [("5", "12"), ("12", "6")])
def test_a_guide_block_past_either_end(
    near: str, far: str, block: str, found: tuple[str, ...]
) -> None:
    """There are 5" of tenon past a stop 5" up, and 4" past one 6" down: 10" of room each."""
    assert _found(chamfer(**_stops(near, far)), block=block) == found


def test_a_block_without_room_is_a_note_and_the_others_stop() -> None:
    """A stop can be worked by hand; a chamfer into a joint cannot be undone."""
    cut = chamfer(leg="3", **_stops("9'", "-2'"))
    (feature,) = features(cut, frame(timber("post", length="7'"), cut))
    assert {finding.code: finding.severity for finding in feature.findings} == {
        "chamfer-stops-crossed": Severity.STOP,
        "chamfer-past-shoulder": Severity.STOP,
        "chamfer-too-wide": Severity.STOP,
        "chamfer-no-room-for-block": Severity.NOTE,
    }
