"""The timbers as a list: how far each is, grouped, sorted, filtered and counted.

What a walk holds is there at once. A timber's hand is read off the whole drawing and what waits on
it off other timbers, so a list of many takes those in timber by timber (`Members.grow`).
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum

from benchmate.layout.likeness import hand
from benchmate.measure.section import section_text
from benchmate.model.project import Timber
from benchmate.workbench.bench import Bench
from benchmate.workbench.bents import Bents, bents_of
from benchmate.workbench.find import match
from benchmate.workbench.find_entries import words_in
from benchmate.workbench.jobs import Waits, job_order, stuck, waits_on
from benchmate.workbench.member_counts import counted, kinds, tally
from benchmate.workbench.slips import meant
from benchmate.workbench.timber_state import Made, TimberState, state_of
from benchmate.workbench.walk import Walk


class By(Enum):
    """What the list is grouped by."""

    KIND = "kind"
    BENT = "bent"
    WALL = "wall"
    STATE = "progress"
    NONE = "nothing"

    @property
    def next(self) -> "By":
        """The grouping after this one, round and round."""
        every = list(By)
        return every[(every.index(self) + 1) % len(every)]


@dataclass(frozen=True, slots=True, kw_only=True)
class Member:
    """One timber of the list. `hand` is empty and `waits` None until they are taken in."""

    walk: Walk
    state: TimberState
    hand: str = ""
    waits: Waits | None = None

    @property
    def timber(self) -> Timber:
        """Its record."""
        return self.walk.timber

    @property
    def section(self) -> str:
        """Its section as drawn, as the tape shows it."""
        return section_text(self.walk.layout.stick.nominal, self.walk.tape)

    @property
    def flags(self) -> tuple[str, ...]:
        """What is the matter with it: stopped, marks to look at again, nothing but waiting."""
        walk = self.walk
        if walk.trouble:
            return ("unreadable",)
        told = (
            ("STOP", walk.stopped),
            (f"{walk.look_again} again", walk.look_again > 0),
            ("waits", self.waits is not None and stuck(walk, self.waits)),
        )
        return tuple(words for words, holds in told if holds)


@dataclass(frozen=True, slots=True, kw_only=True)
class Group:
    """Timbers under one heading, which counts them; empty where they are not grouped.

    `brief` is the same where there is no room to count each kind by itself.
    """

    heading: str
    brief: str
    members: tuple[Member, ...]


class Members:
    """All timbers of a bench, in file order or by next best job."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._found: dict[str, Member] = {}
        self._places: Bents | None = None
        self.renew()

    def renew(self) -> None:
        """Look at every timber again: what was done on one may free what waits on others."""
        self._places = None
        self._found = {each.id: self._member(each.id) for each in self._bench.timbers}

    def stand(self, timber: str) -> None:
        """Look at what is signed of one timber again; nothing else follows from that."""
        walk = self._bench.walk(timber)
        before = self._found[timber]
        self._found[timber] = Member(
            walk=walk, state=state_of(walk), hand=before.hand, waits=before.waits
        )

    def member(self, timber: str) -> Member:
        """One of them. Raises KeyError for an unknown id."""
        return self._found[timber]

    @property
    def all(self) -> tuple[Member, ...]:
        """All of them in file order."""
        return tuple(self._found.values())

    def grow(self, first: Iterable[str] = ()) -> bool:
        """Take in the hand and the waits of one more timber, of `first` first; False for none."""
        timber = next((each for each in first if self._lacks(each)), None)
        if timber is None:
            timber = next((each for each in self._found if self._lacks(each)), None)
        if timber is None:
            return False
        found, bench = self._found[timber], self._bench
        self._found[timber] = Member(
            walk=found.walk,
            state=found.state,
            hand=hand(bench.frame, timber),
            waits=waits_on(found.walk, bench.walk),
        )
        return True

    def _lacks(self, timber: str) -> bool:
        return self._found[timber].waits is None

    def _member(self, timber: str) -> Member:
        walk = self._bench.walk(timber)
        return Member(walk=walk, state=state_of(walk))

    @property
    def places(self) -> Bents:
        """The bents and walls they are in."""
        if self._places is None:
            self._places = bents_of(self._bench.frame)
        return self._places

    def by_job(self, timber: str, step: str) -> tuple[Member, ...]:
        """All of them by their next best job, from the timber and the step in hand."""
        walks = tuple(each.walk for each in self.all)
        return tuple(self._found[each] for each in job_order(walks, timber, step))

    def holding(self, words: str, members: Sequence[Member]) -> tuple[Member, ...]:
        """Those that hold every typed word in what the list shows of them, a slip or two allowed.

        A word counts as it is, as a start, inside a word, or, where no timber holds it so, but for
        a slip. All of them for no words.
        """
        held = {each.timber.id: words_in(self._told(each)) for each in members}
        for word in words_in(words):
            held = _with_word(word, held, match) or _with_word(word, held, meant)
        return tuple(each for each in members if each.timber.id in held)

    def _told(self, member: Member) -> str:
        timber, places = member.timber, self.places
        lines = (places.bents.get(timber.id, ""), places.walls.get(timber.id, ""))
        parts = (timber.name, timber.id, timber.kind, timber.species, member.section, member.hand)
        return " ".join((*parts, *lines, member.state.words, *member.flags))

    def grouped(self, members: Sequence[Member], by: By, *, as_given: bool) -> tuple[Group, ...]:
        """The timbers in groups: bents and walls by their lines, progress from the beginning on.

        With `as_given` a group stands where the first of its timbers does. Timbers in no bent or
        wall come after all others, and last of all those without a place.
        """
        if by is By.NONE:
            return (Group(heading="", brief="", members=tuple(members)),)
        found: dict[tuple[int, str], list[Member]] = {}
        for each in members:
            found.setdefault(self._group_of(each, by), []).append(each)
        lines = len(self.places.lines) if by in (By.BENT, By.WALL) else len(Made)

        def place(key: tuple[int, str]) -> int:
            return max(key[0] - lines + 1, 0) if as_given else key[0]

        return tuple(
            Group(
                heading=_heading(by, key[1], found[key]),
                brief=_heading(by, key[1], found[key], brief=True),
                members=tuple(found[key]),
            )
            for key in sorted(found, key=place)
        )

    def _group_of(self, member: Member, by: By) -> tuple[int, str]:
        """Where the group of a timber comes in order, and what it is called."""
        timber, made = member.timber, member.state.made
        if by is By.KIND:
            return 0, timber.kind
        if by is By.STATE:
            return int(made), made.words
        places = self.places
        line = (places.bents if by is By.BENT else places.walls).get(timber.id)
        if line is not None:
            return places.lines.index(line), f"{by.value.capitalize()} on {line}"
        if timber.id in places.placed:
            return len(places.lines), f"In no {by.value}"
        return len(places.lines) + 1, "No place in the frame"


def kind_lines(bench: Bench) -> tuple[str, ...]:
    """How many of each kind there are, of each hand, and how far they are, a line a kind."""
    members = Members(bench)
    while members.grow():
        pass
    return tuple(each.heading for each in members.grouped(members.all, By.KIND, as_given=False))


def _with_word(
    word: str, held: Mapping[str, tuple[str, ...]], holds: Callable[[str, str], object]
) -> dict[str, tuple[str, ...]]:
    """Those that hold a word."""
    return {
        timber: words
        for timber, words in held.items()
        if any(holds(word, other) for other in words)
    }


def _heading(by: By, name: str, members: Sequence[Member], *, brief: bool = False) -> str:
    """`4 posts: 2 right, 2 left; 1 cut`, led by the bent, the wall or the progress."""
    if by is By.KIND:
        told = tally(members, states=True)
        return f"{counted(len(members), name)}{told and ': '}{told}"
    told = counted(len(members), "timber") if brief else kinds(members)
    return f"{name[:1].upper()}{name[1:]}: {told}{_after(members, by)}"


def _after(members: Sequence[Member], by: By) -> str:
    told = tally(members, states=by is not By.STATE)
    return f"; {told}" if told else ""
