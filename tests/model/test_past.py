"""What can be undone and done again."""

from hypothesis import given
from hypothesis import strategies as st

from benchmate.model.journal import Action, Line
from benchmate.model.past import Became, Past, lines_of
from tests.model.test_journal import AT, TICKED


def token(number: int) -> str:
    """What names the action of that number."""
    return f"{number:012x}"


def did(number: int) -> Line:
    """An action."""
    return Line(
        did=Action(id=token(number), at=AT, words=str(number), timber="post", parts=(TICKED,))
    )


def undone(number: int) -> Line:
    """An action taken back."""
    return Line(undone=token(number))


def redone(number: int) -> Line:
    """An action done again."""
    return Line(redone=token(number))


def left(number: int) -> Line:
    """An action that was overtaken outside."""
    return Line(left=token(number))


def nexts(past: Past) -> tuple[str | None, str | None]:
    """What is undone next, and what done again."""
    back, again = past.to_undo, past.to_redo
    return back.words if back else None, again.words if again else None


def test_the_last_done_is_undone_first_and_done_again_first() -> None:
    """Back and forth along one line of actions."""
    past = Past((did(1), did(2), did(3)))
    assert nexts(past) == ("3", None)
    past.take(undone(3))
    past.take(undone(2))
    assert nexts(past) == ("1", "2")
    past.take(redone(2))
    assert nexts(past) == ("2", "3")


def test_a_new_action_drops_what_could_be_done_again() -> None:
    """It stays in the history as taken back."""
    past = Past((did(1), did(2), undone(2), did(3)))
    assert nexts(past) == ("3", None)
    assert [deed.became for deed in past] == [Became.DONE, Became.SPENT, Became.DONE]
    assert [deed.became.holds for deed in past] == [True, False, True]


def test_what_was_overtaken_is_passed_over() -> None:
    """Neither way is it tried again; undone it stays undone, done it stays done."""
    past = Past((did(1), did(2), did(3), undone(3), left(3), left(2)))
    assert nexts(past) == ("1", None)
    assert [deed.became for deed in past] == [Became.DONE, Became.LEFT, Became.SPENT]


def test_lines_that_lead_nowhere_say_nothing() -> None:
    """Trimmed files, files put together by hand: what is not known is not turned."""
    past = Past((did(1), undone(7), redone(1), left(9), did(1), Line(told=token(4))))
    assert nexts(past) == ("1", None)
    assert len(past) == 1


LINES = st.lists(
    st.builds(
        lambda make, number: make(number),
        st.sampled_from((did, undone, redone, left)),
        st.integers(0, 6),
    ),
    max_size=40,
)


@given(LINES)
def test_the_fewest_lines_make_the_same_past(lines: list[Line]) -> None:
    """Law: what a trimmed file says of its actions is what the whole one said."""
    past = Past(lines)
    again = Past(lines_of(past))
    assert list(again) == list(past)
    assert nexts(again) == nexts(past)
