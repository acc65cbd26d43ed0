"""Where a joist's tenon lies on its real stick, seen from the side.

How it works
1. From the top down the end has three parts: the haunch (a tusk tenon's is its horn), which slopes
   from nothing at the joist's top to its full depth at the tenon; the tenon; and what is under it,
   first a tusk if there is one, then the plain shoulder.
2. Every depth is taken from the joist's top, which is a reference face, so all tops come level
   whatever the sticks measure. Sizes along it are taken from the shoulder, on the beam's face.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.flats import leaning
from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Meeting
from benchmate.frame.reduction import Reduction, reduction
from benchmate.frame.stick_end import JoistEnd
from benchmate.joinery.joist_tenon.proportions import Tusk, plumb_depth, published
from benchmate.joinery.joist_tenon.record import JoistTenon, SoffitTenon, TuskTenon
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis, Plane, above, below
from benchmate.model.stick import Wood, axis_from

SHOULDER, HAUNCH, NEAR, FAR, TUSK_END, TUSK_UNDER, EDGE = (
    "shoulder",
    "haunch",
    "near-cheek",
    "far-cheek",
    "tusk-end",
    "tusk-underside",
    "far-edge",
)
"""The lines on the joist."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """What a joint says of its tenon: depths from the joist's top, lengths from the shoulder.

    `near` and `far` are the tenon's upper and lower cheeks, `lowest` the underside of all that goes
    in: the tusk's where there is one. `usual` is what is published for a tusk tenon here, and None
    for a soffit tenon.
    """

    near: Length
    far: Length
    lowest: Length
    length: Length
    haunch: Length
    tusk: Length
    usual: Tusk | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class EndShape(JoistEnd):
    """A joist's end with its tenon, on its real stick; it goes in as deep as its shoulder bears."""

    part: Part

    @property
    def haunch_word(self) -> str:
        """What the sloping part above the tenon is called."""
        return "haunch" if self.part.usual is None else "horn"

    @property
    def thickness(self) -> Length:
        """How deep the tenon is as laid out."""
        return self.part.far - self.part.near

    @property
    def below(self) -> Length:
        """How much comes off beneath all that goes in: nothing where that is flush."""
        return self.real_deep - self.part.lowest

    @property
    def under_line(self) -> str:
        """The line at the underside of all that goes in."""
        return TUSK_UNDER if self.part.tusk else FAR

    @property
    def reduction(self) -> Reduction:
        """What the end loses on its far faces so that it goes into a beam over its size."""
        struck = {self.sides: EDGE} if self.stick.inner is not None else {}
        if self.part.lowest == self.framed:
            struck[self.plumb] = self.under_line
        to = {self.plumb: self.framed, self.sides: self.wide}
        return reduction(self.stick, self.end, self.recess, to, places=self.places, struck=struck)

    @property
    def haunched(self) -> bool:
        """Whether the end slopes above the tenon."""
        return bool(self.part.haunch) and self.part.near > ZERO

    @property
    def upper(self) -> Plane:
        """Where the joist ends above its tenon: on the haunch's slope, or square at the shoulder.

        The waste lies beyond it.
        """
        if not self.haunched:
            return self.beyond(ZERO, SHOULDER)
        near, tip = self.part.near, self.along(self.part.haunch)
        start, finish = (self.shoulder, ZERO), (tip, near)
        return leaning((Axis.ALONG, self.plumb), start, finish, (tip, ZERO), HAUNCH)

    def beyond(self, distance: Length, line: str) -> Plane:
        """The plane square across the joist so far beyond the shoulder, all past it waste."""
        bound = above if self.end is Face.FAR_END else below
        return bound(Axis.ALONG, self.along(distance), line)

    @property
    def laid_out(self) -> Mapping[str, Length]:
        """The sizes that are typed once it is cut, as they are laid out."""
        return {"thickness": self.thickness, "width": self.wide, "length": self.part.length}


def meeting(joint: JoistTenon, frame: Frame) -> Meeting:
    """How the joist's end meets the beam's side."""
    (bearing,) = joint.bearings()
    return frame.meeting(bearing, at=joint.at, inset=joint.drop)


def end_shape(joint: SoffitTenon | TuskTenon, frame: Frame) -> EndShape:
    """The joist's end, as its real stick and the beam give it."""
    stick, met = frame.stick(joint.timber), meeting(joint, frame)
    (bearing,) = joint.bearings()
    end = stick.pose.face(joint.end)
    feature = f"{stick.place_at(end)}-tenon"
    places = (feature, stick.place_at(end))
    plumb = axis_from(stick.pose.face(Direction.UP))
    deep = stick.framed(plumb, *places)
    part = (
        soffit(joint, stick, deep)
        if isinstance(joint, SoffitTenon)
        else tusk(joint, stick, met, frame)
    )
    return EndShape(
        stick=stick,
        end=end,
        feature=feature,
        plumb=plumb,
        part=part,
        recess=frame.recess(bearing, met),
        as_cut=stick.as_cut.get(feature, AsCut()),
    )


def soffit(joint: SoffitTenon, joist: Wood, deep: Length) -> Part:
    """A soffit tenon: its top held from the joist's, its underside too unless that is flush.

    Flush, it runs down to the joist's own underside, `deep` below its top.
    """
    held = plumb_depth(joist) - joint.above_soffit
    far = held if joint.above_soffit else deep
    return Part(
        near=held - joint.thickness,
        far=far,
        lowest=far,
        length=joint.length,
        haunch=joint.haunch,
        tusk=ZERO,
    )


def tusk(joint: TuskTenon, joist: Wood, met: Meeting, frame: Frame) -> Part:
    """A tusk tenon; where it does not say how deep it lies, its underside is on the centre line.

    Raises ValueError for a joint that is not settled.
    """
    given = (joint.thickness, joint.length, joint.tusk, joint.horn)
    settled = [size for size in given if size is not None]
    if len(settled) < len(given):
        raise ValueError(f"{joint.id} has no shape until its timbers settle it")
    thickness, length, let_in, horn = settled
    beam = frame.wood(joint.into)
    near = centred(met, beam) - thickness if joint.set_back is None else joint.set_back
    far = near + thickness
    return Part(
        near=near,
        far=far,
        lowest=far + joint.tusk_height,
        length=length,
        haunch=horn,
        tusk=let_in,
        usual=published(joist, beam, frame.project.bare),
    )


def centred(met: Meeting, beam: Wood) -> Length:
    """How far below the joist's top the beam's centre line lies, as the beam is drawn or inner."""
    middle = Length(plumb_depth(beam).nm // 2)
    return middle - met.inset if met.same_side else met.inset - middle
