"""A tick remembers what it ticked (law 6)."""

from datetime import UTC, datetime

import pytest

from benchmate.frame.frame import Frame
from benchmate.layout.standing import (
    State,
    memory_of,
    orphaned,
    shoulder_struck,
    standing,
    standings,
    what_changed,
)
from benchmate.layout.step import LINE, Layout, Step
from benchmate.layout.walk import lay_out
from benchmate.measure.length import Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.progress import Progress, Tick
from tests.builders import chamfer, corners, frame, length, real, sill, tenon, timber

NOON = datetime(2024, 5, 1, 12, 0, tzinfo=UTC)
TAPE = Tape()


def _ticked(step: Step) -> Tick:
    return Tick(step=step.id, **memory_of(step)._asdict(), at=NOON)


def _changed(step_id: str, then: Frame, now: Frame, on: str, tape: Tape = TAPE) -> str:
    """What the step says after the frame has changed under its tick."""
    tick = _ticked(lay_out(then, on).step(step_id))
    return what_changed(lay_out(now, on).step(step_id), tick, tape)


def _post(**words: object) -> Frame:
    return frame(timber("post"), tenon(**words), chamfer())


def test_a_fresh_tick_tells_the_truth() -> None:
    """Every step of every timber, ticked now, is ticked."""
    for timber_id in ("post-sw", "post-se", "sill", "plate"):
        layout = lay_out(corners(), timber_id)
        progress = Progress(timber=timber_id, ticks=tuple(map(_ticked, layout.steps)))
        found = standings(layout, progress, TAPE)
        assert {one.state for one in found} == {State.TICKED}
        assert not orphaned(layout, progress)


def test_an_open_step_has_no_tick() -> None:
    """A step that was not ticked is open, and nothing has changed."""
    layout = lay_out(corners(), "post-sw")
    found = standings(layout, Progress(timber="post-sw"), TAPE)
    assert len(found) == len(layout.steps)
    assert {(one.state, one.tick, one.changed) for one in found} == {(State.OPEN, None, "")}


def test_a_moved_mark_says_what_it_was_and_what_it_is() -> None:
    """Law 6: the tick stays and turns into 'marked at 4-3/4, now 4-11/16'."""
    then, now = corners(), corners({"post-sw": real(as_cut={"foot-tenon": {"width": "4-11/16"}})})
    step = lay_out(now, "sill").step("sw-foot-mortise/finish")
    tick = _ticked(lay_out(then, "sill").step("sw-foot-mortise/finish"))
    found = standing(step, tick, TAPE)
    assert (found.state, found.tick) == (State.LOOK_AGAIN, tick)
    assert '6", now 5-15/16"' in found.changed
    assert "west end" in found.changed
    start = _changed("sw-foot-mortise/start", then, now, "sill")
    assert start == ""


def test_one_joint_changed_leaves_the_ticks_of_the_others() -> None:
    """Only the steps whose figures moved are looked at again."""
    then, now = corners(), corners({"post-sw": real(as_cut={"foot-tenon": {"width": "4-11/16"}})})
    layout = lay_out(now, "sill")
    ticks = tuple(map(_ticked, lay_out(then, "sill").steps))
    states = standings(layout, Progress(timber="sill", ticks=ticks), TAPE)
    again = {
        step.id
        for step, found in zip(layout.steps, states, strict=True)
        if found.state is State.LOOK_AGAIN
    }
    own = ("finish", "back-check", "knife", "bore", "pare-ends")
    assert again == {f"sw-foot-mortise/{name}" for name in own}


@pytest.mark.parametrize(
    "tape",
    [
        Tape(graduation=Graduation.EIGHTH),
        Tape(graduation=Graduation.SIXTY_FOURTH),
        Tape(style=Style.INCHES),
        Tape(style=Style.MM, graduation=Graduation.MM),
    ],
)
def test_a_change_of_tape_puts_no_tick_out_of_date(tape: Tape) -> None:
    """A tick keeps the exact length, so how it is shown does not matter."""
    built = corners({"post-sw": real(as_cut={"foot-tenon": {"width": "4-43/64"}})})
    for timber_id in ("post-sw", "sill"):
        layout = lay_out(built, timber_id)
        progress = Progress(timber=timber_id, ticks=tuple(map(_ticked, layout.steps)))
        assert {one.state for one in standings(layout, progress, tape)} == {State.TICKED}


