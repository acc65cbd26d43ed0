"""The wedged half-dovetail as the catalogue knows it."""

import pytest

from benchmate.joinery import FAMILIES, family_of
from benchmate.joinery.half_dovetail.family import FAMILY
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.measure.length import ZERO
from benchmate.model.feature import Awaits
from tests.builders import length, real
from tests.joinery.half_dovetail.bents import bent, half_dovetail, joint_in, sides_of

MEASURED = {"post": real({"tie-post-mortise": {"first": "8"}})}


def test_it_is_in_the_catalogue() -> None:
    """Under the words a project file uses."""
    assert FAMILY in FAMILIES
    assert family_of(half_dovetail()) is FAMILY
    assert (FAMILY.name, FAMILY.table) == ("wedged half-dovetail", "joint")


def test_both_sides_come_out_of_one_record() -> None:
    """Each on its own timber, under ids that ticks can keep."""
    tie, post = sides_of(bent())
    assert (tie.timber, tie.id, tie.title) == ("tie", "west-end-tenon", "West end half-dovetail")
    assert (post.timber, post.id, post.title) == ("post", "tie-post-mortise", "Mortise for Tie")
    assert (tie.at, post.at) == (length("120"), length("90"))
    assert (tie.mated, post.mated) == (False, True)
    assert tie.place == ("west-end-tenon", "west-end")
    assert [size.name for size in tie.sizes] == ["thickness", "width", "length"]


def test_the_mortise_waits_for_the_tail_as_cut() -> None:
    """It is cut to the tail that was really made."""
    _, post = sides_of(bent())
    assert post.awaits == (Awaits("tie", "west-end-tenon/as-cut"),)


@pytest.mark.parametrize("reference", [False, True])
def test_the_tail_waits_for_the_post(*, reference: bool) -> None:
    """Its length and its slope follow the post as measured at the joint."""
    layout = lay_out(bent(reference=reference), "tie")
    for line in ("shoulder", "tail"):
        step = layout.step(f"west-end-tenon/{line}")
        assert awaited(layout, step) == (Awaits("post", "tie-post-mortise/section"),)
    layout = lay_out(bent(reference=reference, real=MEASURED), "tie")
    assert awaited(layout, layout.step("west-end-tenon/tail")) == ()


def test_the_reference_shoulder_is_struck_by_it() -> None:
    """So marks along the tie count from there once it is."""
    layout = lay_out(bent(reference=True), "tie")
    assert layout.shoulder == "west-end-tenon/shoulder"


def test_a_tenon_without_length_lays_out_nothing() -> None:
    """Only measuring is left on either timber, so that the size can be put right."""
    for feature in sides_of(bent(housing="8")):
        assert (feature.cuts, feature.lines) == ((), ())
        assert [task.id for task in feature.tasks] == ["section"]
        assert feature.findings
    for timber in ("tie", "post"):
        assert lay_out(bent(held_short="9"), timber).steps
    assert joint_in(bent()).past == ZERO
