"""The two cheeks of a tenon: what comes off beside it, the lines for it, the saw cuts.

They are set back from the reference face that looks across the receiving grain. What the stick is
over or under shows only on the far side.
"""

from dataclasses import dataclass

from benchmate.frame.marking import Says, square_mark
from benchmate.frame.practice import LEAVE_THE_LINE, SAW, STOP_AT_DEPTH
from benchmate.frame.reduction import unmeasured
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.findings import Finding, stop
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import Stick, axis_from, reference_for

NEAR, FAR = ("near-cheek", "far-cheek")
"""The lines of the cheeks."""

SHOULDER = "shoulder"
"""The line the timber bears on."""

BAREFACED = "Barefaced: no shoulder on the reference side, so left and right are not alike. "
"""Barefaced timbers come in left and right (trade notes 2.1: TFG-bare, TFG-gloss)."""

SHOULDERS_FIRST = "Shoulders before cheeks. "
"""The shoulder first, then the cheeks (trade notes 5.1, FHB-beemer)."""

LEANS = "The kerf leans: it follows the shoulder lines on the two faces beside this one. "

RUNS_ON = " Run it on past the shoulder, as far as the reduction end line."


@dataclass(frozen=True, slots=True, kw_only=True)
class Cheeks:
    """Where the cheeks of the tenon `feature` on an `end` of a stick lie on its `axis` across."""

    stick: Stick
    end: Face
    feature: str
    axis: Axis
    near: Length
    far: Length

    @property
    def thickness(self) -> Length:
        """From cheek to cheek as laid out."""
        return self.far - self.near

    @property
    def places(self) -> tuple[str, ...]:
        """Where the section may have been measured, the nearest place first."""
        return (self.feature, self.stick.place_at(self.end))

    @property
    def real(self) -> Length:
        """The real depth of the stick across the cheeks."""
        return self.stick.depth(self.axis, *self.places)

    @property
    def framed(self) -> Length:
        """The depth that the frame counts on there."""
        return self.stick.framed(self.axis, *self.places)

    @property
    def face(self) -> Face:
        """The reference face they are set back from."""
        return reference_for(self.axis)

    @property
    def near_words(self) -> str:
        """What the thickness is measured from: the face itself where the tenon is barefaced."""
        face = self.stick.pose.words(self.face)
        return f"near cheek, by the {face}" if self.near else face

    def sides(self, *, reduced: bool) -> dict[Face, Length]:
        """How deep the shoulder is cut in from the two faces, those that are cut at all.

        A far face that is `reduced` to the far cheek's own line is flush with it once it is.
        """
        deep = {self.face: self.near}
        if not (reduced and self.far == self.framed):
            deep[self.face.opposite] = self.real - self.far
        return {face: depth for face, depth in deep.items() if depth}

    def cuts(self, shoulder: Plane, *, reduced: bool) -> tuple[Cut, ...]:
        """The wood beside them, beyond the shoulder."""
        planes = {
            self.face: below(self.axis, self.near, NEAR),
            self.face.opposite: above(self.axis, self.far, FAR),
        }
        return tuple(Cut((shoulder, planes[face])) for face in self.sides(reduced=reduced))


def cheek_lines(cheeks: Cheeks, *, reduced: bool, barefaced: str = BAREFACED) -> tuple[Line, ...]:
    """The near cheek line, and the far one.

    Where there is no near cheek the far line says that the tenon is `barefaced`.
    """
    far = cheeks.stick.pose.words(cheeks.face.opposite)
    near = Says(
        title="Near cheek line",
        why="The set-back. It is the same in the mortise, so the faces come flush.",
    )
    on = RUNS_ON if reduced and cheeks.far == cheeks.framed < cheeks.real else ""
    says = Says(
        title="Far cheek line",
        beside=(
            Beside(cheeks.thickness, "tenon thickness"),
            Beside(cheeks.real - cheeks.far, f"to come off the {far}"),
        ),
        why=(
            f"{'' if cheeks.near else barefaced}Set-back and thickness together, from the "
            "reference face. What the stick is over or under shows only on the far side."
            f"{on}"
        ),
        caution=f"Never measure this from the {far}.",
    )
    struck = (square_mark(below(cheeks.axis, cheeks.near, NEAR), near),) if cheeks.near else ()
    return (*struck, square_mark(above(cheeks.axis, cheeks.far, FAR), says))


