"""What is done at a diminished tenon, in order, each with one figure."""

from typing import Any

import pytest

from benchmate.frame.practice import CHISEL, SAW
from benchmate.joinery.diminished.cutting import COUNTED, tenon_sizes, tenon_tasks
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.feature import Asks, Stage, Task
from tests.builders import length, real, set_in_words, task
from tests.joinery.diminished.ledges import SQUARE, Word, end_of, ledge

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)


def _tasks(**words: Word) -> tuple[Task, ...]:
    return tenon_tasks(end_of(ledge(**words)), TAPE)


def test_shoulders_come_before_cheeks() -> None:
    """Then the narrow edges, if any; pared, and measured as cut."""
    assert [each.id for each in _tasks()] == [
        "section",
        "knife",
        "saw-second",
        "saw-far-second",
        "saw-cheeks",
        "pare",
        "as-cut",
    ]
    relieved = [each.id for each in _tasks(relief_reference="1", own=SQUARE)]
    assert relieved.index("saw-first") < relieved.index("saw-cheeks") < relieved.index("saw-edges")
    assert {"knife-reduction", "reduce-first", "reduce-second"} <= set(relieved)
    stages = [each.stage for each in _tasks(own=SQUARE)]
    assert stages == sorted(stages)
    assert stages[0] is Stage.MEASURE


@pytest.mark.parametrize(
    ("words", "sawn"),
    [
        ({}, {"saw-second": "2", "saw-far-second": "2"}),
        ({"lying": True}, {"saw-first": "2", "saw-far-first": "4"}),
        (
            {"relief_reference": "1", "relief_far": "1/2", "set_back": "0"},
            {"saw-far-second": "4", "saw-first": "1", "saw-far-first": "1/2"},
        ),
        (
            {"real": {"girt": real({"all": {"second": "6-1/8"}})}},
            {"saw-second": "2", "saw-far-second": "2-1/8"},
        ),
    ],
)
def test_the_shoulder_is_sawn_face_by_face(words: dict[str, Any], sawn: dict[str, str]) -> None:
    """One depth to a face, and the same setting on all."""
    found = [each for each in _tasks(**words) if each.draws == "shoulder" and "saw" in each.id]
    assert {each.id: each.readings[0].value for each in found} == {
        name: length(deep) for name, deep in sawn.items()
    }
    assert {set_in_words(each.setting) for each in found} == {
        'strike along the tongue: blade 12", tongue 1-1/2"; saw 7.1° off square'
    }


def test_the_kerf_leans_on_top_and_underside_alone() -> None:
    """On the sides it goes in square, along the slanting line."""
    assert not any("leans" in each.why for each in _tasks())
    lying = {each.id: each.why for each in _tasks(lying=True)}
    assert "leans" in lying["saw-first"]
    assert "leans" in lying["saw-far-first"]


def test_a_face_the_tenon_runs_out_to_is_knifed_beside_it_only() -> None:
    """Top and underside of a girt outside its cheeks; the bare side outside its reliefs."""
    assert task(_tasks(), "knife").caution == (
        "Knife the top face only outside the cheek lines: the tenon runs out to it there. "
        "Knife the underside only outside the cheek lines: the tenon runs out to it there."
    )
    bare = task(_tasks(set_back="0", relief_reference="1", relief_far="1"), "knife").caution
    assert bare == (
        "Knife the South face only outside the relief lines: the tenon runs out to it there."
    )
    assert "South" not in task(_tasks(set_back="0"), "knife").caution


def test_sizes_count_from_near_cheek_and_reference_edge() -> None:
    """The length from the shoulder at the underside, whichever way up the girt is measured."""
    sizes = tenon_sizes(end_of(ledge()))
    assert [(size.name, size.laid_out) for size in sizes] == [
        ("thickness", length("2")),
        ("width", length("8")),
        ("length", length("3")),
    ]
    assert sizes[2].how == "tenon length from the shoulder at the underside"
    done = task(_tasks(), "as-cut")
    assert (done.asks, done.lasting, done.caution) == (Asks.AS_CUT, False, COUNTED)
    assert [each.hook for each in done.readings] == [
        "near cheek, by the South face",
        "top face",
        "shoulder at the underside",
    ]
    relieved = task(_tasks(relief_reference="1"), "saw-edges")
    assert [(each.value, each.hook) for each in relieved.readings] == [
        (length("7"), "narrow edge by the top face")
    ]


def test_as_cut_shows_what_was_typed() -> None:
    """The size kept, or the one laid out."""
    cut = {"girt": real(as_cut={"west-end-tenon": {"width": "7-7/8"}})}
    assert [each.value for each in task(_tasks(real=cut), "as-cut").readings] == [
        length("2"),
        length("7-7/8"),
        length("3"),
    ]


def test_what_hurts_carries_its_caution() -> None:
    """Saw and chisel."""
    found = {each.id: each.caution for each in _tasks(relief_reference="1")}
    assert found["saw-second"] == found["saw-cheeks"] == found["saw-edges"] == SAW
    assert found["saw-far-second"].endswith(SAW)
    assert found["pare"] == CHISEL
