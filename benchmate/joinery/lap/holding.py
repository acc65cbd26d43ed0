"""What keeps a lap from drawing: a tail, or a slot over a cog that is left standing."""

from collections.abc import Iterator

from benchmate.frame.marking import Says, square_mark, tapering_mark
from benchmate.frame.reduction import measured_words, side_words
from benchmate.joinery.lap.cuts import bounding
from benchmate.joinery.lap.limits import slot_limit
from benchmate.joinery.lap.shape import (
    COG_NEAR,
    LEDGE,
    OUTSIDE,
    SLOT_FINISH,
    SLOT_START,
    Half,
    reading,
)
from benchmate.joinery.lap.tail import Tail
from benchmate.joinery.lap.telling import follows, from_far, shrinks
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Beside, Line
from benchmate.model.solids import Axis, Plane


def holding_lines(half: Half, tape: Tape) -> Iterator[Line]:
    """The flanks of a tail, the sides of a slot, or those of a cog."""
    bounds = bounding(half)
    if half.outside is not None and (half.tail is not None or OUTSIDE in bounds):
        yield _outside(half, half.outside, struck=OUTSIDE in bounds)
    if half.tail is not None:
        for face, plane in half.tail.flanks.items():
            yield _flank(half, half.tail, face, plane, tape)
    for plane in sorted(half.slot, key=lambda plane: plane.normal[0]):
        if plane.line in (SLOT_START, SLOT_FINISH):
            yield _slot_side(half, plane)
    for plane in half.cog:
        if plane.line in bounds:
            yield _cog_side(half, plane, tape)


def _mouth_words(half: Half) -> str:
    """What a flank ends on: the end of the timber, or the line of the other's far face."""
    end = half.stick.pose.words(half.tip)
    return f"line of {_outside_words(half)}" if half.past else end


def _outside_words(half: Half) -> str:
    mate, heading = half.mate.stick, half.stick.pose.direction(half.tip)
    return f"{mate.name}'s {mate.pose.words(mate.pose.face(heading))}"


def _outside(half: Half, plane: Plane, *, struck: bool) -> Line:
    widest = "The tail is widest here, and the" if half.tail is not None else "The"
    says = Says(
        title=f"Line of {_outside_words(half)}",
        beside=(Beside(half.past, "of the timber beyond it"),),
        why=f"{widest} timber runs on past it.",
        caution="Only where it is reduced." if struck else "Pencil it only: nothing is cut to it.",
        faces=() if struck else LONG_FACES,
    )
    return square_mark(plane, says)


def _flank(half: Half, tail: Tail, face: Face, plane: Plane, tape: Tape) -> Line:
    words = half.stick.pose.words
    flare = tail.near if face.is_reference else tail.far
    far = "" if face.is_reference else f"{from_far(half.stick, tail.axis)} "
    over = ZERO if face.is_reference else half.lie.over
    says = Says(
        title=f"Flank line, {side_words(words(face))}",
        beside=(
            Beside(flare + over, f"to come off the {words(face)} at the shoulder"),
            Beside(tail.narrow, "of tail left at the shoulder"),
            Beside(tail.wide, f"wide at the {_mouth_words(half)}"),
        ),
        why=(
            f"Narrow where it comes in, so that it cannot draw out of {half.mate.stick.name}."
            f"{_wide_words(half, face)}"
        ),
        caution=f"{far}{shrinks(tape)}",
    )
    where = ("shoulder line", _mouth_words(half))
    return tapering_mark(plane, (tail.root, tail.mouth), where, says)


def _wide_words(half: Half, face: Face) -> str:
    """Whether the width that the far flank counts from is known, after another sentence."""
    if face.is_reference:
        return ""
    if half.stick.inner is not None:
        return " Square rule: the tail is as wide as the inner timber, whatever the stick."
    return f" {measured_words(half.stick, half.lie.wide, (half.lie.place,))}"


def _slot_side(half: Half, plane: Plane) -> Line:
    name = "start" if plane.line == SLOT_START else "finish"
    says = Says(
        title=f"Slot {name} line",
        beside=(Beside(slot_width(half), "slot width"),),
        why=f"The slot goes over the cog that is left standing in {half.mate.stick.name}.",
        caution=slot_limit(half),
    )
    return square_mark(plane, says)


def slot_width(half: Half) -> Length:
    """From start to finish of the slot."""
    one, other = (reading(plane, Axis.ALONG) for plane in half.slot if plane.line != LEDGE)
    return abs(one - other)


def _cog_side(half: Half, plane: Plane, tape: Tape) -> Line:
    near, far = (reading(each, half.lie.wide) for each in half.cog)
    says = Says(
        title=f"Cog {'near' if plane.line == COG_NEAR else 'far'} line",
        beside=(Beside(far - near, "of cog left standing"),),
        why=f"The cog keeps {half.mate.stick.name} in its place. {follows(half, 'length', tape)}",
        caution="The cog stays: hatch beside it, never between its two lines.",
    )
    return square_mark(plane, says)
