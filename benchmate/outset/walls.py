"""The sills, the posts and the plates: what stands along the two walls."""

from collections.abc import Iterator

from benchmate.outset.answers import HALF_LAPPED, Answers, Bent
from benchmate.outset.pegging import pegs
from benchmate.outset.scarfing import Scarf, long, plate_scarfs, sill_scarfs, stick_at
from benchmate.outset.tables import comment, joint, timber

WALLS = (("south", "line a"), ("north", "line b"))
"""The two walls, and the plan line that the outside of each lies on."""


def sills(a: Answers) -> Iterator[str]:
    """Sills all round: the long ones run through."""
    how = "half-lapped with them" if _half_lapped(a) else "tenoned between them"
    yield from comment(
        "Sills: tops level, outsides on the lines. The long sills run through, the end sills are",
        f"{how}.",
    )
    ends = (None, None) if _half_lapped(a) else ("line 1", a.bents[-1].line)
    for wall, line in WALLS:
        yield from _long(a, "sill", wall, line, up="sill top", ends=ends, scarfs=sill_scarfs(a))
    for bent in (a.bents[0], a.bents[-1]):
        yield from timber(
            f"sill-{bent.side}",
            f"{bent.side.title()} sill",
            "sill",
            species=a.word("species"),
            faces=("up", bent.side),
            end="south",
            at={"east": bent.line, "up": "sill top"},
        )
        for wall, _ in WALLS:
            yield from _corner(a, bent, wall)


def _half_lapped(a: Answers) -> bool:
    return a.word("corners") == HALF_LAPPED


def _corner(a: Answers, bent: Bent, wall: str) -> Iterator[str]:
    key, sill = f"{bent.key(wall)}-corner", f"sill-{bent.side}"
    through = f"sill-{wall}{stick_at(sill_scarfs(a), a.line_at(bent.number))}"
    if _half_lapped(a):
        yield from joint(
            key, "lap", timber=through, end=bent.side, into=sill, into_end=wall, side="up"
        )
        return
    yield from joint(
        key,
        "tenon",
        timber=sill,
        end=wall,
        into=through,
        length=a.text("corner"),
        thickness=a.text("thickness"),
        set_back=a.text("set back"),
        relief_reference=a.text("relief"),
    )


def _long(
    a: Answers,
    kind: str,
    wall: str,
    line: str,
    *,
    up: str,
    ends: tuple[str | None, str | None],
    scarfs: tuple[Scarf, ...],
) -> Iterator[str]:
    """The sticks of one sill or plate from the west, and the scarfs between them."""
    count = len(scarfs) + 1
    for number in range(1, count + 1):
        suffix, which = (f"-{number}", f", stick {number}") if scarfs else ("", "")
        yield from timber(
            f"{kind}-{wall}{suffix}",
            f"{wall.title()} {kind}{which}",
            kind,
            species=a.word("species"),
            faces=("up", wall),
            end="west",
            at={"north": line, "up": up},
            reference_end_at=ends[0] if number == 1 else None,
            far_end_at=ends[1] if number == count else None,
        )
    for number, scarf in enumerate(scarfs, start=1):
        leg = " + brace leg" if kind == "plate" and a.wall_braced else ""
        yield from joint(
            f"{kind}-{wall}-scarf-{number}",
            "scarf",
            timber=f"{kind}-{wall}-{number}",
            end="east",
            into=f"{kind}-{wall}-{number + 1}",
            kind="half lap",
            at=f"line {scarf.bent} + {a.name('post', 'width')}{leg} + {a.say(scarf.past)}",
            length=a.say(long(a)),
            keeps="up",
        )


def posts(a: Answers) -> Iterator[str]:
    """A post at every bent on both walls, tenoned into its sill and its plate."""
    yield from comment(
        "Posts: outsides on the lines. The corner posts are measured from the gable, the others",
        "from their west faces. Relief at the corners keeps their mortises off the ends.",
    )
    for wall, line in WALLS:
        for bent in a.bents:
            yield from _post(a, bent, wall, line)


def post_name(bent: Bent, wall: str) -> str:
    """What a post is called: `SW post`, `South post 2`."""
    if bent.first or bent.last:
        return f"{bent.key(wall).upper()} post"
    return f"{wall.title()} post {bent.number}"


def _post(a: Answers, bent: Bent, wall: str, line: str) -> Iterator[str]:
    key, east = bent.key(wall), a.line_at(bent.number)
    yield from timber(
        f"post-{key}",
        post_name(bent, wall),
        "post",
        species=a.word("species"),
        faces=(wall, bent.side),
        end="foot",
        at={"east": bent.line, "north": line},
    )
    corner = a.text("relief") if bent.first or bent.last else None
    near = a.length("overhang") < a.length("relief")
    common = {"thickness": a.text("thickness"), "set_back": a.text("set back")}
    yield from joint(
        f"{key}-foot",
        "tenon",
        timber=f"post-{key}",
        end="foot",
        into=f"sill-{wall}{stick_at(sill_scarfs(a), east)}",
        length=a.text("foot"),
        **common,
        relief_reference=corner,
    )
    relief = a.length("relief") if corner and near else None
    yield from joint(
        f"{key}-head",
        "tenon",
        timber=f"post-{key}",
        end="head",
        into=f"plate-{wall}{stick_at(plate_scarfs(a), east)}",
        length=a.text("head"),
        **common,
        relief_reference=a.say(relief) if relief else None,
        pegs=pegs(a, a.within("post").second, relief),
    )


def plates(a: Answers) -> Iterator[str]:
    """A plate along each wall."""
    yield from comment("Plates: outsides on the lines, past the gables.")
    ends = ("line 1 - overhang", f"{a.bents[-1].line} + overhang")
    scarfs = plate_scarfs(a)
    for wall, line in WALLS:
        yield from _long(a, "plate", wall, line, up="plate top", ends=ends, scarfs=scarfs)
