"""What to do at a tail, a slot or a cog: one figure to one task."""

from benchmate.frame.practice import CHISEL, SAW
from benchmate.frame.reduction import side_words, unmeasured
from benchmate.joinery.lap.holding import slot_width
from benchmate.joinery.lap.shape import LEDGE, SHOULDER, Half
from benchmate.joinery.lap.socket import entry_face, narrow_and_wide
from benchmate.joinery.lap.telling import ledge_title, shrinks
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Reading, Stage, Task
from benchmate.model.solids import Plane
from benchmate.model.stick import reference_for

COG_STAYS = "The cog stays standing between its two lines."


def cog_caution(half: Half) -> str:
    """That the cog is not cut away with the rest of the notch; nothing where there is none."""
    return COG_STAYS if half.cog else ""


def tail_tasks(half: Half, tape: Tape) -> list[Task]:
    """Sawing the root of each flank, then cutting the flank."""
    if half.tail is None:
        return []
    found = []
    for face, plane in half.tail.flanks.items():
        flare = half.tail.near if face.is_reference else half.tail.far
        found += [_root(half, face, plane, flare), _flank(half, face, plane, tape)]
    return found


def _root(half: Half, face: Face, plane: Plane, flare: Length) -> Task:
    words = half.stick.pose.words
    far = "" if face.is_reference else unmeasured(half.stick, half.lie.wide, (half.lie.place,))
    over = ZERO if face.is_reference else half.lie.over
    return Task(
        id=f"saw-{plane.line}-root",
        stage=Stage.CUT,
        title=f"Saw the root of the tail, {side_words(words(face))}",
        draws=SHOULDER,
        faces=(face,),
        readings=(
            Reading(value=flare + over, hook=words(face), way="straight in at the shoulder line"),
        ),
        waste=f"Keep the kerf on the tail's side{_to_the_ledge(half)}.",
        why="Stop at the depth: deeper weakens the tail where it is narrowest.",
        caution=f"{far}{SAW}",
    )


def _to_the_ledge(half: Half) -> str:
    """How far down the sides a tail is cut, to end a sentence; nothing where it is all the way."""
    return "" if half.ledge is None else f", only as far as the {ledge_title(half)}"


def _flank(half: Half, face: Face, plane: Plane, tape: Tape) -> Task:
    words = half.stick.pose.words
    return Task(
        id=f"cut-{plane.line}",
        stage=Stage.CUT,
        title=f"Cut the flank of the tail, {side_words(words(face))}",
        draws=str(plane.line),
        faces=(face, half.cut_face),
        waste=f"Towards the {words(face)}, outside the flank line{_to_the_ledge(half)}.",
        why=(
            "Straight from the root to the wide end, and square to the lap: it is a bearing face."
        ),
        caution=f"{CHISEL} {shrinks(tape)}",
    )


def slot_tasks(half: Half) -> list[Task]:
    """Sawing and chopping the slot that goes over the cog."""
    if not half.slot:
        return []
    words = half.stick.pose.words
    face = words(half.cut_face)
    down = Reading(
        value=half.into_ledge(), hook=face, way=f"straight in, to the {ledge_title(half)}"
    )
    far = unmeasured(half.stick, half.lie.deep, (half.lie.place,))
    follows = "" if half.cut_face.is_reference else far
    near = reference_for(half.lie.wide)
    faces = (half.cut_face, near, near.opposite)
    inside = "Inside the slot's lines only."
    return [
        Task(
            id="saw-slot",
            stage=Stage.CUT,
            title="Saw the slot's two sides",
            draws=str(half.slot[0].line),
            faces=faces,
            readings=(down,),
            waste=inside,
            why="Right across the timber, kerfs inside the lines.",
            caution=f"{follows}{SAW}",
        ),
        Task(
            id="chop-slot",
            stage=Stage.CUT,
            title="Chop the slot out, pare its sides",
            draws=LEDGE,
            faces=faces,
            readings=(Reading(value=slot_width(half), hook="slot start", way="to the finish"),),
            waste=inside,
            why="The cog is cut to this slot. Its roof clears the cog: the bed bears.",
            caution=CHISEL,
        ),
    ]


def width_readings(half: Half) -> list[tuple[str, str, Reading]]:
    """The widths to pare a notch to: one, or of a socket the narrow and the wide one."""
    if half.span is not None:
        start, finish = half.span
        wide = Reading(value=finish - start, hook="notch start", way="to the finish")
        return [("sides", "Pare the notch's two ends", wide)]
    words, entry = half.stick.pose.words, entry_face(half)
    found = zip(("narrow", "wide"), (entry, entry.opposite), narrow_and_wide(half), strict=True)
    return [
        (
            name,
            f"Pare the socket at its {name} end",
            Reading(value=width, hook="socket start", way=f"to the finish, at the {words(face)}"),
        )
        for name, face, width in found
    ]
