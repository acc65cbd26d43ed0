"""What a change would do, shown before it is accepted: a real size, or a name of the project."""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from itertools import chain
from typing import NamedTuple

from benchmate.checks.design import findings_of
from benchmate.frame.frame import Frame
from benchmate.layout.standing import State, memory_of
from benchmate.layout.step import Layout, Step
from benchmate.layout.walk import lay_out
from benchmate.measure.length import Length
from benchmate.model.feature import Stage
from benchmate.model.findings import Finding, Severity
from benchmate.model.progress import AsCut, Progress
from benchmate.model.project import Timber
from benchmate.workbench.names import NameMoved, names_moved
from benchmate.workbench.walk import Walk, walk_of


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """One figure of one step that a change moves, brings or takes away, or where it is marked.

    `before` or `after` is None where there is no figure; with neither, `words` say what is new.
    `ticked` tells that a tick on the step remembers it, `cut` that the part is cut already,
    `right` that the step is ticked and will read as it did when that was made, and `stopped` that
    the figure to come is not fit to cut to.
    """

    timber: str
    name: str
    step: str
    title: str
    words: str
    before: Length | None
    after: Length | None
    ticked: bool
    cut: bool
    right: bool = False
    stopped: bool = False

    @property
    def spoilt(self) -> bool:
        """Whether a mark or a cut that was made is no longer true."""
        return (self.ticked or self.cut) and not self.right


class NewTimber(NamedTuple):
    """A timber that a change brings: its id and name, and how many steps it has."""

    id: str
    name: str
    steps: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Ripple:
    """Everything a change moves, the stops there would be, and what else it brings to look at.

    `names` are those of the project that come to something else, and `unknown` says of which
    timbers it is not known what is done on them. `new` are timbers that were not there before, the
    names of `findings` on them included, and `gone` the names of those that will not be.
    """

    moved: tuple[Moved, ...]
    findings: tuple[Finding, ...]
    names: tuple[NameMoved, ...] = ()
    unknown: tuple[str, ...] = ()
    new: tuple[NewTimber, ...] = ()
    gone: tuple[str, ...] = ()

    @property
    def timbers(self) -> int:
        """How many timbers have steps that change."""
        return len({each.timber for each in self.moved})

    @property
    def steps(self) -> int:
        """How many steps change."""
        return _steps(self.moved)

    @property
    def ticked(self) -> int:
        """How many of those steps are ticked, and must be looked at again."""
        return _steps(each for each in self.moved if each.ticked and not each.right)

    @property
    def cut(self) -> int:
        """How many of those steps are of a part that is cut already."""
        return _steps(each for each in self.moved if each.cut and not each.right)


def _steps(moved: Iterable[Moved]) -> int:
    return len({(each.timber, each.step) for each in moved})


def affected(before: Frame, after: Frame) -> tuple[str, ...]:
    """The timbers of both frames whose marks can differ, in the order of the file."""
    known = {timber.id for timber in before.project.timbers}
    return tuple(
        timber.id
        for timber in after.project.timbers
        if timber.id in known and before.inputs(timber.id) != after.inputs(timber.id)
    )


def ripple(before: Frame, after: Frame, walk: Callable[[str], Walk]) -> Ripple:
    """What differs between two frames; `walk` gives a timber as it stands in the first."""
    walks = tuple(map(walk, affected(before, after)))
    then = tuple(_as_in(after, each) for each in walks)
    new = tuple(lay_out(after, timber.id) for timber in _only_in(after, before))
    brought = (findings_of(layout, after.tape) for layout in new)
    return Ripple(
        moved=tuple(chain.from_iterable(map(_on_timber, walks, then))),
        findings=(
            *chain.from_iterable(map(_brought, walks, then)),
            *(each for found in brought for each in found if each.severity > Severity.NOTE),
        ),
        new=tuple(NewTimber(each.stick.id, each.stick.name, len(each.steps)) for each in new),
        gone=tuple(timber.name for timber in _only_in(before, after)),
        names=names_moved(before, after),
        unknown=tuple(f"{each.timber.name}: {each.trouble}" for each in walks if each.trouble),
    )


def _only_in(frame: Frame, other: Frame) -> tuple[Timber, ...]:
    """The timbers of a frame that another has not, in the order of the file."""
    known = {timber.id for timber in other.project.timbers}
    return tuple(timber for timber in frame.project.timbers if timber.id not in known)


