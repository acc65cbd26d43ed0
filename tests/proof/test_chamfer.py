"""The stopped chamfer proved: told true, and cut as the textbook cuts it."""

from collections.abc import Mapping

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame
from benchmate.joinery.chamfer.record import ARRISES, Chamfer
from benchmate.layout.step import Step
from tests.builders import chamfer, frame, length, real, timber
from tests.compass import OPPOSITE
from tests.corner import ENDS
from tests.proof.fits import differs
from tests.proof.hooked import set_off
from tests.proof.planted import uncaught_cuts, uncaught_words
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.chamfer import stop_along, textbook
from tests.proof.told import untrue
from tests.proof.wood import Log, logs
from tests.space import STANCES, TOWARDS, Stance

Sizes = Mapping[str, Mapping[str, str]]

AXES = ("east", "north", "up")
POST = Stance("south", "west", "down")
STANDING = [stance for stance in STANCES if TOWARDS[stance.end][0] == 2]
ONE, ALL = ("far-far",), tuple(ARRISES)

MEASURED: Mapping[str, Sizes] = {
    "as drawn": {},
    "half-way along": {"middle": {"first": "5-3/4"}, "all": {"first": "6-1/2", "second": "8-3/8"}},
    "for the chamfer": {
        "joint": {"first": "6-1/4", "second": "7-7/8"},
        "middle": {"first": "5-3/4", "second": "9"},
    },
}
"""A stick 6 by 8, measured where a chamfer goes by and where it does not."""


def of(stance: Stance, sizes: Sizes, **words: object) -> tuple[Chamfer, Frame]:
    """A chamfer on a stick 5 ft long, 12" from one end to 6" from the other if nothing is said."""
    end = ENDS.get(stance.end, stance.end)
    far = OPPOSITE[stance.end]
    stops = {
        "near_stop": {"shoulder": end, "distance": "12"},
        "far_stop": {"shoulder": ENDS.get(far, far), "distance": "6"},
    }
    along = TOWARDS[stance.end][0]
    stick = timber(
        "post",
        section="6 x 8",
        first_face=stance.first,
        second_face=stance.second,
        reference_end=end,
        length="5'",
        at={name: f"{axis}' 7" for axis, name in enumerate(AXES) if axis != along},
        reference_end_at="2' 3",
    )
    cut = chamfer(id="joint", **(stops | words))
    return cut, frame(stick, cut, real={"post": real(sizes)})


def wrong_with(cut: Chamfer, found: Frame) -> list[str]:
    """All that is wrong with one chamfer."""
    raised = logs(found)
    return [*untrue(raised["post"]), *differs(textbook(cut, found, raised), raised)]


@pytest.mark.parametrize("sizes", MEASURED)
@pytest.mark.parametrize("arris", ARRISES)
def test_a_chamfer_is_told_and_cut_as_the_textbook_has_it(arris: str, sizes: str) -> None:
    """Any arris of any stick: the steps tell the planes, and the planes take the wood."""
    assert wrong_with(*of(POST, MEASURED[sizes], arrises=[arris])) == []


@pytest.mark.parametrize("arrises", [ONE, ALL], ids=["one arris", "all of them"])
@pytest.mark.parametrize("stance", STANCES, ids="-".join)
def test_it_is_right_however_the_timber_stands(stance: Stance, arrises: tuple[str, ...]) -> None:
    """All 48 ways there are, 24 of either hand."""
    assert wrong_with(*of(stance, MEASURED["for the chamfer"], arrises=arrises)) == []


@pytest.mark.parametrize("stance", STANDING, ids="-".join)
def test_a_stop_at_a_level_is_at_that_level(stance: Stance) -> None:
    """Head up or head down: 3 ft up in the building, wherever the timber is measured from."""
    key, up = ("near_stop", "3' 6") if stance.end == "down" else ("far_stop", "-1' 9")
    cut, found = of(stance, {}, **{key: {"level": up}})
    assert wrong_with(cut, found) == []
    log = logs(found)["post"]
    stop = {"near_stop": cut.near_stop, "far_stop": cut.far_stop}[key]
    assert log.stand.point(stop_along(stop, found, log), 0, 0)[2] == length(up).nm


@given(
    stance=st.sampled_from(STANCES),
    arrises=st.lists(st.sampled_from(sorted(ARRISES)), min_size=1, unique=True),
    leg=st.integers(1, 60),
    over=st.tuples(*[st.integers(-16, 32)] * 2),
)
@settings(max_examples=12, deadline=None, phases=UNSHRUNK)
def test_any_chamfer(stance: Stance, arrises: list[str], leg: int, over: tuple[int, int]) -> None:
    """Any arrises, any leg, whatever the stick measures half-way along."""
    first, second = (f"{size + each} mm" for size, each in zip((150, 200), over, strict=True))
    sizes = {"middle": {"first": first, "second": second}}
    assert wrong_with(*of(stance, sizes, arrises=arrises, leg=f"{leg} mm")) == []


@pytest.mark.parametrize("arris", ARRISES)
def test_no_line_of_a_chamfer_can_be_misplaced_or_misread(arris: str) -> None:
    """Every struck line counts: a millimetre off, mirrored, or from the wrong arris or end."""
    cut, found = of(POST, MEASURED["for the chamfer"], arrises=[arris])
    raised = logs(found)
    assert list(uncaught_cuts(textbook(cut, found, raised), raised, differs)) == []
    assert list(uncaught_words(raised)) == []


@pytest.mark.parametrize("stance", STANCES[::7], ids="-".join)
def test_the_guide_blocks_lie_outside_the_stops(stance: Stance) -> None:
    """Nothing is cut at their marks, so they are held against the stops themselves."""
    cut, found = of(stance, {})
    log = logs(found)["post"]
    near, far = (stop_along(stop, found, log) for stop in (cut.near_stop, cut.far_stop))
    block = found.project.practice.guide_block.nm
    marks = [step for step in log.layout.steps if step.id.endswith("-block")]
    assert sorted(_along(log, step) for step in marks) == [near - block, far + block]


def _along(log: Log, step: Step) -> float:
    (place,) = {set_off(log, reading) for reading in step.readings}
    assert place[0] == 0
    return place[1]
