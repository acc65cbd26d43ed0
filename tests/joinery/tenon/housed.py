"""A tenon with or without a housing at random, and where all of it lies by second opinion."""

from collections.abc import Mapping
from dataclasses import dataclass

from hypothesis import strategies as st

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.feature import Feature
from benchmate.model.progress import AsCut
from tests.builders import frame, tenon
from tests.corner import AS_CUT, ENDS, texts
from tests.joinery.tenon.scenes import Scene, box_of, cut_by, meet, scene, text
from tests.space import Box


@dataclass(frozen=True, slots=True)
class Housed:
    """A tenon in a scene; sizes in nanometres, reckoned here from the joint's own words."""

    scene: Scene
    joint: TenonJoint
    as_cut: AsCut
    frame: Frame

    @property
    def sides(self) -> tuple[Feature, Feature]:
        """The tenon and the mortise."""
        tenoned, mortised, *_ = features(self.joint, self.frame)
        return tenoned, mortised

    @property
    def pegs(self) -> tuple[Feature, Feature]:
        """Their pegs, on the one timber and the other."""
        _, _, own, others = features(self.joint, self.frame)
        return own, others

    @property
    def way_out(self) -> int:
        """The receiver's reading of its real face across from its entry."""
        return self.scene.receiver.real(self.scene.into) if self.scene.from_reference else 0

    @property
    def passed(self) -> int:
        """From the seat to the face across from the entry."""
        return abs(self.way_out - self.scene.seat)

    @property
    def long(self) -> int:
        """The tenon's length as laid out: as given, or through the receiver but held short."""
        given = self.joint.length
        return self.passed - self.joint.held_short.nm if given is None else given.nm

    @property
    def recess(self) -> int:
        """How deep the seat lies inside the receiver's real face."""
        return abs(self.scene.entry - self.scene.seat)

    def tenon(self, made: AsCut, beyond: int = 0) -> Box:
        """The tenon in the post's own readings, `made` to these sizes where they are given."""
        joint, post = self.joint, self.scene.post
        edges = 3 - self.scene.cheeks
        near, edge = joint.set_back.nm, (joint.relief_reference or joint.all_round).nm
        cut_back = (joint.relief_far or joint.all_round).nm
        held = post.inner or (post.drawn if cut_back else None)
        far_edge = (held[edges - 1] if held else post.real(edges)) - cut_back
        wide = far_edge - edge if made.width is None else made.width.nm
        thick = (made.thickness or joint.thickness).nm
        long = self.long if made.length is None else made.length.nm
        across = self.scene.across((near, near + thick), (edge, edge + wide))
        return (self.scene.beyond(0, long + beyond), *across)

    def tenon_in_building(self, beyond: int) -> Box:
        """The tenon as cut, made longer by `beyond`, in the building."""
        return self.scene.here.box(self.tenon(self.as_cut, beyond))

    def mortise_in_building(self) -> Box:
        """The mortise's own cut, from the seat inwards, or as far as there is wood."""
        (cut,) = cut_by(self.sides[1], "start")
        along, first, second = self.scene.receiver.solid
        seat, out = self.scene.seat, self.way_out
        low, high = sorted((seat, out if self.joint.through else seat))
        sides = ((low, high), second) if self.scene.into == 1 else (first, (low, high))
        return box_of(cut, self.scene.there, (along, *sides))

    def housing_in_building(self) -> Box | None:
        """The housing's cut, as far as there is wood."""
        (cut,) = cut_by(self.sides[1], "housing-floor")
        solid = self.scene.receiver.solid
        return meet(box_of(cut, self.scene.there, solid), self.scene.there.box(solid))

    def end_in_building(self) -> Box | None:
        """What goes in of the post's body: its framed section, as deep as the recess.

        By square rule an end that reaches the receiver's inner timber leaves no sliver beyond it.
        """
        scene, post, receiver = self.scene, self.scene.post, self.scene.receiver
        edges, side = 3 - scene.cheeks, 3 - scene.into
        across = scene.across((0, post.framed(scene.cheeks)), (0, post.framed(edges)))
        end = list(scene.here.box((scene.beyond(-self.recess, 0), *across)))
        axis, sense = scene.there.inward[side]
        framed, real = (
            scene.there.plane(side, size(side)) for size in (receiver.framed, receiver.real)
        )
        low, high = end[axis]
        if sense > 0 and high >= framed:
            end[axis] = (low, max(high, real))
        if sense < 0 and low <= framed:
            end[axis] = (min(low, real), high)
        return meet((end[0], end[1], end[2]), scene.there.box(receiver.solid))


@st.composite
def housed(draw: st.DrawFn) -> Housed:
    """Any two timbers square to each other, any tenon, housed or not, by either rule."""
    stops = {"length": draw(texts(1, 3)), "bottom_clearance": draw(texts(0, 1))}
    return draw(_any_tenon(stops))


@st.composite
def passing(draw: st.DrawFn) -> Housed:
    """The same with a tenon that goes through, of a given length or as long as the wood."""
    length = draw(st.none() | texts(1, 9))
    through = {"through": True, "length": length, "held_short": draw(texts(0, 1))}
    return draw(_any_tenon(through))


@st.composite
def pegged(draw: st.DrawFn) -> Housed:
    """Any of both kinds with any pegs, whether they can be bored or not."""
    count = draw(st.integers(1, 4))
    pegs: dict[str, object] = {
        "count": count,
        "bored_from": draw(st.sampled_from(("reference", "far"))),
        "draw": draw(texts(0, 1)),
        "blind_depth": draw(st.none() | texts(1, 9)),
        **{key: draw(texts(1, 4)) for key in ("size", "from_shoulder", "from_edge")},
    }
    if count > 1:
        pegs["spacing"] = draw(texts(1, 4))
    ends: tuple[dict[str, object], ...] = ({"length": draw(texts(1, 6))},)
    ends += ({"through": True, "length": None},)
    return draw(_any_tenon(draw(st.sampled_from(ends)) | {"pegs": pegs}))


@st.composite
def _any_tenon(draw: st.DrawFn, words: Mapping[str, object]) -> Housed:
    found = draw(scene())
    joint = tenon(
        end=ENDS.get(found.end, found.end),
        into="receiver",
        housing=text(found.deep),
        thickness=draw(texts(1, 3)),
        **found.crossing("inset"),
        **{key: draw(texts(0, 2)) for key in ("set_back", "relief_reference", "relief_far")},
        **{key: draw(texts(0, 1)) for key in ("all_round", "end_allowance")},
        **words,
    )
    made = draw(AS_CUT)
    end = f"{ENDS.get(found.end, f'{found.end}-end')}-tenon"
    real = found.real(end, joint.mortise, made)
    return Housed(found, joint, made, frame(*found.timbers, joint, real=real))


def clearance(joint: TenonJoint) -> int:
    """How much deeper the mortise is than the tenon is long."""
    own: Length = joint.bottom_clearance or ZERO
    return own.nm
