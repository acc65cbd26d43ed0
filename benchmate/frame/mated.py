"""What every mortise that is cut to a finished tenon has: its sides, and what they follow."""

from dataclasses import dataclass

from benchmate.frame.marking import Says, square_mark
from benchmate.frame.meeting import Span
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line
from benchmate.model.findings import Finding, look, stop
from benchmate.model.solids import Axis, Plane, above, below
from benchmate.model.stick import Stick, reference_for

NEAR, FAR = ("near-side", "far-side")
"""The lines of a mortise's two sides."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sides:
    """The two sides of the mortise `feature`, on the `axis` across its stick.

    `end` is what the whole end takes up across the stick, its tenon with it.
    `same_side` tells whether tenon and mortise are both measured from faces that look the same way;
    `set_back` is the tenon's, and `follows` says in a sentence what the width goes by.
    """

    stick: Stick
    feature: str
    axis: Axis
    span: Span
    end: Span
    same_side: bool
    set_back: Length
    mate: str
    follows: str

    @property
    def width(self) -> Length:
        """From side to side."""
        return self.span[1] - self.span[0]

    @property
    def real(self) -> Length:
        """How deep the real stick is across them."""
        return self.stick.depth(self.axis, self.feature)

    def planes(self) -> tuple[Plane, Plane]:
        """The two planes that the mortise lies between."""
        near, far = self.span
        return (above(self.axis, near, NEAR), below(self.axis, far, FAR))


def side_lines(sides: Sides) -> tuple[Line, Line]:
    """The near side line and the far one."""
    near, far = sides.planes()
    wide = (Beside(sides.width, "mortise width"),)
    held = (
        "The set-back, so that the faces come flush."
        if sides.set_back
        else f"No set-back: the tenon runs on from the face of {sides.mate}."
    )
    whys = [f"{held} {sides.follows}", sides.follows]
    first, second = whys if sides.same_side else whys[::-1]
    other = sides.stick.pose.words(reference_for(sides.axis).opposite)
    return (
        square_mark(near, Says(title="Near side line", beside=wide, why=first)),
        square_mark(
            far,
            Says(
                title="Far side line",
                beside=wide,
                why=second,
                caution=f"Never measure this from the {other}.",
            ),
        ),
    )


def follows_words(tenon: str, size: str, as_cut: Length | None, drawn: Length, tape: Tape) -> str:
    """What a size of a mortise goes by: its tenon as cut, or as drawn, in a sentence."""
    if as_cut is None:
        return f"Follows {tenon} as drawn; it has not been measured as cut."
    return f"Follows {tenon} as cut: {tape.text(as_cut)} {size}, laid out as {tape.text(drawn)}."


def inside(stick: Stick, plane: Plane, place: str, *, real: bool = False) -> bool:
    """Whether a square plane lies inside the wood the frame counts on, so that it is a wall.

    One in a face or past it leaves a recess open there. `real` asks after the wood as it really is.
    """
    number = next(axis for axis, part in enumerate(plane.normal) if part)
    at = Length(plane.offset * plane.normal[number])
    if number == 0:
        return stick.start < at < stick.finish
    axis = Axis.FIRST if number == 1 else Axis.SECOND
    return ZERO < at < (stick.depth if real else stick.framed)(axis, place)


def outside_the_side(sides: Sides, code: str, tape: Tape) -> Finding | None:
    """A side of the mortise lies in the air.

    The tenoned timber stands too far in or out across the one that receives it. Remedy: check where
    both stand, and the set-back.
    """
    near, far = sides.span
    if near >= ZERO and far <= sides.real:
        return None
    return stop(
        code,
        sides.stick.id,
        sides.feature,
        f"The mortise runs from {tape.text(near)} to {tape.text(far)} in from the reference face "
        f"of a stick that is {tape.text(sides.real)} there",
        f"check where {sides.mate} stands across {sides.stick.name}, and its set-back",
    )


def end_past_the_side(sides: Sides, code: str, tape: Tape) -> Finding | None:
    """The end stands out past a face of the timber that receives it.

    Part of its shoulder bears on nothing. Example: a tie 2" clear of its post's outside face.
    Remedy: check where the two stand.
    """
    near, far = sides.end
    low, high = -near, far - sides.stick.framed(sides.axis, sides.feature)
    over = max(low, high)
    if over <= ZERO:
        return None
    reference = reference_for(sides.axis)
    past = sides.stick.pose.words(reference if low == over else reference.opposite)
    return look(
        code,
        sides.stick.id,
        sides.feature,
        f"{sides.mate} stands {tape.text(over)} out past the {past} of {sides.stick.name}",
        "check where the two stand, if that is not meant",
    )


def open_at_the_side(sides: Sides, code: str) -> Finding | None:
    """A side of the mortise lies in a face of its timber, so it is open all along.

    Its tenon is held on three sides only, and shows. Remedy: more set-back, or stand the tenoned
    timber further in.
    """
    near, far = sides.span
    if near and far != sides.real:
        return None
    reference = reference_for(sides.axis)
    words = sides.stick.pose.words(reference.opposite if near else reference)
    return look(
        code,
        sides.stick.id,
        sides.feature,
        f"The mortise has no wall at the {words}",
        "give the tenon more set-back, or stand its timber further in",
    )
