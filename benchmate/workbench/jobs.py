"""The order of work across the frame: what waits for what, and the next best job.

Nothing here is kept: it is read off the walks as they stand, so a tick on one timber frees what
waits for it on the others at once.
"""

from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace

from benchmate.layout.standing import State
from benchmate.layout.step import Step
from benchmate.layout.waiting import awaited, ever_awaited
from benchmate.model.feature import Asks, Awaits, Stage
from benchmate.model.stick import ENDS, STICK
from benchmate.model.words import lower_first
from benchmate.workbench.walk import Walk

SAW = f"{ENDS}/saw"
"""The step that cuts a timber to its length."""

LABEL = f"{STICK}/label"
"""The last step of a timber."""

WalkOf = Callable[[str], Walk]
"""Gives the walk of a timber by its id."""


@dataclass(frozen=True, slots=True)
class Wait:
    """A step that is still to be ticked first, mostly on another timber, and how it is called."""

    timber: str
    step: str
    words: str
    part: str = ""
    """What it is done at, without the step, on another timber: `SW post: head tenon`."""


Waits = Mapping[str, tuple[Wait, ...]]
"""What each step that waits is waiting for, by the step's id; the others are not in it."""


@dataclass(frozen=True, slots=True)
class Job:
    """A step worth doing next, what it is called, and why it comes first."""

    timber: str
    step: str
    words: str
    why: str


def waits_on(walk: Walk, walk_of: WalkOf) -> Waits:
    """What waits on a timber; only the timbers that it waits for are asked for.

    A step that has a tick waits no more, even where it is to be looked at again.
    """
    outstanding = _outstanding(walk, walk_of)
    if not outstanding:
        return {}
    found: dict[str, tuple[Wait, ...]] = {}
    for step, standing in zip(walk.steps, walk.standings, strict=True):
        first = [outstanding[each] for each in awaited(walk.layout, step) if each in outstanding]
        if first and standing.tick is None:
            found[step.id] = tuple(dict.fromkeys(first))
    return {**found, **_held_up(walk, found)}


def comes_first(walk: Walk, step: Step) -> tuple[Wait, ...]:
    """The first open step of the same timber that this one must come after, if it is open itself.

    Measuring a part as cut comes after cutting it, or its mate would be cut to a wish; a plain end
    is made when the timber is sawn to length. Sawing to length comes after laying all of it out.
    """
    if walk.standing(step.id).tick is not None:
        return ()
    before = _before(walk, step)
    for each, standing in zip(walk.steps, walk.standings, strict=True):
        if each.id in before and standing.tick is None:
            return (replace(_wait(walk, each.id), part=""),)
    return ()


_LAYOUT = (Stage.END, Stage.MARK, Stage.BACK_CHECK)
_MAKING = (Stage.CUT, Stage.PARE)


def _before(walk: Walk, step: Step) -> frozenset[str]:
    """The steps of the same timber that come before one, whatever other timbers do."""
    if step.id == SAW:
        return frozenset(each.id for each in walk.steps if each.stage in _LAYOUT)
    if step.asks is not Asks.AS_CUT:
        return frozenset()
    part = (each for each in walk.steps if each.feature == step.feature)
    return frozenset(each.id for each in part if each.stage in _MAKING) or frozenset({SAW})


def _held_up(walk: Walk, waits: Waits) -> Waits:
    """The whole stick's last steps while others of the timber wait, which they come after.

    The far end is sawn off only once every joint is laid out, and the label goes on last of all.
    """
    stages = {step.id: step.stage for step in walk.steps}
    marking = {step: each for step, each in waits.items() if stages[step] is Stage.MARK}
    return {
        step: all_waits({**before, step: waits.get(step, ())})
        for step, before in ((SAW, marking), (LABEL, waits))
        if before and step in stages and walk.standing(step).tick is None
    }


def _outstanding(walk: Walk, walk_of: WalkOf) -> dict[Awaits, Wait]:
    """The steps awaited by the joints of a timber that are not ticked, or not as they were."""
    found: dict[Awaits, Wait] = {}
    for each in ever_awaited(walk.layout):
        other = walk if each.timber == walk.timber.id else walk_of(each.timber)
        if other.standing(each.step).state is not State.TICKED:
            wait = _wait(other, each.step)
            found[each] = replace(wait, part="") if other is walk else wait
    return found


