"""The head of a project file."""

from benchmate.outset.name_tables import CAUTION, head, lengths, levels, lines, sections
from tests.outset.frames import JOISTED, LAPPED, SQUARE, answers


def text(*parts: object) -> str:
    """Lines joined."""
    return "\n".join(line for part in parts for line in part)  # type: ignore[attr-defined]


def test_the_head_carries_the_caution() -> None:
    """Sizes are the framer's and the engineer's."""
    found = text(head(answers(name="Shed", units="inches", graduation="1/32")))
    for line in ('name = "Shed"', 'units = "inches"', 'graduation = "1/32"', CAUTION):
        assert line in found


def test_levels_are_sums_by_the_rule_in_use() -> None:
    """By square rule of the timbers inside."""
    assert '"plate top" = "plate underside + plate depth"' in text(levels(answers()))
    square = text(levels(answers(SQUARE, LAPPED, JOISTED)))
    assert '"plate top" = "plate underside + plate inner depth"' in square
    assert '"tie underside" = "plate top - tie let-in"' in square
    assert '"floor top" = "joist top + deck"' in square


def test_a_frame_without_a_roof_has_no_centre_line() -> None:
    """And says its width itself."""
    frame = answers(roof="none", bays="1", leg="24")
    found = text(lines(frame), lengths(frame))
    assert "centre line" not in found
    assert '"frame width" = "14\'"' in found
    assert "bay =" not in found


def test_pitch_is_said_beside_what_it_makes() -> None:
    """Rise over the run, and the fall of the eaves."""
    found = text(lengths(answers(pitch="8-1/2")))
    assert '"eaves fall" = "8-1/2"' in found
    assert "8.5 in 12 over the roof run" in found


def test_sections_come_with_the_timbers_inside() -> None:
    """By square rule alone."""
    assert "[inner]" not in text(sections(answers()))
    assert 'post = "7-1/2 x 7-1/2"' in text(sections(answers(SQUARE)))
