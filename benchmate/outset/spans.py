"""What spans from wall to wall: the joists of the floor, the rafters and their ridge."""

from collections.abc import Iterator

from benchmate.outset.answers import RIDGE, Answers
from benchmate.outset.rows import InRow, joists, rafters
from benchmate.outset.scarfing import plate_scarfs, stick_at
from benchmate.outset.tables import comment, joint, timber
from benchmate.outset.walls import WALLS

PEAKS = {
    "butted at the peak": "butt",
    "half-lapped at the peak": "half lap",
    "bridled at the peak": "bridle",
}
"""How a pair of rafters meets, by the answer."""


def floor(a: Answers) -> Iterator[str]:
    """The joists, dropped into pockets in the long sills."""
    if not a.floored:
        return
    yield from comment("Joists, from the south sill to the north one, dropped into pockets.")
    for bent in a.bents[:-1]:
        for place, row in enumerate(joists(a, bent), start=1):
            key = f"joist-{bent.number}-{place}"
            yield from timber(
                key,
                f"Bay {bent.number} joist {place}",
                "joist",
                species=a.word("species"),
                faces=("up", row.side),
                end="south",
                at={"east": row.line, "up": "joist top"},
            )
            for wall, _ in WALLS:
                yield from joint(
                    f"{key}-{wall}",
                    "joist pocket",
                    timber=key,
                    end=wall,
                    into=f"sill-{wall}",
                    bearing=a.text("bearing"),
                )


def roof(a: Answers) -> Iterator[str]:
    """The rafters in pairs, and the ridge if they have one."""
    if not a.roofed:
        return
    yield from comment(
        "Common rafters in pairs: their top edges make the roof plane, from the tails to the",
        "centre line.",
    )
    for number, row in enumerate(rafters(a), start=1):
        for wall, line in WALLS:
            yield from _rafter(a, number, row, wall, line)
        yield from _peak(a, number)
    if a.word("roof") == RIDGE:
        yield from timber(
            "ridge",
            "Ridge",
            "ridge",
            species=a.word("species"),
            faces=("up", "south"),
            end="west",
            at={"north": "centre line - half ridge", "up": "ridge line"},
            reference_end_at="line 1 - overhang",
            far_end_at=f"{a.bents[-1].line} + overhang",
        )


def _rafter(a: Answers, number: int, row: InRow, wall: str, line: str) -> Iterator[str]:
    key = f"rafter-{number}-{wall}"
    sign, towards = ("-", "north") if wall == "south" else ("+", "south")
    foot = {"east": row.line, "north": f"{line} {sign} eaves", "up": "tail line"}
    yield from timber(
        key,
        f"Rafter {number}, {wall}",
        "rafter",
        species=a.word("species"),
        faces=("up", row.side),
        end="foot",
        incline={"foot": foot, "towards": towards, "run": "roof run", "rise": "roof rise"},
    )
    plate = f"plate-{wall}{stick_at(plate_scarfs(a), row.west)}"
    yield from joint(f"{key}-seat", "rafter seat", timber=key, into=plate)
    yield from joint(f"{key}-tail", "rafter tail", timber=key, cut="plumb")
    if a.word("roof") == RIDGE:
        yield from joint(f"{key}-ridge", "rafter ridge", timber=key, into="ridge")


def _peak(a: Answers, number: int) -> Iterator[str]:
    cut = PEAKS.get(a.word("roof"))
    if cut is None:
        return
    yield from joint(
        f"rafter-{number}-peak",
        "rafter peak",
        timber=f"rafter-{number}-south",
        into=f"rafter-{number}-north",
        cut=cut,
        thickness=a.third("rafter") if cut == "bridle" else None,
    )
