"""The tie's side: the cuts, and lines from the reference faces."""

import pytest

from benchmate.frame.practice import NOT_OVERALL
from benchmate.frame.reduction import STOP_LINE
from benchmate.joinery.half_dovetail.tail import BOTH_POINTS, tail_cuts, tail_lines, waiting
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Line
from benchmate.model.solids import Axis
from tests.builders import length, named, real, set_in_words
from tests.joinery.half_dovetail.bents import SQUARE, Word, bent, tail_of

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)
MEASURED = {"post": real({"tie-post-mortise": {"first": "8", "second": "8"}})}


def _lines(**words: Word) -> dict[str, Line]:
    return named(tail_lines(tail_of(bent(**words)), TAPE))


def _struck(**words: Word) -> list[set[str | None]]:
    """The lines that bound each cut."""
    return [{plane.line for plane in cut.planes} for cut in tail_cuts(tail_of(bent(**words)))]


def test_three_cuts_make_a_tail() -> None:
    """Beside either cheek and outside the slope, all beyond the shoulder."""
    assert _struck() == [
        {"shoulder", "near-cheek"},
        {"shoulder", "far-cheek"},
        {"shoulder", "tail"},
    ]
    assert _struck(set_back="0") == [{"shoulder", "far-cheek"}, {"shoulder", "tail"}]


def test_past_the_post_its_edge_is_cut_too() -> None:
    """Where the tie is deeper than the tail."""
    assert {"shoulder", "tail-edge"} in _struck(depth="6", past="1")
    assert {"shoulder", "tail-edge"} not in _struck(depth="7", past="1")


def test_by_square_rule_the_rest_goes() -> None:
    """A straight edge on a far face, with a shoulder only where no reduction takes it."""
    own = {"own": SQUARE, "tie_first": "down"}
    assert {"shoulder", "straight-edge"} in _struck(post_first="east", **own)
    reduced = _struck(post_first="west", **own)
    assert {"shoulder", "straight-edge"} not in reduced
    assert {STOP_LINE, "straight-edge"} in reduced
    past = _struck(own=SQUARE, past="1")
    assert {STOP_LINE, "tail-edge"} in past
    assert {"shoulder", "tail-edge"} not in past


def test_the_tail_is_set_off_at_both_its_ends() -> None:
    """7" on the shoulder line and 8" at the tenon's end, from the top; 1 in 8 on the square."""
    line = _lines()["tail"]
    assert line.slant is not None
    assert (line.axis, line.at) == (Axis.FIRST, length("7"))
    assert (line.slant.start.along, line.slant.start.deep) == (length("120"), length("7"))
    assert (line.slant.finish.along, line.slant.finish.deep) == (length("128"), length("8"))
    assert line.slant.where == ("shoulder line", "tenon's end")
    assert set_in_words(line.slant.setting) == (
        'strike along the blade: blade 12", tongue 1-1/2"; 7.1° to the long edge'
    )
    assert line.caution == BOTH_POINTS
    assert [each.value for each in line.beside] == [length("1")]


def test_measured_from_below_its_own_depths_stand_beside() -> None:
    """The line's figures then count from the underside: 1" and nothing."""
    line = _lines(tie_first="down")["tail"]
    assert line.slant is not None
    assert (line.slant.start.deep, line.slant.finish.deep) == (length("1"), length("0"))
    assert [each.value for each in line.beside] == [length("1"), length("7"), length("8")]


def test_past_the_post_the_slope_ends_at_the_far_face() -> None:
    """So that is struck, lightly and on all four faces; a flush tenon has no such line."""
    lines = _lines(past="2")
    assert (lines["far-face"].at, lines["far-face"].faces) == (length("128"), LONG_FACES)
    assert "do not saw" in lines["far-face"].caution
    slant = lines["tail"].slant
    assert slant is not None
    assert (slant.finish.along, slant.where[1]) == (length("128"), "far face line")
    assert "far-face" not in _lines()


def test_the_tail_s_edge_past_the_post() -> None:
    """As deep as the tail, from the reference side."""
    assert _lines(depth="6", past="1")["tail-edge"].at == length("7")
    far = _lines(depth="6", past="1", tie_first="down")["tail-edge"]
    assert far.at == length("1")
    assert [each.value for each in far.beside] == [length("7")]


@pytest.mark.parametrize(
    ("words", "beside"),
    [
        ({}, [("8", "tenon beyond it")]),
        (
            {"past": "2"},
            [
                ("10", "tenon beyond it"),
                ("2", "proud of Post's West face, at the tenon's end"),
            ],
        ),
        (
            {"held_short": "1/4"},
            [
                ("7-3/4", "tenon beyond it"),
                ("1/4", "short of Post's West face, at the tenon's end"),
            ],
        ),
    ],
)
def test_the_shoulder_says_how_long_the_tenon_is(
    words: dict[str, str], beside: list[tuple[str, str]]
) -> None:
    """And where its end comes, unless it is flush."""
    line = _lines(**words)["shoulder"]
    assert [(each.value, each.words) for each in line.beside] == [
        (length(value), said) for value, said in beside
    ]
    assert line.why.endswith("goes right through Post.")


def test_a_far_shoulder_is_not_overall_and_waits() -> None:
    """For the post's faces; once they are measured nothing is unsure."""
    line = _lines()["shoulder"]
    assert line.caution.endswith(NOT_OVERALL)
    assert "Measure Post's East face at the joint first" in line.caution
    assert _lines(real=MEASURED)["shoulder"].caution == NOT_OVERALL


def test_a_reference_shoulder_waits_for_the_tenon_s_length_alone() -> None:
    """It is struck from its own end."""
    shape = tail_of(bent(reference=True))
    assert "Post's East face" in waiting(shape)
    assert _lines(reference=True)["shoulder"].caution == waiting(shape)
    assert waiting(tail_of(bent(reference=True, real=MEASURED))) == ""


def test_the_straight_edge_is_struck_by_square_rule() -> None:
    """At the inner timber, from the reference face; run on where the reduction shares it."""
    own = {"own": SQUARE, "tie_first": "down"}
    line = _lines(post_first="east", **own)["straight-edge"]
    assert line.at == length("7-1/2")
    assert [each.value for each in line.beside] == [length("1/2"), length("6-1/2")]
    assert "Run it on" not in line.why
    assert "Run it on" in _lines(**own)["straight-edge"].why
    assert "straight-edge" not in _lines(own=SQUARE)


def test_the_order_is_a_framer_s() -> None:
    """Shoulder, cheeks, tail; reductions last."""
    assert list(_lines(own=SQUARE, past="1")) == [
        "shoulder",
        "near-cheek",
        "far-cheek",
        "far-face",
        "tail",
        "tail-edge",
        STOP_LINE,
        "reduced-second",
    ]
