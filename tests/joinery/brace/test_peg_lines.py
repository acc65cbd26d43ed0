"""The marks of a brace's pegs."""

from benchmate.joinery.brace.peg_lines import bored_lines, draw_words, own_lines
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Line, Stage
from benchmate.model.setting import Arm
from benchmate.model.solids import Axis
from tests.builders import length, line
from tests.joinery.brace.bays import bay
from tests.joinery.brace.test_pegged import shape

TAPE = Tape()


def _own(**words: object) -> tuple[Line, ...]:
    return own_lines(shape(**words), TAPE)  # type: ignore[arg-type]


def test_the_post_is_marked_square_to_its_own_faces() -> None:
    """The peg line in from a reference face, the centre along the post."""
    found = bored_lines(shape(), TAPE)
    assert [(each.id, each.axis, each.at) for each in found] == [
        ("peg-line", Axis.FIRST, length("6")),
        ("peg-1", Axis.ALONG, length("5' 2")),
    ]
    words = [each.words for each in found[0].beside]
    assert words[0] == "in from the East face"
    assert found[0].beside[0].value == length("2")
    assert any("the housing floor" in each for each in words)
    assert "engineer decides" in found[0].why


def test_unhoused_it_counts_from_the_face_alone() -> None:
    """No housing floor is named where there is none."""
    found = bored_lines(shape(bay(joint={"housing": "0"})), TAPE)
    assert "to the East face" in found[0].beside[0].words


def test_a_seat_on_a_far_face_waits_to_be_measured() -> None:
    """The default post is measured from its west face, and the brace comes from the east."""
    assert "measure first" in line(bored_lines(shape(), TAPE), "peg-line").caution
    from_east = bay(post_first="east")
    assert line(bored_lines(shape(from_east), TAPE), "peg-line").caution == ""


def test_what_is_left_in_the_tenon_counts_from_its_own_hole() -> None:
    """A 4" tenon bored at 1-1/2" less 1/8": 2-5/8", 3.5 diameters of a 3/4" hole, 2-1/4" clear.

    On the brace the same figures count from the centre marked there; undrawn, on the post too.
    """
    own = (
        "from the tenon's own hole, drawn 1/8\" nearer the shoulder, to its end, "
        '3.5 diameters of the 3/4" hole'
    )
    here = [
        (length("2-5/8"), "from the centre to the tenon's end, 3.5 diameters of the 3/4\" hole"),
        (length("2-1/4"), "of wood from the hole to the tenon's end"),
    ]
    assert _told(line(bored_lines(shape(), TAPE), "peg-line"))[-2:] == [
        (length("2-5/8"), own),
        (length("2-1/4"), "of wood from that hole to the tenon's end"),
    ]
    assert _told(_own()[0])[-2:] == here
    undrawn = line(bored_lines(shape(draw="0"), TAPE), "peg-line")
    assert _told(undrawn)[-2] == (
        length("2-1/2"),
        "from the centre to the tenon's end, 3.3 diameters of the 3/4\" hole",
    )


def _told(found: Line) -> list[tuple[Length, str]]:
    return [(each.value, each.words) for each in found.beside]


def test_blind_holes_have_a_depth() -> None:
    """7" in, 4" of it past a tenon whose far cheek lies 3" in."""
    depth = line(bored_lines(shape(blind_depth="7"), TAPE), "peg-depth")
    assert [(each.value, each.words) for each in depth.beside] == [
        (length("4"), "past the tenon"),
        (length("1"), "left to the North face"),
    ]


def test_the_brace_is_marked_square_from_shoulder_and_nose() -> None:
    """Shifted both ways, with the setting of each line; struck only once the joint was fitted."""
    found = _own()
    readings = [(each.readings[0].value, each.readings[0].hook) for each in found]
    assert readings == [(length("1-3/8"), "seat line"), (length("2-1/8"), "nose line")]
    assert all("square to it" in each.readings[0].way for each in found)
    squares = [each.slant.setting.square for each in found if each.slant and each.slant.setting]
    assert [square and square.arm for square in squares] == [Arm.TONGUE, Arm.BLADE]
    assert {each.stage for each in found} == {Stage.FINISH}
    assert {each.faces for each in found} == {(shape().own.face,)}


def test_the_draw_is_said_both_ways() -> None:
    """Towards the shoulder and away from the nose (trade notes 3, TFG-when); nothing undrawn."""
    said = draw_words(shape(), TAPE)
    assert said.startswith('Draw 1/8" towards the shoulder and 1/8" away from the nose')
    assert all(each.caution == said.rstrip() for each in _own())
    assert draw_words(shape(draw="0"), TAPE) == ""
    undrawn = _own(draw="0")
    assert undrawn[0].title == "Peg line"
    assert undrawn[0].why.startswith("No draw")


def test_the_short_edge_is_told_too() -> None:
    """6" of brace, with the centre 2.83" in: 3.17" are left, square to the edge."""
    (wood, _) = _own()[1].beside
    assert abs(wood.value.nm - (length("6").nm - length("4").nm / 2**0.5)) < 2
    assert "the short edge" in wood.words