def saw_shoulder(
    cheeks: Cheeks,
    face: Face,
    deep: Length,
    *,
    setting: Setting | None = None,
    before: str = "",
) -> Task:
    """Sawing the shoulder in from one face, so deep; `before` that, what else is to be known."""
    words, end = cheeks.stick.pose.words(face), cheeks.stick.pose.words(cheeks.end)
    first = "" if face.is_reference else unmeasured(cheeks.stick, axis_from(face), cheeks.places)
    return Task(
        id=f"saw-{face.value.replace(' ', '-')}",
        stage=Stage.CUT,
        title=f"Saw the shoulder, {words}",
        draws=SHOULDER,
        faces=(face,),
        readings=(Reading(value=deep, hook=words, way="straight in"),),
        waste=f"Keep the kerf on the {end} side of the knifed line.",
        why=f"{before}{STOP_AT_DEPTH}",
        caution=f"{first}{SAW}",
        setting=setting,
    )


def saw_cheeks(cheeks: Cheeks, *, reduced: bool) -> tuple[Task, ...]:
    """Cutting the cheeks down to their lines; nothing where the tenon is as thick as its stick."""
    if not cheeks.sides(reduced=reduced):
        return ()
    edge = next(face for face in (Face.FIRST, Face.SECOND) if face is not cheeks.face)
    return (
        Task(
            id="saw-cheeks",
            stage=Stage.CUT,
            title="Cut the cheeks",
            draws=FAR,
            faces=(cheeks.end, edge, edge.opposite),
            readings=(
                Reading(
                    value=cheeks.thickness,
                    hook=cheeks.near_words,
                    way="to the far cheek, left on",
                ),
            ),
            waste="Outside the cheek lines.",
            why=LEAVE_THE_LINE,
            caution=SAW,
        ),
    )


def saw_edges(end: Face, cheek: Face, width: Length, near_edge: str) -> Task:
    """Cutting the narrow edges down to their lines, from the two faces the cheeks look to.

    `width` is what is left on, measured from the `near_edge`.
    """
    return Task(
        id="saw-edges",
        stage=Stage.CUT,
        title="Cut the narrow edges",
        faces=(end, cheek, cheek.opposite),
        readings=(Reading(value=width, hook=near_edge, way="to the other narrow edge, left on"),),
        waste="Outside the lines of the narrow edges.",
        why=LEAVE_THE_LINE,
        caution=SAW,
    )


def near_edge_words(stick: Stick, edges: Axis, edge: Length) -> str:
    """What a tenon's width is measured from: the face itself where that edge is not cut back."""
    face = stick.pose.words(reference_for(edges))
    return f"narrow edge by the {face}" if edge else face


def cheek_outside(cheeks: Cheeks, code: str, tape: Tape) -> Finding | None:
    """The far cheek lies in the air: the stick is too small there for set-back and thickness.

    Example: a 2" tenon set back 2" in a stick that measures 3-7/8". By square rule it has to lie
    inside the inner timber. Remedy: another stick, a thinner tenon or a smaller set-back.
    """
    inner = cheeks.stick.inner is not None
    room = cheeks.framed if inner else cheeks.real
    if cheeks.far <= room:
        return None
    return stop(
        code,
        cheeks.stick.id,
        cheeks.feature,
        f"The far cheek comes {tape.text(cheeks.far)} in from the reference face, but the "
        f"{'inner timber' if inner else 'stick'} is only {tape.text(room)} there",
        "make the tenon thinner or its set-back less"
        if inner
        else "choose another stick, or make the tenon thinner or its set-back less",
    )
