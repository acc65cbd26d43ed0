"""What a framer has answered, and what follows from it alone: sections inside, bents, bays."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import cast

from benchmate.measure.length import ZERO, Length
from benchmate.measure.section import Section
from benchmate.outset.written import MM, down_to, nearest, section_written, up_to, written

Value = Length | Section | Fraction | int | str
"""What an answer comes to."""

LAPPED = "lapped over the plates"
TENONED = "tenoned into the posts"
HALF_LAPPED = "half-lapped"
TO_PLATE = "post to plate"
TO_TIE = "post to tie"
BOTH = "both"
NONE = "none"
RIDGE = "on a ridge"
JOISTS = "joists"
SQUARE = "square"

SECTIONS = ("sill", "post", "plate", "tie", "joist", "brace", "rafter", "ridge")
"""The sections a frame may have, by the name they go by in the file."""

SHOP = ("trim", "guide_block", "bottom_clearance", "least_wood")
"""The shop's practice that a file may state, in the words of its table."""


@dataclass(frozen=True, slots=True)
class Bent:
    """One cross frame: its number from the west, its line, and whether it is an end one."""

    number: int
    first: bool
    last: bool

    @property
    def line(self) -> str:
        """The plan line its reference faces lie on."""
        return f"line {self.number}"

    @property
    def side(self) -> str:
        """The way its reference faces look."""
        return "east" if self.last else "west"

    def key(self, wall: str) -> str:
        """The short name of its post in a wall: `sw`, `s2`, `se`."""
        return f"{wall[0]}{'w' if self.first else 'e' if self.last else self.number}"

    def inward(self, distance: str) -> str:
        """So far into the frame from its line."""
        return f"{self.line} {'-' if self.last else '+'} {distance}"


