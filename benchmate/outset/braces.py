"""The braces in walls and bents, each measured from its long edge."""

from collections.abc import Iterator, Mapping
from typing import NamedTuple

from benchmate.outset.answers import Answers, Bent
from benchmate.outset.pegging import brace_pegs
from benchmate.outset.scarfing import plate_scarfs, stick_at
from benchmate.outset.tables import Cell, comment, joint, timber
from benchmate.outset.ties import tie_name
from benchmate.outset.walls import WALLS, post_name


class _Brace(NamedTuple):
    """One brace: the face it lies flush with, the corner it closes and the way its leg runs.

    `post` is what its foot stands in, `over` what its head enters.
    """

    id: str
    name: str
    face: str
    corner: Mapping[str, str]
    towards: str
    post: str
    over: str


def braces(a: Answers) -> Iterator[str]:
    """The braces from posts to plates, then those from posts to ties."""
    if not a.braced:
        return
    yield from comment(
        "Braces: measured from their long edges, flush with the outside of the wall or with the",
        "bent's reference face.",
    )
    for brace in _all(a):
        yield from _written(a, brace)


def _all(a: Answers) -> Iterator[_Brace]:
    if a.wall_braced:
        for wall, line in WALLS:
            for bent in a.bents:
                yield from _wall_braces(a, bent, wall, line)
    if a.tie_braced:
        for bent in a.bents:
            yield from (_tie_brace(a, bent, wall, line) for wall, line in WALLS)


def _wall_braces(a: Answers, bent: Bent, wall: str, line: str) -> Iterator[_Brace]:
    """The braces on either side of a post, those of a corner post on one."""
    key, name = bent.key(wall), post_name(bent, wall).replace(" post", "")
    if bent.first or bent.last:
        side = "west" if bent.last else "east"
        yield _wall_brace(a, bent, (wall, line), side, (f"brace-{key}", f"{name} brace"))
        return
    for side in ("west", "east"):
        called = (f"brace-{key}-{side}", f"{name} brace, {side}")
        yield _wall_brace(a, bent, (wall, line), side, called)


def _wall_brace(
    a: Answers, bent: Bent, wall: tuple[str, str], side: str, called: tuple[str, str]
) -> _Brace:
    """The brace on one side of a post, to the stick of the plate that lies over its head."""
    outer = side == bent.side
    head = a.start_of(bent.number) - a.length("leg") if side == "west" else a.line_at(bent.number)
    corner = {
        "east": bent.line if outer else bent.inward(a.name("post", "width")),
        "north": wall[1],
        "up": "plate underside",
    }
    return _Brace(
        *called,
        face=wall[0],
        corner=corner,
        towards=side,
        post=f"post-{bent.key(wall[0])}",
        over=f"plate-{wall[0]}{stick_at(plate_scarfs(a), head)}",
    )


def _tie_brace(a: Answers, bent: Bent, wall: str, line: str) -> _Brace:
    sign, towards = ("+", "north") if wall == "south" else ("-", "south")
    corner = {
        "east": bent.line,
        "north": f"{line} {sign} {a.name('post', 'depth')}",
        "up": "tie underside",
    }
    return _Brace(
        id=f"brace-tie-{bent.number}-{wall}",
        name=f"{tie_name(bent)} brace, {wall}",
        face=bent.side,
        corner=corner,
        towards=towards,
        post=f"post-{bent.key(wall)}",
        over=f"tie-{bent.number}",
    )


def _written(a: Answers, brace: _Brace) -> Iterator[str]:
    """One brace and its two ends."""
    yield from timber(
        brace.id,
        brace.name,
        "brace",
        species=a.word("species"),
        faces=("down", brace.face),
        end="foot",
        incline={
            "corner": brace.corner,
            "legs": {"down": "brace leg", brace.towards: "brace leg"},
        },
    )
    cells: dict[str, Cell | None] = {
        "housing": a.text("brace housing") if a.length("brace housing") else None,
        "length": a.text("brace tenon"),
        "thickness": a.text("brace thickness"),
        "set_back": a.text("brace set back"),
        "pegs": brace_pegs(a, in_wall=brace.face in ("south", "north")),
    }
    for end, into in (("foot", brace.post), ("head", brace.over)):
        yield from joint(f"{brace.id}-{end}", "brace", timber=brace.id, end=end, into=into, **cells)
