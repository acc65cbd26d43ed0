"""The brace proved: told true, cut as the textbook cuts it, and a fit in the building."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.brace.record import BraceJoint
from benchmate.measure.length import Length
from tests.builders import real
from tests.joinery.brace.bays import bay
from tests.proof.fits import Wastes, differs, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.brace import textbook
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

BAYS = {
    "at 45 degrees": {},
    "towards the west": {"heading": "west"},
    "towards the north": {"heading": "north", "legs": ("36", "48")},
    "towards the south": {"heading": "south", "legs": ("48", "36")},
    "steep": {"legs": ("60", "36")},
    "flat": {"legs": ("24", "48")},
    "on a sill": {"low": True, "legs": ("36", "48")},
    "on a sill, towards the west": {"low": True, "heading": "west"},
    "from the north side": {"side": "north", "legs": ("30", "48")},
    "unhoused": {"joint": {"housing": "0"}},
    "barefaced": {"joint": {"set_back": "0"}},
    "with its nose set in": {"joint": {"nose": "1"}, "legs": ("36", "42")},
    "with its nose set in a little": {"joint": {"nose": "1/4", "housing": "0"}},
    "into far faces": {"post_first": "east", "beam_first": "down"},
}


def _right(frame: Frame, found: dict[str, Log]) -> Wastes:
    joints = [work for work in frame.project.works if isinstance(work, BraceJoint)]
    return {key: waste for joint in joints for key, waste in textbook(joint, frame, found).items()}


def wrong_with(frame: Frame) -> list[str]:
    """All that is wrong with the braces of a frame; a line that is struck lies on some face."""
    found = logs(frame)
    steps = [step for log in found.values() for step in log.layout.steps]
    return [
        *(f"{step.id} is struck on no face" for step in steps if step.line and not step.faces),
        *(words for log in found.values() for words in untrue(log)),
        *differs(_right(frame, found), found),
    ]


@pytest.mark.parametrize("name", BAYS)
def test_a_brace_is_told_and_cut_as_the_textbook_has_it(name: str) -> None:
    """Any legs, any heading, either hand: the steps tell the planes, the planes take the wood."""
    assert wrong_with(bay(**BAYS[name])) == []  # type: ignore[arg-type]


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(BAYS)),
    off=st.tuples(*[st.integers(0, 32)] * 6),
)
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(rule: str, name: str, off: tuple[int, ...]) -> None:
    """Whatever the sticks are over, by either rule, the joint is cut right and overlaps nothing."""
    measured = {
        "post": _size((8, 8), off[:2]),
        "beam": _size((10, 8), off[2:4]),
        "brace": _size((6, 4), off[4:]),
    }
    inner = {
        each: {"rule": rule} | ({"inner": size} if rule == "square" else {})
        for each, size in (("post", "8 x 8"), ("beam", "10 x 8"), ("brace", "6 x 4"))
    }
    frame = bay(real=measured, own=inner, **BAYS[name])  # type: ignore[arg-type]
    found = logs(frame)
    assert wrong_with(frame) == []
    others = [found["post"], found["beam"]]
    assert [words for other in others for words in overlaps((found["brace"], other))] == []


def _size(drawn: tuple[int, int], over: tuple[int, ...]) -> Real:
    first, second = (
        (Length.inches(size) + Length.inches(0, 1, 32) * count).exact_text()
        for size, count in zip(drawn, over, strict=True)
    )
    return real({"all": {"first": first, "second": second}})


@pytest.mark.parametrize("name", ["at 45 degrees", "on a sill", "with its nose set in", "flat"])
def test_no_line_of_a_brace_can_be_misplaced(name: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off."""
    frame = bay(**BAYS[name])  # type: ignore[arg-type]
    found = logs(frame)
    assert list(unnoticed(_right(frame, found), found)) == []


@pytest.mark.parametrize("name", BAYS)
def test_a_brace_overlaps_nothing(name: str) -> None:
    """Once all is cut the brace shares no wood with post or beam."""
    found = logs(bay(**BAYS[name]))  # type: ignore[arg-type]
    brace = found["brace"]
    others = [found["post"], found["beam"]]
    assert [words for other in others for words in overlaps((brace, other))] == []
