"""The tenon fits: its stick is long enough, its shoulder bears, it is snug and does not bottom."""

import pytest

from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import NM_PER_INCH, Length
from tests.builders import real
from tests.joinery.roofs import roof, tenoned
from tests.proof.bored import prisms
from tests.proof.fits import PUSH, borne, differs
from tests.proof.framings import (
    AS_DRAWN,
    FRAMINGS,
    OTHER,
    SHORT,
    STICK,
    Sticks,
)
from tests.proof.kernel import Vector
from tests.proof.rounds import rounds_off
from tests.proof.tenons import ANY_FRAMING, ANY_TURN, DRAWN, OVERSIZE, VARIANTS, of
from tests.proof.textbook.tenon import Tenon, bores, textbook
from tests.proof.textbook.tenon import tenon as tenon_of
from tests.proof.told import untrue
from tests.proof.wood import TOUCH, Log, logs


@pytest.mark.parametrize("variant", VARIANTS)
def test_the_stick_is_as_long_as_it_has_to_be(variant: str) -> None:
    """From the end that was typed to the tenon's own, the allowance left on beyond it."""
    name, turn = ANY_FRAMING[variant], ANY_TURN[variant]
    joint, frame = of(name, VARIANTS[variant], OVERSIZE, turn=turn)
    raised = logs(frame)
    log, found = raised[STICK], tenon_of(joint, raised)
    ends = [_deep(found, log, along) for along in (log.layout.stick.start, log.layout.stick.finish)]
    tip = found.shoulder + found.long + joint.end_allowance.nm
    assert sorted(ends) == [found.shoulder - SHORT, tip]
    bored = [log.waste(each) for each in log.layout.features if prisms(each)]
    assert found.body().without([log.wood, *bored]).volume < TOUCH


def _deep(found: Tenon, log: Log, along: Length) -> float:
    """How far in a place along the stick lies."""
    point, zero = log.stand.point(along.nm, 0, 0), found.met.stand.zero
    gone = (a - b for a, b in zip(point, zero, strict=True))
    return sum(a * b for a, b in zip(gone, found.met.stand.ways[0], strict=True))


BEARS = [
    ("blind", AS_DRAWN, 42 - 2 * 7),
    ("housed", AS_DRAWN, 42 - 2 * 7),
    ("relieved all round", AS_DRAWN, 42 - 2 * 6),
    ("relieved on its reference edge", AS_DRAWN, 42 - 2 * 5.75),
    ("relieved on its far edge", Sticks(over=(16, 16, 0, 0)), 6.5 * 7.5 - 2 * 6),
    ("barefaced at its far face", AS_DRAWN, 42 - 2 * 6),
    ("through and standing proud", AS_DRAWN, 42 - 2 * 6),
    ("housed", Sticks(over=(16, 16, 8, 8)), 6.5 * 7.5 - 2 * 7.5),
    ("housed", Sticks(rule="square", over=(16, 16, 8, 8)), 6.5 * 7.5 - 2 * 7),
]
"""What a stick of 6 by 7 bears with, in square inches: all of it but the tenon's root.

By square rule the end inside the housing and the rest of the stick on the face round it.
"""


@pytest.mark.parametrize(("variant", "sticks", "area"), BEARS)
def test_the_shoulder_bears_on_all_it_should(variant: str, sticks: Sticks, area: float) -> None:
    """Pushed in by a micron it shares just that area, so deep, with the other timber."""
    for name in FRAMINGS:
        joint, frame = of(name, VARIANTS[variant], sticks)
        found = logs(frame)
        assert borne(found[STICK], found[OTHER], _way_in(joint)) == pytest.approx(area)


def _way_in(joint: TenonJoint) -> Vector:
    return joint.end.value


SNUG = ["housed", "relieved all round", "with its own clearance"]


@pytest.mark.parametrize("variant", SNUG)
@pytest.mark.parametrize("name", FRAMINGS)
def test_the_tenon_is_snug_and_has_its_room_at_the_bottom(name: str, variant: str) -> None:
    """Its four sides touch at once; in by the clearance it is free, and then its end touches."""
    joint, frame = of(name, VARIANTS[variant], OVERSIZE)
    found = logs(frame)
    made = tenon_of(joint, found)
    low, high = made.across[made.met.aside]
    edge, far = made.across[made.met.grain]
    thick, wide, long = high - low, far - edge, made.long
    for number, wall in ((made.met.aside, wide * long), (made.met.grain, thick * long)):
        for sense in (1, -1):
            assert _meets(made, found[OTHER], number, sense * PUSH) == pytest.approx(wall * PUSH)
    room = made.bottom(frame) - made.shoulder - long
    assert _meets(made, found[OTHER], 0, room) < TOUCH
    assert _meets(made, found[OTHER], 0, room + PUSH) == pytest.approx(thick * wide * PUSH)


def _meets(made: Tenon, other: Log, number: int, by: float) -> float:
    """What a tenon moved one of the three ways of its joint would share with the other timber."""
    east, north, up = (round(by * part) for part in made.met.stand.ways[number])
    return made.body().moved((east, north, up)).within(other.wood).volume


RAFTER = {"all": {"second": "6-1/4"}}
"""A rafter a quarter of an inch over."""

SLOPED = 1e-3
"""How far off an area may be in a slope, as a share of it: a nanometre in a push of a micron."""

ROOFS = {
    "housed": tenoned(),
    "barefaced": tenoned(set_back="0"),
    "pegged": tenoned(pegs={**DRAWN, "from_shoulder": "1-1/2"}),
    "through": tenoned(through=True, length=None, held_short="1/2", relief_reference="1"),
}


@pytest.mark.parametrize("rise", ["0'", "5'", "12'"])
@pytest.mark.parametrize("kind", ROOFS)
def test_a_purlin_s_tenons_are_right_in_the_slope(kind: str, rise: str) -> None:
    """Rolled with its roof it goes into the rafters' sides as it would into level beams."""
    sizes = {"purlin": real({"all": {"first": "6-1/8", "second": "5-3/16"}})}
    frame = roof(*ROOFS[kind], rise=rise, real=sizes | {"rafter-west": real(RAFTER)})
    found = logs(frame)
    for joint in ROOFS[kind]:
        assert isinstance(joint, TenonJoint)
        assert list(differs(textbook(joint, frame, found), found)) == []
        assert list(rounds_off(bores(joint, found), found)) == []
        made = tenon_of(joint, found)
        thick, wide = (high - low for low, high in made.across.values())
        section = made.met.stick.real(1) * made.met.stick.real(2)
        area = borne(found["purlin"], found[joint.into or ""], _way_in(joint))
        assert area == pytest.approx((section - thick * wide) / NM_PER_INCH**2, rel=SLOPED)
    assert [words for log in found.values() for words in untrue(log)] == []
