"""A wedged half-dovetail by its definition: an outline in the upright plane, and a width.

How it works
1. Counted in from the shoulder and away from the straight edge, the tenon is `root` deep at the
   shoulder, `flare` more where its slope ends, and as deep as that to its end.
2. The mortise is the post's wood between the tail's slope and the wedge's, from face to face.
3. The housing takes the whole end, eased on the wedge's side by the slope over its depth.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.half_dovetail.record import HalfDovetail
from tests.proof.fits import Wastes
from tests.proof.kernel import Solid
from tests.proof.profile import FAR, Profile, Side, depths, entry, level, number_on, opened, outside
from tests.proof.wood import Log


@dataclass(frozen=True, slots=True, kw_only=True)
class Tail:
    """The figures of a joint in its profile, in nanometres; depths are from the straight edge."""

    profile: Profile
    recess: float
    passed: float
    run: float
    long: float
    flare: float
    root: float
    thin: float
    framed: float
    cheeks: tuple[float, float]
    wide: float

    def slope(self, deep: float) -> float:
        """How far the slope goes away from the straight edge, so far in."""
        return self.flare * deep / self.run

    @property
    def wedge(self) -> Solid:
        """The wedge as it lies when it is driven home."""
        corners = [(0, 0), (0, -self.thin), (self.passed, -self.thin - self.slope(self.passed))]
        return self.profile.prism([*corners, (self.passed, 0)], self.cheeks)


def tail(joint: HalfDovetail, logs: Mapping[str, Log]) -> Tail:
    """A joint's figures, from its record and where its timbers stand."""
    tie, post = logs[joint.timber], logs[joint.into]
    inwards, over, way_out = entry(post, joint.end)
    seat = Side(axis=inwards.axis, zero=inwards.at(joint.housing.nm), sense=inwards.sense)
    passed = way_out - joint.housing.nm
    long = passed + joint.past.nm - joint.held_short.nm
    framed, _ = depths(tie, number_on(tie, 2))
    return Tail(
        profile=Profile(inwards=seat, down=_down(joint, tie, framed), across=level(tie, joint.end)),
        recess=joint.housing.nm + over,
        passed=passed,
        run=min(passed, long),
        long=long,
        flare=joint.flare.nm,
        root=joint.depth.nm if joint.depth else framed - joint.flare.nm,
        thin=joint.wedge_thin.nm,
        framed=framed,
        cheeks=(joint.set_back.nm, (joint.set_back + joint.thickness).nm),
        wide=depths(tie, 3 - number_on(tie, 2))[0],
    )


def _down(joint: HalfDovetail, tie: Log, framed: float) -> Side:
    """Away from the straight edge: down from the tie's top, or up from its underside."""
    zero = tie.stand.zero[2]
    top = zero if tie.stand.ways[number_on(tie, 2)][2] < 0 else zero + framed
    if joint.wedged == "top":
        return Side(axis=2, zero=top, sense=-1)
    return Side(axis=2, zero=top - framed, sense=1)


def textbook(joint: HalfDovetail, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood it takes off the tie and off the post."""
    met = tail(joint, logs)
    tie, post = logs[joint.timber], logs[joint.into]
    profile, end = met.profile, f"{joint.end.word}-end"
    outline = [(0, 0), (0, met.root), (met.run, met.root + met.flare)]
    outline += [(met.long, met.root + met.flare), (met.long, 0)]
    beyond = profile.box((0, FAR), (-FAR, FAR), (-FAR, FAR))
    taken = [beyond.without([profile.prism(outline, met.cheeks)])]
    if met.recess and tie.layout.stick.inner:
        inside = profile.box((-met.recess, FAR), (-FAR, FAR), (-FAR, FAR))
        taken += [outside(tie, axis, inside) for axis in (2, profile.across.axis)]
    return {
        f"{tie.timber.id}/{end}-tenon": taken[0].joined(taken[1:]),
        f"{post.timber.id}/{joint.mortise}": _hole(joint, frame, met, post),
    }


def _hole(joint: HalfDovetail, frame: Frame, met: Tail, post: Log) -> Solid:
    """The mortise, cut to the tail as it came out, and the housing."""
    cut = frame.stick(joint.timber).as_cut.get(f"{joint.end.word}-end-tenon")
    root, deep, thick = met.root, met.root + met.flare, met.cheeks[1] - met.cheeks[0]
    if cut is not None:
        root = cut.width.nm if cut.width else root
        deep = cut.length.nm if cut.length else deep
        thick = cut.thickness.nm if cut.thickness else thick
    corners = [
        corner
        for at in (-met.recess, met.passed)
        for corner in (
            (at, root + (deep - root) * at / met.run),
            (at, -met.thin - met.slope(at)),
        )
    ]
    near = met.cheeks[0]
    hole = [met.profile.prism(corners, (near, near + thick))]
    if met.recess:
        wide = opened(met.profile.across, met.wide, post)
        down = (-met.slope(met.recess), met.framed)
        hole.append(met.profile.box((-met.recess, 0), down, wide))
    return hole[0].joined(hole[1:])
