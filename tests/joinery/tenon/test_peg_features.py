"""Pegs as work on both timbers: apart from tenon and mortise, and in the right order."""

from datetime import UTC, datetime

import pytest

from benchmate.checks.joints import near_joints
from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.peg_features import pegs_id
from benchmate.layout.likeness import alike, hand, shape
from benchmate.layout.standing import State, memory_of, standing
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Awaits, Feature, Stage
from benchmate.model.progress import Tick
from tests.builders import frame, length, lengths, read, real, tenon, timber
from tests.joinery.tenon.girts import MORTISE, PEGS, Words, girt_tenon, girt_through

BLIND_PEGS: Words = {**PEGS, "blind_depth": "6"}
OWN, OTHERS = "west-end-tenon-pegs", f"{MORTISE}-pegs"


def _sides(pegs: Words | None = PEGS) -> dict[str, Feature]:
    made = features(girt_tenon(pegs=pegs), girt_through(pegs=pegs))
    return {each.id: each for each in made}


def test_the_joint_has_four_features() -> None:
    """Tenon, mortise and the pegs of each, told apart by id; without pegs only the first two."""
    assert list(_sides()) == ["west-end-tenon", MORTISE, OWN, OTHERS]
    assert list(_sides(pegs=None)) == ["west-end-tenon", MORTISE]
    assert (pegs_id("west-end-tenon"), pegs_id(MORTISE)) == (OWN, OTHERS)


def test_where_they_belong() -> None:
    """On which timber, what they are called, and where its section is measured for them."""
    made = _sides()
    own, others = made[OWN], made[OTHERS]
    assert (own.timber, own.title) == ("girt", "West end tenon pegs")
    assert (others.timber, others.title) == ("post", "Pegs for Girt")
    assert (own.at, own.place) == (made["west-end-tenon"].at, made["west-end-tenon"].place)
    assert (others.at, others.place) == (made[MORTISE].at, made[MORTISE].place)
    assert own.mated
    assert others.mated


def test_the_holes_are_cut_out_of_both() -> None:
    """Law 4: one cut to each hole, across the cheeks, so that drawings and checks see them."""
    made = _sides()
    assert (len(made[OWN].cuts), len(made[OTHERS].cuts)) == (2, 2)
    x, u = length("3' 10").nm, length("5-1/2").nm
    for over in lengths("0", "3", "8"):
        assert made[OTHERS].cuts[0].takes(x, over.nm, u)
    shoulder, v = length("9' 4-1/2"), length("3").nm
    drawn = (shoulder + length("1-7/8")).nm
    assert made[OWN].cuts[0].takes(drawn, length("2").nm, v)
    assert not made[OWN].cuts[0].takes(drawn + length("5/8").nm, length("2").nm, v)


def test_who_waits_for_whom() -> None:
    """The post is bored once the tenon was measured, and the tenon once the post was bored.

    Tenon and mortise wait as they do without pegs, so nobody waits for himself by way of the other.
    """
    made = _sides()
    assert made[OTHERS].awaits == made[MORTISE].awaits == (Awaits("girt", "west-end-tenon/as-cut"),)
    assert made[OWN].awaits == (Awaits("post", f"{OTHERS}/bore-pegs"),)
    assert made["west-end-tenon"].awaits == _sides(pegs=None)["west-end-tenon"].awaits


def test_the_order_of_work_on_the_post() -> None:
    """Marked with the rest, bored only after the mortise is made (trade.md 3 Order, FHB-peg)."""
    steps = [step.id for step in lay_out(girt_through(), "post").steps]
    marked = [steps.index(f"{OTHERS}/{line}") for line in ("peg-line", "peg-1", "peg-2")]
    bored = steps.index(f"{OTHERS}/bore-pegs")
    assert marked == sorted(marked)
    assert max(marked) < steps.index(f"{MORTISE}/bore")
    made = [place for place, step in enumerate(steps) if step.startswith(f"{MORTISE}/")]
    assert bored > max(made)


def test_the_order_of_work_on_the_girt() -> None:
    """Cut, measured as cut, fitted and pricked, shifted, bored (trade.md 3 Order, FHB-peg)."""
    steps = [step.id for step in lay_out(girt_through({"end_allowance": "1/2"}), "girt").steps]
    order = [steps.index(f"{OWN}/{each}") for each in ("prick-pegs", "peg-line", "bore-pegs")]
    assert order == sorted(order)
    assert steps.index("west-end-tenon/as-cut") < order[0]
    assert steps.index("end/saw") < order[0]
    assert order[-1] < steps.index("stick/label")


def test_every_step_of_theirs_waits_and_the_stick_s_saw_does_not() -> None:
    """The far end is sawn off long before the joint is fitted."""
    layout = lay_out(girt_through(real={"post": real({MORTISE: {"second": "8"}})}), "girt")
    for step in layout.steps:
        if step.feature == OWN:
            assert awaited(layout, step) == (Awaits("post", f"{OTHERS}/bore-pegs"),)
    assert awaited(layout, layout.step("end/saw")) == ()
    assert not [step for step in layout.steps if step.feature == OWN and step.stage is Stage.MARK]


