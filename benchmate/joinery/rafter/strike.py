"""Stepping a rafter off with the framing square: how many steps, and how long each is.

The unit length is how much of the top edge goes to a foot of run: `12 x sqrt(run^2 + rise^2) / run`
(trade notes 7.2; the table is in the published list Instr-unit). The square is set as many times as
there are feet of run, odd inches as a part step at the same setting (EN5156-73). On a pitch whose
rise does not fit the tongue, a step is what does.
"""

from typing import NamedTuple

from benchmate.frame.settings import on_the_square, square_set
from benchmate.joinery.rafter.raking import TOP_EDGE, Rafter
from benchmate.joinery.rafter.words import foot_of, pitch
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Reading, Stage, Task
from benchmate.model.setting import Setting


class Mark(NamedTuple):
    """A place on the top edge: how far ahead, and what is found there."""

    ahead: int
    words: str


def unit_length(rafter: Rafter, tape: Tape) -> Length:
    """How much of the top edge goes to a foot of run, or to 300 mm."""
    return rafter.along(foot_of(tape))


def steps(rafter: Rafter, run: Length, tape: Tape) -> tuple[int, Length]:
    """How many whole steps of the square a run has, and what is over."""
    blade, _ = on_the_square(rafter.line.run, rafter.line.rise, tape)
    whole, over = divmod(run.nm, blade.nm)
    return whole, Length(over)


def step_off(
    rafter: Rafter, tape: Tape, start: Mark, finish: Mark, centre: int | None = None
) -> Task:
    """The task of stepping a stretch of the top edge off, as a check on its running figures.

    `centre` is how far ahead the peak lies where the rafter stops short of it.
    """
    run = Length(finish.ahead - start.ahead)
    rise = Length(rafter.up_at(finish.ahead) - rafter.up_at(start.ahead))
    square = tape.without_feet
    reading = Reading(
        value=rafter.along(run), hook=start.words, way=f"along the {TOP_EDGE} to {finish.words}"
    )
    return Task(
        id="step-off",
        stage=Stage.MARK,
        title=f"Step off from the {start.words} to {finish.words}",
        faces=(rafter.side,),
        readings=(reading,),
        beside=(
            Beside(run, f"of run, level: {steps_words(rafter, run, tape)}"),
            Beside(rise, f"of rise, plumb, at {pitch(rafter, tape)}"),
            Beside(unit_length(rafter, tape), f"along it to {square.text(foot_of(tape))} of run"),
            *_to_centre(rafter, tape, start, centre),
        ),
        why="Both ways of measuring have to come to the same place.",
        caution="A slip repeats at every step: where the two differ, go by the tape.",
        setting=_setting(rafter, tape),
    )


def steps_words(rafter: Rafter, run: Length, tape: Tape) -> str:
    """How a run is stepped off: `8 steps of 12", then 4" more at the same setting`."""
    blade, _ = on_the_square(rafter.line.run, rafter.line.rise, tape)
    whole, over = steps(rafter, run, tape)
    square = tape.without_feet
    odd = f", then {square.text(over)} more at the same setting" if over else ""
    return f"{whole} steps of {square.text(blade)}{odd}"


def _setting(rafter: Rafter, tape: Tape) -> Setting:
    """The square as it is stepped: the blade level, so its figure is the one nearer the foot."""
    pose = rafter.stick.pose
    foot = pose.words(pose.face(rafter.heading).opposite)
    square = square_set(rafter.line.run, rafter.line.rise, tape, None)
    return Setting(square=square).lying(foot, TOP_EDGE)


def _to_centre(rafter: Rafter, tape: Tape, start: Mark, centre: int | None) -> tuple[Beside, ...]:
    """The same to the centre line of the peak, before the ridge deduction."""
    if centre is None:
        return ()
    run = Length(centre - start.ahead)
    return (
        Beside(run, f"of run to the peak's centre line: {steps_words(rafter, run, tape)}"),
        Beside(rafter.along(run), "along it to that centre line, before the ridge deduction"),
    )
