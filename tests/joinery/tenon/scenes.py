"""An end of one timber in the side of another, at random: by either rule, typed and in its place.

The second opinion works in building coordinates alone. The receiving timber is put down anywhere;
the end then stops so deep inside the face that the frame counts on, which by square rule is the
inner timber's and by mill rule the real one.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from hypothesis import strategies as st

from benchmate.frame.frame import Real
from benchmate.measure.length import Length
from benchmate.model.feature import Feature
from benchmate.model.progress import AsCut, Measured
from benchmate.model.project import Timber
from benchmate.model.solids import Cut
from tests.builders import timber
from tests.compass import OPPOSITE
from tests.corner import ENDS, measured, sixtyfourths
from tests.space import STANCES, TOWARDS, Box, Placed, Span, Stance, bounds, inward

AXES = ("east", "north", "up")
"""The building axes as a project file writes them."""

LONG = 10**10
"""Further than any timber runs, in nanometres."""

Sizes = tuple[int, int]


@dataclass(frozen=True, slots=True, kw_only=True)
class Member:
    """A timber: how it stands, how long its body is, and its sections in nanometres."""

    id: str
    stance: Stance
    body: int
    drawn: Sizes
    inner: Sizes | None
    measured: Measured

    def real(self, reading: int) -> int:
        """What it measures at the joint in from the first (1) or second (2) reference face."""
        size = (self.measured.first, self.measured.second)[reading - 1]
        return self.drawn[reading - 1] if size is None else size.nm

    def framed(self, reading: int) -> int:
        """What the frame counts on there."""
        return self.real(reading) if self.inner is None else self.inner[reading - 1]

    @property
    def solid(self) -> Box:
        """All of it, in its own readings."""
        return ((0, self.body), (0, self.real(1)), (0, self.real(2)))

    def record(self, **words: object) -> Timber:
        """The timber as a project file says it."""
        stance = self.stance
        rule: dict[str, object] = {"rule": "mill"}
        if self.inner is not None:
            rule = {"rule": "square", "inner": " x ".join(map(text, self.inner))}
        return timber(
            self.id,
            section=" x ".join(map(text, self.drawn)),
            first_face=stance.first,
            second_face=stance.second,
            reference_end=ENDS.get(stance.end, stance.end),
            **(rule | words),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """One end of `post` in a side of `receiver`, `deep` inside the face the frame counts on.

    `origin` is where the receiver's arris crosses its reference end. `at` is how far along it the
    post's one reference face crosses it, and `inset` how far in from its side the other lies.
    """

    post: Member
    receiver: Member
    end: str
    origin: tuple[int, int, int]
    at: int
    inset: int
    deep: int
    placed: bool

    @property
    def cheeks(self) -> int:
        """Which of the post's readings runs across the receiver's grain."""
        grain = TOWARDS[self.receiver.stance.end][0]
        return 1 if TOWARDS[self.post.stance.first][0] != grain else 2

    @property
    def into(self) -> int:
        """Which of the receiver's readings the end goes in along."""
        return 1 if TOWARDS[self.receiver.stance.first][0] == TOWARDS[self.end][0] else 2

    @property
    def from_reference(self) -> bool:
        """Whether the end goes in through one of the receiver's reference faces."""
        return self.there.inward[self.into] == TOWARDS[self.end]

    @property
    def entry(self) -> int:
        """The receiver's reading of its real face there."""
        return 0 if self.from_reference else self.receiver.real(self.into)

    @property
    def seat(self) -> int:
        """The receiver's reading of the plane the end stops at."""
        framed = self.receiver.framed(self.into)
        return self.deep if self.from_reference else framed - self.deep

    @property
    def there(self) -> Placed:
        """The receiver in the building."""
        return Placed(self.origin, inward(self.receiver.stance))

    @property
    def shoulder(self) -> int:
        """The post's own reading of the plane it stops at."""
        return 0 if self.end == self.post.stance.end else self.post.body

    @property
    def here(self) -> Placed:
        """The post in the building."""
        ways = inward(self.post.stance)
        origin = [0, 0, 0]
        stop = self.there.plane(self.into, self.seat)
        origin[TOWARDS[self.end][0]] = stop - ways[0][1] * self.shoulder
        origin[ways[3 - self.cheeks][0]] = self.there.plane(0, self.at)
        origin[ways[self.cheeks][0]] = self.there.plane(3 - self.into, self.inset)
        return Placed((origin[0], origin[1], origin[2]), ways)

    def beyond(self, start: int, finish: int) -> Span:
        """Two distances beyond the post's shoulder, outwards, as readings along it."""
        if self.end == self.post.stance.end:
            return -finish, -start
        return self.shoulder + start, self.shoulder + finish

    def across(self, cheek: Span, edge: Span) -> tuple[Span, Span]:
        """What the post has across the grain and along it, in the order of its readings."""
        return (cheek, edge) if self.cheeks == 1 else (edge, cheek)

    @property
    def timbers(self) -> tuple[Timber, Timber]:
        """Both timbers as a project file says them: with lengths, or with places."""
        if not self.placed:
            return (
                self.post.record(length=text(self.post.body)),
                self.receiver.record(length=text(self.receiver.body)),
            )
        here, there = self.here, self.there
        other = ("far_end_at", self.post.body) if self.shoulder == 0 else ("reference_end_at", 0)
        return (
            self.post.record(
                length=None,
                at=_arris(self.post, here),
                **{other[0]: text(here.plane(0, other[1]))},
            ),
            self.receiver.record(
                length=None,
                at=_arris(self.receiver, there),
                reference_end_at=text(there.plane(0, 0)),
                far_end_at=text(there.plane(0, self.receiver.body)),
            ),
        )

    def crossing(self, inset: str) -> dict[str, str]:
        """What the joint says of where they cross: nothing where both have places."""
        return {} if self.placed else {"at": text(self.at), inset: text(self.inset)}

    def real(self, end: str, side: str, as_cut: AsCut) -> dict[str, Real]:
        """What has been measured of both, and what has been cut of the end."""
        return {
            self.post.id: Real({end: self.post.measured}, {end: as_cut}),
            self.receiver.id: Real({side: self.receiver.measured}),
        }


