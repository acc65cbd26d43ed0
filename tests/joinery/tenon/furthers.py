"""A tenon through one timber and on into a third, at random, by second opinion."""

from dataclasses import dataclass

from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import Length
from benchmate.model.progress import AsCut
from tests.builders import frame, tenon
from tests.corner import AS_CUT, ENDS, measured, sixtyfourths, texts
from tests.joinery.tenon.scenes import AXES, Member, Scene, scene, text
from tests.space import STANCES, TOWARDS, Box, Placed, inward


@dataclass(frozen=True, slots=True)
class Further:
    """A tenon in a scene, through its receiver and on into a third timber placed anyhow."""

    scene: Scene
    third: Member
    there: Placed
    joint: TenonJoint
    as_cut: AsCut
    frame: Frame

    def tenon(self, beyond: int) -> Box:
        """The tenon as cut in the building, made longer by so much, by second opinion."""
        drawn, cut, post = self.joint, self.as_cut, self.scene.post
        edges = 3 - self.scene.cheeks
        near, edge = drawn.set_back.nm, drawn.relief_reference.nm
        wide = post.inner[edges - 1] if post.inner else post.real(edges)
        thick = (cut.thickness or drawn.thickness).nm
        span = (edge, edge + cut.width.nm if cut.width else wide)
        receiver, into = self.scene.receiver, self.scene.into
        way_out = receiver.real(into) if self.scene.from_reference else 0
        long = abs(way_out - self.scene.seat) + drawn.past.nm
        long = cut.length.nm if cut.length else long
        across = self.scene.across((near, near + thick), span)
        return self.scene.here.box((self.scene.beyond(0, long + beyond), *across))


@st.composite
def further(draw: st.DrawFn) -> Further:
    """Any tenon through any timber, and any third one square to it, by either rule."""
    found = draw(scene().filter(lambda each: each.placed))
    end = TOWARDS[found.end]
    stance = draw(st.sampled_from([each for each in STANCES if TOWARDS[each.end][0] != end[0]]))
    third = Member(
        id="third",
        stance=stance,
        body=draw(sixtyfourths(40, 80)).nm,
        drawn=(_inches(10), _inches(11)),
        inner=draw(st.none() | st.just((_inches(9), _inches(9)))),
        measured=draw(measured(9, 12)),
    )
    east, north, up = (draw(sixtyfourths(-40, 40)).nm for _ in range(3))
    origin = (east, north, up)
    there = Placed(origin, inward(stance))
    joint = tenon(
        end=ENDS.get(found.end, found.end),
        into="receiver",
        beyond="third",
        through=True,
        length=None,
        housing=text(found.deep),
        **{key: draw(texts(1, 3)) for key in ("thickness", "past")},
        **{key: draw(texts(0, 2)) for key in ("set_back", "relief_reference")},
        bottom_clearance=draw(texts(0, 1)),
    )
    made_end = f"{ENDS.get(found.end, f'{found.end}-end')}-tenon"
    cut = draw(AS_CUT)
    sizes = found.real(made_end, joint.mortise, cut)
    sizes["third"] = Real({joint.mortise: third.measured})
    axis = TOWARDS[stance.end][0]
    named = zip(AXES, origin, strict=True)
    placed = third.record(
        length=None,
        at={name: text(nm) for number, (name, nm) in enumerate(named) if number != axis},
        reference_end_at=text(there.plane(0, 0)),
        far_end_at=text(there.plane(0, third.body)),
    )
    return Further(
        found, third, there, joint, cut, frame(*found.timbers, placed, joint, real=sizes)
    )


def _inches(count: int) -> int:
    return Length.inches(count).nm
