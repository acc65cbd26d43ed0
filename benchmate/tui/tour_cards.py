"""The five cards shown at the first start."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Card:
    """A card: what it is about, and two short paragraphs."""

    title: str
    lead: str
    more: str


CARDS: tuple[Card, ...] = (
    Card(
        title="One step at a time",
        lead=(
            "benchmate goes with you round a timber. On the left are its steps, on the right the "
            "one in hand: its figure big, then where to hook on and which way to go, on which "
            "faces the line is struck, and on which side the waste lies."
        ),
        more="The drawing shows the face from outside. What is hatched goes.",
    ),
    Card(
        title="Tick and go on",
        lead=(
            "space ticks the step and goes on to the next. Your tick is on the disk before you "
            "see it."
        ),
        more=(
            "u takes the last thing back. Arrows move. g goes to the next best job in the whole "
            "frame, from any timber."
        ),
    ),
    Card(
        title="The real stick",
        lead=(
            "No stick is quite its size. At a measuring step press m and type what it measures: "
            "every figure that hangs on it follows, and what of that you have already marked says "
            "look again."
        ),
        more="Cut tenons first. m on a tenon as cut resizes its mortise.",
    ),
    Card(
        title="Ask it anything",
        lead=(
            "/ looks up a timber, a mark, a length or a level: type words in any order. b comes "
            "back."
        ),
        more=(
            "f turns the timber to its next face, w shows where it stands in the frame, enter "
            "reads a step in full, and ? explains the keys and the words."
        ),
    ),
    Card(
        title="What it leaves to you",
        lead=(
            "benchmate checks arithmetic and sequence, not strength. Sizes, spans, notches and "
            "pegs that carry load are for local code and a licensed engineer."
        ),
        more="The demos open as your own copies, so try what you like. q leaves at any time.",
    ),
)
