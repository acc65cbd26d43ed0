"""The one table of keys: bindings, footer, help and README are all made from it."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Key:
    """One thing a key does: `keys` in the toolkit's names, `shown` as a framer reads them.

    `label` is the word in the footer, empty for keys that are not shown there.
    """

    id: str
    keys: tuple[str, ...]
    shown: str
    label: str
    help: str


KEYS: tuple[Key, ...] = (
    Key(
        id="tick",
        keys=("space",),
        shown="space",
        label="tick",
        help="Tick the step and go on to the next open one",
    ),
    Key(
        id="out-of-order",
        keys=("o",),
        shown="o",
        label="",
        help="Tick a step out of order, before what it waits for",
    ),
    Key(
        id="undo",
        keys=("backspace", "u"),
        shown="u",
        label="undo",
        help="Take the last tick, size or edit back (backspace too)",
    ),
    Key(
        id="redo",
        keys=("y", "ctrl+y"),
        shown="y",
        label="",
        help="Do again what was taken back",
    ),
    Key(
        id="move",
        keys=(),
        shown="arrows",
        label="",
        help="Move; j and k too, page up and down, home and end",
    ),
    Key(
        id="find",
        keys=("slash",),
        shown="/",
        label="find",
        help="Find a timber, a mark, a level or a length",
    ),
    Key(
        id="open",
        keys=("enter",),
        shown="enter",
        label="open",
        help="Open a timber, or read a step in full, its trade words explained",
    ),
    Key(
        id="measure",
        keys=("m",),
        shown="m",
        label="size",
        help="Type what the stick or the tenon really measures",
    ),
    Key(
        id="best-job",
        keys=("g",),
        shown="g",
        label="job",
        help="Go to the next best job in the whole frame",
    ),
    Key(
        id="face",
        keys=("f",),
        shown="f",
        label="face",
        help="Turn the drawing to the next face, then to the end grain",
    ),
    Key(
        id="pane",
        keys=("tab",),
        shown="tab",
        label="timbers",
        help="Go between the timbers and the steps",
    ),
    Key(
        id="next",
        keys=("n",),
        shown="n",
        label="next",
        help="Go to the next open step, past those that wait",
    ),
    Key(
        id="back",
        keys=("b",),
        shown="b",
        label="",
        help="Go back to where you were before a look-up or the next best job",
    ),
    Key(
        id="where",
        keys=("w",),
        shown="w",
        label="where",
        help="Show where the timber stands in the frame",
    ),
    Key(
        id="members",
        keys=("M",),
        shown="M",
        label="",
        help="List the timbers by kind, bent, wall or progress; sign checked, fitted, assembled",
    ),
    Key(
        id="edit",
        keys=("e",),
        shown="e",
        label="edit",
        help="Change, add, copy, mirror, rename or remove a timber or a joint; the project too",
    ),
    Key(
        id="names",
        keys=("l",),
        shown="l",
        label="levels",
        help="Change a line, a level, a length or a section, and see first what moves",
    ),
    Key(
        id="stand-back",
        keys=("v",),
        shown="v",
        label="far",
        help="Stand back: the figure as large as the window, to read from two paces",
    ),
    Key(
        id="roll",
        keys=("r",),
        shown="r",
        label="roll",
        help="Roll the timber: its four faces and two ends, f and d roll it on and back",
    ),
    Key(
        id="history",
        keys=("h",),
        shown="h",
        label="history",
        help="Show what was done on the timber and when, and go back there",
    ),
    Key(
        id="notes",
        keys=("i",),
        shown="i",
        label="note",
        help="Note something about the timber, a joint or a step; note a knot, a check or wane",
    ),
    Key(
        id="sheets",
        keys=("p",),
        shown="p",
        label="",
        help="Write sheets to print and take along, of this timber or of the whole frame",
    ),
    Key(
        id="swap",
        keys=("s",),
        shown="s",
        label="from",
        help="Swap which comes first: from the shoulder, or from the squared end",
    ),
    Key(
        id="pad",
        keys=("c",),
        shown="c",
        label="reckon",
        help="Reckon with lengths: sums, equal spaces, diagonals, run and rise",
    ),
    Key(
        id="untick",
        keys=("x",),
        shown="x",
        label="",
        help="Take this step's tick off",
    ),
    Key(
        id="take-over",
        keys=("t",),
        shown="t",
        label="",
        help="Take over a project that is open somewhere else",
    ),
    Key(
        id="copy",
        keys=("ctrl+c",),
        shown="ctrl+c",
        label="",
        help="Copy the step in words, for another window",
    ),
    Key(
        id="projects",
        keys=("P",),
        shown="P",
        label="",
        help="Open another project, start an empty one, or copy one",
    ),
    Key(
        id="new-frame",
        keys=("N",),
        shown="N",
        label="",
        help="Start a new frame from its driving dimensions",
    ),
    Key(
        id="settings",
        keys=("comma",),
        shown=",",
        label="",
        help="Your own settings: units shown, big digits, colours, what is suggested",
    ),
    Key(
        id="help",
        keys=("question_mark", "f1"),
        shown="?",
        label="help",
        help="Say what the pane in hand does, and explain the keys and words",
    ),
    Key(
        id="quit",
        keys=("q", "ctrl+q"),
        shown="q",
        label="quit",
        help="Quit; every tick is already kept",
    ),
)
