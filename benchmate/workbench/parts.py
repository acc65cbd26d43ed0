"""What an action changed in a timber's progress, and turning that back and forth."""

from collections.abc import Iterator, Mapping, Sequence
from itertools import chain

from benchmate.model.journal import (
    AsCutPart,
    BlemishPart,
    MeasuredPart,
    NotePart,
    ProgressPart,
    SignedPart,
    TickPart,
)
from benchmate.model.progress import AsCut, Blemish, Measured, Progress, Signed, Tick, WrittenNote
from benchmate.workbench.actions import Change, OvertakenError

_Kept = Tick | Measured | AsCut | Signed | WrittenNote | Blemish

_RECORDS: Mapping[str, type[ProgressPart]] = {
    "tick": TickPart,
    "measured": MeasuredPart,
    "as-cut": AsCutPart,
    "signed": SignedPart,
    "note": NotePart,
    "blemish": BlemishPart,
}


def parts_between(before: Progress, after: Progress) -> tuple[ProgressPart, ...]:
    """All that differs between two states of a timber's progress, the order of entries included."""
    return tuple(chain.from_iterable(_parts(before, after, what) for what in _RECORDS))


def turned(parts: Sequence[ProgressPart], *, back: bool) -> Change:
    """The change that makes parts what they became, or with `back` what they were.

    It changes nothing where all of them are that already, and raises OvertakenError where one of
    them is neither.
    """

    def change(progress: Progress) -> Progress:
        wrong = [part for part in parts if _now(progress, part) != (part.now if back else part.was)]
        if not wrong:
            return _put(progress, parts, back=back)
        if all(_now(progress, part) == (part.was if back else part.now) for part in parts):
            return progress
        raise OvertakenError(_reason(wrong[0], _now(progress, wrong[0]), len(parts)))

    return change


def _entries(progress: Progress, what: str) -> dict[str, _Kept]:
    """What is kept of one kind by its key, in the order of the file."""
    match what:
        case "tick":
            return {tick.step: tick for tick in progress.ticks}
        case "signed":
            return {signed.what: signed for signed in progress.signed}
        case "note":
            return {note.id: note for note in progress.notes}
        case "blemish":
            return {blemish.id: blemish for blemish in progress.blemishes}
        case _:
            return dict(progress.measured if what == "measured" else progress.as_cut)


def _parts(before: Progress, after: Progress, what: str) -> Iterator[ProgressPart]:
    was, now = _entries(before, what), _entries(after, what)
    for key in _changed(was, now):
        words = {
            "what": what,
            "key": key,
            "was": was.get(key),
            "was_at": _place(was, key),
            "now": now.get(key),
            "now_at": _place(now, key),
        }
        yield _RECORDS[what].model_validate(words)


def _changed(was: Mapping[str, _Kept], now: Mapping[str, _Kept]) -> tuple[str, ...]:
    """The keys of entries that came, went or differ; all of them where others changed places."""
    keys = tuple(dict.fromkeys((*was, *now)))
    changed = tuple(key for key in keys if was.get(key) != now.get(key))
    stayed = ([key for key in side if key not in changed] for side in (was, now))
    return changed if next(stayed) == next(stayed) else keys


def _place(entries: Mapping[str, _Kept], key: str) -> int:
    return tuple(entries).index(key) if key in entries else 0


def _now(progress: Progress, part: ProgressPart) -> _Kept | None:
    return _entries(progress, part.what).get(part.key)


def _put(progress: Progress, parts: Sequence[ProgressPart], *, back: bool) -> Progress:
    ticks, measured, as_cut, signed, notes, blemishes = (
        _with(_entries(progress, what), [part for part in parts if part.what == what], back=back)
        for what in _RECORDS
    )
    update = {
        "ticks": tuple(ticks.values()),
        "measured": measured,
        "as_cut": as_cut,
        "signed": tuple(signed.values()),
        "notes": tuple(notes.values()),
        "blemishes": tuple(blemishes.values()),
    }
    return progress.model_copy(update=update)


def _with(
    entries: dict[str, _Kept], parts: Sequence[ProgressPart], *, back: bool
) -> dict[str, _Kept]:
    """The entries with some put at the places they stood at, and others taken out."""
    moved = {part.key for part in parts}
    items = [(key, kept) for key, kept in entries.items() if key not in moved]
    for part in sorted(parts, key=lambda part: part.was_at if back else part.now_at):
        place, kept = (part.was_at, part.was) if back else (part.now_at, part.now)
        if kept is not None:
            items.insert(place, (part.key, kept))
    return dict(items)


def _reason(part: ProgressPart, now: _Kept | None, count: int) -> str:
    if isinstance(part, TickPart | SignedPart | NotePart | BlemishPart):
        return "it is gone" if now is None else "it is another now"
    return "these are others now" if count == 1 else "its sizes are others now"
