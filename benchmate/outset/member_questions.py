"""The questions about the members: their sections, and where the timbers that have a choice lie."""

from fractions import Fraction
from functools import partial

from benchmate.outset import refused, suggested
from benchmate.outset.answers import LAPPED, RIDGE, Answers
from benchmate.outset.plan_questions import COMMON, TO_START, size, word
from benchmate.outset.question import Group, Kind, Question


def _usual(inches: tuple[int, int], mm: tuple[int, int]) -> partial[str]:
    return partial(suggested.section, inches=inches, mm=mm)


def _floored(a: Answers) -> bool:
    return a.floored


def _braced(a: Answers) -> bool:
    return a.braced


def _roofed(a: Answers) -> bool:
    return a.roofed


def _ridged(a: Answers) -> bool:
    return a.roofed and a.word("roof") == RIDGE


def _lapped(a: Answers) -> bool:
    return a.word("ties") == LAPPED


def _tenoned(a: Answers) -> bool:
    return a.word("ties") != LAPPED


def _inner_usual(a: Answers) -> str:
    return a.say(a.size(Fraction(1, 2), 10))


def _deck(a: Answers) -> str:
    return a.say(a.size(Fraction(5, 4), 30))


def _square(a: Answers) -> bool:
    return a.square


MEMBERS = Group(
    "Sections, as you buy or saw them",
    (
        Question(
            id="post",
            label="Posts",
            kind=Kind.SECTION,
            suggest=_usual((8, 8), (200, 200)),
            about="Depth in from the outside of the wall by width along it.",
            refuse=refused.post,
            source=TO_START,
            shows="post-sw",
        ),
        Question(
            id="sill",
            label="Sills",
            kind=Kind.SECTION,
            suggest=_usual((8, 8), (200, 200)),
            about="Depth down from the top by width in from the outside.",
            refuse=refused.sill,
            source=TO_START,
            shows="sill-south",
        ),
        Question(
            id="plate",
            label="Plates",
            kind=Kind.SECTION,
            suggest=_usual((8, 8), (200, 200)),
            about="Depth down from the top by width in from the outside.",
            refuse=refused.plate,
            source=TO_START,
            shows="plate-south",
        ),
        Question(
            id="tie",
            label="Ties",
            kind=Kind.SECTION,
            suggest=_usual((8, 8), (200, 200)),
            about="Depth down from the top by width along the wall; no wider than the posts.",
            refuse=refused.tie,
            source=TO_START,
            shows="tie-1",
        ),
        Question(
            id="joist",
            label="Joists",
            kind=Kind.SECTION,
            suggest=_usual((6, 4), (150, 100)),
            about="Depth by width. What they span is the engineer's.",
            refuse=refused.joist,
            source=TO_START,
            asked=_floored,
            shows="joist-1-1",
        ),
        Question(
            id="brace",
            label="Braces",
            kind=Kind.SECTION,
            suggest=_usual((6, 4), (150, 100)),
            about="Depth in from the long edge by width.",
            refuse=refused.brace,
            source=TO_START,
            asked=_braced,
            shows="brace-sw",
        ),
        Question(
            id="rafter",
            label="Rafters",
            kind=Kind.SECTION,
            suggest=_usual((7, 5), (175, 125)),
            about="Depth square to the roof by width.",
            refuse=refused.rafter,
            source=TO_START,
            asked=_roofed,
            shows="rafter-1-south",
        ),
        Question(
            id="inner",
            label="Inner timber less by",
            kind=Kind.LENGTH,
            suggest=_inner_usual,
            about="How much smaller than its section the perfect timber inside a stick is, each "
            "way. It must lie inside the worst stick at every joint.",
            refuse=refused.inner,
            source="7-1/2 in an 8 x 8: published (a barn school's notes, 2011).",
            asked=_square,
            shows="post-sw",
        ),
    ),
)

