"""What is shown from two paces: the figure, and all that guards it on the bench."""

from dataclasses import replace
from pathlib import Path

from benchmate.layout.standing import State
from benchmate.measure.length import Length
from benchmate.model.progress import Measured
from benchmate.tui.desk import Desk
from benchmate.tui.distant import LOOK_AGAIN, OLD, STOP, TICKED, WAITS, distant
from benchmate.workbench.actions import Sizes


def labels(desk: Desk) -> list[str]:
    """What the words say, by label."""
    return [saying.label for saying in distant(desk).words]


def test_the_figure_with_its_face_hook_and_waste_side(desk: Desk) -> None:
    """The same figure and the same sentences as on the bench."""
    shown = distant(desk)
    assert shown.figure == desk.figure()
    assert (shown.alarms, shown.headline, shown.other_end) == ((), "", "")
    assert labels(desk) == ["from", "on", "waste", "care"]
    assert set(shown.words) <= set(desk.words())
    assert shown.after == '1-1/2" Foot tenon: relief line, East side'


def test_what_comes_next_is_told_as_it_will_be_read_then(desk: Desk) -> None:
    """Ticking the shoulder line turns the next figures round, and the preview knows."""
    desk.take_timber("post-nw")
    struck = desk.walk.layout.shoulder
    assert struck is not None
    assert not desk.walk.struck
    desk.take_step(desk.walk.place(struck))
    for step in desk.walk.steps:
        if step.line and step.id != struck and len(step.readings) == 2:
            break
    steps = desk.walk.steps
    for other in steps:
        if other.id not in (struck, step.id) and desk.walk.standing(other.id).tick is None:
            desk.bench.tick(desk.timber, other)
    told = distant(desk).after
    desk.tick()
    assert desk.step.id == step.id
    now = desk.figure()
    assert now is not None
    assert told == f"{now.text()} {step.title}"


def test_a_stop_shows_no_figure(desk: Desk) -> None:
    """STOP stands in its place, with what is wrong and how to mend it."""
    desk.go_to("post-se", "foot-tenon/section")
    kept = desk.bench.sizes("post-se", desk.step)
    thin = Measured(first=Length.inches(3))
    desk.set_sizes(Sizes(place=kept.place, measured=thin, as_cut=kept.as_cut))
    desk.go_to("post-se", "foot-tenon/far-cheek")
    shown = distant(desk)
    assert (shown.figure, shown.headline, shown.after) == (None, STOP, "")
    assert "stop" in labels(desk)
    assert not {"from", "waste"} & set(labels(desk))


def test_a_waiting_step_says_so_before_all_else(desk: Desk) -> None:
    """The figure is there, under the word, and what it waits for is among the words."""
    desk.go_to("sill-north", "ne-foot-mortise/start")
    assert desk.waiting
    assert distant(desk).alarms == (WAITS,)
    assert "waits" in labels(desk)


def test_look_again_and_ticked_are_plain(desk: Desk) -> None:
    """A mark that has moved is not taken for one that is done, nor for an open one."""
    desk.go_to("sill-south", "sw-foot-mortise/finish")
    assert distant(desk).alarms == (LOOK_AGAIN,)
    assert "again" in labels(desk)
    desk.tick()
    desk.go_to("sill-south", "sw-foot-mortise/finish")
    assert desk.standing.state is State.TICKED
    assert distant(desk).alarms == (TICKED,)


def test_figures_of_a_broken_file_are_called_old(desk: Desk, demo: Path) -> None:
    """What was last read may no longer be true."""
    (demo / "project.toml").write_text("name = ", "utf-8")
    desk.look()
    assert distant(desk).alarms == (OLD,)


def test_a_step_of_several_figures_is_not_told_by_one(desk: Desk) -> None:
    """Its title stands large, and every figure is in the words."""
    desk.go_to("post-se", "stick/back-check")
    shown = distant(desk)
    assert shown.figure is None
    assert shown.headline == desk.step.title
    assert labels(desk).count("and") == len(desk.step.readings) - 1


def test_a_step_without_figures_shows_its_title_and_why(desk: Desk) -> None:
    """There is nothing to cut to, so the reason has room."""
    desk.go_to("post-se", "stick/crown")
    shown = distant(desk)
    assert (shown.figure, shown.headline) == (None, "Sight the crown, knots and wane")
    assert "why" in labels(desk)


def test_the_swap_is_respected(desk: Desk) -> None:
    """Square first or shoulder first, as on the bench."""
    desk.go_to("post-se", "head-tenon/shoulder")
    before = distant(desk)
    desk.swap()
    assert distant(desk).figure == desk.figure() != before.figure
    assert replace(before, figure=None) != replace(distant(desk), figure=None)
