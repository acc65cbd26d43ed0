"""Two principal rafters and a purlin between them, at any slope: the flat roof among them."""

from collections.abc import Mapping

from benchmate.frame.frame import Frame, Real
from benchmate.model.work import Work
from tests.builders import frame, pocket, tenon, timber

RUN, RISE = "12'", "8'"


def roof(
    *works: Work,
    rise: str = RISE,
    rolled: str | None = None,
    real: Mapping[str, Real] | None = None,
) -> Frame:
    """Rafters that rise north 12 ft apart, 8 deep and 6 wide, with a 6 x 5 purlin half-way up.

    The purlin's top lies in the roof plane; `rolled` is the rise of a slope of its own.
    """
    rafters = (
        timber(
            f"rafter-{side}",
            kind="rafter",
            section="8 x 6",
            first_face="up",
            second_face="west",
            reference_end="foot",
            length=None,
            incline={
                "foot": {"east": at, "north": "0", "up": "0"},
                "towards": "north",
                "run": RUN,
                "rise": rise,
            },
        )
        for side, at in (("west", "0"), ("east", "12'"))
    )
    purlin = timber(
        "purlin",
        kind="purlin",
        section="6 x 5",
        first_face="up",
        second_face="south",
        reference_end="west",
        length=None,
        at={"north": "half run", "up": "half rise"},
        roll={"towards": "north", "run": RUN, "rise": rolled or rise},
    )
    return frame(
        *rafters,
        purlin,
        *works,
        real=real,
        lengths={"half run": "6'", "half rise": f"{_half(rise)}"},
    )


def _half(rise: str) -> str:
    return f"{int(rise.removesuffix(chr(39))) * 6}"


def tenoned(**words: object) -> tuple[Work, Work]:
    """Both ends of the purlin tenoned and housed into the rafters' sides."""
    ends = (
        tenon(
            id=f"purlin-{end}",
            timber="purlin",
            end=end,
            into=f"rafter-{end}",
            **({"length": "3", "housing": "3/4", "thickness": "1-1/2", "set_back": "2"} | words),
        )
        for end in ("west", "east")
    )
    west, east = ends
    return west, east


def dropped(**words: object) -> tuple[Work, Work]:
    """Both ends of the purlin dropped into pockets in the rafters' tops."""
    ends = (
        pocket(
            id=f"purlin-{end}",
            timber="purlin",
            end=end,
            into=f"rafter-{end}",
            at=None,
            **({"bearing": "1-1/2"} | words),
        )
        for end in ("west", "east")
    )
    west, east = ends
    return west, east
