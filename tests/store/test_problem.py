from dataclasses import replace
from pathlib import Path

from benchmate.store.problem import MOST_SHOWN, KeepError, Problem, ProjectError

TAPE = Problem(
    file="project.toml",
    line=14,
    key="timber[2].length",
    excerpt='length = "4-3/7"\n           ^',
    message="3/7 is not a tape fraction",
    remedy="write 7/16",
)


def test_a_problem_says_where_what_and_what_to_do() -> None:
    """The four parts of a message stand in their order, the caret under its character."""
    assert TAPE.text() == (
        "project.toml:14: timber[2].length: 3/7 is not a tape fraction\n"
        '  length = "4-3/7"\n'
        "             ^\n"
        "  write 7/16"
    )


def test_what_is_not_known_is_left_out() -> None:
    """A problem of the whole file has neither line nor key nor excerpt."""
    bare = replace(TAPE, line=None, key="", excerpt="", remedy="")
    assert bare.text() == "project.toml: 3/7 is not a tape fraction"


def test_no_part_can_act_on_a_terminal() -> None:
    """Control characters are shown as escapes wherever they come from."""
    nasty = replace(
        TAPE, file="a\x1b", key="b\x07", excerpt="c\x9b", message="d\n", remedy="e\u202e"
    )
    assert nasty.text() == "a\\u001b:14: b\\u0007: d\\u000a\n  c\\u009b\n  e\\u202e"


def test_many_problems_are_counted_and_not_shown() -> None:
    """More problems than fit two screens end in their number; all of them are kept."""
    error = ProjectError((TAPE,) * (MOST_SHOWN + 3))
    assert str(error).count("tape fraction") == MOST_SHOWN
    assert str(error).endswith("\n\nand 3 more")
    assert len(error.problems) == MOST_SHOWN + 3


def test_problems_that_fit_are_all_shown() -> None:
    """At the most that is shown, nothing is left out and nothing is counted."""
    shown = str(ProjectError((TAPE,) * MOST_SHOWN))
    assert shown.count("tape fraction") == MOST_SHOWN
    assert "more" not in shown


def test_trouble_with_a_disk_is_one_line() -> None:
    """The path, the trouble and the remedy, safe for a terminal."""
    error = KeepError(Path("a\x1b/post.toml"), "the disk is full\x07", "make room")
    assert str(error) == "a\\u001b/post.toml: the disk is full\\u0007; make room"
