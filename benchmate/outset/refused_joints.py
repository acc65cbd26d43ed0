"""Sizes of joints that cannot be: each told at its question, with what to do about it."""

from benchmate.measure.length import ZERO, Length
from benchmate.outset.answers import HALF_LAPPED, Answers
from benchmate.outset.question import Cannot
from benchmate.outset.suggested import least_wood


def thickness(a: Answers) -> Cannot | None:
    """A tenon as thick as a timber it is cut on."""
    return _fits(a, a.length("thickness"), "a tenon {} thick", least_wood(a))


def set_back(a: Answers) -> Cannot | None:
    """A far cheek that comes out of the timber."""
    whole = a.length("set back") + a.length("thickness")
    return _fits(a, whole, "set-back and thickness, {} together,", ZERO)


def _fits(a: Answers, size: Length, words: str, spare: Length) -> Cannot | None:
    sides = {
        "sill": min(a.within("sill").first, a.within("sill").second),
        "post": min(a.within("post").first, a.within("post").second),
        "plate": a.within("plate").second,
        "tie": a.within("tie").second,
    }
    where = min(sides, key=lambda each: sides[each])
    if size and size < sides[where] - spare:
        return None
    told = words.format(a.say(size))
    return Cannot(
        f"{told} do not fit in a {where} of {a.say(sides[where])}",
        f"make it less, or the {where} larger",
    )


def deep(a: Answers, question: str, into: str, side_: str) -> Cannot | None:
    """A tenon whose mortise comes through."""
    whole: Length = getattr(a.within(into), side_)
    if into == "sill" and side_ == "first" and a.word("corners") == HALF_LAPPED:
        whole = _half(whole)
    room = whole - least_wood(a)
    if ZERO < a.length(question) < room:
        return None
    return Cannot(
        f"a tenon {a.text(question)} long does not end in {a.say(whole)} of {into}",
        f"write less than {a.say_down(room)}",
    )


def less_than_half(a: Answers, question: str, of: str) -> Cannot | None:
    """A relief that takes the better part of a tenon."""
    half = _half(a.within(of).second)
    if a.length(question) < half:
        return None
    return Cannot(f"{a.text(question)} is half of the {of} or more", f"write under {a.say(half)}")


def housing(a: Answers, question: str) -> Cannot | None:
    """A housing that cuts a post to the quick."""
    most = Length(min(a.within("post").first, a.within("post").second).nm // 4)
    if a.length(question) <= most:
        return None
    return Cannot(
        f"a housing {a.text(question)} deep takes more than a quarter of the post",
        f"write at most {a.say_down(most)}",
    )


def brace_thickness(a: Answers) -> Cannot | None:
    """A tenon thicker than its brace."""
    if a.length("brace thickness") <= a.within("brace").second:
        return None
    return Cannot(
        f"a brace {a.say(a.within('brace').second)} wide has no tenon so thick",
        "make it less, or the brace wider",
    )


def peg_shoulder(a: Answers) -> Cannot | None:
    """Holes that break out of a post's or a tie's tenon, or run across its shoulder."""
    found = _peg_breaks_out(a, "peg", "peg shoulder", "head")
    return found if found or a.lapped else _peg_breaks_out(a, "peg", "peg shoulder", "tie tenon")


def brace_peg_shoulder(a: Answers) -> Cannot | None:
    """A hole that breaks out of a brace's tenon, or runs across its shoulder."""
    return _peg_breaks_out(a, "brace peg", "brace peg shoulder", "brace tenon")


def _peg_breaks_out(a: Answers, peg: str, shoulder: str, tenon: str) -> Cannot | None:
    radius = _half(a.length(peg) + Length(1))
    if radius < a.length(shoulder) < a.length(tenon) - radius:
        return None
    return Cannot(
        f"a {a.text(peg)} hole there breaks out of a tenon {a.text(tenon)} long",
        f"write about {a.say_down(_half(a.length(tenon)))}, or take smaller pegs",
    )


def brace_set_back(a: Answers) -> Cannot | None:
    """A brace's far cheek outside the brace."""
    whole = a.length("brace set back") + a.length("brace thickness")
    wide = a.within("brace").second
    if a.length("brace thickness") and whole <= wide:
        return None
    return Cannot(
        f"set-back and thickness, {a.say(whole)} together, do not fit in a {a.say(wide)} brace",
        "make them less, or the brace wider",
    )


def peg_size(a: Answers, question: str) -> Cannot | None:
    """A hole as wide as the room for it."""
    if ZERO < a.length(question) <= a.size(2, 50):
        return None
    return Cannot("no peg is that thick", f"write more than nothing, up to {a.say(a.size(2, 50))}")


def draw(a: Answers) -> Cannot | None:
    """A draw that moves the holes clear of one another."""
    least = min(a.length("peg"), a.length("brace peg")) if a.braced else a.length("peg")
    if a.length("draw") * 2 <= least:
        return None
    return Cannot("a draw of more than half the hole does not drive", "make it less")


def _half(length: Length) -> Length:
    return Length(length.nm // 2)
