"""What a question suggests: the trade's usual sizes, worked out from what is answered before it.

Nothing here is a law. Every function gives a size that leaves the wood a joint needs beside its
neighbours as this frame has them.

How a post is shared out: the foot and head tenons and the wall braces' tenons lie near its outside,
from the set-back in; what comes in from the inside, ties and their braces, stops short of them
where they come at one height. Braces from both sides of a middle post share its width.
"""

from fractions import Fraction

from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.outset.answers import BOTH, HALF_LAPPED, Answers
from benchmate.outset.written import aslant, down_to, nearest, up_to

ROOT_TWO = Fraction(14143, 10000)
"""The diagonal of a square to its side, rounded up."""


def least_wood(a: Answers) -> Length:
    """The wood kept between two joints: the framer's own, or the shop's usual."""
    own = a.shop("least_wood")
    return a.size(Fraction(1, 2), 12) if own is None else own


def clearance(a: Answers) -> Length:
    """How much deeper a mortise is than its tenon: the framer's own, or the shop's usual."""
    own = a.shop("bottom_clearance")
    return a.size(Fraction(1, 8), 3) if own is None else own


def section(a: Answers, inches: tuple[int, int], mm: tuple[int, int]) -> str:
    """A usual section."""
    first, second = (a.size(*pair) for pair in zip(inches, mm, strict=True))
    return a.say_section(Section(first, second))


def ridge(a: Answers) -> str:
    """A ridge as deep as the rafters' plumb cut, and half an inch more (common practice)."""
    wide = a.size(4, 100)
    drop = Length(int(wide.nm * a.slope / 2))
    rafter = a.section("rafter").first
    deep = aslant(rafter, a.slope) + drop + a.grid
    return a.say_section(Section(up_to(deep, a.size(1, 10)), wide))


