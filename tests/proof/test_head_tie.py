"""The head tenon proved: through the plate and on into a tie, however that lies over it."""

from collections.abc import Iterator, Mapping
from itertools import chain

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from benchmate.checks.design import findings_of
from benchmate.frame.frame import Frame, Real
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import Length
from tests.builders import real
from tests.joinery.tenon.head_ties import MORTISE, Lie, Words, head_tie
from tests.joinery.tenon.plans import PLANS, Plan
from tests.proof.fits import Wastes, differs, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.sound import stopped
from tests.proof.textbook.third_timber import mortise_beyond, mortise_of
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

JOINTS: Mapping[str, Words] = {
    "blind in the tie": {},
    "through the tie": {"beyond_through": True, "past": "8", "held_short": "0"},
    "of a given length": {"past": "0", "length": "9-1/2"},
    "with clearance of its own": {"bottom_clearance": "1/2"},
    "barefaced": {"set_back": "0", "thickness": "3"},
}

LIES = {
    "notched over it": Lie(),
    "on it": Lie(down="0"),
    "clear of it": Lie(down="-1"),
    "undersides": Lie(plate=("down", "south"), tie=("down", "east"), post=("south", "east")),
    "let in, from the inside": Lie(
        down="2", plate=("up", "north"), tie=("up", "east"), post=("north", "west")
    ),
    "along it": Lie(down="0", runs_along=True, tie=("up", "south")),
    "from the head": Lie(reference_end="head", tie=("down", "west")),
}


def _right(frame: Frame, found: Mapping[str, Log]) -> Wastes:
    """Both mortises by definition; by square rule the plate loses its reduction there as well."""
    joint = next(work for work in frame.project.works if isinstance(work, TenonJoint))
    right = {f"tie/{MORTISE}": mortise_beyond(joint, frame, found)}
    if frame.stick("plate").inner is None:
        right[f"plate/{MORTISE}"] = mortise_of(joint, frame, found)
    return right


def wrong_with(frame: Frame) -> Iterator[str]:
    """All that is wrong with the head of a post."""
    found = logs(frame)
    yield from (words for log in found.values() for words in untrue(log))
    for other in ("plate", "tie"):
        yield from overlaps((found["post"], found[other]))
    yield from differs(_right(frame, found), found)


@pytest.mark.parametrize("plan", PLANS)
@pytest.mark.parametrize("lie", LIES)
def test_both_mortises_are_told_and_cut_as_the_textbook_has_them(plan: Plan, lie: str) -> None:
    """Whichever way the post is turned, of either hand, and however the tie lies over the plate."""
    assert list(wrong_with(head_tie(plan, LIES[lie]))) == []


@pytest.mark.parametrize("name", JOINTS)
@pytest.mark.parametrize("lie", ["notched over it", "on it", "from the head"])
def test_a_tenon_of_any_kind_is_right(name: str, lie: str) -> None:
    """Blind in the tie or through it, of whatever length."""
    assert list(wrong_with(head_tie(lie=LIES[lie], joint=JOINTS[name]))) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(JOINTS)),
    lie=st.sampled_from(sorted(LIES)),
    plan=st.sampled_from(PLANS),
    over=st.tuples(*[st.integers(0, 32)] * 6),
)
@settings(max_examples=12, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(
    rule: str, name: str, lie: str, plan: Plan, over: tuple[int, ...]
) -> None:
    """Whatever the sticks are over, by either rule, all is told, right, and shares no wood."""
    drawn = {"plate": ((7, 8), over[:2]), "tie": ((9, 8), over[2:4]), "post": ((8, 8), over[4:])}
    ruled = {
        each: {"rule": rule} | ({"inner": f"{u} x {v}"} if rule == "square" else {})
        for each, ((u, v), _) in drawn.items()
    }
    measured = {each: _measured(*sizes) for each, sizes in drawn.items()}
    built = head_tie(plan, LIES[lie], joint=JOINTS[name], own=ruled, real=measured)
    assume(not stopped(built))
    assert list(wrong_with(built)) == []


def _measured(drawn: tuple[int, int], over: tuple[int, ...]) -> Real:
    first, second = (
        (Length.inches(size) + Length.inches(0, 1, 32) * count).exact_text()
        for size, count in zip(drawn, over, strict=True)
    )
    return real({"all": {"first": first, "second": second}})


@pytest.mark.parametrize("name", JOINTS)
def test_no_line_of_the_mortises_can_be_misplaced(name: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off."""
    frame = head_tie(joint=JOINTS[name])
    found = logs(frame)
    assert list(unnoticed(_right(frame, found), found)) == []


LAPS: Mapping[str, Words] = {
    "the tie notched": {"share": "0"},
    "both notched": {"share": "1/2"},
    "the plate notched": {"share": "1"},
    "over a cog": {"share": "1/4", "cog": "1-1/2", "cog_set_back": "5"},
}


@pytest.mark.parametrize("name", LAPS)
@pytest.mark.parametrize("lie", ["notched over it", "undersides", "from the head"])
def test_a_tie_that_is_lapped_takes_it_too(name: str, lie: str) -> None:
    """Whichever of the two is notched: no wood is shared, and no joint is in another's way."""
    frame = head_tie(lie=LIES[lie], lap=LAPS[name], joint={"meets": ("tie-lap",)})
    found = logs(frame)
    assert [words for log in found.values() for words in untrue(log)] == []
    assert list(overlaps(found.values())) == []
    assert list(differs(_right(frame, found), found)) == []
    told = [findings_of(log.layout, frame.project.tape) for log in found.values()]
    assert [each.code for each in chain(*told)] == []
