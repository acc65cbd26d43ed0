"""Steps and walks answer for themselves, and show the figure to work from first."""

import pytest

from benchmate.layout.step import Step, shown_readings
from benchmate.layout.walk import lay_out
from tests.builders import corners


def _hooks(step: Step, *, struck: bool, swapped: bool) -> tuple[str, ...]:
    shown = shown_readings(step, shoulder_struck=struck, swapped=swapped)
    return tuple(reading.hook for reading in shown)


SHOULDER_FIRST = ("foot shoulder line", "squared foot")
END_FIRST = SHOULDER_FIRST[::-1]


@pytest.mark.parametrize(
    ("struck", "swapped", "hooks"),
    [
        (False, False, END_FIRST),
        (True, False, SHOULDER_FIRST),
        (True, True, END_FIRST),
        (False, True, SHOULDER_FIRST),
    ],
)
def test_a_mark_reads_from_the_shoulder_once_it_is_struck(
    struck: bool, swapped: bool, hooks: tuple[str, ...]
) -> None:
    """Law 2: from the squared end until then, from the shoulder afterwards, or turned round."""
    step = lay_out(corners(), "post-sw").step("head-tenon/shoulder")
    assert _hooks(step, struck=struck, swapped=swapped) == hooks


@pytest.mark.parametrize("struck", [True, False])
@pytest.mark.parametrize("swapped", [True, False])
def test_other_steps_have_one_order(struck: bool, swapped: bool) -> None:
    """Across the timber, and in a task's two sizes, there is nothing to turn round."""
    layout = lay_out(corners(), "post-sw")
    assert _hooks(layout.step("foot-tenon/far-cheek"), struck=struck, swapped=swapped) == (
        "South face",
    )
    sizes = _hooks(layout.step("foot-tenon/saw-cheeks"), struck=struck, swapped=swapped)
    assert sizes == ("near cheek, by the South face",)
    section = _hooks(layout.step("foot-tenon/section"), struck=struck, swapped=swapped)
    assert section == ("South face", "West face")


def test_a_step_is_found_by_its_id() -> None:
    """An id that no step has is a misuse."""
    layout = lay_out(corners(), "post-sw")
    assert layout.step("stick/label") is layout.steps[-1]
    with pytest.raises(KeyError, match="stick/bend"):
        layout.step("stick/bend")


def test_a_feature_is_found_by_its_id() -> None:
    """The stick's own steps belong to no feature."""
    layout = lay_out(corners(), "post-sw")
    for step in layout.steps:
        feature = layout.feature(step.feature)
        assert (feature is None) is (step.feature == "stick")
        assert feature is None or feature.id == step.feature
