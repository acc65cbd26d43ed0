"""The command line: the full-screen companion, and the plain commands beside it."""

import argparse
import os
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from benchmate import __version__
from benchmate.model.words import LAYOUT_ONLY, visible

if TYPE_CHECKING:
    from benchmate.workbench.commands import Output

COMMANDS = ("marks", "find", "frame", "history", "sheets", "validate", "copy", "reckon")

NEW = "new"
"""The word that opens the screen on the form for a new frame."""

EPILOG = f"""\
Without a command, benchmate opens full screen on PROJECT: a project's folder, or a folder of
projects. Without PROJECT it opens ./projects, or else its demo. `benchmate new` opens on the form
that sets a new frame out from its driving dimensions.

Exit status: 0 fine, 1 something to look at (or nothing found), 2 bad input or usage,
128 + n ended by signal n.

{LAYOUT_ONLY}
"""


def screen_parser() -> argparse.ArgumentParser:
    """The arguments of the full-screen companion."""
    parser = argparse.ArgumentParser(
        prog="benchmate",
        usage=(
            "benchmate [PROJECT]\n"
            "       benchmate new\n"
            "       benchmate {marks,find,frame,history,sheets,validate,copy} PROJECT ...\n"
            "       benchmate reckon LINE"
        ),
        description="An offline layout companion for a timber framer at the horses.",
        epilog=EPILOG,
        formatter_class=argparse.RawDescriptionHelpFormatter,
        allow_abbrev=False,
    )
    parser.add_argument("project", nargs="?", default="", metavar="PROJECT")
    parser.add_argument("--version", action="version", version=f"benchmate {__version__}")
    return parser


def command_parser() -> argparse.ArgumentParser:
    """The arguments of the plain commands."""
    parser = argparse.ArgumentParser(prog="benchmate", allow_abbrev=False)
    commands = parser.add_subparsers(dest="command", required=True)
    marks = commands.add_parser("marks", help="print every mark of a timber, or of all")
    marks.add_argument("project", metavar="PROJECT")
    marks.add_argument("timber", metavar="TIMBER", nargs="?", default="")
    find = commands.add_parser("find", help="look words up: timbers, marks, levels, lengths")
    find.add_argument("project", metavar="PROJECT")
    find.add_argument("words", metavar="WORDS", nargs="+")
    frame = commands.add_parser("frame", help="list the timbers: place, lengths, what meets what")
    frame.add_argument("project", metavar="PROJECT")
    history = commands.add_parser("history", help="tell what was done, and when, newest first")
    history.add_argument("project", metavar="PROJECT")
    history.add_argument("timber", metavar="TIMBER", nargs="?", default="")
    for parser_with_json in (marks, find, frame, history):
        parser_with_json.add_argument("--json", action="store_true", help="print plain data")
    sheets = commands.add_parser("sheets", help="write sheets to print and take along")
    sheets.add_argument("project", metavar="PROJECT")
    sheets.add_argument("--timber", metavar="TIMBER", default="", help="only this timber's sheet")
    sheets.add_argument(
        "--out", metavar="DIR", default="", help="where to; ./sheets-PROJECT if not given"
    )
    sheets.add_argument(
        "--paper",
        choices=("a4", "letter"),
        default="",
        help="set the page's size; if not given, the paper that the printer holds",
    )
    validate = commands.add_parser("validate", help="read everything, tell what is wrong")
    validate.add_argument("project", metavar="PROJECT")
    copy = commands.add_parser("copy", help="copy a project under another name")
    copy.add_argument("project", metavar="PROJECT")
    copy.add_argument("name", metavar="NAME")
    copy.add_argument(
        "--progress", action="store_true", help="with its ticks and measured sizes as well"
    )
    _add_reckon(commands.add_parser("reckon", help="the calculator: lengths, spaces, diagonals"))
    return parser


def _add_reckon(reckon: argparse.ArgumentParser) -> None:
    """The calculator's arguments; its words are those of a project file."""
    reckon.add_argument(
        "line", metavar="LINE", nargs="+", help='as "12\' 6 - 2 x 7-1/2", in quotes'
    )
    units = ("feet and inches", "inches", "mm")
    reckon.add_argument(
        "--units", choices=units, default="", help="how figures are shown; as your settings say"
    )
    reckon.add_argument(
        "--graduation", metavar="MARK", default="", help="as your settings say, else 1/16, or 1 mm"
    )


