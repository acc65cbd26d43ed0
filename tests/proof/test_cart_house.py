"""The cart house: a whole frame with every family of joint in it, raised and read back.

Every line is held against its step, every timber against every other. It is raised as drawn, with
sticks of any size by mill rule, and by square rule.
"""

from functools import cache
from graphlib import TopologicalSorter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.checks.joints import near_joints
from benchmate.frame.frame import Frame, Real
from benchmate.joinery import FAMILIES, family_of
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.measure.length import NM_PER_SIXTYFOURTH, Length
from benchmate.measure.section import Section
from benchmate.model.findings import Severity
from benchmate.model.progress import Measured
from benchmate.model.project import Project
from benchmate.model.stick import ALL_ALONG
from benchmate.store.reading import read_project
from tests.proof.fits import overlaps
from tests.proof.sizes import UNSHRUNK
from tests.proof.told import untrue
from tests.proof.wood import logs
from tests.store.samples import PROJECTS

MOST_OVER = 16
"""How far a stick may be over what it was drawn, in sixty-fourths of an inch: a quarter."""


@cache
def cart_house() -> Project:
    """The demo's frame."""
    return read_project(PROJECTS / "meadow-cart-house")


@cache
def square_ruled() -> Project:
    """The same frame by square rule, its inner timbers as large as it is drawn."""
    drawn = cart_house()
    sections = {name: Section(size.first, size.second) for name, size in drawn.sections.items()}
    return drawn.model_copy(update={"rule": "square", "inner": sections})


def wrong_with(frame: Frame) -> list[str]:
    """What is told wrongly in a frame, and which timbers are in the same place."""
    found = logs(frame)
    stopped = {timber for timber, log in found.items() if _stopped(log.layout.features)}
    whole = [log for timber, log in found.items() if timber not in stopped]
    return [*(words for log in found.values() for words in untrue(log)), *overlaps(whole)]


def _stopped(features: tuple[object, ...]) -> bool:
    return any(
        finding.severity is Severity.STOP
        for feature in features
        for finding in getattr(feature, "findings", ())
    )


def test_every_family_is_in_it() -> None:
    """The catalogue and the demo name the same families."""
    used = {family_of(work).name for work in cart_house().works}
    whole = {family.name for family in FAMILIES}
    assert used | {"end cut"} == whole


def test_it_has_nothing_to_look_at() -> None:
    """As drawn no joint of it is stopped, looked at, or too near another."""
    frame = Frame(cart_house(), {})
    for timber in cart_house().timbers:
        layout = lay_out(frame, timber.id)
        assert [f.findings for f in layout.features if f.findings] == [], timber.id
        assert near_joints(layout) == (), timber.id


def test_no_two_timbers_wait_for_one_another() -> None:
    """What every step waits for is there, and comes before it without a circle."""
    frame = Frame(cart_house(), {})
    layouts = [lay_out(frame, timber.id) for timber in cart_house().timbers]
    waits = {
        (layout.stick.id, step.id): {tuple(each) for each in awaited(layout, step)}
        for layout in layouts
        for step in layout.steps
    }
    assert {each for found in waits.values() for each in found} <= set(waits)
    assert len(tuple(TopologicalSorter(waits).static_order())) == len(waits)


@pytest.mark.parametrize("project", [cart_house, square_ruled])
def test_it_stands_as_drawn(project: "object") -> None:
    """Told true, and no two timbers in one place, by either rule."""
    assert wrong_with(Frame(project(), {})) == []  # type: ignore[operator]


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(data=st.data())
@settings(max_examples=4, deadline=None, phases=UNSHRUNK)
def test_it_stands_whatever_the_sticks_are_over(rule: str, data: st.DataObject) -> None:
    """Any sticks a quarter inch over or less: a joint that cannot be is stopped, the rest fits."""
    project = square_ruled() if rule == "square" else cart_house()
    frame = Frame(
        project, {timber.id: data.draw(_over(project, timber.id)) for timber in project.timbers}
    )
    assert wrong_with(frame) == []


def _over(project: Project, timber: str) -> st.SearchStrategy[Real]:
    drawn = Frame(project, {}).wood(timber).nominal
    more = st.integers(0, MOST_OVER).map(lambda count: Length(count * NM_PER_SIXTYFOURTH))
    return st.tuples(more, more).map(
        lambda over: Real(
            {ALL_ALONG: Measured(first=drawn.first + over[0], second=drawn.second + over[1])}
        )
    )
