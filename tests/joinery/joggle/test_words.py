"""What is said of an abutment, and how its square is set."""

import pytest

from benchmate.joinery.joggle.words import ENGINEER, end_setting, face_setting, looks_words
from tests.builders import set_in_words
from tests.joinery.joggle.test_shape import made
from tests.joinery.joggle.trusses import truss


def test_the_engineer_decides() -> None:
    """No figure for notch or relish is a rule (trade notes 2.7: what is remembered is no data)."""
    assert ENGINEER.endswith("the engineer decides.")


@pytest.mark.parametrize(
    ("looks", "disputed"),
    [("bisecting", False), ("square to the face", False), ("square to the rake", True)],
)
def test_where_the_trade_disagrees_it_is_said(looks: str, disputed: bool) -> None:
    """Rogers-rules: square to the thrust; Strut and Rivington-strut call that wrong (2.1, 2.7)."""
    words = looks_words(made(truss(joints={"heel": {"abutment": looks}})))
    assert ("call this way wrong" in words) is disputed


LEVEL = 'strike along the blade: blade 12", tongue 9"; saw 53.1° off square'
UNDER = 'strike along the tongue: blade 12", tongue 3-1/2"; saw 16.3° off square'
PLUMB = 'strike along the tongue: blade 12", tongue 9"; saw 36.9° off square'


@pytest.mark.parametrize(
    ("name", "setting"),
    [
        ("heel", LEVEL),
        ("crown", PLUMB),
        ("strut-foot", PLUMB),
        (
            "strut-head",
            UNDER,
        ),
    ],
)
def test_the_face_line_is_set_like_the_face(name: str, setting: str) -> None:
    """Level on a tie, plumb on a post by run and rise; in a rafter by the angle the two make.

    Trade notes 7.3, NAV-65: 12 on the body, the rise on the tongue. Two timbers that make 73.74
    degrees: 12 x cot is 12 x 0.28 / 0.96 = 3-1/2".
    """
    frame = truss()
    assert set_in_words(face_setting(made(frame, name), frame.project.tape)) == setting


def test_the_abutment_is_set_by_its_own_angle() -> None:
    """The heel's halves 36.87 degrees: 4" to 12", 18.4 off square; a square one needs none."""
    frame = truss()
    end = made(frame)
    assert set_in_words(end_setting(end, end.abutment, frame.project.tape)) == (
        'strike along the tongue: blade 12", tongue 4"; saw 18.4° off square'
    )
    square = truss(joints={"heel": {"abutment": "square to the rake"}})
    end = made(square)
    assert end_setting(end, end.abutment, square.project.tape) is None
