"""The diminished housing proved: told true, cut as the textbook cuts it, and it bears."""

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.diminished.record import DiminishedTenon
from benchmate.measure.length import Length
from benchmate.model.feature import Beside
from tests.builders import length, real
from tests.joinery.diminished.ledges import SQUARE, SQUARE_BEAM, ledge
from tests.proof.fits import Wastes, differs, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.diminished import profile, textbook
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

LEDGES: dict[str, dict[str, Any]] = {
    "west": {},
    "east": {"heading": "east"},
    "north": {"heading": "north"},
    "south": {"heading": "south", "side": "east"},
    "at its reference end": {"reference": True},
    "measured from the underside": {"first": "down"},
    "into a far face": {"into_first": "west"},
    "from the north side": {"side": "north"},
    "standing in": {"inset": "1"},
    "relieved": {"relief_reference": "1", "relief_far": "1"},
    "barefaced": {"set_back": "0"},
    "in a beam": {"lying": True},
    "in a beam's far face": {"lying": True, "into_first": "west"},
    "low in a beam": {"lying": True, "drop": "1", "heading": "north", "reference": True},
    "low in a beam, from below": {"lying": True, "drop": "1", "first": "down"},
    "relieved, in a beam": {"lying": True, "relief_reference": "1", "relief_far": "1/2"},
}
SQUARES: dict[str, dict[str, Any]] = {
    "by square rule": {"own": SQUARE},
    "by square rule, far": {"own": SQUARE, "into_first": "west"},
    "by square rule, from below": {"own": SQUARE, "first": "down"},
    "by square rule, far, from below": {"own": SQUARE, "first": "down", "into_first": "west"},
    "by square rule, in a beam": {"own": SQUARE_BEAM, "lying": True},
    "by square rule, low in a beam's far face": {
        "own": SQUARE_BEAM,
        "lying": True,
        "first": "down",
        "into_first": "west",
        "drop": "1",
    },
}
ALL = LEDGES | SQUARES


def joint_of(frame: Frame) -> DiminishedTenon:
    """The diminished tenon of a frame."""
    return next(work for work in frame.project.works if isinstance(work, DiminishedTenon))


def _right(frame: Frame, found: dict[str, Log]) -> Wastes:
    return textbook(joint_of(frame), frame, found)


def wrong_with(frame: Frame) -> list[str]:
    """All that is wrong with it, but for timbers in one place."""
    found = logs(frame)
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(_right(frame, found), found),
    ]


@pytest.mark.parametrize("name", ALL)
def test_it_is_told_and_cut_as_the_textbook_has_it(name: str) -> None:
    """Any heading, hand, end and rule, in a post or a beam; and nothing is in one place."""
    frame = ledge(**ALL[name])
    assert wrong_with(frame) == []
    assert list(overlaps(logs(frame).values())) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(LEDGES)),
    off=st.tuples(*[st.integers(-16, 32)] * 4),
    cut=st.tuples(*[st.integers(-8, 4)] * 3),
)
@settings(max_examples=12, deadline=None, phases=UNSHRUNK)
def test_any_real_sizes_fit(
    rule: str, name: str, off: tuple[int, ...], cut: tuple[int, ...]
) -> None:
    """Whatever the sticks are over or, by mill rule, under, and however the tenon came out."""
    off = tuple(map(abs, off)) if rule == "square" else off
    words = LEDGES[name]
    lying = bool(words.get("lying"))
    if rule == "square":
        words = words | {"own": SQUARE_BEAM if lying else SQUARE}
    sticks = {"post": _size((8, 10 if lying else 8), off[:2]), "girt": _size((8, 6), off[2:])}
    frame = ledge(real=sticks, **words)
    assert list(overlaps(logs(frame).values())) == []
    end = f"{words.get('heading', 'west')}-end-tenon"
    as_cut = real(as_cut={end: _came_out(frame, end, cut)}).as_cut
    sticks["girt"] = Real(sticks["girt"].measured, as_cut)
    assert wrong_with(ledge(real=sticks, **words)) == []


def _came_out(frame: Frame, end: str, cut: tuple[int, ...]) -> dict[str, str]:
    """The tenon's three sizes, each so many thirty-seconds off."""
    feature = logs(frame)["girt"].feature(end)
    return {
        size.name: (size.laid_out + Length.inches(0, 1, 32) * each).exact_text()
        for size, each in zip(feature.sizes, cut, strict=True)
    }


def _size(drawn: tuple[int, int], over: tuple[int, ...]) -> Real:
    first, second = (
        (Length.inches(size) + Length.inches(0, 1, 32) * count).exact_text()
        for size, count in zip(drawn, over, strict=True)
    )
    return real({"all": {"first": first, "second": second}})


@pytest.mark.parametrize(
    "name", ["west", "relieved", "low in a beam", "by square rule, far, from below"]
)
def test_no_line_can_be_misplaced(name: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off."""
    frame = ledge(**ALL[name])
    found = logs(frame)
    assert list(unnoticed(_right(frame, found), found)) == []


PUSH = 1000


@pytest.mark.parametrize(
    ("name", "in_", "down"),
    [
        ("west", 32, 12),
        ("north", 32, 12),
        ("measured from the underside", 32, 12),
        ("into a far face", 32, 12),
        ("in a beam", 36, 27),
    ],
)
def test_slope_and_ledge_bear(name: str, in_: int, down: int) -> None:
    """The end bears on its whole shoulder, and on the ledge with its underside.

    In a post an 8 x 6 end with a 2" tenon as tall as itself: 48 - 16 square inches, and down on a
    1" ledge by 6" and the tenon's own 3" by 2". In a beam the tenon is 6" wide: 48 - 12, and its
    lower cheek, half-way down, bears on 3-1/2" by 6" besides.
    """
    frame = ledge(**ALL[name])
    found = logs(frame)
    met = profile(joint_of(frame), found)
    girt, post = found["girt"].wood, found["post"].wood
    areas = [
        met.moved(girt, **by).within(post).volume / PUSH / length("1").nm ** 2
        for by in ({"deep": PUSH}, {"down": PUSH})
    ]
    assert areas == [pytest.approx(in_, abs=0.02), pytest.approx(down, abs=0.02)]


@pytest.mark.parametrize("at", ["at this line", "at the housing's ledge line"])
def test_a_floor_that_is_told_wrong_is_noticed(at: str) -> None:
    """A millimetre more than the cut is deep, at either of its two lines."""
    log = logs(ledge())["post"]
    steps = tuple(
        replace(step, beside=tuple(_deeper(each, at) for each in step.beside))
        for step in log.layout.steps
    )
    wrong = replace(log, layout=replace(log.layout, steps=steps))
    assert list(untrue(log)) == []
    (words,) = untrue(wrong)
    assert at in words


def _deeper(beside: Beside, at: str) -> Beside:
    return replace(beside, value=beside.value + Length.mm(1)) if at in beside.words else beside
