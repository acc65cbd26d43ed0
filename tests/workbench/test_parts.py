"""What an action changed in a timber's progress, and turning it."""

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import Length
from benchmate.model.progress import SIGN_WORDS, AsCut, Measured, Progress, Signed, Tick
from benchmate.store.progress_file import progress_text
from benchmate.workbench.actions import OvertakenError, with_tick
from benchmate.workbench.parts import parts_between, turned

AT = datetime(2026, 3, 2, 8, tzinfo=UTC)
KEYS = ("foot", "head", "middle", "west-end")


def tick(step: str, minute: int = 0) -> Tick:
    """A tick at a minute of the morning."""
    return Tick(step=step, at=AT + timedelta(minutes=minute))


def test_a_tick_made_anew_goes_back_to_where_it_stood() -> None:
    """The file is the same bytes again, not only the same ticks."""
    before = Progress(timber="post", ticks=tuple(map(tick, KEYS)))
    after = with_tick("head", tick("head", 9))(before)
    parts = parts_between(before, after)
    assert len(parts) == 1
    assert progress_text(turned(parts, back=True)(after)) == progress_text(before)
    assert progress_text(turned(parts, back=False)(before)) == progress_text(after)


def test_what_others_did_elsewhere_stays() -> None:
    """Only the entry itself is turned."""
    before = Progress(timber="post", ticks=(tick("foot"),))
    parts = parts_between(before, with_tick("head", tick("head"))(before))
    others = Progress(timber="post", ticks=(tick("middle"), tick("foot", 5), tick("head")))
    assert turned(parts, back=True)(others).ticks == (tick("middle"), tick("foot", 5))


def test_what_is_turned_already_stays() -> None:
    """The same progress comes back, so nothing is written."""
    before = Progress(timber="post")
    parts = parts_between(before, with_tick("head", tick("head"))(before))
    assert turned(parts, back=True)(before) is before


@pytest.mark.parametrize(
    ("now", "told"),
    [
        (Progress(timber="post", ticks=(tick("head", 1),)), "it is another now"),
        (
            Progress(timber="post", measured={"head": Measured(first=Length.inches(6))}),
            "it is gone",
        ),
        (
            Progress(
                timber="post",
                measured={"head": Measured(first=Length.inches(6))},
                ticks=(tick("head"),),
            ),
            "its sizes are others now",
        ),
    ],
)
def test_what_is_neither_is_left(now: Progress, told: str) -> None:
    """One part that others changed keeps the whole action from being undone."""
    after = Progress(
        timber="post",
        measured={"head": Measured(first=Length.inches(7))},
        ticks=(tick("head"),),
    )
    parts = parts_between(Progress(timber="post"), after)
    assert len(parts) == 2
    with pytest.raises(OvertakenError, match=told):
        turned(parts, back=True)(now)


def sizes(record: type[Measured | AsCut], name: str) -> st.SearchStrategy[Measured | AsCut]:
    """A record with one size in it."""
    return st.integers(1, 3).map(lambda inches: record.model_validate({name: f"{inches}"}))


def ordered(values: st.SearchStrategy[object]) -> st.SearchStrategy[dict[str, object]]:
    """Some of the keys in any order, each with a value."""
    return st.lists(st.tuples(st.sampled_from(KEYS), values), unique_by=lambda each: each[0]).map(
        dict
    )


PROGRESS = st.builds(
    lambda ticks, measured, as_cut, signed: Progress(
        timber="post",
        ticks=tuple(tick(step, minute) for step, minute in ticks.items()),
        measured=measured,
        as_cut=as_cut,
        signed=tuple(
            Signed(what=what, at=AT + timedelta(minutes=minute)) for what, minute in signed
        ),
    ),
    ordered(st.integers(0, 3)),
    ordered(sizes(Measured, "first")),
    ordered(sizes(AsCut, "width")),
    st.lists(
        st.tuples(st.sampled_from(SIGN_WORDS), st.integers(0, 3)), unique_by=lambda each: each[0]
    ),
)


@given(PROGRESS, PROGRESS)
def test_any_change_goes_back_and_forth(before: Progress, after: Progress) -> None:
    """Law: the file is the same bytes after undoing it, and after doing it again."""
    parts = parts_between(before, after)
    back, again = turned(parts, back=True)(after), turned(parts, back=False)(before)
    assert progress_text(back) == progress_text(before)
    assert progress_text(again) == progress_text(after)
