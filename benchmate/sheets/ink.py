"""Black ink: the few strokes and words a drawing is made of, as SVG in millimetres."""

from collections.abc import Iterable, Sequence
from html import escape

THIN, PLAIN, HEAVY = 0.13, 0.3, 0.8
"""Widths of lines in millimetres: 3, 7 and 19 dots at 600 to the inch."""

POINT = 25.4 / 72
"""Millimetres in a typographic point."""

SMALL = 9 * POINT
"""The height of the smallest writing: 9 pt, to be read at a bench."""

Spot = tuple[float, float]

_NARROW, _WIDE = frozenset("'il.,:;|()-/ \"ftr"), frozenset("mwMW+")


def number(value: float) -> str:
    """A coordinate to a hundredth of a millimetre, finer than a dot at 600 to the inch."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


_DOT = 0.005
"""Less than that is no line."""


def line(start: Spot, end: Spot, width: float, *, dashes: str = "") -> str:
    """One straight line."""
    dashed = f' stroke-dasharray="{dashes}"' if dashes else ""
    return f'<path d="{_move(start)}{_draw(end)}" stroke-width="{width}"{dashed}/>'


def lines(pairs: Iterable[tuple[Spot, Spot]], width: float) -> str:
    """Many lines of one width as one stroke; nothing for none."""
    path = "".join(f"{_move(start)}{_draw(end)}" for start, end in pairs)
    return f'<path d="{path}" stroke-width="{width}"/>' if path else ""


def polyline(spots: Sequence[Spot], width: float) -> str:
    """A line through some spots."""
    path = _move(spots[0]) + "".join(map(_draw, spots[1:]))
    return f'<path d="{path}" stroke-width="{width}"/>'


def words(
    text: str, at: Spot, *, anchor: str = "start", upright: bool = False, kind: str = ""
) -> str:
    """Words with their left, middle or right at a spot; `upright` ones read from below."""
    turn = f' transform="rotate(-90 {number(at[0])} {number(at[1])})"' if upright else ""
    named = f' class="{kind}"' if kind else ""
    place = f'x="{number(at[0])}" y="{number(at[1])}"'
    return f'<text {place} text-anchor="{anchor}"{turn}{named}>{escape(text)}</text>'


def blank(low: Spot, high: Spot) -> str:
    """A white patch that words are put on, so that no hatching runs through them."""
    size = f'width="{number(high[0] - low[0])}" height="{number(high[1] - low[1])}"'
    return f'<rect x="{number(low[0])}" y="{number(low[1])}" {size} fill="#fff" stroke="none"/>'


def room_for(text: str, height: float = SMALL) -> float:
    """About how wide a text comes out in a narrow face, and hardly less in an ordinary one."""
    return height * sum(0.3 if each in _NARROW else 0.74 if each in _WIDE else 0.5 for each in text)


def hatched(polygon: Sequence[Spot], pitch: float) -> tuple[tuple[Spot, Spot], ...]:
    """Slanting lines that fill a polygon, on one grid for the whole sheet."""
    sums = [x + y for x, y in polygon]
    first, last = int(min(sums) // pitch) + 1, int(max(sums) // pitch)
    found: list[tuple[Spot, Spot]] = []
    for count in range(first, last + 1):
        crossed = sorted(_crossings(polygon, count * pitch))
        found += [
            (one, other)
            for one, other in zip(crossed[::2], crossed[1::2], strict=False)
            if other[0] - one[0] > _DOT
        ]
    return tuple(found)


def _crossings(polygon: Sequence[Spot], total: float) -> Iterable[Spot]:
    """Where the line x + y = total crosses the sides of a polygon; a corner counts once."""
    for start, end in zip(polygon, (*polygon[1:], *polygon[:1]), strict=True):
        before, after = (spot[0] + spot[1] - total for spot in (start, end))
        if (before < 0) is (after < 0):
            continue
        part = before / (before - after)
        yield (start[0] + (end[0] - start[0]) * part, start[1] + (end[1] - start[1]) * part)


def drawing(parts: Iterable[str], width: float, height: float, *, kind: str) -> str:
    """A whole drawing, as wide as its place allows."""
    view = f'viewBox="0 0 {number(width)} {number(height)}"'
    return f'<svg xmlns="http://www.w3.org/2000/svg" class="{kind}" {view}>{"".join(parts)}</svg>'


def _move(spot: Spot) -> str:
    return f"M{number(spot[0])} {number(spot[1])}"


def _draw(spot: Spot) -> str:
    return f"L{number(spot[0])} {number(spot[1])}"
