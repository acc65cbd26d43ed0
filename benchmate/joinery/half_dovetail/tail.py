"""The tie's own side: what comes off round the tail, and the lines that bound it."""

from benchmate.frame.cheeks import SHOULDER, cheek_lines
from benchmate.frame.marking import Says, square_mark, tapering_mark
from benchmate.frame.practice import NOT_OVERALL, unsure
from benchmate.frame.reduction import reduction_cuts, reduction_lines, side_words
from benchmate.frame.settings import taper_setting
from benchmate.joinery.half_dovetail.shape import FAR_FACE, LAND, STRAIGHT, TAIL, TailShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Beside, Line
from benchmate.model.solids import Axis, Cut, Plane, above, below

BOTH_POINTS = (
    "Set off both ends of this line, then join them: it slopes. The tail is deepest at its end, "
    "not at the shoulder."
)
"""A tail cut the wrong way round draws out of its mortise: common practice, no source."""


def tail_cuts(shape: TailShape) -> tuple[Cut, ...]:
    """The wood beside the cheeks, under the tail's slope, and what goes by square rule."""
    shoulder = _beyond(shape)
    reduced = shape.reduction
    found = [
        *shape.cheeks.cuts(shoulder, reduced=shape.cheeks.axis in reduced.to),
        Cut((shoulder, shape.slope(shape.root, shape.tail, TAIL))),
    ]
    if shouldered_over(shape):
        found.append(Cut((shoulder, _over(shape))))
    if shape.landed and not (shape.edges in reduced.to and reduced.line(shape.edges) == LAND):
        found.append(Cut((shoulder, shape.outside(shape.tail, LAND))))
    return (*found, *reduction_cuts(reduced))


def shouldered_over(shape: TailShape) -> bool:
    """Whether there is a shoulder on the face over the straight edge as well."""
    return shape.straightened and shape.edges not in shape.reduction.to


def _beyond(shape: TailShape) -> Plane:
    bound = below if shape.end is Face.REFERENCE_END else above
    return bound(Axis.ALONG, shape.shoulder, SHOULDER)


def _over(shape: TailShape) -> Plane:
    """The straight edge of a tenon that a far face stands proud of."""
    return above(shape.edges, shape.straight, STRAIGHT)


def tail_lines(shape: TailShape, tape: Tape) -> tuple[Line, ...]:
    """The shoulder, the cheeks, the straight edge, then the tail, in the order they are struck."""
    found = [
        _shoulder(shape),
        *cheek_lines(shape.cheeks, reduced=shape.cheeks.axis in shape.reduction.to),
    ]
    if shape.straightened:
        found.append(_straight(shape))
    if shape.beyond > ZERO:
        found.append(_far_face(shape))
    found.append(_tail(shape, tape))
    if shape.landed:
        found.append(_land(shape))
    return (*found, *reduction_lines(shape.reduction))


def _shoulder(shape: TailShape) -> Line:
    reference = shape.end is Face.REFERENCE_END
    says = Says(
        title="Shoulder line",
        beside=(Beside(shape.length, "tenon beyond it"), *end_beside(shape)),
        why=(
            "The timber bears here. Square it round from the reference arris, then measure "
            "everything from this line. "
            if reference
            else "The timber bears here: shoulder to shoulder is the length that counts. "
        )
        + f"The tenon goes right through {shape.post}.",
        caution=" ".join(filter(None, (waiting(shape), "" if reference else NOT_OVERALL))),
    )
    return square_mark(_beyond(shape), says)


def waiting(shape: TailShape) -> str:
    """The caution while the post's faces have not been measured; a reference shoulder waits less.

    It is struck from its own end, which comes as far beyond it as the tenon is long.
    """
    return unsure(shape.stick, beyond=shape.end if shape.end is Face.REFERENCE_END else None)


def end_beside(shape: TailShape) -> tuple[Beside, ...]:
    """Where the tenon's end comes; nothing for one that is flush with the post's far face."""
    if not shape.beyond:
        return ()
    words = "proud of" if shape.beyond > ZERO else "short of"
    return (Beside(abs(shape.beyond), f"{words} {shape.way_out}, at the tenon's end"),)


def _straight(shape: TailShape) -> Line:
    face = shape.stick.pose.words(shape.wedged)
    on = " Run it on past the shoulder, as far as the reduction end line."
    says = Says(
        title=f"Straight edge line, {side_words(face)}",
        beside=(
            Beside(shape.real_edges - shape.straight, f"to come off the {face}"),
            Beside(shape.root, "of tenon left at the shoulder"),
        ),
        why=(
            "The edge that the wedge is driven over, by square rule at the inner timber."
            f"{on if shape.edges in shape.reduction.to else ''}"
        ),
        caution=f"Never measure this from the {face}.",
    )
    return square_mark(_over(shape), says)


def _far_face(shape: TailShape) -> Line:
    says = Says(
        title="Far face line",
        why=(
            f"Where {shape.way_out} comes on the tenon: the tail's slope ends here, and what is "
            "beyond stands out past the post."
        ),
        caution="Pencil it lightly, and do not saw here.",
        faces=LONG_FACES,
    )
    return square_mark(below(Axis.ALONG, shape.along(shape.passed), FAR_FACE), says)


def _tail(shape: TailShape, tape: Tape) -> Line:
    plane = shape.slope(shape.root, shape.tail, TAIL)
    where = ("shoulder line", "far face line" if shape.beyond > ZERO else "tenon's end")
    says = Says(
        title="Tail line",
        beside=(
            Beside(shape.flare, f"deeper there than at the shoulder, in {tape.text(shape.run)}"),
            *_from_straight_edge(shape),
        ),
        why="The tail widens towards its end, so the tie cannot draw back once it is wedged.",
        caution=BOTH_POINTS,
        setting=taper_setting(shape.run.nm, shape.flare.nm, tape),
    )
    return tapering_mark(plane, (shape.along(ZERO), shape.along(shape.run)), where, says)


def _from_straight_edge(shape: TailShape) -> tuple[Beside, ...]:
    """The tenon's two depths, where the line's own figures do not count from its straight edge."""
    if shape.sense > 0:
        return ()
    return (Beside(shape.root, "of tenon at the shoulder"), Beside(shape.tail, "at its end"))


def _land(shape: TailShape) -> Line:
    says = Says(
        title="Tail edge line, past the post",
        beside=(Beside(shape.tail, "of tenon left"),),
        why="Past the post the tenon stays as deep as its tail: more would not come in.",
    )
    return square_mark(shape.outside(shape.tail, LAND), says)
