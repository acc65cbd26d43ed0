"""The pegs of a brace as work on both timbers, each apart from its tenon or mortise.

They are bored in the one timber after its mortise is made, and in the brace from the fitted joint.
"""

from benchmate.frame.peg_steps import BORE, bore_received, bore_tenon, prick
from benchmate.frame.pegs import hole_cuts
from benchmate.frame.practice import AS_CUT
from benchmate.joinery.brace.peg_findings import peg_findings
from benchmate.joinery.brace.peg_lines import bored_lines, draw_words, own_lines
from benchmate.joinery.brace.pegged import Pegged
from benchmate.measure.printing import Tape
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, Severity, told_on


def peg_features(shape: Pegged, told: tuple[Finding, ...], tape: Tape) -> tuple[Feature, ...]:
    """The pegs on the brace, and on the timber it enters.

    `told` is what is wrong with the joint itself: what stops that stops its pegs.
    """
    own, other = f"{shape.brace.feature}-pegs", f"{shape.hole.feature}-pegs"
    stops = tuple(each for each in told if each.severity is Severity.STOP)
    every = (*stops, *peg_findings(shape, own, other, tape))
    return (_on_brace(shape, own, other, every, tape), _on_receiver(shape, other, every, tape))


def _on_brace(
    shape: Pegged, own: str, other: str, told: tuple[Finding, ...], tape: Tape
) -> Feature:
    brace = shape.brace
    return Feature(
        id=own,
        timber=brace.stick.id,
        title=f"{brace.end_words.capitalize()} tenon pegs",
        at=brace.shoulder,
        place=brace.places,
        cuts=hole_cuts(shape.own),
        lines=own_lines(shape, tape),
        tasks=(
            prick(shape.own, brace.end, shape.hole.stick.name, rakes=True),
            bore_tenon(shape.own, draw_words(shape, tape)),
        ),
        awaits=(Awaits(shape.hole.stick.id, f"{other}/{BORE}"),),
        mated=True,
        findings=told_on(brace.stick.id, own, told),
    )


def _on_receiver(shape: Pegged, other: str, told: tuple[Finding, ...], tape: Tape) -> Feature:
    hole, brace = shape.hole, shape.brace
    return Feature(
        id=other,
        timber=hole.stick.id,
        title=f"Pegs for {brace.stick.name}",
        at=hole.along[0],
        place=(hole.feature,),
        cuts=hole_cuts(shape.bored.holes),
        lines=bored_lines(shape, tape),
        tasks=(bore_received(shape.bored.holes, brace.stick.name),),
        awaits=(Awaits(brace.stick.id, f"{brace.feature}/{AS_CUT}"),),
        mated=True,
        findings=told_on(hole.stick.id, other, told),
    )
