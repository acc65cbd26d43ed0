"""What every tenon on an end of a raking timber says and does."""

from dataclasses import replace

import pytest

from benchmate.frame.cheeks import FAR, NEAR
from benchmate.frame.practice import AS_CUT
from benchmate.frame.raking_tenon import (
    RakingTenon,
    cheek_cuts,
    cheek_lines,
    cheek_outside,
    knife,
    measure_as_cut,
    pare,
    reduce_tasks,
    reduced_cuts,
    reduced_line,
    reduced_lines,
    saw_cheeks,
    saw_side_tasks,
    saw_tip,
    unsure_of_end,
)
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Asks
from benchmate.model.progress import AsCut
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Plane
from tests.builders import frame, girt_between, length, real, timber

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)
SET = Setting(off_square=266, bevel=True)
"""A way to set a saw, whichever."""

SEAT = Plane((3, 4, 0), 0, "seat")


def tenon(
    size: str = "6 x 4", /, measured: dict[str, str] | None = None, **own: object
) -> RakingTenon:
    """A 1-1/2" tenon set back 1" on the foot of a 6 x 4 that rakes, measured from its top."""
    brace = timber(
        "brace",
        section=size,
        first_face="up",
        second_face="south",
        length=None,
        incline={
            "foot": {"east": "0", "north": "0", "up": "0"},
            "towards": "east",
            "run": "4'",
            "rise": "3'",
        },
        **own,
    )
    sizes = {"brace": real({"foot": measured})} if measured else {}
    stick = frame(brace, real=sizes).stick("brace")
    return RakingTenon(
        stick=stick,
        end=Face.REFERENCE_END,
        feature="foot-tenon",
        plumb=Axis.FIRST,
        outside=Plane((3, 4, 0), 10, "reduction-stop"),
        length=length("4"),
        near=length("1"),
        far=length("2-1/2"),
        deep=stick.framed(Axis.FIRST, "foot"),
        wide=stick.framed(Axis.SECOND, "foot"),
        as_cut=AsCut(),
    )


def test_what_it_measures_itself_by() -> None:
    """Cheeks lie across its plane, its reference edge along the top face."""
    found = tenon(measured={"first": "6-1/8", "second": "4-1/4"})
    assert (found.cheeks, found.edge_face, found.end_words) == (Axis.SECOND, Face.FIRST, "foot")
    assert (found.real_deep, found.real_wide) == (length("6-1/8"), length("4-1/4"))
    assert (found.thickness, found.shoulder) == (length("1-1/2"), ZERO)
    assert found.near_cheek == "near cheek, by the South face"
    assert replace(found, near=ZERO).near_cheek == "South face"


def test_a_far_shoulder_is_unsure_until_what_it_meets_is_measured() -> None:
    """The reference shoulder is struck from its own end, whatever that meets."""
    follows = replace(tenon(), stick=girt_between().stick("girt"))
    assert unsure_of_end(follows) == ""
    said = unsure_of_end(replace(follows, end=Face.FAR_END))
    assert said.startswith("Measure West's East face at the joint first")


def test_sizes_as_cut_stand_in_for_those_laid_out() -> None:
    """Only the one that was typed."""
    cut = replace(tenon(), as_cut=AsCut(thickness=length("1-7/16")))
    assert (cut.real("thickness"), cut.real("length")) == (length("1-7/16"), length("4"))


def test_beside_the_tenon_wood_comes_off_beyond_its_shoulder() -> None:
    """On both sides, on the far side alone where it is barefaced, or on the near one alone."""
    planes = [[plane.line for plane in cut.planes] for cut in cheek_cuts(tenon(), SEAT)]
    assert planes == [["seat", NEAR], ["seat", FAR]]
    bare = replace(tenon(), near=ZERO)
    assert [cut.planes[1].line for cut in cheek_cuts(bare, SEAT)] == [FAR]
    flush = replace(tenon(), far=length("4"))
    assert [cut.planes[1].line for cut in cheek_cuts(flush, SEAT)] == [NEAR]


def test_a_barefaced_tenon_has_one_cheek_line_and_says_so() -> None:
    """As left and right are then not alike."""
    both, bare = cheek_lines(tenon()), cheek_lines(replace(tenon(), near=ZERO))
    assert [line.id for line in both] == [NEAR, FAR]
    assert [line.id for line in bare] == [FAR]
    assert bare[0].why.startswith("Barefaced")
    assert both[1].beside[1].value == length("1-1/2")


