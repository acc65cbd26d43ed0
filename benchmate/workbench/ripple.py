"""What a change of real sizes would do, shown before it is accepted."""

from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.measure.length import Length
from benchmate.model.findings import Finding


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """One figure of one step that a change moves."""

    timber: str
    step: str
    title: str
    words: str
    before: Length
    after: Length
    ticked: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Ripple:
    """Every figure a change moves, and the findings it brings."""

    moved: tuple[Moved, ...]
    findings: tuple[Finding, ...]

    @property
    def ticked(self) -> int:
        """How many of the moved figures belong to steps already ticked."""
        return sum(each.ticked for each in self.moved)


def ripple(
    before: Frame, after: Frame, timbers: tuple[str, ...], ticked: frozenset[tuple[str, str]]
) -> Ripple:
    """What differs between two frames on some timbers; `ticked` holds (timber, step) pairs."""
    moved: list[Moved] = []
    findings: list[Finding] = []
    for timber in timbers:
        was = {step.id: step for step in lay_out(before, timber).steps}
        now = lay_out(after, timber)
        for step in now.steps:
            old = was.get(step.id)
            if old is not None:
                moved += _differences(timber, old, step, (timber, step.id) in ticked)
        findings += [found for feature in now.features for found in feature.findings]
    return Ripple(moved=tuple(moved), findings=tuple(findings))


def _differences(timber: str, old: Step, new: Step, ticked: bool) -> list[Moved]:
    """The readings and further figures of a step that changed; fresh measurements are left out."""
    if not new.lasting:
        return []
    was = _readings(old) | _beside(old)
    now = _readings(new) | _beside(new)
    return [
        Moved(
            timber=timber,
            step=new.id,
            title=new.title,
            words=words,
            before=was[words],
            after=value,
            ticked=ticked and words in _readings(new),
        )
        for words, value in now.items()
        if words in was and was[words] != value
    ]


def _readings(step: Step) -> dict[str, Length]:
    return {f"from the {reading.hook}": reading.value for reading in step.readings}


def _beside(step: Step) -> dict[str, Length]:
    return {beside.words: beside.value for beside in step.beside}
