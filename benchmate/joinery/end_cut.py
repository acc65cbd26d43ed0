"""The ends of every timber: squared at the reference end, cut to its overall length."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import CHAINSAW, SAW, awaits_measuring, unsure
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.measure.tolerance import LONGEST_TIMBER
from benchmate.model.directions import LONG_FACES, Direction, Face
from benchmate.model.feature import Beside, Feature, Line, Reading, Stage, Task
from benchmate.model.findings import Finding, Severity
from benchmate.model.project import Timber
from benchmate.model.solids import Axis, Cut, above, below
from benchmate.model.stick import ENDS, Stick


def features(timber: Timber, frame: Frame) -> tuple[Feature, ...]:
    """The two end cuts of one timber."""
    stick = frame.stick(timber.id)
    found = (*(check(stick, frame.tape) for check in CHECKS), off_the_slope(timber, frame))
    return (
        Feature(
            id=ENDS,
            timber=stick.id,
            title="Ends",
            at=stick.start,
            place=(),
            cuts=(
                Cut((below(Axis.ALONG, stick.start, "square"),)),
                Cut((above(Axis.ALONG, stick.finish, "overall"),)),
            ),
            lines=(_square(stick), _overall(stick)),
            tasks=(_saw(stick),),
            findings=tuple(finding for finding in found if finding),
            awaits=awaits_measuring(stick),
        ),
    )


def _square(stick: Stick) -> Line:
    end = stick.pose.words(Face.REFERENCE_END)
    return Line(
        id="square",
        title=f"Square the {end}",
        axis=Axis.ALONG,
        at=stick.start,
        faces=LONG_FACES,
        readings=(
            Reading(
                value=stick.trim,
                hook=f"rough {end}",
                way=f"towards the {stick.pose.words(Face.FAR_END)}, at least, into sound wood",
            ),
        ),
        beside=(Beside(stick.overall + stick.trim + stick.trim, "of stick needed in all"),),
        waste=f"Towards the rough {end}.",
        why=(
            "Strike it square round from both reference faces and saw it: everything is first "
            "measured from this end."
        ),
        caution=f"{SAW} {CHAINSAW}",
        stage=Stage.END,
        lasting=False,
    )


_OVERALL_WHY = (
    "From end to end: this timber has no tenons.",
    "Overall, with the joint beyond its shoulder: not the shoulder to shoulder length.",
    "Overall, with the joints beyond both shoulders: not the shoulder to shoulder length.",
)


def _joined(*cautions: str) -> str:
    return " ".join(filter(None, cautions))


def _overall(stick: Stick) -> Line:
    start, finish = (stick.pose.words(end) for end in (Face.REFERENCE_END, Face.FAR_END))
    beyond = tuple(
        Beside(size, f"of it lies beyond the {end} shoulder")
        for size, end in ((stick.near, start), (stick.far, finish))
        if size
    )
    return Line(
        id="overall",
        title="Overall length",
        axis=Axis.ALONG,
        at=stick.finish,
        faces=LONG_FACES,
        readings=(
            Reading(
                value=stick.overall, hook=f"squared {start}", way=f"towards the {finish}, in all"
            ),
        ),
        beside=(
            *_body(stick),
            *beyond,
            *_housed(stick),
        ),
        waste=f"Towards the rough {finish}.",
        why=_OVERALL_WHY[len(beyond)],
        caution=_joined(
            unsure(stick),
            _scribed(stick),
            "Check the tape's hook: a burnt inch here spoils the stick.",
        ),
        stage=Stage.END,
    )


def _body(stick: Stick) -> tuple[Beside, ...]:
    """The length between the shoulders, where that is not the whole of it."""
    if stick.body == stick.overall:
        return ()
    return (Beside(stick.body, "of it is body, shoulder to shoulder"),)


def _housed(stick: Stick) -> tuple[Beside, ...]:
    """What of the body lies inside the timbers it meets, and what shows between them."""
    inside = tuple(
        Beside(size, f"of the body goes into the other timber at the {stick.pose.words(end)}")
        for size, end in (
            (stick.near_housed, Face.REFERENCE_END),
            (stick.far_housed, Face.FAR_END),
        )
        if size
    )
    if not inside:
        return ()
    clear = stick.body - stick.near_housed - stick.far_housed
    what = "timbers" if stick.inner is None else "inner timbers"
    return (*inside, Beside(clear, f"clear between the {what} it meets"))


def _scribed(stick: Stick) -> str:
    if not stick.scribed:
        return ""
    ends = " and the ".join(map(stick.pose.words, stick.scribed))
    scribed = f"{ends} is scribed" if len(stick.scribed) == 1 else f"{ends} are scribed"
    return f"Leave it long: the {scribed}, so this length is only about right."


def _saw(stick: Stick) -> Task:
    finish = stick.pose.words(Face.FAR_END)
    return Task(
        id="saw",
        draws="overall",
        stage=Stage.CUT,
        title=f"Saw the {finish} to length",
        faces=LONG_FACES,
        readings=(
            Reading(
                value=stick.overall,
                hook=f"squared {stick.pose.words(Face.REFERENCE_END)}",
                way=f"towards the {finish}",
            ),
        ),
        waste=f"Towards the rough {finish}, beyond the overall line.",
        why="Only once every joint is laid out and the far end reads back right.",
        caution=_joined(unsure(stick), _scribed(stick), SAW, CHAINSAW),
    )


def no_body(stick: Stick, tape: Tape) -> Finding | None:
    """The joints at its ends take the whole overall length, so no body is left between shoulders.

    Usually an overall length typed for a shoulder to shoulder one, or a timber placed on the wrong
    side of one it meets. Remedy: check `length` and `length_is`, or the places.
    """
    if stick.body > ZERO:
        return None
    return Finding(
        code="timber-no-body",
        severity=Severity.STOP,
        timber=stick.id,
        feature=ENDS,
        message=f"The joints at its ends leave a body of {tape.text(stick.body)} between shoulders",
        remedy=(
            "check where the timbers it meets stand, and which way its ends look"
            if stick.placed
            else "check length and length_is: overall includes the tenons"
        ),
    )


def too_long(stick: Stick, tape: Tape) -> Finding | None:
    """The timber is longer than any that grows, so a length was misread or a sum went wrong.

    Remedy: check `length` and the names in it.
    """
    if stick.overall <= LONGEST_TIMBER:
        return None
    return Finding(
        code="timber-too-long",
        severity=Severity.STOP,
        timber=stick.id,
        feature=ENDS,
        message=f"The timber would be {tape.text(stick.overall)} overall",
        remedy=(
            f"check {'the places' if stick.placed else 'length'} and the names in it: at most "
            f"{tape.text(LONGEST_TIMBER)}"
        ),
    )


def off_the_slope(timber: Timber, frame: Frame) -> Finding | None:
    """A timber is rolled to another slope than the one it is joined to has.

    Its ends would stand askew in their housings. Example: a purlin rolled 8 in 12 between rafters
    that rise 9 in 12. Remedy: the same run and rise, by name if there is one.
    """
    if timber.roll is None:
        return None
    own = frame.slope(timber.id)
    for bearing in (frame.bearing(timber.id, end) for end in _ends(timber)):
        if bearing is not None and not own.like(frame.slope(bearing.into)):
            other = frame.wood(bearing.into).name
            return Finding(
                code="roll-off-slope",
                severity=Severity.STOP,
                timber=timber.id,
                feature=ENDS,
                message=f"{timber.name} is rolled to another slope than {other} has",
                remedy=f"give its roll the run and rise of {other}",
            )
    return None


def _ends(timber: Timber) -> tuple[Direction, Direction]:
    return timber.reference_end, timber.reference_end.opposite


CHECKS = (no_body, too_long)

FAMILY = Family(name="end cut", table="timber", record=Timber, features=features)
