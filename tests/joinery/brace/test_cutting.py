"""What is done at a brace's end, and what of it is measured as cut."""

import pytest

from benchmate.frame.practice import AS_CUT
from benchmate.joinery.brace.cutting import end_sizes, end_tasks
from benchmate.model.feature import Asks, Stage, Task
from tests.builders import length, real, set_in_words
from tests.joinery.brace.bays import bay
from tests.joinery.brace.test_shape import made


def tasks(**words: object) -> dict[str, Task]:
    """The tasks at the foot of the brace of a bay, by id."""
    frame = bay(**words)  # type: ignore[arg-type]
    return {task.id: task for task in end_tasks(made(frame), frame.project.tape)}


def test_the_order_of_work() -> None:
    """Measured, knifed, sawn from the tip inwards, pared, measured as cut."""
    found = tasks()
    assert list(found) == [
        "section",
        "knife",
        "saw-end",
        "saw-nose",
        "saw-near",
        "saw-far",
        "saw-cheeks",
        "pare",
        AS_CUT,
    ]
    stages = [task.stage for task in found.values()]
    assert stages == sorted(stages)


def test_one_figure_to_one_task() -> None:
    """All but measuring work to one figure at most."""
    for task in tasks().values():
        assert len(task.readings) <= 1 or task.asks is not Asks.NOTHING


def test_shoulders_are_sawn_as_deep_as_what_comes_off() -> None:
    """1-1/2" on the reference side; on the far one all the stick really has past the tenon."""
    found = tasks(real={"brace": real({"all": {"second": "4-1/8"}})})
    assert found["saw-near"].readings[0].value == length("1-1/2")
    assert found["saw-far"].readings[0].value == length("1-1/8")
    assert found["saw-near"].faces != found["saw-far"].faces


def test_a_barefaced_tenon_is_shouldered_once() -> None:
    """Nothing is sawn on the face it runs out to."""
    found = tasks(joint={"set_back": "0"})
    assert "saw-near" not in found
    assert found["saw-cheeks"].readings[0].hook == "South face"


def test_each_cut_says_how_the_saw_is_set() -> None:
    """The nose is sawn to the other angle than the shoulder."""
    found = tasks(legs=("36", "48"))
    assert set_in_words(found["saw-near"].setting).endswith("saw 36.9° off square")
    assert set_in_words(found["saw-nose"].setting).endswith("saw 53.1° off square")
    assert found["saw-end"].setting == found["saw-near"].setting


def test_by_square_rule_each_far_face_is_a_cut_of_its_own() -> None:
    """So deep on this stick."""
    found = tasks(
        own={"brace": {"rule": "square", "inner": "6 x 4"}},
        real={"brace": real({"all": {"first": "6-1/4", "second": "4-1/8"}})},
    )
    deep = [found[f"reduce-{axis}"].readings[0].value for axis in ("first", "second")]
    assert deep == [length("1/4"), length("1/8")]
    assert found["reduce-first"].stage is Stage.CUT


def test_thickness_and_length_are_measured_as_cut() -> None:
    """The mortise follows both."""
    sizes = {size.name: size.laid_out for size in end_sizes(made(bay()))}
    assert sizes == {"thickness": length("1-1/2"), "length": length("4")}
    assert tasks()[AS_CUT].asks is Asks.AS_CUT


@pytest.mark.parametrize(
    ("post", "drawn", "long"),
    [("8", "shoulder", "1"), ("8-3/8", "reduction-stop", "5/8"), ("9", "", "")],
)
def test_the_point_beside_a_nose_that_is_set_in_is_sawn_off(
    post: str, drawn: str, long: str
) -> None:
    """At the post's real face: 3/8" out the nose line is 3/8" nearer the long edge, 1" out on it.

    The legs are equal, so the long edge goes as far along as it goes out.
    """
    own = {"post": {"rule": "square", "inner": "8 x 8"}}
    found = tasks(joint={"nose": "1"}, own=own, real={"post": real({"all": {"first": post}})})
    if not drawn:
        assert "saw-beside-nose" not in found
        return
    task = found["saw-beside-nose"]
    assert task.draws == drawn
    assert abs(task.readings[0].value - length(long)).nm <= 1
    assert "saw-beside-nose" not in tasks()
