"""The lines, cuts and tasks of a chamfer."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.frame.frame import Real
from benchmate.joinery import FAMILIES
from benchmate.joinery.chamfer.family import FAMILY, features
from benchmate.joinery.chamfer.record import ARRISES, Chamfer
from benchmate.layout.outlines import struck
from benchmate.model.directions import Face
from benchmate.model.feature import Feature, Stage
from benchmate.model.progress import Measured
from tests.builders import chamfer, corners, frame, length, line, sill, timber
from tests.corner import measured

SIXTYFOURTH = length("1/64").nm


def _on(post: str) -> Feature:
    built = corners()
    (found,) = (work for work in built.project.works if isinstance(work, Chamfer))
    return next(feature for feature in features(found, built) if feature.timber == post)


def test_the_catalogue_knows_the_family() -> None:
    """A chamfer has a table of its own."""
    assert FAMILY in FAMILIES
    assert (FAMILY.name, FAMILY.table, FAMILY.record) == ("chamfer", "chamfer", Chamfer)


@pytest.mark.parametrize(
    ("post", "inside"),
    [("post-sw", ("North face", "East face")), ("post-se", ("North face", "West face"))],
)
def test_the_inside_arris_is_mirrored_with_the_post(post: str, inside: tuple[str, str]) -> None:
    """`far-far` is across from the reference arris: the inside of either corner."""
    feature = _on(post)
    stick = corners().stick(post)
    faces = struck(feature, stick).get("line", ())
    assert tuple(stick.pose.words(face) for face in faces) == inside
    assert struck(feature, stick).get("foot-stop", ()) == faces
    assert struck(feature, stick).get("head-stop", ()) == faces


def test_every_timber_named_gets_its_own() -> None:
    """One record, two posts, the same stops on both."""
    at = [{found.id: found.at for found in _on(post).lines} for post in ("post-sw", "post-se")]
    assert (
        at[0]
        == at[1]
        == {
            "line": length("3/4"),
            "foot-stop": length("15-1/2"),
            "foot-block": length("13-1/2"),
            "head-stop": length("7' 5"),
            "head-block": length("7' 7"),
        }
    )


def test_the_far_stop_tells_its_distance_from_the_far_shoulder_beside() -> None:
    """Common practice, no source: 6" and 4" below the head shoulder."""
    lines = _on("post-sw").lines
    assert line(lines, "head-stop").beside[0].value == length("6")
    assert line(lines, "head-block").beside[0].value == length("4")
    assert line(lines, "foot-stop").beside == ()
    assert [found.value for found in line(lines, "foot-block").beside] == [length("2")]


@given(
    st.sampled_from(tuple(ARRISES)),
    measured(5, 7),
    st.integers(0, 7 * 64),
    st.integers(0, 7 * 64),
)
def test_a_chamfer_takes_the_triangle_at_its_arris(
    word: str, size: Measured, first: int, second: int
) -> None:
    """Law 4: the two depths in from the real arris's own faces come to at most the leg."""
    cut = chamfer(arrises=[word])
    built = frame(timber("post"), cut, real={"post": Real({"inside-chamfer": size})})
    (feature,) = features(cut, built)
    (solid,) = feature.cuts
    section = built.stick("post").section("inside-chamfer")
    u, v = first * SIXTYFOURTH, second * SIXTYFOURTH
    in_first = u if word.startswith("first") else section.first.nm - u
    in_second = v if word.endswith("second") else section.second.nm - v
    inside = in_first + in_second <= length("3/4").nm
    assert solid.takes(length("2'").nm, u, v) is inside
    assert not solid.takes(length("12").nm - 1, u, v)
    assert not solid.takes(length("7' 5").nm + 1, u, v)


def test_a_chamfer_on_several_arrises_has_a_cut_for_each() -> None:
    """The gauge line is one step, and its cuts are as many as its arrises."""
    cut = chamfer(arrises=list(ARRISES))
    (feature,) = features(cut, frame(timber("post"), cut))
    assert len(feature.cuts) == 4
    assert [found.id for found in feature.lines].count("line") == 1


def test_a_level_timber_names_its_stops_by_its_own_ends() -> None:
    """A sill has no foot: its stops are at its west and east ends."""
    stops = {
        "near_stop": {"shoulder": "west", "distance": "12"},
        "far_stop": {"shoulder": "east", "distance": "6"},
    }
    cut = chamfer(on=["sill"], **stops)
    (feature,) = features(cut, frame(sill(), cut))
    assert {found.id: found.at for found in feature.lines} == {
        "line": length("3/4"),
        "west-end-stop": length("12"),
        "west-end-block": length("10"),
        "east-end-stop": length("15' 6"),
        "east-end-block": length("15' 8"),
    }


def test_lines_come_after_the_joints_and_cutting_after_the_fit() -> None:
    """Every line belongs to the chamfer stage, and the cut to the finish."""
    feature = _on("post-sw")
    assert {found.stage for found in feature.lines} == {Stage.CHAMFER}
    (task,) = feature.tasks
    assert (task.stage, task.faces) == (Stage.FINISH, (Face.FAR_FIRST, Face.FAR_SECOND))
