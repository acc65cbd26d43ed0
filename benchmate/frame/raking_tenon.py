"""The tenon on an end of a raking timber: what every family that cuts one says and does alike."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from benchmate.frame import cheeks
from benchmate.frame.cheeks import Cheeks
from benchmate.frame.end_tasks import measure_finished
from benchmate.frame.marking import Says, square_mark
from benchmate.frame.practice import CHISEL, CRISP, SAW, unsure
from benchmate.frame.reduction import unmeasured
from benchmate.frame.stick_end import StickEnd
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Line, Reading, Stage, Task
from benchmate.model.findings import Finding
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Cut, Plane, above
from benchmate.model.stick import across, reference_for


@dataclass(frozen=True, slots=True, kw_only=True)
class RakingTenon(StickEnd):
    """A tenon on an end of a raking timber, on its real stick.

    `plumb` is the axis in from the reference edge in the plane it rakes in; its cheeks lie `near`
    and `far` in on the other one. The end goes in `deep` from the reference edge and `wide` across.
    `outside` is the plane of the receiving timber's real face, and `length` how long the tenon is
    as it is measured once it is cut.
    """

    plumb: Axis
    outside: Plane
    length: Length
    near: Length
    far: Length
    deep: Length
    wide: Length

    @property
    def cheeks(self) -> Axis:
        """The axis its cheeks are measured on: across the plane it rakes in."""
        return across(self.plumb)

    @property
    def thickness(self) -> Length:
        """From cheek to cheek as laid out."""
        return self.far - self.near

    @property
    def real_wide(self) -> Length:
        """The real depth of the stick across its plane."""
        return self.stick.depth(self.cheeks, *self.places)

    @property
    def real_deep(self) -> Length:
        """The real depth of the stick from its reference edge."""
        return self.stick.depth(self.plumb, *self.places)

    @property
    def edge_face(self) -> Face:
        """The reference face along the reference edge."""
        return reference_for(self.plumb)

    @property
    def end_words(self) -> str:
        """What a framer calls this end."""
        return self.stick.pose.words(self.end)

    @property
    def between(self) -> Cheeks:
        """Its two cheeks, which are those of any tenon."""
        return self.cheeks_at(self.cheeks, self.near, self.far)

    @property
    def near_cheek(self) -> str:
        """What its thickness is measured from: the face itself where the tenon is barefaced."""
        return self.between.near_words

    @property
    def laid_out(self) -> Mapping[str, Length]:
        """The sizes that are typed once it is cut, as they are laid out."""
        return {"thickness": self.thickness, "length": self.length}


def unsure_of_end(tenon: RakingTenon) -> str:
    """The caution of a far shoulder that follows faces nobody has measured; empty otherwise.

    A reference shoulder is struck from its own end, whatever the end meets.
    """
    return unsure(tenon.stick) if tenon.end is Face.FAR_END else ""


def cheek_cuts(tenon: RakingTenon, shoulder: Plane) -> tuple[Cut, ...]:
    """The wood beside the tenon, beyond the shoulder it stands on."""
    return tenon.between.cuts(shoulder, reduced=False)


def cheek_lines(tenon: RakingTenon) -> tuple[Line, ...]:
    """The near cheek, if it is not the face itself, and the far one."""
    return cheeks.cheek_lines(tenon.between, reduced=False)


def knife(tenon: RakingTenon, what: str, draws: str, hold_up: str) -> Task:
    """Knifing `what` bears all round; `hold_up` names what shows whether it is the right way."""
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title=f"Knife {what}, hatch the waste",
        draws=draws,
        faces=LONG_FACES,
        waste=f"Towards the {tenon.end_words}, outside the tenon's own lines.",
        why=CRISP,
        caution=f"Hold it up as it will stand before the first cut: {hold_up}.",
    )


def saw_tip(tenon: RakingTenon, draws: str, parallel: str, setting: Setting | None) -> Task:
    """Sawing off the tenon's end right across, `parallel` to the line it is measured from."""
    return Task(
        id="saw-end",
        stage=Stage.CUT,
        title="Saw the tenon's end",
        draws=draws,
        faces=LONG_FACES,
        waste=f"Towards the {tenon.end_words}, beyond the line.",
        why=f"Parallel to the {parallel}. It need not be fine: the tenon never touches bottom.",
        caution=SAW,
        setting=setting,
    )


