"""Where the heads of a pair of rafters lie on the real sticks.

How it works
1. The two top planes cross at the peak. Butted, each rafter ends at the plumb plane there.
2. Otherwise each runs on through the other: it ends at the other's top, and has its root where the
   other's underside crosses it. Between the two one keeps its tongue and the other its cheeks, so
   together they fill that place once.
3. A half lap is a tongue at the reference side, half as thick as its rafter is drawn.
"""

from dataclasses import dataclass, replace

from benchmate.frame.flats import Flat, built
from benchmate.frame.frame import Frame
from benchmate.frame.rake import root
from benchmate.frame.reduction import Reduction, reduction
from benchmate.joinery.rafter.peak.record import PeakCut, RafterPeak
from benchmate.joinery.rafter.raking import Rafter, rafter
from benchmate.measure.length import ZERO, Length
from benchmate.measure.tolerance import ROUNDING
from benchmate.model.directions import Direction, Face
from benchmate.model.progress import AsCut
from benchmate.model.solids import Plane, above, below

SHOULDER, ROOT, NEAR, FAR, STOP = ("shoulder", "root", "near-cheek", "far-cheek", "reduction-stop")
"""The lines at a head: where it ends at the other's top, or plumb; where the other's underside
crosses it; the cheeks; where a reduced underside ends."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HeadShape:
    """One head of a pair; `top` is the plane of the other's top, with its wood behind it.

    `tongue` tells the one that keeps what the other loses. `cheeks` bound the tongue in this
    rafter's own readings, with the tongue behind them all.
    """

    rafter: Rafter
    mate: Rafter
    top: Flat
    cut: PeakCut
    feature: str
    tongue: bool
    cheeks: tuple[Plane, ...]
    as_cut: AsCut

    @property
    def places(self) -> tuple[str, ...]:
        """Where the rafter's section may have been measured."""
        return self.rafter.places

    @property
    def end(self) -> Face:
        """Its head."""
        return self.rafter.stick.pose.end(Direction.UP)

    @property
    def lapped(self) -> bool:
        """Whether it runs on through the other."""
        return self.cut != "butt"

    @property
    def shoulder(self) -> Plane:
        """Where it ends: at the other's top, or plumb at the peak."""
        if self.lapped:
            return self.rafter.carried(self.top.turned, SHOULDER)
        return self.rafter.carried(self.rafter.uphill(self.rafter.head), SHOULDER)

    @property
    def root(self) -> Plane:
        """Where the other's underside crosses it, as the frame counts on it."""
        return self.rafter.carried(self.top.moved(-self.mate.deep).turned, ROOT)

    @property
    def ended(self) -> bool:
        """Whether it ends square at the end of the stick, where no line is struck."""
        stick = self.rafter.stick
        at = stick.start if self.end is Face.REFERENCE_END else stick.finish
        x, *across = self.shoulder.normal
        return not any(across) and abs(self.shoulder.offset * x - at.nm) <= ROUNDING.nm

    @property
    def reduction(self) -> Reduction:
        """What comes off the underside by square rule, so that it goes into the other."""
        raking = self.rafter
        to = {raking.plumb: raking.deep}
        length = self.mate.deep if self.lapped else ZERO
        return reduction(raking.stick, self.end, length, to, places=self.places)

    @property
    def stop(self) -> Plane:
        """Where a reduced underside ends: where the other's real underside crosses it."""
        if self.mate.real_deep == self.mate.deep:
            return self.root
        return self.rafter.carried(self.top.moved(-self.mate.real_deep).turned, STOP)

    @property
    def span(self) -> tuple[Length, Length]:
        """From where to where the tongue lies, in from the reference side; faces where open."""
        found = {NEAR: ZERO, FAR: self.rafter.real_wide}
        for plane in self.cheeks:
            found[str(plane.line)] = _at(plane)
        return found[NEAR], found[FAR]

    @property
    def cheek_depths(self) -> tuple[Length, ...]:
        """How deep in the cheeks lie, from the reference side."""
        return tuple(map(_at, self.cheeks))

    @property
    def mate_feature(self) -> str:
        """The id of the other head."""
        return self.mate.places[0]

    @property
    def beside(self) -> Length:
        """How far the other stands beside this rafter: less than nothing where they overlap."""
        sides = (above(self.mate.sides, ZERO), below(self.mate.sides, self.mate.wide))
        low, high = sorted(_at(self.rafter.carried(built(side, self.mate.place))) for side in sides)
        return max(low - self.rafter.wide, -high)

    @property
    def thickness(self) -> Length:
        """How thick the tongue is."""
        near, far = self.span
        return far - near

    @property
    def apart(self) -> Length:
        """How far the peak of this rafter lies from the other's: nothing, if both are sound."""
        gaps = (b - a for a, b in zip(self.rafter.line.head, self.mate.line.head, strict=True))
        across = self.rafter.stick.pose.direction(self.rafter.side).value
        return Length(
            root(sum(gap * gap for gap, step in zip(gaps, across, strict=True) if not step))
        )


def head_shapes(joint: RafterPeak, frame: Frame) -> tuple[HeadShape, HeadShape]:
    """Both heads, the second cut to the first as it came out."""
    own, other = joint.parts
    one = rafter(frame, joint.timber, own, "head")
    two = rafter(frame, joint.into, other, "head")
    as_cut = one.stick.as_cut.get(own, AsCut()) if joint.cut != "butt" else AsCut()
    first = HeadShape(
        rafter=one,
        mate=two,
        top=frame.face(joint.into, two.top, other),
        cut=joint.cut,
        feature=own,
        tongue=True,
        cheeks=_tongue(joint, one, joint.thickness),
        as_cut=as_cut,
    )
    real = _tongue(joint, one, as_cut.thickness or joint.thickness)
    second = replace(
        first,
        rafter=two,
        mate=one,
        top=frame.face(joint.timber, one.top, own),
        feature=other,
        tongue=False,
        cheeks=tuple(_named(two.carried(built(plane, one.place))) for plane in real),
    )
    return first, second


def _tongue(joint: RafterPeak, raking: Rafter, thickness: Length | None) -> tuple[Plane, ...]:
    """The cheeks of the tongue, which lies behind them; a half lap has one."""
    drawn, axis = raking.stick.held(raking.sides), raking.sides
    if joint.cut == "butt":
        return ()
    if joint.thickness is None:
        return (below(axis, thickness or _half(drawn), FAR),)
    near = _half(drawn - joint.thickness) if joint.set_back is None else joint.set_back
    return (above(axis, near, NEAR), below(axis, near + (thickness or joint.thickness), FAR))


def _half(size: Length) -> Length:
    return Length(size.nm // 2)


def _named(plane: Plane) -> Plane:
    """A cheek named from the reference side of the timber it lies in."""
    return replace(plane, line=FAR if sum(plane.normal) > 0 else NEAR)


def _at(plane: Plane) -> Length:
    """How deep in a cheek lies."""
    return Length(plane.offset * sum(plane.normal))
