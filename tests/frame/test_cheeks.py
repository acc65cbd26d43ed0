"""The cheeks of a tenon: lines from the reference face, cuts and saw cuts on both sides."""

from collections.abc import Mapping

import pytest

from benchmate.frame.cheeks import (
    BAREFACED,
    LEANS,
    Cheeks,
    cheek_lines,
    cheek_outside,
    near_edge_words,
    saw_cheeks,
    saw_edges,
    saw_shoulder,
)
from benchmate.frame.practice import SAW, STOP_AT_DEPTH
from benchmate.frame.reduction import unmeasured
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Line
from benchmate.model.findings import Severity
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, above, below
from tests.builders import frame, length, real, timber

SET = Setting(off_square=266, bevel=True)
"""A way to set a saw, whichever."""

SHOULDER = below(Axis.ALONG, length("0"), "shoulder")
SOUND: dict[str, object] = {}
SQUARE = {"rule": "square", "inner": "5-1/2 x 5-1/2"}
"""A stick by square rule, half an inch over its inner timber as drawn."""


def _cheeks(
    near: str = "2",
    far: str = "4",
    *,
    axis: Axis = Axis.FIRST,
    measures: str | None = None,
    post: Mapping[str, object] = SOUND,
) -> Cheeks:
    sizes = {"post": real({"foot-tenon": {"first": measures}})} if measures else {}
    stick = frame(timber("post", **dict(post)), real=sizes).stick("post")
    return Cheeks(
        stick=stick,
        end=Face.REFERENCE_END,
        feature="foot-tenon",
        axis=axis,
        near=length(near),
        far=length(far),
    )


def _line(lines: tuple[Line, ...], name: str) -> Line:
    return next(line for line in lines if line.id == name)


def test_both_sides_lose_what_is_beside_the_tenon() -> None:
    """A 2" tenon set back 2" in 6": 2" off each side; on a stick of 6-1/4" 2-1/4" off the far."""
    assert list(_cheeks().sides(reduced=False).values()) == [length("2"), length("2")]
    wide = _cheeks(measures="6-1/4")
    assert wide.sides(reduced=False) == {
        Face.FIRST: length("2"),
        Face.FAR_FIRST: length("2-1/4"),
    }
    assert [cut.planes for cut in wide.cuts(SHOULDER, reduced=False)] == [
        (SHOULDER, below(Axis.FIRST, length("2"), "near-cheek")),
        (SHOULDER, above(Axis.FIRST, length("4"), "far-cheek")),
    ]


def test_cheeks_follow_the_axis_they_are_on() -> None:
    """On the second axis they are set back from the second reference face."""
    cheeks = _cheeks(axis=Axis.SECOND)
    assert set(cheeks.sides(reduced=False)) == {Face.SECOND, Face.FAR_SECOND}
    assert [line.axis for line in cheek_lines(cheeks, reduced=False)] == [Axis.SECOND] * 2


def test_their_lines_come_from_the_reference_face() -> None:
    """Set-back, then set-back and thickness, whatever the stick is over."""
    for measures in ("6", "6-1/4"):
        lines = cheek_lines(_cheeks(measures=measures), reduced=False)
        assert [line.at for line in lines] == [length("2"), length("4")]
    far = _line(lines, "far-cheek")
    assert [beside.value for beside in far.beside] == [length("2"), length("2-1/4")]
    assert far.caution == "Never measure this from the North face."


def test_a_barefaced_tenon_has_one_cheek_line() -> None:
    """Without set-back nothing comes off the reference side, and it says so."""
    bare = _cheeks("0", "2")
    assert list(bare.sides(reduced=False)) == [Face.FAR_FIRST]
    (far,) = cheek_lines(bare, reduced=False)
    assert far.why.startswith(BAREFACED)
    assert (bare.near_words, _cheeks().near_words) == (
        "South face",
        "near cheek, by the South face",
    )


def test_a_family_may_say_elsewhere_that_a_tenon_is_barefaced() -> None:
    """Its far cheek line then says only what it says of any tenon."""
    (far,) = cheek_lines(_cheeks("0", "2"), reduced=False, barefaced="")
    assert far.why == _line(cheek_lines(_cheeks(), reduced=False), "far-cheek").why


