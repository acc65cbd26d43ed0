"""A joist in its pocket: the check joist, and any at random beside a second opinion."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from hypothesis import strategies as st

from benchmate.frame.frame import Frame
from benchmate.joinery.joist.family import features
from benchmate.joinery.joist.record import JoistPocket
from benchmate.joinery.joist.shape import EndShape, PocketShape, shapes
from benchmate.measure.length import ZERO
from benchmate.model.feature import Feature
from benchmate.model.progress import AsCut
from tests.builders import frame, joist, pocket, real, sill
from tests.corner import AS_CUT, texts
from tests.joinery.tenon.scenes import Scene, box_of, scene, text
from tests.space import STANCES, TOWARDS, Box

Words = Mapping[str, str]
END, POCKET = "south-end-bearing", "joist-south-pocket"
"""What the check joint puts on the joist and in the sill."""

SQUARE_JOIST = {"rule": "square", "inner": "5 x 3"}
SQUARE_SILL = {"rule": "square", "section": "8-1/2 x 8-1/2", "inner": "8 x 8"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Floor:
    """The check joist and the check sill, with what was measured and cut at their joint."""

    joist: Words = field(default_factory=dict)
    sill: Words = field(default_factory=dict)
    joist_measures: Words = field(default_factory=dict)
    sill_measures: Words = field(default_factory=dict)
    as_cut: Words = field(default_factory=dict)

    def frame(self, joint: JoistPocket) -> Frame:
        """The two, with no place in a building."""
        end = f"{joint.end.word}-end-bearing"
        sizes = {
            "joist": real({end: self.joist_measures}, {end: self.as_cut}),
            "sill": real({joint.pocket: self.sill_measures}),
        }
        return frame(joist(**self.joist), sill(**self.sill), joint, real=sizes)

    def sides(self, **words: str) -> tuple[Feature, Feature]:
        """The joist's end and the pocket."""
        joint = pocket(**words)
        end, received = features(joint, self.frame(joint))
        return end, received

    def shapes(self, **words: str) -> tuple[EndShape, PocketShape]:
        """Where both lie on the sticks."""
        joint = pocket(**words)
        return shapes(joint, self.frame(joint))


SQUARE = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL)
"""Both by square rule: a joist of inner 5 x 3 in a sill of inner 8 x 8, drawn 1/2" bigger."""

_LYING = tuple(stance for stance in STANCES if TOWARDS[stance.end][0] != TOWARDS["up"][0])
_TOP_FIRST = tuple(stance for stance in _LYING if "up" in (stance.first, stance.second))


@dataclass(frozen=True, slots=True)
class Laid:
    """A joist's end in a scene; sizes in nanometres, reckoned here from the joint's own words."""

    scene: Scene
    joint: JoistPocket
    as_cut: AsCut
    frame: Frame

    @property
    def sides(self) -> tuple[Feature, Feature]:
        """The joist's end and the pocket."""
        end, received = features(self.joint, self.frame)
        return end, received

    @property
    def recess(self) -> int:
        """How deep the joist's end lies inside the receiver's real face."""
        return abs(self.scene.entry - self.scene.seat)

    @property
    def end(self) -> tuple[int, int]:
        """How deep from its top the end is laid out, and how wide."""
        post, plumb = self.scene.post, self.scene.cheeks
        deep = post.framed(plumb) if self.joint.end_depth is None else self.joint.end_depth.nm
        return deep, post.framed(3 - plumb)

    def end_in_building(self, beyond: int) -> Box:
        """The end as cut, from the receiver's real face on, made longer by `beyond`."""
        made = (self.as_cut.thickness, self.as_cut.width)
        deep, wide = (
            laid_out if size is None else size.nm
            for laid_out, size in zip(self.end, made, strict=True)
        )
        across = self.scene.across((0, deep), (0, wide))
        return self.scene.here.box((self.scene.beyond(-self.recess, beyond), *across))

    def pocket_in_building(self) -> Box:
        """The pocket's cut below the joist's top and inside the receiver's real face."""
        (cut,) = self.sides[1].cuts
        scene, (along, *_) = self.scene, self.scene.receiver.solid
        entry, top = (scene.entry, scene.entry), (scene.inset, scene.inset)
        sides = (entry, top) if scene.into == 1 else (top, entry)
        return box_of(cut, scene.there, (along, *sides))


@st.composite
def laid(draw: st.DrawFn) -> Laid:
    """Any joist in any timber that lies across it, of any faces, sizes and rules."""
    found = draw(scene(posts=_TOP_FIRST, receivers=_LYING, deep=(1, 3)))
    words = {"timber": "post", "end": found.end, "into": "receiver", "at": None}
    joint = pocket(
        **(words | found.crossing("drop")),
        bearing=text(found.deep),
        end_depth=draw(st.none() | texts(3, 7)),
        end_clearance=draw(texts(0, 1)),
    )
    made = draw(AS_CUT)
    sizes = found.real(f"{found.end}-end-bearing", joint.pocket, made)
    return Laid(found, joint, made, frame(*found.timbers, joint, real=sizes))


def spare(joint: JoistPocket) -> int:
    """How much longer the pocket is than the end in it."""
    return (joint.end_clearance or ZERO).nm