@pytest.mark.parametrize(
    ("timber", "step", "changed"),
    [
        ("post", f"{OTHERS}/peg-line", {"from_shoulder": "2-1/4"}),
        ("post", f"{OTHERS}/peg-2", {"spacing": "2-3/4"}),
        ("post", f"{OTHERS}/bore-pegs", {"size": "7/8"}),
        ("post", f"{OTHERS}/bore-pegs", {"from_edge": "1-3/4"}),
        ("post", f"{OTHERS}/peg-line", {"bored_from": "far"}),
        ("girt", f"{OWN}/peg-line", {"draw": "3/32"}),
        ("girt", f"{OWN}/bore-pegs", {"draw": "3/32"}),
        ("girt", f"{OWN}/prick-pegs", {"from_shoulder": "2-1/4"}),
    ],
)
def test_a_tick_remembers_what_it_ticked(timber: str, step: str, changed: Words) -> None:
    """Law 6: a change of the pegs asks for a fresh look at what was marked or bored to them."""
    before, after = girt_through(), girt_through(pegs={**PEGS, **changed})
    assert _again(before, before, timber, step) is State.TICKED
    assert _again(before, after, timber, step) is State.LOOK_AGAIN


def test_a_hole_keeps_its_tick_while_the_mortise_is_cut_to_another_tenon() -> None:
    """As-cut sizes move the mortise's lines and not the holes."""
    made = {"girt": real(as_cut={"west-end-tenon": {"thickness": "1-7/8", "width": "6-3/4"}})}
    before, after = girt_through(), girt_through(real=made)
    for step in ("peg-line", "peg-1", "bore-pegs"):
        assert _again(before, after, "post", f"{OTHERS}/{step}") is State.TICKED
    assert _again(before, after, "post", f"{MORTISE}/bore") is State.LOOK_AGAIN


def test_a_changed_peg_leaves_the_mortise_s_ticks_alone() -> None:
    """Its walls were not cut to the peg line."""
    before, after = girt_through(), girt_through(pegs={**PEGS, "from_shoulder": "2-1/4"})
    for step in lay_out(before, "post").steps:
        if step.feature == MORTISE:
            assert _again(before, after, "post", step.id) is State.TICKED


def _again(before: Frame, after: Frame, timber: str, step: str) -> State:
    """How a step stands in one frame that was ticked in the other."""
    memory = memory_of(lay_out(before, timber).step(step))
    tick = Tick(
        step=step,
        marked=memory.marked,
        on=memory.on,
        waste=memory.waste,
        at=datetime(2026, 5, 1, tzinfo=UTC),
    )
    return standing(lay_out(after, timber).step(step), tick, after.project.tape).state


def test_a_stub_that_stands_alone_is_pegged_too() -> None:
    """Without a timber to bore there is only the tenon's side, pricked from whatever it enters."""
    joint = tenon(pegs={**PEGS, "spacing": "2"})
    _, pegs = features(joint, frame(timber("post"), joint))
    assert (pegs.id, pegs.awaits, pegs.mated) == ("foot-tenon-pegs", (), False)
    assert "each hole of its mate" in pegs.tasks[0].why
    far = tenon(pegs={**PEGS, "spacing": "2", "bored_from": "far"})
    faces = [
        features(each, frame(timber("post"), each))[1].tasks[0].faces[0].value
        for each in (joint, far)
    ]
    assert faces == ["first", "far first"]


def test_like_members_have_like_holes() -> None:
    """A pegged post is no mate of one that is not, and blind holes give a pair its hands."""
    posts = [
        timber(
            f"post-{side}",
            section="8 x 8",
            first_face="south",
            second_face=side,
            at={"east": "0" if side == "west" else "10'", "north": "0"},
            reference_end_at="0",
            far_end_at="8'",
            length=None,
        )
        for side in ("west", "east")
    ]
    girt = timber(
        "girt",
        length=None,
        kind="girt",
        section="7 x 6",
        first_face="up",
        second_face="south",
        reference_end="west",
        at={"north": "1", "up": "4'"},
    )

    def built(west: Words | None, east: Words | None) -> Frame:
        joints = (
            girt_tenon({"id": f"girt-{side}", "end": side, "into": f"post-{side}"}, pegs=pegs)
            for side, pegs in (("west", west), ("east", east))
        )
        return frame(*posts, girt, *joints)

    through, blind = built(PEGS, PEGS), built(BLIND_PEGS, BLIND_PEGS)
    for pair in (through, blind):
        assert ("post-west", "post-east") in {each.timbers for each in alike(pair)}
        assert hand(pair, "girt") == "no hand", "its own mirror image end for end"
    assert {hand(through, post.id) for post in posts} == {"no hand"}, "in the middle of the post"
    assert {hand(blind, post.id) for post in posts} == {"left hand", "right hand"}
    odd = built(PEGS, None)
    assert shape(odd, "post-west") != shape(odd, "post-east")
    assert ("post-west",) in {each.timbers for each in alike(odd)}


def test_a_hole_is_seen_where_joint_meets_joint() -> None:
    """Its own mortise it is meant to meet; another joint's it is not."""
    pegged = girt_through()
    assert near_joints(lay_out(pegged, "post")) == near_joints(lay_out(pegged, "girt")) == ()
    tie = timber(
        "tie",
        length=None,
        kind="tie",
        first_face="up",
        second_face="west",
        reference_end="north",
        at={"east": "1", "up": "4'"},
        far_end_at="-6'",
    )
    stub = tenon(id="tie-north", timber="tie", end="north", into="post", length="2")
    for pegs, found in ((PEGS, [(OTHERS, "tie-north-mortise")]), (None, [])):
        alone = girt_through(pegs=pegs)
        crossed = frame(*alone.project.timbers, tie, *alone.project.works, stub)
        near = near_joints(lay_out(crossed, "post"))
        assert [(each.one.id, each.other.id) for each in near] == found


def test_the_tenon_s_step_reads_what_its_mate_was_bored_to() -> None:
    """The prick is checked against the distance in the mortise, not against the drawn one."""
    layout = lay_out(girt_through(), "girt")
    assert read(layout.step(f"{OWN}/prick-pegs")) == lengths("2")
    assert read(layout.step(f"{OWN}/peg-line")) == lengths("1-7/8")
