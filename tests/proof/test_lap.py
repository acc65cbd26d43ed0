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
from tests.joinery.lap.crossings import crossed
from tests.proof.fits import Wastes, differs, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.lap import textbook
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

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


@pytest.mark.parametrize("rules", ["mill mill", "square square", "mill square", "square mill"])
@given(name=st.sampled_from(sorted(CROSSINGS)), off=st.tuples(*[st.integers(0, 24)] * 4))
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(rules: str, name: str, off: tuple[int, ...]) -> None:
    """Whatever the sticks are over, by either rule, the lap is cut right and overlaps nothing."""
    tie, plate = map(_own, rules.split(), ("8 x 6", "8 x 8"))
    sizes = {"tie": _size((8, 6), off[:2]), "plate": _size((8, 8), off[2:])}
    frame = crossed(
        sizes,
        **CROSSINGS[name],
        tie=tie,
        plate=plate,
    )
    assert wrong_with(frame) == []


def _own(rule: str, inner: str) -> Mapping[str, object]:
    return {"rule": "square", "inner": inner} if rule == "square" else {}


def _size(drawn: tuple[int, int], over: tuple[int, ...]) -> Real:
    first, second = (
        (Length.inches(size) + Length.inches(0, 1, 32) * count).exact_text()
        for size, count in zip(drawn, over, strict=True)
    )
    return real({"all": {"first": first, "second": second}})


@pytest.mark.parametrize("name", CROSSINGS)
def test_no_line_of_a_lap_can_be_misplaced(name: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off."""
    frame = crossed(**CROSSINGS[name])
    found = logs(frame)
    assert list(unnoticed(_right(frame, found), found)) == []
