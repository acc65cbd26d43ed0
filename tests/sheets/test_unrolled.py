"""The four faces of a timber one under the other."""

from collections.abc import Callable
from itertools import pairwise, permutations
from pathlib import Path

import pytest

from benchmate.model.directions import Direction, Face, Pose
from benchmate.sheets.sheet import TimberSheet
from benchmate.sheets.unrolled import (
    datum_hook,
    end_hook,
    face_running,
    rolling_order,
    running,
    shoulder_hook,
    unrolled,
)

SheetOf = Callable[[str], TimberSheet]

POSES = [
    Pose(first, second, end)
    for first, second, end in permutations(Direction, 3)
    if first.square_to(second) and first.square_to(end) and second.square_to(end)
]


@pytest.mark.parametrize("pose", POSES)
def test_each_face_s_lower_arris_is_the_next_one_s_upper(pose: Pose) -> None:
    """However a timber stands: a true net, seen from outside, never mirrored."""
    order = rolling_order(pose)
    for upper, lower in pairwise(order):
        assert pose.above(lower) is upper
        assert pose.above(upper).opposite is lower


@pytest.mark.parametrize("pose", POSES)
def test_the_reference_arris_lies_between_the_first_two(pose: Pose) -> None:
    """Both reference faces are on top, the first of them uppermost for one hand only."""
    order = rolling_order(pose)
    assert set(order[:2]) == {Face.FIRST, Face.SECOND}
    assert (order[0] is Face.FIRST) is pose.right_handed


def test_all_is_within_the_squared_ends(sheet_of: SheetOf) -> None:
    """The trim of the rough stick is not shown."""
    sheet = sheet_of("post-se")
    stick = sheet.layout.stick
    for side in unrolled(sheet):
        spots = [point for shape in side.waste for point in shape]
        spots += [point for stroke in side.strokes for point in stroke]
        assert all(stick.start.nm <= along <= stick.finish.nm for along, _ in spots)


def test_figures_are_the_steps_own(sheet_of: SheetOf) -> None:
    """Nothing is worked out for the drawing: each is a reading of a step on that face."""
    sheet = sheet_of("post-ne")
    for side in unrolled(sheet):
        own = {
            reading.value
            for item in sheet.items
            if side.face in item.step.faces
            for reading in item.readings
        }
        assert {figure.value for figure in side.figures} <= own
    assert any(side.figures for side in unrolled(sheet))


def test_running_figures_come_in_order_from_their_datum(sheet_of: SheetOf) -> None:
    """From the squared end, and from the shoulder once it is struck."""
    sheet = sheet_of("post-ne")
    stick, tape = sheet.layout.stick, sheet.tape
    assert datum_hook(sheet) == end_hook(stick) == "squared foot"
    told = [tape.text(each.value) for each in running(sheet, "squared foot")]
    assert (told[0], told[1], told[-1]) == ('0"', '3-1/2"', "8' 0\"")
    struck = sheet_of("post-se")
    assert datum_hook(struck) == shoulder_hook(struck.layout.stick) == "foot shoulder line"
    alongs = [each.along for each in running(struck, "foot shoulder line")]
    assert alongs == sorted(set(alongs))
    assert 0 in alongs


def test_a_face_has_only_its_own_marks(sheet_of: SheetOf) -> None:
    """A chamfer's stops are on the two faces of its arris."""
    sheet = sheet_of("post-ne")
    counts = {face: len(face_running(sheet, face, "squared foot")) for face in Face}
    assert counts[Face.FAR_FIRST] > counts[Face.FIRST]


def test_what_is_stopped_is_not_drawn(sheet_of: SheetOf, spoilt: Path) -> None:
    """Neither its waste nor its figures."""
    assert spoilt.is_dir()
    sheet = sheet_of("post-se")
    spots = [point for side in unrolled(sheet) for shape in side.waste for point in shape]
    assert spots
    assert all(along > 0 for along, _ in spots)
    values = [sheet.tape.text(each.value) for each in running(sheet, "squared foot")]
    assert '3-1/2"' not in values
