"""What is kept of an action."""

from datetime import UTC, datetime

import pytest
from pydantic import ValidationError

from benchmate.model.journal import Action, AsCutPart, Line, NamePart, Piece, TextPart, TickPart
from benchmate.model.progress import AsCut, Tick
from tests.builders import length

AT = datetime(2026, 3, 2, 8, tzinfo=UTC)
TICK = Tick(step="foot-tenon/shoulder", marked={"squared foot": length("3-1/2")}, at=AT)
TICKED = TickPart(what="tick", key=TICK.step, now=TICK, now_at=4)
CUT = AsCutPart(what="as-cut", key="foot-tenon", now=AsCut(width=length("5-1/4")))
NAME = NamePart(what="name", table="lengths", name="deck", was="1-1/4", now="1-1/2")
TEXT = TextPart(what="text", pieces=(Piece(line=3, was=('a = "1"',), now=(), below=("",)),))


def action(*parts: TickPart | AsCutPart | NamePart | TextPart, timber: str = "post") -> Action:
    """An action of these parts."""
    return Action(id="0123456789ab", at=AT, words="done", timber=timber, parts=parts)


@pytest.mark.parametrize("parts", [(TICKED,), (TICKED, CUT), (NAME,), (TEXT,)])
def test_what_is_written_reads_back(parts: tuple[TickPart, ...]) -> None:
    """An action is the same after a restart, to the nanometre and the second."""
    line = Line(did=action(*parts))
    written = line.model_dump_json(exclude_defaults=True)
    assert Line.model_validate_json(written) == line
    assert "\n" not in written


def test_what_changes_the_frame_says_so() -> None:
    """The project file is everybody's; a tick is its timber's own."""
    assert action(NAME).of_frame
    assert action(TEXT, timber="").of_frame
    assert not action(TICKED).of_frame


def test_an_action_is_of_one_file() -> None:
    """What cannot be turned back as one is not noted as one."""
    with pytest.raises(ValidationError, match="two actions"):
        action(TICKED, NAME)
    with pytest.raises(ValidationError, match="does not say whose"):
        action(TICKED, timber="")
    with pytest.raises(ValidationError, match="at least 1 item"):
        action()


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("{}", "one thing"),
        ('{"undone": "0123456789ab", "redone": "0123456789ab"}', "one thing"),
        ('{"undone": "0123456789ab", "became": "spent"}', "what became of nothing"),
        ('{"undone": "12"}', "pattern"),
        ('{"unmade": "0123456789ab"}', "Extra inputs"),
        ('{"did": {"id": "0123456789ab"', "Invalid JSON"),
    ],
)
def test_a_line_that_says_something_else_is_refused(line: str, told: str) -> None:
    """A line of a newer benchmate, or a torn one, is not half read."""
    with pytest.raises(ValidationError, match=told):
        Line.model_validate_json(line)


def test_nothing_in_a_journal_acts_on_a_terminal() -> None:
    """Words are shown, so they hold no control characters."""
    with pytest.raises(ValidationError, match="control character"):
        Action(id="0123456789ab", at=AT, words="\x1b[2J", timber="post", parts=(TICKED,))
