"""Tenons of every kind, in any of the ordinary meetings of two timbers."""

from collections.abc import Mapping
from itertools import cycle

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.record import TenonJoint
from tests.builders import length, tenon
from tests.proof.framings import FRAMINGS, OTHER, STICK, TURNS, Sticks, Words, framed, scene
from tests.proof.marks import END_WORDS
from tests.proof.raising import end_names

PEGS: Words = {
    "count": 2,
    "size": "1",
    "from_shoulder": "2",
    "from_edge": "1-3/4",
    "spacing": "2-1/2",
}
DRAWN: Words = {**PEGS, "draw": "3/32"}
THROUGH: Words = {"through": True, "length": None}

VARIANTS: Mapping[str, Words] = {
    "blind": {},
    "housed": {"housing": "3/4"},
    "relieved all round": {"all_round": "1/2", "housing": "1/2"},
    "relieved on its reference edge": {"relief_reference": "1-1/4"},
    "relieved on its far edge": {"relief_far": "1"},
    "relieved more on one edge than the other": {"all_round": "1/2", "relief_far": "1-1/2"},
    "with an end allowance": {"end_allowance": "1/2"},
    "barefaced at its reference face": {"set_back": "0", "all_round": "1/2"},
    "barefaced at its far face": {"set_back": "4", "all_round": "1/2"},
    "through and flush": THROUGH,
    "through and held short": {**THROUGH, "held_short": "1/4", "housing": "1/2"},
    "through and standing proud": {**THROUGH, "length": "12", "relief_far": "1"},
    "with its own clearance": {"bottom_clearance": "3/8"},
    "pegged": {"pegs": PEGS},
    "drawn": {"pegs": DRAWN, "relief_reference": "1"},
    "drawn, blind from the reference side": {"pegs": {**DRAWN, "blind_depth": "7"}},
    "drawn, blind from the far side": {
        "pegs": {**DRAWN, "blind_depth": "8", "bored_from": "far"},
        "housing": "3/4",
    },
    "drawn right through": {
        **THROUGH,
        "held_short": "1/2",
        "pegs": {**DRAWN, "bored_from": "far"},
        "all_round": "1/2",
    },
}

OVERSIZE = Sticks(rule="square", over=(5, 9, 12, 7))
OFF = Sticks(over=(3, 4, 5, -6))

FULL: Words = {
    "housing": "3/4",
    "relief_reference": "1-1/4",
    "end_allowance": "1/2",
    "pegs": {**DRAWN, "blind_depth": "8", "bored_from": "far"},
}
"""As much as a tenon can have at once."""

ANY_TURN = dict(zip(VARIANTS, cycle(TURNS), strict=False))
ANY_FRAMING = dict(zip(VARIANTS, cycle(FRAMINGS), strict=False))


def of(
    name: str, words: Words, sticks: Sticks, *, turn: int = 0, aside: str = "1"
) -> tuple[TenonJoint, Frame]:
    """One tenon, in one framing of two sticks."""
    framing = FRAMINGS[name].turned(turn)
    own = {"length": "4", "thickness": "2", "set_back": "1-1/2"}
    ends = {"timber": STICK, "end": END_WORDS[framing.end].removesuffix(" end"), "into": OTHER}
    joint = tenon(id="joint", **(own | ends | dict(words)))
    found = scene(framing, sticks, deep=joint.housing.nm, aside=length(aside).nm)
    return joint, framed(found, joint, sticks, end=end_names(joint)[0])
