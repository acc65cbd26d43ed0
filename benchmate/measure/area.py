"""Areas in words, such as what a joint bears on: exact, then rounded once where they are shown."""

from benchmate.measure.length import NM_PER_INCH, NM_PER_MM, Length

_SQ_IN = NM_PER_INCH * NM_PER_INCH
_SQ_CM = 100 * NM_PER_MM * NM_PER_MM


def area_text(one: Length, other: Length, *, metric: bool) -> str:
    """The area of a rectangle to the nearest tenth: `10 sq in`, `12.3 sq cm`.

    A half goes away from zero, as on a tape.
    """
    size, unit = (_SQ_CM, "sq cm") if metric else (_SQ_IN, "sq in")
    area = one.nm * other.nm
    tenths = (20 * abs(area) + size) // (2 * size)
    sign = "-" if area < 0 and tenths else ""
    whole, rest = divmod(tenths, 10)
    return f"{sign}{whole}.{rest} {unit}" if rest else f"{sign}{whole} {unit}"
