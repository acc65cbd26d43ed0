"""The lap proved: told true, cut as the textbook cuts it, and a fit in the building."""

from collections.abc import Mapping
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.lap.record import LapJoint
from benchmate.measure.length import Length
from tests.builders import real
from tests.joinery.lap.crossings import WAYS, crossed
from tests.proof.fits import Wastes, differs, misplaced, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.lap import textbook
from tests.proof.told import untrue
from tests.proof.wood import TOUCH, Log, logs

CROSSINGS: dict[str, dict[str, Any]] = {
    "half lap": {},
    "half lap under": {"side": "down"},
    "half lap from its far end": {"from_the_lap": True},
    "half lap west": {"heading": "west", "run": "south"},
    "half lap north": {"heading": "north", "run": "east", "plate_looks": (True, False)},
    "half lap of a post": {"heading": "up", "run": "east", "side": "south"},
    "half lap on a post": {"heading": "south", "run": "up", "side": "west", "up": "1"},
    "half lap past": {"joint": {"past": "6", "share": "3"}},
    "half lap in far faces": {
        "tie_looks": (False, False),
        "plate_looks": (False, False),
        "from_the_lap": True,
    },
    "cross lap": {"ends": False, "up": "2"},
    "cross lap under": {"ends": False, "side": "down", "up": "2", "joint": {"share": "2-1/2"}},
    "cross lap of uprights": {
        "ends": False,
        "heading": "down",
        "run": "west",
        "side": "north",
        "tie_looks": (True, False),
        "plate_looks": (False, True),
    },
    "cross lap, one notched": {"ends": False, "up": "4", "joint": {"share": "0"}},
    "corner": {"corner": "north"},
    "corner, other hand": {"corner": "south", "from_the_lap": True},
    "corner under": {"corner": "north", "side": "down", "heading": "west"},
    "corner in far faces": {
        "corner": "south",
        "tie_looks": (False, True),
        "plate_looks": (False, False),
    },
    "corner in near faces": {
        "corner": "north",
        "tie_looks": (True, False),
        "plate_looks": (True, False),
    },
    "dovetail": {"up": "6", "joint": {"flare": "1", "share": "2"}},
    "dovetail, half its depth": {"joint": {"flare": "1"}, "from_the_lap": True},
    "dovetail past": {
        "up": "5",
        "joint": {"flare": "3/4", "past": "10"},
        "heading": "north",
        "run": "west",
    },
    "half dovetail": {"up": "6", "joint": {"flare_far": "1"}, "heading": "west"},
    "dovetail, one side straight": {
        "up": "6",
        "joint": {"flare": "1", "flare_far": "0"},
        "from_the_lap": True,
    },
    "half dovetail, other side": {
        "up": "6",
        "joint": {"flare_reference": "1-1/2"},
        "tie_looks": (True, False),
        "plate_looks": (True, False),
    },
    "dovetail under": {"side": "down", "up": "5", "joint": {"flare": "1"}},
    "cog": {"up": "6", "ends": False, "joint": {"cog": "2", "share": "2"}},
    "cog at an end": {"up": "6", "joint": {"cog": "3", "past": "1"}},
    "cog to one side": {
        "up": "5",
        "ends": False,
        "joint": {"cog": "3", "cog_set_back": "0"},
        "plate_looks": (True, False),
    },
}


def _right(frame: Frame, found: dict[str, Log]) -> Wastes:
    (joint,) = (work for work in frame.project.works if isinstance(work, LapJoint))
    return textbook(joint, frame, found)


def wrong_with(frame: Frame) -> list[str]:
    """All that is wrong with the lap of a frame."""
    found = logs(frame)
    assert not [each for log in found.values() for f in log.layout.features for each in f.findings]
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(_right(frame, found), found),
        *overlaps(found.values()),
    ]


@pytest.mark.parametrize("name", CROSSINGS)
def test_a_lap_is_told_and_cut_as_the_textbook_has_it(name: str) -> None:
    """Any way round, either hand: the steps tell the planes, the planes take the wood."""
    assert wrong_with(crossed(**CROSSINGS[name])) == []


BOTH_CUT = sorted(set(CROSSINGS) - {"cross lap, one notched", "dovetail", "cog"})
"""Those that cut some off both, so that a stick may be under its size as drawn."""


