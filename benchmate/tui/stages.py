"""How steps are grouped in the step list: marks under their joint, the rest under their stage."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.model.feature import Stage

if TYPE_CHECKING:
    from benchmate.layout.step import Step
    from benchmate.workbench.walk import Walk

STAGE_WORDS = {
    Stage.CHOOSE: "Choose the stick",
    Stage.MEASURE: "Check and measure",
    Stage.END: "Ends",
    Stage.MARK: "Mark",
    Stage.CHAMFER: "Chamfers",
    Stage.BACK_CHECK: "Back-check",
    Stage.KNIFE: "Knife and hatch",
    Stage.CUT: "Cut",
    Stage.PARE: "Pare",
    Stage.AS_CUT: "Measure as cut",
    Stage.FIT: "Fit",
    Stage.FINISH: "Finish",
    Stage.LABEL: "Label",
}


@dataclass(frozen=True, slots=True)
class Group:
    """The heading a step stands under, and what it is called there."""

    heading: str
    short: str


def group_of(walk: Walk, step: Step) -> Group:
    """Where a step belongs in the list."""
    feature = walk.layout.feature(step.feature)
    if step.line is not None and feature is not None and step.stage is not Stage.END:
        return Group(feature.title, step.short)
    heading = STAGE_WORDS[step.stage]
    if step.stage in (Stage.CHOOSE, Stage.END, Stage.BACK_CHECK, Stage.LABEL):
        return Group(heading, step.short)
    if step.stage in (Stage.CUT, Stage.FINISH):
        return Group(heading, step.title)
    return Group(heading, feature.title if feature else step.short)
