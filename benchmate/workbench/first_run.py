"""The first start of the program: whether to show its five cards."""

from collections.abc import Mapping

from benchmate.store.seen import TOUR, note_seen, was_seen


def tour_due(environ: Mapping[str, str]) -> bool:
    """Whether the cards are to be shown now; once asked they never are again.

    They are noted before they are read, so that a terminal closed half-way does not bring them
    back, and not shown at all where that cannot be kept.
    """
    return not was_seen(TOUR, environ) and note_seen(TOUR, environ)
