"""What is done at a joist's mortise: one figure to one task."""

import pytest

from benchmate.frame.practice import CHISEL, DRILL, SAW
from benchmate.joinery.joist_tenon.chopping import hole_tasks
from benchmate.measure.printing import Tape
from benchmate.model.feature import Asks, Stage, Task
from tests.builders import length
from tests.floor import Floor, over
from tests.joinery.joist_tenon.floors import jointed
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon

TUSK = {"set_back": "2", "thickness": "1-1/2", "length": "4", "tusk": "1", "tusk_height": "2"}


def tusk(**words: str) -> dict[str, Task]:
    """The tasks at a tusk tenon's mortise, in order."""
    _, hole = jointed(tusk_tenon(**(TUSK | words))).shapes
    return {task.id: task for task in hole_tasks(hole, Tape())}


def soffit(floor: Floor | None = None) -> dict[str, Task]:
    """The tasks at a soffit tenon's mortise, in order."""
    _, hole = jointed(soffit_tenon(), floor).shapes
    return {task.id: task for task in hole_tasks(hole, Tape())}


@pytest.mark.parametrize(
    ("horn", "recesses"), [("1", ["cut-haunch", "cut-tusk"]), ("0", ["cut-tusk"])]
)
def test_the_deepest_comes_first(horn: str, recesses: list[str]) -> None:
    """The mortise, then the recesses over and under it, then paring and trying."""
    assert list(tusk(horn=horn)) == [
        "section",
        "knife",
        "bore",
        *recesses,
        "pare-ends",
        "pare-sides",
        "try-depth",
    ]


def test_a_soffit_tenon_has_no_tusk() -> None:
    """Only the haunch's recess."""
    assert "cut-tusk" not in soffit()
    assert "cut-haunch" in soffit()


def test_a_housing_is_cut_and_struck_anew_before_all_of_it() -> None:
    """Knifing the mortise waits until its floor is cut."""
    housed = soffit(over(Floor(lower="1", near=False), (0, 16, 0, 0), "square"))
    assert list(housed)[1:6] == [
        "knife-housing",
        "cut-housing",
        "pare-housing",
        "strike-floor",
        "bore",
    ]
    assert "knife" not in housed
    assert housed["bore"].readings[0].hook == "housing floor"


def test_each_has_one_figure_and_shows_its_own_waste() -> None:
    """Depths straight in; widths across."""
    found = {
        name: (task.draws, [each.value for each in task.readings])
        for name, task in tusk(horn="1-1/4").items()
        if task.stage in (Stage.CUT, Stage.PARE)
    }
    assert found == {
        "bore": ("depth", [length("4-1/8")]),
        "cut-haunch": ("haunch-floor", [length("1-1/4")]),
        "cut-tusk": ("tusk-floor", [length("1")]),
        "pare-ends": ("", [length("4")]),
        "pare-sides": ("", [length("1-1/2")]),
        "try-depth": ("", [length("4-1/8")]),
    }


def test_what_hurts_carries_its_caution() -> None:
    """Drill, saw and chisel."""
    found = tusk()
    assert found["bore"].caution == DRILL
    assert found["cut-haunch"].caution == f"{SAW} {CHISEL}"
    for name in ("cut-tusk", "pare-ends", "pare-sides"):
        assert found[name].caution == CHISEL
    assert [name for name, task in found.items() if task.asks is Asks.SECTION] == ["section"]
