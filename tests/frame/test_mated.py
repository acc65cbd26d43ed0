"""The sides of a mortise, what they follow, and whether a wall stands in the wood."""

import pytest

from benchmate.frame.mated import (
    Sides,
    end_past_the_side,
    follows_words,
    inside,
    open_at_the_side,
    outside_the_side,
    side_lines,
)
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.findings import Severity
from benchmate.model.solids import Axis, Plane, above, below
from tests.builders import frame, length, real, timber

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)

FINE = Tape(style=Style.INCHES, graduation=Graduation.SIXTY_FOURTH)


def _sides(
    near: str = "2",
    far: str = "4",
    *,
    end: tuple[str, str] = ("0", "6"),
    same: bool = True,
    set_back: str = "2",
    first: str = "6",
) -> Sides:
    sizes = {"post": real({"hole": {"first": first}})}
    return Sides(
        stick=frame(timber("post"), real=sizes).stick("post"),
        feature="hole",
        axis=Axis.FIRST,
        span=(length(near), length(far)),
        end=(length(end[0]), length(end[1])),
        same_side=same,
        set_back=length(set_back),
        mate="Tie",
        follows="Follows Tie.",
    )


def test_a_mortise_lies_between_its_sides() -> None:
    """Its waste is what is further in than the near side and less far in than the far one."""
    sides = _sides()
    assert sides.planes() == (
        above(Axis.FIRST, length("2"), "near-side"),
        below(Axis.FIRST, length("4"), "far-side"),
    )
    assert (sides.width, sides.real) == (length("2"), length("6"))


def test_its_lines_come_from_the_reference_face() -> None:
    """Both with the width beside them; the far one never from the other face."""
    near, far = side_lines(_sides())
    assert (near.at, far.at) == (length("2"), length("4"))
    assert [each.value for line in (near, far) for each in line.beside] == [length("2")] * 2
    assert far.caution == "Never measure this from the North face."


@pytest.mark.parametrize("same", [True, False])
def test_the_side_that_the_set_back_holds_says_so(*, same: bool) -> None:
    """Measured from opposite faces it is the far one."""
    lines = side_lines(_sides(same=same))
    assert ["set-back" in line.why.lower() for line in lines] == [same, not same]
    assert all(line.why.endswith("Follows Tie.") for line in lines)
    near, far = side_lines(_sides(same=same, set_back="0"))
    assert "No set-back" in (near if same else far).why


def test_what_a_size_follows() -> None:
    """As drawn until it was measured, then as cut with both figures."""
    assert "has not been measured as cut" in follows_words(
        "Tie's tenon", "thick", None, length("2"), TAPE
    )
    assert follows_words("Tie's tenon", "thick", length("1-15/16"), length("2"), TAPE) == (
        'Follows Tie\'s tenon as cut: 1-15/16" thick, laid out as 2".'
    )


@pytest.mark.parametrize(
    ("plane", "found"),
    [
        (above(Axis.ALONG, length("0")), False),
        (above(Axis.ALONG, length("1/64")), True),
        (below(Axis.ALONG, length("94-63/64")), True),
        (below(Axis.ALONG, length("95")), False),
        (above(Axis.FIRST, length("0")), False),
        (below(Axis.FIRST, length("5-31/64")), True),
        (below(Axis.FIRST, length("5-1/2")), False),
        (above(Axis.SECOND, length("-1")), False),
        (below(Axis.SECOND, length("5")), True),
    ],
)
def test_a_wall_stands_in_the_wood(plane: Plane, *, found: bool) -> None:
    """One in a face, or past it, leaves a recess open: by square rule the inner timber's face."""
    square = timber("post", rule="square", inner="5-1/2 x 5-1/2")
    assert inside(frame(square).stick("post"), plane, "hole") is found


def test_the_wood_as_it_really_is_reaches_further() -> None:
    """Half an inch past the inner timber there is still wood above the top of a housing."""
    square = timber("post", rule="square", inner="5-1/2 x 5-1/2")
    stick, plane = frame(square).stick("post"), below(Axis.FIRST, length("5-1/2"))
    assert inside(stick, plane, "hole", real=True)
    assert not inside(stick, below(Axis.FIRST, length("6")), "hole", real=True)


@pytest.mark.parametrize(
    ("near", "far", "found"), [("0", "6", False), ("-1/64", "4", True), ("2", "6-1/64", True)]
)
def test_a_side_in_the_air(near: str, far: str, *, found: bool) -> None:
    """Law 7: a mortise that comes out of the side is told."""
    told = outside_the_side(_sides(near, far), "out", TAPE)
    assert (told is not None) is found
    if told is not None:
        assert (told.code, told.severity, told.feature) == ("out", Severity.STOP, "hole")


@pytest.mark.parametrize(
    ("end", "words"),
    [
        (("0", "6"), None),
        (("-1/64", "5"), 'Tie stands 1/64" out past the South face of Post'),
        (("1", "6-1/2"), 'Tie stands 1/2" out past the North face of Post'),
    ],
)
def test_an_end_past_a_side(end: tuple[str, str], words: str | None) -> None:
    """Its shoulder bears on nothing there: a thing to look at."""
    told = end_past_the_side(_sides(end=end), "past", FINE)
    assert (told is None) is (words is None)
    if told is not None:
        assert (told.code, told.severity, told.message) == ("past", Severity.LOOK, words)


@pytest.mark.parametrize(
    ("near", "far", "words"),
    [("1/64", "5-63/64", None), ("0", "4", "South face"), ("2", "6", "North face")],
)
def test_a_side_without_a_wall(near: str, far: str, words: str | None) -> None:
    """A mortise flush with a face is open all along it: a thing to look at."""
    told = open_at_the_side(_sides(near, far), "open")
    assert (told is None) is (words is None)
    if told is not None:
        assert told.severity is Severity.LOOK
        assert told.message == f"The mortise has no wall at the {words}"
