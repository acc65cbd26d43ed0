"""The proof can fail: each slip that framers make is planted, and each is caught.

Each time the frame is sound without the slip, and with it no joint is blamed that it cannot touch.
"""

from collections.abc import Mapping
from functools import cache

import pytest

from benchmate.frame.frame import Real
from benchmate.measure.length import Length
from tests.builders import real
from tests.proof.checks import Kind, faults, told
from tests.proof.demos import SHED, STORE, demo
from tests.proof.raising import Raising, Slip, raised, with_slip
from tests.proof.slips import forgotten, hooked_on, in_turn, longer, mirrored, misread, swapped

MILL, SQUARE = (SHED, "mill"), (STORE, "square")
NANOMETRE = Length(1)

Pair = frozenset[str]


@cache
def sound(name: str, rule: str) -> Raising:
    """A demo's frame as drawn."""
    return _checked(raised(demo(name, rule), {}))


def measured(frame: tuple[str, str], sizes: Mapping[str, Real]) -> Raising:
    """A demo's frame with some sticks measured."""
    return _checked(raised(demo(*frame), sizes))


def _checked(raising: Raising) -> Raising:
    assert not told(faults(raising))
    return raising


def caught(raising: Raising, timber: str, slip: Slip) -> dict[Pair, set[Kind]]:
    """What the proof finds of a slip on a timber of a sound frame, by the two timbers concerned."""
    found: dict[Pair, set[Kind]] = {}
    for fault in faults(with_slip(raising, timber, slip)):
        assert timber in fault.timbers
        found.setdefault(frozenset(fault.timbers), set()).add(fault.kind)
    return found


@pytest.mark.parametrize(
    ("frame", "timber", "faces", "mate"),
    [
        (MILL, "post-sw", ("West face", "East face"), "sill-south"),
        (MILL, "post-se", ("East face", "West face"), "sill-south"),
        (MILL, "sill-west", ("West face", "East face"), "sill-north"),
        (SQUARE, "post-b3", ("East face", "West face"), "sill-north"),
        (SQUARE, "cross-sill-1", ("West face", "East face"), "sill-south"),
    ],
)
def test_the_wrong_hand_is_caught(
    frame: tuple[str, str], timber: str, faces: tuple[str, str], mate: str
) -> None:
    """A timber made with its second face on the other side stands in its mates' wood."""
    found = caught(sound(*frame), timber, mirrored(*faces))
    assert Kind.OVERLAP in found[frozenset((timber, mate))]


@pytest.mark.parametrize(
    ("frame", "timber", "mortise", "mate"),
    [
        (MILL, "sill-south", "girder-south-mortise", "girder"),
        (MILL, "post-ne", "tie-east-north-mortise", "tie-east"),
        (SQUARE, "post-a2", "plate-a1-east-mortise", "plate-a1"),
        (SQUARE, "tie-1", "a1-head-mortise", "post-a1"),
    ],
)
def test_a_forgotten_housing_is_caught(
    frame: tuple[str, str], timber: str, mortise: str, mate: str
) -> None:
    """The end that should have gone into it stands in the wood, and nothing else is wrong."""
    found = caught(sound(*frame), timber, forgotten(mortise, "housing-"))
    assert set(found) == {frozenset((timber, mate))}
    assert Kind.OVERLAP in found[frozenset((timber, mate))]


@pytest.mark.parametrize(
    ("frame", "tenon", "faces", "mate"),
    [
        (MILL, "post-sw/foot-tenon", ("South face", "North face"), "sill-south"),
        (MILL, "tie-west/south-end-tenon", ("West face", "East face"), "post-sw"),
        (SQUARE, "plate-a1/west-end-tenon", ("South face", "North face"), "post-a1"),
    ],
)
def test_cheeks_laid_out_from_the_wrong_face_are_caught(
    frame: tuple[str, str], tenon: str, faces: tuple[str, str], mate: str
) -> None:
    """Set-back and thickness measured from the far face put the tenon beside its mortise."""
    timber, _, feature = tenon.partition("/")
    slip = misread(feature, ("near-cheek", "far-cheek"), swapped(*faces))
    found = caught(sound(*frame), timber, slip)
    assert Kind.OVERLAP in found[frozenset((timber, mate))]


