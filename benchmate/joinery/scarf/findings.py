"""What can be wrong with a scarf, one function and one code each.

Those of a joint look at both halves, those of a half at one of them.
"""

from benchmate.frame.frame import Frame
from benchmate.frame.reduction import under_inner
from benchmate.joinery.scarf.shape import Half
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.measure.section import Section, section_text
from benchmate.model.findings import Finding, look, stop
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick


def not_in_line(halves: tuple[Half, Half], frame: Frame, tape: Tape) -> Finding | None:
    """The reference arrises of the two sticks do not run on one line, so they cannot come flush.

    Usually a slip in one coordinate of `at`. Example: a plate 12' 2" up that goes on at 12'.
    Remedy: the same two coordinates for both.
    """
    one, other = (half.stick for half in halves)
    here, there = (frame.standing(stick.id).origin for stick in (one, other))
    along = [bool(step) for step in one.pose.reference_end.value].index(True)
    gaps = [
        abs(b - a) for axis, (a, b) in enumerate(zip(here, there, strict=True)) if axis != along
    ]
    if not any(gaps):
        return None
    return stop(
        "scarf-not-in-line",
        one.id,
        halves[0].feature,
        f"The reference arris of {other.name} lies {tape.text(Length(max(gaps)))} beside that of "
        f"{one.name}",
        'give both sticks the same two coordinates in "at"',
    )


def sections_differ(halves: tuple[Half, Half], tape: Tape) -> Finding | None:
    """The two sticks are drawn, or framed by square rule, with unlike sections.

    The halves of the one would not lie against those of the other. Example: an 8 x 8 scarfed to an
    8 x 10. Remedy: one section for both, and one rule.
    """
    one, other = halves
    turned = other.halved is not one.halved
    theirs = _held(other.stick)
    sections = _held(one.stick), Section(theirs.second, theirs.first) if turned else theirs
    if sections[0] == sections[1]:
        return None
    shown = [section_text(each, tape) for each in sections]
    return stop(
        "scarf-sections-differ",
        one.stick.id,
        one.feature,
        f"{one.stick.name} is laid out as {shown[0]}, but {other.stick.name} as {shown[1]}",
        "give both sticks the same section and the same rule, and an inner section in common",
    )


def _held(stick: Stick) -> Section:
    return Section(stick.held(Axis.FIRST), stick.held(Axis.SECOND))


def nothing_between_butts(half: Half, tape: Tape) -> Finding | None:
    """The two abutments are so high that no slope is left between them, on the half that follows.

    Example: two 4" butts in an 8" stick. Remedy: lower butts, or a half lap.
    """
    if half.stepped or half.tip > half.root:
        return None
    return stop(
        "scarf-no-splay",
        half.stick.id,
        half.feature,
        f"Two butts of {tape.text(half.butt)} leave nothing to slope in {tape.text(half.deep)}",
        'make "butt" less, or write kind = "half lap"',
    )


def ends_meet(half: Half, tape: Tape) -> Finding | None:
    """The tongues, or the leaning abutments, take up the whole length of the lap.

    Example: two 6" tongues in a 12" lap. Remedy: a longer lap, or less of what takes it up.
    """
    key = "squint" if half.squint else "tongue_length"
    taken = half.squint + half.squint if half.squint else half.length - half.reach
    if half.length > taken:
        return None
    return stop(
        "scarf-ends-meet",
        half.stick.id,
        half.feature,
        f"The lap is {tape.text(half.length)} long, and its two ends take {tape.text(taken)} of it",
        f'make "length" more, or "{key}" less',
    )


def longer_than_stick(half: Half, tape: Tape) -> Finding | None:
    """The lap and the slot behind it take the whole stick, or more.

    Usually `at` lies beyond one of the sticks' other ends, or the lap was typed in the wrong unit.
    Remedy: check where the scarf lies and where the stick starts.
    """
    needed = half.bridle.slot_length if half.bridle else ZERO
    if half.stick.body > needed:
        return None
    return stop(
        "scarf-longer-than-stick",
        half.stick.id,
        half.feature,
        f"The scarf leaves {tape.text(half.stick.body - needed)} of {half.stick.name} before it",
        f'check "at" and "length", and where {half.stick.name} starts',
    )


def stick_too_thin(half: Half, tape: Tape) -> Finding | None:
    """The stick is so far under its size that its half lies in the air.

    Of the leading stick nothing is left to abut against at its shoulder, of the other nothing at
    its tip. Example: a stick drawn 8" that measures 5-3/4", with butts of 2". Remedy: another one.
    """
    least = max(half.root, half.tip)
    if half.real_deep > least or half.real_deep < half.stick.framed(half.halved, *half.places):
        return None
    return stop(
        "scarf-stick-too-thin",
        half.stick.id,
        half.feature,
        f"The lap comes {tape.text(least)} in, but {half.stick.name} is only "
        f"{tape.text(half.real_deep)} there",
        "choose another stick",
    )


def tongue_outside(half: Half, tape: Tape) -> Finding | None:
    """The tongue, or the slot, has no wood left beside it on the far side.

    Example: a 1-1/2" tongue set back 6-1/2" in an 8" stick. Remedy: a thinner tongue or less
    set-back.
    """
    if half.bridle is None:
        return None
    far = max(half.bridle.far, half.bridle.slot_far)
    if far < half.real_wide:
        return None
    return stop(
        "scarf-tongue-outside",
        half.stick.id,
        half.feature,
        f"The tongue reaches {tape.text(far)} in, and {half.stick.name} is only "
        f"{tape.text(half.real_wide)} there",
        'make "tongue" or "set_back" less',
    )


def key_too_big(half: Half, tape: Tape) -> Finding | None:
    """The slot for the wedges takes all the wood there is over or under it, or runs off the splay.

    Remedy: a smaller key.
    """
    if half.key is None:
        return None
    over = half.key.floor if half.leads else half.real_deep - half.key.floor
    if over > ZERO and half.key.deep > ZERO and half.key.wide + 2 * half.squint < half.reach:
        return None
    return stop(
        "scarf-key-too-big",
        half.stick.id,
        half.feature,
        f"A key of {tape.text(half.key.wide)} leaves {tape.text(over)} of {half.stick.name} there",
        'make "key" less',
    )


def key_deep(half: Half, tape: Tape) -> Finding | None:
    """The slot for the wedges is deeper than a published rule allows all indents together.

    The rule: indents come to a third of the depth (trade notes 2.6, Rivington). Remedy: a smaller
    key, or the engineer's word.
    """
    if half.key is None or 3 * half.key.wide <= half.deep:
        return None
    return look(
        "scarf-key-deep",
        half.stick.id,
        half.feature,
        f"A key of {tape.text(half.key.wide)} takes more than a third of the "
        f"{tape.text(half.deep)} depth, which a published rule allows for all indents together",
        'make "key" less, or ask the engineer',
    )


HALF_CHECKS = (
    longer_than_stick,
    stick_too_thin,
    tongue_outside,
    key_too_big,
    key_deep,
)


def told(halves: tuple[Half, Half], frame: Frame) -> tuple[Finding, ...]:
    """Everything to tell of one scarf, each thing once."""
    tape = frame.tape
    found = [not_in_line(halves, frame, tape), sections_differ(halves, tape)]
    (last,) = (half for half in halves if not half.leads)
    found += [nothing_between_butts(last, tape), ends_meet(last, tape)]
    found += [check(half, tape) for half in halves for check in HALF_CHECKS]
    inner = (
        finding
        for half in halves
        for finding in under_inner(half.stick, half.feature, half.places, tape)
    )
    return (*(finding for finding in found if finding), *inner)
