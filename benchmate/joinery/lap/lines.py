"""The lines to strike for a lap on one of its timbers."""

from collections.abc import Iterator

from benchmate.frame.marking import Says, square_mark
from benchmate.frame.practice import unsure
from benchmate.frame.reduction import measured_words, really_words, side_words
from benchmate.joinery.lap.cuts import bounding
from benchmate.joinery.lap.holding import holding_lines
from benchmate.joinery.lap.limits import limits
from benchmate.joinery.lap.shape import LEDGE, REDUCED, SHOULDER, START, Half
from benchmate.joinery.lap.socket import socket_line
from benchmate.joinery.lap.telling import (
    ENGINEER,
    as_placed,
    beyond_words,
    follows,
    from_far,
    ledge_title,
    ledge_words,
)
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Beside, Line
from benchmate.model.solids import Plane
from benchmate.model.stick import reference_for

NOT_OVERALL = "Shoulder to shoulder, not overall: the lap lies beyond."


def lines(half: Half, tape: Tape) -> tuple[Line, ...]:
    """How far down the others go, the shoulder or the notch's ends, the bed, and what holds it.

    What is reduced comes last.
    """
    bounds = bounding(half)
    return (
        *_ledge(half, bounds),
        *_walls(half, bounds, tape),
        *_bed(half, bounds, tape),
        *holding_lines(half, tape),
        *_reduced(half),
    )


def _walls(half: Half, bounds: dict[str, Plane], tape: Tape) -> Iterator[Line]:
    for wall in sorted(half.walls, key=lambda wall: wall.normal[0]):
        if half.end is not None:
            yield _shoulder(half, wall, struck=SHOULDER in bounds)
        elif wall.line in bounds and any(wall.normal[1:]):
            yield socket_line(half, wall, tape)
        elif wall.line in bounds:
            yield _notch_end(half, wall, tape)


def _shoulder(half: Half, wall: Plane, *, struck: bool) -> Line:
    stick, mate = half.stick, half.mate.stick
    reference = half.end is Face.REFERENCE_END
    near = mate.pose.words(mate.pose.face(stick.pose.direction(half.tip).opposite))
    past = Beside(half.past, f"of that runs on past {mate.name}")
    why = (
        "Square it round from the reference arris, then measure everything from this line."
        if reference
        else "Shoulder to shoulder is the length that counts."
    )
    cautions = (
        unsure(stick, beyond=half.tip) if reference else unsure(stick),
        "" if reference else NOT_OVERALL,
        *limits(half),
        "" if struck else "Pencil it only: nothing is cut to it.",
    )
    says = Says(
        title="Shoulder line",
        beside=(
            Beside(stick.near if reference else stick.far, "of lap beyond it"),
            *((past,) if half.past else ()),
        ),
        why=f"{mate.name}'s {near} comes here. {why}",
        caution=" ".join(filter(None, cautions)),
        waste=beyond_words(half),
        faces=() if struck else LONG_FACES,
    )
    return square_mark(wall, says)


def _notch_end(half: Half, wall: Plane, tape: Tape) -> Line:
    name = "start" if wall.line == START else "finish"
    says = Says(
        title=f"Notch {name} line",
        beside=_width(half),
        why=f"As wide as {half.mate.stick.name} lies in it. {follows(half, 'width', tape)}",
    )
    return square_mark(wall, says)


def _width(half: Half) -> tuple[Beside, ...]:
    if half.span is None:
        return ()
    start, finish = half.span
    return (Beside(finish - start, "notch width"),)


def _bed(half: Half, bounds: dict[str, Plane], tape: Tape) -> Iterator[Line]:
    if half.bed.line not in bounds:
        return
    words, mate = half.stick.pose.words, half.mate.stick.name
    cut, kept = words(half.cut_face), words(half.cut_face.opposite)
    far = from_far(half.stick, half.lie.deep) if not half.cut_face.is_reference else ""
    says = Says(
        title="Lap line" if half.end is not None else "Notch floor line",
        beside=(
            Beside(half.depth, f"to come off the {cut}"),
            Beside(half.left, f"left of it, to the {kept}"),
        ),
        why=f"It and {mate} lie on one another here. {as_placed(half, tape)}",
        caution=f"{far} {ENGINEER}".lstrip(),
    )
    yield square_mark(half.bed, says)


def _ledge(half: Half, bounds: dict[str, Plane]) -> Iterator[Line]:
    if LEDGE not in bounds:
        return
    title = ledge_title(half)
    says = Says(
        title=title[:1].upper() + title[1:],
        why=f"{title.removeprefix('line of ')} comes here. {ledge_words(half)}",
        waste=_beside_the_tail(half),
    )
    yield square_mark(bounds[LEDGE], says)


def _beside_the_tail(half: Half) -> str:
    """That the ledge's line bounds only what goes beside a tail; nothing where there is none."""
    if half.tail is None:
        return ""
    cut = half.stick.pose.words(half.cut_face)
    across = " Across the tail the lap line counts." if half.depth > ZERO else ""
    return f"Towards the {cut}, beside the tail only, in to the flank lines.{across}"


def _reduced(half: Half) -> Iterator[Line]:
    """What comes off the far face by square rule, and where that stops if no other line does."""
    if not half.reduced:
        return
    stick, wide = half.stick, half.lie.wide
    far = stick.pose.words(reference_for(wide).opposite)
    mate = half.mate.stick
    for plane in half.reduced:
        if plane.line == REDUCED:
            says = Says(
                title=f"Reduction line, {side_words(far)}",
                beside=(Beside(half.lie.over, f"to come off the {far}"),),
                why=(
                    f"Only what lies inside this line is let into {mate.name}. "
                    f"{measured_words(stick, wide, (half.lie.place,))}"
                ),
                caution=from_far(stick, wide),
            )
            yield square_mark(plane, says)
        elif str(plane.line).startswith("reduction"):
            known = really_words(mate, half.mate.wide, (half.mate.place,))
            name = str(plane.line).replace("-", " ").capitalize()
            says = Says(
                title=f"{name} line",
                why=f"As far as {mate.name} really comes along it. {known}",
                caution=f"Only on the {far}, outside the reduction line.",
            )
            yield square_mark(plane, says)
