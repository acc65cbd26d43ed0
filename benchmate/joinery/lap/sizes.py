"""What is measured of the half that is cut first, for the other to be cut to."""

from benchmate.frame.end_tasks import measure_finished
from benchmate.joinery.lap.holding import slot_width
from benchmate.joinery.lap.shape import Half
from benchmate.measure.length import ZERO
from benchmate.model.feature import Made, Reading, Size, Task
from benchmate.model.stick import reference_for


def sizes(half: Half) -> tuple[Size, ...]:
    """What can be typed of the half that is cut first."""
    if half.mated:
        return ()
    found = []
    if half.depth > ZERO:
        found.append(Size("thickness", half.left, "what is left of it at the lap"))
    if half.corner:
        return tuple(found)
    tail = half.tail
    what = "width of the tail where it is widest" if tail else "width of what goes in"
    found.append(Size("width", half.wide, what))
    if half.slot:
        found.append(Size("length", slot_width(half), "width of the slot, along the timber"))
    return tuple(found)


def made(half: Half) -> tuple[Made, ...]:
    """Where the bed of the half that is cut first came out, if that was measured."""
    left = half.as_cut.thickness
    if half.mated or left is None or half.bed.line is None:
        return ()
    at = half.real_deep - left if half.cut_face.is_reference else left
    return (Made(half.bed.line, at),)


def as_cut_task(half: Half) -> Task:
    """Measuring it as it came out."""
    return measure_finished(
        "it",
        (half.end,) if half.end is not None else (half.cut_face,),
        tuple(
            Reading(
                value=half.as_cut.get(size.name) or size.laid_out,
                hook=_hooks(half)[size.name][0],
                way=_hooks(half)[size.name][1],
            )
            for size in sizes(half)
        ),
        why=f"{half.mate.stick.name} is cut to what was really made here.",
        caution=_counts_from(half),
    )


def _counts_from(half: Half) -> str:
    """Which faces the sizes are measured from, as the other timber is laid out from them."""
    words = half.stick.pose.words
    kept, near = words(half.cut_face.opposite), words(reference_for(half.lie.wide))
    from_faces = {"thickness": f"what is left counts from the {kept}"}
    from_faces |= {"width": f"the width counts from the {near}"}
    found = [from_faces[size.name] for size in sizes(half) if size.name in from_faces]
    text = ", ".join(found)
    return f"{text[:1].upper()}{text[1:]}."


def _hooks(half: Half) -> dict[str, tuple[str, str]]:
    words, near = half.stick.pose.words, reference_for(half.lie.wide)
    kept = words(half.cut_face.opposite)
    widest = ", where it is widest" if half.tail is not None else ""
    return {
        "thickness": (kept, "to the lap" if half.end is not None else "to the notch's floor"),
        "width": (words(near), f"across to the {words(near.opposite)}{widest}"),
        "length": ("slot start", "to the finish"),
    }
