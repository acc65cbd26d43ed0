"""A brace's pegs as work on both timbers: apart from tenon and mortise, in the right order."""

from datetime import UTC, datetime

import pytest

from benchmate.joinery.brace.family import features
from benchmate.joinery.brace.record import BraceJoint
from benchmate.layout.standing import State, memory_of, standing
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Awaits, Feature
from benchmate.model.progress import Tick
from tests.joinery.brace.bays import PEG, bay

OWN, OTHERS = "foot-tenon-pegs", "brace-foot-mortise-pegs"
PEGGED = {"pegs": PEG}


def _sides(**joint: object) -> dict[str, Feature]:
    frame = bay(joint=joint)
    work = next(work for work in frame.project.works if isinstance(work, BraceJoint))
    return {each.id: each for each in features(work, frame)}


def test_the_joint_has_four_features() -> None:
    """Without pegs only two: many braces have none (trade notes 2.3, Hart-brace)."""
    assert list(_sides()) == ["foot-tenon", "brace-foot-mortise"]
    made = _sides(**PEGGED)
    assert list(made) == ["foot-tenon", "brace-foot-mortise", OWN, OTHERS]
    assert (made[OWN].timber, made[OWN].title) == ("brace", "Foot tenon pegs")
    assert (made[OTHERS].timber, made[OTHERS].title) == ("post", "Pegs for Brace")
    assert (len(made[OWN].cuts), len(made[OTHERS].cuts)) == (1, 1)


def test_who_waits_for_whom() -> None:
    """The post is bored once the tenon was measured, the brace once the post was bored."""
    made = _sides(**PEGGED)
    assert made[OTHERS].awaits == (Awaits("brace", "foot-tenon/as-cut"),)
    assert made[OWN].awaits == (Awaits("post", f"{OTHERS}/bore-pegs"),)


def test_the_order_of_work() -> None:
    """Cut, fitted and pricked, shifted, bored (trade notes 3, FHB-peg)."""
    frame = bay(joint=PEGGED)
    steps = [step.id for step in lay_out(frame, "brace").steps]
    names = ("prick-pegs", "peg-line", "peg-1", "bore-pegs")
    order = [steps.index(f"{OWN}/{each}") for each in names]
    assert order == sorted(order)
    assert steps.index("foot-tenon/as-cut") < order[0]
    post = [step.id for step in lay_out(frame, "post").steps]
    assert post.index(f"{OTHERS}/bore-pegs") > post.index("brace-foot-mortise/try-depth")


def test_the_marks_are_pricked_square_to_the_shoulder() -> None:
    """Along the brace they lie further on than that."""
    step = lay_out(bay(joint=PEGGED), "brace").step(f"{OWN}/prick-pegs")
    assert step.readings[0].way.startswith("square to it, towards the foot")


@pytest.mark.parametrize(
    ("timber", "step", "changed"),
    [
        ("post", f"{OTHERS}/peg-1", {"from_edge": "2-1/4"}),
        ("post", f"{OTHERS}/bore-pegs", {"from_shoulder": "1-3/4"}),
        ("brace", f"{OWN}/peg-line", {"draw": "3/32"}),
        ("brace", f"{OWN}/peg-1", {"draw": "3/32"}),
        ("brace", f"{OWN}/bore-pegs", {"draw": "3/32"}),
    ],
)
def test_a_tick_remembers_what_it_ticked(
    timber: str, step: str, changed: dict[str, object]
) -> None:
    """Law 6, on slanting lines too: a changed peg asks for a fresh look at mark and hole."""
    before = bay(joint=PEGGED)
    memory = memory_of(lay_out(before, timber).step(step))
    tick = Tick(
        step=step,
        marked=memory.marked,
        on=memory.on,
        waste=memory.waste,
        at=datetime(2026, 5, 1, tzinfo=UTC),
    )
    for more, state in (({}, State.TICKED), (changed, State.LOOK_AGAIN)):
        after = bay(joint={"pegs": {**PEG, **more}})
        now = standing(lay_out(after, timber).step(step), tick, after.project.tape)
        assert now.state is state
