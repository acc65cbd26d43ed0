"""Text as a table file needs it: exact millimetres, and cells that no spreadsheet takes wrong."""

from collections.abc import Iterable

from benchmate.measure.length import NM_PER_MM, Length

LINE_END = "\r\n"
"""What ends a record, by RFC 4180 section 2."""

_FORMULA_LEADS = ("=", "+", "-", "@", "\t", "\r")
"""What a spreadsheet takes for the start of a formula (OWASP, CSV injection)."""


def exact_mm(length: Length) -> str:
    """A length in millimetres with nothing rounded: `2235.2`, `-0.396875`."""
    whole, rest = divmod(abs(length.nm), NM_PER_MM)
    decimals = f".{rest:06d}".rstrip("0").rstrip(".")
    return f"{'-' if length.nm < 0 else ''}{whole}{decimals}"


def cell(text: str) -> str:
    """One cell: quoted where it must be, and told to be text where it would be a formula.

    Such a cell starts with an apostrophe, which a spreadsheet shows as text. A number below zero is
    no formula and stays as it is.
    """
    if text.startswith(_FORMULA_LEADS) and not _is_number(text):
        text = f"'{text}"
    if any(mark in text for mark in ',"\r\n'):
        return f'"{text.replace(chr(34), chr(34) * 2)}"'
    return text


def record(cells: Iterable[str]) -> str:
    """One record with the end of its line."""
    return ",".join(map(cell, cells)) + LINE_END


def _is_number(text: str) -> bool:
    whole, _, decimals = text.removeprefix("-").partition(".")
    return whole.isascii() and whole.isdigit() and (not decimals or decimals.isdigit())