PLACES = Group(
    "Heights, slopes and spacings",
    (
        Question(
            id="tie drop",
            label="Plate's underside to tie's top",
            kind=Kind.LENGTH,
            suggest=size(12, 300),
            about="How much of the posts stands above the ties, holding their tenons in.",
            source="A framer's rule asks at least 8\" over a wedged tie (published: a comment on "
            "a web handbook of framing); the rest is common practice, no source.",
            asked=_tenoned,
            refuse=refused.tie_drop,
            shows="tie-1",
        ),
        Question(
            id="let in",
            label="Ties come down over plates",
            kind=Kind.LENGTH,
            suggest=suggested.let_in,
            about="How far a tie's underside lies below the plate's top; half of it is cut from "
            "each.",
            source=COMMON,
            asked=_lapped,
            refuse=refused.let_in,
            shows="tie-1",
        ),
        Question(
            id="leg",
            label="Brace leg, to the face",
            kind=Kind.LENGTH,
            suggest=suggested.leg,
            about="From the corner to where the brace's long edge meets post, plate or tie.",
            source="36 inches was usual enough to have a rule of its own: published (framers' "
            "guild forum 23295).",
            asked=_braced,
            refuse=refused.leg,
            shows="brace-sw",
        ),
        Question(
            id="joist spacing",
            label="Joists at most apart",
            kind=Kind.LENGTH,
            suggest=size(30, 750),
            about="From one side to the same side of the next; they fill each bay evenly.",
            source=TO_START,
            asked=_floored,
            refuse=refused.joist_spacing,
            shows="joist-1-1",
        ),
        Question(
            id="joist let-in",
            label="Joists let into the sills",
            kind=Kind.LENGTH,
            suggest=size(2, 50),
            about="How far down from the sill's top they bear.",
            source=COMMON,
            asked=_floored,
            refuse=refused.joist_let_in,
            shows="joist-1-1",
        ),
        Question(
            id="bearing",
            label="Joists bear on the sills",
            kind=Kind.LENGTH,
            suggest=size(2, 50),
            about="How far their ends go in. Pockets weaken a sill: for the engineer.",
            source="2\" of bearing: published (a framers' forum, 2016).",
            asked=_floored,
            refuse=refused.bearing,
            shows="joist-1-1",
        ),
        Question(
            id="deck",
            label="Deck on the joists",
            kind=Kind.LENGTH,
            suggest=_deck,
            about="The boards' thickness, for the level of the floor top.",
            source=COMMON,
            asked=_floored,
            may_be_zero=True,
            shows="joist-1-1",
        ),
        Question(
            id="pitch",
            label="Roof pitch, in 12 of run",
            kind=Kind.PITCH,
            suggest=word("9"),
            about="How much the roof rises in 12 of run: 9, 8-1/2 or 9/12.",
            source=TO_START,
            asked=_roofed,
            refuse=refused.pitch,
            shows="rafter-1-south",
        ),
        Question(
            id="eaves",
            label="Tails past the plates",
            kind=Kind.LENGTH,
            suggest=size(12, 300),
            about="Level, from the plate's outside to the end of the top edge; cut plumb.",
            source=TO_START,
            asked=_roofed,
            refuse=refused.eaves,
            shows="rafter-1-south",
        ),
        Question(
            id="rafter spacing",
            label="Rafters at most apart",
            kind=Kind.LENGTH,
            suggest=size(36, 900),
            about="From one side to the same side of the next; one pair at every bent.",
            source=TO_START,
            asked=_roofed,
            refuse=refused.rafter_spacing,
            shows="rafter-1-south",
        ),
        Question(
            id="ridge",
            label="Ridge",
            kind=Kind.SECTION,
            suggest=suggested.ridge,
            about="Depth by width; at least as deep as the rafters' plumb cut. What carries it is "
            "for the engineer.",
            source=COMMON,
            asked=_ridged,
            refuse=refused.ridge,
            shows="ridge",
        ),
        Question(
            id="rafter height",
            label="Rafter's top above the plate",
            kind=Kind.LENGTH,
            suggest=suggested.rafter_height,
            about="Plumb, at the plate's outside: it settles how deep the rafter is notched.",
            source="A notch takes a third of the rafter: published (a book on oak framing, p. 65).",
            asked=_roofed,
            refuse=refused.rafter_height,
            shows="rafter-1-south",
        ),
    ),
)
