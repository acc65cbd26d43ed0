"""The cuts and lines of the tenon's own side."""

from collections.abc import Mapping

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.frame.practice import NOT_OVERALL
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.layout.outlines import outlines, struck
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Feature, Stage
from benchmate.model.progress import AsCut
from tests.builders import frame, length, lengths, line, real, sill, tenon, timber
from tests.corner import texts
from tests.joinery.tenon.housed import Housed, housed

NARROW = (Face.SECOND, Face.FAR_SECOND)
BROAD = (Face.FIRST, Face.FAR_FIRST)


def _tenon(joint: TenonJoint, measured: Mapping[str, str] | None = None) -> Feature:
    typed = real({"foot-tenon": measured or {}})
    return features(joint, frame(timber("post"), joint, real={"post": typed}))[0]


def _ids(feature: Feature) -> tuple[str, ...]:
    return tuple(found.id for found in feature.lines)


def test_the_shoulder_comes_first_and_only_what_is_cut_is_struck() -> None:
    """Without set-back, relief or allowance there are a shoulder and a far cheek."""
    assert _ids(_tenon(tenon(set_back="0"))) == ("shoulder", "far-cheek")
    assert _ids(_tenon(tenon(all_round="1/2", end_allowance="1"))) == (
        "shoulder",
        "near-cheek",
        "far-cheek",
        "reference-edge",
        "far-edge",
        "tenon-end",
    )


@pytest.mark.parametrize("end", ["foot", "head"])
def test_each_line_is_struck_where_its_cut_comes_out(end: str) -> None:
    """Law 4: shoulder all round; cheeks on the narrow sides and the end; reliefs on the broad."""
    joint = tenon(end=end, all_round="1/2", end_allowance="1")
    built = frame(timber("post"), joint)
    (feature,) = features(joint, built)
    grain = Face.REFERENCE_END if end == "foot" else Face.FAR_END
    stick = built.stick("post")
    assert {name: struck(feature, stick).get(name, ()) for name in _ids(feature)} == {
        "shoulder": LONG_FACES,
        "near-cheek": (*NARROW, grain),
        "far-cheek": (*NARROW, grain),
        "reference-edge": (*BROAD, grain),
        "far-edge": (*BROAD, grain),
        "tenon-end": LONG_FACES,
    }


def test_cheeks_from_the_second_face_turn_the_tenon() -> None:
    """The cheek lines then lie on the first face and the one across from it."""
    joint = tenon(cheeks_from="second", relief_reference="1")
    built = frame(timber("post"), joint)
    (feature,) = features(joint, built)
    stick = built.stick("post")
    assert struck(feature, stick).get("far-cheek", ()) == (*BROAD, Face.REFERENCE_END)
    assert struck(feature, stick).get("reference-edge", ()) == (*NARROW, Face.REFERENCE_END)


@given(
    st.fixed_dictionaries(
        {name: texts(0, 2) for name in ("set_back", "relief_reference", "relief_far", "all_round")}
    ),
    st.sampled_from(["foot", "head"]),
    st.tuples(*[st.integers(0, 6 * 64)] * 2),
    st.integers(1, 5 * 64),
)
def test_the_tenon_is_what_no_cut_takes(
    words: dict[str, str], end: str, point: tuple[int, int], beyond: int
) -> None:
    """Law 4: beyond the shoulder, only wood strictly inside the cheeks and edges is left."""
    feature = _tenon(tenon(end=end, **words))
    grain = length("1/64").nm
    u, v = (part * grain for part in point)
    shoulder = line(feature.lines, "shoulder").at.nm
    x = shoulder + (-beyond if end == "foot" else beyond) * grain
    at = {found.id: found.at.nm for found in feature.lines}
    inside = at.get("near-cheek", -1) < u < at["far-cheek"] and (
        at.get("reference-edge", -1) < v < at.get("far-edge", 6 * 64 * grain + 1)
    )
    assert any(cut.takes(x, u, v) for cut in feature.cuts) is not inside
    body = shoulder + (grain if end == "foot" else -grain)
    assert not any(cut.takes(body, u, v) for cut in feature.cuts)


