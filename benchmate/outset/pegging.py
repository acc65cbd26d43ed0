"""The pegs of a joint, where the framer wants any: two to a tenon, one to a brace."""

from fractions import Fraction

from benchmate.measure.length import ZERO, Length
from benchmate.outset.answers import Answers
from benchmate.outset.suggested import crowded, least_wood
from benchmate.outset.tables import Inline
from benchmate.outset.written import down_to


def pegs(a: Answers, wide: Length, relief: Length | None = None) -> Inline | None:
    """Two pegs, each a quarter of the tenon's width from an edge; none where none are wanted."""
    if not a.pegged:
        return None
    width = wide - (relief or ZERO)
    edge = down_to(Length(width.nm // 4), a.size(Fraction(1, 8), 2))
    return dict[str, str | int | None](
        count=2,
        size=a.text("peg"),
        from_shoulder=a.text("peg shoulder"),
        from_edge=a.say(edge),
        spacing=a.say(width - edge * 2),
        draw=a.text("draw"),
    )


def brace_pegs(a: Answers, *, in_wall: bool) -> Inline | None:
    """One peg about the middle of a brace's tenon.

    Where a tie's brace comes to the post beside a wall's, the wall brace's peg stops short of it.
    """
    if not a.pegged:
        return None
    deep = a.within("brace").first
    blind = in_wall and crowded(a)
    reach = a.length("brace set back") + a.length("brace thickness")
    return dict[str, str | int | None](
        count=1,
        size=a.text("brace peg"),
        from_shoulder=a.text("brace peg shoulder"),
        from_edge=a.say(down_to(Length(deep.nm * 4 // 7), a.grid)),
        draw=a.text("draw"),
        blind_depth=a.say(reach + least_wood(a)) if blind else None,
    )
