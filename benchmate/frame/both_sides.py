"""The two sides of a joint that is made first at an end and then cut to it in another stick.

Each function gives what every family says alike; the family adds its cuts, lines, tasks and sizes.
"""

from typing import Protocol

from benchmate.frame.mated import Sides, follows_words
from benchmate.frame.meeting import Meeting
from benchmate.frame.practice import AS_CUT, awaits_measuring
from benchmate.frame.reduction import under_inner
from benchmate.frame.stick_end import CheekedEnd, StickEnd
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, told_on
from benchmate.model.stick import Stick


def end_side(
    made: StickEnd, kind: str, told: tuple[Finding, ...], *, passes: bool = False
) -> Feature:
    """The side of the end that is made: `West end tenon` for a `kind` of "tenon".

    `told` is all that is told of the joint. At the far end it waits for whatever settles the length
    of its stick; one that `passes` right through a timber waits for that one at either end.
    """
    return Feature(
        id=made.feature,
        timber=made.stick.id,
        title=f"{made.stick.pose.words(made.end).capitalize()} {kind}",
        at=made.shoulder,
        place=made.places,
        awaits=_lengths_first(made, passes=passes),
        findings=told_on(made.stick.id, made.feature, told),
    )


def _lengths_first(made: StickEnd, *, passes: bool) -> tuple[Awaits, ...]:
    """The measuring an end waits for: at the reference end only what its own length follows."""
    if made.end is Face.FAR_END:
        return awaits_measuring(made.stick)
    return awaits_measuring(made.stick, beyond=made.end) if passes else ()


class Received(Protocol):
    """What is cut to a finished end: a mortise, a notch, a pocket or a socket."""

    @property
    def stick(self) -> Stick:
        """The stick it is cut in."""

    @property
    def feature(self) -> str:
        """Its id there."""


def mated_side(
    received: Received,
    made: StickEnd,
    told: tuple[Finding, ...],
    *,
    noun: str,
    at: Length,
    after: str = AS_CUT,
) -> Feature:
    """The side that is cut to the end `made`: `Mortise for Tie` for a `noun` of "Mortise".

    It starts `at` a reading along its stick. `after` is the task after which the real sizes of that
    end are known, and `told` all that is told of the joint.
    """
    return Feature(
        id=received.feature,
        timber=received.stick.id,
        title=f"{noun} for {made.stick.name}",
        at=at,
        place=(received.feature,),
        awaits=(Awaits(made.stick.id, f"{made.feature}/{after}"),),
        mated=True,
        findings=told_on(received.stick.id, received.feature, told),
    )


def both_under_inner(made: StickEnd, received: Received, tape: Tape) -> tuple[Finding, ...]:
    """What to tell of sticks that are smaller here than their inner timber, the end's first."""
    return (
        *under_inner(made.stick, made.feature, made.places, tape),
        *under_inner(received.stick, received.feature, (received.feature,), tape),
    )


def sides_for(made: CheekedEnd, met: Meeting, stick: Stick, feature: str, tape: Tape) -> Sides:
    """The two sides of the mortise `feature` in a stick, as wide as the tenon was cut."""
    cheeks, name = made.cheeks, made.stick.name
    as_cut = made.as_cut.get("thickness")
    return Sides(
        stick=stick,
        feature=feature,
        axis=met.across,
        span=met.across_span(cheeks.near, cheeks.near + made.real("thickness")),
        end=met.across_span(ZERO, cheeks.framed),
        same_side=met.same_side,
        set_back=cheeks.near,
        mate=name,
        follows=follows_words(f"{name}'s tenon", "thick", as_cut, cheeks.thickness, tape),
    )