def test_a_far_cheek_measured_from_the_far_face_of_a_fat_stick_is_caught() -> None:
    """This slip does not show on a stick to size, where both ways happen to agree."""
    slip = misread("foot-tenon", ("far-cheek",), hooked_on("North face"))
    assert not caught(sound(*MILL), "post-sw", slip)
    fat = measured(MILL, {"post-sw": real({"foot-tenon": {"first": "7-3/16"}})})
    found = caught(fat, "post-sw", slip)
    assert Kind.OVERLAP in found[frozenset(("post-sw", "sill-south"))]


@pytest.mark.parametrize(
    ("frame", "timber", "tenon", "housings", "mate"),
    [
        (MILL, "girder", "north-end-tenon", Length.inches(1), "sill-north"),
        (SQUARE, "cross-sill-2", "north-end-tenon", Length.mm(30), "sill-north"),
        (SQUARE, "plate-b1", "east-end-tenon", Length.mm(20), "post-b2"),
    ],
)
def test_a_shoulder_length_without_its_housings_is_caught(
    frame: tuple[str, str], timber: str, tenon: str, housings: Length, mate: str
) -> None:
    """A timber as long as the clear space between its mates bears at one end only."""
    short = longer(-housings)
    slip = in_turn(misread(tenon, ("shoulder",), short), misread("end", ("overall",), short))
    found = caught(sound(*frame), timber, slip)
    assert set(found) == {frozenset((timber, mate))}
    assert Kind.GAP in found[frozenset((timber, mate))]


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
    found = caught(sound(*SQUARE), timber, forgotten(feature, "reduc"))
    assert set(found) == {frozenset((timber, mate))}
    assert Kind.OVERLAP in found[frozenset((timber, mate))]


def test_a_pocket_back_measured_from_a_fat_stick_s_far_face_is_caught() -> None:
    """Bearing and clearance counted from there leave the joist too little room."""
    pocket = "joist-11-west-pocket"
    fat = measured(SQUARE, {"cross-sill-1": real({pocket: {"second": "206 mm"}})})
    # 45 mm of bearing and 4 mm of clearance, where 141 mm from the West face was meant.
    slip = misread(
        pocket, ("back",), lambda mark: longer(Length.mm(-92))(hooked_on("East face")(mark))
    )
    found = caught(fat, "cross-sill-1", slip)
    assert set(found) == {frozenset(("joist-11", "cross-sill-1"))}
    assert found[frozenset(("joist-11", "cross-sill-1"))] >= {Kind.OVERLAP, Kind.BOTTOM}


def test_a_mortise_bored_from_the_face_and_not_from_the_housing_floor_is_caught() -> None:
    """It is too shallow by the housing, so the tenon bottoms out."""
    slip = misread("tie-west-south-mortise", ("depth",), hooked_on("North face"))
    found = caught(sound(*MILL), "post-sw", slip)
    assert found[frozenset(("post-sw", "tie-west"))] >= {Kind.OVERLAP, Kind.BOTTOM}


@pytest.mark.parametrize(
    ("timber", "feature", "line", "by", "kind"),
    [
        ("post-sw", "foot-tenon", "far-cheek", NANOMETRE, Kind.OVERLAP),
        ("post-sw", "foot-tenon", "far-cheek", -NANOMETRE, Kind.LOOSE),
        ("sill-south", "sw-foot-mortise", "depth", NANOMETRE, Kind.BOTTOM),
        ("sill-south", "girder-south-mortise", "housing-floor", -NANOMETRE, Kind.GAP),
        ("sill-south", "girder-south-mortise", "housing-floor", NANOMETRE, Kind.OVERLAP),
        ("sill-south", "girder-south-mortise", "housing-finish", NANOMETRE, Kind.LOOSE),
        ("post-sw", "tie-west-south-mortise", "housing-near", -NANOMETRE, Kind.LOOSE),
        ("sill-west", "joist-w1-west-pocket", "floor", NANOMETRE, Kind.GAP),
        ("sill-west", "joist-w1-west-pocket", "back", -NANOMETRE, Kind.BOTTOM),
        ("sill-west", "joist-w1-west-pocket", "finish", NANOMETRE, Kind.LOOSE),
    ],
)
def test_a_nanometre_is_caught(
    timber: str, feature: str, line: str, by: Length, kind: Kind
) -> None:
    """The finest slip that a figure can hold shows for what it is."""
    (kinds,) = caught(sound(*MILL), timber, misread(feature, (line,), longer(by))).values()
    assert kind in kinds
