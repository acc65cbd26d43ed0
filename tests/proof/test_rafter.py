"""Rafters proved: told true, cut as the textbook cuts them, and a fit in the building."""

from collections.abc import Mapping
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.measure.length import Length
from benchmate.model.work import Work
from tests.builders import real
from tests.compass import SENSE
from tests.joinery.rafter.roofs import Roof, built, pair, peak, ridge, seat, shed, tail
from tests.proof.fits import Wastes, borne, differs, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.rafter import textbook
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

DEEP = "8 x 4"

ROOFS: Mapping[str, tuple[Roof, tuple[Work, ...]]] = {
    "a common rafter": (Roof(), (seat(), tail(), ridge())),
    "7 in 12": (Roof(rise="7", rafter=DEEP, over="7"), (seat(), tail(), ridge())),
    "13 in 12, its tail plumb and level": (
        Roof(rise="13", rafter=DEEP, over="8"),
        (seat(), tail(cut="plumb and level", level="3"), ridge()),
    ),
    "a level tail": (Roof(rise="8", rafter=DEEP, over="7"), (seat(), tail(cut="level"), ridge())),
    "without a tail": (Roof(out="0"), (seat(), tail(), ridge())),
    "let in above and below": (Roof(), (seat(let_in="1"), tail(), ridge(let_in="3/4"))),
    "a step seat": (
        Roof(rafter=DEEP, over="6"),
        (seat(let_in="1", step="1-1/2"), tail(), ridge(let_in="1/2")),
    ),
    "a step seat without a tail": (
        Roof(out="0"),
        (seat(let_in="1", step="1"), tail(), ridge()),
    ),
}

HEADINGS = ("east", "west", "north", "south")

TURNED = {"reference_end": "head", "plate_faces": ("down", "in"), "ridge_faces": ("up", "out")}
"""A roof whose timbers are measured from the other end and the other faces."""


def right(frame: Frame, found: Mapping[str, Log]) -> Wastes:
    """What the textbook takes off all timbers of a frame."""
    every = (textbook(joint, frame, found) for joint in frame.project.works)  # type: ignore[arg-type]
    return {key: waste for each in every for key, waste in each.items()}


def wrong_with(frame: Frame) -> list[str]:
    """All that is wrong with a frame of rafters."""
    found = logs(frame)
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(right(frame, found), found),
        *overlaps(found.values()),
    ]


@pytest.mark.parametrize("heading", HEADINGS)
@pytest.mark.parametrize("name", ROOFS)
def test_a_rafter_is_told_and_cut_as_the_textbook_has_it(name: str, heading: str) -> None:
    """Any pitch, seat, tail and heading: told true, cut right, and nothing overlaps."""
    roof, works = ROOFS[name]
    assert wrong_with(built(replace(roof, heading=heading), *works)) == []


@pytest.mark.parametrize("name", ROOFS)
def test_from_whichever_faces_and_end_it_is_measured(name: str) -> None:
    """A plate measured from its inside and underside and a rafter from its head make the same."""
    roof, works = ROOFS[name]
    frame = built(replace(roof, **TURNED), *works)  # type: ignore[arg-type]
    assert wrong_with(frame) == []


