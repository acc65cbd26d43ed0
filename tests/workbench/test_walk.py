"""One timber as it stands."""

from pathlib import Path

import pytest

from benchmate.layout.standing import State
from benchmate.store.keeper import Keeper
from benchmate.workbench.bench import Bench


def test_the_next_open_step_goes_round(bench: Bench) -> None:
    """After the last open step the search starts again from the top."""
    walk = bench.walk("post-se")
    far_cheek = walk.place("foot-tenon/far-cheek")
    assert walk.next_open() == far_cheek
    assert walk.next_open(far_cheek) == far_cheek + 1
    assert walk.next_open(len(walk.steps) - 1) == far_cheek


def test_steps_to_pass_over_are_not_the_next(bench: Bench) -> None:
    """Passed over while there are others; with nothing else open there is no next step."""
    walk = bench.walk("post-se")
    far_cheek = walk.place("foot-tenon/far-cheek")
    assert walk.next_open(passing={"foot-tenon/far-cheek"}) == far_cheek + 1
    assert walk.next_open(passing={step.id for step in walk.steps}) is None


def test_a_step_s_state_is_found_by_its_id(bench: Bench) -> None:
    """Each step has the state that stands beside it; an id that no step has is a misuse."""
    walk = bench.walk("sill-south")
    states = {step.id: walk.standing(step.id) for step in walk.steps}
    assert tuple(states.values()) == walk.standings
    assert states["sw-foot-mortise/finish"].state is State.LOOK_AGAIN
    with pytest.raises(KeyError, match="no/such"):
        walk.standing("no/such")


def test_a_step_to_look_at_again_counts_as_open(bench: Bench) -> None:
    """It is found by next, and not counted as done."""
    walk = bench.walk("sill-south")
    again = walk.place("sw-foot-mortise/finish")
    assert walk.next_open(again - 1) == again
    assert walk.done == sum(found.state is State.TICKED for found in walk.standings)


def test_nothing_is_open_when_all_is_ticked(bench: Bench) -> None:
    """A finished timber has no next step."""
    for step in bench.walk("plate-north").steps:
        bench.tick("plate-north", step)
    assert bench.walk("plate-north").next_open() is None


def test_figures_run_from_the_shoulder_once_it_is_struck(bench: Bench) -> None:
    """Law 2: from the squared end until the reference shoulder is struck, then from there."""
    head = "head-tenon/shoulder"
    fresh, struck = bench.walk("post-nw"), bench.walk("post-se")
    assert fresh.readings(fresh.layout.step(head))[0].hook == "squared foot"
    assert struck.readings(struck.layout.step(head))[0].hook == "foot shoulder line"
    swapped = struck.readings(struck.layout.step(head), swapped=True)
    assert swapped[0].hook == "squared foot"


def test_a_finding_between_two_joints_is_told_at_both(demo: Path) -> None:
    """Whichever of the two mortises is marked or cut first, no figure of either is withheld."""
    path = demo / "project.toml"
    text = path.read_text().replace('at = "shed length"', 'at = "1\' 2-1/4"', 1)
    path.write_text(text)
    walk = Bench(Keeper.read(demo)).walk("sill-south")
    (found,) = (each for each in walk.findings if each.code == "little-wood-between")
    assert (found.feature, found.also) == ("sw-foot-mortise", "se-foot-mortise")
    told = {step.feature for step in walk.steps if found in walk.findings_at(step)}
    assert told == {"sw-foot-mortise", "se-foot-mortise"}
    assert not any(map(walk.withheld, walk.steps))


def test_an_unknown_step_is_the_first(bench: Bench) -> None:
    """A place remembered for a step that has gone falls back to the top."""
    assert bench.walk("post-nw").place("no/such") == 0