def test_a_shoulder_is_sawn_side_by_side_to_what_comes_off_there() -> None:
    """1" from the South face; from the North one what the stick really has past the tenon."""
    near, far = saw_side_tasks(tenon(measured={"second": "4-1/8"}), "Saw the sole", "sole", SET)
    assert (near.title, near.readings[0].value) == ("Saw the sole, South face", length("1"))
    assert (far.title, far.readings[0].value) == ("Saw the sole, North face", length("1-5/8"))
    assert {near.draws, far.draws} == {"sole"}
    assert near.setting == far.setting == SET
    assert "measure first" not in far.caution
    _, unsure = saw_side_tasks(tenon(), "Saw the sole", "sole", None)
    assert "measure first" in unsure.caution


def test_cheeks_are_cut_to_the_thickness() -> None:
    """From the near cheek, on the edges."""
    (task,) = saw_cheeks(tenon())
    assert task.readings[0].value == length("1-1/2")
    assert task.faces == (Face.FIRST, Face.FAR_FIRST)


def test_no_cheeks_are_cut_on_a_tenon_as_thick_as_its_timber() -> None:
    """There is nothing to take off beside it, so nothing is told to be."""
    whole = replace(tenon(), near=ZERO, far=length("4"))
    assert saw_cheeks(whole) == ()
    assert cheek_cuts(whole, SEAT) == ()


def test_far_faces_come_down_to_the_inner_timber() -> None:
    """Beyond the real face of the other timber, each to its own line, so much off this stick."""
    rough = tenon("6-1/2 x 4-1/2", rule="square", inner="6 x 4")
    lost = {Axis.FIRST: length("6"), Axis.SECOND: length("4")}
    lines = [reduced_line(axis) for axis in lost]
    assert [cut.planes[1].line for cut in reduced_cuts(rough, lost)] == lines
    assert {cut.planes[0].line for cut in reduced_cuts(rough, lost)} == {"reduction-stop"}
    assert [line.id for line in reduced_lines(rough, lost)] == lines
    assert [task.readings[0].value for task in reduce_tasks(rough, lost)] == [length("1/2")] * 2
    assert [task.draws for task in reduce_tasks(rough, lost)] == lines


@pytest.mark.parametrize(
    ("own", "wide", "told"),
    [
        ({}, "2-1/2", None),
        ({}, "2-31/64", "brace-cheek-outside"),
        ({"rule": "square", "inner": "6 x 2-1/2"}, "3", None),
        ({"rule": "square", "inner": "6 x 2-31/64"}, "3", "brace-cheek-outside"),
    ],
)
def test_the_far_cheek_has_to_lie_in_the_wood(
    own: dict[str, object], wide: str, told: str | None
) -> None:
    """In the stick by mill rule, in its inner timber by square rule: 2-1/2" in, and 1/64" less."""
    found = cheek_outside("brace", tenon(measured={"second": wide}, **own), TAPE)
    assert (found.code if found else None) == told


def test_nothing_is_clamped() -> None:
    """A cheek in the air keeps its figure: what comes off is below nothing."""
    thin = tenon(measured={"second": "2"})
    assert cheek_lines(thin)[1].at == length("2-1/2")
    assert cheek_lines(thin)[1].beside[1].value == -length("1/2")


def test_all_of_it_is_knifed_before_the_first_cut() -> None:
    """What bears is named, and what shows whether it lies the right way."""
    task = knife(tenon(), "the sole", "sole", "which end is the foot")
    assert (task.title, task.draws) == ("Knife the sole, hatch the waste", "sole")
    assert task.faces == LONG_FACES
    assert task.caution.endswith("first cut: which end is the foot.")
    assert task.waste == "Towards the foot, outside the tenon's own lines."


def test_its_end_is_sawn_parallel_to_what_it_is_measured_from() -> None:
    """No figure: it is sawn to its line, the saw set to it."""
    task = saw_tip(tenon(), "tip", "face line", SET)
    assert (task.draws, task.setting, task.readings) == ("tip", SET, ())
    assert task.why.startswith("Parallel to the face line.")


def test_it_is_pared_to_its_thickness() -> None:
    """As laid out, from the near cheek."""
    task = pare(tenon(), "the tenon and the nose", "Both bear.")
    assert (task.title, task.why) == ("Pare the tenon and the nose, check them flat", "Both bear.")
    assert [each.value for each in task.readings] == [length("1-1/2")]
    assert task.faces == (Face.FIRST, Face.SECOND)


def test_it_is_measured_as_cut() -> None:
    """Both sizes that the mortise follows, one of them as it was typed before."""
    task = measure_as_cut(replace(tenon(), as_cut=AsCut(length=length("3-7/8"))), "shoulder")
    assert (task.id, task.asks, task.lasting) == (AS_CUT, Asks.AS_CUT, False)
    assert [(each.value, each.hook) for each in task.readings] == [
        (length("1-1/2"), "near cheek, by the South face"),
        (length("3-7/8"), "shoulder"),
    ]
