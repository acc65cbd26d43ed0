"""What is done at a joist's tenon: one figure to one task, shoulders before cheeks."""

import pytest

from benchmate.frame.practice import AS_CUT, CHAINSAW, CHISEL, SAW
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.joist_tenon.cutting import end_sizes, end_tasks
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Stage, Task
from tests.builders import length, lengths, real, set_in_words
from tests.floor import Floor, over
from tests.joinery.joist_tenon.floors import jointed
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon

TUSK = {"set_back": "2", "thickness": "1-1/2", "length": "4", "tusk": "1", "tusk_height": "2"}
MEASURED = Floor(
    lower="1", real={"joist": real({"south-end-tenon": {"first": "7-1/8", "second": "4-1/8"}})}
)


def soffit(floor: Floor | None = None, **words: object) -> dict[str, Task]:
    """The tasks at a soffit tenon, in order."""
    end, _ = jointed(soffit_tenon(**words), floor).shapes  # type: ignore[arg-type]
    return {task.id: task for task in end_tasks(end, Tape())}


def tusk(floor: Floor | None = None, **words: str) -> dict[str, Task]:
    """The tasks at a tusk tenon, in order."""
    end, _ = jointed(tusk_tenon(**(TUSK | words)), floor).shapes
    return {task.id: task for task in end_tasks(end, Tape())}


def test_the_tasks_at_a_tusk_tenon_in_order() -> None:
    """Measure, knife, then from the top and from below, the tusk's end before its root."""
    assert list(tusk()) == [
        "section",
        "knife",
        "saw-upper",
        "cut-near-cheek",
        "saw-tusk-end",
        "cut-far-cheek",
        "saw-lower",
        "cut-tusk-underside",
        "pare",
        AS_CUT,
    ]


@pytest.mark.parametrize(("rise", "below"), [("0", []), ("1", ["saw-lower", "cut-far-cheek"])])
def test_a_soffit_tenon_is_cut_below_only_if_it_is_raised(rise: str, below: list[str]) -> None:
    """A flush one has no wood there."""
    assert list(soffit(above_soffit=rise)) == [
        "section",
        "knife",
        "saw-upper",
        "cut-near-cheek",
        *below,
        "pare",
        AS_CUT,
    ]


def test_by_square_rule_the_far_side_is_cut_too() -> None:
    """At the shoulder where the end itself keeps its size, and by the reduction otherwise."""
    off = (16, 16, 16, 8)
    plain = soffit(over(Floor(lower="1"), off, "square"))
    assert {"saw-side", "cut-side", "saw-lower", "cut-far-cheek"} <= set(plain)
    assert [each.value for each in plain["saw-side"].readings] == [length("1/4")]
    assert [each.value for each in plain["cut-side"].readings] == [length("4")]
    housed = soffit(over(Floor(lower="1", near=False), off, "square"))
    assert {"knife-reduction", "reduce-first", "reduce-second"} <= set(housed)
    assert not {"saw-side", "cut-side", "saw-lower", "cut-far-cheek"} & set(housed)


def test_each_cut_has_one_figure_and_one_line() -> None:
    """Of two figures on one step one is missed; the drawing shows that cut's waste alone."""
    found = {
        name: (task.draws, [each.value for each in task.readings])
        for name, task in tusk(MEASURED).items()
        if task.stage is Stage.CUT
    }
    assert found == {
        "saw-upper": ("haunch", [length("2")]),
        "cut-near-cheek": ("near-cheek", [length("2")]),
        "saw-tusk-end": ("tusk-end", [length("3-5/8")]),
        "cut-far-cheek": ("far-cheek", [length("1-1/2")]),
        "saw-lower": ("shoulder", [length("1-5/8")]),
        "cut-tusk-underside": ("tusk-underside", [length("2")]),
    }


def test_no_cheek_is_cut_past_what_is_left_on() -> None:
    """A tenon's lower cheek cut in to the shoulder would take the tusk with it."""
    found = tusk()
    assert "to the tusk end line" in found["cut-far-cheek"].readings[0].way
    assert "as far as the tusk end line" in found["cut-far-cheek"].waste
    assert found["cut-far-cheek"].caution.startswith("No further in: the tusk behind")
    assert "to the horn line" in found["cut-near-cheek"].readings[0].way
    assert "to the shoulder line" in tusk(horn="0")["cut-near-cheek"].readings[0].way
    raised = soffit(above_soffit="1")
    assert "to the shoulder line" in raised["cut-far-cheek"].readings[0].way
    assert raised["cut-far-cheek"].caution.startswith(SAW)


def test_the_slope_has_a_setting_for_square_and_saw() -> None:
    """1-1/2" over 5": 12 on the blade, 3-5/8"- on the tongue, 16.7 degrees off square [CALC]."""
    setting = soffit()["saw-upper"].setting
    assert set_in_words(setting) == (
        'strike along the tongue: blade 12", tongue 3-5/8"-; saw 16.7° off square'
    )
    assert tusk(horn="0")["saw-upper"].setting is None
    assert tusk(horn="0")["saw-upper"].draws == "shoulder"


def test_what_hurts_carries_its_caution() -> None:
    """Saw, chainsaw and chisel, and depths from an underside that nobody measured."""
    found = tusk()
    shape, _ = jointed(tusk_tenon(**TUSK)).shapes
    first = unmeasured(shape.stick, shape.plumb, ())
    for name in ("saw-tusk-end", "saw-lower"):
        assert found[name].caution == f"{first}{SAW}"
        assert tusk(MEASURED)[name].caution == SAW
    assert found["saw-upper"].caution == SAW
    assert found["cut-near-cheek"].caution == f"{SAW} {CHAINSAW}"
    assert found["cut-tusk-underside"].caution == found["pare"].caution == CHISEL
    assert "knife nothing across the tenon" in found["knife"].caution


def test_the_shoulder_is_knifed_where_it_is_struck() -> None:
    """Not on the underside of a flush tenon; the end grain is hatched too."""
    assert soffit()["knife"].faces == (
        Face.FIRST,
        Face.SECOND,
        Face.FAR_SECOND,
        Face.REFERENCE_END,
    )
    assert Face.FAR_FIRST in tusk()["knife"].faces


def test_the_framer_is_asked_for_the_section_and_the_tenon_as_cut() -> None:
    """Neither goes out of date."""
    asked = {name: task for name, task in tusk().items() if task.asks is not Asks.NOTHING}
    assert list(asked) == ["section", AS_CUT]
    assert not any(task.lasting for task in asked.values())
    assert [each.value for each in asked[AS_CUT].readings] == list(lengths("1-1/2", "4", "4"))
    made = {"joist": real({}, {"south-end-tenon": {"thickness": "1-7/16"}})}
    shown = tusk(Floor(lower="1", real=made))[AS_CUT].readings
    assert [each.value for each in shown] == list(lengths("1-7/16", "4", "4"))
    assert "upper cheek" in asked[AS_CUT].caution


def test_the_sizes_that_can_be_typed() -> None:
    """As laid out, to compare with."""
    shape, _ = jointed(tusk_tenon(**TUSK)).shapes
    assert {size.name: size.laid_out for size in end_sizes(shape)} == {
        "thickness": length("1-1/2"),
        "width": length("4"),
        "length": length("4"),
    }
