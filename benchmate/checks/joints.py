"""Joint meets joint: two joints on one timber whose cuts meet, or leave little wood between them.

How it works
1. Each cut of a joint is clipped to the wood that counts: from end to end, and as deep as the frame
   counts on at that joint. By square rule that is the inner timber, because what lies outside is
   taken off wherever a joint needs it, by neighbours that share an arris too.
2. The cuts are gone through along the timber, so that only those that come near one another are
   looked at more closely.
3. Whatever families two joints are of, the least distance between their cuts is the wood left.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import NamedTuple

from benchmate.checks.apart import apart
from benchmate.checks.piece import Piece, box_gap
from benchmate.layout.step import Layout
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding, Severity, look, stop
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick
from benchmate.model.words import lower_first


@dataclass(frozen=True, slots=True)
class Near:
    """Two joints of a timber and the least wood left between them, the first nearer its start."""

    one: Feature
    other: Feature
    wood: Length


class _Taken(NamedTuple):
    """A piece of wood that a joint takes, and the joint's place among those looked at."""

    piece: Piece
    joint: int


def near_joints(layout: Layout) -> tuple[Near, ...]:
    """The joints of a timber that meet, or leave less wood between them than the shop keeps.

    Joints that are meant to meet are left out, those that cannot be cut as they are drawn, as what
    stops them comes first, and one that opens in the other's notch. So are end cuts and chamfers,
    which are no joints.
    """
    joints = tuple(feature for feature in layout.features if _looked_at(feature))
    found: dict[tuple[int, int], Length] = {}
    for one, other in _close(_taken(layout, joints), layout.least_wood.nm):
        pair = (min(one.joint, other.joint), max(one.joint, other.joint))
        if _together(joints[pair[0]], joints[pair[1]]) or _under(layout, joints, pair):
            continue
        wood = apart(one.piece, other.piece)
        if wood is not None:
            found[pair] = min(wood, found.get(pair, wood))
    return tuple(
        Near(joints[one], joints[other], wood)
        for (one, other), wood in sorted(found.items())
        if not wood or wood < layout.least_wood
    )


def cuts_meet(layout: Layout, near: tuple[Near, ...]) -> tuple[Finding, ...]:
    """Two joints of a timber run into each other, so one takes away wood the other counts on.

    A tenon would stop at another tenon, or a shoulder have nothing to bear on. Example: the
    mortises of two girts that enter neighbouring faces of a post at one level. Remedy: move one, or
    make it smaller; where they are meant to meet, as where a post's stub crosses the tenon of a
    sill corner, say so in `meets`.
    """
    return tuple(
        _told(
            "cuts-meet",
            layout.stick,
            each,
            f"The cuts of {_both(each)} meet: no wood is left between them",
            "move one of them or make it smaller; if they are meant to meet",
            also=", or the other way round: of two tenons the one that says so goes through",
        )
        for each in near
        if not each.wood
    )


def little_wood_between(layout: Layout, near: tuple[Near, ...], tape: Tape) -> tuple[Finding, ...]:
    """Two joints of a timber leave less wood between them than the shop's `least_wood`.

    So thin a wall breaks out under the chisel, or splits when the tenon is driven home. Example: a
    post's mortise from above with 6 mm left to a sill's from the side. Remedy: move one, or make it
    smaller. Whether so little will do is for the engineer; `meets` then says that it is known.
    """
    return tuple(
        _told(
            "little-wood-between",
            layout.stick,
            each,
            f"The cuts of {_both(each)} leave {tape.text(each.wood)} of wood between them, less "
            f"than {tape.text(layout.least_wood)}",
            "move one of them or make it smaller; if the engineer lets it be",
        )
        for each in near
        if each.wood
    )


def opens_in_a_notch(layout: Layout) -> tuple[Finding, ...]:
    """A joint opens where another one's notch takes its face away, and its figures do not follow.

    They count from a face that is gone by the time it is cut, and a shoulder that should bear on it
    bears on nothing. Example: a housed girt in a post where a rail is lapped over the same spot.
    Only a mortise that a tenon comes to past another timber, or goes through, follows the notch.
    Remedy: move one of the two.
    """
    followed = {floor for feature in layout.features for floor in feature.floors}
    features = {feature.id: feature for feature in layout.features}
    return tuple(
        stop(
            "opens-in-a-notch",
            layout.stick.id,
            floor.under,
            f"The {lower_first(features[floor.under].title)} opens in the {floor.name}, which "
            f"takes away the {layout.stick.pose.words(floor.face)} that its figures count from",
            "move one of the two so that the face stays where the joint opens",
        )
        for floor in layout.floors
        if floor not in followed
    )


def _told(
    code: str, stick: Stick, near: Near, message: str, remedy: str, *, also: str = ""
) -> Finding:
    one, other = near.one, near.other
    meets = f'{remedy}, write meets = ["{other.joint}"] in joint {one.joint}{also}'
    return look(code, stick.id, one.id, message, meets, also=other.id)


def _both(near: Near) -> str:
    return f"the {lower_first(near.one.title)} and the {lower_first(near.other.title)}"


def _looked_at(feature: Feature) -> bool:
    stopped = any(found.severity is Severity.STOP for found in feature.findings)
    return bool(feature.joint) and not stopped


def _together(one: Feature, other: Feature) -> bool:
    """Whether two features are of one joint, or of two that are meant to meet."""
    return one.joint == other.joint or one.joint in other.meets or other.joint in one.meets


def _under(layout: Layout, joints: tuple[Feature, ...], pair: tuple[int, int]) -> bool:
    """Whether one of two features opens in the notch of the other, which is known and followed."""
    one, other = (joints[each].id for each in pair)
    return other in layout.over(one) or one in layout.over(other)


def _taken(layout: Layout, joints: tuple[Feature, ...]) -> list[_Taken]:
    """The wood that each cut takes, in order along the timber."""
    found = []
    for place, joint in enumerate(joints):
        wood = _wood(layout.stick, joint)
        pieces = (wood.within(cut.planes) for cut in joint.cuts)
        found += [_Taken(piece, place) for piece in pieces if piece]
    return sorted(found, key=lambda taken: taken.piece.low)


def _wood(stick: Stick, joint: Feature) -> Piece:
    """The wood that counts at a joint: the timber from end to end, as deep as is framed there."""
    first, second = (stick.framed(axis, *joint.place).nm for axis in (Axis.FIRST, Axis.SECOND))
    return Piece((stick.start.nm, 0, 0), (stick.finish.nm, first, second))


def _close(taken: list[_Taken], reach: int) -> Iterator[tuple[_Taken, _Taken]]:
    """Pieces whose boxes lie no further apart than a reach."""
    behind: list[_Taken] = []
    for each in taken:
        behind = [one for one in behind if each.piece.low[0] - one.piece.high[0] <= reach]
        for one in behind:
            if box_gap(one.piece, each.piece) <= reach * reach:
                yield one, each
        behind.append(each)