def test_a_change_too_small_for_the_tape_is_still_a_change() -> None:
    """Where both figures look alike on the tape, both are given exactly."""
    then, now = _post(set_back="2"), _post(set_back="2-1/64")
    coarse = Tape(graduation=Graduation.EIGHTH)
    said = _changed("foot-tenon/near-cheek", then, now, "post", coarse)
    assert '2", now 2-1/64"' in said


def test_a_nanometre_is_a_change() -> None:
    """Law 1: lengths are exact, and so is the comparison."""
    step = lay_out(_post(), "post").step("foot-tenon/far-cheek")
    tick = _ticked(step)
    hook = step.readings[0].hook
    off = tick.model_copy(update={"marked": {hook: length("4") + Length(1)}})
    assert what_changed(step, off, TAPE)
    assert not what_changed(step, tick, TAPE)


def test_a_mark_measured_from_elsewhere_says_so() -> None:
    """A new tenon at the reference end gives every mark along the stick a second figure."""
    then = frame(timber("post"), tenon(id="post-head", end="head", length="4"))
    now = frame(timber("post"), tenon(), tenon(id="post-head", end="head", length="4"))
    said = _changed("head-tenon/shoulder", then, now, "post")
    assert "7' 11\", now 8' 4\"" in said
    step = lay_out(now, "post").step("head-tenon/shoulder")
    tick = Tick(step=step.id, **memory_of(step)._replace(marked={})._asdict(), at=NOON)
    assert what_changed(step, tick, TAPE) == (
        "now measured from the foot shoulder line and squared foot as well"
    )


def test_a_turned_post_puts_its_marks_on_other_faces() -> None:
    """The figure holds, but it is struck from another face: look again."""
    then, now = (
        frame(timber("post", second_face=face), tenon(relief_reference="1"))
        for face in ("west", "east")
    )
    said = _changed("foot-tenon/reference-edge", then, now, "post")
    assert "West face" in said
    assert "East face" in said


def test_a_mark_on_other_faces_says_which() -> None:
    """Measured from the same face by the same figure, but struck on fewer faces."""
    then, now = _post(set_back="1/2"), _post(set_back="0", thickness="2-1/2")
    said = _changed("foot-tenon/shoulder", then, now, "post")
    assert "South face, West face, North face, East face, now on West face" in said
    step = lay_out(now, "post").step("foot-tenon/shoulder")
    bare = _ticked(step).model_copy(update={"on": ""})
    assert "no face" in what_changed(step, bare, TAPE)


def test_waste_on_the_other_side_says_so() -> None:
    """The dearest mistake: the same line with the waste across it."""
    step = lay_out(_post(), "post").step("foot-tenon/near-cheek")
    other = _ticked(step).model_copy(update={"waste": "North face"})
    said = what_changed(step, other, TAPE)
    assert "towards the North face" in said
    assert "towards the South face" in said
    bare = _ticked(step).model_copy(update={"waste": ""})
    assert "on neither side" in what_changed(step, bare, TAPE)


def test_every_change_is_told() -> None:
    """A mark that moved, on other faces, with its waste across: one look says all of it."""
    step = lay_out(_post(), "post").step("foot-tenon/near-cheek")
    marked = {"South face": length("1-3/4"), "chalk line": length("1")}
    tick = Tick(step=step.id, marked=marked, on="", waste="", at=NOON)
    assert what_changed(step, tick, TAPE) == (
        'marked at 1-3/4", now 2" from the South face; no longer measured from the chalk line; '
        f"marked on no face, now on {', '.join(step.sides)}; waste was on neither side, "
        "now towards the South face"
    )


def test_every_mark_that_moved_is_told_on_the_back_check() -> None:
    """Two marks moved and one that did not: both are named, each with both its figures."""
    then, now = (frame(timber("post"), sill(), tenon(into="sill", at=at)) for at in ("4'", "5'"))
    said = _changed("post-foot-mortise/back-check", then, now, "sill").split("; ")
    assert len(said) == 2
    for found, name, figures in zip(
        said, ("start", "finish"), ("12' 0\", now 11' 0\"", "11' 6\", now 10' 6\""), strict=True
    ):
        assert figures in found
        assert found.endswith(f"overall line to the mortise for Post, {name} line")


