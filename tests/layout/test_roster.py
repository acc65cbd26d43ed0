"""The frame timber by timber."""

from benchmate.layout.roster import Entry, looks, roster
from tests.builders import corners, frame, length, lengths, sill, tenon, timber
from tests.joinery.scarf.plates import plate
from tests.joinery.tenon.head_ties import head_tie
from tests.joinery.tenon.sill_corners import sill_corner


def _placed() -> dict[str, Entry]:
    """A post on a sill, both with places; the sill starts 1' east of zero, 2' up."""
    made = frame(
        sill(length=None, at={"north": "0", "up": "2'"}, reference_end_at="1'", far_end_at="17'"),
        timber("post", length="8'", at={"east": "3'", "north": "0"}),
        tenon(timber="post", into="sill", housing="1/2"),
    )
    return {entry.timber.id: entry for entry in roster(made)}


def test_where_a_timber_stands() -> None:
    """Its shoulders in the building, along its arris, reference end first."""
    zero = length("0")
    assert _placed()["post"].ends == (
        (length("3'"), zero, length("23-1/2")),
        (length("3'"), zero, length("23-1/2") + length("8'")),
    )
    assert _placed()["sill"].ends == (
        (length("1'"), zero, length("2'")),
        (length("17'"), zero, length("2'")),
    )


def test_what_meets_it_where() -> None:
    """Running figures from the shoulder, from the squared end, and back from the far end."""
    (takes,) = _placed()["sill"].meets
    assert (takes.timber, takes.words) == ("post", "takes Post's foot")
    assert (takes.at, takes.from_end, takes.back) == tuple(map(length, ("2'", "2'", "14'")))
    (bears,) = _placed()["post"].meets
    assert (bears.words, bears.own) == ("foot bears in Sill", True)
    assert bears.housed == length("1/2")
    assert bears.from_end == length("5")


def test_two_sticks_of_a_line_meet_end_to_end() -> None:
    """Each says so once, at its own shoulder."""
    one, other = roster(plate())
    (found,) = one.meets
    assert (found.timber, found.words) == ("other", "east end is joined to the end of Other")
    assert (found.at, found.from_end, found.back) == lengths("12' 6", "12' 6", "3'")
    assert (found.own, found.housed) == (True, length("0"))
    (found,) = other.meets
    assert (found.timber, found.words) == ("one", "west end is joined to the end of One")
    assert (found.at, found.from_end, found.back) == lengths("0", "3'", "12' 6")


def test_a_timber_alone_has_no_ends_in_the_building() -> None:
    """It still says its lengths and what it meets."""
    post = next(entry for entry in roster(corners()) if entry.timber.id == "post-sw")
    assert post.ends == ()
    assert [meets.words for meets in post.meets] == ["foot bears in Sill", "head bears in Plate"]
    assert looks(post) == "South face first, West face second, measured from the foot"


def test_a_tenon_that_lets_another_through_says_so() -> None:
    """The end sill of a corner, at its own shoulder; the post and the long sill as ever."""
    found = {entry.timber.id: entry for entry in roster(sill_corner())}
    words = {timber: [each.words for each in entry.meets] for timber, entry in found.items()}
    assert words == {
        "long": ["takes End's south end", "takes Post's foot"],
        "end": ["south end bears in Long", "lets Post's foot through its tenon"],
        "post": ["foot bears in Long"],
    }
    lets = found["end"].meets[1]
    assert (lets.timber, lets.own, lets.housed) == ("post", True, length("0"))


def test_an_end_that_goes_on_is_told_on_all_three() -> None:
    """The tie takes the post's head as the plate does."""
    found = {entry.timber.id: entry for entry in roster(head_tie())}
    words = {timber: [each.words for each in entry.meets] for timber, entry in found.items()}
    assert words == {
        "plate": ["takes Post's head"],
        "tie": ["takes Post's head"],
        "post": ["head bears in Plate", "head goes on into Tie"],
    }
    assert found["tie"].meets[0].from_end == length("12")
