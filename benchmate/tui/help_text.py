"""What the help says: the pane in hand, the words of its step, the keys, and the screen's words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.keys import KEYS
from benchmate.tui.terms import TERMS, Term, terms_in
from benchmate.tui.words import Saying

if TYPE_CHECKING:
    from collections.abc import Iterable

    from benchmate.tui.glyphs import Glyphs

STEPS = (
    "You are in the steps of one timber, in the order of the work. space ticks the one in hand and "
    "goes on, enter reads it in full with its words explained, tab goes to the timbers."
)

TIMBERS = (
    "You are in the list of timbers, each with how many of its steps are done. Moving takes a "
    "timber up at its next open step, enter or tab goes to its steps."
)

WORDS = (
    ("from", "what to hook on or measure from, and which way to go from there"),
    ("to", "where a line that slants comes out, on the far edge or the end grain"),
    (
        "square",
        "the arm to strike along, and what to set on both, held to that edge, heel on the timber",
    ),
    ("on", "the faces and end grain the line is struck on"),
    ("waste", "the side of the line that goes; hatched in the drawing"),
    ("+ or -", "behind a figure: the true length is a little more, or less, than shown"),
    ("again", "a ticked mark that no longer reads as it did: look at it again, then tick it anew"),
    ("order", "o ticks a waiting step all the same; should its tenon differ, it says look again"),
    ("far", "v again, or escape, goes back to the bench at the step then in hand"),
    ("rolled", "f rolls the timber away, so that the face below comes up; d, or F, rolls it back"),
    ("rolled", "e shows the two ends; z the joint in hand, or the whole length; r goes back"),
    ("rolled", "figures run from the 0; the reversed one is in hand; what had no room is counted"),
    ("job", "g goes to a mark to look at again, else on with the timber, else where most waits"),
)

WAITS = "comes after other work, as a mortise is cut to the tenon that was really made"

CAUTION = (
    "benchmate checks arithmetic and sequence, not strength. Sizes, notches and pegs that carry "
    "load are for local code and a licensed engineer."
)


def help_sayings(
    glyphs: Glyphs, *, pane: str = STEPS, step: Iterable[Saying] = ()
) -> tuple[Saying, ...]:
    """The help, line by line: what the pane in hand does comes first, then the step's own words."""
    signs = (
        ("waits", f"{glyphs.waiting} in the list: {WAITS}"),
        (glyphs.hatch * 4, "in a drawing: the waste of the line or task in hand"),
        (glyphs.light_hatch * 4, "the rest of the same joint's waste"),
        (glyphs.dot * 4, "the waste of other joints on that face"),
        (glyphs.slant * 4, "a line of the same joint that slants"),
    )
    return (
        Saying(label="", text=pane),
        Saying(label="", text=" "),
        *_headed("Words of this step", terms_of(step)),
        *_headed("Keys", tuple(Saying(label=key.shown, text=key.help) for key in KEYS)),
        *_headed("Words on the screen", tuple(Saying(label=a, text=b) for a, b in WORDS + signs)),
        *_headed("Words of the trade", tuple(map(_told, TERMS))),
        Saying(label="", text=CAUTION, warning=True),
    )


def terms_of(sayings: Iterable[Saying]) -> tuple[Saying, ...]:
    """The trade terms that stand in some sayings, each in a sentence.

    Not those of a caution, which speaks of tools: a chainsaw's nose is no brace's.
    """
    return tuple(map(_told, terms_in(each.text for each in sayings if each.label != "care")))


def _told(term: Term) -> Saying:
    return Saying(label="", text=f"{term.word}: {term.meaning}.")


def explained(sayings: tuple[Saying, ...]) -> tuple[Saying, ...]:
    """A step in full, and under it its trade terms."""
    return (*sayings, Saying(label="", text=" "), *_headed("Words", terms_of(sayings)))


def _headed(heading: str, sayings: tuple[Saying, ...]) -> tuple[Saying, ...]:
    """Sayings under a heading and before a blank line; nothing for none."""
    if not sayings:
        return ()
    return (Saying(label="", text=heading, strong=True), *sayings, Saying(label="", text=" "))
