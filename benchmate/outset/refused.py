"""Driving dimensions that cannot be: each told at its question, with what to do about it."""

from fractions import Fraction
from math import ceil

from benchmate.measure.length import ZERO, Length
from benchmate.model.words import LONGEST_NAME, check_text
from benchmate.outset.answers import Answers
from benchmate.outset.question import Cannot
from benchmate.outset.scarfing import cannot_scarf_plates, cannot_scarf_sills
from benchmate.outset.suggested import foot_high, least_wood, leg_rooms, under_plate
from benchmate.outset.written import aslant

TENONED_INTO = ("sill", "post", "plate", "tie")
"""The sections that take tenons."""

MOST_BAYS = 12
"""Bays in one frame: more is a slip of the key."""

LEAST_SECTION = (3, 75)
"""The least side of a timber that takes tenons, in inches and in millimetres (no source)."""


def name(a: Answers) -> Cannot | None:
    """A name that a project file does not hold."""
    try:
        check_text(a.word("name"), longest=LONGEST_NAME)
    except ValueError as error:
        return Cannot(f"the name {error}", "write a name of a word or two")
    return None


def species(a: Answers) -> Cannot | None:
    """A species that a project file does not hold; none at all is fine."""
    try:
        check_text(a.word("species") or "-", longest=LONGEST_NAME)
    except ValueError as error:
        return Cannot(f"the species {error}", "write its name, or leave it empty")
    return None


def count_of_bays(a: Answers) -> Cannot | None:
    """No bay, or more than anybody frames."""
    if 1 <= a.count("bays") <= MOST_BAYS:
        return None
    return Cannot(f"{a.count('bays')} bays cannot be", f"write 1 to {MOST_BAYS}")


def width(a: Answers) -> Cannot | None:
    """A width with no whole half: the peak lies on the centre line."""
    if a.length("width").nm % 2:
        return Cannot(
            "half of this width is no length of a tape", "write a width in whole thirty-seconds"
        )
    return None


def side(a: Answers, section: str) -> Cannot | None:
    """A timber too thin to take a tenon."""
    least = a.size(*LEAST_SECTION)
    if min(a.section(section).first, a.section(section).second) >= least:
        return None
    return Cannot(f"a side under {a.say(least)} leaves no room for joints", "take a larger section")


def post(a: Answers) -> Cannot | None:
    """Posts that leave no bay between them, or no floor between the walls."""
    found = side(a, "post")
    drawn = a.section("post")
    least = _least_bay(a)
    if found:
        return found
    if a.bay < drawn.second + least:
        return Cannot(
            f"{a.count('bays')} bays in {a.text('length')} leave posts "
            f"{a.say(Length(max(a.bay.nm - drawn.second.nm, 0)))} apart, under {a.say(least)}",
            "make the frame longer, or the bays fewer",
        )
    if a.length("width") < drawn.first + drawn.first + least:
        return Cannot(
            f"the walls would be under {a.say(least)} apart inside", "make the frame wider"
        )
    return None


def _least_bay(a: Answers) -> Length:
    return a.size(12, 300)


def sill(a: Answers) -> Cannot | None:
    """A sill narrower than its posts."""
    return side(a, "sill") or _no_wider(a, "post", "sill", of=("first", "second"))


def plate(a: Answers) -> Cannot | None:
    """A plate that its posts stand out past."""
    return side(a, "plate") or _no_wider(a, "post", "plate", of=("first", "second"))


def tie(a: Answers) -> Cannot | None:
    """A tie wider than the posts it is tenoned into."""
    return side(a, "tie") or _no_wider(a, "tie", "post", of=("second", "second"))


def brace(a: Answers) -> Cannot | None:
    """A brace wider than what it is tenoned into."""
    found = _least(a, "brace", a.size(2, 50)) or _no_wider(
        a, "brace", "post", of=("second", "second")
    )
    found = found or _no_wider(a, "brace", "post", of=("second", "first"))
    if not found and a.wall_braced:
        found = _no_wider(a, "brace", "plate", of=("second", "second"))
    if not found and a.tie_braced:
        found = _no_wider(a, "brace", "tie", of=("second", "second"))
    return found


def joist(a: Answers) -> Cannot | None:
    """A joist too slight to notch."""
    return _least(a, "joist", a.size(2, 50))


