"""The joggle proved: told true, cut as the textbook cuts it, and a bearing fit in the building."""

from collections.abc import Mapping
from dataclasses import replace
from math import cos, sin, tan

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.joggle.record import JoggleJoint
from benchmate.measure.length import Length
from benchmate.model.findings import Severity
from benchmate.model.solids import Cut
from tests.builders import real
from tests.joinery.joggle.trusses import SECTIONS, truss
from tests.proof.fits import Wastes, differs, overlaps, unnoticed
from tests.proof.sizes import UNSHRUNK
from tests.proof.textbook.joggle import Stand, framed, stand, textbook
from tests.proof.told import untrue
from tests.proof.wood import Log, logs

SQUARE_ON = {"slope": ("12'", "12'"), "strut_slope": ("48", "48")}

TRUSSES: dict[str, Mapping[str, object]] = {
    "at 9 in 12": {},
    "towards the west": {"heading": "west", "slope": ("12'", "8'")},
    "towards the north": {"heading": "north", "strut_slope": ("48", "50")},
    "towards the south": {"heading": "south", "joint": {"abutment": "square to the face"}},
    "square to the rake": {
        "slope": ("12'", "7'"),
        "strut_slope": ("36", "48"),
        "joint": {"abutment": "square to the rake", "length": "1"},
        "joints": {"strut-head": {"abutment": "bisecting"}},
    },
    "square to the face": {"joint": {"abutment": "square to the face"}},
    "from the other side": {"side": "north", "joint": {"set_back": "1-1/2", "ease": "1/2"}},
    "into far faces": {"edges": {"tie": "down", "post": "east", "rafter": "up"}},
    "measured from the far edges": {"edges": {"rafter": "down", "strut": "up"}},
    "a strut square under its rafter": SQUARE_ON,
    "square on, and square to the face": SQUARE_ON | {"joint": {"abutment": "square to the face"}},
    "barefaced, tight": {"joint": {"set_back": "0", "ease": "0", "bottom_clearance": "1/4"}},
    "measured from the head": {
        "own": {"rafter": {"reference_end": "head"}, "strut": {"reference_end": "head"}}
    },
}


def _joints(frame: Frame) -> list[JoggleJoint]:
    return [work for work in frame.project.works if isinstance(work, JoggleJoint)]


def _right(frame: Frame, found: dict[str, Log]) -> Wastes:
    return {key: waste for joint in _joints(frame) for key, waste in textbook(joint, found).items()}


def wrong_with(frame: Frame) -> list[str]:
    """All that is wrong with the joggles of a frame."""
    found = logs(frame)
    pairs = {(each.timber, each.into) for each in _joints(frame)}
    return [
        *(words for log in found.values() for words in untrue(log)),
        *differs(_right(frame, found), found),
        *(words for one, other in pairs for words in overlaps((found[one], found[other]))),
    ]


@pytest.mark.parametrize("name", TRUSSES)
def test_it_is_told_and_cut_as_the_textbook_has_it(name: str) -> None:
    """Any heading, hand and abutment, into level, upright and raking timbers: all of it fits."""
    frame = truss(**TRUSSES[name])  # type: ignore[arg-type]
    assert not any(stops(frame))
    assert wrong_with(frame) == []


