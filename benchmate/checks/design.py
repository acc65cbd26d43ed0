"""All findings on one timber: its joints' own, its blemishes, and ticks no longer true."""

from benchmate.checks.blemishes import blemish_findings
from benchmate.checks.joints import (
    cuts_meet,
    little_wood_between,
    near_joints,
    opens_in_a_notch,
)
from benchmate.layout.standing import orphaned, standings
from benchmate.layout.step import Layout
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.findings import Finding, Severity
from benchmate.model.progress import Progress
from benchmate.model.stick import ALL_ALONG, MIDDLE

TICK_OUT_OF_DATE = "tick-out-of-date"


def findings_on(layout: Layout, progress: Progress, tape: Tape) -> tuple[Finding, ...]:
    """Every finding on a timber, the worst first."""
    found = (
        *findings_of(layout, tape),
        *blemish_findings(layout, progress.blemishes, tape),
        *tick_out_of_date(layout, progress, tape),
        *tick_without_step(layout, progress),
        *size_without_place(layout, progress),
        *note_without_place(layout, progress),
    )
    return tuple(sorted(found, key=lambda finding: -finding.severity))


def findings_of(layout: Layout, tape: Tape) -> tuple[Finding, ...]:
    """The findings on a timber that follow from its layout alone, whatever is ticked."""
    near = near_joints(layout)
    return (
        *(finding for feature in layout.features for finding in feature.findings),
        *opens_in_a_notch(layout),
        *cuts_meet(layout, near),
        *little_wood_between(layout, near, tape),
    )


def tick_out_of_date(layout: Layout, progress: Progress, tape: Tape) -> tuple[Finding, ...]:
    """A ticked mark no longer reads as it did when it was ticked.

    What is already on the wood is wrong, or about to be cut wrong. Example: a mortise marked for a
    tenon that then came out narrower. Remedy: mark it again, then tick it again.
    """
    return tuple(
        Finding(
            code=TICK_OUT_OF_DATE,
            severity=Severity.LOOK,
            timber=layout.stick.id,
            feature=step.feature,
            message=f"{step.title}: {standing.changed}",
            remedy="look again, mark it anew and tick it again",
        )
        for step, standing in zip(layout.steps, standings(layout, progress, tape), strict=True)
        if standing.changed
    )


def tick_without_step(layout: Layout, progress: Progress) -> tuple[Finding, ...]:
    """A tick belongs to a step the timber no longer has.

    The joint it was for was renamed or taken out; its mark may still be on the wood. Remedy: plane
    the old mark off, or name the joint as before.
    """
    return tuple(
        Finding(
            code="tick-without-step",
            severity=Severity.LOOK,
            timber=layout.stick.id,
            feature=tick.step.partition("/")[0],
            message=f'"{tick.step}" was ticked, but the timber has no such step now',
            remedy="plane the old mark off, or give the joint the id it had",
        )
        for tick in orphaned(layout, progress)
    )


def size_without_place(layout: Layout, progress: Progress) -> tuple[Finding, ...]:
    """A measured or as-cut size belongs to a place the timber does not have.

    It counts for nothing there, though somebody measured it. Usually a joint was renamed. Remedy:
    correct the place's name in the progress file.
    """
    stick = layout.stick
    measured = {place for feature in layout.features for place in feature.place}
    measured |= {ALL_ALONG, MIDDLE}
    measured |= {stick.place_at(end) for end in (Face.REFERENCE_END, Face.FAR_END)}
    tenons = {feature.id for feature in layout.features if feature.sizes}
    lost = (set(progress.measured) - measured) | (set(progress.as_cut) - tenons)
    return tuple(
        Finding(
            code="size-without-place",
            severity=Severity.LOOK,
            timber=stick.id,
            feature=place,
            message=f'a size is kept for "{place}", which this timber does not have',
            remedy=f"correct the place's name in progress/{stick.id}.toml, or take it out",
        )
        for place in sorted(lost)
    )


def note_without_place(layout: Layout, progress: Progress) -> tuple[Finding, ...]:
    """A note is about a step or a joint that the timber does not have.

    It stands at no step now, though somebody meant it for one. Usually a joint was renamed by hand
    or taken out. Remedy: correct what it is about in the progress file.
    """
    known = {"", *(step.id for step in layout.steps), *(each.id for each in layout.features)}
    return tuple(
        Finding(
            code="note-without-place",
            severity=Severity.LOOK,
            timber=layout.stick.id,
            feature="",
            message=f'{note.id} is about "{note.about}", which this timber does not have',
            remedy=f"correct it in progress/{layout.stick.id}.toml, or take the note out with i",
        )
        for note in progress.notes
        if note.about not in known
    )
