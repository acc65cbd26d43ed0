"""Small frames for the engine's tests, each part in the words of a project file."""

from collections.abc import Mapping

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.chamfer.record import Chamfer
from benchmate.joinery.joist.record import JoistPocket
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.measure.reading import read_length
from benchmate.model.feature import Line, Task
from benchmate.model.findings import Finding
from benchmate.model.progress import AsCut, Measured
from benchmate.model.project import Project, Timber
from benchmate.model.setting import Setting
from benchmate.model.work import Work

Part = Timber | Work


def length(text: str) -> Length:
    """A length as a framer writes it, below zero allowed."""
    return read_length(text, negative=True)


def timber(timber_id: str, **words: object) -> Timber:
    """A 6 x 6 post standing on its foot with its reference faces south and west."""
    return Timber.model_validate(
        {
            "id": timber_id,
            "name": timber_id.replace("-", " ").capitalize(),
            "kind": "post",
            "section": "6 x 6",
            "first_face": "south",
            "second_face": "west",
            "reference_end": "foot",
            "length": "7' 11",
        }
        | words
    )


def girt_between(**real: Real) -> Frame:
    """A girt with 3" tenons between two posts 10' apart: it bears on the west one's far face."""
    posts = (
        timber("west", length="8'", at={"east": "0", "north": "0"}, reference_end_at="0"),
        timber("east", length="8'", at={"east": "10'", "north": "0"}, reference_end_at="0"),
    )
    girt = timber(
        "girt",
        length=None,
        first_face="up",
        second_face="south",
        reference_end="west",
        at={"north": "0", "up": "4'"},
    )
    housings = {"west": "1/2", "east": "3/4"}
    ends = [
        tenon(id=f"girt-{end}", timber="girt", end=end, into=end, housing=housing, length="3")
        for end, housing in housings.items()
    ]
    return frame(*posts, girt, *ends, real=real)


def sill(**words: object) -> Timber:
    """An 8 x 8 sill, top and south faces first, measured from its west end."""
    return timber(
        "sill",
        **(
            {
                "kind": "sill",
                "section": "8 x 8",
                "first_face": "up",
                "second_face": "south",
                "reference_end": "west",
                "length": "16'",
            }
            | words
        ),
    )


def tenon(**words: object) -> TenonJoint:
    """A 2" tenon 5" long, set back 2", on the foot of a post that stands alone."""
    return TenonJoint.model_validate(
        {
            "id": "post-foot",
            "family": "tenon",
            "timber": "post",
            "end": "foot",
            "length": "5",
            "thickness": "2",
            "set_back": "2",
        }
        | words
    )


def given_length(joint: TenonJoint) -> Length:
    """The length a tenon was given. Raises AssertionError for one that follows what it passes."""
    assert joint.length is not None
    return joint.length


def chamfer(**words: object) -> Chamfer:
    """A 3/4" chamfer on the inside arris, 12" from the foot shoulder to 6" from the head's."""
    return Chamfer.model_validate(
        {
            "id": "inside-chamfer",
            "on": ["post"],
            "arrises": ["far-far"],
            "leg": "3/4",
            "near_stop": {"shoulder": "foot", "distance": "12"},
            "far_stop": {"shoulder": "head", "distance": "6"},
        }
        | words
    )


def real(
    measured: Mapping[str, Mapping[str, str]] | None = None,
    as_cut: Mapping[str, Mapping[str, str]] | None = None,
) -> Real:
    """The real sizes of one timber, by place and by tenon."""
    return Real(
        {place: Measured.model_validate(size) for place, size in (measured or {}).items()},
        {part: AsCut.model_validate(size) for part, size in (as_cut or {}).items()},
    )


def frame(*parts: Part, real: Mapping[str, Real] | None = None, **words: object) -> Frame:
    """A frame of these timbers and works; further words go to the project."""
    project = Project.model_validate(
        {
            "name": "Test frame",
            "timbers": [part for part in parts if isinstance(part, Timber)],
            "works": [part for part in parts if isinstance(part, Work)],
        }
        | words
    )
    return Frame(project, real or {})


def corners(real: Mapping[str, Real] | None = None) -> Frame:
    """The check frame: two corner posts, one of each hand, on a sill and under a plate.

    Common practice, no source: 6 x 6 posts 7' 11" between shoulders, 5" foot tenons relieved
    1-1/4" on the outside edge, 4" head tenons in by 1/2" all round, a stopped inside chamfer.
    """
    parts: list[Part] = [
        timber("post-sw", second_face="west"),
        timber("post-se", second_face="east"),
        sill(),
        sill(id="plate", name="Plate", kind="plate", section="6 x 7", length="18'"),
    ]
    for hand, at in (("sw", "0"), ("se", "16'")):
        foot = {"into": "sill", "at": at, "relief_reference": "1-1/4"}
        head = {"into": "plate", "at": f"{at} + 1'", "length": "4", "all_round": "1/2"}
        post = {"timber": f"post-{hand}"}
        parts.append(tenon(id=f"{hand}-foot", **post, **foot))
        parts.append(tenon(id=f"{hand}-head", end="head", **post, **head))
    parts.append(
        chamfer(
            on=["post-sw", "post-se"],
            near_stop={"shoulder": "foot", "distance": "joist depth + deck + reveal"},
        )
    )
    named = {"deck": "1-1/2", "reveal": "8"}
    return frame(*parts, real=real, lengths=named, sections={"joist": "6 x 3"})


def line(lines: tuple[Line, ...], line_id: str) -> Line:
    """The line with an id."""
    return next(found for found in lines if found.id == line_id)


def named(lines: tuple[Line, ...]) -> dict[str, Line]:
    """Lines by id."""
    return {line.id: line for line in lines}


def task(tasks: tuple[Task, ...], task_id: str) -> Task:
    """The task with an id."""
    return next(found for found in tasks if found.id == task_id)


def faults(joint: Work, *timbers: Timber) -> list[tuple[str, str]]:
    """The key and the problem of each fault of a joint beside these timbers."""
    found = joint.faults({each.id: each for each in timbers})
    return [(fault.key, fault.problem) for fault in found]


def lengths(*texts: str) -> tuple[Length, ...]:
    """Several lengths as a framer writes them."""
    return tuple(map(length, texts))


def read(step: Step) -> tuple[Length, ...]:
    """A step's figures, in order."""
    return tuple(reading.value for reading in step.readings)


def set_in_words(setting: Setting | None) -> str:
    """How a square, a saw or a bevel is set, in inches; empty for nothing to set."""
    return "" if setting is None else setting.words(Tape())


def codes(findings: tuple[Finding, ...]) -> tuple[str, ...]:
    """The codes of findings, in order."""
    return tuple(finding.code for finding in findings)


def joist(**words: object) -> Timber:
    """A 5-1/2 x 3-1/2 joist, top and west faces first, measured from its south end."""
    return timber(
        "joist",
        **(
            {
                "kind": "joist",
                "section": "5-1/2 x 3-1/2",
                "first_face": "up",
                "second_face": "west",
                "reference_end": "south",
                "length": "6' 4",
            }
            | words
        ),
    )


def pocket(**words: object) -> JoistPocket:
    """The joist's south end, 2" in the north face of the sill: its far face, top level with top."""
    return JoistPocket.model_validate(
        {
            "id": "joist-south",
            "family": "joist pocket",
            "timber": "joist",
            "end": "south",
            "into": "sill",
            "at": "4'",
            "bearing": "2",
        }
        | words
    )
