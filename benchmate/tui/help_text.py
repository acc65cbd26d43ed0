"""What the help says: the keys from their table, and the words the screen uses."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.keys import KEYS
from benchmate.tui.words import Saying

if TYPE_CHECKING:
    from benchmate.tui.glyphs import Glyphs

WORDS = (
    ("arris", "the shared edge of the two reference faces; everything is measured from it"),
    ("from", "what to hook on or measure from, and which way to go from there"),
    ("to", "where a line that slants comes out, on the far edge or the end grain"),
    ("square", "the arm to strike along, and what to set on both, held to the line's own edge"),
    ("on", "the faces and end grain the line is struck on"),
    ("waste", "the side of the line that goes; hatched in the drawing"),
    ("relief", "a narrow edge of a tenon cut back so that it is hidden or clears"),
    ("nose", "the tip of a brace's end, cut square to the timber it enters"),
    ("draw", "how much nearer the shoulder a peg's hole in the tenon lies, so that it pulls up"),
    ("relish", "the wood left between a mortise and the end of its timber"),
    ("+ or -", "behind a figure: the true length is a little more, or less, than shown"),
    ("again", "a ticked mark that no longer reads as it did: look at it again, then tick it anew"),
    ("order", "o ticks a waiting step all the same; should its tenon differ, it says look again"),
    ("far", "v again, or escape, goes back to the bench at the step then in hand"),
    ("rolled", "f rolls the timber away, so that the face below comes up; d, or F, rolls it back"),
    ("rolled", "e shows the two ends; z the joint in hand, or the whole length; r goes back"),
    ("rolled", "figures run from the 0; the reversed one is in hand; what had no room is counted"),
    ("job", "g goes to a mark to look at again, else on with the timber, else where most waits"),
)

WAITS = "comes after work on another timber, as a mortise is cut to the tenon that was really made"

CAUTION = (
    "benchmate checks arithmetic and sequence, not strength. Sizes, notches and pegs that carry "
    "load are for local code and a licensed engineer."
)


def help_sayings(glyphs: Glyphs) -> tuple[Saying, ...]:
    """The help, line by line."""
    signs = (
        ("waits", f"{glyphs.waiting} in the list: {WAITS}"),
        (glyphs.hatch * 4, "in a drawing: the waste of the line or task in hand"),
        (glyphs.light_hatch * 4, "the rest of the same joint's waste"),
        (glyphs.dot * 4, "the waste of other joints on that face"),
        (glyphs.slant * 4, "a line of the same joint that slants"),
    )
    return (
        Saying(label="", text="Keys", strong=True),
        *(Saying(label=key.shown, text=key.help) for key in KEYS),
        Saying(label="", text=" "),
        Saying(label="", text="Words", strong=True),
        *(Saying(label=word, text=meaning) for word, meaning in (*WORDS, *signs)),
        Saying(label="", text=" "),
        Saying(label="", text=CAUTION, warning=True),
    )