@pytest.mark.parametrize("rules", ["mill mill", "square square", "mill square", "square mill"])
@given(name=st.sampled_from(BOTH_CUT), off=st.tuples(*[st.integers(-16, 24)] * 4))
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(rules: str, name: str, off: tuple[int, ...]) -> None:
    """Whatever the sticks are over or under, by either rule, it is cut right and overlaps nothing.

    By square rule none is under its inner timber.
    """
    tie_rule, plate_rule = rules.split()
    frame = crossed(
        {"tie": _size((8, 6), off[:2], tie_rule), "plate": _size((8, 8), off[2:], plate_rule)},
        **CROSSINGS[name],
        tie=_own(tie_rule, "8 x 6"),
        plate=_own(plate_rule, "8 x 8"),
    )
    assert wrong_with(frame) == []


def _own(rule: str, inner: str) -> Mapping[str, object]:
    return {"rule": "square", "inner": inner} if rule == "square" else {}


def _size(drawn: tuple[int, int], off: tuple[int, ...], rule: str) -> Real:
    first, second = (
        Length.inches(size) + Length.inches(0, 1, 32) * (abs(count) if rule == "square" else count)
        for size, count in zip(drawn, off, strict=True)
    )
    return real({"all": {"first": first.exact_text(), "second": second.exact_text()}})


PUSH = 1000
"""How far a timber is pushed against its mate, in nanometres: what it then shares is their contact,
by this distance."""

SQUARE_INCH = 25_400_000**2

DOVETAIL = {"up": "6", "joint": {"flare": "1", "share": "2"}}
COGGED = {"up": "6", "ends": False, "joint": {"cog": "2", "share": "2"}}


@pytest.mark.parametrize(
    ("words", "way", "square_inches"),
    [
        ({}, "down", 8 * 6),
        ({}, "east", 4 * 6),
        ({}, "north", 4 * 8),
        ({}, "south", 4 * 8),
        ({"side": "down"}, "up", 8 * 6),
        ({"ends": False, "up": "2"}, "down", 8 * 6),
        ({"ends": False, "up": "2"}, "west", 3 * 6),
        ({"ends": False, "up": "2"}, "north", 3 * 8),
        ({"corner": "north"}, "down", 8 * 6),
        ({"corner": "north"}, "east", 4 * 6),
        ({"corner": "north"}, "south", 4 * 8),
        (DOVETAIL, "down", (4 + 6) / 2 * 8 + 1 * 8),
        (DOVETAIL, "west", 2 * 1 * 2),
        (COGGED, "east", 2 * 6),
        (COGGED, "west", 2 * 6),
        (COGGED, "down", 8 * 6),
        (COGGED, "north", 2 * (8 - 2)),
    ],
)
def test_a_lap_bears(words: dict[str, Any], way: str, square_inches: float) -> None:
    """Pushed a hair against the plate the tie touches all of it: bed, walls, shoulder, flanks, cog.

    A dovetail's flanks bear against the pull by their flare; beside them the tie lies on the plate.
    """
    found = logs(crossed(**words))
    east, north, up = (PUSH * step for step in WAYS[way].value)
    shared = found["tie"].wood.moved((east, north, up)).within(found["plate"].wood).volume
    assert shared == pytest.approx(square_inches * SQUARE_INCH * PUSH, rel=0.01)


def test_a_lap_cut_wrong_is_made_good_in_its_mate() -> None:
    """Law 5: 1/8" too little left on the tie, and the plate cut to it still takes it, level."""
    drawn = logs(crossed())["tie"]
    thin = misplaced(drawn.feature("east-end-lap"), "lap", Length.inches(0, 1, 8).nm)
    made = drawn.stand.put(drawn.block).without([drawn.waste(thin)])
    sizes = {"tie": real(as_cut={"east-end-lap": {"thickness": "3-7/8"}})}
    for built, bears in ((crossed(sizes), 8 * 6), (crossed(), 0)):
        plate = logs(built)["plate"].wood
        assert made.within(plate).volume == pytest.approx(0, abs=TOUCH)
        shared = made.moved((0, 0, -PUSH)).within(plate).volume
        assert shared == pytest.approx(bears * SQUARE_INCH * PUSH, rel=0.01)


@pytest.mark.parametrize("over", [False, True], ids=["as drawn", "over by square rule"])
@pytest.mark.parametrize("name", CROSSINGS)
def test_no_line_of_a_lap_can_be_misplaced(name: str, over: bool) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off."""
    square: dict[str, Any] = {
        "tie": _own("square", "8 x 6"),
        "plate": _own("square", "8 x 8"),
        "sizes": {
            "tie": _size((8, 6), (10, 8), "square"),
            "plate": _size((8, 8), (6, 12), "square"),
        },
    }
    frame = crossed(**CROSSINGS[name], **(square if over else {}))
    found = logs(frame)
    assert list(unnoticed(_right(frame, found), found)) == []