def test_the_far_lines_say_what_comes_off_beyond_them() -> None:
    """Common practice, no source: on a 6-1/16" stick the off side is 2-1/16" (law 2)."""
    feature = _tenon(tenon(all_round="1/2"), {"first": "6-1/16", "second": "5-7/8"})
    beside = {
        name: {found.value for found in line(feature.lines, name).beside}
        for name in ("far-cheek", "reference-edge", "far-edge")
    }
    assert beside == {
        "far-cheek": {length("2"), length("2-1/16")},
        "reference-edge": {length("5")},
        "far-edge": {length("3/8"), length("5")},
    }


def test_the_allowance_is_left_on_and_comes_off_last() -> None:
    """The tenon's own end is a line, and trimming to it waits until the joint has been fitted."""
    plain, feature = _tenon(tenon()), _tenon(tenon(end_allowance="1/2"))
    end = line(feature.lines, "tenon-end")
    assert end.at == -length("5")
    assert end.beside[0].value == length("1/2")
    trim = {task.id: task.stage for task in feature.tasks}
    assert trim["trim-end"] is Stage.FINISH
    assert "trim-end" not in {task.id for task in plain.tasks}
    beyond = line(feature.lines, "tenon-end").at.nm - 1
    middle = length("3").nm
    assert any(cut.takes(beyond, middle, middle) for cut in feature.cuts)


@pytest.mark.parametrize("end", ["foot", "head"])
def test_what_hurts_carries_its_caution(end: str) -> None:
    """A far line that might be measured from the wrong face, and an end sawn too soon."""
    feature = _tenon(tenon(end=end, all_round="1/2", end_allowance="1/2"))
    cautions = {found.id: found.caution for found in feature.lines if found.caution}
    shoulder = {"shoulder"} if end == "head" else set()
    assert set(cautions) == {"far-cheek", "far-edge", "tenon-end"} | shoulder
    assert "North face" in cautions["far-cheek"]
    assert "East face" in cautions["far-edge"]


@pytest.mark.parametrize(("end", "lead"), [("foot", ""), ("head", f"{NOT_OVERALL} ")])
def test_the_shoulder_s_caution_names_the_flush_face(end: str, lead: str) -> None:
    """Struck right across, it would be knifed and sawn right across as well."""
    feature = _tenon(tenon(end=end, relief_far="1"))
    assert line(feature.lines, "shoulder").caution == (
        f"{lead}Pencil the West face lightly: it is knifed only outside the cheek lines, as the "
        "tenon runs out to it."
    )


@pytest.mark.parametrize("end", ["foot", "head"])
def test_a_face_that_loses_nothing_is_not_struck_on(end: str) -> None:
    """A line on the stick's own far face takes no wood, so that face is not waste."""
    grain = Face.REFERENCE_END if end == "foot" else Face.FAR_END
    for joint, measured, bare in (
        (tenon(end=end, thickness="4"), {}, Face.FAR_FIRST),
        (tenon(end=end, set_back="0"), {}, Face.FIRST),
        (
            tenon(end=end, set_back="0", thickness="4", relief_far="1"),
            {"first": "4", "second": "5"},
            None,
        ),
    ):
        typed = real({"all": measured})
        built = frame(timber("post"), joint, real={"post": typed})
        (feature,) = features(joint, built)
        stick = built.stick("post")
        faces = tuple(face for face in LONG_FACES if face is not bare) if bare else ()
        assert struck(feature, stick).get("shoulder", ()) == faces
        assert not outlines(feature, stick, grain) or bare
        assert not bare or not outlines(feature, stick, bare)


SHARES = st.integers(0, 999)
"""How far across a span a place lies, in thousandths."""

GRAIN = length("1/64").nm


