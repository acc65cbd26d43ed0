"""Which faces lose wood all across, which beside the tenon only, and which nothing."""

import pytest

from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.flush import barefaced, depths, lightly, only_outside, shouldered
from benchmate.joinery.tenon.shape import shape
from benchmate.layout.outlines import struck
from benchmate.model.directions import LONG_FACES
from tests.builders import frame, lengths, sill, tenon, timber
from tests.joinery.tenon.tenons import SOUND, Case

SOUTH, WEST, NORTH, EAST = LONG_FACES
"""The check post's faces as they come up in rolling, its reference faces first."""


def _only(*told: tuple[str, str]) -> str:
    """The caution for faces and the lines they are struck outside of."""
    return " ".join(
        f"Knife the {face} face only outside the {lines}: the tenon runs out to it there."
        for face, lines in told
    )


def test_the_cases_hold_every_kind_of_face() -> None:
    """Among them are faces cut across, flush ones and whole ones, and tenons without any cheek."""
    kinds = [{(bool(case.comes_off(f)), case.is_flush(f)) for f in LONG_FACES} for case in SOUND]
    assert set.union(*kinds) == {(True, False), (False, True), (False, False)}
    assert {(True, False)} in kinds
    assert {(False, False)} in kinds


def test_depths_are_what_the_cuts_take_off_each_face() -> None:
    """Law 4: no depth is told that the cuts do not take, on any stick, at either end."""
    for case in SOUND:
        taken = {face: case.comes_off(face) for face in LONG_FACES}
        assert depths(case.shape) == taken, case


def test_faces_with_a_shoulder_are_those_it_is_struck_on() -> None:
    """Law 4: what is knifed is what is struck, read off the cuts."""
    for case in SOUND:
        faces = struck(case.feature, case.frame.stick("post")).get("shoulder", ())
        assert shouldered(case.shape) == tuple(f for f in faces if not f.is_end), case


def test_the_caution_names_each_face_that_is_cut_in_part_and_no_other() -> None:
    """A face cut all across needs no warning, nor one on which nothing is cut."""
    for case in SOUND:
        said = only_outside(case.shape)
        pose = case.frame.stick("post").pose
        named = {face for face in LONG_FACES if f"the {pose.words(face)} only" in said}
        assert named == {face for face in LONG_FACES if case.is_flush(face)}, case


@pytest.mark.parametrize(
    ("case", "deep", "faces", "caution"),
    [
        (
            Case(tenon()),
            ("2", "0", "2", "0"),
            LONG_FACES,
            _only(("West", "cheek lines"), ("East", "cheek lines")),
        ),
        (
            Case(tenon(relief_reference="1")),
            ("2", "1", "2", "0"),
            LONG_FACES,
            _only(("East", "cheek lines")),
        ),
        (
            Case(tenon(relief_far="1-1/4"), second="6-1/8"),
            ("2", "0", "2", "1-3/8"),
            LONG_FACES,
            _only(("West", "cheek lines")),
        ),
        (
            Case(tenon(all_round="1/2"), first="6-1/16"),
            ("2", "1/2", "2-1/16", "1/2"),
            LONG_FACES,
            "",
        ),
        (
            Case(tenon(set_back="0")),
            ("0", "0", "4", "0"),
            (WEST, NORTH, EAST),
            _only(("West", "cheek line"), ("East", "cheek line")),
        ),
        (
            Case(tenon(set_back="0", relief_reference="1")),
            ("0", "1", "4", "0"),
            LONG_FACES,
            _only(("South", "relief line"), ("East", "cheek line")),
        ),
        (
            Case(tenon(thickness="4")),
            ("2", "0", "0", "0"),
            (SOUTH, WEST, EAST),
            _only(("West", "cheek line"), ("East", "cheek line")),
        ),
        (
            Case(tenon(thickness="4"), first="6-1/64"),
            ("2", "0", "1/64", "0"),
            LONG_FACES,
            _only(("West", "cheek lines"), ("East", "cheek lines")),
        ),
        (
            Case(tenon(set_back="0", thickness="6", relief_far="1")),
            ("0", "0", "0", "1"),
            (SOUTH, NORTH, EAST),
            _only(("South", "relief line"), ("North", "relief line")),
        ),
        (Case(tenon(set_back="0", thickness="6")), ("0", "0", "0", "0"), (), ""),
        (
            Case(tenon(cheeks_from="second", relief_reference="1")),
            ("1", "2", "0", "2"),
            LONG_FACES,
            _only(("North", "cheek lines")),
        ),
    ],
    ids=[
        "no relief",
        "reference edge relieved",
        "far edge relieved on a wide stick",
        "all round on a thick stick",
        "barefaced",
        "barefaced and relieved",
        "far cheek on the far face",
        "far cheek a hair inside the far face",
        "relief alone",
        "nothing comes off",
        "cheeks from the second face",
    ],
)
def test_the_faces_of_a_tenon(
    case: Case, deep: tuple[str, ...], faces: tuple[object, ...], caution: str
) -> None:
    """Common practice, no source: what comes off each face, south, west, north, east."""
    found = depths(case.shape)
    assert tuple(found) == LONG_FACES
    assert tuple(found.values()) == lengths(*deep)
    assert shouldered(case.shape) == faces
    assert only_outside(case.shape) == caution


