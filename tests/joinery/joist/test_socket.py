"""The socket of a dovetailed joist: figures, faces, waste, and what it says."""

import pytest

from benchmate.joinery.joist.socket import own_lines, socket_cuts, socket_lines, socket_tasks
from benchmate.joinery.joist.tail import DRAWS
from benchmate.joinery.joist.tail_shape import FAR, NEAR
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Line
from tests.builders import length, lengths, line
from tests.joinery.joist.tails import HALF, LOW, as_cut, tailed


def lines(**words: object) -> tuple[Line, ...]:
    """The lines of a socket."""
    return socket_lines(tailed(**words).shapes[1], Tape())  # type: ignore[arg-type]


def test_the_lines_in_order() -> None:
    """Flanks, floor and back; a housing's first where the beam is over its size."""
    assert [each.id for each in lines()] == [NEAR, FAR, "floor", "back"]
    assert [each.id for each in lines(floor=HALF)] == [
        "housing-start",
        "housing-finish",
        "housing-far",
        "housing-floor",
        NEAR,
        FAR,
        "floor",
        "back",
    ]


def test_a_flank_is_struck_from_the_mouth_to_where_the_tip_comes() -> None:
    """The same 3/4" over 3" as on the tail, and on from there to the back line."""
    steps = tailed().steps("beam")
    for name, end in ((NEAR, "east"), (FAR, "west")):
        other = steps[name].beside[0]
        assert other.value == length("3/4")
        assert f"nearer the {end} end" in other.words
        assert 'line 3" in from there, where the tip comes' in other.words
        assert steps[name].readings[0].way.endswith("on the North face")
        assert steps[name].why.startswith("Run it on as far as the back line.")
        assert steps[name].faces == (Face.FIRST, Face.SECOND)
    mouth = abs(steps[NEAR].readings[0].value - steps[FAR].readings[0].value)
    assert mouth == length("2-1/2")


def test_its_waste_lies_inside() -> None:
    """Between the flanks, above the floor, in front of the back."""
    steps = tailed().steps("beam")
    assert steps[NEAR].waste_side == "west end"
    assert steps[FAR].waste_side == "east end"
    assert (steps["floor"].waste_side, steps["back"].waste_side) == ("top face", "North face")


def test_in_a_housing_its_mouth_is_on_the_floor() -> None:
    """And the housing is open above, as the joist drops in."""
    near = line(lines(floor=HALF), NEAR)
    assert near.slant is not None
    assert near.slant.where[0] == "housing floor line"
    assert near.slant.start.deep == length("8")
    housing = socket_cuts(tailed(HALF).shapes[1])[0]
    assert {plane.line for plane in housing.planes} == {
        "housing-start",
        "housing-finish",
        "housing-far",
        "housing-floor",
    }


def test_a_straight_flank_is_struck_square() -> None:
    """From one figure."""
    found = line(lines(straight="west"), FAR)
    assert found.slant is None


@pytest.mark.parametrize(("side", "name"), [("east", NEAR), ("west", FAR)])
def test_the_wedge_s_flank_says_so(side: str, name: str) -> None:
    """How much of it, on which side, and what is driven there; the other says nothing of it."""
    found = {each.id: each for each in lines(wedge="1/4", wedge_side=side)}
    wedged, plain = found[name], found[{NEAR: FAR, FAR: NEAR}[name]]
    assert length("1/4") in [each.value for each in wedged.beside]
    assert f"wedge on the {side} side: dry hardwood" in wedged.why
    assert "wedge" not in plain.why
    assert wedged.beside[-1].value == length("2-3/4"), "wide at the mouth"


def test_what_it_bears_on_is_the_mean_of_neck_and_tip() -> None:
    """3" by 3-1/4" is 9.8 sq in; as cut 1/8" narrower all along, 9.4."""
    assert "bears on 9.8 sq in" in line(lines(), "floor").why
    made = LOW.with_(real=as_cut(width="3-7/8"))
    assert "bears on 9.4 sq in" in line(lines(floor=made), "floor").why


def test_it_says_what_it_follows_and_that_dovetails_draw() -> None:
    """As drawn until the tail has been measured as cut (law 5)."""
    near = line(lines(), NEAR)
    assert "as drawn; it has not been measured" in near.why
    assert near.caution == DRAWS
    cut = line(lines(floor=LOW.with_(real=as_cut(width="3-7/8"))), NEAR)
    assert 'as cut: 3-7/8" wide at its tip' in cut.why


def test_what_is_done_with_its_figures() -> None:
    """A housing and its floor before the socket; the mouth is tried across."""
    plain = {task.id: task for task in socket_tasks(tailed().shapes[1], Tape())}
    assert list(plain) == ["section", "knife", "saw-sides", "chop", "pare", "try-floor"]
    assert [each.value for each in plain["pare"].readings] == list(lengths("2-1/2"))
    assert "gauge" in plain["pare"].why
    housed = {task.id: task for task in socket_tasks(tailed(HALF).shapes[1], Tape())}
    anew = {each.key: each.value for each in housed["strike-floor"].readings}
    near, far, floor, _ = own_lines(tailed(HALF).shapes[1], Tape())
    assert anew == {f"{each.id} of the socket": each.at for each in (near, far, floor)}
    assert list(housed)[:6] == [
        "section",
        "knife-housing",
        "cut-housing",
        "pare-housing",
        "strike-floor",
        "knife",
    ]
