"""A joist's end and its pocket by their definition: a box without a lid, and what comes down to it.

How it works
1. The end is so deep from the joist's top and as wide as the frame counts on; what lies outside
   that comes off as far as the end goes in. One with a sloping underside loses besides the wedge
   from there back to where the joist has its full depth.
2. The pocket takes the end as it was made, and is a little longer. It is open above and at the face
   that the joist comes from.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.joist.record import JoistPocket
from benchmate.model.directions import Direction
from tests.proof.fits import Wastes
from tests.proof.kernel import Solid, hull
from tests.proof.raising import end_names
from tests.proof.textbook.entry import ALL, FAR, Across, Entry, Side, entry
from tests.proof.wood import Log


@dataclass(frozen=True, slots=True, kw_only=True)
class Pocket:
    """One end in its pocket, which is `long` from the face that the frame counts on."""

    joint: JoistPocket
    met: Entry
    long: int

    @property
    def plumb(self) -> int:
        """The number of the joist's face that is its top."""
        return self.met.aside

    @property
    def across(self) -> Across:
        """The section that goes in, as laid out."""
        stick, own = self.met.stick, self.joint.end_depth
        deep = stick.framed(self.plumb) if own is None else own.nm
        return {self.plumb: (0, deep), 3 - self.plumb: (0, stick.framed(3 - self.plumb))}

    @property
    def made_across(self) -> Across:
        """The same as it was cut, where that was measured."""
        stock, feature = self.met.stick.stock, self.met.stick.feature
        sizes = {self.plumb: "thickness", 3 - self.plumb: "width"}
        return {
            number: (0, stock.cut(feature, size) or self.across[number][1])
            for number, size in sizes.items()
        }

    def body(self, *, longer: float = 0) -> Solid:
        """What goes in of the end that was made, in the building, `longer` than it is."""
        end = self.joint.bearing.nm + longer
        return self.met.box((-self.met.over, end), self.made_across)


def pocket(joint: JoistPocket, frame: Frame, logs: Mapping[str, Log]) -> Pocket:
    """The end of a joint and its pocket. Raises ValueError for a joist that hangs from its side."""
    feature, other = end_names(joint)
    stick = Side(log=logs[joint.timber], feature=feature)
    met = entry(stick, joint.end, Side(log=logs[joint.into], feature=other))
    looks = (stick.log.timber.first_face, stick.log.timber.second_face)[met.aside - 1]
    if looks is not Direction.UP:
        raise ValueError(f"{stick.log.timber.name} is not measured from its top")
    own = joint.end_clearance
    spare = frame.project.practice.bottom_clearance if own is None else own
    return Pocket(joint=joint, met=met, long=joint.bearing.nm + spare.nm)


def textbook(joint: JoistPocket, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood that a joist's end in its pocket takes off both timbers."""
    found = pocket(joint, frame, logs)
    met, plumb = found.met, found.plumb
    inside = (-met.over, FAR)
    beyond = met.box((joint.bearing.nm, FAR))
    around = [met.box(inside, {number: (high, FAR)}) for number, (_, high) in found.across.items()]
    if joint.diminished:
        around.append(_wedge(found, joint.diminished.nm))
    deep, wide = found.made_across[plumb], found.made_across[3 - plumb]
    hole = met.box((-FAR, found.long), {plumb: (-FAR, deep[1]), 3 - plumb: wide})
    return {
        f"{joint.timber}/{met.stick.feature}": beyond.joined(around),
        f"{joint.into}/{met.other.feature}": hole,
    }


def _wedge(found: Pocket, back: int) -> Solid:
    """What comes off a sloping underside, from the beam's face on."""
    met, plumb = found.met, found.plumb
    face, low, high = -met.over, found.across[plumb][1], met.stick.real(plumb)
    corners = []
    for deep, down in ((face, low), (face, high), (face - back, high)):
        for aside in ALL:
            spot = {plumb: down, 3 - plumb: aside}
            corners.append((round(deep), round(spot[1]), round(spot[2])))
    return met.stand.put(hull(corners))