def stops(frame: Frame) -> list[str]:
    """The joints of a frame that cannot be cut."""
    return [
        finding.code
        for log in logs(frame).values()
        for feature in log.layout.features
        for finding in feature.findings
        if finding.severity is Severity.STOP
    ]


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(name=st.sampled_from(sorted(TRUSSES)), off=st.tuples(*[st.integers(0, 32)] * 8))
@settings(max_examples=12, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(rule: str, name: str, off: tuple[int, ...]) -> None:
    """Whatever the sticks are over, by either rule, all is cut right and overlaps nothing."""
    measured = {
        each: _size(each, off[2 * place : 2 * place + 2]) for place, each in enumerate(SECTIONS)
    }
    own = {
        each: {"rule": rule} | ({"inner": size} if rule == "square" else {})
        for each, size in SECTIONS.items()
    }
    words = dict(TRUSSES[name])
    merged = {each: own[each] | dict(words.get("own", {}).get(each, {})) for each in own}  # type: ignore[attr-defined]
    assert wrong_with(truss(real=measured, **words | {"own": merged})) == []  # type: ignore[arg-type]


def _size(timber: str, over: tuple[int, ...]) -> Real:
    drawn = SECTIONS[timber].split(" x ")
    first, second = (
        (Length.inches(int(size)) + Length.inches(0, 1, 32) * count).exact_text()
        for size, count in zip(drawn, over, strict=True)
    )
    return real({"all": {"first": first, "second": second}})


@pytest.mark.parametrize("name", ["at 9 in 12", "square to the rake", "measured from the head"])
def test_no_line_of_a_joggle_can_be_misplaced(name: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood off."""
    frame = truss(**TRUSSES[name])  # type: ignore[arg-type]
    found = logs(frame)
    assert list(unnoticed(_right(frame, found), found)) == []


PUSHED = 10_000
"""How far an end is pushed home to see what it bears on, in nanometres."""


@pytest.mark.parametrize("name", ["at 9 in 12", "towards the north", "square to the rake"])
@pytest.mark.parametrize("joint", ["heel", "crown", "strut-foot", "strut-head"])
def test_the_whole_end_bears(name: str, joint: str) -> None:
    """Pushed along its own length, an end shares wood on all of abutment, tenon front and sole.

    As much as their areas, by the textbook's lengths, and how square to each the push goes.
    """
    found = logs(truss(**TRUSSES[name]))  # type: ignore[arg-type]
    record = next(each for each in _joints(truss(**TRUSSES[name])) if each.id == joint)  # type: ignore[arg-type]
    met = stand(record, found)
    home = [round(-PUSHED * part) for part in met.back]
    pushed = found[record.timber].wood.moved((home[0], home[1], home[2]))
    shared = pushed.within(found[record.into].wood).volume
    assert shared == pytest.approx(PUSHED * _bearing(record, found, met), rel=0.01)


def _bearing(record: JoggleJoint, found: dict[str, Log], met: Stand) -> float:
    """The area that an end bears on, each face as it looks at the thrust."""
    notch, deep = record.notch.nm, (record.notch + record.length).nm
    wide = framed(found[record.timber], 2)
    thick = record.thickness.nm
    down, off = 1 / cos(met.lean), cos(met.angle - met.lean)
    front = (notch * wide + (deep - notch) * thick) * down * off
    along = met.foot - notch * tan(met.lean)
    sole = (along * sin(met.angle) - notch * cos(met.angle)) * (wide - thick)
    return front + sole


@pytest.mark.parametrize("looks", ["square to the face", "bisecting", "square to the rake"])
@pytest.mark.parametrize("other", ["square to the face", "bisecting", "square to the rake"])
def test_another_abutment_is_other_wood(looks: str, other: str) -> None:
    """Planted: an end cut the way of another choice than the record's is caught on both timbers."""
    words = {"joint": {"abutment": looks, "length": "1"}, "only": ("heel", "crown")}
    found = logs(truss(**words))  # type: ignore[arg-type]
    right = {
        key: waste
        for each in _joints(truss(**words))  # type: ignore[arg-type]
        for key, waste in textbook(each.model_copy(update={"abutment": other}), found).items()
    }
    wrong = {words.partition(":")[0] for words in differs(right, found)}
    assert wrong == (set() if looks == other else set(right))


def test_a_heel_turned_round_is_caught() -> None:
    """Planted: the tie's notch cut from the other end stands in the rafter's way."""
    frame = truss(only=("heel",))
    found = logs(frame)
    tie = found["tie"]
    feature = tie.feature("heel-notch")
    far = 2 * feature.at.nm + round(met_foot(frame, found))
    turned = replace(feature, cuts=tuple(_turned(cut, far) for cut in feature.cuts))
    assert list(differs({"tie/heel-notch": tie.waste(turned)}, found)) != []


def met_foot(frame: Frame, found: dict[str, Log]) -> float:
    """How long the heel stands on its tie."""
    return stand(_joints(frame)[0], found).foot


def _turned(cut: Cut, far: int) -> Cut:
    """A cut mirrored along its timber."""
    return Cut(
        tuple(
            replace(
                plane,
                normal=(-plane.normal[0], *plane.normal[1:]),
                offset=plane.offset - plane.normal[0] * far,
            )
            for plane in cut.planes
        )
    )
