"""The steps of pegs that every family shares: boring, pricking through, and the draw in words.

Order: bore the timber that receives the tenon first; fit the tenon; prick the centres through,
turning the bit backwards; take the joint apart; shift the marks towards the shoulder; bore the
tenon square (trade notes 3: FHB-peg, TFG-when).
"""

from benchmate.frame.pegs import DEPTH_LINE, Holes, Pegs, in_diameters
from benchmate.frame.practice import DRILL
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task

PEG_LINE = "peg-line"
"""The line that the centres lie on."""

BORE, PRICK = "bore-pegs", "prick-pegs"
"""The tasks after which the holes are there, and after which their centres are marked."""

LIFT_THE_BIT = "Keep the bit square to the face, and lift it as its lead screw breaks out."
"""Square, and lifting: a published boring article and a framers' forum (trade notes 3: FHB-peg,
TFG-when)."""

FINGERS = "Keep fingers out of the joint while it is driven up and taken apart."
"""From memory."""

NOT_YET = "Do not bore at these marks: they are shifted towards the shoulder first. "

UNDRAWN = "No draw: the holes lie where they were pricked."

ENGINEER = "whether that is enough, the engineer decides"
"""No distance is a law here: published ones differ by half (trade notes 3)."""


def peg_id(place: int) -> str:
    """The id of the line through one centre, the first at place 0: `peg-1`."""
    return f"peg-{place + 1}"


def peg_title(pegs: Pegs, place: int) -> str:
    """What the line through one centre is called."""
    return "Peg centre" if pegs.count == 1 else f"Peg {place + 1} centre"


def holes_words(pegs: Pegs) -> str:
    """The holes in words: `peg hole`, `2 peg holes`."""
    return "peg hole" if pegs.count == 1 else f"{pegs.count} peg holes"


def wood_left(wood: Length, pegs: Pegs, to: str, tape: Tape) -> tuple[Beside, Beside]:
    """The wood from a hole's centre to an end or edge, in diameters too, and from its rim."""
    return (
        Beside(wood, f"from the centre to {to}, {_of_the_hole(wood, pegs, tape)}"),
        Beside(wood - pegs.radius, f"of wood from the hole to {to}"),
    )


def relish_beyond(wood: Length, pegs: Pegs, tape: Tape) -> tuple[Beside, Beside]:
    """The wood from a tenon's holes to its end, told on the timber that receives it.

    With a draw the tenon's own holes lie nearer its shoulder than those this is told beside.
    """
    if not pegs.draw:
        return wood_left(wood, pegs, "the tenon's end", tape)
    drawn = f"drawn {tape.text(pegs.draw)} nearer the shoulder"
    return (
        Beside(
            wood,
            f"from the tenon's own hole, {drawn}, to its end, {_of_the_hole(wood, pegs, tape)}",
        ),
        Beside(wood - pegs.radius, "of wood from that hole to the tenon's end"),
    )


def _of_the_hole(wood: Length, pegs: Pegs, tape: Tape) -> str:
    return f"{in_diameters(wood, pegs.size)} of the {tape.text(pegs.size)} hole"


def towards_shoulder(pegs: Pegs, end: str, tape: Tape) -> str:
    """The caution for the way of the draw at a timber's `end`; empty where there is none."""
    if not pegs.draw:
        return ""
    return (
        f"Draw {tape.text(pegs.draw)} towards the shoulder, away from the {end}: "
        "the other way, the peg holds the joint open. "
    )


def bore_received(holes: Holes, mate: str) -> Task:
    """Boring the timber that receives the tenon of `mate`, before that goes in."""
    face = holes.stick.pose.words(holes.face)
    why = f"Before {mate} goes in: its own holes are pricked through these."
    if holes.stop is None:
        why = f"Through both cheeks. {why}"
    return Task(
        id=BORE,
        stage=Stage.FINISH,
        title=f"Bore the {holes_words(holes.pegs)} from the {face}",
        faces=(holes.face,),
        readings=(_bit(holes.pegs),),
        beside=_no_deeper(holes.pegs),
        why=f"{why} Not long before the raising: green holes close up.",
        caution=f"{LIFT_THE_BIT} {DRILL}" if holes.stop is None else DRILL,
    )


def prick(holes: Holes, end: Face, through: str, *, rakes: bool = False) -> Task:
    """Marking the tenon's centres from the fitted joint; `through` names what is bored already.

    Where the timber `rakes` to the other, its shoulder slants: they lie square to that.
    """
    words = holes.stick.pose.words
    return Task(
        id=PRICK,
        stage=Stage.FIT,
        title=f"Drive the joint up tight, prick the {holes_words(holes.pegs)} through",
        faces=(holes.face,),
        readings=(
            Reading(
                value=holes.pegs.from_shoulder,
                hook=f"{words(end)} shoulder line",
                way=(
                    f"{'square to it, ' if rakes else ''}towards the {words(end)}, where each "
                    "pricked centre should lie"
                ),
            ),
        ),
        why=(
            f"From the {words(holes.face)}: turn the bit backwards in each hole of {through} until "
            "it marks the tenon, then take the joint apart."
        ),
        caution=f"{NOT_YET if holes.pegs.draw else ''}{FINGERS}",
    )


def bore_tenon(holes: Holes, draw: str) -> Task:
    """Boring the tenon at the shifted marks; `draw` is the caution for the way they shift."""
    pegs, words = holes.pegs, holes.stick.pose.words
    at = "at the marks as shifted" if pegs.draw else "at the pricked marks"
    return Task(
        id=BORE,
        stage=Stage.FINISH,
        title=f"Bore the {holes_words(pegs)} in the tenon",
        faces=(holes.face,),
        readings=(_bit(pegs),),
        why=f"Square through the tenon from the {words(holes.face)}, {at}.",
        caution=f"{draw}{LIFT_THE_BIT} {DRILL}",
    )


def depth_line(holes: Holes, depth: Length, beside: tuple[Beside, ...]) -> Line:
    """How deep blind holes go: written beside them. Raises ValueError for holes right through."""
    if holes.stop is None:
        raise ValueError("holes right through have no depth")
    words = holes.stick.pose.words
    return Line(
        id=DEPTH_LINE,
        title="Peg hole depth",
        axis=holes.into,
        at=holes.stop,
        faces=(holes.face,),
        readings=(
            Reading(
                value=depth,
                hook=words(holes.face),
                way=f"straight in towards the {words(holes.face.opposite)}, no deeper",
            ),
        ),
        beside=beside,
        why="The holes stop in the wood beyond the tenon. Tape the depth on the bit.",
        caution="Count from the bit's edge, not from its lead screw.",
    )


def _bit(pegs: Pegs) -> Reading:
    return Reading(value=pegs.size, hook="near side of the bit", way="across it")


def _no_deeper(pegs: Pegs) -> tuple[Beside, ...]:
    return () if pegs.blind_depth is None else (Beside(pegs.blind_depth, "deep, not through"),)
