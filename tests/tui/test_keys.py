"""The one table of keys, and what is made from it."""

from benchmate.tui.bindings import LIST_ACTIONS, action_name, bindings, hints
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.help_text import help_sayings
from benchmate.tui.keys import KEYS
from benchmate.tui.screens.bench import BenchScreen


def test_no_key_is_given_twice() -> None:
    """One key does one thing, and one id names one key."""
    names = [name for key in KEYS for name in key.keys]
    assert len(names) == len(set(names))
    assert len({key.id for key in KEYS}) == len(KEYS)


def test_every_key_is_bound_and_has_its_action() -> None:
    """Each binding has an id of its own, so that it can be remapped, and the screen acts on it."""
    made = bindings()
    assert {binding.id for binding in made} == {
        f"bench.{key.id}" for key in KEYS if key.id not in LIST_ACTIONS
    }
    for binding in made:
        assert callable(getattr(BenchScreen, f"action_{binding.action}"))


def test_the_footer_shows_every_labelled_key_and_keeps_help_and_quit() -> None:
    """The footer is the table, less what has no label."""
    shown, kept = hints()
    assert [hint.action for hint in (*shown, *kept)] == [
        action_name(key.id) for key in KEYS if key.label
    ]
    assert [hint.key for hint in kept] == ["?", "q"]


def test_help_tells_every_key_and_the_caution() -> None:
    """Nothing the keys do is left out."""
    said = {saying.label: saying.text for saying in help_sayings(UNICODE)}
    for key in KEYS:
        assert said[key.shown] == key.help
    assert "licensed engineer" in help_sayings(UNICODE)[-1].text


def test_help_explains_waiting_out_of_order_and_the_next_best_job() -> None:
    """A line each, and the sign that stands in the list."""
    said = {saying.label: saying.text for saying in help_sayings(UNICODE)}
    assert said["waits"].startswith(f"{UNICODE.waiting} in the list")
    assert "cut to the tenon" in said["waits"]
    assert said["order"].startswith("o ticks a waiting step all the same")
    assert said["job"].startswith("g goes to a mark to look at again")


def test_the_list_gives_way_to_the_next_best_job() -> None:
    """g is the list's own key for its first row; on the bench it is the next best job."""
    first = {binding.id: binding for binding in bindings()}
    assert [name for name, binding in first.items() if binding.priority] == ["bench.best-job"]
