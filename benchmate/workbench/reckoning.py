"""What the calculator answers, in words: the same on the screen and without it."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from benchmate.frame.frame import Frame
from benchmate.frame.settings import on_the_square, rake_setting
from benchmate.measure.angle import angle_text, tenths
from benchmate.measure.length import (
    NM_PER_HUNDREDTH_MM,
    NM_PER_MM,
    NM_PER_SIXTYFOURTH,
    ZERO,
    Length,
)
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.measure.reading import Unit
from benchmate.measure.reckon.reading import Asked, read_line
from benchmate.measure.reckon.rectangle import Racked, Rectangle
from benchmate.measure.reckon.rounding import Reckoned, settled
from benchmate.measure.reckon.slope import Slope
from benchmate.measure.reckon.spaces import Spaces

ROUNDED = "rounded to a millionth of a mm"
"""Said where every digit of a length is shown, so that its last one could be taken for exact."""

SHALLOW = 12
"""A pitch of less than one in so many is more often a rise meant in 12 and typed as all of it."""

EXACT = "exact"
"""The label of the line that tells every digit."""

LABEL = 7
"""Characters of the column of labels in plain text: the longest label and a space."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """One labelled line of an answer. What is strong is not to be overlooked."""

    label: str
    text: str
    strong: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """What a line comes to: what the figure is, the figure, and everything told beneath it.

    `names` are the names of the project that the line goes by.
    """

    what: str
    result: Reckoned
    lines: tuple[Told, ...]
    names: tuple[str, ...]


def named_sizes(frame: Frame) -> dict[str, Length]:
    """What every line, level, length and side of a section of a project measures."""
    return {name: frame.levels.of(name) for name in frame.levels.definitions()}


def reckon(text: str, *, tape: Tape, bare: Unit, sizes: Mapping[str, Length]) -> Answer:
    """The answer to a line; LengthError for a line that cannot be reckoned.

    `sizes` is what the names that may stand in it measure.
    """
    asked = read_line(text, bare=bare, sizes=sizes)
    what, result, told = _answered(asked, tape)
    names = asked.sides.names if isinstance(asked, Racked) else asked.names
    lines = (*_same_length(result, tape, short=bool(what)), *told)
    return Answer(what=what, result=result, lines=lines, names=tuple(dict.fromkeys(names)))


def _answered(asked: Asked, tape: Tape) -> tuple[str, Reckoned, Iterable[Told]]:
    """What the figure is, the figure, and what is told beneath it."""
    match asked:
        case Spaces():
            return "each space", asked.each, _spaces(asked, tape)
        case Rectangle():
            return "both diagonals", asked.diagonal, _square(asked)
        case Racked():
            return (*_pushed(asked), _racked(asked, tape))
        case Slope():
            return "along the slope", asked.length, _slope(asked, tape)
    return "", settled(asked.nm), ()


def plain_text(answer: Answer, tape: Tape) -> str:
    """The answer as it is printed: the figure, then a labelled line for all the rest."""
    head = tape.text(answer.result.length)
    lines = (f"{told.label:{LABEL}}{told.text}" for told in answer.lines)
    return "\n".join((f"{head}  {answer.what}".rstrip(), *lines))


def _same_length(result: Reckoned, tape: Tape, *, short: bool) -> Iterator[Told]:
    """The length in the other units too, and to the last digit where the tape hides any of it.

    `short` puts the units on one line, to leave room for what is told beneath.
    """
    feet_and_inches, metric = _tapes(tape)
    inches = Tape(style=Style.INCHES, graduation=feet_and_inches.graduation)
    units = {"feet": feet_and_inches, "inches": inches, "mm": metric}
    if short:
        text = " or ".join(unit.text(result.length) for unit in units.values())
        yield Told(label="also", text=text)
    else:
        for label, unit in units.items():
            yield Told(label=label, text=unit.text(result.length))
    if result.length.nm % tape.graduation.nm:
        yield Told(label=EXACT, text=exactly(result))


def _tapes(tape: Tape) -> tuple[Tape, Tape]:
    """A tape in feet and inches and one in millimetres; the framer's own where it is one."""
    if tape.graduation.metric:
        return Tape(), tape
    return Tape(graduation=tape.graduation), Tape(style=Style.MM, graduation=Graduation.MM)


def exactly(result: Reckoned) -> str:
    """The length to the last digit, and that it was rounded where those digits would hide it."""
    text = result.length.exact_text()
    return text if result.whole else f"{text}, {ROUNDED}"


def for_a_field(length: Length, bare: Unit) -> Length:
    """The length as a project's files hold one: itself on a 64th of an inch or a 0.01 mm.

    Any other goes to the nearest 64th, or tenth of a millimetre in a metric project.
    """
    if not length.nm % NM_PER_SIXTYFOURTH or not length.nm % NM_PER_HUNDREDTH_MM:
        return length
    step = NM_PER_MM // 10 if bare is Unit.MM else NM_PER_SIXTYFOURTH
    return settled(Fraction(length.nm, step)).length * step


