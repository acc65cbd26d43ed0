"""The ties across each bent."""

from collections.abc import Iterator

from benchmate.outset.answers import Answers, Bent
from benchmate.outset.pegging import pegs
from benchmate.outset.scarfing import plate_scarfs, stick_at
from benchmate.outset.tables import comment, joint, timber
from benchmate.outset.walls import WALLS


def ties(a: Answers) -> Iterator[str]:
    """A tie across each bent."""
    how = "on a cog over the plates" if a.lapped else "between the posts, under the plates"
    yield from comment(f"Ties: {how}, flush with their bents' reference faces.")
    for bent in a.bents:
        yield from timber(
            f"tie-{bent.number}",
            tie_name(bent),
            "tie",
            species=a.word("species"),
            faces=("up", bent.side),
            end="south",
            at={"east": bent.line, "up": "tie top"},
        )
        for wall, _ in WALLS:
            yield from _tie_end(a, bent, wall)


def tie_name(bent: Bent) -> str:
    """What a bent's tie is called: `West tie`, `Tie 2`."""
    if bent.first or bent.last:
        return f"{bent.side.title()} tie"
    return f"Tie {bent.number}"


def _tie_end(a: Answers, bent: Bent, wall: str) -> Iterator[str]:
    key, tie = f"tie-{bent.number}-{wall}", f"tie-{bent.number}"
    if a.lapped:
        yield from joint(
            key,
            "lap",
            timber=tie,
            end=wall,
            into=f"plate-{wall}{stick_at(plate_scarfs(a), a.line_at(bent.number))}",
            side="up",
            cog=a.text("thickness"),
        )
        return
    yield from joint(
        key,
        "tenon",
        timber=tie,
        end=wall,
        into=f"post-{bent.key(wall)}",
        housing=a.text("tie housing") if a.length("tie housing") else None,
        length=a.text("tie tenon"),
        thickness=a.text("thickness"),
        set_back=a.text("set back"),
        pegs=pegs(a, a.within("tie").first),
    )
