"""What to do at the heads of a pair, one figure to one task."""

from benchmate.joinery.rafter.peak.cutting import head_sizes, head_tasks, lost
from benchmate.joinery.rafter.peak.shape import HeadShape
from benchmate.measure.printing import Style, Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Task
from tests.builders import length, real
from tests.joinery.rafter.peak.pairs import RULED, heads
from tests.joinery.rafter.peak.test_shape import BRIDLE

TAPE = Tape(style=Style.INCHES)


def tasks(head: HeadShape) -> dict[str, Task]:
    """The tasks by id, in order."""
    return {task.id: task for task in head_tasks(head, TAPE)}


def test_a_butted_head() -> None:
    """Sawn plumb and pared flat; the pair is alike."""
    for head in heads(("9", "9"), cut="butt"):
        found = tasks(head)
        assert list(found) == ["section", "knife", "saw-end", "pare"]
        assert found["saw-end"].readings[0].value == length("7-1/2")
        assert head_sizes(head) == ()


def test_a_half_lap_is_sawn_from_the_side_that_goes() -> None:
    """The first from its far side, the second from its reference side; 2" is left of each."""
    first, second = heads()
    assert lost(first) == ((Face.FAR_SECOND, length("2")),)
    assert lost(second) == ((Face.SECOND, length("2")),)
    assert list(tasks(first)) == ["section", "knife", "saw-far", "saw-cheeks", "pare", "as-cut"]
    assert list(tasks(second)) == ["section", "knife", "saw-near", "saw-cheeks", "pare"]
    assert [tasks(head)["pare"].readings[0].value for head in (first, second)] == [
        length("2"),
        length("2"),
    ]


def test_a_lap_from_the_far_side_of_the_mate() -> None:
    """Its reference side looks the other way, so it is sawn from its far one."""
    _, second = heads(mate={"side": "north", "across": "4"})
    assert lost(second) == ((Face.FAR_SECOND, length("2")),)
    assert tasks(second)["saw-cheeks"].draws == "near-cheek"


def test_what_is_sawn_from_the_far_side_follows_the_stick() -> None:
    """A stick 1/4" over loses 1/4" more there, and its lap is as thick."""
    thick = {"rafter": real({"all": {"second": "4-1/4"}})}
    first, _ = heads(sticks=thick)
    assert lost(first) == ((Face.FAR_SECOND, length("2-1/4")),)
    assert tasks(first)["saw-cheeks"].readings[0].value == length("2")


def test_a_tongue_is_sawn_side_by_side_and_measured() -> None:
    """1-1/4" from either side of 4"; its thickness is typed as cut."""
    first, _ = heads(**BRIDLE)
    found = tasks(first)
    assert [found[each].readings[0].value for each in ("saw-near", "saw-far")] == [
        length("1-1/4"),
        length("1-1/4"),
    ]
    assert (found["as-cut"].asks, found["as-cut"].lasting) == (Asks.AS_CUT, False)
    assert [size[:2] for size in head_sizes(first)] == [("thickness", length("1-1/2"))]


def test_a_fork_is_ripped_and_chopped() -> None:
    """Its cheeks down to its bottom, as deep as the other is; then its width is tried."""
    _, second = heads(("9", "9"), **BRIDLE)
    found = tasks(second)
    assert list(found) == ["section", "knife", "saw-end", "rip-cheeks", "chop-bottom", "pare"]
    assert found["chop-bottom"].readings[0].value == length("6")
    assert found["pare"].readings[0].value == length("1-1/2")
    assert head_sizes(second) == ()


def test_an_end_that_is_the_sticks_own_is_not_sawn_again() -> None:
    """At 45 degrees sawing to length has made it; at other pitches it is sawn to the peak line."""
    assert "saw-end" not in tasks(heads()[0])
    assert "saw-end" in tasks(heads(("9", "9"))[0])


def test_square_rule_adds_the_underside() -> None:
    """1/2" off a stick 6-1/2" deep."""
    deep = {"rafter": real({"all": {"first": "6-1/2"}})}
    assert tasks(heads(own=RULED, sticks=deep)[0])["reduce-first"].readings[0].value == length(
        "1/2"
    )
