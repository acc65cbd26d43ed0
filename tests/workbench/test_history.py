"""What was done on a timber."""

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from benchmate.model.progress import AsCut, Measured
from benchmate.store.keeper import Keeper
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.history import AS_DRAWN

NW = "post-nw"


def told(bench: Bench, timber: str = NW) -> list[tuple[str, str, bool]]:
    """The history in words, with its figures, and what was taken back."""
    return [(each.words, each.figure, each.undone) for each in bench.history(timber)]


def test_every_action_is_told_newest_first(bench: Bench) -> None:
    """Ticks with the figure they were made at, sizes as typed, taken back or not."""
    layout = bench.walk(NW).layout
    bench.tick(NW, layout.step("foot-tenon/far-cheek"))
    bench.set_sizes(NW, "foot-tenon/as-cut", sizes({"first": "7-1/8", "second": "7"}, {}))
    bench.set_sizes(NW, "foot-tenon/as-cut", sizes({"first": "7-1/8"}, {"width": "5"}))
    bench.undo()
    bench.set_sizes(NW, "foot-tenon/as-cut", sizes({}, {"width": "5", "length": "4"}))
    bench.set_sizes(NW, "foot-tenon/as-cut", sizes({}, {}))
    bench.tick("post-ne", bench.walk("post-ne").layout.step("end/square"))
    assert told(bench) == [
        ("sizes at foot tenon", AS_DRAWN, False),
        ("sizes at foot tenon", AS_DRAWN + ' / width 5", length 4"', False),
        ("sizes at foot tenon", 'first 7-1/8" / width 5"', True),
        ("sizes at foot tenon", '7-1/8" x 7"', False),
        ("tick on Foot tenon: far cheek line", '3-1/2"', False),
    ]
    times = [event.at for event in bench.history(NW)]
    assert times == sorted(times, reverse=True)


def sizes(measured: dict[str, str], as_cut: dict[str, str]) -> Sizes:
    """Sizes typed at the foot tenon."""
    return Sizes(
        place="foot-tenon",
        measured=Measured.model_validate(measured),
        as_cut=AsCut.model_validate(as_cut),
    )


def test_ticks_that_the_journal_does_not_know_are_told_by_their_own_time(bench: Bench) -> None:
    """Those made before there was a journal have a history too."""
    before = bench.history("post-se")
    ticks = bench.walk("post-se").progress.ticks
    assert len(before) == len(ticks)
    assert before[0].at == max(tick.at for tick in ticks)
    assert "tick on Ends: square the foot" in [event.words for event in before]


def test_a_tick_is_told_once_whatever_became_of_it(
    bench: Bench, demo: Path, clock: Callable[[], datetime]
) -> None:
    """By its action where the journal has one, taken off, put back, and after a restart."""
    step = bench.walk(NW).layout.step("end/square")
    bench.tick(NW, step)
    bench.untick(NW, step)
    bench.undo()
    bench.close()
    again = Bench(Keeper.read(demo), clock)
    assert told(again) == [
        ("tick taken off Ends: square the foot", "", True),
        ("tick on Ends: square the foot", "", False),
    ]


def test_what_was_done_to_the_frame_is_told_on_every_timber(bench: Bench) -> None:
    """Levels move figures everywhere; it was done from one timber, and leads back there."""
    bench.set_name("lengths", "deck", "1-1/2", timber="post-sw", step="inside-chamfer/foot-stop")
    bench.edit_project("note added", bench.project_text() + "# a note\n")
    for timber in (NW, "post-ne"):
        edit, name = bench.history(timber)[:2]
        assert (edit.words, edit.figure, edit.of_frame) == ("note added", "", True)
        assert (name.words, name.figure, name.of_frame) == (
            "deck written as 1-1/2",
            "was 1-1/4",
            True,
        )
        assert (name.timber, name.step) == ("post-sw", "inside-chamfer/foot-stop")


def test_what_was_done_in_one_second_is_told_in_its_order(demo: Path) -> None:
    """The time is kept to the second, the order by the journal."""
    moment = datetime(2026, 3, 2, 8).astimezone()
    bench = Bench(Keeper.open(demo), lambda: moment)
    layout = bench.walk(NW).layout
    for step in ("end/square", "foot-tenon/shoulder"):
        bench.tick(NW, layout.step(step))
    bench.untick(NW, layout.step("end/square"))
    assert [words for words, _, _ in told(bench)] == [
        "tick taken off Ends: square the foot",
        "tick on Foot tenon: shoulder line",
        "tick on Ends: square the foot",
    ]
    bench.close()