def main(argv: Sequence[str] | None = None) -> int:
    """Run the program and return its exit status."""
    arguments = list(sys.argv[1:] if argv is None else argv)
    try:
        if arguments and arguments[0] in COMMANDS:
            return _command(command_parser().parse_args(arguments))
        if arguments == [NEW]:
            return _screen("", new=True)
        return _screen(screen_parser().parse_args(arguments).project)
    except KeyboardInterrupt:
        return 130
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0


def _command(arguments: argparse.Namespace) -> int:
    from benchmate.store.problem import KeepError  # noqa: PLC0415
    from benchmate.workbench import commands, shelf  # noqa: PLC0415 - paid for only when used
    from benchmate.workbench.opening import CannotOpenError  # noqa: PLC0415
    from benchmate.workbench.print_out import NotPrintedError  # noqa: PLC0415

    if arguments.command == "copy":
        return _copy(arguments)
    try:
        if arguments.command == "reckon":
            return _reckon(arguments)
        folder = shelf.to_read(arguments.project, Path.cwd(), os.environ)
        match arguments.command:
            case "marks":
                output = commands.marks(folder, arguments.timber, as_json=arguments.json)
            case "find":
                words = " ".join(arguments.words)
                output = commands.find(folder, words, as_json=arguments.json)
            case "frame":
                output = commands.frame(folder, as_json=arguments.json)
            case "history":
                output = commands.history(folder, arguments.timber, as_json=arguments.json)
            case "sheets":
                output = _sheets(folder, arguments)
            case _:
                output = commands.validate(folder)
    except (
        CannotOpenError,
        KeepError,
        NotPrintedError,
        commands.UsageError,
        shelf.NoProjectError,
    ) as error:
        return _fail(str(error))
    # A framer who has worked on a copy must see which of the two he reads; data stays data.
    as_text = not getattr(arguments, "json", False)
    lead = f"Reading {folder}\n" if as_text and shelf.is_own(folder, os.environ) else ""
    return _print(lead + output.text, int(output.code))


def _sheets(folder: Path, arguments: argparse.Namespace) -> "Output":
    from benchmate.workbench import commands  # noqa: PLC0415 - as above

    out = Path.cwd() / (arguments.out or f"sheets-{folder.resolve().name}")
    return commands.sheets(folder, arguments.timber, out, arguments.paper)


def _reckon(arguments: argparse.Namespace) -> int:
    from benchmate.workbench import commands  # noqa: PLC0415 - as above
    from benchmate.workbench.preferences import find_preferences, reckon_tape  # noqa: PLC0415

    found = find_preferences(os.environ)
    if found.trouble:
        _fail(found.trouble)
    units = reckon_tape(found.preferences, arguments.units, arguments.graduation)
    return _print(commands.reckon(" ".join(arguments.line), *units).text, 0)


def _copy(arguments: argparse.Namespace) -> int:
    from benchmate.outset.plan_questions import folder_name  # noqa: PLC0415
    from benchmate.workbench import new_project, shelf  # noqa: PLC0415 - paid for only when used

    here, name = Path.cwd(), arguments.name
    try:
        project = shelf.to_read(arguments.project, here, os.environ)
        copy = new_project.copy(
            project,
            new_project.home(here, os.environ),
            folder_name(name),
            name,
            with_progress=arguments.progress,
        )
    except (shelf.NoProjectError, new_project.NotMadeError) as error:
        return _fail(str(error))
    return _print(f"Copied {project}\nto {copy}", 0)


def _print(text: str, code: int) -> int:
    """Print for a terminal or a pipe, with nothing in it that a terminal could act on."""
    if hasattr(sys.stdout, "reconfigure"):
        sys.stdout.reconfigure(errors="backslashreplace")
    try:
        print("\n".join(map(visible, text.split("\n"))), flush=True)  # noqa: T201 - the command's use
    except BrokenPipeError:
        raise
    except OSError as error:
        return _fail(f"cannot print: {error.strerror}")
    return code


def _screen(project: str, *, new: bool = False) -> int:
    if not (sys.stdin.isatty() and sys.stderr.isatty()):
        return _fail(
            "benchmate needs a terminal; for scripts use marks, find, frame, history, sheets or "
            "validate"
        )
    if os.environ.get("TERM", "dumb") == "dumb":
        return _fail("this terminal cannot show a full screen (TERM=dumb)")
    from benchmate.tui.start import run  # noqa: PLC0415 - Textual is paid for only here

    return run(project, new=new)


def _fail(message: str) -> int:
    print(f"benchmate: {message}", file=sys.stderr)  # noqa: T201 - errors belong on stderr
    return 2


if __name__ == "__main__":
    sys.exit(main())
