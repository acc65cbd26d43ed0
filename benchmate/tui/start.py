"""Starting the full-screen program, and what is printed when it ends."""

from __future__ import annotations

import os
import shutil
import sys
from typing import TYPE_CHECKING

from benchmate.workbench.first_glance import glance

if TYPE_CHECKING:
    from collections.abc import Mapping

SMALLEST = (60, 16)
"""Columns and rows below which the figure, its words and the steps no longer fit."""


FIXED_BY = ("NO_COLOR", "TEXTUAL_THEME")
"""What in the environment goes before the framer's settings."""


def fixed_by(environ: Mapping[str, str]) -> str:
    """The name in the environment that settles the colours; empty where none does."""
    return next((name for name in FIXED_BY if environ.get(name)), "")


def _settle_colours() -> None:
    """Make NO_COLOR mean what the convention says; Textual reads both names when it is imported.

    An empty NO_COLOR is as good as none. A set one goes with the terminal's own colours, as only
    with those does Textual ask for no colour at all.
    """
    if os.environ.get("NO_COLOR"):
        os.environ["TEXTUAL_THEME"] = "ansi-dark"
    else:
        os.environ.pop("NO_COLOR", None)


def run(project: str, *, new: bool = False) -> int:
    """Run the companion on a project, or on the form for a new one; the exit status."""
    width, height = shutil.get_terminal_size()
    if width < SMALLEST[0] or height < SMALLEST[1]:
        print(  # noqa: T201 - no screen to say it on
            f"benchmate: this window is {width} x {height}; make it at least "
            f"{SMALLEST[0]} x {SMALLEST[1]}",
            file=sys.stderr,
        )
        return 2
    fixed = fixed_by(os.environ)
    _settle_colours()
    colours = "" if fixed else glance("colours", os.environ)
    from benchmate.tui.app import BenchmateApp  # noqa: PLC0415 - after the checks that need no screen
    from benchmate.tui.glyphs import choose  # noqa: PLC0415

    glyphs = choose(sys.stderr.encoding, os.environ)
    app = BenchmateApp(project, glyphs, new=new, colours=colours, fixed=fixed)
    app.run()
    if app.farewell:
        print(f"benchmate: {app.farewell}", file=sys.stderr)  # noqa: T201 - the terminal is back
    return app.return_code or 0