def test_a_width_counts_from_the_face_where_its_edge_is_whole() -> None:
    """A relieved edge is named by the face it lies at."""
    stick = frame(timber("post")).stick("post")
    assert near_edge_words(stick, Axis.SECOND, length("1")) == "narrow edge by the West face"
    assert near_edge_words(stick, Axis.SECOND, length("0")) == "West face"


def test_a_far_face_that_is_reduced_to_the_cheek_is_flush_with_it() -> None:
    """By square rule with the far cheek at the inner timber's face the reduction takes the wood."""
    cheeks = _cheeks("2", "5-1/2", post=SQUARE)
    assert list(cheeks.sides(reduced=False)) == [Face.FIRST, Face.FAR_FIRST]
    assert list(cheeks.sides(reduced=True)) == [Face.FIRST]
    assert "Run it on" in _line(cheek_lines(cheeks, reduced=True), "far-cheek").why
    assert "Run it on" not in _line(cheek_lines(cheeks, reduced=False), "far-cheek").why
    inside = _cheeks("2", "4", post=SQUARE)
    assert len(inside.sides(reduced=True)) == 2
    assert "Run it on" not in _line(cheek_lines(inside, reduced=True), "far-cheek").why


def test_a_saw_cut_has_one_depth() -> None:
    """In from its face; the far one follows the stick, so it is measured first."""
    cheeks = _cheeks()
    near = saw_shoulder(cheeks, Face.FIRST, length("2"))
    far = saw_shoulder(cheeks, Face.FAR_FIRST, length("2"), setting=SET, before=LEANS)
    assert (near.id, far.id) == ("saw-first", "saw-far-first")
    assert [(each.value, each.hook) for each in far.readings] == [(length("2"), "North face")]
    assert near.caution == SAW
    assert far.caution == f"{unmeasured(cheeks.stick, Axis.FIRST, cheeks.places)}{SAW}"
    assert (near.setting, far.setting) == (None, SET)
    assert near.why == STOP_AT_DEPTH
    assert far.why == f"{LEANS}{STOP_AT_DEPTH}"
    measured = _cheeks(measures="6")
    assert saw_shoulder(measured, Face.FAR_FIRST, length("2")).caution == SAW


def test_the_cheeks_are_cut_once_if_at_all() -> None:
    """As thick as its stick a tenon has none to cut."""
    (task,) = saw_cheeks(_cheeks(), reduced=False)
    assert [reading.value for reading in task.readings] == [length("2")]
    assert task.faces == (Face.REFERENCE_END, Face.SECOND, Face.FAR_SECOND)
    assert saw_cheeks(_cheeks("0", "6"), reduced=False) == ()


def test_narrow_edges_are_cut_from_where_the_cheeks_look() -> None:
    """Down to the width that is left on, hooked on the near edge."""
    task = saw_edges(Face.FAR_END, Face.SECOND, length("5"), "narrow edge by the top")
    assert task.faces == (Face.FAR_END, Face.SECOND, Face.SECOND.opposite)
    (reading,) = task.readings
    assert (reading.value, reading.hook) == (length("5"), "narrow edge by the top")
    assert task.caution == SAW


@pytest.mark.parametrize(
    ("far", "measures", "post", "found"),
    [
        ("4", "4", {}, False),
        ("4", "3-63/64", {}, True),
        ("5-1/2", "6", SQUARE, False),
        ("5-33/64", "6", SQUARE, True),
    ],
)
def test_a_cheek_in_the_air(far: str, measures: str, post: dict[str, str], *, found: bool) -> None:
    """Law 7: it is told, never made thinner; by square rule it has to lie in the inner timber."""
    cheeks = _cheeks("2", far, measures=measures, post=post)
    told = cheek_outside(cheeks, "some-code", _tape())
    assert (told is not None) is found
    if told is not None:
        assert (told.code, told.severity) == ("some-code", Severity.STOP)
        assert ("inner timber" in told.message) is bool(post)


def _tape() -> Tape:
    return frame(timber("post")).project.tape


def test_sizes_count_as_laid_out() -> None:
    """Thickness, and the stick as it is and as the frame counts on it."""
    cheeks = _cheeks(measures="6-1/4", post=SQUARE)
    assert (cheeks.thickness, cheeks.real, cheeks.framed) == (
        length("2"),
        length("6-1/4"),
        length("5-1/2"),
    )
    assert cheeks.places == ("foot-tenon", "foot")
