"""Every finding of a lap: just triggered, and just not (law 7: never clamp)."""

from typing import Any

import pytest

from benchmate.joinery.lap.family import features
from benchmate.model.findings import Finding, Severity
from tests.builders import codes, real
from tests.joinery.lap.crossings import COGGED, SQUARE, Scene, sizes_of


def _told(sizes: object = None, **words: Any) -> list[tuple[Finding, ...]]:  # noqa: ANN401 - a scene's
    scene = Scene(**words)
    built = scene.frame(sizes)  # type: ignore[arg-type]
    return [side.findings for side in features(scene.record(), built)]


def _found(sizes: object = None, **words: Any) -> list[tuple[str, ...]]:  # noqa: ANN401 - a scene's
    """The codes on the tie's side and on the plate's."""
    return [codes(side) for side in _told(sizes, **words)]


def _both(*found: str) -> list[tuple[str, ...]]:
    return [found, found]


@pytest.mark.parametrize(
    "words", [{}, {"ends": False}, {"corner": "south"}, COGGED, SQUARE], ids=str
)
def test_a_sound_lap_has_no_finding(words: dict[str, Any]) -> None:
    """Half depth each, by either rule."""
    assert _found(**words) == [(), ()]


@pytest.mark.parametrize(("up", "found"), [("7-63/64", ()), ("8", ("lap-no-overlap",))])
def test_timbers_that_only_touch(up: str, found: tuple[str, ...]) -> None:
    """A tie laid on top of its plate laps nothing, and nothing else is told of it."""
    assert _found(up=up) == _both(*found)
    assert _found(up=up, joint={"share": "20"})[0][:1] == (found or ("lap-share",))


def test_how_far_apart_they_lie_is_told() -> None:
    """Face to face, or by so much, whichever of them is higher."""
    for up, words in (("8", "lie face to face"), ("9", 'lie 1" apart'), ("-10", 'lie 2" apart')):
        ((finding,), _) = _told(up=up)
        assert words in finding.message
        assert finding.severity is Severity.STOP


@pytest.mark.parametrize(
    ("share", "found"),
    [("2", ()), ("2-1/64", ("lap-share",)), ("0", ()), ("0 - 1/64", ("lap-share",))],
)
def test_a_share_is_from_nothing_to_what_they_have_in_common(
    share: str, found: tuple[str, ...]
) -> None:
    """2" of a tie let down 2" is all of it; the tie would lie in the air, or the plate."""
    assert _found(up="6", joint={"share": share})[0][:1] == found


@pytest.mark.parametrize(
    ("thick", "found"), [("4-1/64", ()), ("4", ("lap-nothing-left",)), ("3", ("lap-nothing-left",))]
)
def test_a_lap_as_deep_as_the_stick(thick: str, found: tuple[str, ...]) -> None:
    """A tie measured from below that comes 4" thick is cut in two 4" up."""
    looks = {"tie_looks": (False, True)}
    assert _found(sizes_of(tie=(thick, "6")), **looks) == _both(*found)
    plate = {"plate_looks": (True, True)}
    assert _found(sizes_of(plate=(thick, "8")), **plate) == _both(*found)


@pytest.mark.parametrize(("thick", "found"), [("8", ()), ("7-63/64", ("lap-short",))])
def test_a_stick_that_does_not_reach_the_bed(thick: str, found: tuple[str, ...]) -> None:
    """A tie let in whole lies on nothing if it is 1/64" under its depth as drawn."""
    assert _found(sizes_of(tie=(thick, "6")), up="6", joint={"share": "2"}) == _both(*found)
    low = {"plate_looks": (False, True), "joint": {"share": "0"}}
    assert _found(sizes_of(plate=(thick, "8")), up="6", **low) == _both(*found)
    assert _found(sizes_of(tie=("7-1/2", "6")), up="6") == [(), ()], "both lose some"


@pytest.mark.parametrize(("end", "found"), [("6", ()), ("5-63/64", ("lap-past-shoulder",))])
def test_a_notch_past_a_shoulder(end: str, found: tuple[str, ...]) -> None:
    """The plate stops 1/64" short of the tie's far side."""
    short = {"plate": {"far_end_at": end}}
    assert _found(**short) == _both(*found)
    tail = {"up": "6", "joint": {"flare": "1"}}
    assert _found(**short, **tail) == _both(*found), "a socket at its wide end"


