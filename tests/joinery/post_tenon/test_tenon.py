"""The lines, cuts and tasks of the tenon's own side."""

from collections.abc import Mapping

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.joinery.post_tenon.family import features
from benchmate.joinery.post_tenon.record import PostTenon
from benchmate.layout.outlines import struck_on
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Asks, Feature, Stage
from tests.builders import frame, length, line, real, tenon, timber
from tests.corner import texts

NARROW = (Face.SECOND, Face.FAR_SECOND)
BROAD = (Face.FIRST, Face.FAR_FIRST)


def _tenon(joint: PostTenon, measured: Mapping[str, str] | None = None) -> Feature:
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
    assert {name: struck_on(feature, stick, name) for name in _ids(feature)} == {
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
    assert struck_on(feature, stick, "far-cheek") == (*BROAD, Face.REFERENCE_END)
    assert struck_on(feature, stick, "reference-edge") == (*NARROW, Face.REFERENCE_END)


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


def test_the_saw_s_depths_are_what_comes_off_each_face() -> None:
    """On an odd stick the far depths follow the stick, the reference depths the lines (law 2)."""
    feature = _tenon(tenon(all_round="1/2"), {"first": "6-1/16", "second": "5-7/8"})
    saw = next(task for task in feature.tasks if task.id == "saw-shoulders")
    assert {reading.hook: reading.value for reading in saw.readings} == {
        "South face": length("2"),
        "North face": length("2-1/16"),
        "West face": length("1/2"),
        "East face": length("3/8"),
    }


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


def test_a_face_that_loses_nothing_has_no_depth() -> None:
    """No figure tells the saw to go nothing deep."""
    feature = _tenon(tenon(set_back="0", thickness="4"))
    saw = next(task for task in feature.tasks if task.id == "saw-shoulders")
    assert {reading.hook: reading.value for reading in saw.readings} == {"North face": length("2")}


def test_the_saw_goes_in_only_where_wood_comes_off() -> None:
    """A kerf on a face the tenon runs out to would cut the tenon itself."""
    for joint, faces in (
        (tenon(relief_reference="1"), LONG_FACES[:3]),
        (tenon(set_back="0"), (Face.FAR_FIRST,)),
        (tenon(all_round="1/2"), LONG_FACES),
    ):
        saw = next(task for task in _tenon(joint).tasks if task.id == "saw-shoulders")
        assert saw.faces == faces


def test_a_cheek_in_the_air_has_a_depth_below_zero() -> None:
    """Law 7: what the stick lacks is shown as less than nothing, never clamped."""
    feature = _tenon(tenon(), {"first": "3-7/8"})
    saw = next(task for task in feature.tasks if task.id == "saw-shoulders")
    depths = {reading.hook: reading.value for reading in saw.readings}
    assert depths["North face"] == length("-1/8")


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
    """Saw, chisel, and a far line that might be measured from the wrong face."""
    feature = _tenon(tenon(end=end, all_round="1/2", end_allowance="1/2"))
    hurts = {"far-cheek", "far-edge", "tenon-end"}
    assert {found.id for found in feature.lines if found.caution} >= hurts
    tools = {"saw-shoulders", "saw-cheeks", "pare", "trim-end"}
    assert {task.id for task in feature.tasks if task.caution} == tools


def test_the_framer_is_asked_for_the_section_and_the_sizes_as_cut() -> None:
    """Two tasks ask for real sizes, and their ticks never go out of date."""
    tasks = {task.id: task for task in _tenon(tenon()).tasks}
    assert {name: task.asks for name, task in tasks.items() if task.asks} == {
        "section": Asks.SECTION,
        "as-cut": Asks.TENON,
    }
    assert {name for name, task in tasks.items() if not task.lasting} == {"section", "as-cut"}


def test_the_sizes_as_cut_are_shown_once_typed() -> None:
    """What was laid out until then, what was cut afterwards."""
    joint = tenon(relief_reference="1-1/4")
    typed = real(as_cut={"foot-tenon": {"width": "4-11/16"}})
    (feature,) = features(joint, frame(timber("post"), joint, real={"post": typed}))
    task = next(task for task in feature.tasks if task.id == "as-cut")
    assert [reading.value for reading in task.readings] == [
        length("2"),
        length("4-11/16"),
        length("5"),
    ]