def _wait(walk: Walk, step_id: str) -> Wait:
    """Waiting for a step, as other timbers call it.

    `SW post: foot tenon, measure the tenon as cut`.
    """
    step, name = walk.layout.step(step_id), walk.timber.name
    part = walk.layout.feature(step.feature)
    what = lower_first(step.short)
    if part is None:
        return Wait(walk.timber.id, step_id, f"{name}: {what}")
    of_part = f"{name}: {lower_first(part.title)}"
    return Wait(walk.timber.id, step_id, f"{of_part}, {what}", of_part)


def waits_in_words(waits: tuple[Wait, ...]) -> str:
    """Everything a step waits for in one sentence's worth of words; empty for nothing."""
    return "; ".join(wait.words for wait in waits)


def waits_in_brief(waits: tuple[Wait, ...]) -> str:
    """The first thing a step waits for and how many more there are; empty for nothing."""
    if not waits:
        return ""
    first, more = waits[0].part or waits[0].words, len(waits) - 1
    return f"{first}; and {more} more" if more else first


def all_waits(waits: Waits) -> tuple[Wait, ...]:
    """Everything that the steps of a timber wait for, each once."""
    return tuple(dict.fromkeys(wait for each in waits.values() for wait in each))


class _Shop:
    """Every timber as it stands, and what can be done on each.

    With `sound`, nothing is done on a timber that has a joint which cannot be.
    """

    def __init__(self, walks: tuple[Walk, ...], *, sound: bool = False) -> None:
        self.sound = sound
        self.walks = {walk.timber.id: walk for walk in walks}
        self.waits = {walk.timber.id: waits_on(walk, self.walks.__getitem__) for walk in walks}
        self.waiting: defaultdict[str, list[str]] = defaultdict(list)
        for walk in walks:
            waits = all_waits(self.waits[walk.timber.id])
            others = (wait.timber for wait in waits if wait.timber != walk.timber.id)
            for timber in dict.fromkeys(others):
                self.waiting[timber].append(walk.timber.name)

    def next_on(self, timber: str) -> Step | None:
        """The first open step of a timber that neither waits nor is stopped."""
        return next(self.ready(self.walks[timber]), None)

    def ready(self, walk: Walk) -> Iterator[Step]:
        """The steps of a timber that can be done now, in order."""
        if self.sound and walk.stopped:
            return
        waits = self.waits[walk.timber.id]
        for step, standing in zip(walk.steps, walk.standings, strict=True):
            open_now = standing.state is not State.TICKED and step.id not in waits
            if open_now and not walk.withheld(step):
                yield step


def stuck(walk: Walk, waits: Waits) -> bool:
    """Whether all that is open on a timber waits for others."""
    return bool(waits) and walk.next_open(passing=waits) is None


def next_job(walks: tuple[Walk, ...], timber: str, step: str) -> Job | None:
    """The best thing to do next in the whole frame, from the timber and the step in hand.

    1. A mark to look at again, as what is on the wood is wrong: first where the part is not cut
       yet and can still be saved, and of two alike the one on the timber in hand.
    2. Where the step in hand waits, or all that is open on its timber does: what it waits for, at
       the next step of that timber.
    3. The timber in hand, once it is begun: a stick is turned and carried no more than need be.
    4. Another timber: begun before unbegun, then one that others wait for, then one on which
       nothing waits, then in the order of the file.

    What is done already, what waits and what is stopped is no job; None where nothing else is left.
    A timber with any stop on it comes after all the others: mending the stop may move the rest.
    """
    job = _best(_Shop(walks, sound=True), timber, step)
    stopped = [walk.timber.name for walk in walks if walk.timber.id == timber and walk.stopped]
    if job is None or job.timber == timber or not stopped:
        return job
    return replace(job, why=f"{job.why} {stopped[0]} is stopped.")


def job_order(walks: tuple[Walk, ...], timber: str, step: str) -> tuple[str, ...]:
    """The timbers by their next best job, from the timber and the step in hand.

    The timber of the next best job is first. The others follow as `next_job` weighs them up: marks
    to look at again, begun, waited for, nothing waiting on it; then what is stopped, what can only
    wait, and what is done.
    """
    shop = _Shop(walks, sound=True)
    best = _best(shop, timber, step)

    def rank(walk: Walk) -> tuple[int, ...]:
        own = walk.timber.id
        ready = tuple(shop.ready(walk))
        seen = ready if walk.look_again else ()
        again = [each for each in seen if walk.standing(each.id).state is State.LOOK_AGAIN]
        return (
            best is None or own != best.timber,
            2 + (walk.next_open() is None) if not ready else walk.stopped,
            1 + all(_is_cut(walk, each) for each in again) if again else 3,
            not _begun(walk),
            not shop.waiting[own],
            bool(shop.waits[own]),
        )

    return tuple(walk.timber.id for walk in sorted(walks, key=rank))


