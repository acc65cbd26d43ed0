"""The hole as work on the timber whose tenon it is cut in."""

from collections.abc import Mapping

import pytest

from benchmate.checks.design import findings_of
from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.hole_features import hole_features, hole_findings, holes, scribed_holes
from benchmate.layout.step import Step
from benchmate.layout.walk import features_on, lay_out
from benchmate.model.feature import Asks, Awaits, Feature, Stage
from benchmate.model.findings import Severity
from tests.builders import codes, real
from tests.joinery.tenon.plans import PLANS, Plan
from tests.joinery.tenon.sill_corners import (
    HOLE,
    Words,
    crossing,
    joint_of,
    sill_corner,
)

PEGS: Words = {"count": 1, "size": "1", "from_shoulder": "3", "from_edge": "3"}


SEVERED: Mapping[str, Words] = {
    "sill": {"relief_far": "1-1/2"},
    "stub": {"relief_reference": "2"},
}
"""A stub as wide as the tenon it goes through."""


def on(frame: Frame, timber: str) -> dict[str, Feature]:
    """What a timber has, by id."""
    return {feature.id: feature for feature in features_on(frame, timber)}


@pytest.mark.parametrize("plan", PLANS)
def test_one_joint_touches_three_timbers(plan: Plan) -> None:
    """The post's tenon, its mortise in the long sill, and the hole in the end sill's tenon."""
    frame = sill_corner(plan)
    found = features(joint_of(frame, "post-foot"), frame)
    assert [(each.timber, each.id) for each in found] == [
        ("post", "foot-tenon"),
        ("long", "post-foot-mortise"),
        ("end", HOLE),
    ]
    own = on(frame, "end")[HOLE]
    assert (own.joint, own.meets, own.mated) == ("post-foot", ("end-sill",), True)


def test_it_waits_until_both_mortises_are_made() -> None:
    """It is tried in the corner put together, and follows the post's tenon as cut."""
    frame = sill_corner()
    assert on(frame, "end")[HOLE].awaits == (
        Awaits("long", "end-sill-mortise/try-through"),
        Awaits("long", "post-foot-mortise/try-depth"),
    )
    known = {step.id for step in lay_out(frame, "long").steps}
    assert {each.step for each in on(frame, "end")[HOLE].awaits} <= known


def test_it_is_measured_where_its_tenon_is() -> None:
    """It has no section of its own to type."""
    found = on(sill_corner(), "end")
    assert found[HOLE].place == found["south-end-tenon"].place
    assert found[HOLE].at == found["south-end-tenon"].at
    assert all(task.asks is Asks.NOTHING for task in found[HOLE].tasks)


def test_its_title_says_whose_tenon_it_lets_through() -> None:
    """A hole where there is wood all round, else a notch."""
    assert on(sill_corner(), "end")[HOLE].title == "Hole for Post in the south end tenon"
    notch = sill_corner(stub={"relief_reference": "0"})
    assert on(notch, "end")[HOLE].title == "Notch for Post in the south end tenon"


def _said(frame: Frame, timber: str) -> list[Step]:
    return [step for step in lay_out(frame, timber).steps if step.feature != HOLE]


def test_the_other_two_are_as_they_were() -> None:
    """The post's steps are the same, and its mortise is as deep; boring alone says more."""
    meant, not_meant = sill_corner(), sill_corner(stub={"meets": ()})
    assert _said(meant, "post") == _said(not_meant, "post")
    assert _said(meant, "end") == _said(not_meant, "end")
    pairs = zip(_said(meant, "long"), _said(not_meant, "long"), strict=True)
    changed = {one.id for one, other in pairs if one != other}
    assert changed == {
        "end-sill-mortise/bore",
        "end-sill-mortise/bore-far",
        "post-foot-mortise/bore",
    }
    bore = lay_out(meant, "long").step("post-foot-mortise/bore")
    assert bore.caution.startswith("It breaks out into the mortise for End on the way: ease")


@pytest.mark.parametrize("pegs", [{}, {"sill": {"pegs": PEGS}}, {"stub": {"pegs": PEGS}}])
def test_the_pair_is_not_told_to_meet(pegs: Mapping[str, Words]) -> None:
    """Neither mortises, hole and tenon, nor the peg holes of either: they are meant to."""
    for timber in ("long", "end", "post"):
        frame = sill_corner(**pegs)  # type: ignore[arg-type]
        told = codes(findings_of(lay_out(frame, timber), frame.project.tape))
        assert not {"cuts-meet", "little-wood-between"} & set(told)
    not_meant = sill_corner(stub={"meets": ()})
    told = codes(findings_of(lay_out(not_meant, "long"), not_meant.project.tape))
    assert "cuts-meet" in told


