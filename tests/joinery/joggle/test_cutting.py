"""What is done at an abutting end, and what of it is measured as cut."""

from benchmate.frame.practice import AS_CUT
from benchmate.joinery.joggle.cutting import end_sizes, end_tasks
from benchmate.model.feature import Asks, Task
from tests.builders import length, set_in_words
from tests.joinery.joggle.test_shape import made
from tests.joinery.joggle.trusses import truss


def tasks(name: str = "heel", /, **words: object) -> dict[str, Task]:
    """The tasks at one abutting end of a truss, by id."""
    frame = truss(**words)  # type: ignore[arg-type]
    return {task.id: task for task in end_tasks(made(frame, name), frame.project.tape)}


def test_the_order_of_work() -> None:
    """Measured, knifed, sawn from the tip inwards, pared, measured as cut."""
    found = tasks()
    assert list(found) == [
        "section",
        "knife",
        "saw-end",
        "saw-abutment",
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


def test_every_saw_cut_says_how_to_set_it() -> None:
    """And keeps to one line in the drawing."""
    for name in ("saw-end", "saw-abutment", "saw-near", "saw-far"):
        assert "off square" in set_in_words(tasks()[name].setting)
        assert tasks()[name].draws


def test_the_sole_is_sawn_on_both_sides_of_the_tenon() -> None:
    """2" in from either face of a 6" rafter."""
    found = tasks()
    assert [found[name].readings[0].value for name in ("saw-near", "saw-far")] == [length("2")] * 2
    assert found["saw-near"].title == "Saw the sole, South face"


def test_an_abutment_without_a_line_is_not_sawn_twice() -> None:
    """It is the squared end."""
    words = {"joints": {"heel": {"abutment": "square to the rake"}}}
    assert "saw-abutment" not in tasks(**words)


def test_its_length_is_measured_from_the_face_line() -> None:
    """That line stays on the wood between toe and heel."""
    size = {each.name: each for each in end_sizes(made(truss()))}
    assert (size["thickness"].laid_out, size["length"].laid_out) == (length("2"), length("3-1/2"))
    as_cut = tasks()[AS_CUT]
    assert [each.hook for each in as_cut.readings] == ["near cheek, by the South face", "face line"]
    assert as_cut.asks is Asks.AS_CUT
