"""A timber of the list as one row."""

from benchmate.tui.desk import Desk
from benchmate.tui.member_rows import HEADS, Cells, headed, member_row, widths
from benchmate.workbench.members import Members

LONG = Cells("South plate, west stick", "plate", '7" x 8"', "no hand", "16' 3\"", "cut", "9/43")


def test_the_least_needed_gives_way_first() -> None:
    """Kind, then section, then hand; name and length stay."""
    assert list(widths([LONG], 120, kind=True)) == list(Cells._fields[:-1])
    assert "kind" not in widths([LONG], 120, kind=False)
    narrow = widths([LONG], 70, kind=True)
    assert "kind" not in narrow
    assert "section" in narrow
    assert list(widths([LONG], 50, kind=True)) == ["name", "length", "state"]


def test_a_state_and_a_name_are_cut_short_before_a_column_goes() -> None:
    """No further than is needed."""
    words = LONG._replace(state="assembled, not fitted, check again")
    whole, less = widths([words], 130, kind=True), widths([words], 100, kind=True)
    assert whole["state"] == len(words.state)
    assert less["state"] < whole["state"]
    assert less["name"] == whole["name"]
    assert list(less) == list(whole)


def test_a_row_is_led_by_its_sign(desk: Desk) -> None:
    """Under the letters of the heading; without colour."""
    desk.bench.sign("post-sw", "fitted")
    member = Members(desk.bench).member("post-sw")
    cells = Cells.of(member)
    room = widths([cells], 120, kind=True)
    row = member_row(member, cells, room, "~")
    assert row.lead == "L-CF-"
    assert row.text.split()[:3] == ["SW", "post", "post"]
    assert row.tail == f"{member.walk.done}/{len(member.walk.steps)}"
    head = headed(room, "~")
    assert head.heading
    assert head.lead == "L2CFA"
    assert head.text.startswith(HEADS.name)