def _between(low: int, high: int, share: int) -> int:
    """A place inside a span that lies on no line: those are in whole sixty-fourths."""
    return (low + (high - low) * share // 1000) // GRAIN * GRAIN + GRAIN // 2


@settings(max_examples=80)
@given(housed(), SHARES, SHARES, SHARES)
def test_what_no_cut_takes_is_the_tenon_and_the_end_that_goes_in(
    case: Housed, along: int, first: int, second: int
) -> None:
    """Law 4, by either rule: beyond the shoulder the tenon, in the recess the framed end."""
    scene, post = case.scene, case.scene.post
    low, high = scene.beyond(-length("4").nm, case.long)
    x = _between(low, high, along)
    u, v = _between(0, post.real(1), first), _between(0, post.real(2), second)
    if _within(x, scene.beyond(0, case.long)):
        spans = case.tenon(AsCut())
        left = all(_within(at, span) for at, span in zip((x, u, v), spans, strict=True))
    else:
        goes_in = _within(x, scene.beyond(-case.recess, 0))
        left = not goes_in or (u <= post.framed(1) and v <= post.framed(2))
    assert any(cut.takes(x, u, v) for cut in case.sides[0].cuts) is not left


def _within(at: int, span: tuple[int, int]) -> bool:
    return span[0] <= at <= span[1]


def _squared(**words: object) -> Feature:
    """A 6-1/4 x 6-1/2 post of inner 6 x 6, its end 1/2" in a housing in the sill's top."""
    post = timber("post", rule="square", section="6-1/4 x 6-1/2", inner="6 x 6")
    joint = tenon(**({"into": "sill", "at": "4'", "housing": "1/2"} | words))
    return features(joint, frame(post, sill(), joint))[0]


def test_the_lines_of_a_reduced_end_in_order() -> None:
    """The tenon's own, then where the reduction ends, then what the tenon has not struck yet."""
    assert _ids(_squared(end_allowance="1")) == (
        "shoulder",
        "near-cheek",
        "far-cheek",
        "far-edge",
        "reduction-stop",
        "reduced-first",
        "tenon-end",
    )
    assert _ids(_squared(relief_far="1"))[-2:] == ("reduced-first", "reduced-second")


def test_a_reduced_face_is_struck_from_the_reference_side() -> None:
    """Law 2: its far lines read 6" on every stick, and say what comes off this one."""
    feature = _squared()
    found = {
        name: (line(feature.lines, name).at, line(feature.lines, name).beside[0].value)
        for name in ("far-edge", "reduced-first")
    }
    assert found == {"far-edge": lengths("6", "1/2"), "reduced-first": lengths("6", "1/4")}
    for name, face in (("far-edge", "East"), ("reduced-first", "North")):
        assert line(feature.lines, name).caution == f"Never measure this from the {face} face."


def test_the_far_edge_is_the_inner_timber_s_by_square_rule_alone() -> None:
    """A relief is a relief by either rule; so is one that happens to end at the stick's face."""
    titles = {
        "inner": line(_squared().lines, "far-edge").title,
        "relief": line(_squared(relief_far="1").lines, "far-edge").title,
        "mill": line(_tenon(tenon(relief_far="1"), {"second": "5"}).lines, "far-edge").title,
    }
    assert titles == {
        "inner": "Far edge line, East side",
        "relief": "Relief line, East side",
        "mill": "Relief line, East side",
    }


def test_a_side_that_is_an_underside_is_called_one() -> None:
    """`Underside side` would be no word of the trade."""
    tie = {"first_face": "up", "second_face": "south", "reference_end": "west"}
    joint = tenon(timber="tie", end="west", cheeks_from="second", all_round="1")
    (feature,) = features(joint, frame(timber("tie", **tie), joint))
    titles = [line(feature.lines, name).title for name in ("reference-edge", "far-edge")]
    assert titles == ["Relief line, top side", "Relief line, underside"]
