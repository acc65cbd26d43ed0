"""The housing of a whole end: where the timber it enters is over its size, by square rule."""

import pytest

from benchmate.frame.housing import (
    FAR,
    FINISH,
    FLOOR,
    NEAR,
    START,
    Housing,
    housing_cuts,
    housing_lines,
    housing_tasks,
    housing_walls,
    open_faces,
)
from benchmate.frame.practice import CHISEL, SAW
from benchmate.joinery.joist.tail_shape import tail_shapes
from benchmate.joinery.joist_tenon.hole_shape import hole_shape
from benchmate.joinery.joist_tenon.mortise import own_lines
from benchmate.joinery.joist_tenon.shape import end_shape
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Stage
from tests.builders import length, lengths, line
from tests.floor import Floor, over
from tests.joinery.joist.joints import dovetail_joist
from tests.joinery.joist_tenon.joints import soffit_tenon
from tests.proof.told import OPENINGS

HALF = (16, 16, 8, 8)
"""A beam 1/2" over its inner 10 x 8 both ways, a joist 1/4" over its inner 7 x 4."""


def far(lower: str = "1", rule: str = "square", **words: object) -> Floor:
    """A joist that goes in through the beam's far face, its top so far below the beam's."""
    return over(Floor(near=False, lower=lower, **words), HALF, rule)  # type: ignore[arg-type]


def housing(floor: Floor) -> Housing:
    """The housing of a soffit tenon's end."""
    joint = soffit_tenon(floor.end)
    built = floor.frame(joint)
    return hole_shape(joint, end_shape(joint, built), built).housing


def test_by_square_rule_a_far_face_is_cut_to_the_inner_timber() -> None:
    """Cut depth = actual - inner (trade.md 1.3); the floor is 8" from the reference face."""
    found = housing(far())
    assert found.cut
    assert (found.recess, found.seat) == lengths("1/2", "8")
    assert (found.deep.value, found.deep.hook) == (length("1/2"), "North face")
    assert found.opening == "housing floor"
    assert found.inside(length("4")) == length("4")


@pytest.mark.parametrize("floor", [far(rule="mill"), Floor(lower="1")])
def test_without_a_recess_there_is_none(floor: Floor) -> None:
    """By mill rule the shoulder bears where the face is, and a reference face has no excess."""
    found = housing(floor)
    assert not found.cut
    assert (housing_cuts(found), housing_lines(found), housing_tasks(found, "mortise", ())) == (
        (),
        (),
        (),
    )
    assert housing_walls(found) == {}
    assert found.opening == found.stick.pose.words(found.entry)


def test_it_takes_the_whole_end_as_the_frame_counts_on_it() -> None:
    """4" along the beam and 7" down from the joist's top: the inner timber, whatever the stick."""
    found = housing(far())
    low, high = found.along
    assert high - low == length("4")
    assert found.across == lengths("1", "8")
    assert set(housing_walls(found)) == {START, FINISH, NEAR, FAR}


@pytest.mark.parametrize(
    ("lower", "open_at"), [("0", {NEAR}), ("3", {FAR}), ("1", set()), ("-1", {NEAR})]
)
def test_it_is_open_where_the_end_runs_out_to_a_face(lower: str, open_at: set[str]) -> None:
    """A joist level with its beam's top, or with its underside, leaves no wall there."""
    found = housing(far(lower))
    assert {NEAR, FAR} - set(housing_walls(found)) == open_at
    top, under = (Face.FIRST in open_faces(found), Face.FAR_FIRST in open_faces(found))
    assert (top, under) == (NEAR in open_at, FAR in open_at)


@pytest.mark.parametrize("from_top", [True, False])
def test_an_end_that_drops_in_needs_it_open_above(from_top: bool) -> None:
    """However low it lies, and whichever of the beam's faces is its top."""
    floor = far("1", from_top=from_top)
    joint = dovetail_joist(floor.end)
    _, socket = tail_shapes(joint, floor.frame(joint))
    upper, lower = (NEAR, FAR) if from_top else (FAR, NEAR)
    assert upper not in housing_walls(socket.housing)
    assert lower in housing_walls(socket.housing)


def test_its_lines_come_before_its_floor() -> None:
    """A blind floor is a depth on the face; one that comes out on a side is struck there."""
    blind, struck = housing_lines(housing(far())), housing_lines(housing(far("0")))
    assert [each.id for each in blind] == [START, FINISH, NEAR, FAR, FLOOR]
    assert [each.id for each in struck] == [START, FINISH, FAR, FLOOR]
    assert line(blind, FLOOR).readings == (housing(far()).deep,)
    assert line(blind, FLOOR).faces == (Face.FAR_SECOND,)
    assert line(struck, FLOOR).readings == ()
    assert line(struck, FLOOR).at == length("8")
    assert "housing floor" in OPENINGS


def test_it_says_what_goes_in_and_how_that_is_known() -> None:
    """By square rule the inner timber; by mill rule what was measured, or what was drawn."""
    square = line(housing_lines(housing(far())), START)
    assert "inner timber" in square.why
    mill = {"rule": "mill"}
    beam = {"rule": "square", "inner": "10 x 8", "section": "10-1/2 x 8-1/2"}
    drawn = housing(Floor(near=False, lower="1", own={"beam": beam, "joist": mill}))
    assert "as drawn" in line(housing_lines(drawn), START).why
    typed = far().with_(own={"beam": far().own["beam"], "joist": mill})
    assert "as it was measured" in line(housing_lines(housing(typed)), START).why


def test_what_is_done_there_comes_before_the_rest_of_the_joint() -> None:
    """Knife, cut, pare, and strike on its floor what cutting it took away."""
    joint = soffit_tenon()
    built = far().frame(joint)
    shape = hole_shape(joint, end_shape(joint, built), built)
    lines = own_lines(shape, Tape())
    tasks = housing_tasks(shape.housing, "mortise", lines)
    assert [(task.id, task.stage) for task in tasks] == [
        ("knife-housing", Stage.KNIFE),
        ("cut-housing", Stage.CUT),
        ("pare-housing", Stage.CUT),
        ("strike-floor", Stage.CUT),
    ]
    assert tasks[1].caution.endswith(f"{SAW} {CHISEL}")
    assert tasks[1].readings == tasks[2].readings == (shape.housing.deep,)
    assert all(task.asks is Asks.NOTHING for task in tasks)
    anew = {reading.key: reading.value for reading in tasks[3].readings}
    assert anew == {
        f"{name} of the mortise": line(lines, name).at
        for name in ("start", "finish", "upper-side", "lower-side")
    }
