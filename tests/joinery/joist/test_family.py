"""Both sides of a joist's joint come out of its one record (law 3)."""

from benchmate.joinery import FAMILIES
from benchmate.joinery.joist.family import FAMILY, features
from benchmate.joinery.joist.record import JoistPocket
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Awaits
from tests.builders import frame, joist, length, pocket, sill
from tests.joinery.joist.floors import END, POCKET, SQUARE, Floor


def test_the_catalogue_knows_the_family() -> None:
    """A joist pocket stands in the joint table, told apart by its name."""
    assert FAMILY in FAMILIES
    assert (FAMILY.name, FAMILY.table, FAMILY.record) == ("joist pocket", "joint", JoistPocket)


def test_a_joint_puts_a_bearing_on_the_joist_and_a_pocket_in_the_other() -> None:
    """The ids and places are the joist's end and the joint's own name."""
    end, received = Floor().sides()
    assert (end.id, end.timber, end.title) == (END, "joist", "South end bearing")
    assert end.place == (END, "south-end")
    assert (received.id, received.timber, received.title) == (POCKET, "sill", "Pocket for Joist")
    assert received.place == (POCKET,)


def test_they_come_in_order_from_the_reference_ends() -> None:
    """The bearing at the end it is on, the pocket where the joist crosses."""
    for end, at in (("south", length("0")), ("north", length("6' 4"))):
        bearing, received = Floor().sides(end=end)
        assert (bearing.at, received.at) == (at, length("4'"))


def test_a_pocket_waits_for_its_joist() -> None:
    """It is cut to the end that was really made, so that all tops come level."""
    end, received = SQUARE.sides()
    assert end.awaits == ()
    assert received.awaits == (Awaits("joist", f"{END}/as-cut"),)
    steps = {step.id for step in lay_out(SQUARE.frame(pocket()), "joist").steps}
    assert f"{END}/as-cut" in steps


def test_the_end_offers_its_sizes_as_laid_out() -> None:
    """How deep from the top and how wide, to be typed as they came out; its pocket offers none."""
    end, received = SQUARE.sides()
    assert {size.name: size.laid_out for size in end.sizes} == {
        "thickness": length("5"),
        "width": length("3"),
    }
    assert received.sizes == ()


def test_two_joists_in_one_timber_are_two_joints() -> None:
    """Each has its own pocket under its own name, in order along the timber."""
    joints = (pocket(id="far", timber="other", at="8'"), pocket(id="near", at="2'"))
    built = frame(joist(), joist(id="other", name="Other"), sill(), *joints)
    pockets = [features(joint, built)[1] for joint in joints]
    assert [each.id for each in pockets] == ["far-pocket", "near-pocket"]
    found = [each.id for each in lay_out(built, "sill").features if each.id.endswith("-pocket")]
    assert found == ["near-pocket", "far-pocket"]