def _as_in(frame: Frame, walk: Walk) -> Walk:
    """A timber as it would stand in another frame, with the ticks it has."""
    timber = frame.timber(walk.timber.id)
    return walk_of(timber, lay_out(frame, timber.id), walk.progress, frame.tape)


def _brought(walk: Walk, then: Walk) -> Iterator[Finding]:
    """What would stop a timber, and what there would be to look at that was not there before."""
    before = findings_of(walk.layout, walk.tape)
    for found in findings_of(then.layout, then.tape):
        if found.severity is Severity.STOP or found not in before:
            yield found


def cut_parts(layout: Layout, progress: Progress) -> frozenset[str]:
    """The features of a timber that are cut: a step from the cut on is ticked, or a size typed."""
    ticked = {tick.step for tick in progress.ticks}
    sawn = {step.feature for step in layout.steps if step.stage >= Stage.CUT and step.id in ticked}
    measured = {feature for feature, sizes in progress.as_cut.items() if sizes != AsCut()}
    return frozenset(sawn | measured)


class _Figure(NamedTuple):
    """A figure of a step in words and size, and whether a tick on the step remembers it."""

    words: str
    value: Length | None = None
    remembered: bool = True


_Pair = tuple[_Figure | None, _Figure | None]
"""A figure as it was and as it will be; None where there is none."""


def _on_timber(walk: Walk, then: Walk) -> Iterator[Moved]:
    cut = cut_parts(walk.layout, walk.progress)
    was = {step.id: step for step in walk.steps}
    now = {step.id: step for step in then.steps}
    standings = dict(zip(now, then.standings, strict=True))
    for step in (*then.steps, *(step for step in walk.steps if step.id not in now)):
        standing = standings.get(step.id)
        ticked = walk.progress.tick(step.id) is not None
        own = (*_differences(was.get(step.id), now.get(step.id)),)
        lines = _lines_moved(was.get(step.id), now.get(step.id)) if ticked and not own else ()
        for before, after in (*own, *lines):
            figure = after or before or _Figure("")
            yield Moved(
                timber=walk.timber.id,
                name=walk.timber.name,
                step=step.id,
                title=step.title,
                words=figure.words,
                before=before.value if before else None,
                after=after.value if after else None,
                ticked=ticked and figure.remembered,
                cut=step.feature in cut and figure.remembered,
                right=standing is not None and standing.state is State.TICKED,
                stopped=standing is not None and then.stop(step) is not None,
            )


def _differences(old: Step | None, new: Step | None) -> Iterator[_Pair]:
    """What differs in a step as it was and as it will be, but for a fresh look at the stick."""
    if not (new or old) or not all(step.lasting for step in (old, new) if step):
        return
    was, now = _figures(old), _figures(new)
    for key in {**now, **was}:
        before, after = was.get(key), now.get(key)
        if (before and before.value) != (after and after.value):
            yield before, after
    if old and new:
        yield from ((None, _Figure(words)) for words in _turned(old, new))
    elif not was and not now:
        yield None, _Figure("is new" if new else "falls away")


def _lines_moved(old: Step | None, new: Step | None) -> Iterator[_Pair]:
    """The lines that a cut was made to and that move, where the cut has no figure that does."""
    if old is None or new is None:
        return
    was = {rest.name: rest for rest in old.rests}
    for rest in new.rests:
        before = was.get(rest.name)
        if before is not None and before.value != rest.value:
            words = f"{rest.way}, the {rest.hook} it was cut to"
            yield _Figure(words, before.value), _Figure(words, rest.value)


def _turned(old: Step, new: Step) -> Iterator[str]:
    """What else a tick remembers: the faces a mark is struck on and the side of its waste."""
    was, now = memory_of(old), memory_of(new)
    if was.on != now.on:
        yield f"was on {was.on or 'no face'}, now on {now.on or 'no face'}"
    if was.waste != now.waste:
        yield f"waste was towards {was.waste or 'neither side'}, now {now.waste or 'neither side'}"


def _figures(step: Step | None) -> dict[tuple[str, bool], _Figure]:
    """The figures of a step by name, and whether that is what they are measured from."""
    if step is None:
        return {}
    readings = {
        (each.name, True): _Figure(f"from the {each.hook}", each.value) for each in step.readings
    }
    beside = {
        (each.words, False): _Figure(each.words, each.value, remembered=False)
        for each in step.beside
    }
    return {**readings, **beside}
