"""How far a whole timber is."""

from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.model.feature import Stage
from benchmate.model.progress import SIGN_WORDS, AsCut, Measured
from benchmate.store.progress_file import progress_text
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.timber_state import (
    Check,
    Made,
    TimberState,
    signs_data,
    state_line,
    state_of,
    told_of,
)

POST, SILL = "post-ne", "sill-south"


def steps(
    bench: Bench, *, before: Stage, start: Stage = Stage.CHOOSE, on: str = POST
) -> tuple[Step, ...]:
    """A timber's steps of some stages."""
    return tuple(each for each in bench.walk(on).steps if start <= each.stage < before)


def ticked(bench: Bench, *, before: Stage, on: str = POST) -> None:
    """Tick every step of a timber up to a stage."""
    for step in steps(bench, before=before, on=on):
        bench.tick(on, step)


def tenon_came_out_thin(bench: Bench) -> None:
    """Type a thinner foot tenon of the SW post, so that its mortise in the sill moves."""
    post = bench.walk("post-sw").progress
    sizes = Sizes(
        place="foot-tenon",
        measured=post.measured.get("foot-tenon", Measured()),
        as_cut=AsCut(thickness=Length.inches(1, 7, 8)),
    )
    bench.set_sizes("post-sw", "", sizes)


def state(bench: Bench, on: str = POST) -> TimberState:
    """How far a timber is."""
    return state_of(bench.walk(on))


def test_the_first_four_states_follow_from_ticks(bench: Bench) -> None:
    """Not started, begun, laid out once the last step before cutting is ticked, then cut."""
    assert (state(bench).made, state(bench).sign) == (Made.NOT_STARTED, "-----")
    layout = steps(bench, before=Stage.CUT)
    for step in layout[:-1]:
        bench.tick(POST, step)
    assert (state(bench).made, state(bench).sign) == (Made.BEGUN, "l----")
    bench.tick(POST, layout[-1])
    assert (state(bench).made, state(bench).sign) == (Made.LAID_OUT, "L----")
    making = steps(bench, start=Stage.CUT, before=Stage.AS_CUT)
    for step in making[:-1]:
        bench.tick(POST, step)
    assert state(bench).made is Made.LAID_OUT
    bench.tick(POST, making[-1])
    assert (state(bench).words, state(bench).sign) == ("cut", "L-C--")
    assert state_line(bench.walk(POST)).startswith("cut; ")


def test_a_tick_that_is_no_longer_true_lays_nothing_out(bench: Bench) -> None:
    """A mark that moved is to be struck anew first."""
    ticked(bench, before=Stage.CUT, on=SILL)
    assert state(bench, SILL).made is Made.LAID_OUT
    tenon_came_out_thin(bench)
    assert bench.walk(SILL).look_again
    assert state(bench, SILL).made is Made.BEGUN


def test_a_second_check_holds_until_a_mark_changes(bench: Bench) -> None:
    """A mark that no longer reads as ticked makes it void, and so does one ticked anew since."""
    ticked(bench, before=Stage.CUT, on=SILL)
    assert bench.sign(SILL, "checked")
    assert (state(bench, SILL).words, state(bench, SILL).sign) == ("checked", "L2---")
    bench.tick(SILL, steps(bench, start=Stage.CUT, before=Stage.LABEL, on=SILL)[0])
    assert state(bench, SILL).check is Check.HOLDS
    tenon_came_out_thin(bench)
    assert state(bench, SILL).words == "begun, check again"
    assert state(bench, SILL).sign == "l!---"
    bench.sign(SILL, "checked")
    assert state(bench, SILL).check is Check.AGAIN
    assert "put that right, then check again" in told_of(state(bench, SILL), "checked")
    ticked(bench, before=Stage.CUT, on=SILL)
    assert state(bench, SILL).words == "laid out, check again"
    assert bench.sign(SILL, "checked"), "a void check is made anew, not taken off"
    assert state(bench, SILL).check is Check.HOLDS
    assert not bench.sign(SILL, "checked")
    assert state(bench, SILL).check is Check.NONE


def test_signing_is_undone_redone_and_in_the_history(bench: Bench) -> None:
    """Each is one action of the journal, and the file is the same bytes again."""
    before = bench.walk(POST).progress
    for word in SIGN_WORDS:
        bench.sign(POST, word)
    after = bench.walk(POST).progress
    assert [each.what for each in after.signed] == list(SIGN_WORDS)
    words = [event.words for event in bench.history(POST)]
    assert words == ["assembled", "fitted", "checked by a second person"]
    for _ in SIGN_WORDS:
        bench.undo()
    assert bench.walk(POST).progress == before
    assert all(event.undone for event in bench.history(POST))
    for _ in SIGN_WORDS:
        bench.redo()
    assert progress_text(bench.walk(POST).progress) == progress_text(after)
    bench.sign(POST, "fitted")
    assert bench.history(POST)[0].words == "no longer fitted"


def test_the_history_tells_what_is_signed_by_no_journal(bench: Bench) -> None:
    """With the journal gone, the time in the file tells it."""
    bench.sign(POST, "fitted")
    (bench.folder / "journal.jsonl").unlink()
    assert [event.words for event in bench.history(POST)] == ["fitted"]


def test_out_of_order_is_allowed_and_said(bench: Bench) -> None:
    """Assembled before it is fitted or cut is kept, and told."""
    bench.sign(POST, "assembled")
    assert state(bench).words == "assembled, not fitted, not cut"
    assert told_of(state(bench), "assembled") == "It is neither fitted nor cut yet."
    bench.sign(POST, "fitted")
    assert told_of(state(bench), "assembled") == "It is not cut yet."
    bench.sign(POST, "checked")
    assert told_of(state(bench), "checked") == "It is not laid out yet."


def test_the_plain_data_hold_state_and_times(bench: Bench) -> None:
    """For `frame --json`."""
    bench.sign(POST, "fitted")
    data = signs_data(bench.walk(POST))
    assert data["state"] == "fitted"
    assert list(data["signed"]) == ["fitted"]
    assert data["done"] == 0
    assert data["steps"] == len(bench.walk(POST).steps)
