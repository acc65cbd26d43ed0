"""The cuts and lines of one head of a pair."""

from benchmate.joinery.rafter.peak.head import follows, head_cuts, head_lines
from benchmate.joinery.rafter.peak.shape import HeadShape
from benchmate.measure.printing import Style, Tape
from benchmate.model.solids import Axis
from tests.builders import length, line, real, set_in_words
from tests.joinery.rafter.peak.pairs import RULED, heads
from tests.joinery.rafter.peak.test_shape import BRIDLE

TAPE = Tape(style=Style.INCHES)


def names(head: HeadShape) -> list[str]:
    """The lines of a head, in the order struck."""
    return [each.id for each in head_lines(head, TAPE)]


def bounds(head: HeadShape) -> list[tuple[str | None, ...]]:
    """The lines that bound each cut of a head."""
    return [tuple(plane.line for plane in cut.planes) for cut in head_cuts(head)]


def test_butted_heads_have_one_plumb_line() -> None:
    """Along the tongue, as long as the plumb cut: 7-1/2" at 3-4-5."""
    for head in heads(("9", "9"), cut="butt"):
        (found,) = head_lines(head, TAPE)
        assert (found.id, found.title) == ("shoulder", "Plumb line")
        assert found.slant is not None
        assert "strike along the tongue" in set_in_words(found.slant.setting)
        assert found.beside[0].value == length("7-1/2")
        assert bounds(head) == [("shoulder",)]


def test_at_45_degrees_a_lap_has_square_lines() -> None:
    """No line at its end, a square shoulder as far back as the other is deep, and the lap line."""
    for head in heads():
        assert names(head) == ["root", "far-cheek"]
        root = line(head_lines(head, TAPE), "root")
        assert (root.slant, root.axis) == (None, Axis.ALONG)
        assert root.beside[0].value == length("6")
        assert bounds(head) == [("root", "far-cheek")]


def test_elsewhere_the_lines_slant_parallel_to_the_mate() -> None:
    """At 9 in 12 they go 3-1/2" along for 12" across: 16.3 degrees off square."""
    first, _ = heads(("9", "9"))
    assert names(first) == ["shoulder", "root", "far-cheek"]
    peak, root = (line(head_lines(first, TAPE), each) for each in ("shoulder", "root"))
    assert peak.slant is not None
    assert root.slant is not None
    assert peak.slant.setting == root.slant.setting
    assert "saw 16.3° off square (73.7° to edge)" in set_in_words(root.slant.setting)


def test_a_tongue_loses_both_sides_and_a_fork_the_middle() -> None:
    """Bounded by the same three lines, the waste on either side of them."""
    first, second = heads(**BRIDLE)
    assert bounds(first) == [("root", "near-cheek"), ("root", "far-cheek")]
    assert bounds(second) == [("root", "near-cheek", "far-cheek")]
    assert line(head_lines(second, TAPE), "root").title == "Fork bottom line"
    assert line(head_lines(second, TAPE), "near-cheek").beside[0].words == "fork width"


def test_which_half_of_a_lap_goes() -> None:
    """The first keeps the half by its reference side, the second the other: said on both."""
    first, second = heads()
    assert "on the North face only" in line(head_lines(first, TAPE), "far-cheek").waste
    assert "on the South face only" in line(head_lines(second, TAPE), "far-cheek").waste
    _, turned = heads(mate={"side": "north", "across": "4"})
    assert "on the South face only" in line(head_lines(turned, TAPE), "near-cheek").waste
    kept = [line(head_lines(each, TAPE), "far-cheek").beside[0].value for each in (first, second)]
    assert kept == [length("2"), length("2")]


def test_the_root_goes_by_the_mates_underside() -> None:
    """Cautioned about until that was measured; by square rule it holds."""
    first, _ = heads()
    assert "Mate's underside" in line(head_lines(first, TAPE), "root").caution
    known = {"mate": real({"head-lap": {"first": "6-1/8"}})}
    found = line(head_lines(heads(sticks=known)[0], TAPE), "root")
    assert (found.caution, found.beside[0].value) == ("", length("6-1/8"))
    assert line(head_lines(heads(own=RULED)[0], TAPE), "root").caution == ""


def test_a_mate_says_what_it_follows() -> None:
    """As drawn, or as it came out."""
    assert "not been measured as cut" in follows(heads()[1], TAPE)
    made = {"rafter": real(None, {"head-tongue": {"thickness": "1-7/16"}})}
    assert follows(heads(sticks=made, **BRIDLE)[1], TAPE).endswith('tongue as cut: 1-7/16" thick.')


def test_by_square_rule_an_underside_is_reduced() -> None:
    """With its own end line where the mate is over as well, at the root where it is not."""
    deep = real({"all": {"first": "6-1/2"}})
    both, _ = heads(("9", "9"), own=RULED, sticks={"rafter": deep, "mate": deep})
    assert names(both) == ["shoulder", "root", "far-cheek", "reduction-stop", "reduced-first"]
    one, _ = heads(("9", "9"), own=RULED, sticks={"rafter": deep})
    assert names(one) == ["shoulder", "root", "far-cheek", "reduced-first"]
    assert bounds(one)[-1] == ("root", "reduced-first")
