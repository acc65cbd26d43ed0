"""The wedged half-dovetail proved: told true, cut as the textbook cuts it, and it can be raised."""

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.half_dovetail.record import HalfDovetail
from benchmate.measure.length import Length
from tests.builders import length, real
from tests.joinery.half_dovetail.bents import SQUARE, bent
from tests.proof.fits import Wastes, differs, overlaps, unnoticed
from tests.proof.profile import Profile
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.half_dovetail import Tail, tail, textbook
from tests.proof.told import untrue
from tests.proof.wood import TOUCH, Log, logs

HOUSED = {"housing": "1/2", "wedge_thin": "1-1/4"}
BENTS: dict[str, dict[str, Any]] = {
    "west": {},
    "east": {"heading": "east"},
    "north": {"heading": "north"},
    "south": {"heading": "south", "side": "east"},
    "at its reference end": {"reference": True},
    "measured from the underside": {"tie_first": "down"},
    "into a reference face": {"post_first": "east"},
    "from the north side": {"side": "north"},
    "housed": HOUSED,
    "housed in a reference face": HOUSED | {"post_first": "south", "heading": "north"},
    "past the post": {"past": "2"},
    "held short": {"held_short": "1/4"},
    "wedged below": {"wedged": "underside"},
    "wedged below, measured from there": {"wedged": "underside", "tie_first": "down"},
    "of its own depth": {"depth": "6"},
    "of its own depth, past the post": {"depth": "6", "past": "1", "tie_first": "down"},
    "barefaced": {"set_back": "0"},
    "by square rule": {"own": SQUARE},
    "by square rule, far": {"own": SQUARE, "post_first": "east", "wedge_thin": "1-1/4"},
    "by square rule, from below, past": {
        "own": SQUARE,
        "post_first": "east",
        "tie_first": "down",
        "past": "1",
        "wedge_thin": "1-1/4",
    },
    "by square rule, housed, past": {
        "own": SQUARE,
        "post_first": "east",
        "past": "1",
    }
    | HOUSED,
}


def joint_of(frame: Frame) -> HalfDovetail:
    """The half-dovetail of a bent."""
    return next(work for work in frame.project.works if isinstance(work, HalfDovetail))


def _right(frame: Frame, found: dict[str, Log]) -> Wastes:
    return textbook(joint_of(frame), frame, found)


def wrong_with(frame: Frame) -> list[str]:
    """All that is wrong with the half-dovetail of a bent."""
    found = logs(frame)
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(_right(frame, found), found),
        *overlaps(found.values()),
    ]


@pytest.mark.parametrize("name", BENTS)
def test_it_is_told_and_cut_as_the_textbook_has_it(name: str) -> None:
    """Any heading, hand, end and rule: the steps tell the planes, the planes take the wood."""
    assert wrong_with(bent(**BENTS[name])) == []


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(name for name in BENTS if "square" not in name)),
    off=st.tuples(*[st.integers(-16, 32)] * 4),
    cut=st.tuples(*[st.integers(-8, 4)] * 3),
)
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_real_sizes_fit(
    rule: str, name: str, off: tuple[int, ...], cut: tuple[int, ...]
) -> None:
    """Whatever the sticks are over or, by mill rule, under, and however the tenon came out."""
    off = tuple(map(abs, off)) if rule == "square" else off
    own = SQUARE if rule == "square" else {}
    words = BENTS[name] | {"own": own, "wedge_thin": "1-1/2"}
    drawn = bent(**words)
    root, tail_end = (each.nm for each in _depths(drawn, off))
    as_cut = dict(
        zip(
            ("thickness", "width", "length"),
            (
                (Length(size) + Length.inches(0, 1, 32) * each).exact_text()
                for size, each in zip((length("2").nm, root, tail_end), cut, strict=True)
            ),
            strict=True,
        )
    )
    end = f"{words.get('heading', 'west')}-end-tenon"
    sticks = {
        "post": _size((8, 8), off[:2]),
        "tie": Real(_size((8, 6), off[2:]).measured, real(as_cut={end: as_cut}).as_cut),
    }
    frame = bent(real=sticks, **words)
    found = logs(frame)
    assert [words for log in found.values() for words in untrue(log)] == []
    assert list(differs(_right(frame, found), found)) == []
    met = tail(joint_of(frame), found)
    assert met.root > 0


def _depths(frame: Frame, off: tuple[int, ...]) -> tuple[Length, Length]:
    """How deep the tenon would be at its shoulder and its end, on a tie that is over so much."""
    joint = joint_of(frame)
    inner = frame.stick("tie").inner
    over = Length.inches(0, 1, 32) * off[2]
    framed = inner.first if inner else Length.inches(8) + over
    root = joint.depth or framed - joint.flare
    return root, root + joint.flare


