"""The order of work at the desk: what waits, ticking out of order, the next best job."""

from benchmate.layout.standing import State
from benchmate.model.progress import AsCut, Measured
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.workbench.actions import Sizes

TENON = "SE post: foot tenon, measure the tenon as cut"


def said(desk: Desk, label: str) -> str:
    """What the words pane says under a label."""
    return " | ".join(saying.text for saying in desk.words() if saying.label == label)


def lead(desk: Desk, step: str) -> str:
    """The sign before a step in the list."""
    rows = desk.step_rows(tails=True)
    return rows.rows[rows.row_of(desk.walk.place(step))].lead


def tails(desk: Desk) -> dict[str, str]:
    """What stands behind each timber in the list."""
    return {row.text: row.tail for row in desk.timber_rows()}


def finish_what_does_not_wait(desk: Desk, timber: str) -> None:
    """Tick every step of a timber that does not wait."""
    desk.take_timber(timber)
    for _ in desk.walk.steps:
        desk.tick()


def test_a_waiting_step_says_for_what(desk: Desk) -> None:
    """In words on the step, and by a sign of its own in the list."""
    desk.go_to("sill-south", "se-foot-mortise/start")
    assert said(desk, "waits") == "for SE post: foot tenon"
    assert said(desk, "from"), "its figure is shown all the same"
    assert lead(desk, "se-foot-mortise/start") == UNICODE.waiting
    assert lead(desk, "sw-foot-mortise/depth") == UNICODE.open_box
    desk.go_to("sill-south", "sw-foot-mortise/depth")
    assert said(desk, "waits") == ""


def test_space_leaves_a_waiting_step_alone(desk: Desk) -> None:
    """It says what the step waits for and which keys go on."""
    desk.go_to("sill-south", "se-foot-mortise/start")
    outcome = desk.tick()
    assert outcome.failed
    assert outcome.words == (
        f"Not ticked: this waits for {TENON}. "
        "Press o to tick it all the same, g for the next best job."
    )
    assert (desk.step.id, desk.standing.state) == ("se-foot-mortise/start", State.OPEN)


def test_a_step_can_always_be_ticked_out_of_order(desk: Desk) -> None:
    """One key ticks it, says so, and goes on to the next line of the same mortise."""
    desk.go_to("sill-south", "se-foot-mortise/start")
    outcome = desk.tick_out_of_order()
    assert not outcome.failed
    assert outcome.words == (
        f"Ticked out of order, before {TENON}. "
        "Should that change this figure, the step will say: look again."
    )
    assert desk.walk.standing("se-foot-mortise/start").state is State.TICKED
    assert lead(desk, "se-foot-mortise/start") == UNICODE.tick
    assert desk.step.id == "se-foot-mortise/finish"


def test_what_was_ticked_out_of_order_says_look_again_when_it_moves(desk: Desk) -> None:
    """The notice promises it: the tenon comes out narrower than drawn."""
    desk.go_to("sill-south", "se-foot-mortise/start")
    desk.tick_out_of_order()
    desk.go_to("post-se", "foot-tenon/as-cut")
    narrow = AsCut.model_validate({"width": "5-1/4"})
    outcome = desk.set_sizes(Sizes(place="foot-tenon", measured=Measured(), as_cut=narrow))
    assert outcome.words == "To look at again: South sill 2."


def test_out_of_order_is_space_where_nothing_waits(desk: Desk) -> None:
    """The same tick, the same moving on, and nothing said of any order."""
    assert desk.tick_out_of_order().words == ""
    assert desk.walk.standing("foot-tenon/far-cheek").state is State.TICKED
    assert desk.step.id == "foot-tenon/reference-edge"


def test_a_stop_refuses_any_order(desk: Desk) -> None:
    """A mortise whose tenon cannot be is not ticked by either key."""
    thin = Measured.model_validate({"first": "3-1/4"})
    desk.set_sizes(Sizes(place="foot-tenon", measured=thin, as_cut=AsCut()))
    desk.go_to("sill-south", "se-foot-mortise/start")
    for outcome in (desk.tick(), desk.tick_out_of_order()):
        assert outcome.words.startswith("Stop: this step cannot be ticked")
    assert desk.standing.tick is None
    assert said(desk, "waits") == "", "first the stop is to be put right"


