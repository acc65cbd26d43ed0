"""A reduced end: far faces brought down to a line, so that the end enters the other timber.

Under square rule that line is the inner timber's:
cut depth = actual - inner, from the section measured at the joint (a published drawing note gives
inner 7-1/2": actual 7-7/8" loses 3/8", actual 8-1/4" loses 3/4"; trade notes, TFDIY-notation).
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.inner import least_measured
from benchmate.frame.practice import CHISEL, SAW
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.findings import Finding, Severity
from benchmate.model.solids import Axis, Cut, above, below
from benchmate.model.stick import Stick, Wood, axis_from, reference_for

STOP_LINE = "reduction-stop"
"""The line across the timber where a reduction ends."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reduction:
    """What an end of a stick loses on its far faces, over `length` back from its shoulder.

    `to` is the reading each far face comes down to, by the axis across; axes that lose nothing are
    left out. `struck` names the lines that the joint strikes there anyway.
    """

    stick: Stick
    end: Face
    length: Length
    to: dict[Axis, Length]
    struck: Mapping[Axis, str]
    places: tuple[str, ...]

    @property
    def stop(self) -> Length:
        """The reading of the line where it ends."""
        return self.stick.back_from(self.end, self.length)

    def line(self, axis: Axis) -> str:
        """The line a far face is brought down to."""
        return self.struck.get(axis, f"reduced-{axis.name.lower()}")

    def deep(self, axis: Axis) -> Length:
        """How much comes off the far face of an axis."""
        return self.stick.depth(axis, *self.places) - self.to[axis]


def reduction(
    stick: Stick,
    end: Face,
    length: Length,
    to: Mapping[Axis, Length],
    *,
    places: tuple[str, ...],
    struck: Mapping[Axis, str] | None = None,
) -> Reduction:
    """The reduction an end needs to enter a recess so deep, each far face brought down `to` a line.

    Faces that lie at their line or inside it lose nothing, and none do without a recess.
    """
    losing = {
        axis: at for axis, at in to.items() if length > ZERO and stick.depth(axis, *places) > at
    }
    return Reduction(
        stick=stick, end=end, length=length, to=losing, struck=struck or {}, places=places
    )


def reduction_cuts(reduced: Reduction) -> tuple[Cut, ...]:
    """The wood that comes off, one cut to each far face."""
    beyond = below if reduced.end is Face.REFERENCE_END else above
    stop = beyond(Axis.ALONG, reduced.stop, STOP_LINE)
    return tuple(
        Cut((stop, above(axis, at, reduced.line(axis)))) for axis, at in reduced.to.items()
    )


def reduction_lines(reduced: Reduction) -> tuple[Line, ...]:
    """Where it ends, and how far it comes in, both measured from the reference side."""
    if not reduced.to:
        return ()
    end = reduced.stick.pose.words(reduced.end)
    stop = Line(
        id=STOP_LINE,
        title="Reduction end line",
        axis=Axis.ALONG,
        at=reduced.stop,
        faces=tuple(reference_for(axis).opposite for axis in reduced.to),
        beside=_back(reduced, end),
        why="As far back as the end goes in: beyond it the stick keeps its full size.",
        caution="Only on the far faces: nothing comes off a reference face.",
    )
    return (stop, *(side_line(reduced, axis) for axis in reduced.to if axis not in reduced.struck))


def _back(reduced: Reduction, end: str) -> tuple[Beside, ...]:
    """How far back it starts; nothing where the shoulder itself starts at the face."""
    if not reduced.length:
        return ()
    return (Beside(reduced.length, f"back from where the {end} bears"),)


def reduction_knife(reduced: Reduction) -> tuple[Task, ...]:
    """Knifing where it ends and hatching what comes off, before any of it is cut."""
    if not reduced.to:
        return ()
    return (
        Task(
            id="knife-reduction",
            stage=Stage.KNIFE,
            title="Knife the reduction end line, hatch the waste",
            draws=STOP_LINE,
            faces=(*(reference_for(axis).opposite for axis in reduced.to), reduced.end),
            waste=f"Towards the {reduced.stick.pose.words(reduced.end)}, outside the lines.",
            why="Where it stops shows beside the other timber, and hatching shows which side goes.",
        ),
    )