def test_a_crossing_timber_that_stops_short() -> None:
    """Its own notch is open at its end then."""
    assert _found(ends=False, tie={"far_end_at": "8' 8"}) == [(), ()]
    assert _found(ends=False, tie={"far_end_at": "8' 7"}) == _both("lap-past-shoulder")


@pytest.mark.parametrize(("flare", "found"), [("2-63/64", ()), ("3", ("lap-flare",))])
def test_a_flare_that_eats_the_timber(flare: str, found: tuple[str, ...]) -> None:
    """3" off each side of 6" leaves no tail."""
    assert _found(up="6", joint={"flare": flare}) == _both(*found)
    one_side = {"flare_far": "5-63/64" if not found else "6"}
    assert _found(up="6", joint=one_side) == _both(*found)


@pytest.mark.parametrize("hold", [{"flare": "1"}, {"cog": "2"}])
def test_a_tail_or_a_cog_needs_a_notch(hold: dict[str, str]) -> None:
    """With a share of nothing there is none; without them that is a plain notch in the tie."""
    assert _found(up="6", joint=hold | {"share": "0"}) == _both("lap-holds-nothing")
    assert _found(up="6", joint=hold | {"share": "1/64"}) == [(), ()]
    assert _found(up="6", joint={"share": "0"}) == [(), ()]


@pytest.mark.parametrize(
    ("cog", "back", "found"),
    [
        ("4", "4", ()),
        ("4", "4-1/64", ("lap-cog",)),
        ("7-63/64", "0", ()),
        ("8", "0", ("lap-cog",)),
        ("8-1/4", None, ("lap-cog",)),
    ],
)
def test_a_cog_within_its_plate(cog: str, back: str | None, found: tuple[str, ...]) -> None:
    """Not past a face of it, and not the whole of it."""
    joint = {"cog": cog, "share": "2"} | ({} if back is None else {"cog_set_back": back})
    assert _found(**(COGGED | {"joint": joint})) == _both(*found)


def test_a_cog_wider_than_the_plate_as_drawn() -> None:
    """Centred on an 8" plate, 8-1/4" starts outside it, however wide the plate came."""
    joint = {"cog": "8-1/4", "share": "2"}
    wide = sizes_of(plate=("8", "9"))
    assert _found(wide, **(COGGED | {"joint": joint})) == _both("lap-cog")


@pytest.mark.parametrize(("up", "found"), [("1/64", ()), ("0", ("lap-slot-through",))])
def test_a_slot_through_the_whole_timber(up: str, found: tuple[str, ...]) -> None:
    """The cog stands as high as the plate, and that is as high as the tie."""
    assert _found(up=up, ends=False, joint={"cog": "2"}) == _both(*found)


def test_sticks_smaller_than_their_inner_timbers() -> None:
    """Each is told on both sides, once for every face."""
    small = sizes_of(tie=("7-31/64", "5-1/2"), plate=("7-1/2", "7-31/64"))
    assert _found(small, **SQUARE) == _both("stick-under-inner", "stick-under-inner")
    assert _found(sizes_of(tie=("7-1/2", "5-1/2")), **SQUARE) == [(), ()]


def test_a_lap_cut_too_thin_takes_its_mate_s_bed_along() -> None:
    """So thin that the plate would have to be cut nothing, and then less than nothing."""
    for left, found in (("1/64", ()), ("3-1/2", ())):
        sizes = {"tie": real(as_cut={"east-end-lap": {"thickness": left}})}
        assert _found(sizes, up="0") == _both(*found)
    sizes = {"tie": real(as_cut={"east-end-lap": {"thickness": "5-63/64"}})}
    assert _found(sizes, up="6") == _both("lap-short")


def test_findings_say_what_to_do() -> None:
    """Where, what, and a remedy, on whichever side they are told."""
    (tie, plate) = _told(up="8")
    assert [(each.timber, each.feature) for each in (*tie, *plate)] == [
        ("tie", "east-end-lap"),
        ("plate", "lap-notch"),
    ]
    assert "check where the two stand" in tie[0].remedy
