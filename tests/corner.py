"""Two timbers that meet square, at random, and where each stands by second opinion."""

from dataclasses import dataclass

from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import NM_PER_SIXTYFOURTH, Length
from benchmate.model.feature import Feature
from benchmate.model.progress import AsCut, Measured
from tests.builders import frame, given_length, tenon, timber
from tests.compass import OPPOSITE
from tests.space import STANCES, TOWARDS, Box, Placed, Stance, bounds, inward

ENDS = {"up": "head", "down": "foot"}


def sixtyfourths(low: int, high: int) -> st.SearchStrategy[Length]:
    """Lengths in sixty-fourths of an inch, between two whole inches."""
    return st.integers(64 * low, 64 * high).map(lambda count: Length(count * NM_PER_SIXTYFOURTH))


def texts(low: int, high: int) -> st.SearchStrategy[str]:
    """The same lengths as a project file writes them."""
    return sixtyfourths(low, high).map(Length.exact_text)


def sections(low: int, high: int) -> st.SearchStrategy[str]:
    """Sections with two random sides, as a project file writes them."""
    return st.tuples(texts(low, high), texts(low, high)).map(" x ".join)


def measured(low: int, high: int) -> st.SearchStrategy[Measured]:
    """A section of which both sides, one or none has been measured."""
    side = st.none() | sixtyfourths(low, high)
    return st.builds(Measured, first=side, second=side)


AS_CUT = st.builds(
    AsCut,
    thickness=st.none() | sixtyfourths(1, 3),
    width=st.none() | sixtyfourths(1, 5),
    length=st.none() | sixtyfourths(1, 4),
)


@dataclass(frozen=True, slots=True)
class Corner:
    """A tenoned timber and the one that receives it; the receiver stands at the building's zero."""

    post: Stance
    receiver: Stance
    end: str
    frame: Frame
    joint: TenonJoint

    @property
    def sides(self) -> tuple[Feature, Feature]:
        """The tenon and the mortise."""
        tenoned, mortised = features(self.joint, self.frame)
        return tenoned, mortised

    @property
    def cheeks(self) -> int:
        """Which of the post's readings its cheeks are struck on: the one across the receiver."""
        return 1 if TOWARDS[self.post.first][0] != TOWARDS[self.receiver.end][0] else 2

    @property
    def into(self) -> int:
        """Which of the receiver's readings the tenon goes in along."""
        return 1 if TOWARDS[self.receiver.first][0] == TOWARDS[self.end][0] else 2

    def depth(self, timber: str, reading: int, place: str) -> int:
        """The real depth of a timber at a place, in nanometres."""
        section = self.frame.stick(timber).section(place)
        return (section.first if reading == 1 else section.second).nm

    def placed_receiver(self) -> Placed:
        """The receiver, its arris and reference shoulder at the building's zero."""
        return Placed((0, 0, 0), inward(self.receiver))

    def placed_post(self) -> Placed:
        """The post: shoulder on the entry face, reference faces where `at` and `inset` say."""
        receiver, ways = self.placed_receiver(), inward(self.post)
        axis, sense = TOWARDS[self.end]
        goes_in = receiver.inward[self.into] == (axis, sense)
        deep = self.depth("receiver", self.into, self.joint.mortise)
        entry = receiver.plane(self.into, 0 if goes_in else deep)
        shoulder = 0 if self.end == self.post.end else self.frame.stick("post").body.nm
        origin = [0, 0, 0]
        origin[axis] = entry - ways[0][1] * shoulder
        origin[ways[3 - self.cheeks][0]] = receiver.plane(0, self._typed("at"))
        origin[ways[self.cheeks][0]] = receiver.plane(3 - self.into, self._typed("inset"))
        return Placed((origin[0], origin[1], origin[2]), ways)

    def _typed(self, key: str) -> int:
        return self.frame.value(self.joint.sums()[key]).nm

    def tenon_in_building(self, beyond: int) -> Box:
        """The tenon as cut, made longer by `beyond` at its end, in the building."""
        tenoned, _ = self.sides
        at = {line.id: line.at.nm for line in tenoned.lines}
        cut = self.frame.stick("post").as_cut[tenoned.id]
        near, edge = at.get("near-cheek", 0), at.get("reference-edge", 0)
        far = near + cut.thickness.nm if cut.thickness else at["far-cheek"]
        whole = self.depth("post", 3 - self.cheeks, tenoned.id)
        far_edge = edge + cut.width.nm if cut.width else at.get("far-edge", whole)
        long = (cut.length or given_length(self.joint)).nm + beyond
        start = at["shoulder"]
        along = (start - long, start) if self.end == self.post.end else (start, start + long)
        across = ((near, far), (edge, far_edge))
        u, v = across if self.cheeks == 1 else across[::-1]
        return self.placed_post().box((along, u, v))

    def mortise_in_building(self) -> Box:
        """The mortise in the building: its one cut, open at the face the tenon goes in by."""
        _, mortised = self.sides
        (cut,) = mortised.cuts
        whole = (0, self.depth("receiver", self.into, mortised.id))
        readings = bounds(cut, ((0, 0), whole, whole))
        return self.placed_receiver().box(readings)


def _faces(stance: Stance) -> dict[str, str]:
    return {
        "first_face": stance.first,
        "second_face": stance.second,
        "reference_end": ENDS.get(stance.end, stance.end),
    }


@st.composite
def corner(draw: st.DrawFn) -> Corner:
    """Any two timbers square to each other: any hands, ends, reliefs, sizes and real sizes."""
    receiver = draw(st.sampled_from(STANCES))
    grain = TOWARDS[receiver.end][0]
    post = draw(st.sampled_from([one for one in STANCES if TOWARDS[one.end][0] != grain]))
    end = draw(st.sampled_from((post.end, OPPOSITE[post.end])))
    joint = tenon(
        end=ENDS.get(end, end),
        into="receiver",
        at=draw(texts(12, 120)),
        inset=draw(texts(-2, 4)),
        **{key: draw(texts(1, 3)) for key in ("thickness", "length")},
        **{key: draw(texts(0, 2)) for key in ("set_back", "relief_reference", "relief_far")},
        **{key: draw(texts(0, 1)) for key in ("all_round", "end_allowance", "bottom_clearance")},
    )
    tenoned = f"{ENDS.get(end, f'{end}-end')}-tenon"
    post_real = Real({tenoned: draw(measured(6, 10))}, {tenoned: draw(AS_CUT)})
    receiver_real = Real({joint.mortise: draw(measured(7, 12))})
    parts = (
        timber("post", section=draw(sections(6, 9)), **_faces(post)),
        timber("receiver", section=draw(sections(8, 12)), **_faces(receiver)),
        joint,
    )
    built = frame(*parts, real={"post": post_real, "receiver": receiver_real})
    return Corner(post, receiver, end, built, joint)
