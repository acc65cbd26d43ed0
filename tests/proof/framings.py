"""The ordinary meetings of two timbers in a frame, each any way round and of either hand.

A stick's end goes in a side of another timber: the stick is 6" across that one's grain and 7" along
it, and stands 1" in from its reference side. The other is 10" deep the way the end goes in, and 9"
across.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from benchmate.frame.frame import Frame, Real
from benchmate.measure.length import NM_PER_INCH, Length
from benchmate.model.progress import AsCut, Measured
from benchmate.model.work import Work
from tests.builders import frame
from tests.joinery.tenon.scenes import Member, Scene, Sizes
from tests.space import Stance

Words = Mapping[str, object]

TURNS = range(8)
"""Four headings, and the same four for the other hand."""

_ROUND = ("east", "north", "west", "south")

STICK, OTHER = "stick", "other"

THICK, WIDE, DEEP, BROAD = (size * NM_PER_INCH for size in (6, 7, 10, 9))
IN_FROM_THE_SIDE = NM_PER_INCH
HALFWAY, LONG, SHORT = (size * NM_PER_INCH for size in (60, 120, 72))
SOMEWHERE = (31 * NM_PER_INCH, -17 * NM_PER_INCH, 3 * NM_PER_INCH)

THIRTYSECOND = Length.inches(0, 1, 32).nm


@dataclass(frozen=True, slots=True)
class Framing:
    """How two timbers stand, and where the end that goes in looks."""

    stick: Stance
    other: Stance
    end: str

    def turned(self, turn: int) -> "Framing":
        """The same in another heading; from 4 on it is mirrored as well."""
        return Framing(_turned(self.stick, turn), _turned(self.other, turn), _word(self.end, turn))


_POST = Stance("south", "west", "down")
_SILL = Stance("up", "south", "west")
_TIE = Stance("up", "west", "south")

FRAMINGS = {
    "post foot in a sill": Framing(_POST, _SILL, "down"),
    "post head in a plate": Framing(_POST, _SILL, "up"),
    "post head in a tie": Framing(_POST, _TIE, "up"),
    "girt in a post's far face": Framing(_SILL, _POST, "west"),
    "girt in a post's outside": Framing(_SILL, _POST, "east"),
    "tie in a post": Framing(_TIE, _POST, "south"),
    "tie upside down in a post": Framing(Stance("down", "east", "north"), _POST, "north"),
    "end sill in a long sill": Framing(_TIE, _SILL, "south"),
    "girder in a sill's outside": Framing(Stance("west", "up", "south"), _SILL, "north"),
}
"""Through reference faces and through far ones, at reference ends and at far ends."""


def _word(word: str, turn: int) -> str:
    if word not in _ROUND:
        return word
    place = _ROUND.index(word)
    return _ROUND[(-place if turn >= 4 else place) + turn & 3]


def _turned(stance: Stance, turn: int) -> Stance:
    return Stance(*(_word(word, turn) for word in stance))


@dataclass(frozen=True, slots=True, kw_only=True)
class Sticks:
    """What the two sticks measure: so many thirty-seconds over what is drawn, stick first.

    By square rule the inner timbers are as large as the sticks are drawn. `as_cut` is what of the
    end was measured when it was made.
    """

    rule: str = "mill"
    over: tuple[int, int, int, int] = (0, 0, 0, 0)
    as_cut: Mapping[str, str] | None = None


AS_DRAWN = Sticks()


def scene(
    framing: Framing, sticks: Sticks = AS_DRAWN, *, deep: int = 0, aside: int = IN_FROM_THE_SIDE
) -> Scene:
    """The two timbers, the end going `deep` in and standing so far in from the other's side."""
    bare = Scene(
        post=_member(STICK, framing.stick, (THICK, THICK), SHORT),
        receiver=_member(OTHER, framing.other, (DEEP, DEEP), LONG),
        end=framing.end,
        origin=SOMEWHERE,
        at=HALFWAY,
        inset=0,
        deep=deep,
        placed=True,
    )
    stick = (THICK, WIDE) if bare.cheeks == 1 else (WIDE, THICK)
    other = (DEEP, BROAD) if bare.into == 1 else (BROAD, DEEP)
    return replace(
        bare,
        post=_sized(bare.post, stick, sticks, sticks.over[:2]),
        receiver=_sized(bare.receiver, other, sticks, sticks.over[2:]),
        inset=aside + (0 if _same_side(bare) else THICK),
    )


def _same_side(bare: Scene) -> bool:
    """Whether the two measure across from faces that look the same way."""
    side = bare.receiver.stance[2 - bare.into]
    return bare.post.stance[bare.cheeks - 1] == side


def _member(name: str, stance: Stance, drawn: Sizes, body: int) -> Member:
    return Member(id=name, stance=stance, body=body, drawn=drawn, inner=None, measured=Measured())


def _sized(member: Member, drawn: Sizes, sticks: Sticks, over: tuple[int, ...]) -> Member:
    first, second = (
        Length(size + count * THIRTYSECOND) for size, count in zip(drawn, over, strict=True)
    )
    inner = drawn if sticks.rule == "square" else None
    real = Measured(first=first, second=second)
    return replace(member, drawn=drawn, inner=inner, measured=real)


def framed(found: Scene, joint: Work, sticks: Sticks = AS_DRAWN, *, end: str = "") -> Frame:
    """The frame of a scene and its joint; `end` is what is cut on the stick."""
    cut = {end: AsCut.model_validate(sticks.as_cut)} if sticks.as_cut else {}
    real = {
        STICK: Real({"all": found.post.measured}, cut),
        OTHER: Real({"all": found.receiver.measured}),
    }
    return frame(*found.timbers, joint, real=real)
