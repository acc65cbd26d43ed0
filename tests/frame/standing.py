"""A placed timber between two others, at random, and where it stands by second opinion.

The second opinion knows no reference faces: it asks which building coordinates the receiving
timber fills, and an end going in stops `housing` beyond the side it comes to first.
"""

from dataclasses import dataclass

from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.measure.length import Length
from benchmate.model.progress import Measured
from benchmate.model.project import Timber
from tests.builders import Part, frame, tenon, timber
from tests.compass import OPPOSITE
from tests.corner import ENDS, measured, sixtyfourths
from tests.space import STANCES, TOWARDS, Placed, Span, Stance, inward

AXES = ("east", "north", "up")
"""The building axes as a project file writes them."""

WAYS = tuple((near, far) for near in ("meets", "typed") for far in ("meets", "typed"))
WAYS += tuple((way, "length") for way in ("meets", "typed"))
WAYS += tuple(("length", way) for way in ("meets", "typed"))
"""How the reference end and the far end of a timber may be settled."""

Coordinates = tuple[int, int, int]
Words = dict[str, object]


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """A timber of known stance; `origin` is its arris at its reference shoulder, in nanometres."""

    id: str
    stance: Stance
    origin: Coordinates
    body: int
    words: Words

    @property
    def placed(self) -> Placed:
        """Where it stands, for the second opinion."""
        return Placed(self.origin, inward(self.stance))

    def record(self, **ends: object) -> Timber:
        """The timber as a project file says it, by its place; `ends` say what settles its ends."""
        return timber(self.id, **(self.words | {"at": arris(self), "length": None} | ends))

    def typed(self) -> Timber:
        """The same timber without a place, its length typed."""
        return timber(self.id, **self.words, length=text(self.body))


@dataclass(frozen=True, slots=True, kw_only=True)
class Joint:
    """An end of the stick and what it meets; `into` is None where the tenon stands alone."""

    end: str
    words: Words
    into: Standing | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Between:
    """A stick, how its ends are settled, its joints and the timbers they are in."""

    stick: Standing
    ends: Words
    joints: tuple[Joint, ...]
    real: dict[str, Real]

    @property
    def met(self) -> tuple[Joint, ...]:
        """The joints in another timber."""
        return tuple(joint for joint in self.joints if joint.into)

    def frame(self) -> Frame:
        """The frame with every timber in its place."""
        parts: list[Part] = [self.stick.record(**self.ends)]
        parts += [joint.into.record(**run(joint.into)) for joint in self.joints if joint.into]
        parts += [tenon(**joint.words) for joint in self.joints]
        return frame(*parts, real=self.real)

    def typed(self) -> Frame:
        """The same frame without a place in it: lengths and crossings typed by second opinion."""
        parts: list[Part] = [self.stick.typed()]
        parts += [joint.into.typed() for joint in self.joints if joint.into]
        parts += [tenon(**joint.words, **self.crossing(joint)) for joint in self.joints]
        return frame(*parts, real=self.real)

    def crossing(self, joint: Joint) -> Words:
        """Where the stick's arris lies from the receiver's shoulder and from its side."""
        if joint.into is None:
            return {}
        along, across = crossed(self.stick, joint.into)
        return {"at": text(along), "inset": text(across)}


def crossed(stick: Standing, receiver: Standing) -> tuple[int, int]:
    """How far along the receiver, and in from its side reference face, a stick's arris lies."""
    ways = inward(receiver.stance)
    runs = TOWARDS[stick.stance.end][0]
    along, across = (way for way in (ways[0], *ways[1:]) if way[0] != runs)
    gap = [here - there for here, there in zip(stick.origin, receiver.origin, strict=True)]
    return along[1] * gap[along[0]], across[1] * gap[across[0]]


def text(nm: int) -> str:
    """A length as a project file writes it."""
    return Length(nm).exact_text()


def arris(standing: Standing) -> dict[str, str]:
    """The two coordinates of a timber's arris that do not run along it."""
    along = TOWARDS[standing.stance.end][0]
    named = zip(AXES, standing.origin, strict=True)
    return {name: text(nm) for axis, (name, nm) in enumerate(named) if axis != along}


def run(standing: Standing) -> Words:
    """Both ends of a timber typed as coordinates."""
    axis, sense = TOWARDS[standing.stance.end]
    near = standing.origin[axis]
    return {"reference_end_at": text(near), "far_end_at": text(near - sense * standing.body)}


def faces(stance: Stance) -> Words:
    """How a timber stands, in the words of a project file."""
    return {
        "first_face": stance.first,
        "second_face": stance.second,
        "reference_end": ENDS.get(stance.end, stance.end),
    }


def nanometres(low: int, high: int) -> st.SearchStrategy[int]:
    """Sixty-fourths of an inch between two whole inches, in nanometres."""
    return sixtyfourths(low, high).map(lambda length: length.nm)


