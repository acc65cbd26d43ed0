"""The joints of a frame, one row each."""

from pathlib import Path

from benchmate.workbench.bench import Bench
from benchmate.workbench.joint_rows import joint_rows
from benchmate.workbench.opening import read_bench

CART = Path(__file__).parents[2] / "projects" / "meadow-cart-house"


def test_every_joint_has_a_row(bench: Bench) -> None:
    """In file order; a chamfer is no joint."""
    ids = [row.id for row in joint_rows(bench)]
    assert ids == [work.id for work in bench.project.works if work.joins()]
    assert "inside-chamfer" not in ids


def test_every_family_tells_its_sizes() -> None:
    """In a frame with all of them: places on both timbers, sizes, pegs with their holes."""
    rows = {row.id: row for row in joint_rows(read_bench(CART))}
    assert len({row.family for row in rows.values()}) > 10
    for row in rows.values():
        assert len(row.where) >= len(row.timbers) - 1, row.id
        assert row.where
        assert row.stops == ()
    pegged = [row.pegs for row in rows.values() if row.pegs]
    assert any("pegs in" in each and "from the shoulder" in each for each in pegged)
