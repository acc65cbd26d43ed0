"""The pegs of a tenon as work on both timbers, each apart from its tenon or mortise.

They are bored in the one timber after its mortise is made, and in the other from the fitted joint,
so they wait for one another where the tenon and the mortise do not.
"""

from benchmate.frame.bored import Bored
from benchmate.frame.peg_steps import BORE, bore_received, bore_tenon, prick, towards_shoulder
from benchmate.frame.pegs import hole_cuts
from benchmate.frame.practice import AS_CUT
from benchmate.joinery.tenon.peg_findings import peg_findings
from benchmate.joinery.tenon.peg_lines import bored_lines, tenon_lines
from benchmate.joinery.tenon.peg_scribed import scribed_bored_tasks, scribed_tenon_tasks
from benchmate.joinery.tenon.pegged import Pegged
from benchmate.measure.printing import Tape
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, Severity, told_on


def pegs_id(feature: str) -> str:
    """What the pegs of a tenon or of a mortise are called: `foot-tenon-pegs`."""
    return f"{feature}-pegs"


def peg_features(
    shape: Pegged, told: tuple[Finding, ...], tape: Tape, *, scribed: bool
) -> tuple[Feature, ...]:
    """The pegs on the tenoned timber, and on the one that receives it.

    `told` is what is wrong with the joint itself: what stops that stops its pegs.
    """
    own = pegs_id(shape.tenon.feature)
    other = pegs_id(shape.bored.mortise.feature) if shape.bored else ""
    found = () if scribed else peg_findings(shape, own, other, tape)
    stops = tuple(each for each in told if each.severity is Severity.STOP)
    every = (*stops, *found)
    tenon_side = _on_tenon(shape, own, every, tape, scribed=scribed)
    if shape.bored is None:
        return (tenon_side,)
    return (tenon_side, _on_receiver(shape, shape.bored, every, tape, scribed=scribed))


def _on_tenon(
    shape: Pegged, own: str, told: tuple[Finding, ...], tape: Tape, *, scribed: bool
) -> Feature:
    tenon, bored = shape.tenon, shape.bored
    mate = bored.mortise.stick.name if bored else "its mate"
    end = tenon.stick.pose.words(tenon.end)
    return Feature(
        id=own,
        timber=tenon.stick.id,
        title=f"{end.capitalize()} tenon pegs{_by_hand(scribed)}",
        at=tenon.shoulder,
        place=tenon.places,
        cuts=() if scribed else hole_cuts(shape.holes),
        lines=() if scribed else tenon_lines(shape, tape),
        tasks=(
            prick(shape.holes, tenon.end, mate),
            *(scribed_tenon_tasks(shape, tape) if scribed else ()),
            bore_tenon(shape.holes, towards_shoulder(shape.pegs, end, tape)),
        ),
        awaits=_bored_first(bored),
        mated=bored is not None,
        findings=told_on(tenon.stick.id, own, told),
        scribed=scribed,
    )


def _bored_first(bored: Bored | None) -> tuple[Awaits, ...]:
    if bored is None:
        return ()
    return (Awaits(bored.mortise.stick.id, f"{pegs_id(bored.mortise.feature)}/{BORE}"),)


def _by_hand(scribed: bool) -> str:
    return ", scribed" if scribed else ""


def _on_receiver(
    shape: Pegged, bored: Bored, told: tuple[Finding, ...], tape: Tape, *, scribed: bool
) -> Feature:
    mortise, tenon = bored.mortise, shape.tenon
    other = pegs_id(mortise.feature)
    bore = bore_received(bored.holes, tenon.stick.name)
    return Feature(
        id=other,
        timber=mortise.stick.id,
        title=f"Pegs for {tenon.stick.name}{_by_hand(scribed)}",
        at=mortise.along[0],
        place=(mortise.feature,),
        cuts=() if scribed else hole_cuts(bored.holes),
        lines=() if scribed else bored_lines(shape, bored, tape),
        tasks=(*(scribed_bored_tasks(shape, bored, tape) if scribed else ()), bore),
        awaits=() if scribed else (Awaits(tenon.stick.id, f"{tenon.feature}/{AS_CUT}"),),
        mated=not scribed,
        findings=told_on(mortise.stick.id, other, told),
        scribed=scribed,
    )
