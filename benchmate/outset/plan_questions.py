"""The questions about the whole frame: its name and units, its plan, its heights, its roof."""

import re
from functools import partial

from benchmate.outset import refused
from benchmate.outset.answers import JOISTS, NONE, RIDGE, SQUARE, Answers
from benchmate.outset.question import Group, Kind, Question
from benchmate.outset.written import FEET, MM

COMMON = "Common practice, no source."
"""Said of a figure that good framers use and no text was found for."""

YOURS = "A size to start from: yours and the engineer's to settle."
"""Said of what no trade rule can suggest."""

TO_START = f"{YOURS} No source."


def size(inches: int, mm: int) -> partial[str]:
    """A suggestion that follows from the units alone."""
    return partial(_size, inches=inches, mm=mm)


def _size(a: Answers, *, inches: int, mm: int) -> str:
    return a.say(a.size(inches, mm))


def word(text: str) -> partial[str]:
    """A suggestion that is always the same."""
    return partial(_word, text=text)


def _word(_a: Answers, *, text: str) -> str:
    return text


def _graduation(a: Answers) -> str:
    return "1 mm" if a.units == MM else "1/16"


def graduations(a: Answers) -> tuple[str, ...]:
    """The finest marks a tape in these units may have."""
    return ("1 mm", "0.5 mm") if a.units == MM else ("1/8", "1/16", "1/32", "1/64")


def folder_name(name: str) -> str:
    """A folder for a project of a name: its words in lower case, with hyphens."""
    return re.sub(r"[^a-z0-9]+", "-", name.casefold()).strip("-")[:60].strip("-") or "frame"


PROJECT = Group(
    "The project",
    (
        Question(
            id="name",
            label="Name",
            kind=Kind.TEXT,
            suggest=word("New frame"),
            about="What the project is called, at the head of every screen and sheet.",
            refuse=refused.name,
        ),
        Question(
            id="units",
            label="Units",
            kind=Kind.CHOICE,
            choices=(FEET, "inches", MM),
            suggest=word(FEET),
            about="How lengths are shown, and what a number without a unit is here.",
        ),
        Question(
            id="graduation",
            label="Finest mark on your tape",
            kind=Kind.CHOICE,
            choices=("1/8", "1/16", "1/32", "1/64", "1 mm", "0.5 mm"),
            suggest=_graduation,
            about="Figures are shown to the nearest of these.",
        ),
        Question(
            id="rule",
            label="Layout rule",
            kind=Kind.CHOICE,
            choices=("mill", SQUARE),
            suggest=word("mill"),
            about="Mill rule follows what each stick measures; square rule goes by a smaller "
            "perfect timber inside every stick, as for rough-sawn ones.",
        ),
        Question(
            id="species",
            label="Species",
            kind=Kind.TEXT,
            suggest=word(""),
            about="Of every timber; may be left empty, and told apart in the file later.",
            refuse=refused.species,
            may_be_empty=True,
        ),
    ),
)

PLAN = Group(
    "Plan and heights",
    (
        Question(
            id="length",
            label="Length, outside of posts",
            kind=Kind.LENGTH,
            suggest=size(240, 6000),
            about="East and west, from the outside of the first bent's posts to that of the last.",
            source=TO_START,
            shows="sill-south",
        ),
        Question(
            id="width",
            label="Width, outside of posts",
            kind=Kind.LENGTH,
            suggest=size(168, 4200),
            about="South and north, outside to outside: ties and rafters span this way.",
            source=TO_START,
            refuse=refused.width,
            shows="tie-1",
        ),
        Question(
            id="bays",
            label="Bays",
            kind=Kind.COUNT,
            suggest=word("2"),
            about="Equal ones, to the finest mark; the last takes what is over. A line can be "
            "moved later.",
            source=TO_START,
            refuse=refused.count_of_bays,
            shows="post-sw",
        ),
        Question(
            id="post height",
            label="Post height",
            kind=Kind.LENGTH,
            suggest=size(96, 2400),
            about="From the top of the sills to the underside of the plates, which is the posts' "
            "length shoulder to shoulder.",
            source=TO_START,
            refuse=refused.post_height,
            shows="post-sw",
        ),
        Question(
            id="overhang",
            label="Plate past each gable",
            kind=Kind.LENGTH,
            suggest=size(12, 300),
            about="How far the plates run past the end posts; 0 for flush.",
            source=COMMON,
            may_be_zero=True,
            shows="plate-south",
        ),
        Question(
            id="longest",
            label="Longest stick to be had",
            kind=Kind.LENGTH,
            suggest=word(""),
            about="Longer plates, and sills without joists, are scarfed near a post, clear of "
            "braces. Empty: any length can be had.",
            source="No source: you know your sawyer.",
            refuse=refused.longest,
            may_be_empty=True,
            shows="plate-south",
        ),
        Question(
            id="corners",
            label="Sill corners",
            kind=Kind.CHOICE,
            choices=("tenoned", "half-lapped"),
            suggest=word("tenoned"),
            about="The long sills run through; the end sills are tenoned between them, or both "
            "half-lapped.",
            source="Mortise and tenon is standard: published (a barn builder's web page).",
            shows="sill-west",
        ),
        Question(
            id="ties",
            label="Ties",
            kind=Kind.CHOICE,
            choices=("tenoned into the posts", "lapped over the plates"),
            suggest=word("tenoned into the posts"),
            about="Below the plates in the posts, or over the plates on a cog. Rafters then stand "
            "beside the ties.",
            source="A cog rather than a dovetail, which opens as the tie shrinks: published "
            "(framers' guild forum 5470).",
            shows="tie-1",
        ),
        Question(
            id="floor",
            label="Floor",
            kind=Kind.CHOICE,
            choices=(NONE, JOISTS),
            suggest=word(NONE),
            about="Joists from the south sill to the north one, dropped into pockets. A summer or "
            "girders are for the file.",
            shows="joist-1-1",
        ),
        Question(
            id="braces",
            label="Braces",
            kind=Kind.CHOICE,
            choices=("post to plate", "post to tie", "both", NONE),
            suggest=word("both"),
            about="In the walls, in the bents, or both. What a frame without them stands by is "
            "for the engineer.",
            shows="brace-sw",
        ),
        Question(
            id="roof",
            label="Rafters",
            kind=Kind.CHOICE,
            choices=(
                "butted at the peak",
                "half-lapped at the peak",
                "bridled at the peak",
                RIDGE,
                NONE,
            ),
            suggest=word("half-lapped at the peak"),
            about="Common rafters in pairs, notched over the plates. Their thrust is for the "
            "engineer.",
            source="A half-lap for modest rafters: published (a barn builder's web page).",
            shows="rafter-1-south",
        ),
        Question(
            id="pegs",
            label="Pegs",
            kind=Kind.CHOICE,
            choices=(NONE, "heads, ties and braces"),
            suggest=word(NONE),
            about="Framers differ, so none are set unless you say so. Pegs that carry load are "
            "the engineer's.",
            shows="post-sw",
        ),
    ),
)
