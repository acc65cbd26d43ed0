"""A timber's marks as a table: RFC 4180, in UTF-8, one record a figure.

A step measured in two ways has two records, and one without a figure has one; `reading` counts
them, so that the records with 1 are the steps. A figure that is withheld is in no record.
"""

from collections.abc import Iterator

from benchmate.sheets.exact import exact_mm, record
from benchmate.sheets.names import MARK_COLUMNS, heads
from benchmate.sheets.sheet import Item, TimberSheet


def mark_table(sheet: TimberSheet) -> str:
    """Every step of a timber, in the order of the walk."""
    return heads(MARK_COLUMNS) + "".join(
        record(cells) for item in sheet.items for cells in _records(sheet, item)
    )


def _records(sheet: TimberSheet, item: Item) -> Iterator[tuple[str, ...]]:
    feature = sheet.layout.feature(item.step.feature)
    for place, reading in enumerate(item.readings or (None,), 1):
        yield (
            sheet.timber.id,
            feature.joint or feature.id if feature else "",
            item.step.id,
            str(place),
            item.step.title,
            sheet.tape.text(reading.value) if reading else "",
            exact_mm(reading.value) if reading else "",
            reading.hook if reading else "",
            reading.way if reading else "",
            "; ".join(item.step.sides),
            item.step.waste,
            item.state,
        )
