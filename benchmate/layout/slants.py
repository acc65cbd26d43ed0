"""A slanting line in words and figures: its start leads, its other end and its settings follow."""

from math import hypot

from benchmate.frame.flats import nearest
from benchmate.layout.step import LINE
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Slant
from benchmate.model.setting import Arm, Setting, Square
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, axis_from, reference_for
from benchmate.model.words import lower_first


def start_words(line: Line) -> str:
    """What the start of a slanting line is found on, to end a reading: `, on the South arris`."""
    return f", on the {line.slant.where[0]}" if line.slant else ""


def inside(line: Line, faces: tuple[Face, ...]) -> bool:
    """Whether a slanting line comes out on no face it slants across: it leans only going in."""
    if line.slant is None or not faces:
        return False
    return all(not face.is_end and axis_from(face) is line.slant.axis for face in faces)


def other_end(stick: Stick, line: Line, faces: tuple[Face, ...]) -> tuple[Beside, ...]:
    """Where the finish of a slanting line lies: along from its start, or in from the face."""
    if line.slant is None or line.axis is None:
        return ()
    start, finish = line.slant.start, line.slant.finish
    on = line.slant.where[1]
    if line.axis is not Axis.ALONG:
        face = stick.pose.words(reference_for(line.slant.axis))
        return (Beside(finish.deep, f"from the {face} on the {on}"),)
    further = finish.along - start.along
    end = stick.pose.words(_leans_to(line.slant))
    if inside(line, faces):
        return (Beside(abs(further), f"nearer the {end} at the {on}"),)
    if stick.start < finish.along < stick.finish:
        return (Beside(abs(further), f"nearer the {end} on the {on}"),)
    face = stick.pose.words(reference_for(line.slant.axis))
    grain = f"{end.removesuffix(' end')} end grain"
    return (Beside(_on_the_end(stick, line.slant), f"from the {face}, {grain}"),)


def setting_of(stick: Stick, line: Line, faces: tuple[Face, ...]) -> Setting | None:
    """How to set the square and the saw for a slanting line, and which way the square lies.

    A line that leans only going in is struck square across.
    """
    slant = line.slant
    if slant is None or slant.setting is None or slant.start.along == slant.finish.along:
        return slant.setting if slant else None
    if inside(line, faces):
        return slant.setting.leaning_in()
    square = slant.setting.square
    if square is None:
        return slant.setting
    if _reaches(square, slant) or slant.setting.off_square is None:
        return _lying(stick, slant, slant.setting, square.arm)
    return slant.setting.by_straightedge()


def _reaches(square: Square, slant: Slant) -> bool:
    """Whether an arm strikes at least half of a line, from its figure on the edge to the heel.

    The rest is run on with a straightedge; of a line hardly off square there is nothing to run on.
    """
    along, deep = (abs(a - b).nm for a, b in zip(slant.start, slant.finish, strict=True))
    arm = square.tongue if square.arm is Arm.TONGUE else square.blade
    return hypot(along, deep) <= 2 * arm.nm


def _lying(stick: Stick, slant: Slant, setting: Setting, arm: Arm | None) -> Setting:
    """The setting of a slant with how the square lies, so that it is not turned over.

    Both figures lie on the edge of a reference face. Struck along the tongue a line leans, as it
    leaves that edge, towards the blade; struck along the blade away from it.
    """
    start, finish = slant.start, slant.finish
    along = finish.along > start.along
    ahead = Face.FAR_END if along is (finish.deep >= start.deep) else Face.REFERENCE_END
    blade = ahead if arm is Arm.TONGUE else ahead.opposite
    pose = stick.pose
    return setting.lying(pose.words(blade), pose.edge_words(reference_for(slant.axis)))


def _leans_to(slant: Slant) -> Face:
    """The end that a line leans to as it leaves its start."""
    return Face.FAR_END if slant.finish.along >= slant.start.along else Face.REFERENCE_END


def _on_the_end(stick: Stick, slant: Slant) -> Length:
    """How deep a line comes out on the end grain, where it leaves the timber there."""
    start, finish = slant.start, slant.finish
    ends = stick.start if _leans_to(slant) is Face.REFERENCE_END else stick.finish
    gone, run = (ends - start.along).nm, (finish.along - start.along).nm
    return start.deep + Length(nearest((finish.deep - start.deep).nm * gone, run))


def slant_rests(line: Line) -> tuple[Reading, ...]:
    """Where the finish of a slanting line lies, for a tick to remember."""
    if line.slant is None or line.axis is None:
        return ()
    along = line.axis is Axis.ALONG
    return (
        Reading(
            value=line.slant.finish.along if along else line.slant.finish.deep,
            hook=f"other end of the {lower_first(line.title)}",
            way=f"on the {line.slant.where[1]}",
            key=f"{line.id} other end{LINE}",
        ),
    )


def parallel_rests(line: Line) -> tuple[Reading, ...]:
    """How far a line lies from the one it is parallel to, for a tick to remember."""
    if line.slant is None or line.axis is not None:
        return ()
    return tuple(
        Reading(
            value=reading.value,
            hook=lower_first(line.title),
            way=f"from the {reading.hook}",
            key=f"{line.id}{LINE}",
        )
        for reading in line.readings
    )
