"""The list of timbers: grouped, sorted, filtered, counted."""

from benchmate.workbench.bench import Bench
from benchmate.workbench.jobs import job_order, next_job
from benchmate.workbench.members import By, Members, kind_lines


def grown(bench: Bench) -> Members:
    """The whole list."""
    members = Members(bench)
    while members.grow():
        pass
    return members


def test_grouping_goes_round(shed: Bench) -> None:
    """Kind, bent, wall, progress, nothing, kind; every timber is in one group of each."""
    members, by = grown(shed), By.KIND
    for _ in By:
        groups = members.grouped(members.all, by, as_given=False)
        listed = [each.timber.id for group in groups for each in group.members]
        assert sorted(listed) == sorted(each.id for each in shed.timbers)
        by = by.next
    assert by is By.KIND


def test_headings_count_kinds_hands_and_progress(shed: Bench) -> None:
    """`6 posts: 3 right, 3 left; 3 begun`."""
    members = grown(shed)
    heads = [each.heading for each in members.grouped(members.all, By.KIND, as_given=False)]
    assert "6 posts: 3 right, 3 left; 3 begun" in heads
    assert kind_lines(shed) == tuple(heads)
    heads = [each.heading for each in members.grouped(members.all, By.BENT, as_given=False)]
    assert heads[0] == (
        "Bent on line 1: 1 sill, 2 posts, 1 tie; 1 right, 2 left, 1 no hand; 1 cut, 2 begun"
    )
    assert heads[-1].startswith("In no bent: ")
    brief = members.grouped(members.all, By.BENT, as_given=False)[0].brief
    assert brief == "Bent on line 1: 4 timbers; 1 right, 2 left, 1 no hand; 1 cut, 2 begun"
    heads = [each.heading for each in members.grouped(members.all, By.STATE, as_given=False)]
    assert [each.partition(":")[0] for each in heads] == ["Not started", "Begun", "Cut"]


def test_timbers_without_a_place_come_last(bench: Bench) -> None:
    """All of these have none."""
    members = Members(bench)
    (group,) = members.grouped(members.all, By.WALL, as_given=False)
    assert group.heading.startswith("No place in the frame: ")


def test_bents_stay_before_what_is_in_none_when_sorted_by_job(shed: Bench) -> None:
    """The sort goes through the bents, not past them."""
    members = grown(shed)
    order = members.by_job("sill-south", shed.walk("sill-south").steps[0].id)
    groups = members.grouped(order, By.BENT, as_given=True)
    assert groups[-1].heading.startswith("In no bent")
    assert members.grouped(order, By.NONE, as_given=True)[0].members == order


def test_the_next_best_job_comes_first_and_what_is_done_last(shed: Bench) -> None:
    """The order begins where g would go."""
    walks = tuple(shed.walk(each.id) for each in shed.timbers)
    step = shed.walk("post-ne").steps[0].id
    job = next_job(walks, "post-ne", step)
    order = job_order(walks, "post-ne", step)
    assert job is not None
    assert order[0] == job.timber
    assert sorted(order) == sorted(each.id for each in shed.timbers)
    begun = [any(shed.walk(each).progress.ticks) for each in order]
    assert begun.index(False) >= sum(begun) - 1


def test_words_filter_by_all_that_is_shown(shed: Bench) -> None:
    """In any order, starts of words, and with a slip where no timber holds one as typed."""
    members = grown(shed)

    def found(words: str) -> set[str]:
        return {each.timber.id for each in members.holding(words, members.all)}

    assert found("") == {each.id for each in shed.timbers}
    assert found("tie west") == {"tie-west"}
    assert found("post left") == {"post-sw", "post-sm", "post-ne"}
    assert found("psot left") == found("post left")
    assert found("line 1 post") >= {"post-sw", "post-nw"}
    assert found("again") == {"sill-south"}
    assert found("cut") == {"tie-west"}
    assert found("zebra") == set()


def test_hands_and_waits_are_taken_in_one_by_one(shed: Bench) -> None:
    """Those asked for first come first, and standing again keeps what is known."""
    members = Members(shed)
    assert members.grow(["post-ne"])
    assert members.member("post-ne").hand == "left hand"
    assert members.member("post-sw").hand == ""
    shed.sign("post-ne", "fitted")
    members.stand("post-ne")
    assert members.member("post-ne").state.fitted
    assert members.member("post-ne").hand == "left hand"
    members.renew()
    assert members.member("post-ne").hand == ""
    count = 0
    while members.grow():
        count += 1
    assert count == len(shed.timbers)
