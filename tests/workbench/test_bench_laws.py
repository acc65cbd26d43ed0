"""Any day's work, with any restarts in it, against the plainest model: a list of states."""

import tempfile
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.store.keeper import Keeper
from benchmate.store.progress_file import progress_text
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from tests.store.samples import STORE, put

NAMES = '\n[lengths]\ndeck = "1-1/4"\nreveal = "7"\n'
TIMBERS = ("post-sw", "south-sill")
SIZES = ("", "6-7/8", "7", "7-1/8")

Done = Callable[[Bench], object]


def tick(timber: str, place: int) -> Done:
    """Tick a step, ticked or not, measuring or not."""
    return lambda bench: bench.tick(timber, bench.walk(timber).steps[place])


def untick(timber: str, place: int) -> Done:
    """Take a step's tick off, if it has one."""
    return lambda bench: bench.untick(timber, bench.walk(timber).steps[place])


def measure(timber: str, place: str, first: str, width: str) -> Done:
    """Type sizes at a place, or take them out."""
    given = {"first": first} if first else {}
    cut = {"width": width} if width else {}
    sizes = Sizes(
        place=place,
        measured=Measured.model_validate(given),
        as_cut=AsCut.model_validate(cut) if timber == "post-sw" else None,
    )
    return lambda bench: bench.set_sizes(timber, "stick/faces", sizes)


def name(key: str, text: str) -> Done:
    """Write another text for a name."""
    return lambda bench: bench.set_name("lengths", key, text)


def edit(place: int, lines: int) -> Done:
    """Put lines into the project file, or take comments out of it."""

    def change(bench: Bench) -> None:
        old = bench.project_text().split("\n")
        if lines:
            at = place % (len(old) + 1)
            new = [*old[:at], *(f"# {place} {n}" for n in range(lines)), *old[at:]]
        else:
            new = [line for line in old if not line.startswith("#")]
        bench.edit_project("comments", "\n".join(new))

    return change


TIMBER = st.sampled_from(TIMBERS)
PLACE = st.integers(0, 12)
ACTIONS = st.one_of(
    st.builds(tick, TIMBER, PLACE),
    st.builds(untick, TIMBER, PLACE),
    st.builds(
        measure,
        TIMBER,
        st.sampled_from(("foot-tenon", "all", "middle")),
        st.sampled_from(SIZES),
        st.sampled_from(("", "5")),
    ),
    st.builds(name, st.sampled_from(("deck", "reveal")), st.sampled_from(("1", "2", "7"))),
    st.builds(edit, PLACE, st.integers(0, 2)),
)
MOVES = st.one_of(ACTIONS, ACTIONS, st.sampled_from(["undo", "undo", "redo", "restart"]))


def state(folder: Path) -> dict[str, bytes]:
    """Every file, byte for byte; one with nothing in it is as good as none."""
    found = {
        f"progress/{timber}.toml": progress_text(Progress(timber=timber)).encode()
        for timber in TIMBERS
    }
    paths = folder.rglob("*.toml")
    return found | {str(path.relative_to(folder)): path.read_bytes() for path in paths}


@settings(max_examples=30)
@given(st.lists(MOVES, max_size=25))
def test_any_work_is_undone_and_done_again(moves: list[Done | str]) -> None:
    """Law: undo goes back through the states there were, redo on again, whatever came between."""
    times = iter(datetime(2026, 3, 2, 8, tzinfo=UTC) + timedelta(minutes=n) for n in range(999))

    def clock() -> datetime:
        return next(times)

    with tempfile.TemporaryDirectory() as there:
        folder = put(Path(there) / "store", STORE + NAMES)
        bench = Bench(Keeper.open(folder), clock)
        states, at = [state(folder)], 0
        for move in (*moves, "restart", *["undo"] * len(moves), *["redo"] * len(moves)):
            if move == "restart":
                bench.close()
                bench = Bench(Keeper.open(folder), clock)
            elif move == "undo":
                assert (bench.undo() is None) is (at == 0)
                at = max(at - 1, 0)
            elif move == "redo":
                assert (bench.redo() is None) is (at == len(states) - 1)
                at = min(at + 1, len(states) - 1)
            elif not isinstance(move, str):
                move(bench)
                if state(folder) != states[at]:
                    states, at = [*states[: at + 1], state(folder)], at + 1
            assert state(folder) == states[at]
        assert bench.journal_trouble() == ""
        bench.close()
