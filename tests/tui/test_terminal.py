"""The program in a real terminal: started, ticked, killed, started again."""

import re
import signal
from pathlib import Path

import pytest

from tests.terminal import LEFT_ALTERNATE_SCREEN, Terminal, plain_environ

ASKS_FOR_COLOUR = re.compile(rb"\x1b\[(?:[0-9;]*;)?(?:[34]8;[25];|3[0-7]m|4[0-7]m)")
"""A colour in any of the ways a terminal is asked for one."""


@pytest.fixture
def environ(tmp_path: Path) -> dict[str, str]:
    """A user's environment with nothing in it yet."""
    return plain_environ(tmp_path / "home")


def test_a_tick_survives_sigkill(demo: Path, environ: dict[str, str]) -> None:
    """A tick shown as kept is there after the program is killed outright and started again."""
    with Terminal(str(demo), environ=environ, size=(80, 24)) as first:
        first.wait_for("Far cheek line")
        first.type(" ")
        first.wait_for("9 of 49 done")
        first.kill(signal.SIGKILL)
    with Terminal(str(demo), environ=environ, size=(80, 24)) as second:
        second.wait_for("9 of 49 done")
        assert "READ ONLY" not in second.text
        second.type("q")
        assert second.finish() == 0
        assert LEFT_ALTERNATE_SCREEN in second.written


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGHUP])
def test_a_signal_leaves_a_clean_terminal(
    demo: Path, environ: dict[str, str], number: signal.Signals
) -> None:
    """Ended by a signal, the alternate screen is left and the status says which."""
    with Terminal(str(demo), environ=environ, size=(80, 24)) as run:
        run.wait_for("Far cheek line")
        run.kill(number)
        assert run.status == 128 + number
        assert LEFT_ALTERNATE_SCREEN in run.written


def test_without_arguments_the_demos_are_offered(environ: dict[str, str], tmp_path: Path) -> None:
    """A first start anywhere asks which; a demo is a working copy in the user's data folder."""
    with Terminal(environ=environ, size=(120, 40)) as run:
        run.wait_for("hillside-wood-store")
        run.type("jj\r")
        run.wait_for("Far cheek line")
        run.type("q")
        assert run.finish() == 0
    assert (tmp_path / "home/data/benchmate/projects/orchard-tool-shed/project.toml").is_file()


def test_a_second_program_reads_only_and_may_take_over(demo: Path, environ: dict[str, str]) -> None:
    """Two programs on one project: plain words in the second, and t to take over."""
    with (
        Terminal(str(demo), environ=environ, size=(80, 24)) as first,
    ):
        first.wait_for("Far cheek line")
        with Terminal(str(demo), environ=environ, size=(80, 24)) as second:
            second.wait_for("READ ONLY")
            second.type("t")
            second.wait_for("Taken over")
            first.wait_for("READ ONLY")
            second.type("q")
            second.finish()


@pytest.mark.parametrize(
    ("size", "terminal", "told"),
    [((59, 24), "xterm", "59 x 24"), ((80, 15), "xterm", "80 x 15"), ((80, 24), "dumb", "dumb")],
)
def test_a_terminal_that_will_not_do_gets_one_line(
    demo: Path, environ: dict[str, str], size: tuple[int, int], terminal: str, told: str
) -> None:
    """Too small a window or TERM=dumb: one line and status 2."""
    with Terminal(str(demo), environ=environ | {"TERM": terminal}, size=size) as run:
        assert run.finish() == 2
        assert told in run.text
        assert b"\x1b[?1049h" not in run.written


def test_a_broken_project_leaves_its_message_behind(demo: Path, environ: dict[str, str]) -> None:
    """The message is on the normal screen once the full one has gone, and the status is 2."""
    (demo / "project.toml").write_text("format = 1\nname = \n")
    with Terminal(str(demo), environ=environ, size=(80, 24)) as run:
        assert run.finish() == 2
        after = run.written.rsplit(LEFT_ALTERNATE_SCREEN, 1)[1]
        assert b"project.toml:2" in after


@pytest.mark.parametrize("size", [(80, 24), (120, 40)])
def test_no_colour_means_none(demo: Path, environ: dict[str, str], size: tuple[int, int]) -> None:
    """With NO_COLOR set not one colour is asked of the terminal; an empty one means nothing."""
    with Terminal(str(demo), environ=environ | {"NO_COLOR": "1"}, size=size) as run:
        run.wait_for("Far cheek line")
        assert not ASKS_FOR_COLOUR.search(run.written)
    with Terminal(str(demo), environ=environ | {"NO_COLOR": ""}, size=size) as run:
        run.wait_for("Far cheek line")
        assert ASKS_FOR_COLOUR.search(run.written)
