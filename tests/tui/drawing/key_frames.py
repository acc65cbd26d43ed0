"""An invented frame to look at from all sides: a shed of two bays with braces, joists and a roof.

Sixteen feet from west to east and twelve from south to north. Sizes: common practice, no source.
"""

from __future__ import annotations

from benchmate.tui.drawing.key import Bar

INCH = 25_400_000

Corner = tuple[int, int, int]


def box(name: str, low: Corner, high: Corner, *, along: int) -> Bar:
    """A timber square to the building, its corners in inches; `along` is the axis it runs on."""
    one, other = (axis for axis in range(3) if axis != along)
    corners: list[Corner] = []
    for end in (low, high):
        for first, second in ((low, low), (high, low), (high, high), (low, high)):
            corner = [0, 0, 0]
            corner[along], corner[one], corner[other] = end[along], first[one], second[other]
            corners.append(_inches(*corner))
    return Bar(id=name.lower().replace(" ", "-"), name=name, corners=tuple(corners))


def slanting(name: str, start: Corner, end: Corner, drop: int, thick: Corner) -> Bar:
    """A brace or rafter, ends cut plumb or square: each `thick` across and `drop` high."""
    corners: list[Corner] = []
    for east, north, up in (start, end):
        for far, down in ((0, 0), (1, 0), (1, 1), (0, 1)):
            corners.append(_inches(east + far * thick[0], north + far * thick[1], up - down * drop))
    return Bar(id=name.lower().replace(" ", "-"), name=name, corners=tuple(corners))


def _inches(east: int, north: int, up: int) -> Corner:
    return east * INCH, north * INCH, up * INCH


def shed() -> tuple[Bar, ...]:
    """The whole frame, thirty-eight timbers."""
    return (*_posts(), *_level(), *_braces(), *_joists(), *_roof())


def _posts() -> list[Bar]:
    return [
        box(f"{row}{place} post", (east, north, 8), (east + 8, north + 7, 104), along=2)
        for row, north in (("S", 0), ("N", 137))
        for place, east in (("W", 0), (" middle", 92), ("E", 184))
    ]


def _level() -> list[Bar]:
    found = []
    for row, north in (("South", 0), ("North", 136)):
        found.append(box(f"{row} sill", (0, north, 0), (192, north + 8, 8), along=0))
        found.append(box(f"{row} plate", (0, north, 104), (192, north + 7, 112), along=0))
    for place, east in (("West", 0), ("Middle", 92), ("East", 184)):
        found.append(box(f"{place} sill", (east, 8, 0), (east + 8, 136, 8), along=1))
        found.append(box(f"{place} tie", (east, 7, 90), (east + 8, 137, 99), along=1))
    for place, (start, end) in (("west", (8, 92)), ("east", (100, 184))):
        found.append(box(f"South girt {place}", (start, 0, 48), (end, 6, 54), along=0))
    return found


def _braces() -> list[Bar]:
    return [
        slanting("SW brace", (8, 0, 74), (44, 0, 110), 6, (0, 4, 0)),
        slanting("SE brace", (148, 0, 110), (184, 0, 74), 6, (0, 4, 0)),
        slanting("East brace south", (184, 7, 60), (184, 37, 90), 6, (4, 0, 0)),
        slanting("East brace north", (184, 107, 90), (184, 137, 60), 6, (4, 0, 0)),
    ]


def _joists() -> list[Bar]:
    return [
        box(f"Joist {place + 1}", (east, 8, 2), (east + 4, 136, 8), along=1)
        for place, east in enumerate((28, 48, 68, 120, 140, 160))
    ]


def _roof() -> list[Bar]:
    found = []
    for place, east in enumerate((0, 47, 94, 141, 188)):
        found.append(
            slanting(f"South rafter {place + 1}", (east, -8, 112), (east, 72, 166), 6, (4, 0, 0))
        )
        found.append(
            slanting(f"North rafter {place + 1}", (east, 152, 112), (east, 72, 166), 6, (4, 0, 0))
        )
    return found


def corner_posts() -> tuple[Bar, ...]:
    """Four posts and nothing else."""
    return tuple(
        box(f"{row}{place} post", (east, north, 0), (east + 8, north + 7, 96), along=2)
        for row, north in (("S", 0), ("N", 137))
        for place, east in (("W", 0), ("E", 184))
    )
