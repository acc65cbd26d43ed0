"""The joist's own side: the wood that comes off its end, and the lines to strike for it."""

from benchmate.frame.marking import Says, slanting_mark, square_mark
from benchmate.frame.practice import bears_on, unsure
from benchmate.frame.reduction import reduction_cuts, reduction_lines, side_words
from benchmate.frame.settings import slant_setting
from benchmate.joinery.joist_tenon.shape import (
    EDGE,
    FAR,
    NEAR,
    SHOULDER,
    TUSK_END,
    TUSK_UNDER,
    EndShape,
)
from benchmate.joinery.joist_tenon.sizes import as_published, tusk_area
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Beside, Line
from benchmate.model.solids import Cut, above, below
from benchmate.model.stick import reference_for


def end_cuts(shape: EndShape) -> tuple[Cut, ...]:
    """The wood above the tenon, under it, and beside it by square rule.

    What the reduction of the end takes off past the shoulder as well is left to that.
    """
    part, found, reduced = shape.part, [], shape.reduction
    if part.near > ZERO:
        found.append(Cut((shape.upper, below(shape.plumb, part.near, NEAR))))
    if part.tusk:
        far = above(shape.plumb, part.far, FAR)
        found.append(Cut((shape.beyond(part.tusk, TUSK_END), far)))
    shoulder = shape.beyond(ZERO, SHOULDER)
    if shape.below > ZERO and not (flush(shape) and shape.plumb in reduced.to):
        found.append(Cut((shoulder, above(shape.plumb, part.lowest, shape.under_line))))
    if edged(shape) and shape.sides not in reduced.to:
        found.append(Cut((shoulder, above(shape.sides, shape.wide, EDGE))))
    return (*found, *reduction_cuts(reduced))


def flush(shape: EndShape) -> bool:
    """Whether all that goes in comes down to the underside that the frame counts on."""
    return shape.part.lowest == shape.framed


def edged(shape: EndShape) -> bool:
    """Whether the tenon is narrower than its stick: by square rule, where that is over."""
    return shape.stick.inner is not None and shape.real_wide > shape.wide


def end_lines(shape: EndShape, tape: Tape) -> tuple[Line, ...]:
    """The shoulder, the haunch, the tenon's cheeks, the tusk, and what goes by square rule."""
    found = [_shoulder(shape)]
    if shape.haunched:
        found.append(_haunch(shape, tape))
    if shape.part.near > ZERO:
        found.append(_near(shape, tape))
    if shape.part.tusk or shape.below > ZERO:
        found.append(_far(shape, tape))
    if shape.part.tusk:
        found += _tusk(shape, tape)
    if edged(shape):
        found.append(_edge(shape))
    return (*found, *reduction_lines(shape.reduction))


def _words(shape: EndShape, face: Face) -> str:
    return shape.stick.pose.words(face)


def under(shape: EndShape) -> str:
    """What the joist's lower face is called."""
    return _words(shape, reference_for(shape.plumb).opposite)


def shouldered(shape: EndShape) -> tuple[Face, ...]:
    """The faces the shoulder is struck on: not the underside, where the tenon is flush with it."""
    lower = reference_for(shape.plumb).opposite
    bare = shape.below <= ZERO or (flush(shape) and shape.plumb in shape.reduction.to)
    return tuple(face for face in LONG_FACES if face is not lower or not bare)


def _shoulder(shape: EndShape) -> Line:
    return square_mark(
        shape.beyond(ZERO, SHOULDER),
        Says(
            title="Shoulder line",
            beside=(
                Beside(shape.part.length, "of tenon beyond it"),
                *as_published(shape, "length"),
            ),
            why=(
                "It comes to the beam's face. All that goes into the beam lies beyond, and is "
                "measured from here. A joist with a tenon cannot drop in: it goes in endways, "
                "before the beam at its other end is up."
            ),
            caution=" ".join(filter(None, _shoulder_cautions(shape))),
            faces=shouldered(shape),
        ),
    )


def _shoulder_cautions(shape: EndShape) -> tuple[str, ...]:
    """The most dangerous first."""
    top = _words(shape, reference_for(shape.plumb))
    return (
        unsure(shape.stick) if shape.end is Face.FAR_END else "",
        f"Never saw square down it from the {top}: the {shape.haunch_word} leans out there."
        if shape.haunched
        else "",
        "Pencil it lightly on the two sides: a cut across the tenon would sever its root.",
    )


