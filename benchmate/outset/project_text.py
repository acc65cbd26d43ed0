"""The text of a whole project file from a framer's answers."""

from collections.abc import Iterator

from benchmate.outset.answers import Answers
from benchmate.outset.braces import braces
from benchmate.outset.name_tables import head, lengths, levels, lines, sections, shop
from benchmate.outset.spans import floor, roof
from benchmate.outset.ties import ties
from benchmate.outset.walls import plates, posts, sills

PARTS = (
    head,
    shop,
    lines,
    lengths,
    levels,
    sections,
    sills,
    posts,
    plates,
    ties,
    braces,
    floor,
    roof,
)
"""What a project file is made of, in order."""


def frame_text(answers: Answers) -> str:
    """The project file of the frame that the answers set out."""
    return "\n".join(_lines(answers)).rstrip() + "\n"


def _lines(answers: Answers) -> Iterator[str]:
    for part in PARTS:
        yield from part(answers)