def text(nm: int) -> str:
    """A length as a project file writes it."""
    return Length(nm).exact_text()


def cut_by(feature: Feature, line: str) -> tuple[Cut, ...]:
    """The cuts that a line bounds."""
    return tuple(
        cut for cut in feature.cuts if line in {plane.line for plane in cut.planes if plane.line}
    )


def box_of(cut: Cut, placed: Placed, open_to: Box) -> Box:
    """A cut as a box in the building; where it is open it runs to these readings."""
    return placed.box(bounds(cut, open_to))


def meet(one: Box, other: Box) -> Box | None:
    """What two boxes share; None where that is nothing."""
    x, u, v = ((max(a[0], b[0]), min(a[1], b[1])) for a, b in zip(one, other, strict=True))
    return (x, u, v) if all(low < high for low, high in (x, u, v)) else None


def _arris(member: Member, placed: Placed) -> Mapping[str, str]:
    along = TOWARDS[member.stance.end][0]
    named = zip(AXES, placed.origin, strict=True)
    return {name: text(nm) for axis, (name, nm) in enumerate(named) if axis != along}


def _nm(low: int, high: int) -> st.SearchStrategy[int]:
    return sixtyfourths(low, high).map(lambda found: found.nm)


@st.composite
def _member(
    draw: st.DrawFn, name: str, stances: Sequence[Stance], least: int, body: tuple[int, int]
) -> Member:
    """A timber whose inner section fits inside whatever it measures."""
    inner = draw(st.none() | st.tuples(*[_nm(least - 2, least)] * 2))
    return Member(
        id=name,
        stance=draw(st.sampled_from(stances)),
        body=draw(_nm(*body)),
        drawn=draw(st.tuples(*[_nm(least, least + 4)] * 2)),
        inner=inner,
        measured=draw(measured(least, least + 4)),
    )


@st.composite
def scene(
    draw: st.DrawFn,
    *,
    posts: Sequence[Stance] = STANCES,
    receivers: Sequence[Stance] = STANCES,
    deep: tuple[int, int] = (0, 2),
) -> Scene:
    """Any timbers square to each other: any hands, ends and sizes, by either rule."""
    receiver = draw(_member("receiver", receivers, 8, (120, 160)))
    grain = TOWARDS[receiver.stance.end][0]
    square = [stance for stance in posts if TOWARDS[stance.end][0] != grain]
    post = draw(_member("post", square, 6, (60, 160)))
    return Scene(
        post=post,
        receiver=receiver,
        end=draw(st.sampled_from((post.stance.end, OPPOSITE[post.stance.end]))),
        origin=draw(st.tuples(*[_nm(-99, 99)] * 3)),
        at=draw(_nm(12, 108)),
        inset=draw(_nm(-2, 4)),
        deep=draw(_nm(*deep)),
        placed=draw(st.booleans()),
    )
