"""Rafters over plates, to ridges and to one another, any way round, as a project file says them."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.rafter.peak.record import RafterPeak
from benchmate.joinery.rafter.raking import Rafter, rafter
from benchmate.joinery.rafter.ridge.record import RafterRidge
from benchmate.joinery.rafter.seat.record import RafterSeat
from benchmate.joinery.rafter.tail.record import RafterTail
from benchmate.measure.length import ZERO, Length
from benchmate.measure.reading import read_length
from benchmate.measure.sums import Sum, Term
from benchmate.model.project import Timber
from benchmate.model.work import Work
from tests.builders import frame, length, timber
from tests.compass import ALONG, OPPOSITE, SENSE

ACROSS = {"east": "north", "north": "east"}
SIDE = {"east": "south", "north": "west"}
"""The side a rafter's other reference face looks to, by the axis it runs on."""

Words = Mapping[str, object]


def exact(at: Length) -> Sum:
    """A length to the nanometre, finer than a project file can say."""
    return Sum((Term(1 if at >= ZERO else -1, None, abs(at)),))


@dataclass(frozen=True, kw_only=True)
class Roof:
    """Half a roof in its own plane, ahead and up from the outside of the wall at the plate's top.

    The rafter goes `rise` in 12 over `run` to the peak, `over` the plate by that much plumb, and
    stands out `out` level beyond it. `own` is what else is said of a timber, by its id.
    """

    heading: str = "east"
    rise: str = "12"
    run: str = "8'"
    over: str | Length = "5"
    across: str = "0"
    out: str = "12"
    top: str = "8'"
    rafter: str = "6 x 4"
    side: str = ""
    reference_end: str = "foot"
    plate: tuple[str, str] = ("8", "6")
    plate_faces: tuple[str, str] = ("up", "out")
    ridge: tuple[str, str] = ("10", "2")
    ridge_faces: tuple[str, str] = ("up", "in")
    own: Mapping[str, Words] = field(default_factory=dict)

    def at(self, ahead: Length) -> Sum:
        """A distance ahead as a coordinate."""
        return exact(ahead * SENSE[self.heading])

    def up_at(self, ahead: Length) -> Length:
        """How high the top edge lies, so far ahead."""
        rise = Length(ahead.nm * read_length(self.rise).nm // Length.inches(12).nm)
        over = self.over if isinstance(self.over, Length) else length(self.over)
        return length(self.top) + over + rise

    def lying(
        self,
        timber_id: str,
        near: Length,
        top: Length,
        size: tuple[str, str],
        looks: tuple[str, str],
    ) -> Timber:
        """A level timber across the rafter, so far ahead and so high, `size` deep and wide."""
        axis = ALONG[self.heading]
        deep, wide = map(length, size)
        out = OPPOSITE[self.heading]
        second = {"out": out, "in": self.heading}[looks[1]]
        ahead = near if looks[1] == "out" else near + wide
        up = top if looks[0] == "up" else top - deep
        across = ACROSS[axis]
        place = {axis: self.at(ahead), "up": exact(up)}
        start = {"north": "south", "east": "west"}[across]
        said: dict[str, object] = {
            "kind": "plate",
            "section": f"{size[0]} x {size[1]}",
            "first_face": looks[0],
            "second_face": second,
            "reference_end": start,
            "length": "12'",
            "at": place,
            "reference_end_at": "-4'",
        }
        return timber(timber_id, **(said | dict(self.own.get(timber_id, {}))))

    def raking(self, timber_id: str = "rafter", **words: object) -> Timber:
        """The rafter itself, from the end of its tail to the peak."""
        axis = ALONG[self.heading]
        foot = -length(self.out)
        point = {axis: self.at(foot), ACROSS[axis]: self.across, "up": exact(self.up_at(foot))}
        run = length(self.run) - foot
        rise = Length(run.nm * read_length(self.rise).nm // Length.inches(12).nm)
        incline = {
            "foot": point,
            "towards": self.heading,
            "run": exact(run),
            "rise": exact(rise),
        }
        said: dict[str, object] = {
            "kind": "rafter",
            "section": self.rafter,
            "first_face": "up",
            "second_face": self.side or SIDE[axis],
            "reference_end": self.reference_end,
            "length": None,
            "incline": incline,
        }
        return timber(timber_id, **(said | dict(self.own.get(timber_id, {})) | words))

    def towards_peak(self, timber_id: str, peak: Length, up: Length) -> Timber:
        """A rafter of this roof's heading and pitch up to a peak at this coordinate and height."""
        axis = ALONG[self.heading]
        run = length(self.run) + length(self.out)
        rise = Length(run.nm * read_length(self.rise).nm // Length.inches(12).nm)
        foot = {
            axis: exact(peak - run * SENSE[self.heading]),
            ACROSS[axis]: self.across,
            "up": exact(up - rise),
        }
        incline = {"towards": self.heading, "run": exact(run), "rise": exact(rise), "foot": foot}
        return self.raking(timber_id, incline=incline)

    def on_plate(self) -> Timber:
        """The plate, its outside face at zero."""
        return self.lying("plate", ZERO, length(self.top), self.plate, self.plate_faces)

    def at_ridge(self, drop: str = "1") -> Timber:
        """The ridge, centred on the peak, its top so far under the rafter's top edge there."""
        half = Length(length(self.ridge[1]).nm // 2)
        near = length(self.run) - half
        top = self.up_at(near) - length(drop)
        return self.lying("ridge", near, top, self.ridge, self.ridge_faces)


def seat(**words: object) -> RafterSeat:
    """A plain birdsmouth on the plate."""
    given = {"id": "wall", "family": "rafter seat", "timber": "rafter", "into": "plate"}
    return RafterSeat.model_validate(given | words)


def tail(**words: object) -> RafterTail:
    """A plumb tail."""
    given = {"id": "eaves", "family": "rafter tail", "timber": "rafter", "cut": "plumb"}
    return RafterTail.model_validate(given | words)


def ridge(**words: object) -> RafterRidge:
    """A plumb cut against the ridge."""
    given = {"id": "top", "family": "rafter ridge", "timber": "rafter", "into": "ridge"}
    return RafterRidge.model_validate(given | words)


def built(
    roof: Roof, *works: Work, real: Mapping[str, Real] | None = None, **words: object
) -> Frame:
    """A plate, a ridge and a rafter with these joints."""
    parts = (roof.on_plate(), roof.at_ridge(), roof.raking())
    return frame(*parts, *works, real=real, units="inches", **words)


def peak(**words: object) -> RafterPeak:
    """A half lap of the rafter and the one of the other slope."""
    given = {"id": "peak", "family": "rafter peak", "timber": "rafter", "into": "mate"}
    return RafterPeak.model_validate(given | {"cut": "half lap"} | words)


def pair(
    roof: Roof, other: Roof, *works: Work, real: Mapping[str, Real] | None = None, **words: object
) -> Frame:
    """Two rafters whose top edges end at one peak: that of `roof`."""
    peak_at = roof.up_at(length(roof.run))
    mate = other.towards_peak("mate", length(roof.run) * SENSE[roof.heading], peak_at)
    return frame(roof.raking(), mate, *works, real=real, units="inches", **words)


def shed(roof: Roof, *works: Work, real: Mapping[str, Real] | None = None) -> Frame:
    """A rafter of a shed roof over two plates, the upper one 18" back from its head."""
    near = length(roof.run) - length("18")
    rise = roof.up_at(near) - roof.up_at(ZERO)
    upper = roof.lying("upper", near, length(roof.top) + rise, roof.plate, roof.plate_faces)
    parts = (roof.on_plate(), upper, roof.raking())
    return frame(*parts, *works, real=real, units="inches")


def alone(rise: str, run: str = "1'") -> Rafter:
    """A rafter that rises so much in 12 over a run, and nothing else."""
    roof = Roof(rise=rise, run=run, out="0")
    return rafter(frame(roof.raking(), units="inches"), "rafter", "notch")