def saw_side_tasks(
    tenon: RakingTenon,
    title: str,
    draws: str,
    setting: Setting | None,
    faces: tuple[Face, ...] = (),
) -> tuple[Task, ...]:
    """Sawing the shoulder a tenon stands on, side by side: each has a depth of its own.

    `faces` are shown beside the one that is sawn from.
    """
    near, words = reference_for(tenon.cheeks), tenon.stick.pose.words
    sides = (
        ("near", near, tenon.near),
        ("far", near.opposite, tenon.real_wide - tenon.far),
    )
    return tuple(
        replace(
            cheeks.saw_shoulder(tenon.between, face, deep, setting=setting),
            id=f"saw-{side}",
            title=f"{title}, {words(face)}",
            draws=draws,
            faces=(face, *faces),
        )
        for side, face, deep in sides
        if deep
    )


def saw_cheeks(tenon: RakingTenon) -> tuple[Task, ...]:
    """Cutting the cheeks, the line left on; nothing where the tenon is as thick as its stick.

    On its edges only: the end is sawn aslant before.
    """
    edges = (tenon.edge_face, tenon.edge_face.opposite)
    tasks = cheeks.saw_cheeks(tenon.between, reduced=False)
    return tuple(replace(task, faces=edges) for task in tasks)


def pare(tenon: RakingTenon, what: str, why: str) -> Task:
    """Paring `what` to its lines, and its thickness."""
    return Task(
        id="pare",
        stage=Stage.PARE,
        title=f"Pare {what}, check them flat",
        faces=(tenon.edge_face, reference_for(tenon.cheeks)),
        readings=(Reading(value=tenon.thickness, hook=tenon.near_cheek, way="to the far cheek"),),
        waste="Only what stands proud of the lines.",
        why=why,
        caution=CHISEL,
    )


def measure_as_cut(tenon: RakingTenon, hook: str) -> Task:
    """Typing the tenon's thickness as cut, and its length square to the `hook`."""
    return measure_finished(
        "the tenon",
        (tenon.end,),
        (
            Reading(value=tenon.real("thickness"), hook=tenon.near_cheek, way="to the far cheek"),
            Reading(value=tenon.real("length"), hook=hook, way="square to it, to the tenon's end"),
        ),
        caution=(
            "The thickness counts from the near cheek. If that was overcut, move its line in the "
            "mortise as well."
        ),
    )


def reduced_line(axis: Axis) -> str:
    """The line a far face is brought down to."""
    return f"reduced-{axis.name.lower()}"


def reduced_cuts(tenon: RakingTenon, lost: Mapping[Axis, Length]) -> tuple[Cut, ...]:
    """What comes off the far faces, as far back as the end goes in, down to what is `lost`."""
    return tuple(
        Cut((tenon.outside, above(axis, at, reduced_line(axis)))) for axis, at in lost.items()
    )


def reduced_lines(tenon: RakingTenon, lost: Mapping[Axis, Length]) -> tuple[Line, ...]:
    """How far each far face comes in."""
    words = tenon.stick.pose.words
    return tuple(
        square_mark(
            above(axis, at, reduced_line(axis)),
            Says(
                title=f"Reduction line, {words(reference_for(axis).opposite)}",
                why="Square rule: only the inner timber goes into the other one.",
                caution=f"Never measure this from the {words(reference_for(axis).opposite)}.",
            ),
        )
        for axis, at in lost.items()
    )


def reduce_tasks(tenon: RakingTenon, lost: Mapping[Axis, Length]) -> tuple[Task, ...]:
    """Cutting each far face down: one figure to one task."""
    words = tenon.stick.pose.words
    return tuple(
        Task(
            id=f"reduce-{axis.name.lower()}",
            stage=Stage.CUT,
            title=f"Reduce the {words(reference_for(axis).opposite)} to its line",
            draws=reduced_line(axis),
            faces=(reference_for(axis).opposite,),
            readings=(
                Reading(
                    value=tenon.stick.depth(axis, *tenon.places) - at,
                    hook=words(reference_for(axis).opposite),
                    way=f"straight in, from the reduction end line to the {tenon.end_words}",
                ),
            ),
            waste=f"Towards the {words(reference_for(axis).opposite)}, outside its line.",
            why="So deep on this stick, here: only the inner timber goes in.",
            caution=f"{unmeasured(tenon.stick, axis, tenon.places)}{SAW} {CHISEL}",
        )
        for axis, at in lost.items()
    )


def cheek_outside(family: str, tenon: RakingTenon, tape: Tape) -> Finding | None:
    """The far cheek lies in the air: the stick is too thin there for set-back and thickness.

    Example: a 1-1/2" tenon set back 1-1/2" in a stick that measures 2-7/8". Remedy: another stick,
    a thinner tenon, or less set-back.
    """
    return cheeks.cheek_outside(tenon.between, f"{family}-cheek-outside", tape)
