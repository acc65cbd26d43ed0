"""What a step had better wait for."""

from dataclasses import replace

import pytest

from benchmate.layout.waiting import awaited, ever_awaited
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Awaits, Stage
from tests.builders import corners
from tests.joinery.tenon.head_ties import MORTISE, head_tie


def test_a_mortise_awaits_its_tenon_as_cut() -> None:
    """Every mark and cut of the mortise, each for the tenon that goes into it."""
    layout = lay_out(corners(), "sill")
    for hand in ("sw", "se"):
        own = [step for step in layout.steps if step.feature == f"{hand}-foot-mortise"]
        waiting = {step.id for step in own if awaited(layout, step)}
        assert waiting == {step.id for step in own} - {f"{hand}-foot-mortise/section"}
        tenon = Awaits(f"post-{hand}", "foot-tenon/as-cut")
        assert {awaited(layout, step) for step in own} == {(), (tenon,)}


def test_measuring_the_stick_awaits_nothing() -> None:
    """The receiving stick can be measured before any tenon is cut."""
    layout = lay_out(corners(), "sill")
    assert awaited(layout, layout.step("se-foot-mortise/section")) == ()


@pytest.mark.parametrize("timber", ["post-sw", "post-se"])
def test_tenons_chamfers_and_the_stick_await_nothing(timber: str) -> None:
    """Tenons come first, so nothing on a timber that only has tenons has to wait."""
    layout = lay_out(corners(), timber)
    assert {awaited(layout, step) for step in layout.steps} == {()}


def test_what_a_joint_awaits_is_a_step_of_the_other_timber() -> None:
    """No joint waits for something that cannot be ticked."""
    frame = corners()
    for timber in ("sill", "plate"):
        for feature in lay_out(frame, timber).features:
            for each in feature.awaits:
                assert lay_out(frame, each.timber).step(each.step).feature != feature.id


@pytest.mark.parametrize("timber", ["post-sw", "sill"])
def test_a_back_check_waits_for_no_more_than_the_marks_it_reads(timber: str) -> None:
    """Marks that wait are read back with their own joint, so none is ticked before it is struck."""
    layout = lay_out(corners(), timber)
    for step in layout.steps:
        for mark in (reading.key for reading in step.readings if reading.key):
            assert awaited(layout, layout.step(mark)) == awaited(layout, step)


def test_what_lies_under_a_notch_is_made_after_it() -> None:
    """Nothing of it is bored before the notch is pared to its floor; its marks may come first."""
    layout = lay_out(head_tie(lap={}), "tie")
    notched = Awaits("tie", "tie-lap-lap/as-cut")
    own = [step for step in layout.steps if step.feature == MORTISE]
    late = {step.id.partition("/")[2] for step in own if notched in awaited(layout, step)}
    assert late == {"strike-anew", "bore", "pare-sides", "pare-ends", "try-depth"}
    assert notched in ever_awaited(layout)
    ids = [step.id for step in layout.steps]
    assert ids.index(notched.step) < ids.index(f"{MORTISE}/strike-anew")


def test_all_that_is_ever_awaited_is_what_the_steps_wait_for() -> None:
    """No more and no less, so nothing that holds a step up is overlooked."""
    frame = head_tie(lap={})
    for timber in ("tie", "plate", "post"):
        layout = lay_out(frame, timber)
        waited = {each for step in layout.steps for each in awaited(layout, step)}
        assert set(ever_awaited(layout)) == waited


def test_without_a_notch_the_cuts_go_by_stage() -> None:
    """Then nothing of its own timber holds a mortise up."""
    layout = lay_out(head_tie(), "tie")
    assert {each.timber for each in ever_awaited(layout)} == {"post"}
    stages = [step.stage for step in layout.steps]
    assert stages == sorted(stages)
    assert Stage.CUT in stages


def test_what_lies_under_two_notches_waits_for_both() -> None:
    """One at either mouth, or two over the same one."""
    layout = lay_out(head_tie(lap={}), "tie")
    (floor,) = layout.floors
    lap = layout.feature("tie-lap-lap")
    assert lap is not None
    second = replace(lap, id="rail-lap")
    both = replace(
        layout,
        features=(*layout.features, second),
        floors=(floor, replace(floor, over="rail-lap", face=floor.face.opposite)),
    )
    waits = awaited(both, both.step(f"{MORTISE}/bore"))
    assert {each.step for each in waits if each.timber == "tie"} == {
        "tie-lap-lap/as-cut",
        "rail-lap/as-cut",
    }
    assert set(waits) <= set(ever_awaited(both))