def _haunch(shape: EndShape, tape: Tape) -> Line:
    part, word = shape.part, shape.haunch_word
    top = _words(shape, reference_for(shape.plumb))
    says = Says(
        title=f"{word.capitalize()} line",
        beside=(*as_published(shape, "haunch"),),
        why=(
            f"The {word} goes into the beam: nothing at the {top}, most at the tenon. Join the two "
            "points on both sides."
        ),
        caution=f"It starts on the shoulder line at the {top}, and leans out towards the tenon.",
        setting=slant_setting(part.haunch.nm, part.near.nm, tape),
    )
    return slanting_mark(
        shape.stick, shape.upper, (ZERO, part.near), says, (top, "near cheek line")
    )


def _near(shape: EndShape, tape: Tape) -> Line:
    part = shape.part
    says = Says(
        title="Near cheek line",
        beside=(Beside(shape.thickness, "of tenon below it"),),
        why=f"The tenon's upper face, held from the joist's top. {_lies(shape, tape)}".rstrip(),
    )
    return square_mark(below(shape.plumb, part.near, NEAR), says)


def _lies(shape: EndShape, tape: Tape) -> str:
    """Where a tusk tenon lies against what is published."""
    if shape.part.usual is None:
        return ""
    up = shape.real_deep - shape.part.far
    return (
        "In practice a tusk tenon's underside lies on the beam's centre line; an old rule puts it "
        f"a third of the joist's depth up. Here it lies {tape.text(up)} above the "
        f"{under(shape)}."
    )


def _far(shape: EndShape, tape: Tape) -> Line:
    part = shape.part
    says = Says(
        title="Far cheek line",
        beside=(
            Beside(shape.thickness, "tenon thickness"),
            *as_published(shape, "thickness"),
            Beside(shape.real_deep - part.far, f"from it to the {under(shape)} here"),
        ),
        why=f"The tenon's lower face, which bears. {_bears(shape, tape)}{_runs_on(shape, FAR)}",
        caution=f"Never measure this from the {under(shape)}.{_stop_at_tusk(shape)}",
    )
    return square_mark(above(shape.plumb, part.far, FAR), says)


def _stop_at_tusk(shape: EndShape) -> str:
    """That a tusk's wood begins where the line of the tenon over it stops."""
    if not shape.part.tusk:
        return ""
    return f" From the {_words(shape, shape.end)} to the tusk end line only: the tusk is left on."


def _bears(shape: EndShape, tape: Tape) -> str:
    return bears_on(shape.stick.name, shape.part.length, shape.real("width"), tape)


def _tusk(shape: EndShape, tape: Tape) -> tuple[Line, ...]:
    part, found = shape.part, []
    end = Says(
        title="Tusk end line",
        beside=(*as_published(shape, "tusk"),),
        why=(
            "The tusk goes so far into the beam under the tenon, and takes load off it: "
            f"{tusk_area(shape, tape)}."
        ),
    )
    found.append(square_mark(shape.beyond(part.tusk, TUSK_END), end))
    if shape.below > ZERO:
        low = Says(
            title="Tusk underside line",
            beside=(
                Beside(part.lowest - part.far, "of tusk under the tenon"),
                Beside(shape.below, f"left to the {under(shape)}"),
            ),
            why=f"The tusk bears on this face.{_runs_on(shape, TUSK_UNDER)}",
            caution=f"Never measure this from the {under(shape)}.",
        )
        found.append(square_mark(above(shape.plumb, part.lowest, TUSK_UNDER), low))
    return tuple(found)


def _edge(shape: EndShape) -> Line:
    far = _words(shape, reference_for(shape.sides).opposite)
    says = Says(
        title=f"Far edge line, {side_words(far)}",
        beside=(Beside(shape.real_wide - shape.wide, f"to come off the {far}"),),
        why=(
            "Square rule: what goes in is as wide as the inner timber, whatever the stick."
            f"{_runs_on(shape, EDGE)}"
        ),
        caution=f"Never measure this from the {far}.",
    )
    return square_mark(above(shape.sides, shape.wide, EDGE), says)


def _runs_on(shape: EndShape, line: str) -> str:
    """That a line is struck on past the shoulder, where the end is reduced to it."""
    reduced = shape.reduction
    if line not in (reduced.struck.get(axis) for axis in reduced.to):
        return ""
    return " Run it on past the shoulder, as far as the reduction end line."