def sized(draw: st.DrawFn, low: int) -> tuple[Words, tuple[int, int], tuple[int, int] | None]:
    """A section and a rule: as the file says them, the section drawn, and the inner one if any."""
    drawn, inner = (
        draw(st.tuples(nanometres(least, least + 4), nanometres(least, least + 4)))
        for least in (low, low - 4)
    )
    words: Words = {"section": " x ".join(map(text, drawn)), "rule": "mill"}
    if draw(st.booleans()):
        return words, drawn, None
    return words | {"rule": "square", "inner": " x ".join(map(text, inner))}, drawn, inner


def counted_on(drawn: tuple[int, int], *places: Measured) -> tuple[int, int]:
    """The sizes measured at the first place that has them, otherwise as drawn."""
    first = next((place.first.nm for place in places if place.first), drawn[0])
    second = next((place.second.nm for place in places if place.second), drawn[1])
    return first, second


@st.composite
def receiving(draw: st.DrawFn, look: str, at: int) -> tuple[Standing, Real, Span]:
    """A timber across a direction, its arris at a coordinate of it, and the span it fills there."""
    axis = TOWARDS[look][0]
    stance = draw(st.sampled_from([one for one in STANCES if TOWARDS[one.end][0] != axis]))
    origin = [draw(nanometres(-60, 60)) for _ in AXES]
    origin[axis] = at
    words, drawn, inner = sized(draw, 8)
    here, along, elsewhere = (draw(measured(7, 12)) for _ in range(3))
    places = {f"{look}-joint-mortise": here, "all": along, "foot": elsewhere, "middle": elsewhere}
    standing = Standing(
        id=f"{look}-timber",
        stance=stance,
        origin=(origin[0], origin[1], origin[2]),
        body=draw(nanometres(120, 240)),
        words=words | faces(stance),
    )
    first, second = inner or counted_on(drawn, here, along)
    return standing, Real(places), standing.placed.box(((0, 0), (0, first), (0, second)))[axis]


@dataclass(frozen=True, slots=True, kw_only=True)
class _End:
    """One end of a stick: where its shoulder comes, unless its length says so, and what it has."""

    shoulder: int | None
    words: Words
    joint: Joint | None
    real: dict[str, Real]
    beyond: int


@st.composite
def _ended(draw: st.DrawFn, look: str, key: str, at: int, way: str) -> _End:
    """An end that looks so and is settled in one way, about a coordinate."""
    shoulder = {"typed": at}.get(way)
    typed: Words = {key: text(at)} if way == "typed" else {}
    length, allowance = draw(nanometres(1, 4)), draw(nanometres(0, 1))
    words: Words = {"id": f"{look}-joint", "timber": "stick", "end": ENDS.get(look, look)}
    words |= {"length": text(length), "end_allowance": text(allowance)}
    if way != "meets":
        alone = Joint(end=look, words=words, into=None) if draw(st.booleans()) else None
        beyond = length + allowance if alone else 0
        return _End(shoulder=shoulder, words=typed, joint=alone, real={}, beyond=beyond)
    receiver, real, (low, high) = draw(receiving(look, at))
    housing = draw(nanometres(0, 2))
    words |= {"into": receiver.id, "housing": text(housing)}
    return _End(
        shoulder=low + housing if TOWARDS[look][1] > 0 else high - housing,
        words={},
        joint=Joint(end=look, words=words, into=receiver),
        real={receiver.id: real},
        beyond=length + allowance,
    )


@st.composite
def between(draw: st.DrawFn, ways: tuple[tuple[str, str], ...] = WAYS) -> Between:
    """Any timber, its ends settled any way, in or against any timbers that cross it."""
    stance = draw(st.sampled_from(STANCES))
    axis, sense = TOWARDS[stance.end]
    start = draw(nanometres(-240, 240))
    about = (start, start - sense * draw(nanometres(60, 200)))
    looks = (stance.end, OPPOSITE[stance.end])
    keys = ("reference_end_at", "far_end_at")
    four = zip(looks, keys, about, draw(st.sampled_from(ways)), strict=True)
    ends = [draw(_ended(*words)) for words in four]
    near, far, length = _settled(draw, ends, sense)
    origin = [draw(nanometres(-60, 60)) for _ in AXES]
    origin[axis] = near
    stick = Standing(
        id="stick",
        stance=stance,
        origin=(origin[0], origin[1], origin[2]),
        body=(near - far) * sense,
        words=sized(draw, 6)[0] | faces(stance),
    )
    return Between(
        stick=stick,
        ends=ends[0].words | ends[1].words | length,
        joints=tuple(end.joint for end in ends if end.joint),
        real=ends[0].real | ends[1].real | {"stick": Real({"all": draw(measured(5, 9))})},
    )


def _settled(draw: st.DrawFn, ends: list[_End], sense: int) -> tuple[int, int, Words]:
    """The coordinates of both shoulders; where one end settles none, by a length from the other."""
    near, far = (end.shoulder for end in ends)
    if near is not None and far is not None:
        return near, far, {}
    body = draw(nanometres(60, 200))
    length_is = draw(st.sampled_from(("shoulder to shoulder", "overall")))
    whole = body + sum(end.beyond for end in ends) if length_is == "overall" else body
    words: Words = {"length": text(whole), "length_is": length_is}
    if near is not None:
        return near, near - sense * body, words
    if far is not None:
        return far + sense * body, far, words
    raise ValueError("one end of the stick is settled at least")
