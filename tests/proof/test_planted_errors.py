"""The proof can fail: each slip that framers make is planted, and each is caught."""

from collections.abc import Callable, Mapping
from dataclasses import replace

import pytest

from benchmate.frame.frame import Real
from benchmate.measure.length import Length
from benchmate.model.feature import Reading
from tests.builders import real
from tests.proof.checks import Fault, Kind, faults
from tests.proof.demos import SHED, STORE, demo
from tests.proof.marks import Mark, Marks
from tests.proof.raising import Slip, raised

Change = Callable[[Reading], Reading]

NANOMETRE = Length(1)


def on(timber: str, slip: Callable[[Marks], Marks]) -> Slip:
    """A slip made on one timber."""
    return lambda each, struck: slip(struck) if each == timber else struck


def misread(feature: str, lines: tuple[str, ...], change: Change) -> Callable[[Marks], Marks]:
    """Some lines of one joint set off wrongly."""

    def slip(struck: Marks) -> Marks:
        wrong = {
            line: replace(mark, readings=tuple(map(change, mark.readings)))
            for line, mark in struck[feature].items()
            if line in lines
        }
        assert set(wrong) == set(lines)
        return {**struck, feature: {**struck[feature], **wrong}}

    return slip


def forgotten(feature: str, *starts: str) -> Callable[[Marks], Marks]:
    """Lines of one joint that nobody struck, by how their names start."""

    def slip(struck: Marks) -> Marks:
        left = {line: mark for line, mark in struck[feature].items() if not line.startswith(starts)}
        assert len(left) < len(struck[feature])
        return {**struck, feature: left}

    return slip


def mirrored(one: str, other: str) -> Callable[[Marks], Marks]:
    """A timber made with a reference face on the other side: every word for it is taken so."""
    swapped = {one: other, other: one}

    def turned(mark: Mark) -> Mark:
        readings = (
            replace(reading, hook=swapped.get(reading.hook, reading.hook))
            for reading in mark.readings
        )
        return replace(
            mark,
            readings=tuple(readings),
            sides=tuple(swapped.get(side, side) for side in mark.sides),
            waste=swapped.get(mark.waste, mark.waste),
        )

    return lambda struck: {
        feature: {line: turned(mark) for line, mark in lines.items()}
        for feature, lines in struck.items()
    }


def longer(by: Length) -> Change:
    """A figure read too long, or too short."""
    return lambda reading: replace(reading, value=reading.value + by)


def hooked_on(hook: str) -> Change:
    """A figure measured from something else."""
    return lambda reading: replace(reading, hook=hook)


def caught(
    name: str, rule: str, slip: Slip, sizes: Mapping[str, Real] | None = None
) -> tuple[Fault, ...]:
    """What the proof finds of a slip, once it has found nothing without it."""
    project, found = demo(name, rule), sizes or {}
    assert not faults(raised(project, found))
    return faults(raised(project, found, slip))


def kinds(found: tuple[Fault, ...], *timbers: str) -> set[Kind]:
    """What is wrong between two timbers."""
    return {fault.kind for fault in found if set(fault.timbers) == set(timbers)}


@pytest.mark.parametrize(
    ("name", "rule", "timber", "faces", "mate"),
    [
        (SHED, "mill", "post-sw", ("West face", "East face"), "sill-south"),
        (SHED, "mill", "post-se", ("East face", "West face"), "sill-south"),
        (SHED, "mill", "sill-west", ("West face", "East face"), "sill-north"),
        (STORE, "square", "post-b3", ("East face", "West face"), "sill-north"),
        (STORE, "square", "cross-sill-1", ("West face", "East face"), "sill-south"),
    ],
)
def test_the_wrong_hand_is_caught(
    name: str, rule: str, timber: str, faces: tuple[str, str], mate: str
) -> None:
    """A timber made as the mirror image of itself stands in its mates' wood, and it alone does."""
    found = caught(name, rule, on(timber, mirrored(*faces)))
    assert Kind.OVERLAP in kinds(found, timber, mate)
    assert all(timber in fault.timbers for fault in found)


@pytest.mark.parametrize(
    ("name", "rule", "timber", "mortise", "mate"),
    [
        (SHED, "mill", "sill-south", "girder-south-mortise", "girder"),
        (SHED, "mill", "post-ne", "tie-east-north-mortise", "tie-east"),
        (STORE, "square", "post-a2", "plate-a1-east-mortise", "plate-a1"),
        (STORE, "square", "tie-1", "a1-head-mortise", "post-a1"),
    ],
)
def test_a_forgotten_housing_is_caught(
    name: str, rule: str, timber: str, mortise: str, mate: str
) -> None:
    """The end that should have gone into it stands in the wood, and only there."""
    found = caught(name, rule, on(timber, forgotten(mortise, "housing-")))
    assert Kind.OVERLAP in kinds(found, timber, mate)
    assert {frozenset(fault.timbers) for fault in found} == {frozenset((timber, mate))}


@pytest.mark.parametrize(
    ("name", "rule", "timber", "tenon", "face", "mate"),
    [
        (SHED, "mill", "post-sw", "foot-tenon", "North face", "sill-south"),
        (SHED, "mill", "tie-west", "south-end-tenon", "East face", "post-sw"),
        (STORE, "square", "plate-a1", "west-end-tenon", "North face", "post-a1"),
    ],
)
def test_cheeks_laid_out_from_the_wrong_face_are_caught(
    name: str, rule: str, timber: str, tenon: str, face: str, mate: str
) -> None:
    """Set-back and thickness measured from the far face put the tenon beside its mortise."""
    slip = misread(tenon, ("near-cheek", "far-cheek"), hooked_on(face))
    assert Kind.OVERLAP in kinds(caught(name, rule, on(timber, slip)), timber, mate)


