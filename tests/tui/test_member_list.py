"""The list of timbers as rows, and the one in hand in full."""

from benchmate.tui.desk import Desk
from benchmate.tui.member_list import MemberList
from benchmate.workbench.members import By


def said(listed: MemberList) -> str:
    """What stands below the list."""
    return " ".join(f"{each.label} {each.text}" for each in listed.sayings())


def test_the_timber_in_hand_stays_in_hand(desk: Desk) -> None:
    """Whatever it is grouped or sorted by."""
    listed = desk.member_list()
    for _ in By:
        for _ in range(2):
            rows = listed.rows(80)
            assert listed.at(listed.place) == "post-se"
            assert "SE post" in rows[listed.place].text
            listed.sort_on()
        listed.group_on()


def test_how_it_is_shown_is_kept_for_the_next_time(desk: Desk) -> None:
    """The desk remembers grouping and sort, not the words."""
    listed = desk.member_list()
    listed.group_on()
    listed.sort_on()
    listed.words = "plate"
    again = desk.member_list()
    assert (again.shown.by, again.shown.by_job, again.words) == (By.BENT, True, "")


def test_a_row_is_made_anew_only_where_something_is_new(desk: Desk) -> None:
    """A thousand timbers are shown while they are still being taken in."""
    listed = desk.member_list()
    before = listed.rows(120)
    assert all(
        one is other for one, other in zip(before, listed.rows(120), strict=True) if not one.heading
    )
    desk.sign("post-se", "fitted")
    listed.members.stand("post-se")
    after = listed.rows(120)
    changed = [row.text for one, row in zip(before, after, strict=True) if one != row]
    assert sum("SE post" in text for text in changed) == 1


def test_a_timber_that_is_gone_is_listed_no_more(desk: Desk) -> None:
    """Undoing an edit may take out the very timber that the order started from."""
    bench = desk.bench
    text = bench.project_text()
    added = text[text.index("[[timber]]") :].split("[[timber]]")[1]
    added = added.replace('"post-sw"', '"stray"').replace('"SW post"', '"Stray post"')
    bench.edit_project("Stray post added", f"{text}\n[[timber]]{added}")
    desk.go_to("stray", "")
    listed = desk.member_list()
    listed.sort_on()
    assert any("Stray post" in row.text for row in listed.rows(120))
    desk.undo()
    listed.renew((desk.timber, desk.step.id))
    assert not any("Stray" in row.text for row in listed.rows(120))
    assert listed.at(listed.place) == desk.timber


def test_words_that_nothing_holds_say_so(desk: Desk) -> None:
    """And the title counts."""
    listed = desk.member_list()
    listed.words = "plate"
    listed.rows(80)
    assert listed.title.startswith(f"{listed.count} of {len(desk.bench.timbers)} timbers")
    listed.words = "zebra"
    assert listed.rows(80) == ()
    assert listed.at(0) == ""
    assert "try fewer" in said(listed)


def test_what_is_in_hand_is_told_in_full(desk: Desk) -> None:
    """Section, state with its time, and what comes next or what it waits for."""
    desk.sign("post-se", "fitted")
    listed = desk.member_list()
    listed.members.grow(["post-se"])
    listed.rows(80)
    told = said(listed)
    assert 'SE post: post, white pine, 7" x 7"' in told
    assert "state fitted, not cut; fitted 2" in told
    assert "next Foot tenon" in told


def test_signing_tells_what_should_have_come_first(desk: Desk) -> None:
    """It is kept all the same; taken off, nothing is missing."""
    told = desk.sign("post-se", "assembled")
    assert told.words == "SE post: assembled. It is neither fitted nor cut yet."
    assert not told.failed
    assert desk.sign("post-se", "assembled").words == "SE post: no longer assembled."
    assert desk.undo().words == "Undone: SE post, no longer assembled."
