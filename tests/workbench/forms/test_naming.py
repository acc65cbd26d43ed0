import pytest

from benchmate.workbench.forms.naming import counted_on, other_side, slug, unused


@pytest.mark.parametrize(
    ("name", "taken", "found"),
    [
        ("joist-2", {"joist-2"}, "joist-3"),
        ("joist-2", {"joist-2", "joist-3"}, "joist-4"),
        ("Joist 9", {"Joist 9"}, "Joist 10"),
        ("joist-w1", {"joist-w1"}, "joist-w2"),
        ("post-se", {"post-se"}, "post-se-2"),
        ("SE post", {"SE post"}, "SE post 2"),
        ("b07", {"b07"}, "b08"),
        ("free", set(), "free"),
    ],
)
def test_names_are_counted_on(name: str, taken: set[str], found: str) -> None:
    """From their last number, or from 2."""
    assert counted_on(name, taken) == found


@pytest.mark.parametrize(
    ("name", "east_and_west", "north_and_south"),
    [
        ("post-se", "post-sw", "post-ne"),
        ("SE post", "SW post", "NE post"),
        ("West sill", "East sill", "West sill"),
        ("joist-w1", "joist-e1", "joist-w1"),
        ("South middle post", "South middle post", "North middle post"),
        ("post-sm", "post-sm", "post-nm"),
        ("south-girt-west", "south-girt-east", "north-girt-west"),
    ],
)
def test_names_are_turned_over(name: str, east_and_west: str, north_and_south: str) -> None:
    """By the words and letters of the compass, and back again."""
    assert other_side(name, ["east", "west"]) == east_and_west
    assert other_side(name, ["north", "south"]) == north_and_south
    assert other_side(east_and_west, ["east", "west"]) == name


def test_an_id_is_made_of_a_name() -> None:
    """And of none where there is no word to begin with."""
    assert slug("West joist 1") == "west-joist-1"
    assert slug("1st") == slug("") == ""
    assert unused("a", {"a", "a-2"}) == "a-3"
