"""Bents and walls, by where timbers lie."""

from pathlib import Path

from benchmate.workbench.bench import Bench
from benchmate.workbench.bents import bents_of
from benchmate.workbench.opening import read_bench
from tests.builders import frame, timber

PROJECTS = Path(__file__).parents[2] / "projects"


def test_the_shed_has_three_bents_and_two_walls(shed: Bench) -> None:
    """Ties and cross sills are in bents, plates and long sills in walls, posts in both."""
    found = bents_of(shed.frame)
    assert found.lines == ("line 1", "line 2", "line 3", "line a", "line b")
    assert (found.bents["post-sw"], found.walls["post-sw"]) == ("line 1", "line a")
    assert found.bents["girder"] == found.bents["tie-middle"] == "line 2"
    assert found.walls["plate-north"] == "line b"
    assert "plate-north" not in found.bents
    assert "joist-w1" not in {**found.bents, **found.walls}
    assert "joist-w1" in found.placed


def test_a_brace_and_a_principal_lie_within_their_posts() -> None:
    """Wood that no line runs through is in the bent whose posts it lies between."""
    bench = read_bench(PROJECTS / "meadow-cart-house")
    found = bents_of(bench.frame)
    names = {each.name: each.id for each in bench.timbers}
    assert found.walls[names["SW brace"]] == "line a"
    assert found.bents[names["South principal"]] == "line 2"
    assert found.bents[names["South tie brace"]] == "line 3"
    assert names["Summer"] not in found.bents


def test_timbers_without_a_place_are_in_none(bench: Bench) -> None:
    """No place, no bent."""
    found = bents_of(bench.frame)
    assert not found.bents
    assert not found.walls
    assert not found.placed


def test_without_plates_walls_run_the_longer_way() -> None:
    """Four posts 20' by 10': the lines along the 20' are walls; no line counts without a post."""
    for far, bents in (("20'", ("w", "e")), ("5'", ("s", "n"))):
        posts = [
            timber(
                f"post-{north}-{east}",
                at={"east": f"line {east}", "north": f"line {north}"},
                reference_end_at="0",
            )
            for east in "we"
            for north in "sn"
        ]
        lines = {"line w": "0", "line e": far, "line s": "0", "line n": "10'", "line x": "3'"}
        found = bents_of(frame(*posts, lines=lines))
        assert set(found.bents.values()) == {f"line {each}" for each in bents}
        assert "line x" not in found.lines