def rafter(a: Answers) -> Cannot | None:
    """A rafter without two inches of wood left over its seat (US Navy Builder manual, NAV-63)."""
    if a.section("rafter").first >= a.size(Fraction(7, 2), 85):
        return _least(a, "rafter", a.size(1, 25))
    return Cannot(
        f"a rafter {a.say(a.section('rafter').first)} deep has not {a.say(a.size(2, 51))} of wood "
        "over its seat",
        "take a deeper one",
    )


def ridge(a: Answers) -> Cannot | None:
    """A ridge that the rafters' plumb cuts hang below, or one longer than a stick."""
    found = _least(a, "ridge", a.size(2, 50))
    if found or (a.square and min(*_sides(a, "ridge")) <= a.length("inner")):
        return found or Cannot("it leaves nothing to frame with inside", "take a larger ridge")
    within = a.within("ridge")
    drop = Length(ceil(within.second.nm * a.slope / 2))
    needs = aslant(a.within("rafter").first, a.slope) + drop
    if within.first < needs:
        found = Cannot(
            f"the rafters' plumb cuts come {a.say_up(needs)} down it",
            "take a deeper ridge, or a smaller pitch",
        )
    whole = a.length("length") + a.length("overhang") * 2
    longest = a.length("longest")
    if not found and longest and whole > longest:
        found = Cannot(
            f"the ridge is {a.say(whole)} long, more than your longest stick",
            "let the rafters meet without a ridge, or give a longer stick",
        )
    return found


def _sides(a: Answers, section: str) -> tuple[Length, Length]:
    drawn = a.section(section)
    return drawn.first, drawn.second


def _least(a: Answers, section: str, least: Length) -> Cannot | None:
    drawn = a.section(section)
    if min(drawn.first, drawn.second) >= least:
        return None
    return Cannot(f"a side under {a.say(least)} leaves no room for joints", "take a larger section")


def _no_wider(a: Answers, one: str, other: str, *, of: tuple[str, str]) -> Cannot | None:
    sizes: tuple[Length, ...] = (getattr(a.section(one), of[0]), getattr(a.section(other), of[1]))
    if sizes[0] <= sizes[1]:
        return None
    return Cannot(
        f"the {one} is {a.say(sizes[0])} across, the {other} only {a.say(sizes[1])}",
        f"take a narrower {one} or a wider {other}",
    )


def inner(a: Answers) -> Cannot | None:
    """A reduction that leaves next to nothing inside the slightest timber."""
    less = a.length("inner")
    for each in a.used:
        if each == "ridge":
            continue
        drawn = a.section(each)
        least = a.size(*LEAST_SECTION) if each in TENONED_INTO else a.size(Fraction(3, 2), 40)
        if min(drawn.first, drawn.second) - less < least:
            return Cannot(
                f"it leaves nothing to frame with in a {each} of {a.say_section(drawn)}",
                "make it less",
            )
    return None


def post_height(a: Answers) -> Cannot | None:
    """A post that is no post."""
    least = a.size(24, 600)
    if a.length("post height") >= least:
        return None
    return Cannot(f"a wall under {a.say(least)} high takes no frame", "make the posts longer")


def longest(a: Answers) -> Cannot | None:
    """A stick too short to reach from one clear place to the next."""
    if not a.length("longest"):
        return None
    whole = a.length("width")
    if whole > a.length("longest"):
        return Cannot(
            f"end sills and ties are up to {a.say(whole)} long, longer than your longest stick",
            "make the frame narrower, or give a longer stick",
        )
    return None


def scarf(a: Answers) -> Cannot | None:
    """A plate or a sill that no scarf clear of other joints brings within the longest stick."""
    return cannot_scarf_plates(a) or cannot_scarf_sills(a)


def tie_drop(a: Answers) -> Cannot | None:
    """A tie that comes down to the sill."""
    room = a.length("post height") - under_plate(a)[1]
    if room >= a.size(12, 300):
        return None
    return Cannot(
        f"the ties' underside would lie {a.say(Length(abs(room.nm)))} "
        f"{'above' if room > ZERO else 'below'} the sills",
        "make it less, or the posts longer",
    )


