"""Both sides of a joist's tenon come out of its one record (law 3)."""

import pytest

from benchmate.joinery import FAMILIES
from benchmate.joinery.joist_tenon.family import SOFFIT, TUSK, features
from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon
from benchmate.model.feature import Awaits
from tests.builders import length
from tests.floor import Floor
from tests.joinery.joist_tenon.floors import jointed
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon


def test_the_catalogue_knows_both_families() -> None:
    """They stand in the joint table, told apart by their names."""
    assert {SOFFIT, TUSK} <= set(FAMILIES)
    assert (SOFFIT.name, SOFFIT.table, SOFFIT.record) == ("soffit tenon", "joint", SoffitTenon)
    assert (TUSK.name, TUSK.table, TUSK.record) == ("tusk tenon", "joint", TuskTenon)


@pytest.mark.parametrize(
    ("joint", "title"),
    [(soffit_tenon(), "South end soffit tenon"), (tusk_tenon(), "South end tusk tenon")],
)
def test_a_tenon_on_the_joist_and_a_mortise_in_the_beam(
    joint: SoffitTenon | TuskTenon, title: str
) -> None:
    """Ids, places and what waits for what."""
    end, hole = jointed(joint).sides
    assert (end.id, end.timber, end.title) == ("south-end-tenon", "joist", title)
    assert end.place == ("south-end-tenon", "south-end")
    assert (hole.id, hole.timber, hole.title) == (
        "joist-end-mortise",
        "beam",
        "Mortise for Joist",
    )
    assert hole.place == ("joist-end-mortise",)
    assert hole.awaits == (Awaits("joist", "south-end-tenon/as-cut"),)
    assert hole.mated
    assert not end.mated


def test_what_stands_in_the_file_does_as_well_as_what_is_settled() -> None:
    """A store that checks a project hands over the record as it was read."""
    joint = tusk_tenon()
    made = Floor().frame(joint)
    (settled,) = made.works_on("joist")
    assert isinstance(settled, TuskTenon)
    assert settled != joint
    assert features(joint, made) == features(settled, made)


def test_the_joist_is_longer_by_its_tenon() -> None:
    """8' from its shoulder at the beam's face, and the tenon beyond."""
    stick = jointed(soffit_tenon()).frame.stick("joist")
    assert (stick.body, stick.near, stick.overall) == (length("8'"), length("4"), length("8' 4"))