def test_a_look_at_the_stick_never_goes_out_of_date() -> None:
    """Measuring a section or a tenon as cut changes figures; its own tick stays good."""
    now = corners({"post-sw": real({"foot-tenon": {"first": "6-1/4"}})})
    step = lay_out(now, "post-sw").step("foot-tenon/section")
    assert memory_of(step) == ({}, "", "")
    assert _changed("foot-tenon/section", corners(), now, "post-sw") == ""


def test_ticks_of_steps_that_are_gone_are_kept() -> None:
    """A relief taken out of the design leaves its tick, shown and never dropped."""
    layout = lay_out(_post(relief_reference="1"), "post")
    progress = Progress(timber="post", ticks=tuple(map(_ticked, layout.steps)))
    without = lay_out(_post(), "post")
    assert [tick.step for tick in orphaned(without, progress)] == [
        "foot-tenon/reference-edge",
        "foot-tenon/saw-second",
        "foot-tenon/saw-edges",
    ]
    assert len(standings(without, progress, TAPE)) == len(without.steps)


def test_a_shoulder_that_has_moved_is_not_struck() -> None:
    """Marks read from the squared end again until it is struck where it now lies."""
    struck = (_ticked(lay_out(_post(length="5"), "post").step("foot-tenon/shoulder")),)
    progress = Progress(timber="post", ticks=struck)
    assert shoulder_struck(lay_out(_post(length="5"), "post"), progress)
    assert not shoulder_struck(lay_out(_post(length="6"), "post"), progress)


def _struck(layout: Layout, *steps: str) -> bool:
    ticks = tuple(_ticked(layout.step(step)) for step in steps)
    return shoulder_struck(layout, Progress(timber=layout.stick.id, ticks=ticks))


def test_the_shoulder_is_struck_when_its_step_is_ticked() -> None:
    """Law 2: until then marks read from the squared end; without a tenon they always do."""
    layout = lay_out(corners(), "post-sw")
    assert not _struck(layout)
    assert not _struck(layout, "head-tenon/shoulder")
    assert _struck(layout, "foot-tenon/shoulder")
    assert _struck(lay_out(frame(sill()), "sill"))


def test_a_hook_that_has_gone_or_changed_is_told() -> None:
    """What a mark was measured from matters as much as how far."""
    step = lay_out(corners(), "sill").step("sw-foot-mortise/start")
    value = step.readings[0].value

    def told(**marked: Length) -> str:
        hooks = {hook.replace("_", " "): found for hook, found in marked.items()}
        tick = Tick(step=step.id, **memory_of(step)._replace(marked=hooks)._asdict(), at=NOON)
        return what_changed(step, tick, TAPE)

    assert told(squared_east_end=value) == (
        "marked from the squared east end, now from the squared west end"
    )
    assert told(squared_west_end=value, chalk_line=value) == (
        "no longer measured from the chalk line"
    )
    assert told(squared_west_end=value) == ""


def test_a_cut_made_to_a_line_that_moved_is_told() -> None:
    """Striking the line anew does not put back the wood: the saw cut is to be looked at too."""
    then, now = corners(), corners({"post-sw": real({"foot-tenon": {"first": "6-1/4"}})})
    assert _changed("foot-tenon/saw-far-first", then, now, "post-sw").startswith("marked at 2")
    moved = frame(timber("post", length="7' 10"), tenon(id="post-head", end="head"))
    was = frame(timber("post"), tenon(id="post-head", end="head"))
    said = _changed("head-tenon/saw-first", was, moved, "post")
    assert said == "cut to the shoulder line at 7' 11\", now 7' 10\" from the squared foot"


def test_an_older_tick_that_knows_no_lines_stays_good() -> None:
    """What was never kept cannot have changed."""
    layout = lay_out(corners(), "post-sw")
    step = layout.step("head-tenon/saw-first")
    tick = _ticked(step)
    kept = {name: value for name, value in tick.marked.items() if not name.endswith(LINE)}
    assert len(kept) < len(tick.marked)
    assert what_changed(step, tick.model_copy(update={"marked": kept}), TAPE) == ""
