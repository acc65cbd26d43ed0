"""The one table of a framer's own settings: the file, the screen and the README go by it.

They say how things are shown to him and what is suggested to him. No figure of a project follows
from them: that would make a frame depend on whose machine it is opened on.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from benchmate.measure.length import Length
from benchmate.measure.reading import LengthError, Unit, read_length
from benchmate.measure.tolerance import LARGEST_SECTION
from benchmate.model.project import GRADUATIONS, STYLES, fitting_marks

LOOKS, SHOP, JOINTS = "How it is shown", "Suggested to new projects", "Suggested to new joints"
"""The headings that the settings stand under."""

DIGITS = ("block", "thin")
"""Styles of the big figures, the usual one first."""

COLOURS = ("dark", "light", "high-contrast", "none")
"""Colours of the screen, the usual ones first."""

LONGEST = 60
"""Characters in a setting: all of them are a word or a length."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Preference:
    """One setting: its key in the file, its words, and what it may be.

    `usual` says what counts where nothing is set; of `choices` that is the first, if `plain`.
    `check` raises ValueError, with the remedy behind a semicolon, for a text that is none.
    """

    id: str
    label: str
    group: str
    help: str
    usual: str
    choices: tuple[str, ...] = ()
    check: Callable[[str], object] = str


def length_of(text: str) -> Length:
    """A length that says its unit, as no project does it here. Raises ValueError."""
    found = read_length(text, bare=Unit.INCH, most=LARGEST_SECTION)
    if not _same_in_mm(text, found):
        raise ValueError("is a number without a unit; write 1-1/2 in, or 38 mm")
    return found


def _same_in_mm(text: str, found: Length) -> bool:
    """Whether a text says the same where a bare number is millimetres."""
    try:
        return read_length(text, bare=Unit.MM, most=LARGEST_SECTION) == found
    except LengthError:
        return False


def _some(text: str) -> Length:
    found = length_of(text)
    if not found:
        raise ValueError("is nothing; write a size of more than nothing")
    return found


def share_of(text: str) -> Fraction:
    """A share of a timber, more than nothing and at most a half. Raises ValueError."""
    above, slash, below = (part.strip() for part in text.partition("/"))
    whole = all(
        part.isascii() and part.isdigit() and len(part) < LONGEST for part in (above, below)
    )
    if not (slash and whole and int(below)) or not 0 < 2 * int(above) <= int(below):
        raise ValueError("is no share of a timber up to a half; write one, as 1/4 or 1/3")
    return Fraction(int(above), int(below))


def _length(
    key: str, label: str, group: str, words: str, usual: str, *, zero: bool = False
) -> Preference:
    check = length_of if zero else _some
    return Preference(id=key, label=label, group=group, help=words, usual=usual, check=check)


PREFERENCES: tuple[Preference, ...] = (
    Preference(
        id="units",
        label="Units",
        group=LOOKS,
        help="How lengths are shown on your screen. A number typed without a unit stays what the "
        "project says, and so does what is printed.",
        usual="as the project says",
        choices=tuple(STYLES),
    ),
    Preference(
        id="graduation",
        label="Finest mark on your tape",
        group=LOOKS,
        help="Figures on your screen go to the nearest of these, where they are of its units.",
        usual="as the project says",
        choices=tuple(GRADUATIONS),
    ),
    Preference(
        id="digits",
        label="Big digits",
        group=LOOKS,
        help="The style of the figure that is read from two paces.",
        usual="block",
        choices=DIGITS,
    ),
    Preference(
        id="colours",
        label="Colours",
        group=LOOKS,
        help="dark, light for bright light, high-contrast, or none: the terminal's own.",
        usual="dark",
        choices=COLOURS,
    ),
    _length(
        "trim",
        "Trim",
        SHOP,
        "Wood to spare at each end of a stick before it is squared and cut to length.",
        "1 in, or 25 mm",
        zero=True,
    ),
    _length(
        "guide_block",
        "Guide block",
        SHOP,
        "From a chamfer stop to where the block that stops the tool is clamped.",
        "2 in, or 50 mm",
        zero=True,
    ),
    _length(
        "bottom_clearance",
        "Bottom clearance",
        SHOP,
        "How much deeper a mortise is than its tenon is long.",
        "1/8 in, or 3 mm",
        zero=True,
    ),
    _length(
        "least_wood",
        "Least wood",
        SHOP,
        "What to leave between two joints; less is told. No measure of strength.",
        "1/2 in, or 12 mm",
        zero=True,
    ),
    Preference(
        id="tenon_share",
        label="Tenon thickness",
        group=JOINTS,
        help="As a share of the timber's lesser side, as 1/4 or 1/3; not for braces.",
        usual="1/4",
        check=share_of,
    ),
    _length(
        "set_back",
        "Set-back",
        JOINTS,
        "From the reference face to a tenon's near cheek; not for braces.",
        "as thick as the tenon",
        zero=True,
    ),
    _length(
        "housing",
        "Housing",
        JOINTS,
        "How deep a whole end goes in.",
        "1/2 in, or 12 mm",
        zero=True,
    ),
    _length(
        "peg_size",
        "Peg hole",
        JOINTS,
        "Across the hole, where joints are pegged; not for braces.",
        "1 in",
    ),
    _length(
        "peg_from_shoulder",
        "Pegs from the shoulder",
        JOINTS,
        "To the holes' centre line, in the timber that receives the tenon.",
        "1-1/2 in",
    ),
    _length(
        "draw",
        "Draw",
        JOINTS,
        "How much nearer the shoulder the tenon's own holes lie.",
        "by the joint",
        zero=True,
    ),
)
"""Every setting, in the order of the screen."""

BY_ID: Mapping[str, Preference] = {each.id: each for each in PREFERENCES}
"""Each setting by its key."""


def fault(preference: Preference, text: str, units: str) -> tuple[str, str]:
    """What is wrong with a text for a setting, and the remedy; empty where nothing is.

    `units` are those set beside it, or empty.
    """
    if len(text) > LONGEST:
        return f"is longer than {LONGEST} characters", "write a word or a length"
    choices = choices_of(preference, units)
    if choices and text not in choices:
        return f'is "{text}", which cannot be set here', f"write one of {', '.join(choices)}"
    try:
        preference.check(text)
    except LengthError as error:
        return error.problem, error.remedy
    except ValueError as error:
        problem, _, remedy = str(error).partition("; ")
        return problem, remedy
    return "", ""


def choices_of(preference: Preference, units: str) -> tuple[str, ...]:
    """What a setting may be; the marks of a tape are those of the units set beside it."""
    return fitting_marks(units) if preference.id == "graduation" and units else preference.choices