def test_a_far_cheek_measured_from_the_far_face_of_a_fat_stick_is_caught() -> None:
    """It holds on a stick to size, where no slip shows, and goes wrong with the stick."""
    fat = {"post-sw": real({"foot-tenon": {"first": "7-3/16"}})}
    slip = on("post-sw", misread("foot-tenon", ("far-cheek",), hooked_on("North face")))
    assert not caught(SHED, "mill", slip)
    assert Kind.OVERLAP in kinds(caught(SHED, "mill", slip, fat), "post-sw", "sill-south")


@pytest.mark.parametrize(
    ("name", "rule", "timber", "tenon", "housings", "mate"),
    [
        (SHED, "mill", "girder", "north-end-tenon", Length.inches(1), "sill-north"),
        (STORE, "square", "cross-sill-2", "north-end-tenon", Length.mm(30), "sill-north"),
        (STORE, "square", "plate-b1", "east-end-tenon", Length.mm(20), "post-b2"),
    ],
)
def test_a_shoulder_length_without_its_housings_is_caught(
    name: str, rule: str, timber: str, tenon: str, housings: Length, mate: str
) -> None:
    """A timber as long as the clear space between its mates bears at one end only."""

    def short(struck: Marks) -> Marks:
        for feature, line in ((tenon, "shoulder"), ("end", "overall")):
            struck = misread(feature, (line,), longer(-housings))(struck)
        return struck

    found = caught(name, rule, on(timber, short))
    assert Kind.GAP in kinds(found, timber, mate)
    assert {frozenset(fault.timbers) for fault in found} == {frozenset((timber, mate))}


@pytest.mark.parametrize(
    ("timber", "feature", "mate"),
    [
        ("post-a1", "head-tenon", "tie-1"),
        ("plate-a1", "west-end-tenon", "post-a1"),
        ("cross-sill-1", "south-end-tenon", "sill-south"),
        ("joist-11", "west-end-bearing", "cross-sill-1"),
    ],
)
def test_a_forgotten_reduction_is_caught(timber: str, feature: str, mate: str) -> None:
    """By square rule an end left at its full size does not go into its housing or pocket."""
    found = caught(STORE, "square", on(timber, forgotten(feature, "reduc")))
    assert Kind.OVERLAP in kinds(found, timber, mate)
    assert all(timber in fault.timbers for fault in found)


def test_a_pocket_back_measured_from_a_fat_stick_s_far_face_is_caught() -> None:
    """Bearing and clearance counted from there leave the joist too little room."""
    joints = ("joist-11-west-pocket", "joist-12-west-pocket", "joist-13-west-pocket")
    fat = {"cross-sill-1": real({joint: {"second": "206 mm"} for joint in joints})}

    def from_far(reading: Reading) -> Reading:
        inner = demo(STORE, "square").inner["sill"].second
        return replace(reading, hook="East face", value=inner - reading.value)

    slip = misread("joist-11-west-pocket", ("back",), from_far)
    found = caught(STORE, "square", on("cross-sill-1", slip), fat)
    assert kinds(found, "joist-11", "cross-sill-1") >= {Kind.OVERLAP, Kind.BOTTOM}
    assert {frozenset(fault.timbers) for fault in found} == {
        frozenset(("joist-11", "cross-sill-1"))
    }


def test_a_mortise_bored_from_the_face_and_not_from_the_housing_floor_is_caught() -> None:
    """It is too shallow by the housing, so the tenon bottoms out."""
    slip = misread("tie-west-south-mortise", ("depth",), hooked_on("North face"))
    found = caught(SHED, "mill", on("post-sw", slip))
    assert kinds(found, "tie-west", "post-sw") >= {Kind.OVERLAP, Kind.BOTTOM}


@pytest.mark.parametrize(
    ("timber", "feature", "line", "by", "kind"),
    [
        ("post-sw", "foot-tenon", "far-cheek", NANOMETRE, Kind.OVERLAP),
        ("post-sw", "foot-tenon", "far-cheek", -NANOMETRE, Kind.LOOSE),
        ("sill-south", "sw-foot-mortise", "depth", NANOMETRE, Kind.BOTTOM),
        ("sill-south", "girder-south-mortise", "housing-floor", -NANOMETRE, Kind.GAP),
        ("sill-south", "girder-south-mortise", "housing-floor", NANOMETRE, Kind.OVERLAP),
        ("sill-west", "joist-w1-west-pocket", "floor", NANOMETRE, Kind.GAP),
        ("sill-west", "joist-w1-west-pocket", "back", -NANOMETRE, Kind.BOTTOM),
        ("sill-west", "joist-w1-west-pocket", "finish", NANOMETRE, Kind.LOOSE),
    ],
)
def test_a_nanometre_is_caught(
    timber: str, feature: str, line: str, by: Length, kind: Kind
) -> None:
    """The finest slip that a figure can hold shows for what it is."""
    found = caught(SHED, "mill", on(timber, misread(feature, (line,), longer(by))))
    assert kind in {fault.kind for fault in found}
    assert all(timber in fault.timbers for fault in found)
