"""A joist's end in the side of a beam, any way round, both with their places in the building."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from benchmate.frame.frame import Frame, Real
from benchmate.frame.level_end import LevelEnd
from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from tests.builders import Part, frame, length, real, timber
from tests.compass import ALONG, OPPOSITE, SENSE

THIRTY_SECOND = Length.inches(0, 1, 32)

Words = Mapping[str, object]


@dataclass(frozen=True, slots=True, kw_only=True)
class Floor:
    """A 7 x 4 joist whose `end` enters a beam 10" deep and 8" wide, tops level.

    `near` tells whether the beam's reference side is the one the joist enters, `from_top` whether
    its other reference face is its top. The joist's reference side looks to the `left` of the way
    its end points, or to the right, and `first` tells whether its top is its first face. Its
    reference end is the one in the beam, or the `other`; `turned` is the beam end for end. `lower`
    is how far its top lies below the beam's.
    """

    end: str = "south"
    near: bool = True
    from_top: bool = True
    left: bool = True
    first: bool = True
    other: bool = False
    turned: bool = False
    lower: str = "0"
    joist: str = "7 x 4"
    beam: str = "10 x 8"
    real: Mapping[str, Real] = field(default_factory=dict)
    own: Mapping[str, Words] = field(default_factory=dict)

    def with_(self, **words: object) -> "Floor":
        """The same floor with something else about it."""
        return replace(self, **words)  # type: ignore[arg-type]

    def frame(self, *joints: LevelEnd, **words: object) -> Frame:
        """Both timbers with their joints."""
        parts: tuple[Part, ...] = (self.beam_timber, self.joist_timber, *joints)
        units = {"units": words.pop("units", "inches")}
        return frame(*parts, real=self.real, **units, **words)

    @property
    def beam_timber(self) -> Timber:
        """The beam: its zero is at its reference arris, 4 ft from the joist's."""
        across = _left(self.end)
        grain = OPPOSITE[across] if self.turned else across
        deep, _ = self.beam.split(" x ")
        reference = SENSE[grain]
        words: dict[str, object] = {
            "kind": "beam",
            "section": self.beam,
            "first_face": "up" if self.from_top else "down",
            "second_face": OPPOSITE[self.end] if self.near else self.end,
            "reference_end": grain,
            "length": "12'",
            "at": {ALONG[self.end]: "0", "up": "0" if self.from_top else f"-{deep}"},
            "reference_end_at": f"{6 * reference}'",
        }
        return timber("beam", **(words | dict(self.own.get("beam", {}))))

    @property
    def joist_timber(self) -> Timber:
        """The joist: 8 ft from its end in the beam to its free end."""
        side = _left(self.end) if self.left else OPPOSITE[_left(self.end)]
        deep, wide = self.joist.split(" x ")
        faces = ("up", side) if self.first else (side, "up")
        free = "reference_end_at" if self.other else "far_end_at"
        words: dict[str, object] = {
            "kind": "joist",
            "section": self.joist if self.first else f"{wide} x {deep}",
            "first_face": faces[0],
            "second_face": faces[1],
            "reference_end": OPPOSITE[self.end] if self.other else self.end,
            "length": None,
            "at": {ALONG[_left(self.end)]: "0", "up": (-length(self.lower)).exact_text()},
            free: f"{-8 * SENSE[self.end]}'",
        }
        return timber("joist", **(words | dict(self.own.get("joist", {}))))


def _left(way: str) -> str:
    """Where the left hand points, looking one way."""
    return {"north": "west", "west": "south", "south": "east", "east": "north"}[way]


FLOORS = {
    "as drawn": Floor(),
    "through a far face": Floor(near=False),
    "towards the north": Floor(end="north"),
    "towards the west, its other end": Floor(end="west", other=True, near=False),
    "towards the east, from the right": Floor(end="east", left=False),
    "from the right, its side first": Floor(left=False, first=False),
    "a beam measured from below": Floor(from_top=False, lower="1"),
    "a beam end for end": Floor(turned=True, end="west"),
    "lower than its beam": Floor(lower="1-1/2", near=False, other=True),
    "proud of its beam": Floor(lower="-3/4"),
    "proud of a beam measured from below": Floor(lower="-1/2", from_top=False, near=False),
}
"""Every heading, either hand, either end, near and far faces, and tops that are not level."""

Off = tuple[int, ...]
"""How far each side of beam and joist is over its drawn size, in 1/32"."""


def over(floor: Floor, off: Off, rule: str) -> Floor:
    """The same floor with sticks over their drawn sizes, which by square rule are the inner ones.

    The four are the beam's depth and width, then the joist's.
    """
    drawn = {"beam": floor.beam_timber, "joist": floor.joist_timber}
    sizes, own = {}, {}
    for name, (deep, wide) in (("beam", off[:2]), ("joist", off[2:])):
        section = drawn[name].section
        if not isinstance(section, Section):
            raise TypeError("a floor's timbers have sections, not classes of them")
        upright = drawn[name].first_face in (Direction.UP, Direction.DOWN)
        extra = (deep, wide) if upright else (wide, deep)
        grown = [
            (side + THIRTY_SECOND * count).exact_text()
            for side, count in zip((section.first, section.second), extra, strict=True)
        ]
        sizes[name] = real({"all": {"first": grown[0], "second": grown[1]}})
        own[name] = {"rule": rule} | ({"inner": section} if rule == "square" else {})
    return floor.with_(real=sizes, own=own)