def reduction_tasks(reduced: Reduction) -> tuple[Task, ...]:
    """Cutting each far face down: one figure to one task."""
    words = reduced.stick.pose.words
    return tuple(
        Task(
            id=f"reduce-{axis.name.lower()}",
            stage=Stage.CUT,
            title=f"Reduce the {words(reference_for(axis).opposite)} to its line",
            draws=reduced.line(axis),
            faces=(reference_for(axis).opposite,),
            readings=(
                Reading(
                    value=reduced.deep(axis),
                    hook=words(reference_for(axis).opposite),
                    way="straight in, from the reduction end line outwards",
                ),
            ),
            waste=f"Towards the {words(reference_for(axis).opposite)}, outside its line.",
            why="So deep on this stick, here: only what is left goes into the other timber.",
            caution=f"{unmeasured(reduced.stick, axis, reduced.places)}{SAW} {CHISEL}",
        )
        for axis in reduced.to
    )


def side_line(reduced: Reduction, axis: Axis) -> Line:
    """The line one far face is brought down to."""
    words = reduced.stick.pose.words
    far = words(reference_for(axis).opposite)
    return Line(
        id=reduced.line(axis),
        title=f"Reduction line, {side_words(far)}",
        axis=axis,
        at=reduced.to[axis],
        beside=(Beside(reduced.deep(axis), f"to come off the {far}"),),
        why=(
            "Only what lies inside this line goes into the other timber. "
            f"{measured_words(reduced.stick, axis, reduced.places)}"
        ),
        caution=f"Never measure this from the {far}.",
    )


def side_words(face: str) -> str:
    """A face's words for the side of a joint it lies on: `North side`, `top side`, `underside`."""
    side = face.removesuffix(" face")
    return side if side == face else f"{side} side"


def measured_words(wood: Wood, axis: Axis, places: tuple[str, ...]) -> str:
    """Whether what comes off a far face goes by a measured stick, in a sentence."""
    if wood.measured_depth(axis, *places) is None:
        return "Not measured here yet: depths go by the size as drawn. Measure before cutting."
    return "Depths go by the section measured here."


def lies_in_words(wood: Wood, axis: Axis, places: tuple[str, ...]) -> str:
    """Whether the size of a timber that is let into another is known, in a sentence."""
    if wood.inner is not None:
        return "By square rule it comes to its inner timber, whatever the stick."
    return really_words(wood, axis, places)


def really_words(wood: Wood, axis: Axis, places: tuple[str, ...]) -> str:
    """Whether what another timber really is has been measured, in a sentence."""
    if wood.measured_depth(axis, *places) is None:
        return "It has not been measured there yet, so this goes by the size as drawn."
    return "It is as it was measured there."


def unmeasured(wood: Wood, axis: Axis, places: tuple[str, ...]) -> str:
    """The caution for a depth taken from a far face that nobody has measured yet, or nothing."""
    if wood.measured_depth(axis, *places) is not None:
        return ""
    return "Not measured here yet: measure first, as this depth follows the stick. "


def unmeasured_recess(stick: Stick, entry: Face, place: str) -> str:
    """The caution for a recess as deep as the stick is over its inner timber, or nothing.

    Only one that goes in from a far face by square rule is.
    """
    if entry.is_reference or stick.inner is None:
        return ""
    return unmeasured(stick, axis_from(entry), (place,))


def under_inner(
    wood: Wood,
    feature: str,
    places: tuple[str, ...],
    tape: Tape,
    *,
    scribable: bool = False,
) -> tuple[Finding, ...]:
    """The stick is smaller at a joint than the timber that is to lie inside it.

    The reduction would be below nothing: the joint's far side lies in the air. Example: an inner
    7-1/2" in a stick that measures 7-3/8" there. Remedy: another stick, a smaller inner section
    for its class, or a scribed joint where the family has one.
    """
    found = []
    scribe = "scribe this joint, " if scribable else ""
    for axis in (Axis.FIRST, Axis.SECOND):
        over = wood.over(axis, *places)
        if over < ZERO:
            real, inner = wood.depth(axis, *places), wood.held(axis)
            across = wood.pose.words(reference_for(axis))
            most = least_measured((wood,), axis) or real
            found.append(
                Finding(
                    code="stick-under-inner",
                    severity=Severity.STOP,
                    timber=wood.id,
                    feature=feature,
                    message=(
                        f"{wood.name} is {tape.text(real)} in from the {across} here, "
                        f"{tape.text(-over)} less than its inner timber's {tape.text(inner)}"
                    ),
                    remedy=(
                        f"choose another stick, {scribe}or make the inner section of its class "
                        f"smaller: at most {tape.text(most)} in from the {across} for this stick"
                    ),
                )
            )
    return tuple(found)
