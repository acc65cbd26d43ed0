"""Both sides of a joist's joint come out of its one record (law 3)."""

from benchmate.joinery import FAMILIES
from benchmate.joinery.joist.family import DOVETAIL, FAMILY, features
from benchmate.joinery.joist.record import DovetailJoist, JoistPocket
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Awaits
from tests.builders import frame, joist, length, pocket, sill
from tests.joinery.joist.floors import END, POCKET, SQUARE, Floor
from tests.joinery.joist.tails import LOW, SOCKET, TAIL, tailed


def test_the_catalogue_knows_the_family() -> None:
    """Pocket and dovetail stand in the joint table, told apart by their names."""
    assert FAMILY in FAMILIES
    assert (FAMILY.name, FAMILY.table, FAMILY.record) == ("joist pocket", "joint", JoistPocket)
    assert DOVETAIL in FAMILIES
    assert (DOVETAIL.name, DOVETAIL.record) == ("dovetail joist", DovetailJoist)
    assert DOVETAIL.table == "joint"


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


def test_a_dovetail_puts_a_tail_on_the_joist_and_a_socket_in_the_beam() -> None:
    """Ids, places and what waits for what; a far shoulder waits for the beam's face too."""
    tail, received = tailed().sides
    assert (tail.id, tail.timber, tail.title) == (TAIL, "joist", "South end dovetail")
    assert tail.place == (TAIL, "south-end")
    assert (received.id, received.timber, received.title) == (
        SOCKET,
        "beam",
        "Socket for Joist",
    )
    assert received.place == (SOCKET,)
    assert received.awaits == (Awaits("joist", f"{TAIL}/as-cut"),)
    assert (tail.mated, received.mated) == (False, True)
    assert tail.awaits == ()
    far, _ = tailed(LOW.with_(near=False, other=True)).sides
    assert far.awaits == (Awaits("beam", f"{SOCKET}/section"),)


def test_a_wedge_is_told_on_both_sides() -> None:
    """The tail takes its line, and one flank of the socket leaves it room."""
    tail, received = tailed(wedge="1/4", wedge_side="west").sides
    (cut,) = (task for task in tail.tasks if task.id == "cut-far")
    assert cut.why.startswith("Take the line")
    assert any("wedge" in line.why for line in received.lines)