SIZES = {"plate": ("8", "6"), "ridge": ("10", "2"), "upper": ("8", "6")}


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(ROOFS)),
    turned=st.booleans(),
    off=st.tuples(*[st.integers(0, 32)] * 6),
)
@settings(max_examples=12, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(rule: str, name: str, *, turned: bool, off: tuple[int, ...]) -> None:
    """Whatever the sticks are over, by either rule: told true, cut right, and nothing overlaps."""
    roof, works = ROOFS[name]
    rafter = roof.rafter.split(" x ")
    drawn = {"plate": ("8", "6"), "ridge": ("12", "2"), "rafter": (rafter[0], rafter[1])}
    own = {each: _ruled(rule, size) for each, size in drawn.items()}
    over = dict(zip(drawn, (off[:2], off[2:4], off[4:]), strict=True))
    sticks = {each: _real(size, over[each]) for each, size in drawn.items()}
    roof = replace(roof, own=own, ridge=drawn["ridge"], **(TURNED if turned else {}))  # type: ignore[arg-type]
    assert wrong_with(built(roof, *works, real=sticks)) == []


def _ruled(rule: str, size: tuple[str, str]) -> Mapping[str, object]:
    return {"rule": rule} | ({"inner": " x ".join(size)} if rule == "square" else {})


def _real(drawn: tuple[str, str], over: tuple[int, ...]) -> Real:
    first, second = (
        (Length.inches(int(size)) + Length.inches(0, 1, 32) * count).exact_text()
        for size, count in zip(drawn, over, strict=True)
    )
    return real({"all": {"first": first, "second": second}})


@pytest.mark.parametrize("square", [False, True], ids=["mill rule", "square rule"])
@pytest.mark.parametrize("name", ROOFS)
def test_no_line_can_be_misplaced(name: str, *, square: bool) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off."""
    roof, works = ROOFS[name]
    sizes = {"plate": ("8", "6"), "ridge": ("10", "2"), "rafter": tuple(roof.rafter.split(" x "))}
    if square:
        own = {each: _ruled("square", (size[0], size[1])) for each, size in sizes.items()}
        roof = replace(roof, own=own, **TURNED)  # type: ignore[arg-type]
    sticks = {each: _real((size[0], size[1]), (20, 12)) for each, size in sizes.items()}
    frame = built(roof, *works, real=sticks if square else None)
    found = logs(frame)
    assert list(unnoticed(right(frame, found), found)) == []


@pytest.mark.parametrize("heading", HEADINGS)
def test_a_common_rafter_bears(heading: str) -> None:
    """6" at 12 in 12, 5" over the plate: 3.485" of seat and of heel, 4" wide; plumb at the ridge.

    8.485" of plumb cut come 1" under the top of a 10" ridge.
    """
    roof = Roof(heading=heading)
    found = logs(built(roof, seat(), tail(), ridge()))
    rafter, plate, beam = found["rafter"], found["plate"], found["ridge"]
    ahead = _ahead(heading, 1)
    assert borne(rafter, plate, (0, 0, -1)) == pytest.approx(4 * 3.4853, rel=1e-3)
    assert borne(rafter, plate, ahead) == pytest.approx(4 * 3.4853, rel=1e-3)
    assert borne(rafter, beam, ahead) == pytest.approx(4 * 7.4853, rel=1e-3)
    assert borne(rafter, plate, _ahead(heading, -1)) < 0.01


def _ahead(heading: str, way: int) -> tuple[int, int, int]:
    step = way * SENSE[heading]
    return (step, 0, 0) if heading in ("east", "west") else (0, step, 0)


def test_a_step_seat_bears_and_thrusts() -> None:
    """Let in 1", 1" from the outside: outwards it thrusts against 1" of step, 4" wide."""
    found = logs(built(Roof(over="6", rafter=DEEP), seat(let_in="1", step="1"), tail(), ridge()))
    rafter, plate = found["rafter"], found["plate"]
    assert borne(rafter, plate, (-1, 0, 0)) == pytest.approx(4, rel=1e-3)
    down = borne(rafter, plate, (0, 0, -1))
    assert down == pytest.approx(4 * (1 + 8 * 2**0.5 - 8), rel=1e-3), "on step and floor"


def test_a_head_let_in_stands_on_its_seat() -> None:
    """3/4" of level seat in the ridge, 4" wide, and the whole plumb cut against its floor."""
    found = logs(built(Roof(), seat(), tail(), ridge(let_in="3/4")))
    rafter, beam = found["rafter"], found["ridge"]
    assert borne(rafter, beam, (0, 0, -1)) == pytest.approx(4 * 0.75, rel=1e-3)
    assert borne(rafter, beam, (1, 0, 0)) > 4 * 7.4


@pytest.mark.parametrize("heading", HEADINGS)
def test_a_shed_rafter_stands_on_both_plates(heading: str) -> None:
    """Both seats come out of one top edge, and both bear alike."""
    works = (
        seat(),
        seat(id="high", into="upper"),
        tail(),
        tail(id="top", end="head"),
    )
    frame = shed(Roof(heading=heading, rise="7", rafter=DEEP, over="7", run="12'"), *works)
    found = logs(frame)
    assert wrong_with(frame) == []
    low, high = (borne(found["rafter"], found[each], (0, 0, -1)) for each in ("plate", "upper"))
    assert low == pytest.approx(high, rel=1e-3)
    assert low > 4 * 3


PITCHES = (("12", "12"), ("7", "7"), ("8", "13"), ("16", "16"))

PEAKS = {
    "butt": peak(cut="butt"),
    "half lap": peak(),
    "bridle": peak(cut="bridle", thickness="1-1/4"),
    "bridle set back": peak(cut="bridle", thickness="1-1/4", set_back="1"),
}


def _pair(pitches: tuple[str, str], name: str, **words: object) -> tuple[Roof, Roof]:
    heading = str(words.pop("heading", "east"))
    other = {"east": "west", "west": "east", "north": "south", "south": "north"}[heading]
    flipped = {"side": "north", "across": "4"} if name == "flipped" else {}
    roof = Roof(rise=pitches[0], rafter=DEEP, heading=heading, **words)  # type: ignore[arg-type]
    return roof, Roof(rise=pitches[1], rafter=DEEP, heading=other, **{**words, **flipped})  # type: ignore[arg-type]


@pytest.mark.parametrize("ends", ["foot", "head"])
@pytest.mark.parametrize("pitches", PITCHES, ids="/".join)
@pytest.mark.parametrize("name", PEAKS)
def test_a_pair_is_told_and_cut_as_the_textbook_has_it(
    name: str, pitches: tuple[str, str], ends: str
) -> None:
    """Butted, lapped or bridled, at equal and unequal pitches, measured from either end."""
    frame = pair(*_pair(pitches, "", reference_end=ends), PEAKS[name])
    assert wrong_with(frame) == []
    found = logs(frame)
    assert list(unnoticed(right(frame, found), found)) == []


@pytest.mark.parametrize("name", PEAKS)
@pytest.mark.parametrize("heading", HEADINGS[1:])
def test_a_pair_of_any_heading(name: str, heading: str) -> None:
    """Towards whichever compass point the first of them rises."""
    assert wrong_with(pair(*_pair(("9", "9"), "", heading=heading), PEAKS[name])) == []


@pytest.mark.parametrize("name", PEAKS)
def test_a_pair_measured_from_opposite_sides(name: str) -> None:
    """The mate's reference side looks the other way: the lap is on its far side then."""
    assert wrong_with(pair(*_pair(("9", "7"), "flipped"), PEAKS[name])) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(PEAKS)),
    pitches=st.sampled_from(PITCHES),
    off=st.tuples(*[st.integers(0, 32)] * 4),
)
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_pair_of_sticks_fits(
    rule: str, name: str, pitches: tuple[str, str], off: tuple[int, ...]
) -> None:
    """Whatever both are over, by either rule."""
    own = {each: _ruled(rule, ("8", "4")) for each in ("rafter", "mate")}
    sticks = {"rafter": _real(("8", "4"), off[:2]), "mate": _real(("8", "4"), off[2:])}
    assert wrong_with(pair(*_pair(pitches, "", own=own), PEAKS[name], real=sticks)) == []


