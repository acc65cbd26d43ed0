"""The frame as text and as data."""

from typing import Any

from benchmate.layout.likeness import Alike
from benchmate.layout.roster import roster
from benchmate.workbench.frame_form import (
    NO_PLACE,
    alike_data,
    alike_line,
    entry_data,
    entry_lines,
    inner_data,
    inner_lines,
)
from tests.builders import corners, frame, length, real, sill, tenon, timber


def _told(timber_id: str) -> list[str]:
    made = frame(
        sill(length=None, at={"north": "0", "up": "2'"}, reference_end_at="1'", far_end_at="17'"),
        timber("post", length="8'", at={"east": "3'", "north": "0"}),
        tenon(timber="post", into="sill", housing="1/2"),
    )
    (entry,) = (entry for entry in roster(made) if entry.timber.id == timber_id)
    return list(entry_lines(entry, made.project.tape))


def test_a_timber_in_a_few_lines() -> None:
    """What it is, how it is measured, where it stands, how long, what meets it where."""
    assert _told("sill") == [
        'Sill (sill): sill, 8" x 8", right hand',
        "  top face first, South face second, measured from the west end",
        '  arris 0" north, 2\' 0" up, from 1\' 0" east to 17\' 0" east',
        "  shoulder to shoulder 16' 0\", overall 16' 0\"",
        "  takes Post's foot from 2' 0\": 2' 0\" from the squared end, 14' 0\" from the far end",
    ]
    assert _told("post")[-1] == '  foot bears in Sill, housed 1/2"'


def test_a_timber_alone_says_so() -> None:
    """It has no place, and its lengths were typed."""
    made = corners()
    assert f"  {NO_PLACE}" in entry_lines(roster(made)[0], made.project.tape)


def test_like_members_are_counted_by_hand() -> None:
    """How many in all, and of each hand which."""
    group = Alike(kind="post", timbers=("a", "b", "c"), right=("a",), left=("b", "c"), either=())
    names = {"a": "SE post", "b": "SW post", "c": "NE post"}
    said = "3 post: 1 right hand (SE post); 2 left hand (SW post, NE post)"
    assert alike_line(group, names) == said
    assert alike_data(group) == {
        "kind": "post",
        "right_hand": ["a"],
        "left_hand": ["b", "c"],
        "no_hand": [],
    }


def test_the_largest_safe_inner_section_of_a_class() -> None:
    """The smallest measured on its sticks, at places that they have; each depth on its own."""
    words: dict[str, Any] = {
        "rule": "square",
        "sections": {"post": "8 x 8"},
        "inner": {"post": "7-1/2 x 7-1/2"},
    }
    parts = (timber("a", section="post"), timber("b", section="post"))
    bare = frame(*parts, **words)
    (said,) = inner_lines(bare, bare.project.tape)
    assert said.endswith("largest that the 0 of 2 sticks measured allow: not known yet")
    typed = {
        "a": real({"all": {"first": "7-7/8", "second": "8-1/4"}, "gone": {"first": "6"}}),
        "b": real({"all": {"first": "8", "second": "7-5/8"}}),
    }
    made = frame(*parts, real=typed, **words)
    (said,) = inner_lines(made, made.project.tape)
    assert said == (
        'post: inner 7-1/2" x 7-1/2"; '
        'largest that the 2 of 2 sticks measured allow: 7-7/8" x 7-5/8"'
    )
    largest = inner_data(made, made.project.tape)["post"]["largest_safe"]
    assert largest["second"]["nm"] == length("7-5/8").nm


def test_a_timber_as_plain_data() -> None:
    """Every length whole nanometres and as shown."""
    made = corners()
    data = entry_data(roster(made)[0], made.project.tape)
    assert (data["id"], data["hand"], data["first_face"]) == ("post-sw", "left hand", "south")
    assert data["overall"] == {"nm": length("8' 8").nm, "shown": "8' 8\""}
    assert data["meets"][0]["timber"] == "sill"
    assert data["meets"][0]["housed"] == {"nm": 0, "shown": '0"'}


def test_where_a_scribed_joint_comes_is_left_to_the_framer() -> None:
    """It is listed on both timbers without a figure, in text and as data."""
    joint = tenon(timber="post", into="sill", at="2'", scribed=True)
    made = frame(sill(), timber("post"), joint)
    entries = {entry.timber.id: entry for entry in roster(made)}
    tape = made.project.tape
    assert list(entry_lines(entries["sill"], tape))[-1] == "  takes Post's foot (scribed)"
    (meets,) = entry_data(entries["sill"], tape)["meets"]
    assert (meets["scribed"], meets["at"], meets["from_end"]) == (True, None, None)