def test_the_caution_says_what_is_done() -> None:
    """Striking is not knifing: there are no cheek lines yet to stay outside of."""
    told = lightly(Case(tenon(relief_far="1")).shape)
    assert told.startswith("Pencil the West face lightly: it is knifed only outside the cheek")


@pytest.mark.parametrize(
    ("words", "shoulder"),
    [
        ({"set_back": "0"}, "North"),
        ({"thickness": "4"}, "South"),
        ({"set_back": "0", "cheeks_from": "second"}, "East"),
        ({"thickness": "4", "cheeks_from": "second"}, "West"),
    ],
)
@pytest.mark.parametrize("end", ["foot", "head"])
def test_a_barefaced_tenon_says_where_its_one_shoulder_is(
    end: str, words: dict[str, str], shoulder: str
) -> None:
    """One shoulder only makes a timber left or right (trade.md 2.1, TFG-bare and TFG-gloss)."""
    case = Case(tenon(end=end, **words))
    said = f"its one cheek shoulder is on the {shoulder} face."
    assert said in barefaced(case.shape)
    struck_line = next(each for each in case.feature.lines if each.id == "shoulder")
    assert barefaced(case.shape) in struck_line.caution


def test_other_tenons_are_not_barefaced() -> None:
    """Two cheek shoulders, or none at all: neither has a hand by it."""
    for words in ({}, {"set_back": "0", "thickness": "6"}, {"relief_reference": "1"}):
        assert barefaced(Case(tenon(**words)).shape) == ""


def test_a_cheek_in_the_air_has_a_depth_below_zero() -> None:
    """Law 7: what the stick lacks is shown as less than nothing, never clamped."""
    found = depths(Case(tenon(), first="3-7/8").shape)
    assert tuple(found.values()) == lengths("2", "0", "-1/8", "0")


@pytest.mark.parametrize(
    ("words", "deep", "flush"),
    [
        ({}, ("2", "0", "2-1/4", "0"), {"West": "lines", "East": "lines"}),
        ({"relief_far": "1"}, ("2", "0", "2-1/4", "1-1/2"), {"West": "lines"}),
        ({"relief_reference": "1"}, ("2", "1", "2-1/4", "0"), {"East": "lines"}),
        ({"thickness": "4"}, ("2", "0", "0", "0"), {"West": "line", "East": "line"}),
        ({"housing": "0"}, ("2", "0", "2-1/4", "1/2"), {"West": "lines"}),
    ],
    ids=["reduced to the edge", "relieved", "at the reference", "to the cheek too", "not housed"],
)
def test_a_face_reduced_to_the_tenon_s_own_line_has_no_shoulder(
    words: dict[str, str], deep: tuple[str, ...], flush: dict[str, str]
) -> None:
    """The reduction takes that wood back beyond the shoulder: a kerf there would be in the way."""
    post = timber("post", rule="square", section="6-1/4 x 6-1/2", inner="6 x 6")
    joint = tenon(**({"into": "sill", "at": "4'", "housing": "1/2"} | words))
    built = frame(post, sill(), joint)
    assert tuple(depths(shape(joint, built)).values()) == lengths(*deep)
    assert only_outside(shape(joint, built)) == _only(
        *((face, f"cheek {lines}") for face, lines in flush.items())
    )
    tasks = [task.id for task in features(joint, built)[0].tasks]
    sawn = [f"saw-{face.value.replace(' ', '-')}" for face in LONG_FACES]
    assert [task for task in tasks if task in sawn] == [
        task for task, depth in zip(sawn, lengths(*deep), strict=True) if depth
    ]
    assert ("saw-edges" in tasks) is (deep[1] != "0" or deep[3] != "0")