def test_next_and_moving_on_pass_over_what_waits(desk: Desk) -> None:
    """From the last line that can be struck to the back-check, past the mortise that waits."""
    desk.go_to("sill-south", "sw-foot-mortise/depth")
    desk.tick()
    assert desk.step.id == "stick/back-check"
    desk.take_step(desk.walk.place("sw-foot-mortise/depth"))
    desk.next_open()
    assert desk.step.id == "stick/back-check"


def test_when_only_waiting_steps_are_left_it_is_said(desk: Desk) -> None:
    """The framer stays where he is, and the list of timbers shows that this one waits."""
    assert tails(desk)["South sill"] == "1 again  9/31"
    finish_what_does_not_wait(desk, "sill-south")
    here = desk.step.id
    outcome = desk.next_open()
    assert outcome.words == (
        f"All that is open on South sill waits for {TENON}. Press g for the next best job."
    )
    assert desk.step.id == here
    assert tails(desk)["South sill"] == "waits  18/31"


def test_a_timber_is_taken_up_at_a_step_that_does_not_wait(desk: Desk) -> None:
    """Where there is none, at the first that waits."""
    desk.take_timber("sill-south")
    assert desk.step.id == "sw-foot-mortise/finish"
    finish_what_does_not_wait(desk, "sill-south")
    desk.take_timber("post-ne")
    desk.take_timber("sill-south")
    assert desk.step.id == "se-foot-mortise/start"


def test_the_tenon_ticked_its_mortise_is_free_at_once(desk: Desk) -> None:
    """No size need be typed for it: a tenon that came out as drawn is ticked, and that is all."""
    finish_what_does_not_wait(desk, "sill-south")
    desk.go_to("post-se", "foot-tenon/as-cut")
    refused = desk.tick()
    assert refused.failed, "the tenon is not cut yet"
    assert "saw the shoulder" in refused.words
    assert not desk.tick_out_of_order().failed
    assert tails(desk)["South sill"] == "18/31"
    desk.go_to("sill-south", "se-foot-mortise/start")
    assert said(desk, "waits") == ""
    assert desk.tick().words == ""
    assert desk.step.id == "se-foot-mortise/finish"


def test_the_next_best_job_is_gone_to_with_its_reason(desk: Desk) -> None:
    """And b goes back to where one was."""
    outcome = desk.best_job()
    assert (desk.timber, desk.step.id) == ("sill-south", "sw-foot-mortise/finish")
    assert outcome.words == (
        "Next best job: South sill, mortise for SW post: finish line. "
        "It no longer reads as it was marked, and it is not cut yet."
    )
    desk.back()
    assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/far-cheek")


def test_from_a_waiting_step_the_next_best_job_is_its_tenon(desk: Desk) -> None:
    """At the next thing to do on the timber that has it."""
    desk.go_to("sill-south", "sw-foot-mortise/finish")
    desk.tick()
    desk.take_step(desk.walk.place("se-foot-mortise/start"))
    assert desk.best_job().words == (
        "Next best job: SE post, foot tenon: far cheek line. South sill waits for it."
    )
    assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/far-cheek")


def test_the_next_best_job_may_be_the_one_in_hand(desk: Desk) -> None:
    """Then one stays, and there is nothing new to go back from."""
    desk.go_to("sill-south", "sw-foot-mortise/finish")
    assert desk.best_job().words.startswith("This is the next best job: South sill, mortise")
    desk.back()
    assert desk.back().words == "There is nowhere to go back to."


def test_with_everything_ticked_there_is_no_next_best_job(desk: Desk) -> None:
    """It is said, and one stays."""
    for timber in desk.bench.timbers:
        for step in desk.bench.walk(timber.id).steps:
            desk.bench.tick(timber.id, step)
    assert desk.best_job().words == "Every step of every timber is ticked."
    assert desk.timber == "post-se"