def thickness(a: Answers) -> str:
    """A quarter of the post, and no more than half of what any timber has beside the set-back."""
    post = a.within("post")
    quarter = Fraction(min(post.first, post.second).nm, 4)
    most = down_to(Length((_narrowest(a) - a.grid).nm // 2), a.grid)
    return a.say(max(min(nearest(quarter, a.grid), most), a.grid))


def _narrowest(a: Answers) -> Length:
    """The least side that a tenon's set-back and thickness have to fit in."""
    sides = [a.within("sill").first, *_both(a.within("post")), a.within("tie").second]
    return min(*sides, a.within("sill").second, a.within("plate").second)


def _both(section: Section) -> tuple[Length, Length]:
    return section.first, section.second


def relief(a: Answers) -> str:
    """A quarter of the post's width."""
    return a.say(nearest(Fraction(a.within("post").second.nm, 4), a.grid))


def taken(a: Answers) -> Length:
    """From the outside of a post to the far cheek of its foot and head tenons."""
    return a.length("set back") + a.length("thickness")


def foot(a: Answers) -> str:
    """A 2" stub, or less where a half-lapped corner leaves less under it."""
    sill = a.within("sill").first
    if a.word("corners") == HALF_LAPPED:
        sill = Length(sill.nm // 2)
    room = sill - clearance(a) - least_wood(a)
    return a.say(_at_least(a, min(a.size(2, 50), room)))


def corner(a: Answers) -> str:
    """At most 3", and short of the mortise of the corner post's foot."""
    sill = a.within("sill").second
    room = sill - taken(a) - clearance(a) - least_wood(a)
    return a.say(_at_least(a, min(a.size(3, 75), room)))


def head(a: Answers) -> str:
    """About 4", and no more than half the plate."""
    half = Length(a.within("plate").first.nm // 2)
    return a.say(_at_least(a, min(a.size(4, 100), half)))


def tie_tenon(a: Answers) -> str:
    """About 4", no more than half the post, and short of a wall brace at the same height."""
    post, inwards = a.within("post").first, a.length("tie housing") + clearance(a)
    room = Length(post.nm // 2) - a.length("tie housing")
    if a.wall_braced and _tie_beside_brace(a):
        room = min(room, post - _brace_taken(a) - least_wood(a) - inwards)
    return a.say(_at_least(a, min(a.size(4, 100), room)))


def brace_thickness(a: Answers) -> str:
    """1-1/2", and no more than half the brace."""
    half = Length(a.within("brace").second.nm // 2)
    return a.say(_at_least(a, min(a.size(Fraction(3, 2), 40), half)))


def brace_set_back(a: Answers) -> str:
    """1-1/2", or what the brace has beside its tenon."""
    beside = a.within("brace").second - a.length("brace thickness")
    return a.say(_at_least(a, min(a.size(Fraction(3, 2), 40), beside)))


def brace_tenon(a: Answers) -> str:
    """About 3", so that it is no longer than the brace has wood for, and short of its neighbours.

    Two braces in one post share its width; a post's tie brace stays inside its wall braces.
    """
    post, inwards = a.within("post"), a.length("brace housing") + clearance(a)
    rooms = [a.size(3, 75), a.within("brace").first - a.length("brace housing")]
    if a.wall_braced:
        shared = Length((post.second - least_wood(a)).nm // 2)
        rooms += [shared - inwards, Length(a.within("plate").first.nm // 2) - inwards]
    if a.tie_braced:
        rooms += [Length(a.within("tie").first.nm // 2) - inwards]
        rooms += [Length(post.first.nm // 2) - inwards]
    if a.word("braces") == BOTH and _braces_side_by_side(a):
        rooms += [post.first - _brace_taken(a) - least_wood(a) - inwards]
    return a.say(_at_least(a, min(rooms)))


def _brace_taken(a: Answers) -> Length:
    """From the outside of a post to what a wall brace's tenon and its pegs leave alone."""
    beyond = least_wood(a) if a.pegged and crowded(a) else Length(0)
    return a.length("brace set back") + a.length("brace thickness") + beyond


def crowded(a: Answers) -> bool:
    """Whether a tie or its brace comes into a post at the height of a wall brace's foot."""
    if not a.wall_braced:
        return False
    return (not a.lapped and _tie_beside_brace(a)) or (a.tie_braced and _braces_side_by_side(a))


def foot_high(a: Answers) -> Length:
    """How high the mortise of a brace's foot is on a post, its ease included."""
    deep = Length(int(a.within("brace").first.nm * ROOT_TWO) + 1)
    return deep + a.size(Fraction(1, 4), 7) + least_wood(a)


def under_plate(a: Answers) -> tuple[Length, Length]:
    """How far under the plates the top and the underside of the ties lie."""
    tie = a.within("tie").first
    over = a.within("plate").first + tie
    top = a.length("let in") - over if a.lapped else a.length("tie drop")
    return top, top + tie


def _tie_beside_brace(a: Answers) -> bool:
    """Whether a tie enters a post at the height of a wall brace's foot."""
    low = a.length("leg")
    top, underside = under_plate(a)
    return top < low + least_wood(a) and underside > low - foot_high(a)


def _braces_side_by_side(a: Answers) -> bool:
    """Whether a tie brace enters a post at the height of a wall brace's foot."""
    underside = under_plate(a)[1]
    return abs(underside) < foot_high(a)


def let_in(a: Answers) -> str:
    """2", or a third of a shallower plate or tie."""
    third = Length(min(a.within("plate").first, a.within("tie").first).nm // 3)
    return a.say(_at_least(a, min(a.size(2, 50), third)))


def leg(a: Answers) -> str:
    """36", or what a shorter post, bay or tie leaves for it, in whole inches."""
    room = min(room for _, room in leg_rooms(a)) - least_wood(a)
    return a.say(max(min(a.size(36, 900), down_to(room, a.size(1, 10))), a.size(1, 10)))


def leg_rooms(a: Answers) -> list[tuple[str, Length]]:
    """What the legs of the braces share or stand on, and how much of it there is for one."""
    rooms = []
    if a.wall_braced:
        half = Length((a.clear - least_wood(a)).nm // 2)
        rooms += [("the post", a.length("post height")), ("half of the clear bay", half)]
    if a.tie_braced:
        half = Length((a.across - least_wood(a)).nm // 2)
        under = a.length("post height") - under_plate(a)[1]
        rooms += [("the post", under), ("half of the clear tie", half)]
    return rooms


def rafter_height(a: Answers) -> str:
    """Two thirds of the rafter as drawn over its seat, more where that would run past the plate."""
    deep, slope = a.section("rafter").first, a.slope
    plumb = aslant(deep, slope)
    third = Length(-(-2 * plumb.nm // 3))
    short = plumb - Length(int(a.within("plate").second.nm * slope * Fraction(3, 4)))
    return a.say(up_to(max(third, short) + a.graduation, a.size(Fraction(1, 8), 2)))


def peg(a: Answers) -> str:
    """1", or half of the shorter tenon of post heads and ties."""
    return a.say(min(a.size(1, 25), _middle(a, _pegged_tenon(a))))


def peg_shoulder(a: Answers) -> str:
    """1-1/2", or the middle of the shorter tenon of post heads and ties.

    Nearer where the pegs of a tie would come out in the housing of a wall brace.
    """
    found = min(a.size(Fraction(3, 2), 40), _middle(a, _pegged_tenon(a)))
    if a.wall_braced and not a.lapped and _tie_beside_brace(a):
        beside = a.within("brace").second + least_wood(a) + a.length("peg")
        room = a.within("post").first - a.length("tie housing") - beside
        found = max(
            min(found, down_to(room, a.size(Fraction(1, 8), 1))), _middle(a, a.length("peg"))
        )
    return a.say(found)


def brace_peg(a: Answers) -> str:
    """3/4", or half of a shorter tenon."""
    return a.say(min(a.size(Fraction(3, 4), 19), _middle(a, a.length("brace tenon"))))


def brace_peg_shoulder(a: Answers) -> str:
    """1-1/2", or the middle of a shorter tenon."""
    return a.say(min(a.size(Fraction(3, 2), 40), _middle(a, a.length("brace tenon"))))


def _pegged_tenon(a: Answers) -> Length:
    return a.length("head") if a.lapped else min(a.length("head"), a.length("tie tenon"))


def _middle(a: Answers, tenon: Length) -> Length:
    return down_to(Length(tenon.nm // 2), a.size(Fraction(1, 8), 1))


def _at_least(a: Answers, room: Length) -> Length:
    """So much room in round sizes; where there is none, the least there is, which is then told."""
    return max(down_to(room, a.grid), a.grid)
