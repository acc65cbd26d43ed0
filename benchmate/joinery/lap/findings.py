"""What can be wrong with a lap, one function and one code each."""

from collections.abc import Iterator

from benchmate.frame.reduction import under_inner
from benchmate.joinery.lap.lie import Crossing
from benchmate.joinery.lap.shape import Half, reading
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, stop

_LEVELS = "check where the two stand, their sections and which side it comes in from"


def no_overlap(first: Half, met: Crossing, tape: Tape) -> Finding | None:
    """The two timbers do not cross at their levels, so there is nothing to lap.

    One lies clear of the other or only touches it. Example: a tie laid on top of a plate instead
    of let down over it. Remedy: check the levels of both.
    """
    if met.common > ZERO:
        return None
    apart = f"{tape.text(-met.common)} apart" if met.common else "face to face"
    return stop(
        "lap-no-overlap",
        first.stick.id,
        first.lie.place,
        f"{first.stick.name} and {first.mate.stick.name} lie {apart}, so neither goes into the "
        "other",
        _LEVELS,
    )


def share_too_much(first: Half, met: Crossing, tape: Tape) -> Finding | None:
    """More is to be cut from one timber than the two have in common, or less than nothing.

    The other would then have to reach further than it does. Example: a share of 3" where a tie is
    let down 2". Remedy: a share from nothing to the height they have in common.
    """
    if ZERO <= met.share <= met.common:
        return None
    return stop(
        "lap-share",
        first.stick.id,
        first.lie.place,
        f"A share of {tape.text(met.share)} is to be cut from {first.mate.stick.name}, but the two "
        f"have {tape.text(met.common)} in common",
        f'make "share" from nothing to {tape.text(met.common)}',
    )


def nothing_left(half: Half, tape: Tape) -> Finding | None:
    """The lap is deeper than the stick, so it would be cut in two.

    Example: a lap that leaves 1" of a rafter which came 1-1/8" thin. Remedy: another stick, less
    share, or timbers that lie higher or lower to one another.
    """
    if half.left > ZERO:
        return None
    return stop(
        "lap-nothing-left",
        half.stick.id,
        half.lie.place,
        f"The lap goes {tape.text(half.depth)} deep, but {half.stick.name} is only "
        f"{tape.text(half.real_deep)} there",
        f"choose another stick, change the share, or {_LEVELS}",
    )


def short_of_the_bed(half: Half, tape: Tape) -> Finding | None:
    """A stick is so small that it does not reach the bed, and lies on nothing there.

    Example: a tie let down 2" that is all to be cut from the plate, measuring 1/8" under its depth
    as drawn. Remedy: another stick, or a share that leaves some to be cut from both.
    """
    if half.depth >= ZERO:
        return None
    return stop(
        "lap-short",
        half.stick.id,
        half.lie.place,
        f"{half.stick.name} is {tape.text(half.real_deep)} there, {tape.text(-half.depth)} too "
        f"little to lie on {half.mate.stick.name}",
        "choose another stick, or change the share so that both lose some",
    )


def past_a_shoulder(half: Half, tape: Tape) -> Finding | None:
    """A notch runs past a shoulder of its timber, or the two do not meet at all.

    Remedy: check where the two stand, and where their ends come.
    """
    if half.end is not None:
        return None
    over = half.stick.past_room(*half.reach)
    if over <= ZERO:
        return None
    return stop(
        "lap-past-shoulder",
        half.stick.id,
        half.lie.place,
        f"The notch runs {tape.text(over)} past a shoulder of {half.stick.name}",
        f"check where {half.mate.stick.name} crosses it, and where its own ends come",
    )


def flare_too_much(first: Half, tape: Tape) -> Finding | None:
    """The flare eats the timber: nothing is left of the tail where it is narrowest.

    Example: 3" off each side of a 6" tie. Remedy: less flare.
    """
    tail = first.tail
    if tail is None or tail.narrow > ZERO:
        return None
    return stop(
        "lap-flare",
        first.stick.id,
        first.lie.place,
        f"The flare takes {tape.text(tail.near + tail.far)} of {tape.text(tail.wide)}, so no tail "
        "is left at the shoulder",
        "make the flare less",
    )


def nothing_to_hold(second: Half, tape: Tape) -> Finding | None:  # noqa: ARG001 - a check
    """A tail or a cog needs a notch, and nothing is cut from the timber that should have it.

    Example: a dovetail with a share of nothing. Remedy: more share, or no tail and no cog.
    """
    holds = bool(second.cog) or any(any(wall.normal[1:]) for wall in second.walls)
    if not holds or second.depth > ZERO:
        return None
    return stop(
        "lap-holds-nothing",
        second.stick.id,
        second.lie.place,
        f"Nothing is cut from {second.stick.name}, so no tail or cog can hold there",
        "make the share more, or take the flare or the cog out",
    )


def cog_outside(second: Half, tape: Tape) -> Finding | None:
    """The cog does not lie within its timber, or fills the whole notch.

    Example: a 4" cog set back 5" on an 8" plate. Remedy: a narrower cog, or less set-back.
    """
    if not second.cog:
        return None
    near, far = (reading(plane, second.lie.wide) for plane in second.cog)
    if near >= ZERO and far <= second.real_wide and (near, far) != (ZERO, second.real_wide):
        return None
    return stop(
        "lap-cog",
        second.stick.id,
        second.lie.place,
        f"The cog runs from {tape.text(near)} to {tape.text(far)} in from the reference face of a "
        f"stick that is {tape.text(second.real_wide)} there",
        "make the cog narrower, or set it back less",
    )


def slot_through(first: Half, tape: Tape) -> Finding | None:
    """The slot over the cog would cut its timber right through.

    The cog stands as high as its own timber, and that is as high as the one let in. Remedy: a lap
    without a cog, or a timber that rises above the other.
    """
    if not first.slot or first.ledge is not None:
        return None
    return stop(
        "lap-slot-through",
        first.stick.id,
        first.lie.place,
        f"The slot over the cog would cut {first.stick.name} right through, at "
        f"{tape.text(first.real_deep)}",
        "take the cog out, or let the timber rise above the other",
    )


def told(first: Half, second: Half, met: Crossing, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one lap; where nothing crosses, only that."""
    apart = no_overlap(first, met, tape)
    if apart is not None:
        return (apart,)
    found = [share_too_much(first, met, tape), *_of_each(first, second, tape)]
    found += [flare_too_much(first, tape), slot_through(first, tape)]
    found += [nothing_to_hold(second, tape), cog_outside(second, tape)]
    return (
        *(finding for finding in found if finding),
        *(
            each
            for half in (first, second)
            for each in under_inner(half.stick, half.lie.place, (half.lie.place,), tape)
        ),
    )


def _of_each(first: Half, second: Half, tape: Tape) -> Iterator[Finding | None]:
    for check in (nothing_left, short_of_the_bed, past_a_shoulder):
        for half in (first, second):
            yield check(half, tape)