def test_nothing_is_cut_where_nothing_crosses() -> None:
    """No stub that comes to it, no places, both ways, or a scribed one: no hole with figures."""
    assert HOLE not in on(sill_corner(stub={"meets": ()}), "end")
    assert HOLE not in on(sill_corner(stub={"length": "2"}), "end")
    assert HOLE not in on(sill_corner(sill={"meets": ("post-foot",)}), "end")
    frame = sill_corner()
    assert [each.feature for each in holes((crossing(frame),), frame)] == [HOLE]


def test_whichever_says_so_goes_through() -> None:
    """The end sill's tenon, 2" wide, through the post's: then the hole is in the post's."""
    narrow = {"meets": ("post-foot",), "relief_reference": "3-1/2", "relief_far": "2-1/2"}
    frame = sill_corner(sill=narrow, stub={"meets": ()})
    assert on(frame, "post")["end-sill-hole"].title == "Hole for End in the foot tenon"
    assert HOLE not in on(frame, "end")


@pytest.mark.parametrize(
    ("words", "wrong"),
    [
        ({"stub": {"set_back": "5-1/2"}}, "tenon-cheek-outside"),
        ({"sill": {"thickness": "6-1/2"}}, "tenon-cheek-outside"),
        (SEVERED, "crossing-takes-all"),
    ],
)
def test_what_stops_either_tenon_stops_the_hole(words: Mapping[str, Words], wrong: str) -> None:
    """Its figures would be those of a tenon that cannot be."""
    found = on(sill_corner(**words), "end")[HOLE]  # type: ignore[arg-type]
    assert wrong in codes(found.findings)
    assert all(each.severity is Severity.STOP for each in found.findings)
    assert {(each.timber, each.feature) for each in found.findings} == {("end", HOLE)}


def test_what_stops_the_hole_stops_the_tenon_that_goes_through() -> None:
    """On the post and in the long sill too; the sill's own tenon is cut all the same."""
    frame = sill_corner(**SEVERED)  # type: ignore[arg-type]
    for timber, feature in (("post", "foot-tenon"), ("long", "post-foot-mortise")):
        assert "crossing-takes-all" in codes(on(frame, timber)[feature].findings)
    assert codes(on(frame, "end")["south-end-tenon"].findings) == ()


@pytest.mark.parametrize("words", [{"stub": {"scribed": True}}, {"sill": {"scribed": True}}])
def test_a_scribed_one_is_marked_from_the_corner(words: Mapping[str, Words]) -> None:
    """No figures, no lines: driven home, marked through the mortise, cut."""
    frame = sill_corner(**words)  # type: ignore[arg-type]
    own = on(frame, "end")[HOLE]
    assert (own.scribed, own.cuts, own.lines, own.findings) == (True, (), (), ())
    assert [(task.id, task.stage) for task in own.tasks] == [
        ("scribe", Stage.FIT),
        ("cut", Stage.FINISH),
    ]
    assert all((task.readings, task.beside) == ((), ()) for task in own.tasks)
    assert "through Post's mortise" in own.tasks[0].title
    assert [each.id for each in scribed_holes((crossing(frame),))] == [HOLE]


def test_a_scribed_one_that_goes_both_ways_is_in_neither() -> None:
    """Nobody could say which to cut; and one with figures is no scribed one."""
    both = sill_corner(stub={"scribed": True}, sill={"meets": ("post-foot",)})
    assert HOLE not in on(both, "end")
    assert not list(scribed_holes((crossing(sill_corner()),)))


def test_findings_are_of_crossings_and_of_holes() -> None:
    """Either is told; a sound corner has none."""
    sound: Mapping[str, Words] = {}
    for words, told in ((sound, ()), (SEVERED, ("crossing-takes-all",))):
        frame = sill_corner(**words)  # type: ignore[arg-type]
        found = holes((crossing(frame),), frame)
        assert codes(hole_findings((crossing(frame),), found, frame)) == told
        assert len(list(hole_features(found, (), frame.project.tape))) == 1
    assert codes(on(sill_corner(stub={"length": "2"}), "post")["foot-tenon"].findings) == (
        "crossing-misses",
    )


def test_a_tenon_cut_short_leaves_the_hole_out() -> None:
    """As cut it no longer comes to the other, and that is told on the post."""
    frame = sill_corner(real={"post": real(as_cut={"foot-tenon": {"length": "2"}})})
    assert HOLE not in on(frame, "end")
    assert codes(on(frame, "post")["foot-tenon"].findings) == ("crossing-misses",)
