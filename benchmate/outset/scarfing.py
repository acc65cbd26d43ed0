"""Where plates and sills longer than a stick are scarfed: near a post, clear of other joints.

Near a support and clear of the braces' mortises is common practice, no source; a length of 2-1/2
feet is published for plates (trade notes 2.6, TFHQ-scarf). A scarf lies just past a post, or just
past the brace that comes to the plate there, and its eastern tip never under a rafter.
"""

from typing import NamedTuple

from benchmate.measure.length import ZERO, Length
from benchmate.outset.answers import Answers
from benchmate.outset.question import Cannot
from benchmate.outset.rows import InRow, rafters


class Scarf(NamedTuple):
    """A scarf in the bay east of a bent: how far past its post and brace the middle lies.

    `tip` is how far east the stick from the west reaches.
    """

    bent: int
    past: Length
    tip: Length


def long(a: Answers) -> Length:
    """How long a scarf is, from tip to tip (2-1/2 feet, trade notes 2.6, TFHQ-scarf)."""
    return a.size(30, 760)


def plate_scarfs(a: Answers) -> tuple[Scarf, ...]:
    """The scarfs of each plate from the west; none where one stick does."""
    over = a.length("overhang")
    leg = a.length("leg") if a.wall_braced else ZERO
    rows = rafters(a) if a.roofed else ()
    return _scarfs(a, (ZERO - over, a.length("length") + over), _places(a, leg, rows))


def sill_scarfs(a: Answers) -> tuple[Scarf, ...]:
    """The scarfs of each long sill from the west; none where one stick does."""
    return _scarfs(a, (ZERO, a.length("length")), _places(a, ZERO, ()))


def cannot_scarf_plates(a: Answers) -> Cannot | None:
    """Plates that no scarf brings within the longest stick."""
    over = a.length("overhang")
    return _cannot(a, "plates", (ZERO - over, a.length("length") + over), plate_scarfs(a))


def cannot_scarf_sills(a: Answers) -> Cannot | None:
    """Sills that no scarf brings within the longest stick."""
    longest = a.length("longest")
    if a.floored and longest and a.length("length") > longest:
        return Cannot(
            f"the long sills are {a.text('length')} long, and their joists leave no room for a "
            "scarf",
            "give a longer stick, or no floor",
        )
    return _cannot(a, "sills", (ZERO, a.length("length")), sill_scarfs(a))


def _cannot(
    a: Answers, what: str, ends: tuple[Length, Length], scarfs: tuple[Scarf, ...]
) -> Cannot | None:
    longest = a.length("longest")
    begins = [ends[0], *(scarf.tip - long(a) for scarf in scarfs)]
    tips = [*(scarf.tip for scarf in scarfs), ends[1]]
    sticks = [tip - begin for begin, tip in zip(begins, tips, strict=True)]
    if not longest or max(sticks) <= longest:
        return None
    return Cannot(
        f"{what} {a.say(ends[1] - ends[0])} long cannot be scarfed clear of posts and braces from "
        f"sticks of {a.text('longest')}",
        "give a longer stick, shorter braces, or bays of another length",
    )


def _scarfs(
    a: Answers, ends: tuple[Length, Length], places: tuple[Scarf, ...]
) -> tuple[Scarf, ...]:
    """As few scarfs as will do, each as far east as a stick from the last one reaches."""
    longest, start = a.length("longest"), ends[0]
    found: list[Scarf] = []
    while longest and ends[1] - start > longest:
        behind = found[-1].tip if found else start
        reached = [each for each in places if behind < each.tip <= start + longest]
        if not reached:
            break
        found.append(reached[-1])
        start = reached[-1].tip - long(a)
    return tuple(found)


def _places(a: Answers, leg: Length, rows: tuple[InRow, ...]) -> tuple[Scarf, ...]:
    """Every bay's place for a scarf, past a leg from the post, if there is room for it.

    Braces come from both sides of a bay, so their legs are left free at both.
    """
    margin = a.size(2, 50)
    spare = a.clear - leg * 2 - margin * 2 - long(a)
    shifts = range(int(spare.nm // a.size(1, 25).nm) + 1) if spare >= ZERO else range(0)
    found = []
    for bent in a.bents[:-1]:
        post = a.line_at(bent.number) + a.within("post").second
        tips = [post + leg + margin + long(a) + a.size(1, 25) * shift for shift in shifts]
        clear = next((tip for tip in tips if not _crossed(a, tip, rows)), None)
        if clear is not None:
            half = Length(long(a).nm // 2)
            found.append(Scarf(bent.number, clear - half - post - leg, clear))
    return tuple(found)


def _crossed(a: Answers, tip: Length, rows: tuple[InRow, ...]) -> bool:
    """Whether a rafter lies across so far east, or as near as a margin."""
    wide, margin = a.within("rafter").second if rows else ZERO, a.size(1, 25)
    return any(each.west - margin < tip < each.west + wide + margin for each in rows)


def stick_at(scarfs: tuple[Scarf, ...], east: Length) -> str:
    """What tells the stick whose top lies so far east from the others: `-2`, or nothing."""
    return f"-{1 + sum(scarf.tip <= east for scarf in scarfs)}" if scarfs else ""
