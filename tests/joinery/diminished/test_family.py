"""The diminished tenon as the catalogue knows it."""

import pytest

from benchmate.joinery import FAMILIES, family_of
from benchmate.joinery.diminished.family import FAMILY
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Awaits
from tests.builders import length, real
from tests.joinery.diminished.ledges import diminished, ledge, sides_of


def test_it_is_in_the_catalogue() -> None:
    """Under the words a project file uses."""
    assert FAMILY in FAMILIES
    assert family_of(diminished()) is FAMILY
    assert (FAMILY.name, FAMILY.table) == ("diminished tenon", "joint")


def test_both_sides_come_out_of_one_record() -> None:
    """Each on its own timber, under ids that ticks can keep."""
    girt, post = sides_of(ledge())
    assert (girt.timber, girt.id, girt.title) == ("girt", "west-end-tenon", "West end tenon")
    assert (post.timber, post.id, post.title) == ("post", "girt-end-mortise", "Mortise for Girt")
    assert (girt.at, post.at) == (length("120"), length("88"))
    assert (girt.mated, post.mated) == (False, True)
    assert girt.place == ("west-end-tenon", "west-end")
    assert [size.name for size in girt.sizes] == ["thickness", "width", "length"]


def test_the_mortise_waits_for_the_tenon_as_cut() -> None:
    """It is cut to the tenon that was really made."""
    _, post = sides_of(ledge())
    assert post.awaits == (Awaits("girt", "west-end-tenon/as-cut"),)


@pytest.mark.parametrize(
    ("into_first", "reference", "waits"),
    [("east", False, False), ("west", False, True), ("west", True, False)],
)
def test_a_far_shoulder_waits_for_a_far_face(
    into_first: str, *, reference: bool, waits: bool
) -> None:
    """By mill rule it comes where that really is; a reference shoulder is struck from its end."""
    layout = lay_out(ledge(into_first=into_first, reference=reference), "girt")
    found = awaited(layout, layout.step("west-end-tenon/shoulder"))
    assert found == ((Awaits("post", "girt-end-mortise/section"),) if waits else ())
    measured = {"post": real({"girt-end-mortise": {"first": "8"}})}
    layout = lay_out(ledge(into_first=into_first, reference=reference, real=measured), "girt")
    assert awaited(layout, layout.step("west-end-tenon/shoulder")) == ()


@pytest.mark.parametrize("first", ["up", "down"])
def test_the_reference_shoulder_is_struck_by_it(first: str) -> None:
    """At its top, whichever face is the reference: marks along the girt count from there."""
    layout = lay_out(ledge(reference=True, first=first), "girt")
    assert layout.shoulder == "west-end-tenon/shoulder"
