"""The brace proved: told true, cut as the textbook cuts it, and a fit in the building."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.brace.record import BraceJoint
from benchmate.measure.length import Length
from tests.builders import length, real
from tests.joinery.brace.bays import PEG, bay
from tests.proof.bored import prisms
from tests.proof.fits import Wastes, differs, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.brace import bored, textbook
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

TWO_PEGS = {**PEG, "count": 2, "spacing": "1-1/2"}
"""Two pegs, which is one more than usual."""

BAYS: dict[str, dict[str, object]] = {
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
    "pegged": {"joint": {"pegs": PEG}, "legs": ("36", "48")},
    "pegged on a sill": {"joint": {"pegs": PEG}, "low": True, "heading": "north"},
    "two pegs and a nose set in": {
        "joint": {"pegs": TWO_PEGS, "nose": "1/2", "housing": "0"},
        "legs": ("48", "36"),
        "heading": "south",
    },
    "pegged blind from the far side": {
        "joint": {"pegs": {**PEG, "bored_from": "far", "blind_depth": "7"}},
        "post_first": "east",
        "beam_first": "down",
    },
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


def _spots(found: dict[str, Log], name: str) -> list[tuple[float, ...]]:
    """Where the holes of one feature come in the building, across the level axis they go along."""
    timber, _, feature = name.partition("/")
    log = found[timber].at(found[timber].feature(feature))
    brace = found["brace"].timber
    level = next(n for n, part in enumerate(brace.second_face.value) if part)
    spots = []
    for prism in prisms(log.feature(feature)):
        x, u, v = (prism.middle.get(axis, 0) for axis in range(3))
        point = log.stand.point(x, u, v)
        spots.append(tuple(at for axis, at in enumerate(point) if axis != level))
    return spots


def _holes_off(frame: Frame) -> list[float]:
    """How far each hole of a frame's braces lies off where the textbook has it, in nanometres."""
    found = logs(frame)
    return [
        abs(made - right)
        for joint in frame.project.works
        if isinstance(joint, BraceJoint)
        for name, spots in bored(joint, frame, found).items()
        for here, there in zip(_spots(found, name), spots, strict=True)
        for made, right in zip(here, there, strict=True)
    ]


@pytest.mark.parametrize("name", [name for name in BAYS if "peg" in name])
def test_a_peg_draws_the_shoulder_down_and_the_nose_home(name: str) -> None:
    """Its hole in the brace lies nearer the face and further from the nose, by the draw each way.

    Towards the shoulder and away from the butt (trade notes 3, TFG-when).
    """
    off = _holes_off(bay(**BAYS[name]))  # type: ignore[arg-type]
    assert len(off) == 2 * 2 * 2 * (2 if "two" in name else 1)
    assert max(off) < 2


@pytest.mark.parametrize("key", ["from_shoulder", "from_edge", "draw"])
def test_a_hole_that_is_off_is_noticed(key: str) -> None:
    """A sixty-fourth more of any figure puts a hole where the textbook of the others has none."""
    right, wrong = (bay(joint={"pegs": {**PEG, **more}}) for more in ({}, {key: _more(PEG[key])}))
    found = logs(wrong)
    works = [work for work in right.project.works if isinstance(work, BraceJoint)]
    spots = {name: at for work in works for name, at in bored(work, right, found).items()}
    off = [
        abs(a - b)
        for name, there in spots.items()
        for here, spot in zip(_spots(found, name), there, strict=True)
        for a, b in zip(here, spot, strict=True)
    ]
    assert max(off) > 390_000


def _more(size: object) -> str:
    return (length(str(size)) + length("1/64")).exact_text()
