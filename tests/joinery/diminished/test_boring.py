"""What is done at housing and mortise, in order, each with one figure."""

from benchmate.frame.practice import CHISEL, DRILL, SAW
from benchmate.joinery.diminished.boring import mortise_tasks
from benchmate.model.directions import Face
from benchmate.model.feature import Task
from tests.builders import length, real, set_in_words, task
from tests.joinery.diminished.ledges import SQUARE, Word, ledge, mortise_of


def _tasks(**words: Word) -> tuple[Task, ...]:
    return mortise_tasks(mortise_of(ledge(**words)))


def test_the_housing_comes_before_the_mortise() -> None:
    """Knifed, sawn at the ledge, pared, then the mortise struck anew in it and bored."""
    assert [each.id for each in _tasks()] == [
        "section",
        "knife-housing",
        "cut-housing",
        "pare-housing",
        "strike-floor",
        "bore",
        "pare-sides",
        "pare-ends",
        "try-depth",
    ]
    stages = [each.stage for each in _tasks()]
    assert stages == sorted(stages)


def test_the_ledge_is_sawn_to_full_depth() -> None:
    """1" in there, nothing at the top: 1 in 8 to the face."""
    cut = task(_tasks(), "cut-housing")
    assert [(each.value, each.hook) for each in cut.readings] == [(length("1"), "East face")]
    assert [each.value for each in cut.beside] == [length("0")]
    assert set_in_words(cut.setting) == "bevel 7.1° off square to the face"
    assert cut.faces == (Face.FIRST, Face.SECOND)
    rough = task(_tasks(own=SQUARE, into_first="west"), "cut-housing")
    assert [each.value for each in rough.readings] == [length("1-1/2")]
    assert [each.value for each in rough.beside] == [length("1/2")]


def test_the_mortise_s_lines_are_struck_anew() -> None:
    """Each as it was first struck: from the end and from the reference face."""
    anew = task(_tasks(), "strike-floor")
    assert [each.value for each in anew.readings] == [
        length(each) for each in ("88", "96", "2", "4")
    ]
    assert [each.hook for each in anew.readings] == ["squared foot"] * 2 + ["South face"] * 2
    assert len({each.name for each in anew.readings}) == 4


def test_its_depth_counts_from_the_face() -> None:
    """Housing, tenon and clearance together, square to it."""
    for name in ("bore", "try-depth"):
        (reading,) = task(_tasks(), name).readings
        assert (reading.value, reading.hook) == (length("4-1/8"), "East face")
    (wide,) = task(_tasks(), "pare-sides").readings
    (long,) = task(_tasks(), "pare-ends").readings
    assert (wide.value, long.value) == (length("2"), length("8"))


def test_what_hurts_carries_its_caution() -> None:
    """Saw, chisel and drill; a depth that follows the stick is measured first."""
    found = {each.id: each.caution for each in _tasks()}
    assert found["cut-housing"] == f"{SAW} {CHISEL}"
    assert found["bore"] == DRILL
    for name in ("pare-housing", "pare-sides", "pare-ends"):
        assert found[name] == CHISEL
    rough = {"own": SQUARE, "into_first": "west"}
    assert "measure first" in task(_tasks(**rough), "cut-housing").caution
    measured = {"post": real({"girt-end-mortise": {"first": "8"}})}
    assert task(_tasks(**rough, real=measured), "cut-housing").caution == f"{SAW} {CHISEL}"
