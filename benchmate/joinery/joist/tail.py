"""The dovetailed joist's own side: the wood that comes off its end, and the lines to strike."""

from benchmate.frame.marking import Says, square_mark, tapering_mark
from benchmate.frame.practice import unsure
from benchmate.frame.reduction import reduction_cuts, reduction_lines, side_words
from benchmate.joinery.joist.tail_shape import FAR, NEAR, UNDER, TailShape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line
from benchmate.model.solids import Cut, Plane, above
from benchmate.model.stick import reference_for

DRAWS = (
    "A dovetail draws as its wood shrinks, and the joint opens: use dry wood or a wedge. What it "
    "is to hold is for the engineer."
)
"""Dovetails across shrinking wood open (trade notes 2.5, TFG-etj, Tredgold-ties)."""


def tail_cuts(shape: TailShape) -> tuple[Cut, ...]:
    """What comes off each flank and the underside past the shoulder, and by square rule.

    What the reduction of the end takes off past the shoulder as well is left to that.
    """
    found = [Cut((shape.beyond, plane)) for plane in cut_flanks(shape)]
    if cut_under(shape):
        found.append(Cut((shape.beyond, above(shape.plumb, shape.deep, UNDER))))
    return (*found, *reduction_cuts(shape.reduction))


def cut_flanks(shape: TailShape) -> tuple[Plane, ...]:
    """The flanks that lose any wood: a straight one only where its stick is over its size."""
    (near, far), losing = shape.flanks, []
    if shape.flares[0]:
        losing.append(near)
    straight_over = shape.real_wide > shape.wide and shape.sides not in shape.reduction.to
    if shape.flares[1] or straight_over:
        losing.append(far)
    return tuple(losing)


def cut_under(shape: TailShape) -> bool:
    """Whether wood comes off below the tail that no reduction of the whole end takes."""
    whole = shape.deep == shape.framed and shape.plumb in shape.reduction.to
    return shape.real_deep > shape.deep and not whole


def tail_lines(shape: TailShape) -> tuple[Line, ...]:
    """The shoulder, the flanks, the underside, and what goes by square rule."""
    found = [_shoulder(shape), *_flanks(shape)]
    if shape.real_deep > shape.deep:
        found.append(_under(shape))
    return (*found, *reduction_lines(shape.reduction))


def flank_name(shape: TailShape, line: str) -> str:
    """What a flank is called on joist and beam alike: `West flank`."""
    return f"{shape.looks(line).word.capitalize()} flank"


def _shoulder(shape: TailShape) -> Line:
    follows = unsure(shape.stick) if shape.end is Face.FAR_END else ""
    says = Says(
        title="Shoulder line",
        beside=(Beside(shape.length, "of tail beyond it"), Beside(shape.neck, "of neck left here")),
        why="It comes to the beam's face: shoulder to shoulder is the length that counts.",
        caution=" ".join(filter(None, (follows, NECK))),
    )
    return square_mark(shape.beyond, says)


NECK = "Knife it only outside the flank lines: a cut across the neck would sever the tail."


def _flanks(shape: TailShape) -> tuple[Line, ...]:
    """Those that lose wood, be it by the reduction of the whole end."""
    (near, far), struck = shape.flanks, []
    if shape.flares[0]:
        struck.append(near)
    if shape.flares[1] or shape.real_wide > shape.wide:
        struck.append(far)
    return tuple(_flank(shape, plane) for plane in struck)


def _flank(shape: TailShape, plane: Plane) -> Line:
    line = NEAR if plane.line == NEAR else FAR
    near, far = shape.flares
    flare = near if line == NEAR else far
    name, top = flank_name(shape, line), reference_for(shape.plumb)
    if not flare:
        return square_mark(
            plane,
            Says(
                title=f"{name} line",
                why="Straight, at the inner timber: only what lies inside it goes into the beam.",
                caution=_not_from_far(shape),
            ),
        )
    says = Says(
        title=f"{name} line",
        beside=(Beside(flare, "of flare"), Beside(shape.neck, "of neck at the shoulder")),
        why=(
            "Join the two points: narrow at the shoulder, and out to the joist's side at the tip. "
            "Square them down the shoulder and the end."
        ),
        caution=" ".join(filter(None, (_not_from_far(shape) if line == FAR else "", DRAWS))),
        faces=(top,) if cut_under(shape) else (top, top.opposite),
    )
    return tapering_mark(plane, (shape.shoulder, shape.tip), ("shoulder line", "tail's end"), says)


def _not_from_far(shape: TailShape) -> str:
    far = reference_for(shape.sides).opposite
    return f"Never measure this from the {shape.stick.pose.words(far)}."


def _under(shape: TailShape) -> Line:
    under = shape.stick.pose.words(reference_for(shape.plumb).opposite)
    says = Says(
        title=f"Tail line, {side_words(under)}",
        beside=(Beside(shape.real_deep - shape.deep, f"to come off the {under}"),),
        why="The tail bears on this face: its depth is held from the top, so all tops come level.",
        caution=f"Never measure this from the {under}.",
    )
    return square_mark(above(shape.plumb, shape.deep, UNDER), says)
