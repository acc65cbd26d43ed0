"""The head of a project file: what it is called, and its names as sums of one another."""

from collections.abc import Iterator

from benchmate.measure.length import Length
from benchmate.outset.answers import RIDGE, SHOP, SQUARE, Answers
from benchmate.outset.rows import joists, rafters
from benchmate.outset.tables import Cell, cell, comment, names, shop_table
from benchmate.outset.written import nearest

CAUTION = (
    "A frame set out from its driving dimensions. Sizes, spans and joints that carry load are the "
    "framer's own and for local code and a licensed engineer: benchmate checks arithmetic, not "
    "strength."
)
"""The note every frame that is set out carries."""


def head(a: Answers) -> Iterator[str]:
    """The first lines: format, name, units and rule."""
    cells: dict[str, Cell] = {
        "format": 1,
        "name": a.word("name"),
        "note": CAUTION,
        "units": a.units,
        "graduation": a.word("graduation"),
        "rule": a.word("rule"),
    }
    yield from (f"{name} = {cell(value)}" for name, value in cells.items())
    yield ""
    yield from comment(
        "Every place below is a sum of the names in these tables: change a name here, or under l",
        "on the bench, and all that lies on it follows.",
    )


def shop(a: Answers) -> Iterator[str]:
    """The shop's practice where the framer has set his own: the file then says so for everybody."""
    found = {rule: a.shop(rule) for rule in SHOP}
    said = {rule: a.say(value) for rule, value in found.items() if value is not None}
    if said:
        yield "# The shop's practice, from the settings of whoever set this frame out."
        yield from shop_table(said)


def lines(a: Answers) -> Iterator[str]:
    """The plan lines."""
    yield "# Plan lines from the outside of the south-west corner: the numbered ones run north and"
    yield "# south, a and b east and west. Bents have their reference faces on theirs."
    yield from names("lines", _lines(a))


def _lines(a: Answers) -> Iterator[tuple[str, str, str]]:
    for bent in a.bents:
        if bent.first:
            yield bent.line, "0", "outside of the west bent"
        elif bent.last:
            yield bent.line, "line 1 + frame length", "outside of the east bent"
        else:
            yield bent.line, f"line {bent.number - 1} + bay", ""
    yield "line a", "0", "outside of the south wall"
    if a.roofed:
        yield "centre line", "line a + half width", "under the peak"
        yield "line b", "centre line + half width", "outside of the north wall"
    else:
        yield "line b", "line a + frame width", "outside of the north wall"
    for bent in a.bents[:-1] if a.floored else ():
        yield from ((row.line, row.text, "") for row in joists(a, bent))
    if a.roofed:
        pairs = rafters(a)
        says = {0: "pairs of rafters, by their reference faces", len(pairs) - 1: "an east face"}
        for place, row in enumerate(pairs):
            yield row.line, row.text, says.get(place, "")


def lengths(a: Answers) -> Iterator[str]:
    """The named lengths."""
    found = [("frame length", a.text("length"), "outside to outside of the end posts")]
    if len(a.bents) > len(("first", "last")):
        found.append(("bay", a.say(a.bay), "line to line; the last bay takes what is over"))
    if a.roofed:
        half = a.say(Length(a.length("width").nm // 2))
        found.append(("half width", half, "half of it, outside to outside of the walls"))
    else:
        found.append(("frame width", a.text("width"), "outside to outside of the walls"))
    found.append(("post height", a.text("post height"), "sill top to plate underside"))
    found.append(("overhang", a.text("overhang"), "plate beyond the posts, each gable"))
    yield from names("lengths", (*found, *_tie(a), *_brace(a), *_floor(a), *_roof(a)))


def _tie(a: Answers) -> Iterator[tuple[str, str, str]]:
    if a.lapped:
        yield "tie let-in", a.text("let in"), "how far the ties come down over the plates"
    else:
        yield "tie drop", a.text("tie drop"), "underside of plate to top of tie"


def _brace(a: Answers) -> Iterator[tuple[str, str, str]]:
    if a.braced:
        yield "brace leg", a.text("leg"), "legs of the braces, to the faces"


def _floor(a: Answers) -> Iterator[tuple[str, str, str]]:
    if a.floored:
        yield "joist spacing", a.say(a.spacing("joist spacing")[0]), "one side to the same side"
        yield "joist let-in", a.text("joist let-in"), "how deep the joists lie in the sills"
        yield "deck", a.text("deck"), "boards on the joists"


def _roof(a: Answers) -> Iterator[tuple[str, str, str]]:
    if not a.roofed:
        return
    eaves, step = a.length("eaves"), a.graduation
    run = Length(a.length("width").nm // 2) + eaves
    fall, rise = (nearest(each.nm * a.slope, step) for each in (eaves, run))
    pitch = f"{a.slope * 12}" if (a.slope * 12).denominator == 1 else f"{float(a.slope * 12):g}"
    if a.spacing("rafter spacing")[1]:
        yield "rafter spacing", a.say(a.spacing("rafter spacing")[0]), "one side to the same side"
    yield "rafter height", a.text("rafter height"), "rafter's top over the plate, at its outside"
    yield "eaves", a.text("eaves"), "tails beyond the plate's outside, level"
    yield "eaves fall", a.say(fall), f"what the roof falls in that: {pitch} in 12"
    yield "roof run", "half width + eaves", "from the tails to the centre line"
    yield "roof rise", a.say(rise), f"{pitch} in 12 over the roof run"
    if a.word("roof") == RIDGE:
        half = Length(a.within("ridge").second.nm // 2)
        yield "half ridge", a.say(half), "half of the ridge's width"


def levels(a: Answers) -> Iterator[str]:
    """The levels, from the top of the sills up."""
    yield "# Levels, from the top of the sills up."
    yield from names("levels", _levels(a))


def _levels(a: Answers) -> Iterator[tuple[str, str, str]]:
    yield "sill top", "0", ""
    if a.floored:
        yield "joist bearing", "sill top - joist let-in", ""
        yield "joist top", f"joist bearing + {a.name('joist', 'depth')}", ""
        yield "floor top", "joist top + deck", ""
    yield "plate underside", "sill top + post height", ""
    yield "plate top", f"plate underside + {a.name('plate', 'depth')}", ""
    if a.lapped:
        yield "tie underside", "plate top - tie let-in", ""
        yield "tie top", f"tie underside + {a.name('tie', 'depth')}", ""
    else:
        yield "tie top", "plate underside - tie drop", ""
        yield "tie underside", f"tie top - {a.name('tie', 'depth')}", ""
    if a.roofed:
        yield "rafter line", "plate top + rafter height", "the roof plane over the plates' outsides"
        yield "tail line", "rafter line - eaves fall", "the roof plane at the tails"
        if a.word("roof") == RIDGE:
            yield "ridge line", "tail line + roof rise", "the roof plane at the peak"


def sections(a: Answers) -> Iterator[str]:
    """The sections, and by square rule the timbers inside them."""
    yield "# Depth in from the first reference face by depth in from the second."
    drawn = ((name, a.say_section(a.section(name)), "") for name in a.used)
    yield from names("sections", drawn)
    if a.word("rule") == SQUARE:
        yield "# The perfect timber inside each, by square rule; inside the worst stick too."
        inside = ((name, a.say_section(a.within(name)), "") for name in a.used)
        yield from names("inner", inside)