def _spaces(spaces: Spaces, tape: Tape) -> Iterator[Told]:
    """The running figures from one end."""
    count = f"{spaces.count} equal spaces" if spaces.count > 1 else "one space"
    told = f"{count}; run all the marks from one end:"
    yield Told(label="spaces", text=told, strong=True)
    for place, (end, begins) in enumerate(spaces.stops(), start=1):
        text = tape.text(end)
        if begins != end:
            text = f"{text} to {tape.text(begins)}, the timber after space {place}"
        yield Told(label=str(place), text=text)


_LIKE_SIDES = "diagonals alike prove it square only where opposite sides are alike: check those too"


def _square(sides: Rectangle) -> Iterator[Told]:
    """How a frame on the floor is squared by its diagonals. Common practice, no source."""
    yield Told(label="square", text="both diagonals read this when it is square", strong=True)
    yield Told(label="else", text="push in a corner of the longer one until both read this")
    one, other = (settled(side).length.exact_text() for side in (sides.one, sides.other))
    told = f"for how far, write both as measured: diagonal {one} by {other}, 26' 2-1/2 and 26' 3"
    yield Told(label="push", text=told)
    yield Told(label="sides", text=_LIKE_SIDES)


def _pushed(racked: Racked) -> tuple[str, Reckoned]:
    """How far to push; what both diagonals read, where there is nothing to push."""
    push = racked.push
    return ("to push", push) if push.length else ("both diagonals", Reckoned(racked.if_pushed))


def _racked(racked: Racked, tape: Tape) -> Iterator[Told]:
    """How far a frame is out of square, and which corner is pushed which way.

    Common practice, no source; the figure is the law of the parallelogram.
    """
    if racked.push.length:
        side = tape.text(settled(racked.sides.longer).length)
        which, far = ("first", racked.first) if racked.longer_first else ("second", racked.second)
        measured = tape.text(settled(far).length)
        told = (
            f"the {which} diagonal, {measured}, is the longer. Hold one {side} side; push the "
            "other along itself, in at its corner on that diagonal"
        )
        yield Told(label="push", text=told, strong=True)
        both = tape.text(racked.if_pushed)
        yield Told(label="then", text=f"both diagonals read {both}; measure them again")
    else:
        yield Told(label="square", text="the diagonals are alike: it is square", strong=True)
    yield _sides(racked, tape)


def _sides(racked: Racked, tape: Tape) -> Told:
    """Whether the diagonals fit the sides they were measured between, to a graduation."""
    ought = racked.sides.diagonal.length
    off = racked.if_pushed - ought
    if abs(off) <= Length(tape.graduation.nm):
        return Told(label="sides", text=_LIKE_SIDES)
    than = "longer" if off > ZERO else "shorter"
    told = (
        f"CHECK THE SIDES: these diagonals come out {tape.text(abs(off))} {than} than the "
        f"{tape.text(ought)} that the sides make. Measure all four again"
    )
    return Told(label="sides", text=told, strong=True)


def _slope(slope: Slope, tape: Tape) -> Iterator[Told]:
    """Run, rise, pitch and angle, and how the framing square and the saw are set."""
    run, rise = slope.ratio
    square = tape.without_feet
    base = Length.mm(300) if tape.graduation.metric else Length.inches(12)
    along, up = (settled(each).length for each in (slope.run, slope.rise))
    yield Told(label="run", text=f"{tape.text(along)}, rise {tape.text(up)}")
    pitch = slope.rise_in(base).length
    level, plumb = angle_text(tenths(rise, run)), angle_text(tenths(run, rise))
    told = f"{square.text(pitch)} in {square.text(base)}; {level} from level, {plumb} from plumb"
    yield Told(label="pitch", text=told, strong=True)
    for label in ("plumb", "level"):
        setting = rake_setting(run, rise, tape, plumb=label == "plumb")
        yield Told(label=label, text=setting.words(tape))
    blade, _ = on_the_square(run, rise, tape)
    yield Told(label="steps", text=_steps(along, blade, square))
    if pitch * SHALLOW < base:
        told = f"the rise is {tape.text(up)} in all; a rise in so much of run is written pitch"
        yield Told(label="look", text=f"{told} 8 in 12", strong=True)


def _steps(run: Length, blade: Length, tape: Tape) -> str:
    """How often the square is stepped along: as many settings as the blade goes into the run.

    Odd inches are a part step at the same setting (US Army EN5156, trade notes EN5156-73).
    """
    whole, rest = divmod(run.nm, blade.nm)
    times = f"step it off {whole} time{'s' if whole > 1 else ''}" if whole else ""
    part = f"{tape.text(Length(rest))} of run at the same setting" if rest else ""
    return ", then ".join(filter(None, (times, part)))
