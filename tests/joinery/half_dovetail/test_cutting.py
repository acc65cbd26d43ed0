"""What is done at a tail, in order, each with one figure."""

from typing import Any

import pytest

from benchmate.frame.practice import CHAINSAW, CHISEL, SAW
from benchmate.joinery.half_dovetail.cutting import COUNTED, tail_sizes, tail_tasks
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Stage, Task
from tests.builders import length, real, set_in_words, task
from tests.joinery.half_dovetail.bents import SQUARE, Word, bent, tail_of

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)


def _tasks(**words: Word) -> tuple[Task, ...]:
    return tail_tasks(tail_of(bent(**words)), TAPE)


def test_the_slope_is_sawn_before_the_cheeks_take_its_line() -> None:
    """Shoulders, tail, cheeks; then pared, then measured as cut."""
    assert [each.id for each in _tasks()] == [
        "section",
        "knife",
        "saw-second",
        "saw-far-second",
        "saw-far-first",
        "saw-tail",
        "saw-cheeks",
        "pare",
        "as-cut",
    ]
    stages = [each.stage for each in _tasks(own=SQUARE, past="1")]
    assert stages[:4] == [Stage.MEASURE, Stage.KNIFE, Stage.KNIFE, Stage.CUT]


def test_square_rule_and_a_land_add_their_cuts() -> None:
    """Each of them once."""
    far = [each.id for each in _tasks(own=SQUARE, tie_first="down", post_first="east")]
    assert far.count("saw-straight") == 1
    assert far.count("saw-far-first") == 1
    past = [each.id for each in _tasks(depth="6", past="1")]
    assert past.count("saw-land") == 1
    reduced = [each.id for each in _tasks(own=SQUARE)]
    assert {"knife-reduction", "reduce-first", "reduce-second"} <= set(reduced)


@pytest.mark.parametrize(
    ("words", "sawn"),
    [
        ({}, {"saw-second": "2", "saw-far-second": "2", "saw-far-first": "1"}),
        ({"depth": "6"}, {"saw-second": "2", "saw-far-second": "2", "saw-far-first": "2"}),
        ({"tie_first": "down"}, {"saw-second": "2", "saw-far-second": "2", "saw-first": "1"}),
        ({"set_back": "0"}, {"saw-far-second": "4", "saw-far-first": "1"}),
        (
            {"own": SQUARE, "tie_first": "down", "post_first": "east"},
            {"saw-second": "2", "saw-far-second": "2", "saw-first": "1", "saw-far-first": "1/2"},
        ),
        (
            {"real": {"tie": real({"all": {"first": "8-1/4", "second": "6-1/8"}})}, "depth": "7"},
            {"saw-second": "2", "saw-far-second": "2-1/8", "saw-far-first": "1-1/4"},
        ),
    ],
)
def test_the_shoulder_is_sawn_face_by_face(words: dict[str, Any], sawn: dict[str, str]) -> None:
    """One depth to a face: nothing on the face over the straight edge, the flare under the tail."""
    found = {
        each.id: each.readings[0].value
        for each in _tasks(**words)
        if each.id.startswith("saw-") and each.draws == "shoulder"
    }
    assert found == {name: length(deep) for name, deep in sawn.items()}


def test_a_face_the_tenon_runs_out_to_is_knifed_beside_it_only() -> None:
    """The top outside the cheeks; the reference side of a barefaced one outside the tail."""
    knife = task(_tasks(), "knife")
    assert knife.caution == (
        "Knife the top face only outside the cheek lines: the tenon runs out to it there."
    )
    bare = task(_tasks(set_back="0"), "knife").caution
    assert "Knife the South face only on the waste side of the tail line" in bare
    square = {"own": SQUARE, "tie_first": "down", "post_first": "east"}
    assert task(_tasks(**square), "knife").caution == ""


def test_the_tail_is_sawn_to_its_setting() -> None:
    """7" from the straight edge at the shoulder, 8" at its deep end."""
    saw = task(_tasks(), "saw-tail")
    assert [(each.value, each.hook) for each in saw.readings] == [(length("7"), "top face")]
    assert [each.value for each in saw.beside] == [length("8")]
    assert 'tongue 1-1/2"' in set_in_words(saw.setting)
    assert saw.draws == "tail"
    square = task(_tasks(own=SQUARE, tie_first="down"), "saw-tail")
    assert square.readings[0].hook == "straight edge"


def test_what_is_cut_and_pared_to_a_figure() -> None:
    """The tail's edge past the post, the straight edge, and what both are pared to."""
    past = _tasks(depth="6", past="1")
    for name in ("saw-land", "pare"):
        read = [(each.value, each.hook) for each in task(past, name).readings]
        assert read == [(length("7"), "top face")]
    assert [each.value for each in task(past, "pare").beside] == [length("2")]
    far = _tasks(own=SQUARE, tie_first="down", post_first="east")
    straight = task(far, "saw-straight").readings
    assert [(each.value, each.hook) for each in straight] == [(length("1/2"), "top face")]


def test_what_hurts_carries_its_caution() -> None:
    """Saws, the chainsaw for the long rip, and the chisel."""
    found = {each.id: each.caution for each in _tasks(depth="6", past="1")}
    assert found["saw-tail"] == f"{SAW} {CHAINSAW}"
    assert found["saw-land"] == found["saw-cheeks"] == SAW
    assert found["pare"] == CHISEL
    assert found["as-cut"] == COUNTED
    straight = {"own": SQUARE, "tie_first": "down", "post_first": "east"}
    assert task(_tasks(**straight), "saw-straight").caution == SAW


def test_three_sizes_can_be_typed() -> None:
    """The thickness and the tenon's two depths, from its straight edge."""
    shape = tail_of(bent())
    assert [(size.name, size.laid_out) for size in tail_sizes(shape)] == [
        ("thickness", length("2")),
        ("width", length("7")),
        ("length", length("8")),
    ]
    done = task(_tasks(), "as-cut")
    assert (done.asks, done.lasting) == (Asks.AS_CUT, False)
    assert len({each.name for each in done.readings}) == 3
    cut = {"tie": real(as_cut={"west-end-tenon": {"length": "7-7/8"}})}
    assert [each.value for each in task(_tasks(real=cut), "as-cut").readings] == [
        length("2"),
        length("7"),
        length("7-7/8"),
    ]


def test_a_tenon_as_wide_as_its_tie_has_no_cheeks_to_cut() -> None:
    """Nor a caution to knife beside them."""
    tasks = _tasks(set_back="0", thickness="6")
    assert "saw-cheeks" not in [each.id for each in tasks]
    assert "top face" not in task(tasks, "knife").caution
    assert task(tasks, "knife").faces[-1] is Face.FAR_END