def _best(shop: _Shop, timber: str, step: str) -> Job | None:
    """The next best job on a timber without a stop, or else on any; stopped ones count then."""
    job = _first(shop, timber, step)
    shop.sound = False
    return job or _first(shop, timber, step)


def _first(shop: _Shop, timber: str, step: str) -> Job | None:
    return (
        _again(shop, timber)
        or _awaited(shop, timber, step)
        or _in_hand(shop, timber)
        or _elsewhere(shop)
    )


def _job(shop: _Shop, timber: str, step: Step, why: str) -> Job:
    words = f"{shop.walks[timber].timber.name}, {lower_first(step.title)}"
    return Job(timber, step.id, words, why)


def _again(shop: _Shop, timber: str) -> Job | None:
    found = [
        (_is_cut(walk, step), walk.timber.id != timber, walk.timber.id, step)
        for walk in shop.walks.values()
        for step in shop.ready(walk)
        if walk.standing(step.id).state is State.LOOK_AGAIN
    ]
    if not found:
        return None
    cut, _, place, step = min(found, key=lambda each: each[:2])
    saved = "" if cut else ", and it is not cut yet"
    return _job(shop, place, step, f"It no longer reads as it was marked{saved}.")


def _is_cut(walk: Walk, step: Step) -> bool:
    """Whether any wood of a step's part is gone; a step of the whole stick has the whole stick."""
    whole = step.feature in (STICK, ENDS)
    return any(
        (whole or other.feature == step.feature)
        and other.stage >= Stage.CUT
        and standing.tick is not None
        for other, standing in zip(walk.steps, walk.standings, strict=True)
    )


def _awaited(shop: _Shop, timber: str, step: str) -> Job | None:
    waits, walk = shop.waits[timber], shop.walks[timber]
    first = waits.get(step) or (all_waits(waits) if stuck(walk, waits) else ())
    for wait in first:
        ready = shop.next_on(wait.timber)
        if ready is not None:
            own = wait.timber == timber
            why = "It comes before that." if own else f"{walk.timber.name} waits for it."
            return _job(shop, wait.timber, ready, why)
    return None


def _in_hand(shop: _Shop, timber: str) -> Job | None:
    ready = shop.next_on(timber)
    if ready is None or not _begun(shop.walks[timber]):
        return None
    return _job(shop, timber, ready, "Go on with the timber in hand.")


def _begun(walk: Walk) -> bool:
    return any(standing.tick is not None for standing in walk.standings)


def _elsewhere(shop: _Shop) -> Job | None:
    ready = {timber: step for timber in shop.walks if (step := shop.next_on(timber))}
    if not ready:
        return None
    timber = min(
        ready,
        key=lambda each: (
            not _begun(shop.walks[each]),
            not shop.waiting[each],
            bool(shop.waits[each]),
        ),
    )
    return _job(shop, timber, ready[timber], _why(shop, timber))


def _why(shop: _Shop, timber: str) -> str:
    begun, waiting = _begun(shop.walks[timber]), shop.waiting[timber]
    if waiting:
        *others, last = waiting
        names = f"{', '.join(others)} and {last} wait" if others else f"{last} waits"
        return f"{'It is begun, and ' if begun else ''}{names} for it."
    return "It is begun." if begun else "It is the next to begin."


def nothing_left(walks: tuple[Walk, ...]) -> str:
    """Why there is no next job: everything is ticked, or what is left is stopped or waits."""
    shop = _Shop(walks)
    left = [walk for walk in walks if walk.next_open() is not None]
    if not left:
        return "Every step of every timber is ticked."
    unread = [walk.timber.name for walk in left if walk.trouble]
    stopped = [walk.timber.name for walk in left if walk.stopped and not walk.trouble]
    waiting = [walk.timber.name for walk in left if stuck(walk, shop.waits[walk.timber.id])]
    told = (("Unreadable", unread), ("Stopped", stopped), ("Waiting", waiting))
    listed = " ".join(f"{words}: {', '.join(names)}." for words, names in told if names)
    return f"Nothing more can be done now. {listed}"