def _size(drawn: tuple[int, int], over: tuple[int, ...]) -> Real:
    first, second = (
        (Length.inches(size) + Length.inches(0, 1, 32) * count).exact_text()
        for size, count in zip(drawn, over, strict=True)
    )
    return real({"all": {"first": first, "second": second}})


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(name for name in BENTS if "square" not in name)),
    off=st.tuples(*[st.integers(-16, 32)] * 4),
)
@settings(max_examples=10, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_can_be_raised(rule: str, name: str, off: tuple[int, ...]) -> None:
    """As drawn on sticks that are over or under, nothing is in one place, and the tail comes in."""
    off = tuple(map(abs, off)) if rule == "square" else off
    words = BENTS[name] | {"own": SQUARE if rule == "square" else {}, "wedge_thin": "1-1/2"}
    sticks = {"post": _size((8, 8), off[:2]), "tie": _size((8, 6), off[2:])}
    frame = bent(real=sticks, **words)
    found = logs(frame)
    assert list(overlaps(found.values())) == []
    assert _stuck(frame) == []


@pytest.mark.parametrize(
    "name",
    [
        "west",
        "housed",
        "of its own depth, past the post",
        "held short",
        "by square rule, housed, past",
    ],
)
def test_no_line_can_be_misplaced(name: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off."""
    frame = bent(**BENTS[name])
    found = logs(frame)
    assert list(unnoticed(_right(frame, found), found)) == []


def _stuck(frame: Frame) -> list[str]:
    """Where on its way in the tie is in the post's way.

    It comes in raised by the whole flare and slides down its slope over the last stretch.
    """
    found = logs(frame)
    met = tail(joint_of(frame), found)
    tie, post, profile = found["tie"].wood, found["post"].wood, met.profile
    stuck = []
    for part in (96, 60, 48, 47, 44, 36, 24, 12, 4, 1, 0):
        out = round(met.run) * part // 48
        lift = min(round(met.flare), round(met.slope(out)))
        shared = profile.moved(tie, deep=-out, down=-lift).within(post).volume
        if shared > TOUCH:
            stuck.append(f"{shared / 1e18:.3f} mm3 with {part}/48 still to go")
    return stuck


@pytest.mark.parametrize("name", BENTS)
def test_the_tie_comes_in(name: str) -> None:
    """The mortise is taller on its entry side by enough for the tail, housed or not."""
    assert _stuck(bent(**BENTS[name])) == []


@pytest.mark.parametrize(
    ("words", "thin"), [({}, "1"), ({"past": "2"}, "1"), ({"held_short": "1/4"}, "1")]
)
def test_a_thinner_wedge_keeps_the_tie_out(words: dict[str, Any], thin: str) -> None:
    """With a thin end of just the flare it comes in; a sixteenth less, and it is stuck."""
    assert _stuck(bent(**words, wedge_thin=thin)) == []
    assert _stuck(bent(**words, wedge_thin="15/16")) != []


PUSH = 1000


def _pushed(profile: Profile, found: dict[str, Log], **by: int) -> float:
    """The area that bears, in square inches, as the tie is pushed so far."""
    shared = profile.moved(found["tie"].wood, **by).within(found["post"].wood).volume
    return shared / PUSH / length("1").nm ** 2


@pytest.mark.parametrize("name", ["west", "north", "wedged below", "at its reference end"])
def test_shoulder_tail_and_wedge_bear(name: str) -> None:
    """The shoulder on all but the mortise, the tail on all its slope, and the wedge on both.

    An 8 x 6 end with a 2" tenon 7" deep at its shoulder: 48 - 14 square inches. The tail bears on
    2" by 8", seen from above; so does the wedge on the post, and on the tenon under it.
    """
    frame = bent(**BENTS[name])
    found = logs(frame)
    met = tail(joint_of(frame), found)
    assert _pushed(met.profile, found, deep=PUSH) == pytest.approx(34, abs=0.02)
    assert _pushed(met.profile, found, down=PUSH) == pytest.approx(16, abs=0.02)
    assert _wedged(met, found["post"], down=-PUSH) == pytest.approx(16, abs=0.02)
    assert _wedged(met, found["tie"], down=PUSH) == pytest.approx(16, abs=0.02)


def _wedged(met: Tail, log: Log, *, down: int) -> float:
    """The area the wedge bears on, in square inches."""
    shared = met.profile.moved(met.wedge, down=down).within(log.wood).volume
    return shared / PUSH / length("1").nm ** 2


@pytest.mark.parametrize("name", [name for name in BENTS if name != "held short"])
def test_the_wedge_fills_its_room(name: str) -> None:
    """It is as thick as is said at both its ends, and in nobody's way."""
    found = logs(bent(**BENTS[name]))
    met = tail(joint_of(bent(**BENTS[name])), found)
    assert all(met.wedge.within(log.wood).volume <= TOUCH for log in found.values())


@pytest.mark.parametrize("name", BENTS)
def test_the_other_face_has_its_own_true_figure(name: str) -> None:
    """The line on the face across from the reference face lies where the slope comes out there."""
    log = logs(bent(**BENTS[name]))["post"]
    hole = log.feature("tie-post-mortise")
    planes = {plane.line: plane for cut in hole.cuts for plane in cut.planes}
    depth = log.layout.stick.section().first.nm
    lines = {line.id: line for line in hole.lines}
    for end in ("tail-end", "wedge-end"):
        along, deep, _ = planes[end].normal
        reached = along * lines[f"{end}-far"].at.nm + deep * depth
        assert abs(reached - planes[end].offset) <= abs(along), f"{end} is a nanometre off"
