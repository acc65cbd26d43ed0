"""Soffit and tusk tenons proved: told true, cut as the textbook cuts them, and a fit."""

from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame
from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon
from tests.floor import FLOORS, Floor, Off, over
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon
from tests.proof.fits import Wastes, borne, differs, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.joist_tenon import textbook
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

Joint = SoffitTenon | TuskTenon
Make = Callable[..., Joint]

KINDS: dict[str, tuple[Make, dict[str, str]]] = {
    "flush soffit tenon": (soffit_tenon, {}),
    "raised soffit tenon": (soffit_tenon, {"above_soffit": "1", "haunch": "3/4"}),
    "tusk tenon as published": (tusk_tenon, {}),
    "tusk tenon without a horn": (tusk_tenon, {"set_back": "2", "horn": "0", "tusk": "3/4"}),
    "tusk to the underside": (
        tusk_tenon,
        {"set_back": "3", "thickness": "2", "tusk_height": "2", "length": "5"},
    ),
}

WHOLE = ("flush soffit tenon", "tusk to the underside")
"""Tenons that leave no plain shoulder."""


def _right(frame: Frame, found: dict[str, Log]) -> Wastes:
    (joint,) = (work for work in frame.project.works if isinstance(work, Joint))
    return textbook(joint, frame, found)


def wrong_with(frame: Frame) -> list[str]:
    """All that is wrong with a joist's tenon and its mortise."""
    found = logs(frame)
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(_right(frame, found), found),
        *overlaps(found.values()),
    ]


def _made(kind: str, floor: Floor) -> Joint:
    make, words = KINDS[kind]
    return make(floor.end, **words)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("name", FLOORS)
def test_it_is_told_and_cut_as_the_textbook_has_it(name: str, kind: str) -> None:
    """Any heading, either hand: the steps tell the planes, the planes take the wood."""
    floor = FLOORS[name]
    assert wrong_with(floor.frame(_made(kind, floor))) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(FLOORS)),
    kind=st.sampled_from(sorted(KINDS)),
    off=st.tuples(*[st.integers(0, 32)] * 4),
)
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(rule: str, name: str, kind: str, off: Off) -> None:
    """Whatever the sticks are over, by either rule, the joint is cut right and overlaps nothing."""
    floor = over(FLOORS[name], off, rule)
    assert wrong_with(floor.frame(_made(kind, floor))) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("name", ["as drawn", "lower than its beam", "proud of its beam"])
def test_no_line_of_it_can_be_misplaced(name: str, kind: str, rule: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off.

    Where a whole end goes in, tenon, haunch and all, its housing has the edges of the rest.
    """
    floor = over(FLOORS[name], (24, 24, 24, 24), rule)
    frame = floor.frame(_made(kind, floor))
    found = logs(frame)
    doubled = "/housing-" if kind in WHOLE else "nothing"
    missed = unnoticed(_right(frame, found), found)
    assert [words for words in missed if doubled not in words] == []


@pytest.mark.parametrize(
    ("kind", "area"),
    [
        ("flush soffit tenon", 4 * 4),
        ("raised soffit tenon", 4 * 4),
        ("tusk tenon as published", 4 * 3.375),
        ("tusk tenon without a horn", 4 * 3.375),
        ("tusk to the underside", 4 * 5),
    ],
)
def test_it_bears_on_all_that_goes_in(kind: str, area: float) -> None:
    """Downwards on tenon and tusk, which together are as long as the tenon: by the joist's 4"."""
    floor = FLOORS["lower than its beam"].with_(joist="7-1/2 x 4")
    found = logs(floor.frame(_made(kind, floor)))
    assert borne(found["joist"], found["beam"], (0, 0, -1)) == pytest.approx(area)


@pytest.mark.parametrize("kind", KINDS)
def test_its_shoulder_comes_up_to_the_beam(kind: str) -> None:
    """Going in, all of its end but the tenon's meets wood: the section less the tenon's."""
    floor = FLOORS["lower than its beam"]
    joint = _made(kind, floor)
    found = logs(floor.frame(joint))
    stopped = borne(found["joist"], found["beam"], (0, -1, 0))
    near, far = (_at(found["joist"], line) for line in ("near-cheek", "far-cheek"))
    assert stopped == pytest.approx(4 * (7 - (far - near)))


def _at(log: Log, line: str) -> float:
    (feature,) = (each for each in log.layout.features if each.id.endswith("-tenon"))
    found = {each.id: each.at.nm / 25_400_000 for each in feature.lines}
    return found.get(line, 7.0)