@pytest.mark.parametrize("name", ["half lap", "bridle"])
def test_a_mate_is_cut_to_the_thickness_that_was_made(name: str) -> None:
    """A lap or tongue 1/8" thin leaves its mate as much thicker, as the textbook has it."""
    part = PEAKS[name].parts[0]
    made = real(None, {part: {"thickness": "1-1/8"}})
    frame = pair(*_pair(("7", "7"), ""), PEAKS[name], real={"rafter": made})
    found = logs(frame)
    assert list(differs(right(frame, found), found)) == []


def test_a_half_lap_bears() -> None:
    """8 x 4 rafters at 12 in 12: each shoulder is 8" deep and 2" wide, and thrusts on the other."""
    found = logs(pair(*_pair(("12", "12"), ""), PEAKS["half lap"]))
    area = borne(found["rafter"], found["mate"], (1, 0, 0))
    assert area == pytest.approx(2 * 2 * 8 / 2**0.5, rel=1e-3), "seen along the run"


def test_butted_heads_bear() -> None:
    """At 12 in 12 the plumb cuts of 8 x 4 rafters meet on 8 x sqrt 2 by 4."""
    found = logs(pair(*_pair(("12", "12"), ""), PEAKS["butt"]))
    area = borne(found["rafter"], found["mate"], (1, 0, 0))
    assert area == pytest.approx(4 * 8 * 2**0.5, rel=1e-3)