class Answers:
    """Every answer by the id of its question; KeyError for one that has not been asked yet."""

    def __init__(self, values: Mapping[str, Value]) -> None:
        self._values = values

    def word(self, question: str) -> str:
        """A choice or a text."""
        return cast("str", self._values[question])

    def length(self, question: str) -> Length:
        """A length; nothing for one that may be left empty."""
        found = self._values[question]
        return found if isinstance(found, Length) else ZERO

    def section(self, question: str) -> Section:
        """A section as drawn."""
        return cast("Section", self._values[question])

    def count(self, question: str) -> int:
        """A whole number."""
        return cast("int", self._values[question])

    def shop(self, rule: str) -> Length | None:
        """What the framer's own settings say of the shop's practice; None where they do not."""
        return cast("Length | None", self._values.get(f"shop.{rule}"))

    @property
    def units(self) -> str:
        """The units that lengths are written in."""
        return self.word("units")

    def text(self, question: str) -> str:
        """An answer's length as it is written."""
        return self.say(self.length(question))

    def say(self, length: Length) -> str:
        """A length as it is written."""
        return written(length, self.units)

    def say_up(self, length: Length) -> str:
        """A length as it is written, rounded up to the graduation."""
        return self.say(up_to(length, self.graduation))

    def say_down(self, length: Length) -> str:
        """A length as it is written, rounded down to the graduation; nothing below zero."""
        return self.say(down_to(max(length, ZERO), self.graduation))

    def say_section(self, section: Section) -> str:
        """A section as it is written."""
        return section_written(section, self.units)

    def size(self, inches: Fraction | int, mm: int) -> Length:
        """A size round in the units of the tape."""
        if self.units == MM:
            return Length.mm(mm)
        part = Fraction(inches)
        whole = part.numerator // part.denominator
        rest = part - whole
        return Length.inches(whole, rest.numerator, rest.denominator)

    @property
    def grid(self) -> Length:
        """What suggested sizes of joints are round in: a half inch, or 5 mm."""
        return self.size(Fraction(1, 2), 5)

    @property
    def graduation(self) -> Length:
        """The finest mark on the tape."""
        word = self.word("graduation")
        if self.units == MM:
            return Length(int(Fraction(word.removesuffix(" mm")) * Length.mm(1).nm))
        part = Fraction(word)
        return Length.inches(0, part.numerator, part.denominator)

    @property
    def square(self) -> bool:
        """Whether it is laid out by square rule."""
        return self.word("rule") == SQUARE

    def within(self, section: str) -> Section:
        """What the frame counts on of a section: the timber inside by square rule, or all of it."""
        drawn = self.section(section)
        if not self.square:
            return drawn
        less = self.length("inner")
        return Section(drawn.first - less, drawn.second - less)

    @property
    def used(self) -> tuple[str, ...]:
        """The sections that this frame has timbers of."""
        wanted = {
            "joist": self.floored,
            "brace": self.braced,
            "rafter": self.roofed,
            "ridge": self.roofed and self.word("roof") == RIDGE,
        }
        return tuple(name for name in SECTIONS if wanted.get(name, True))

    @property
    def floored(self) -> bool:
        """Whether it has joists."""
        return self.word("floor") == JOISTS

    @property
    def braced(self) -> bool:
        """Whether it has braces of any kind."""
        return self.word("braces") != NONE

    @property
    def wall_braced(self) -> bool:
        """Whether braces go from its posts to its plates."""
        return self.word("braces") in (TO_PLATE, BOTH)

    @property
    def tie_braced(self) -> bool:
        """Whether braces go from its posts to its ties."""
        return self.word("braces") in (TO_TIE, BOTH)

    @property
    def lapped(self) -> bool:
        """Whether its ties lap over its plates."""
        return self.word("ties") == LAPPED

    @property
    def roofed(self) -> bool:
        """Whether it has rafters."""
        return self.word("roof") != NONE

    @property
    def slope(self) -> Fraction:
        """The rise of the roof to one of run."""
        return cast("Fraction", self._values["pitch"]) / 12

    @property
    def pegged(self) -> bool:
        """Whether its joints are pegged."""
        return self.word("pegs") != NONE

    @property
    def bents(self) -> tuple[Bent, ...]:
        """The bents from west to east."""
        last = self.count("bays") + 1
        return tuple(Bent(number, number == 1, number == last) for number in range(1, last + 1))

    @property
    def bay(self) -> Length:
        """From one bent's line to the next, the last bay left out, which takes what is over."""
        whole = self.length("length") - self.section("post").second
        return nearest(Fraction(whole.nm, self.count("bays")), self.graduation)

    def line_at(self, number: int) -> Length:
        """How far east a bent's line lies."""
        if number > self.count("bays"):
            return self.length("length")
        return self.bay * (number - 1)

    def start_of(self, number: int) -> Length:
        """How far east the west side of a bent's post lies."""
        line = self.line_at(number)
        return line - self.within("post").second if number > self.count("bays") else line

    @property
    def clear(self) -> Length:
        """The least clear distance between two posts of a wall."""
        bays = range(1, self.count("bays") + 1)
        wide = self.within("post").second
        return min(self.start_of(bay + 1) - self.start_of(bay) - wide for bay in bays)

    @property
    def across(self) -> Length:
        """The clear distance between the two walls."""
        deep = self.within("post").first
        return self.length("width") - deep - deep

    def spacing(self, question: str) -> tuple[Length, int]:
        """How far apart timbers lie that fill a bay no further apart than asked, and how many."""
        gaps = max(-(-self.bay.nm // max(self.length(question).nm, 1)), 1)
        return nearest(Fraction(self.bay.nm, gaps), self.graduation), gaps - 1

    def third(self, section: str) -> str:
        """A third of a section's width, as a tongue at the peak takes (trade notes 2.7, NEBarn).

        The third itself is from memory.
        """
        part = Length(self.within(section).second.nm // 3)
        return self.say(
            max(down_to(part, self.size(Fraction(1, 4), 5)), self.size(Fraction(1, 4), 5))
        )

    def name(self, section: str, side: str) -> str:
        """The name in the file of what the frame counts on of a section: `post inner width`."""
        return f"{section} inner {side}" if self.square else f"{section} {side}"
