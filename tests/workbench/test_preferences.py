"""A framer's own settings: they change what is shown and suggested, and nothing else."""

import os
import shutil
from datetime import UTC, datetime
from pathlib import Path

import pytest

from benchmate.layout.standing import memory_of
from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.measure.reading import Unit
from benchmate.model.project import Project
from benchmate.store.preference_place import preference_path
from benchmate.workbench.bench import Bench
from benchmate.workbench.opening import open_bench, read_bench
from benchmate.workbench.preferences import (
    PLAIN,
    Found,
    NotSetError,
    Preferences,
    find_preferences,
    keep_preferences,
    reckon_tape,
)
from benchmate.workbench.print_out import print_frame
from tests.house.tree import ROOT

DEMOS = sorted((ROOT / "projects").iterdir())
METRIC = Preferences({"units": "mm"})
INCHES = Preferences({"units": "inches", "graduation": "1/64"})


def put(text: str) -> Path:
    """Write the settings of the test's user."""
    path = preference_path(os.environ)
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, "utf-8")
    return path


def _values(step: Step) -> list[Length]:
    """The figures of a step, in order."""
    return [reading.value for reading in (*step.readings, *step.rests)]


def marks(bench: Bench) -> object:
    """All that is marked, remembered by ticks, and found, without a word of prose."""
    walks = [bench.walk(timber.id) for timber in bench.timbers]
    return [
        (
            [(step.id, memory_of(step), _values(step)) for step in walk.steps],
            [(each.state, each.tick) for each in walk.standings],
            [(found.code, found.feature) for found in walk.findings],
        )
        for walk in walks
    ]


@pytest.mark.parametrize("demo", DEMOS, ids=lambda path: str(path.name))
def test_no_mark_and_no_tick_follows_from_a_setting(demo: Path) -> None:
    """Every demo reads to the nanometre as it did, on a tape of the other system and back."""
    bench = read_bench(demo)
    own = INCHES if bench.project.bare is Unit.MM else METRIC
    before = marks(bench)
    bench.prefer(own)
    assert bench.tape == own.tape(bench.project) != bench.project.tape
    assert marks(bench) == before
    bench.prefer(PLAIN)
    assert bench.tape == bench.project.tape
    assert marks(bench) == before


def test_the_words_of_a_step_follow_the_tape() -> None:
    """Figures within sentences too, so that no screen mixes two units."""
    bench = read_bench(DEMOS[-1])
    bench.prefer(METRIC)
    for timber in bench.timbers:
        walk = bench.walk(timber.id)
        told = " ".join(step.why + step.caution for step in walk.steps)
        assert walk.tape.style is Style.MM
        assert '"' not in told


def test_what_is_printed_goes_by_the_project(tmp_path: Path) -> None:
    """The same bytes, whatever the screen shows."""
    bench = read_bench(DEMOS[-1])

    def clock() -> datetime:
        return datetime(2026, 1, 2, tzinfo=UTC)

    plain = print_frame(bench.by_project(), tmp_path / "a", clock=clock)
    bench.prefer(METRIC)
    metric = print_frame(bench.by_project(), tmp_path / "b", clock=clock)
    for name in plain.files:
        assert (plain.folder / name).read_bytes() == (metric.folder / name).read_bytes()


def test_a_tick_on_another_tape_is_the_same_tick(tmp_path: Path) -> None:
    """Made on millimetres, it is true for whoever opens the project in inches."""
    folder = Path(shutil.copytree(ROOT / "tests/projects/four-posts", tmp_path / "shed"))
    bench = open_bench(folder)
    bench.prefer(METRIC)
    walk = bench.walk(bench.timbers[0].id)
    step = walk.steps[walk.next_open() or 0]
    bench.tick(walk.timber.id, step)
    bench.close()
    other = read_bench(folder)
    tick = other.walk(walk.timber.id).progress.tick(step.id)
    assert tick is not None
    assert dict(tick.marked) == memory_of(step).marked
    assert other.walk(walk.timber.id).standing(step.id).changed == ""


def test_a_bare_number_stays_the_projects() -> None:
    """And where the tape on the screen has other units, that is said."""
    bench = read_bench(DEMOS[-1])
    assert bench.bare_words == ""
    bench.prefer(METRIC)
    assert bench.bare_words == "without a unit: inches"
    bench.prefer(INCHES)
    assert bench.bare_words == ""


def test_a_graduation_counts_where_it_is_one_of_the_units_shown() -> None:
    """Else the project's own, where that is, else the usual."""
    fine = Preferences({"graduation": "1/64"})
    metric = Project(name="m", units="mm", graduation="0.5 mm")
    inches = Project(name="i", units="inches", graduation="1/32")
    assert fine.tape(metric) == metric.tape
    assert fine.tape(inches).graduation is Graduation.SIXTY_FOURTH
    assert METRIC.tape(inches) == Tape(style=Style.MM, graduation=Graduation.MM)
    feet = Preferences({"units": "feet and inches"})
    assert feet.tape(inches).graduation is Graduation.THIRTY_SECOND


def test_a_bad_file_is_told_in_a_line_and_the_default_counts() -> None:
    """File, line, key and remedy; whatever else is sound holds."""
    path = put('units = "mm"\ncolours = "pink"\nsize = 3\n')
    found = find_preferences(os.environ)
    assert found.preferences.texts == {"units": "mm"}
    assert found.trouble == (
        f'{path}:2: colours: is "pink", which cannot be set here; write one of dark, light, '
        "high-contrast, none. The default counts meanwhile. There are 1 more."
    )


def test_settings_are_kept_and_read_again() -> None:
    """Only what differs is written, over comments and all."""
    path = put('# mine\nunits = "mm"\n')
    kept = keep_preferences(find_preferences(os.environ), {"units": "mm", "housing": "3/4 in"})
    assert path.read_text("utf-8") == '# mine\nunits = "mm"\nhousing = "3/4 in"\n'
    assert kept.preferences.own.lengths == {"housing": Length.inches(0, 3, 4)}
    assert kept.preferences.own.units == "mm"
    assert not kept.trouble


def test_what_cannot_be_kept_is_told_and_nothing_written() -> None:
    """A file that is no TOML, a place that is none, no home at all."""
    path = put("units = mm\n")
    with pytest.raises(NotSetError, match=r"settings\.toml:1: "):
        keep_preferences(find_preferences(os.environ), {"units": "mm"})
    assert path.read_text("utf-8") == "units = mm\n"
    path.unlink()
    found = find_preferences(os.environ)
    path.parent.rmdir()
    path.parent.write_text("", "utf-8")
    with pytest.raises(NotSetError):
        keep_preferences(found, {"units": "mm"})
    with pytest.raises(NotSetError, match="XDG_CONFIG_HOME"):
        keep_preferences(Found(preferences=PLAIN), {"units": "mm"})


def test_without_a_home_nothing_is_set(monkeypatch: pytest.MonkeyPatch) -> None:
    """The program opens all the same."""

    def homeless() -> Path:
        raise RuntimeError("no home")

    monkeypatch.setattr(Path, "home", homeless)
    assert find_preferences({}) == Found(preferences=PLAIN)


def test_the_calculator_goes_by_them_where_nothing_is_said() -> None:
    """The command line goes first; a mark of other units counts nothing."""
    assert reckon_tape(PLAIN, "", "") == ("feet and inches", "")
    assert reckon_tape(INCHES, "", "") == ("inches", "1/64")
    assert reckon_tape(INCHES, "mm", "") == ("mm", "")
    assert reckon_tape(INCHES, "inches", "1/8") == ("inches", "1/8")
