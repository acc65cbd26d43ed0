"""Trade terms in a sentence each, and which of them stand in a text.

Meanings are common practice in the trade, no source; where the program means something narrower by
a word, that is said.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable


@dataclass(frozen=True, slots=True)
class Term:
    """A word of the trade, what it means, and other words that mean the same."""

    word: str
    meaning: str
    others: tuple[str, ...] = ()


TERMS: tuple[Term, ...] = (
    Term(
        "abutment",
        "the face at a notch's end that takes the thrust of a raking timber",
        ("abutments",),
    ),
    Term("arris", "an edge of a timber, where two faces meet", ("arrises",)),
    Term(
        "as cut",
        "the size a finished part really came out at; its mate is laid out to that",
        ("as-cut",),
    ),
    Term("back-check", "reading every mark again from the other end, before anything is cut"),
    Term(
        "bevel",
        "a sliding bevel: a blade held at any angle to its stock, to carry an angle",
        ("bevels",),
    ),
    Term(
        "birdsmouth", "the notch of a rafter that sits on the plate: a level seat and a plumb cut"
    ),
    Term("blade", "the long arm of a framing square"),
    Term("brace", "a raking timber across a corner, which keeps a frame from leaning", ("braces",)),
    Term("bridle", "a joint of a fork and a tongue, open at the end"),
    Term("chamfer", "an arris taken off at a slope", ("chamfers",)),
    Term("cheek", "a broad face of a tenon", ("cheeks",)),
    Term("cog", "a block left standing in a notch, over which the other timber is slotted"),
    Term("crown", "the side towards which a stick is bowed; it goes up, or outwards on a post"),
    Term(
        "dovetail",
        "an end that widens towards its tip, so that it cannot be drawn out",
        (
            "dovetails",
            "dovetailed",
        ),
    ),
    Term(
        "draw",
        "how much nearer the shoulder a peg's hole in the tenon lies, so that it pulls up",
    ),
    Term("end grain", "the sawn end of a timber, seen from outside"),
    Term("flank", "the slanting side of a dovetail", ("flanks",)),
    Term("girt", "a timber between posts, at half height, along a wall", ("girts",)),
    Term("guide block", "a block clamped on to stop a tool where a chamfer ends"),
    Term(
        "haunch",
        "the part of a tenon that slopes back to its shoulder, for strength at its root",
        ("haunches",),
    ),
    Term("heel", "the end of a brace or rafter in the corner, away from its nose"),
    Term(
        "housing",
        "the recess that takes the whole end of a timber, shoulder and all",
        (
            "housed",
            "housings",
        ),
    ),
    Term("joggle", "a notch that the foot or head of a strut or rafter is let into"),
    Term("joist", "one of a row of timbers that carry a floor", ("joists",)),
    Term("kerf", "the slot a saw leaves; it belongs in the waste", ("kerfs",)),
    Term(
        "king post",
        "the upright in the middle of a roof truss, which hangs rather than stands",
        (
            "kingpost",
            "king posts",
        ),
    ),
    Term(
        "knife",
        "to score a line across the grain with a knife, so that the edge stays crisp",
        (
            "knifed",
            "knifes",
        ),
    ),
    Term("lap", "two timbers halved into one another where they cross or meet", ("lapped",)),
    Term("level cut", "a cut that lies level once the rafter is up"),
    Term("mill rule", "each joint is laid out to what its stick really measures there"),
    Term("mortise", "the hole a tenon goes into", ("mortises",)),
    Term("nose", "the tip of a brace's end, cut square to the timber it enters"),
    Term(
        "notch",
        "a recess across a timber, open at its sides",
        (
            "notches",
            "notched",
        ),
    ),
    Term("overall", "from end to end, tenons and laps included; not shoulder to shoulder"),
    Term("pare", "to take off the last of the waste with a chisel pushed by hand", ("pared",)),
    Term("peg", "a round pin of hardwood driven through a mortise and its tenon", ("pegs",)),
    Term("plate", "the timber along the top of a wall, on which rafters or ties sit", ("plates",)),
    Term("plumb cut", "a cut that stands upright once the rafter is up"),
    Term("post", "an upright timber", ("posts",)),
    Term("principal", "the heavy rafter of a truss", ("principals",)),
    Term("purlin", "a level timber in the slope of a roof, from truss to truss", ("purlins",)),
    Term("rafter", "a timber in the slope of a roof, from plate to ridge", ("rafters",)),
    Term(
        "reference arris",
        "the edge that the two reference faces share; everything is measured from it",
    ),
    Term("reference end", "the end from which distances along a timber run"),
    Term(
        "reference face",
        "one of the two faces that everything is measured from",
        ("reference faces",),
    ),
    Term(
        "relief", "a narrow edge of a tenon cut back so that it is hidden or clears", ("reliefs",)
    ),
    Term("relish", "the wood left between a mortise or a peg and the end of its timber"),
    Term("scarf", "a joint that makes one long timber of two sticks, end to end", ("scarfs",)),
    Term("scribed", "marked by hand from the other timber, so no figures are given"),
    Term("seat", "the face that a brace or a rafter bears on", ("seats",)),
    Term("set-back", "from the reference face to the near cheek of a tenon"),
    Term(
        "shoulder", "the face at the root of a tenon that bears on the other timber", ("shoulders",)
    ),
    Term("shoulder to shoulder", "a timber's length between what it bears on, without its tenons"),
    Term("sill", "the lowest timber of a wall, on which posts stand", ("sills",)),
    Term("slot", "a narrow notch that goes over a cog", ("slots",)),
    Term("soffit tenon", "a tenon along the underside of a joist, with a haunch above it"),
    Term("sole", "the floor of a notch that a raking timber stands on"),
    Term("square rule", "a smaller perfect timber is laid out inside each stick, along its arris"),
    Term("squint", "an end cut at a slope, so that a scarf cannot slide apart sideways"),
    Term("strut", "a raking timber in a truss that takes thrust", ("struts",)),
    Term("stub", "a short tenon that holds a foot in its place", ("stub tenon",)),
    Term("tail", "the end of a rafter past its seat, or the wide end of a dovetail", ("tails",)),
    Term("tenon", "the tongue on a timber's end that goes into a mortise", ("tenons",)),
    Term("tie", "the timber across a building that keeps its walls from spreading", ("ties",)),
    Term("tongue", "the short arm of a framing square; of a bridle, what goes between the fork"),
    Term("tusk tenon", "a tenon low in a joist with a bearing step beneath and a haunch above"),
    Term("wane", "bark or a missing corner along a stick"),
    Term("waste", "the side of a line that goes"),
    Term(
        "wedge",
        "what is driven in beside a half-dovetail to hold it up against its slope",
        ("wedges",),
    ),
    Term("wind", "twist along a stick: its two ends do not lie in one plane"),
)
"""In the order of the alphabet."""


def terms_in(texts: Iterable[str]) -> tuple[Term, ...]:
    """The terms that stand in some texts, in the order of the alphabet.

    Of two that begin alike the longer is meant: `shoulder to shoulder` is no shoulder.
    """
    found = {each.lower() for text in texts for each in _pattern().findall(text)}
    return tuple(term for term in TERMS if found & {term.word, *term.others})


@cache
def _pattern() -> re.Pattern[str]:
    """All the words that stand for terms, the longest first."""
    words = sorted((each for term in TERMS for each in (term.word, *term.others)), key=len)
    return re.compile(rf"(?i)(?<![\w-])(?:{'|'.join(map(re.escape, reversed(words)))})(?![\w-])")
