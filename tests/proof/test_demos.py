"""The proof from outside: every demo timber, cut from its marks alone, stands in its frame.

A general geometry kernel builds the timbers from the steps a framer works through. What they have
to come to is reckoned a second time, from the project file.
"""

from functools import cache

import pytest

from benchmate.joinery.tenon.record import TenonJoint
from tests.proof.checks import Fault, Kind, faults, told
from tests.proof.demos import RULES, SHED, STORE, demo, kept
from tests.proof.raising import joints_of, raised
from tests.proof.sizes import settled

BEARS, ALONE, FITS = (Kind.GAP, Kind.BEARING), (Kind.OVERLAP,), (Kind.LOOSE, Kind.BOTTOM)


@cache
def drawn(name: str, rule: str) -> tuple[Fault, ...]:
    """What is wrong with a demo whose sticks are all as drawn."""
    return faults(raised(demo(name, rule), {}))


@pytest.mark.parametrize(("name", "rule"), RULES)
def test_mates_bear_on_their_shoulders(name: str, rule: str) -> None:
    """Every end meets all the wood it should at once: no gap of a nanometre, at either end."""
    assert not told(fault for fault in drawn(name, rule) if fault.kind in BEARS)


@pytest.mark.parametrize(("name", "rule"), RULES)
def test_no_two_timbers_are_in_one_place(name: str, rule: str) -> None:
    """No timber takes any of the room of another."""
    assert not told(fault for fault in drawn(name, rule) if fault.kind in ALONE)


@pytest.mark.parametrize(("name", "rule"), RULES)
def test_every_joint_is_a_fit(name: str, rule: str) -> None:
    """Sides are snug all along, and there is exactly the stated room past every end."""
    assert not told(fault for fault in drawn(name, rule) if fault.kind in FITS)


@pytest.mark.parametrize(("name", "rule"), RULES)
def test_every_joint_that_is_not_scribed_is_proved(name: str, rule: str) -> None:
    """None is left out, and every timber but a scribed one is raised."""
    project = demo(name, rule)
    scribed = {
        joint.timber
        for joint in joints_of(project)
        if isinstance(joint, TenonJoint) and joint.scribed
    }
    found = raised(project, {})
    wanted = [joint.id for joint in joints_of(project) if joint.timber not in scribed]
    assert [joint.id for joint in found.joints] == wanted
    assert set(found.pieces) == {timber.id for timber in project.timbers} - scribed


@pytest.mark.parametrize(("name", "rule"), [(SHED, "mill"), (STORE, "square")])
def test_a_demo_fits_as_its_sticks_came_out(name: str, rule: str) -> None:
    """The measured sections and the ends as cut that ship with it are counted."""
    sizes = settled(name, rule, kept(name))
    assert any(each.measured for each in sizes.values())
    assert any(each.as_cut for each in sizes.values())
    assert not told(faults(raised(demo(name, rule), sizes)))
