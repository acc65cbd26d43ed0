"""Where the tail lies on the real tie: its edges, its slope and its end.

How it works
1. Along the tie everything counts from the shoulder: the post's far face `passed` beyond it, the
   tenon's end, and where the slope ends, which is the nearer of those two.
2. Across, depths count from the straight edge: the tenon is `root` deep at the shoulder and `tail`
   deep where the slope ends. So either edge may be the straight one, and either the reference side.
3. The slope is the plane through those two points; the mortise has the same one, carried across.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.flats import reversed_plane
from benchmate.frame.frame import Frame
from benchmate.frame.reduction import Reduction, reduction
from benchmate.frame.stick_end import CheekedEnd
from benchmate.frame.tapers import leaning
from benchmate.frame.through import exit_face, wood_passed
from benchmate.joinery.half_dovetail.record import HalfDovetail
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Spot
from benchmate.model.progress import AsCut
from benchmate.model.solids import Plane, above, below
from benchmate.model.stick import across, axis_from, end_place

TAIL, STRAIGHT, LAND, FAR_FACE = ("tail", "straight-edge", "tail-edge", "far-face")
"""The lines on the tie besides its shoulder and its cheeks."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TailShape(CheekedEnd):
    """A tail on its real stick.

    `straight` is the reading of the straight edge, along the face `wedged`; depths from there grow
    by `sense` times the reading. `passed` is the post's wood beyond the shoulder, `beyond` how far
    the tenon stands past that, below nothing where it is held short. `recess` is how deep the end
    goes in through the real face of the post; `post` is its name, `way_out` its far face in words.
    """

    wedged: Face
    straight: Length
    sense: int
    passed: Length
    beyond: Length
    flare: Length
    root: Length
    recess: Length
    post: str
    way_out: str

    @property
    def length(self) -> Length:
        """From its shoulder to its end."""
        return self.passed + self.beyond

    @property
    def run(self) -> Length:
        """How long the slope is along the tie: to the post's far face, or to an end short of it."""
        return min(self.passed, self.length)

    @property
    def tail(self) -> Length:
        """How deep it is where the slope ends."""
        return self.root + self.flare

    @property
    def surface(self) -> Length:
        """The reading of the tie's real face on the tail's side."""
        return self.real_edges if self.sense > 0 else ZERO

    @property
    def straightened(self) -> bool:
        """Whether wood comes off over the straight edge: a far face by square rule."""
        return self.sense < 0 and self.real_edges > self.straight

    @property
    def landed(self) -> bool:
        """Whether wood comes off along the tail past the post's far face."""
        return self.beyond > ZERO and self.sense * (self.surface - self.at(self.tail)) > ZERO

    @property
    def reduction(self) -> Reduction:
        """What the end loses on its far faces so that it goes into its recess."""
        struck = {}
        if self.cheeks.far == self.cheeks.framed:
            struck[self.cheeks.axis] = "far-cheek"
        if self.straightened:
            struck[self.edges] = STRAIGHT
        elif self.landed and self.sense > 0 and self.tail == self.framed_edges:
            struck[self.edges] = LAND
        to = {self.cheeks.axis: self.cheeks.framed, self.edges: self.framed_edges}
        return reduction(self.stick, self.end, self.recess, to, places=self.places, struck=struck)

    def at(self, deep: Length) -> Length:
        """The reading of a depth from the straight edge."""
        return self.straight + self.sense * deep

    @property
    def laid_out(self) -> Mapping[str, Length]:
        """The sizes that are typed once it is cut, as they are laid out.

        `thickness` is between the cheeks, `width` the depth at the shoulder, `length` the tail's.
        """
        return {"thickness": self.cheeks.thickness, "width": self.root, "length": self.tail}

    def slope(self, root: Length, tail: Length, line: str) -> Plane:
        """The plane through a depth at the shoulder and one where the slope ends.

        Its waste lies away from the straight edge. Raises ValueError for a tenon without length.
        """
        spots = (Spot(self.along(ZERO), self.at(root)), Spot(self.along(self.run), self.at(tail)))
        plane = leaning(self.edges, *spots, line)
        return plane if self.sense < 0 else reversed_plane(plane)

    def outside(self, deep: Length, line: str | None = None) -> Plane:
        """The plane along the tie at a depth; the waste lies away from the straight edge."""
        return (above if self.sense > 0 else below)(self.edges, self.at(deep), line)


def feature_id(joint: HalfDovetail) -> str:
    """The id of the tenon on the tie: `west-end-tenon`."""
    return f"{end_place(joint.end)}-tenon"


def tail_shape(joint: HalfDovetail, frame: Frame) -> TailShape:
    """The tail, as its real stick and the post as it really is give it."""
    stick, post = frame.stick(joint.timber), frame.wood(joint.into)
    (bearing,) = joint.bearings()
    end, feature = stick.pose.face(joint.end), feature_id(joint)
    wedged = stick.pose.face(Direction.UP if joint.wedged == "top" else Direction.DOWN)
    edges = axis_from(wedged)
    framed = stick.framed(edges, feature, stick.place_at(end))
    entry = frame.entry(bearing)
    over = post.over_on(entry, joint.mortise)
    return TailShape(
        stick=stick,
        end=end,
        feature=feature,
        cheek_axis=across(edges),
        near=joint.set_back,
        far=joint.set_back + joint.thickness,
        wedged=wedged,
        straight=ZERO if wedged.is_reference else framed,
        sense=1 if wedged.is_reference else -1,
        passed=wood_passed(post, bearing),
        beyond=joint.past - joint.held_short,
        flare=joint.flare,
        root=framed - joint.flare if joint.depth is None else joint.depth,
        recess=joint.housing + over,
        post=post.name,
        way_out=f"{post.name}'s {post.pose.words(exit_face(post, bearing))}",
        as_cut=stick.as_cut.get(feature, AsCut()),
    )