def let_in(a: Answers) -> Cannot | None:
    """A tie that is let into its plate too deep, or not at all."""
    most = Length(min(a.within("plate").first, a.within("tie").first).nm // 3)
    if ZERO < a.length("let in") <= most:
        return None
    return Cannot(
        f"ties let in {a.text('let in')} do not leave their plates sound",
        f"write more than nothing, and no more than {a.say_down(most)}",
    )


def leg(a: Answers) -> Cannot | None:
    """A brace leg longer than what it stands on, or two that cross in a bay or a bent."""
    size, rest = a.length("leg"), least_wood(a)
    if size < a.within("brace").first * 2:
        return Cannot(
            f"a leg of {a.text('leg')} is too short for a brace "
            f"{a.say(a.section('brace').first)} deep",
            f"write at least {a.say_up(a.within('brace').first * 2)}",
        )
    found = _past_plate(a) if a.lapped and a.tie_braced else None
    if found:
        return found
    where, room = min(leg_rooms(a), key=lambda each: each[1])
    if size + rest <= room:
        return None
    return Cannot(
        f"a leg of {a.text('leg')} is longer than {where} lets it be",
        f"write at most {a.say_down(Length(max(room.nm - rest.nm, 0)))}, or no braces",
    )


def _past_plate(a: Answers) -> Cannot | None:
    """A brace to a tie over the plates that would run into the plate in the corner."""
    plate = a.within("plate")
    over = plate.second - a.within("post").first
    least = foot_high(a) + plate.first - a.length("let in") + over
    if a.length("leg") >= least:
        return None
    return Cannot(
        f"a brace with a leg of {a.text('leg')} to a tie over the plates runs into the plate",
        f"write at least {a.say_up(least)}, or no braces to the ties",
    )


def _half(length: Length) -> Length:
    return Length(length.nm // 2)


def pitch(a: Answers) -> Cannot | None:
    """A roof that does not rise, or stands up on end."""
    if a.slope * 12 >= 1 and a.slope * 12 <= 36:  # noqa: PLR2004 - of rise in 12 of run
        return None
    return Cannot("this pitch makes no roof of rafters", "write a rise from 1 to 36 in 12 of run")


def spacing(a: Answers, question: str, *beside: str) -> Cannot | None:
    """Timbers that fill a bay with no room between them, or run into what stands at its ends."""
    apart, _ = a.spacing(question)
    wide = sum((a.section(each).second for each in beside), start=least_wood(a))
    if apart > wide:
        return None
    return Cannot(
        f"{a.text(question)} apart leaves no room between them",
        f"write more than {a.say_up(wide)}",
    )


def rafter_spacing(a: Answers) -> Cannot | None:
    """Rafters that touch one another or the ties they stand beside."""
    ties = ("tie",) if a.lapped else ()
    return spacing(a, "rafter spacing", "rafter", "rafter", *ties)


def joist_spacing(a: Answers) -> Cannot | None:
    """Joists that touch one another or the posts."""
    return spacing(a, "joist spacing", "joist", "post")


def joist_let_in(a: Answers) -> Cannot | None:
    """Pockets that go through the sill, or nothing that is let in."""
    size = a.length("joist let-in")
    most = min(a.within("sill").first - least_wood(a) * 2, a.within("joist").first)
    if ZERO < size <= most:
        return None
    return Cannot(
        f"joists let in {a.say(size)} do not lie in sills {a.say(a.within('sill').first)} deep",
        f"write more than nothing, and no more than {a.say_down(most)}",
    )


def bearing(a: Answers) -> Cannot | None:
    """Pockets that come near the posts' foot tenons."""
    most = a.within("sill").second - least_wood(a) * 2
    if ZERO < a.length("bearing") <= most:
        return None
    return Cannot("joists do not bear so far in", f"write no more than {a.say_down(most)}")


def rafter_height(a: Answers) -> Cannot | None:
    """A rafter that passes over its plate, or is cut in two on it."""
    plumb = aslant(a.within("rafter").first, a.slope)
    if ZERO < a.length("rafter height") < plumb:
        return None
    return Cannot(
        f"a rafter {a.say_up(plumb)} deep measured plumb has no seat at that height",
        "write more than nothing and less than that",
    )


def eaves(a: Answers) -> Cannot | None:
    """Tails so short that nothing is left outside the seat."""
    least = a.size(2, 50)
    if a.length("eaves") >= least:
        return None
    return Cannot("the rafters have no tail outside their seats", f"write at least {a.say(least)}")
