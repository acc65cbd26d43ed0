"""Every step of both demos told true, every joint cut as its textbook has it; and lies noticed."""

from collections.abc import Callable, Mapping
from dataclasses import replace

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.brace.record import BraceJoint
from benchmate.joinery.chamfer.record import Chamfer
from benchmate.joinery.joist.record import JoistPocket
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Feature
from benchmate.model.solids import Cut
from benchmate.model.work import Work
from tests.builders import chamfer as chamfered
from tests.builders import frame, real, timber
from tests.joinery.tenon.girts import BLIND, MORTISE, girt_through
from tests.proof.demos import RULES, SHED, STORE, demo, kept
from tests.proof.fits import Textbook, differs
from tests.proof.rounds import rounds_off
from tests.proof.textbook import brace, chamfer, pocket, tenon
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

TEXTBOOKS: Mapping[type[Work], Textbook] = {
    TenonJoint: tenon.textbook,
    JoistPocket: pocket.textbook,
    BraceJoint: brace.textbook,
    Chamfer: chamfer.textbook,
}
"""What each family is held against; a demo may use none that has no textbook."""

OWN = {(SHED, "mill"), (STORE, "square")}
"""The demos by the rule they ship with, which their sticks were measured for."""


def _scribed(work: Work) -> bool:
    """Whether a joint is marked by hand from its mate, so that there is no cut to prove."""
    return isinstance(work, TenonJoint) and work.scribed


@pytest.mark.parametrize(("name", "rule"), RULES)
def test_a_demo_is_told_true_and_cut_as_the_textbooks_have_it(name: str, rule: str) -> None:
    """Each joint with the section measured at its own place, each mortise to its tenon as cut."""
    demo_frame = Frame(demo(name, rule), kept(name) if (name, rule) in OWN else {})
    found = logs(demo_frame)
    assert [words for log in found.values() for words in untrue(log)] == []
    works = [work for work in demo_frame.project.works if not _scribed(work)]
    for work in works:
        assert list(differs(TEXTBOOKS[type(work)](work, demo_frame, found), found)) == []
        if isinstance(work, TenonJoint):
            assert list(rounds_off(tenon.bores(work, found), found)) == []
    assert len(works) > 30


@pytest.mark.parametrize(("name", "rule"), [each for each in RULES if each not in OWN])
def test_a_demo_by_the_other_rule_is_told_true_on_odd_sticks(name: str, rule: str) -> None:
    """With the sizes its sticks came out at, some of them beyond what that rule bears."""
    found = logs(Frame(demo(name, rule), kept(name)))
    assert [words for log in found.values() for words in untrue(log)] == []


def _post(measured: str = "8") -> Log:
    """The post of a girt that is bored right through, so deep where the girt goes in."""
    sizes = {"all": {"second": "9"}, MORTISE: {"second": measured}}
    return logs(girt_through(BLIND, real={"post": real(sizes)}))["post"]


def test_a_depth_counts_in_the_section_measured_there() -> None:
    """A mortise is as deep from a far face as is said, on a stick that is thicker elsewhere."""
    log = _post()
    assert list(untrue(log)) == []
    elsewhere = [replace(each, place=()) for each in log.layout.features if each.id == MORTISE]
    wrong = replace(log, layout=replace(log.layout, features=tuple(elsewhere)))
    assert f"post: {MORTISE}/housing-floor" in " ".join(untrue(wrong))


def _said(log: Log, step: str, change: Callable[[Step], Step]) -> list[str]:
    """What is untrue of a timber of which one step says something else."""
    steps = tuple(change(each) if each.id == step else each for each in log.layout.steps)
    return list(untrue(replace(log, layout=replace(log.layout, steps=steps))))


def _wider(step: Step) -> Step:
    (bit,) = step.readings
    return replace(step, readings=(replace(bit, value=bit.value + Length.inches(0, 1, 32)),))


def _cut(log: Log, feature: str, change: Callable[[tuple[Cut, ...]], tuple[Cut, ...]]) -> list[str]:
    """What is untrue of a timber of which one feature has other cuts."""
    features = tuple(_changed(each, feature, change) for each in log.layout.features)
    return list(untrue(replace(log, layout=replace(log.layout, features=features))))


def _changed(
    each: Feature, feature: str, change: Callable[[tuple[Cut, ...]], tuple[Cut, ...]]
) -> Feature:
    return replace(each, cuts=change(each.cuts)) if each.id == feature else each


def test_a_hole_that_is_not_as_told_is_noticed() -> None:
    """Another bit, another face, or one side of its prism further out."""
    log, pegs = _post(), f"{MORTISE}-pegs"
    assert "no round hole" in " ".join(_said(log, f"{pegs}/bore-pegs", _wider))
    turned = _said(log, f"{pegs}/peg-line", lambda step: replace(step, faces=(Face.SECOND,)))
    assert "a face it is not bored from" in " ".join(turned)

    def dented(cuts: tuple[Cut, ...]) -> tuple[Cut, ...]:
        first, *others = cuts[0].planes
        out = replace(first, offset=first.offset + 2 * 10**6)
        return (Cut((out, *others)), *cuts[1:])

    assert "no round hole" in " ".join(_cut(log, pegs, dented))
    assert _cut(log, pegs, lambda cuts: cuts) == []


def test_an_arris_that_is_cut_and_not_told_is_noticed() -> None:
    """Two arrises cut where one is gauged, or one where two are."""
    post = timber("post", at={"east": "0", "north": "0"}, reference_end_at="0")
    log = logs(frame(post, chamfered(id="joint", arrises=["far-far", "first-second"])))["post"]
    assert list(untrue(log)) == []
    assert "bounds 1 cuts" in " ".join(_cut(log, "joint", lambda cuts: cuts[:1]))


def test_a_plane_inside_the_wood_without_a_line_is_noticed() -> None:
    """A cut may be bounded by nothing that the framer is not told to strike."""
    log = _post()

    def unnamed(cuts: tuple[Cut, ...]) -> tuple[Cut, ...]:
        return tuple(Cut(tuple(replace(each, line=None) for each in cut.planes)) for cut in cuts)

    assert "is never struck" in " ".join(_cut(log, MORTISE, unnamed))
