"""What comes off a stick beyond its shoulder, and the lines to strike for it."""

from collections.abc import Iterator

from benchmate.frame.marking import Says, slanting_mark, square_mark, tapering_mark
from benchmate.frame.reduction import measured_words, unmeasured
from benchmate.frame.settings import slant_setting, taper_setting
from benchmate.joinery.scarf.shape import Half
from benchmate.joinery.scarf.words import (
    ENGINEER,
    RULE,
    far_words,
    follows,
    kept_words,
    lap_beside,
    words,
)
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Beside, Line
from benchmate.model.solids import Axis, Cut, above
from benchmate.model.stick import reference_for


def lap_cuts(half: Half) -> tuple[Cut, ...]:
    """The wood across from the lap, the tip where it leans, and what goes by square rule."""
    found = [Cut((half.abutment or half.shoulder, half.lap))]
    if half.point is not None:
        found.append(Cut((half.point,)))
    found += [
        Cut((half.shoulder, above(axis, at, reduced_line(axis))))
        for axis, at in half.reduced().items()
    ]
    return tuple(found)


def reduced_line(axis: Axis) -> str:
    """The line a far face is brought down to along the lap."""
    return f"reduced-{axis.name.lower()}"


def lap_lines(half: Half, tape: Tape) -> tuple[Line, ...]:
    """The shoulder and the abutment, the lap, the tip, and the far faces by square rule."""
    return (
        _shoulder(half),
        *_abutment(half, tape),
        _lap(half, tape),
        *_tip(half, tape),
        *_reduced(half),
    )


def _shoulder(half: Half) -> Line:
    beyond = Beside(abs(half.tip_at - half.at), "of lap beyond it")
    total = Beside(half.total, f"from end to end with {half.mate.name}, the lap counted once")
    if half.abutment is not None:
        says = Says(
            title="Shoulder line",
            beside=(beyond, total),
            why=(
                "Where the abutment's inner corner comes. It is nearer the body than any other "
                "place the two sticks bear, so everything is measured from it."
            ),
            caution=f"The abutment is not sawn along it: it leans.{_not_overall(half)}",
            faces=_leaning_faces(half),
        )
        return square_mark(half.shoulder, says)
    says = Says(
        title="Shoulder line",
        beside=(beyond, total),
        why=(
            f"{half.mate.name} bears here. Of the two places where they abut it is the one nearer "
            "the body, so everything is measured from it."
        ),
        caution=f"{_across_kept(half)}: the lap runs on along it.{_not_overall(half)}",
    )
    return square_mark(half.shoulder, says)


def _across_kept(half: Half) -> str:
    kept = words(half, half.keeps)
    if half.halved in half.reduced():
        return f"Across the {kept} no deeper than its reduction"
    return f"Never across the {kept}"


def _not_overall(half: Half) -> str:
    if half.end is Face.REFERENCE_END:
        return ""
    return " Shoulder to shoulder, not overall: the lap lies beyond."


def _leaning_faces(half: Half) -> tuple[Face, ...]:
    """Where a shoulder that is only measured from is struck: beside the lap, and where it stops."""
    reduced = (reference_for(axis).opposite for axis in half.reduced())
    near = reference_for(half.sides)
    faces = {near, near.opposite, *reduced}
    return tuple(face for face in LONG_FACES if face in faces)


def _abutment(half: Half, tape: Tape) -> Iterator[Line]:
    if half.abutment is None:
        return
    face = half.keeps.opposite
    start = half.real_deep if half.leads else ZERO
    says = Says(
        title="Abutment line",
        beside=(Beside(half.off(half.root), f"high, square in from the {words(half, face)}"),),
        why=(
            f"Under-squinted: it goes in under the {words(half, face)}, so that the tip of "
            f"{half.mate.name} cannot lift."
        ),
        caution=(
            f"{_by_far_face(half, leads=True)}Further in is further from the "
            f"{words(half, half.end)}: leaned the other way, nothing holds the tip."
        ),
        setting=slant_setting(half.squint.nm, half.butt.nm, tape),
    )
    where = (words(half, face), "splay line")
    yield slanting_mark(half.stick, half.abutment, (start, half.root), says, where)


def _by_far_face(half: Half, *, leads: bool) -> str:
    """The caution for a line set off on a far face that nobody has measured, or nothing."""
    on_far = half.leads is leads
    return unmeasured(half.stick, half.halved, half.places) if on_far else ""


def _lap(half: Half, tape: Tape) -> Line:
    far = far_words(half, half.halved)
    caution = f"Never measure this from the {far}. {ENGINEER}"
    shared = f"{follows(half, tape)} {RULE}"
    off = f"to come off the {words(half, half.keeps.opposite)}"
    if half.root == half.tip:
        says = Says(
            title="Lap line",
            beside=(Beside(half.off(half.root), off), lap_beside(half, tape)),
            why=f"Half the depth each. {shared}",
            caution=caution,
        )
        return square_mark(half.lap, says)
    says = Says(
        title="Splay line",
        beside=(
            Beside(half.off(half.root), f"{off} at the shoulder"),
            lap_beside(half, tape),
        ),
        why=f"From the one abutment to the other. {shared}",
        caution=caution,
        setting=taper_setting(half.reach.nm, abs(half.root - half.tip).nm, tape),
    )
    where = (f"tip, at the {words(half, half.end)}", "shoulder line")
    return tapering_mark(half.lap, (half.tip_at, half.at), where, says)


def _tip(half: Half, tape: Tape) -> Iterator[Line]:
    if half.point is None:
        return
    start = ZERO if half.leads else half.real_deep
    end, kept = words(half, half.end), words(half, half.keeps)
    says = Says(
        title="Tip line",
        beside=(Beside(half.left(half.tip), f"of butt, square in from the {kept_words(half)}"),),
        why=f"It fits in under the abutment of {half.mate.name}.",
        caution=(
            f"{_by_far_face(half, leads=False)}The tip reaches furthest at the splay, and less "
            f"along the {kept}."
        ),
        waste=f"Towards the {end}: the wedge along the {kept}.",
        setting=slant_setting(half.squint.nm, half.butt.nm, tape),
    )
    yield slanting_mark(half.stick, half.point, (start, half.tip), says, (kept, "splay line"))


def _reduced(half: Half) -> Iterator[Line]:
    for axis, at in half.reduced().items():
        far = far_words(half, axis)
        says = Says(
            title=f"Reduction line, {far}",
            beside=(Beside(half.stick.depth(axis, *half.places) - at, f"to come off the {far}"),),
            why=(
                "Square rule: along the lap both sticks come to the inner timber, so they are "
                f"flush. {measured_words(half.stick, axis, half.places)}"
            ),
            caution=f"Never measure this from the {far}.",
        )
        yield square_mark(above(axis, at, reduced_line(axis)), says)
