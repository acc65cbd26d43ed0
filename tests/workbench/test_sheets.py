"""What goes on the sheets of an open project."""

import os
import shutil
from datetime import UTC, datetime
from pathlib import Path

import pytest

from benchmate.workbench.bench import Bench
from benchmate.workbench.opening import read_bench
from benchmate.workbench.sheets import frame_schedule, issue, timber_sheet

MADE = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)
CART = Path(__file__).parents[2] / "projects" / "meadow-cart-house"


def test_a_sheet_tells_what_the_screen_tells(bench: Bench) -> None:
    """The same figures in the same order, and the same withheld."""
    for timber in bench.timbers:
        walk, sheet = bench.walk(timber.id), timber_sheet(bench, timber.id, MADE)
        for step, item in zip(walk.steps, sheet.items, strict=True):
            assert item.step is step
            assert item.withheld == walk.withheld(step)
            assert item.readings == (() if item.withheld else walk.readings(step))


def test_figures_are_as_old_as_the_last_change_that_bears_on_them(demo: Path) -> None:
    """A tick on a timber it meets counts, one on another does not."""
    for path in demo.rglob("*.toml"):
        os.utime(path, (1_000_000, 1_000_000))
    os.utime(demo / "progress" / "post-sw.toml", (2_000_000, 2_000_000))
    bench = read_bench(demo)
    sill = timber_sheet(bench, "sill-south", MADE).issue.as_of
    post = timber_sheet(bench, "post-se", MADE).issue.as_of
    assert sill > post
    assert issue(bench, MADE, ("post-sw",)).as_of == sill


@pytest.mark.parametrize("timber", ["plate-north-1", "post-sw", "king", "tie-2"])
def test_a_timber_with_every_kind_of_joint_has_a_sheet(timber: str, tmp_path: Path) -> None:
    """Nothing in the cart house is withheld."""
    bench = read_bench(Path(shutil.copytree(CART, tmp_path / "cart")))
    sheet = timber_sheet(bench, timber, MADE)
    assert not sheet.stopped
    assert sheet.drawn
    assert sheet.used == ()


def test_like_members_are_counted(bench: Bench) -> None:
    """As the frame command counts them."""
    alike = frame_schedule(bench, MADE).alike
    assert any(each.startswith("2 sill: ") for each in alike)
