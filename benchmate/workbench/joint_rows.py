"""The joints of a frame, one row each: what meets, where along each timber, and the main sizes."""

from collections.abc import Iterator

from benchmate.frame.pegs import Pegs
from benchmate.joinery import family_of
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Feature
from benchmate.model.stick import ENDS
from benchmate.model.words import lower_first
from benchmate.model.work import Work
from benchmate.sheets.schedule import JointRow
from benchmate.workbench.bench import Bench
from benchmate.workbench.walk import Walk

_WORDS = ("kind", "cut", "abutment", "side", "wedged")
"""The parameters that say in a word what shape a joint has."""


def joint_rows(bench: Bench) -> Iterator[JointRow]:
    """Every joint in file order. Where one is stopped, no place and no size of it is told."""
    for stored in bench.project.works:
        if stored.joins():
            yield _row(bench, stored)


def _row(bench: Bench, stored: Work) -> JointRow:
    ids = dict.fromkeys(stored.timbers().values())
    work = _proportioned(bench, stored)
    sides = [(bench.walk(timber), _features(bench.walk(timber), work.id)) for timber in ids]
    stops = tuple(dict.fromkeys(each for walk, found in sides for each in _stops(walk, found)))
    tape = bench.tape
    return JointRow(
        id=work.id,
        family=family_of(work).name,
        timbers=tuple(walk.timber.name for walk, _ in sides),
        where=() if stops else tuple(_where(walk, each) for walk, found in sides for each in found),
        sizes=() if stops else tuple(_sizes(work, sides, tape)),
        pegs="" if stops else _pegs(work, tape),
        stops=stops,
    )


def _proportioned(bench: Bench, stored: Work) -> Work:
    """The joint with what it leaves to a rule of proportion worked out."""
    timber = next(iter(stored.timbers().values()))
    return next(work for work in bench.frame.works_on(timber) if work.id == stored.id)


def _features(walk: Walk, joint: str) -> tuple[Feature, ...]:
    return tuple(feature for feature in walk.layout.features if feature.joint == joint)


def _stops(walk: Walk, features: tuple[Feature, ...]) -> Iterator[str]:
    if walk.trouble:
        yield " ".join(walk.trouble.split())
    known = {ENDS, *(feature.id for feature in features)}
    for found in walk.stops:
        if found.feature in known:
            yield f"{found.message}. To mend it: {found.remedy}."


def _where(walk: Walk, feature: Feature) -> str:
    """Where along its timber one side of a joint comes; a scribed one is found by hand."""
    stick, title = walk.layout.stick, lower_first(feature.title)
    lead = f"{walk.timber.name}, {title}"
    if feature.scribed:
        return f"{lead}: marked by hand from its mate"
    at = walk.tape.text(feature.at - stick.start)
    return f"{lead}: {at} from the squared {stick.pose.words(Face.REFERENCE_END)}"


def _sizes(work: Work, sides: list[tuple[Walk, tuple[Feature, ...]]], tape: Tape) -> Iterator[str]:
    """The sizes of finished parts, as cut where typed, then the joint's own parameters."""
    told = set()
    for walk, features in sides:
        for feature in features:
            as_cut = walk.progress.as_cut.get(feature.place[0]) if feature.place else None
            parts = []
            for size in feature.sizes:
                real = as_cut.get(size.name) if as_cut else None
                shown = tape.text(size.laid_out if real is None else real)
                parts.append(f"{size.name} {shown}{'' if real is None else ' as cut'}")
                told.add(size.name)
            if parts:
                yield f"{lower_first(feature.title)}: {', '.join(parts)}"
    rest = ", ".join(_parameters(work, told, tape))
    if rest:
        yield rest


def _parameters(work: Work, told: set[str], tape: Tape) -> Iterator[str]:
    for name in type(work).model_fields:
        value = getattr(work, name)
        words = name.replace("_", " ")
        if isinstance(value, Length) and value and name not in told:
            yield f"{words} {tape.text(value)}"
        elif name in _WORDS and value:
            yield f"{words} {value.word if isinstance(value, Direction) else value}"


def _pegs(work: Work, tape: Tape) -> str:
    """How many pegs, how big their holes, and where."""
    pegs = getattr(work, "pegs", None)
    if not isinstance(pegs, Pegs):
        return ""
    count = "1 peg" if pegs.count == 1 else f"{pegs.count} pegs"
    apart = f", {tape.text(pegs.spacing)} apart" if pegs.spacing else ""
    draw = f", draw {tape.text(pegs.draw)}" if pegs.draw else ""
    return (
        f"{count} in {tape.text(pegs.size)} holes, {tape.text(pegs.from_shoulder)} from the "
        f"shoulder, {tape.text(pegs.from_edge)} from the edge{apart}{draw}"
    )
