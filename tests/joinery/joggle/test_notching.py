"""What is done at a notch and its mortise."""

from benchmate.joinery.joggle.notching import hole_tasks
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Task
from tests.builders import length, real, set_in_words
from tests.joinery.joggle.test_shape import hole, near
from tests.joinery.joggle.trusses import truss


def tasks(name: str = "heel", /, **words: object) -> dict[str, Task]:
    """The tasks at one notch of a truss, by id."""
    frame = truss(**words)  # type: ignore[arg-type]
    return {task.id: task for task in hole_tasks(hole(frame, name), frame.project.tape)}


def test_the_order_of_work() -> None:
    """The notch before the mortise, and paring after all cutting."""
    found = tasks()
    assert list(found) == [
        "section",
        "knife",
        "saw-abutment",
        "chop-sole",
        "bore",
        "pare-sides",
        "try-depth",
        "pare-abutment",
    ]
    stages = [task.stage for task in found.values()]
    assert stages == sorted(stages)


def test_one_figure_to_one_task() -> None:
    """All but measuring work to one figure at most."""
    for task in tasks().values():
        assert len(task.readings) <= 1 or task.asks is not Asks.NOTHING


def test_what_each_works_to() -> None:
    """Notch 1-1/2" deep, mortise 3-5/8" from the face, 2" wide; the abutment 1.581" down."""
    found = tasks()
    figures = {name: task.readings[0].value for name, task in found.items() if task.readings}
    assert figures["saw-abutment"] == figures["chop-sole"] == length("1-1/2")
    assert figures["bore"] == figures["try-depth"] == length("3-5/8")
    assert figures["pare-sides"] == length("2")
    assert near(figures["pare-abutment"], 1.5811388300841898)


def test_the_notch_is_cut_on_the_faces_it_comes_out_on() -> None:
    """Top and south of the tie; of the post only the face the strut enters."""
    assert tasks()["saw-abutment"].faces == (Face.FIRST, Face.SECOND)
    assert tasks("strut-foot")["saw-abutment"].faces == (Face.FIRST,)


def test_which_way_the_thrust_goes_is_said_before_the_first_cut() -> None:
    """Turned round, a notch looks as good."""
    assert tasks()["knife"].caution.endswith("its thrust goes towards the west end.")
    assert tasks("crown")["knife"].caution.endswith("its thrust goes towards the head.")


def test_a_depth_that_follows_the_stick_waits_for_its_measure() -> None:
    """Only in a far face by square rule, and only until it is measured."""
    own = {"post": {"rule": "square", "inner": "8 x 8", "section": "8-1/2 x 8-1/2"}}
    words: dict[str, object] = {"edges": {"post": "east"}, "own": own}
    assert tasks("crown", **words)["saw-abutment"].caution.startswith("Not measured")
    sizes = {"post": real({"all": {"first": "8-1/4", "second": "8"}})}
    measured = tasks("crown", **words, real=sizes)["saw-abutment"]
    assert not measured.caution.startswith("Not measured")
    assert measured.readings[0].value == length("1-3/4")
    assert not tasks("crown", edges={"post": "east"})["saw-abutment"].caution.startswith("Not")


def test_a_notch_that_is_closed_at_a_side_is_chopped_and_not_sawn() -> None:
    """A kerf across would cut the wood beside it, and no saw gets in to be set."""
    closed = tasks("strut-foot")["saw-abutment"]
    assert closed.title == "Chop down the abutment, leaned to the bevel"
    assert set_in_words(closed.setting).startswith("bevel set along the ")
    assert closed.waste == "Chop on the notch's side of the knifed line."
    assert closed.caution.startswith("Only between the notch's lines: a kerf across would cut")
