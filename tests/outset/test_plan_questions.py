"""The questions about the whole frame."""

import pytest

from benchmate.outset.plan_questions import PLAN, PROJECT, folder_name, graduations
from tests.outset.frames import METRIC, answers, suggestion


def test_the_plan_comes_first() -> None:
    """A framer starts from what it is called and how large it is."""
    ids = [question.id for group in (PROJECT, PLAN) for question in group.questions]
    assert ids[:2] == ["name", "units"]
    assert ids.index("length") < ids.index("bays") < ids.index("roof")


def test_round_sizes_are_suggested_in_either_system() -> None:
    """Twenty feet, or six metres."""
    assert suggestion("length") == "20'"
    assert suggestion("length", units="inches") == "240"
    assert suggestion("length", METRIC) == "6000"
    assert graduations(answers(METRIC)) == ("1 mm", "0.5 mm")


@pytest.mark.parametrize(
    ("name", "folder"),
    [
        ("New frame", "new-frame"),
        ("  Ash & Oak: no. 2 ", "ash-oak-no-2"),
        ("Åse", "se"),
        ("?", "frame"),
        ("x" * 99, "x" * 60),
    ],
)
def test_a_folder_is_called_after_its_project(name: str, folder: str) -> None:
    """In letters, digits and hyphens that every system takes."""
    assert folder_name(name) == folder
